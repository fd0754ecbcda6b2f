"""Where a figure of a step comes from, as a View says it."""


def origin(wanted: dict) -> "dict | None":
    """Return where a figure comes from, or None for the recipe's plain word.

    Args:
        wanted: Figure, see `figures.told`; or a figure as the recipe has it.

    Returns:
        {"from", "sum", "status", "estimate", "needs", "fell_back", "own"}; own is
        the recipe's own value where it is another.
    """
    if wanted.get("sum") is None and wanted.get("from") in (None, "recipe"):
        return None
    names = ("from", "sum", "status", "estimate", "needs", "fell_back", "own")
    return {name: wanted[name] for name in names}
