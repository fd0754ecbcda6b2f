"""What counts as text in a recipe."""


def is_text(value: object) -> bool:
    """Tell whether a value is text with something to read in it."""
    return isinstance(value, str) and value.strip() != ""
