"""What to do now, in one sentence of the recipe with the figures of this make."""

from ...recipe.own import target_name
from ...recipe.sentence import POURED, named

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.step import NamedFigure, Now


def now_said(step: "RecipeStep", shown: "dict[str, Any]") -> "Now":
    """Return what to do now: of the recipe's sentences the first that can be told.

    One that names a dose which is in already, or a figure that is not known, is not
    told. A recipe without sentences is told by its first line.

    Args:
        step: step of the recipe.
        shown: the Step of the View with its main number.
    """
    told = _figures(shown)
    for text in step.get("now") or []:
        wanted = named(text["en"])
        if all(name in told for name in wanted):
            return {"text": text, "figures": [told[name] for name in wanted]}
    lines = step.get("do") or [step["title"]]
    return {"text": lines[0], "figures": []}


def _figures(shown: "dict[str, Any]") -> "dict[str, NamedFigure]":
    """Return the figures of a step that can be told, by their names."""
    rows: "list[tuple[str, str | None, str | None, Any]]" = []
    for target in shown["targets"]:
        rows.append((target_name(target), target["quantity"], None, target["value"]))
    end = shown["end"]
    for side in ("at_least", "at_most"):
        rows.append(("end/" + side, end.get("quantity"), None, end.get(side)))
    if shown["lasts"]:
        rows.append(("lasts", None, "s", shown["lasts"]["value_s"]))
    for add in shown["adds"]:
        if add["planned"] and not add["done"]:
            dose = add["planned"]
            rows.append(
                ("dose/" + add["ingredient"], None, dose["unit"], dose["value"])
            )
    main = shown["main"]
    if main["kind"] == "water" and main["value"]:
        rows.append((POURED[0], None, "L", main["value"]))
        rows.append((POURED[1], "water_temp_c", None, main["temp_c"]))
    return {
        name: {"name": name, "quantity": quantity, "unit": unit, "value": value}
        for name, quantity, unit, value in rows
        if value is not None
    }
