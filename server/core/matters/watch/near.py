"""Whether the end of a step is near enough for what is still open to be told.

Wheels lie in the store for weeks while days count and a laboratory works: that is no
matter until they could leave.
"""

from ...figures.due import low_s, span_ms

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.state import Context


def near_since_ms(context: "Context", key: str) -> "int | None":
    """Return since when a step could end or was over, or None while it could not [ms].

    Args:
        context: Context of the make.
        key: key of the step.
    """
    due_ms = end_ms(context, key)
    if due_ms is None or due_ms > context["now_ms"]:
        return None
    return due_ms


def end_ms(context: "Context", key: str) -> "int | None":
    """Return when a step was over or first may end, or None before it began [ms].

    Args:
        context: Context of the make.
        key: key of the step.
    """
    fact, lasts = context["facts"][key], context["lasts"][key]
    for over_ms in (fact["ended_ms"], fact["skipped_ms"]):
        if over_ms is not None:
            return over_ms
    if fact["begun_ms"] is None:
        return None
    return fact["begun_ms"] + (span_ms(low_s(lasts)) if lasts else 0)
