"""How a fault acts: each lever of `faults` at the moment of the work that it moves."""

from ...numbers.refused import require
from ...units.quantities import QUANTITIES
from ...units.table import convert
from .. import where as places
from .table import FAULTS

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import Recipe, RecipeStep
    from server.shapes.core.twin import Maker, Twin


def chosen(names: "list[str]", recipe: "Recipe") -> "list[dict[str, Any]]":
    """Return the levers of faults, each with the keys of the steps that it is for.

    Args:
        names: keys of FAULTS.
        recipe: the recipe.

    Raises:
        Refused: a fault that is not known.
    """
    found = []
    for name in names:
        require(name in FAULTS, "not_a_choice", "faults", name, sorted(FAULTS))
        for row in FAULTS[name]:
            own = dict(row)
            where = row.get("where")
            own["steps"] = None if where is None else places.steps(recipe, where)
            found.append(own)
    return found


def moved(row: "dict[str, Any]", value: float) -> float:
    """Return a figure as a lever moves it.

    Args:
        row: a lever.
        value: the figure without it.
    """
    if row.get("value") is not None:
        return row["value"]
    return value * row.get("times", 1.0) + row.get("add", 0.0)


def from_start(
    rows: "list[dict[str, Any]]", lever: str, figures: "dict[str, Any]"
) -> "dict[str, Any]":
    """Return figures as the levers that stand from the start on move them.

    Args:
        rows: answer of `chosen`.
        lever: "milk" or "equipment".
        figures: whole figures of it; not changed.
    """
    found = dict(figures)
    for row in rows:
        if row["lever"] == lever and row["steps"] is None:
            found[row["field"]] = moved(row, found[row["field"]])
    return found


def before(maker: "Maker") -> None:
    """Spoil instruments and clocks before the work begins.

    Args:
        maker: the work, not begun; its twin and its people change.
    """
    twin = maker["twin"]
    for row in _of(maker, "instrument"):
        instrument: "Any" = twin["instruments"][row["field"]]
        instrument[row["of"]] = row["value"]
    for row in _of(maker, "clock"):
        for who in maker["people"]:
            who["clock_off_ms"] = row["value"]
            who["told_off_ms"] = row["value"] if row["told"] else 0


def in_step(maker: "Maker", step: "RecipeStep") -> "list[tuple[float, dict[str, Any]]]":
    """Return what happens by itself in a step: (how long after its begin [s], act).

    Args:
        maker: the work.
        step: the step that begins.
    """
    found = []
    for row in _of(maker, "do", step["key"]):
        act = dict(row["act"])
        if "of_milk" in row:
            act["l"] = row["of_milk"] * maker["twin"]["milk"]["volume_l"]
        found.append((row["after_s"], act))
    for row in _of(maker, "milk", step["key"]) + _of(maker, "equipment", step["key"]):
        was = _figure(maker["twin"], row)
        after_s = row.get("after_s", 0.0)
        found.append((after_s, _change(row, moved(row, was))))
        if row.get("for_s") is not None:
            found.append((after_s + row["for_s"], _change(row, was)))
    return found


def aimed(
    maker: "Maker", step: "RecipeStep", act: "dict[str, Any]"
) -> "dict[str, Any]":
    """Return an act as it is really done: with the aim that a fault gives it.

    Args:
        maker: the work.
        step: the step in hand.
        act: the act as it should be done.
    """
    done = dict(act)
    for row in _of(maker, "aim", step["key"]):
        if row["act"] == act["kind"]:
            done[row["field"]] = moved(row, done[row["field"]])
    return done


def late_s(maker: "Maker", step: "RecipeStep", moment: str) -> float:
    """Return how much later a fault lets a step begin or end [s].

    Args:
        maker: the work.
        step: the step.
        moment: "begin" or "end".
    """
    rows = _of(maker, "late", step["key"])
    return sum(row["add"] for row in rows if row["field"] == moment)


def late_entry_s(maker: "Maker", step: "RecipeStep") -> float:
    """Return how long the end of a step stays unwritten [s].

    Args:
        maker: the work.
        step: the step.
    """
    return sum(row["add"] for row in _of(maker, "late_entry", step["key"]))


def omits(maker: "Maker", step: "RecipeStep", what: str, name: "str | None") -> bool:
    """Tell whether a fault leaves something out.

    Args:
        maker: the work.
        step: the step.
        what: "step", "turn" or "add".
        name: the ingredient, or None.
    """
    rows = _of(maker, "omit", step["key"])
    return any(row["field"] == what and row.get("value") == name for row in rows)


def typed(maker: "Maker", step: "RecipeStep", quantity: str, value: float) -> float:
    """Return what is typed of a reading: a fault reads another scale.

    Args:
        maker: the work.
        step: the step.
        quantity: what is read.
        value: what the instrument shows, in the quantity's unit.
    """
    for row in _of(maker, "typed", step["key"]):
        if row["field"] == quantity:
            return convert(value, QUANTITIES[quantity]["unit"], row["value"])
    return value


def _of(
    maker: "Maker", lever: str, step_key: "str | None" = None
) -> "list[dict[str, Any]]":
    """Return levers of a sort; with a step, those that are for it or for any."""
    rows: "list[Any]" = [row for row in maker["faults"] if row["lever"] == lever]
    if step_key is None:
        return rows
    if lever in ("omit", "typed"):
        return [row for row in rows if row["steps"] is None or step_key in row["steps"]]
    return [row for row in rows if row["steps"] and step_key in row["steps"]]


def _figure(twin: "Twin", row: "dict[str, Any]") -> "Any":
    held: "Any" = twin["milk"] if row["lever"] == "milk" else twin["plant"]
    return held[row["field"]]


def _change(row: "dict[str, Any]", value: "Any") -> "dict[str, Any]":
    return {"kind": "change", "field": row["field"], "value": value}
