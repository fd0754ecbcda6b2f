"""What was read of a make over time, each reading judged by what was wanted then."""

from ...log.readings import every
from ..parts.step_parts import verdict
from .acid_line import band_at
from .bands import ACID

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.curve import AcidCurve, CurveBand, CurvePoint
    from server.shapes.core.state import Entry, ViewContext


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
    points: "list[CurvePoint]" = []
    for entry in every(context["state"], quantity):
        step = _step_at(context, entry)
        value = entry["data"]["value"]
        low, high = _band_at(wanted, acid, step, quantity, entry["t_ms"])
        is_judged = low is not None or high is not None
        points.append(
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
    return points


def _step_at(context: "ViewContext", entry: "Entry") -> "str | None":
    """Return the step that a reading names, or the latest that ran at its time."""
    named = entry["data"].get("step")
    if named is not None:
        return named
    latest = None
    for step in context["recipe"]["steps"]:
        fact = context["facts"][step["key"]]
        begun_ms = fact["begun_ms"]
        if begun_ms is None or begun_ms > entry["t_ms"]:
            continue
        if fact["ended_ms"] is not None and fact["ended_ms"] < entry["t_ms"]:
            continue
        if latest is None or begun_ms >= latest[0]:
            latest = (begun_ms, step["key"])
    return None if latest is None else latest[1]


def _band_at(
    wanted: "list[CurveBand]",
    acid: "AcidCurve | None",
    step: "str | None",
    quantity: str,
    at_ms: int,
) -> "tuple[float | None, float | None]":
    for band in wanted:
        if band["step"] == step and band["quantity"] == quantity:
            return band["low"], band["high"]
    return band_at(acid, at_ms) if quantity == ACID else (None, None)
