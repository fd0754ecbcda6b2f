"""The course of a make: what was read over time, beside what the recipe wants.

Temperatures and pH as they stand (struck entries are not here, corrected ones
show their corrected value), each step's bands at the times that the step really
had or is expected to have, and the recipe's own pH curve shifted to the instant
at which its first step really began.
"""

from ...make.plan import closing_step
from ..context import context_of
from .acid_line import acid_line
from .at_hand import at_hand
from .bands import ACID, TEMPERATURES, bands, boundaries
from .readings import series_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.curve import Curve, CurveSeries, SpanName
    from server.shapes.core.state import Desk, State, ViewContext


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
        {"make", "now_ms", "series", "bands", "steps", "acid", "spans", "at_hand"}:
        see `series_of`, `bands`, `boundaries`, `acid_line`, `spans` and
        `at_hand`; now_ms is the make's end once it is over.
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
        "at_hand": at_hand(context, series, wanted, acid),
    }


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
    for line in series:
        begin_ms = min(begin_ms, line["points"][0]["at_ms"])
        last_ms = max(last_ms, line["points"][-1]["at_ms"])
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
