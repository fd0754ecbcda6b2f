"""How a value that a make knows is told: what it is and where it comes from."""


def from_make(value: "object", low: "object" = None, high: "object" = None) -> dict:
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


def from_equipment(value: "object") -> dict:
    """Return a value that was entered as what the creamery has.

    Args:
        value: number or word, in the input's own unit.
    """
    told = from_make(value)
    told["from"] = "equipment"
    return told


def from_recipe(
    value: "object",
    status: str,
    source: "str | None",
    low: "object" = None,
    high: "object" = None,
) -> dict:
    """Return a value that the recipe or the plan says.

    Args:
        value: number, word or table, in the input's own unit.
        status: status of the figure.
        source: the figure's source.
        low: low end of its band, or None.
        high: high end of its band, or None.
    """
    told = from_make(value, low, high)
    told.update({"from": "recipe", "status": status, "source": source})
    return told


def of_figure(figure: dict) -> dict:
    """Return a figure of the recipe as a known value.

    Args:
        figure: {"value", "low", "high", "status", "source"}.
    """
    return from_recipe(
        figure["value"],
        figure["status"],
        figure["source"],
        figure.get("low"),
        figure.get("high"),
    )
