"""How a value that a make knows is told: what it is and where it comes from."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping
    from typing import Any

    from server.shapes.core.state import KnownValue


# Whose word a figure is that the recipe does not answer itself.
ANSWERED = {"sum": "sum", "person": "make"}


def from_make(value: "Any", low: "Any" = None, high: "Any" = None) -> "KnownValue":
    """Return a value that was measured or entered in a make.

    Args:
        value: number, word or table, in the input's own unit.
        low: low end of its range, or None.
        high: high end of its range, or None.
    """
    return {
        "value": value,
        "low": low,
        "high": high,
        "typed": None,
        "from": "make",
        "status": "measured",
        "source": None,
    }


def from_equipment(value: "Any") -> "KnownValue":
    """Return a value that was entered as what the creamery has.

    Args:
        value: number or word, in the input's own unit.
    """
    told = from_make(value)
    told["from"] = "equipment"
    return told


def from_recipe(
    value: "Any",
    status: str,
    source: "str | None",
    low: "Any" = None,
    high: "Any" = None,
) -> "KnownValue":
    """Return a value that the recipe or the plan says.

    Args:
        value: number, word or table, in the input's own unit.
        status: status of the figure.
        source: the figure's source.
        low: low end of its band, or None.
        high: high end of its band, or None.
    """
    told = from_make(value, low, high)
    told["from"], told["status"], told["source"] = "recipe", status, source
    return told


def of_figure(figure: "Mapping[str, Any]", times: float = 1.0) -> "KnownValue":
    """Return a figure of the recipe or of a step as a known value.

    Args:
        figure: {"value", "low", "high", "status", "source"}; "from" where it is
            not the recipe's own, see `figures.answered`.
        times: what its numbers are multiplied by, into the input's own unit.
    """
    value, low, high = [
        None if figure.get(end) is None else figure[end] * times
        for end in ("value", "low", "high")
    ]
    told = from_recipe(value, figure["status"], figure["source"], low, high)
    if figure.get("from") in ANSWERED:
        told["from"] = ANSWERED[figure["from"]]
    return told
