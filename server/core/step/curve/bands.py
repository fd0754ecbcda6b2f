"""What the steps of a make want over time, and when each ran or is expected to."""

from ...figures.figure import of_target

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.curve import CurveBand, CurveStep
    from server.shapes.core.state import ViewContext


TEMPERATURES = (
    "milk_temp_c",
    "air_space_temp_c",
    "curd_temp_c",
    "water_temp_c",
    "jacket_temp_c",
)
ACID = "ph"


def bands(context: "ViewContext") -> "list[CurveBand]":
    """Return the bands that steps want of temperature and pH, and when.

    Args:
        context: as for `steps.step_view`.

    Returns:
        List of {"step", "quantity", "low", "value", "high", "begin_ms",
        "end_ms", "is_real"} in recipe order; one limit may be None; is_real
        once the step has begun.
    """
    spans: "list[CurveBand]" = []
    for step in context["recipe"]["steps"]:
        fact = context["facts"][step["key"]]
        if fact["status"] == "skipped":
            continue
        times = context["expected"][step["key"]]
        for target in step.get("targets", []):
            if target["quantity"] not in TEMPERATURES + (ACID,):
                continue
            wanted = of_target(context, step, target)
            if wanted["low"] is None and wanted["high"] is None:
                continue
            spans.append(
                {
                    "step": step["key"],
                    "quantity": target["quantity"],
                    "low": wanted["low"],
                    "value": wanted["value"],
                    "high": wanted["high"],
                    "begin_ms": times["begin_ms"],
                    "end_ms": times["end_ms"],
                    "is_real": fact["begun_ms"] is not None,
                }
            )
    return spans


def boundaries(context: "ViewContext") -> "list[CurveStep]":
    """Return when each step was planned and when it really runs or is expected to.

    Args:
        context: as for `steps.step_view`.

    Returns:
        List of {"key", "title", "round", "rounds", "status", "planned_begin_ms",
        "planned_end_ms", "begin_ms", "end_ms"} in recipe order.
    """
    stretches: "list[CurveStep]" = []
    for step in context["recipe"]["steps"]:
        key = step["key"]
        stretches.append(
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
    return stretches
