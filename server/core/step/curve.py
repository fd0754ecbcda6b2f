"""The course of a make: what was read over time, beside what the recipe wants.

Temperatures and pH as they stand (struck entries are not here, corrected ones
show their corrected value), each step's bands at the times that the step really
had or is expected to have, and the recipe's own pH curve shifted to the instant
at which its first step really began. Loaded only when someone looks at it.
"""

from ..figures.figure import of_target
from ..formulas.milk.acid_curve import curve_ph
from ..formulas.milk.acid_watch import BAND_PH
from ..log.readings import every
from ..make.plan import closing_step
from .step_parts import verdict
from .view import context_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.curve import (
        AcidCurve,
        AcidPoint,
        Curve,
        CurveBand,
        CurvePoint,
        CurveSeries,
        CurveStep,
        SpanName,
    )
    from server.shapes.core.state import Desk, Entry, State, ViewContext


TEMPERATURES = (
    "milk_temp_c",
    "air_space_temp_c",
    "curd_temp_c",
    "water_temp_c",
    "jacket_temp_c",
)
ACID = "ph"
HOUR_MS = 3600000
AHEAD_MS = 900000  # of the hour shown, so that what comes next is in sight
# A step this long (milk resting overnight) lies before the make day. Our own
# judgement, no source.
NIGHT_MS = 21600000


def curve(
    state: "State",
    now_ms: int,
    rules: "dict[str, Any] | None" = None,
    desk: "Desk | None" = None,
) -> "Curve | None":
    """Return the Curve of one make, or None when its opening is not known.

    Args:
        state: State of the make.
        now_ms: now, by the server's clock [ms].
        rules: {rule id: the rule}, for a hold that begins again after a dip.
        desk: Desk, for what other makes teach; None where this make stands alone.

    Returns:
        {"make", "now_ms", "series", "bands", "steps", "acid", "spans"}: see
        `series_of`, `bands`, `boundaries`, `acid_line` and `spans`; now_ms is
        the make's end once it is over.
    """
    context = context_of(state, now_ms, rules, desk)
    if context is None:
        return None
    acid = acid_line(context)
    wanted = bands(context)
    series: "list[CurveSeries]" = []
    for quantity in TEMPERATURES + (ACID,):
        points = series_of(context, quantity, wanted, acid)
        if points:
            series.append({"quantity": quantity, "points": points})
    return {
        "make": state["make"],
        "now_ms": context["now_ms"],
        "series": series,
        "bands": wanted,
        "steps": boundaries(context),
        "acid": acid,
        "spans": spans(context, series),
    }


def series_of(
    context: "ViewContext",
    quantity: str,
    wanted: "list[CurveBand]",
    acid: "AcidCurve | None",
) -> "list[CurvePoint]":
    """Return the standing readings of a quantity, oldest first, each judged.

    A reading is judged by its step's band; a pH whose step has none by the
    recipe's curve.

    Args:
        context: as for `steps.step_view`.
        quantity: key of `quantities.QUANTITIES`.
        wanted: answer of `bands`.
        acid: answer of `acid_line`.

    Returns:
        List of {"id", "at_ms", "value", "step", "low", "high", "verdict"};
        verdict None where nothing is wanted.
    """
    found: "list[CurvePoint]" = []
    for entry in every(context["state"], quantity):
        step = _step_at(context, entry)
        value = entry["data"]["value"]
        low, high = _band_at(wanted, acid, step, quantity, entry["t_ms"])
        is_judged = low is not None or high is not None
        found.append(
            {
                "id": entry["id"],
                "at_ms": entry["t_ms"],
                "value": value,
                "step": step,
                "low": low,
                "high": high,
                "verdict": verdict(value, low, high) if is_judged else None,
            }
        )
    return found


def bands(context: "ViewContext") -> "list[CurveBand]":
    """Return the bands that steps want of temperature and pH, and when.

    Args:
        context: as for `steps.step_view`.

    Returns:
        List of {"step", "quantity", "low", "value", "high", "begin_ms",
        "end_ms", "is_real"} in recipe order; one limit may be None; is_real
        once the step has begun.
    """
    found: "list[CurveBand]" = []
    for step in context["recipe"]["steps"]:
        fact = context["facts"][step["key"]]
        if fact["status"] == "skipped":
            continue
        times = context["expected"][step["key"]]
        for row in step.get("targets", []):
            if row["quantity"] not in TEMPERATURES + (ACID,):
                continue
            wanted = of_target(context, step, row)
            if wanted["low"] is None and wanted["high"] is None:
                continue
            found.append(
                {
                    "step": step["key"],
                    "quantity": row["quantity"],
                    "low": wanted["low"],
                    "value": wanted["value"],
                    "high": wanted["high"],
                    "begin_ms": times["begin_ms"],
                    "end_ms": times["end_ms"],
                    "is_real": fact["begun_ms"] is not None,
                }
            )
    return found


def boundaries(context: "ViewContext") -> "list[CurveStep]":
    """Return when each step was planned and when it really runs or is expected to.

    Args:
        context: as for `steps.step_view`.

    Returns:
        List of {"key", "title", "round", "rounds", "status", "planned_begin_ms",
        "planned_end_ms", "begin_ms", "end_ms"} in recipe order.
    """
    found: "list[CurveStep]" = []
    for step in context["recipe"]["steps"]:
        key = step["key"]
        found.append(
            {
                "key": key,
                "title": step["title"],
                "round": step.get("round"),
                "rounds": step.get("rounds"),
                "status": context["facts"][key]["status"],
                "planned_begin_ms": context["planned"][key]["begin_ms"],
                "planned_end_ms": context["planned"][key]["end_ms"],
                "begin_ms": context["expected"][key]["begin_ms"],
                "end_ms": context["expected"][key]["end_ms"],
            }
        )
    return found


def acid_line(context: "ViewContext") -> "AcidCurve | None":
    """Return the recipe's pH curve with its band, at the times of this make.

    Args:
        context: as for `steps.step_view`.

    Returns:
        {"start_ms", "is_real", "points": [{"at_ms", "ph", "low_ph",
        "high_ph"}]}; is_real once its first step has begun; None without a
        curve, or when that step was skipped.
    """
    line = context["recipe"].get("curve")
    if not line:
        return None
    fact = context["facts"].get(line["start_step"])
    if fact is None or fact["status"] == "skipped":
        return None
    start_ms = fact["begun_ms"]
    is_real = start_ms is not None
    if start_ms is None:
        start_ms = context["expected"][line["start_step"]]["begin_ms"]
    points: "list[AcidPoint]" = []
    for place in range(len(line["times_s"])):
        ph = line["phs"][place]
        points.append(
            {
                "at_ms": start_ms + int(line["times_s"][place] * 1000),
                "ph": ph,
                "low_ph": ph - BAND_PH,
                "high_ph": ph + BAND_PH,
            }
        )
    return {"start_ms": start_ms, "is_real": is_real, "points": points}


def spans(
    context: "ViewContext", series: "list[CurveSeries]"
) -> "dict[SpanName, list[int]]":
    """Return the stretches of time that a person may ask to see.

    Args:
        context: as for `steps.step_view`.
        series: as `curve` gives it.

    Returns:
        {"hour", "day", "all"}, each [from, to] in ms: the last hour and a little
        ahead, the make day from its last long rest to its expected end, and all
        that was read.
    """
    now_ms = context["now_ms"]
    ordered = context["ordered"]
    begin_ms = context["planned"][ordered[0]["key"]]["begin_ms"]
    day_begin_ms, day_end_ms = _day(context, begin_ms)
    last_ms = now_ms
    for row in series:
        begin_ms = min(begin_ms, row["points"][0]["at_ms"])
        last_ms = max(last_ms, row["points"][-1]["at_ms"])
    return {
        "hour": [now_ms - HOUR_MS, now_ms + AHEAD_MS],
        "day": [day_begin_ms, day_end_ms],
        "all": [begin_ms, max(day_end_ms, last_ms)],
    }


def _day(context: "ViewContext", begin_ms: int) -> "tuple[int, int]":
    closing = closing_step(context["ordered"])
    for step in context["ordered"]:
        if step is closing:
            break
        times = context["expected"][step["key"]]
        is_over = context["facts"][step["key"]]["ended_ms"] is not None
        if is_over and times["end_ms"] - times["begin_ms"] >= NIGHT_MS:
            begin_ms = max(begin_ms, times["end_ms"])
    return begin_ms, context["expected"][closing["key"]]["end_ms"]


def _step_at(context: "ViewContext", entry: "Entry") -> "str | None":
    """Return the step that a reading names, or the latest that ran at its time."""
    named = entry["data"].get("step")
    if named is not None:
        return named
    found = None
    for step in context["recipe"]["steps"]:
        fact = context["facts"][step["key"]]
        begun_ms = fact["begun_ms"]
        if begun_ms is None or begun_ms > entry["t_ms"]:
            continue
        if fact["ended_ms"] is not None and fact["ended_ms"] < entry["t_ms"]:
            continue
        if found is None or begun_ms >= found[0]:
            found = (begun_ms, step["key"])
    return None if found is None else found[1]


def _band_at(
    wanted: "list[CurveBand]",
    acid: "AcidCurve | None",
    step: "str | None",
    quantity: str,
    at_ms: int,
) -> "tuple[float | None, float | None]":
    for row in wanted:
        if row["step"] == step and row["quantity"] == quantity:
            return row["low"], row["high"]
    if quantity != ACID or acid is None or not acid["is_real"]:
        return None, None
    times_s = [(row["at_ms"] - acid["start_ms"]) / 1000.0 for row in acid["points"]]
    elapsed_s = (at_ms - acid["start_ms"]) / 1000.0
    if not times_s[0] <= elapsed_s <= times_s[-1]:
        return None, None
    ph = curve_ph(elapsed_s, times_s, [row["ph"] for row in acid["points"]])
    return ph - BAND_PH, ph + BAND_PH
