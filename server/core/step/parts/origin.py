"""Where a figure of a step comes from, as a View says it."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping
    from typing import Any

    from server.shapes.core.step import Origin


def origin(wanted: "Mapping[str, Any]") -> "Origin | None":
    """Return where a figure comes from, or None for the recipe's plain word.

    Args:
        wanted: Figure, see `figures.answered`; or a figure as the recipe has it.

    Returns:
        {"from", "sum", "status", "estimate", "needs", "fell_back", "own"}; own is
        the recipe's own value where it is another.
    """
    if wanted.get("sum") is None and wanted.get("from") in (None, "recipe"):
        return None
    names = ("from", "sum", "status", "estimate", "needs", "fell_back", "own")
    told: "Any" = {name: wanted[name] for name in names}
    return told
