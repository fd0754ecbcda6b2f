"""The recipe's own pH curve, at the times of this make."""

from ...formulas.milk.acid_curve import curve_ph
from ...formulas.milk.acid_watch import BAND_PH

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.curve import AcidCurve, AcidPoint
    from server.shapes.core.state import ViewContext


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
    for index in range(len(line["times_s"])):
        ph = line["phs"][index]
        points.append(
            {
                "at_ms": start_ms + int(line["times_s"][index] * 1000),
                "ph": ph,
                "low_ph": ph - BAND_PH,
                "high_ph": ph + BAND_PH,
            }
        )
    return {"start_ms": start_ms, "is_real": is_real, "points": points}


def band_at(
    acid: "AcidCurve | None", at_ms: int
) -> "tuple[float | None, float | None]":
    """Return the band of pH that the recipe's curve wants at an instant.

    Args:
        acid: answer of `acid_line`.
        at_ms: the instant [ms].

    Returns:
        (low, high); None each before the curve really began, and off its time.
    """
    if acid is None or not acid["is_real"]:
        return None, None
    times_s = [(point["at_ms"] - acid["start_ms"]) / 1000.0 for point in acid["points"]]
    elapsed_s = (at_ms - acid["start_ms"]) / 1000.0
    if not times_s[0] <= elapsed_s <= times_s[-1]:
        return None, None
    ph = curve_ph(elapsed_s, times_s, [point["ph"] for point in acid["points"]])
    return ph - BAND_PH, ph + BAND_PH
