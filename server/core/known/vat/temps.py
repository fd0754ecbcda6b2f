"""What a make knows of the temperatures of a step: read so far, and wanted.

The step's own temperature is the one it ends by, else the first it has a target or
a reading of. A step that wants none prepares for the next that warms the curd.
"""

from ...log.readings import one_an_instant, together
from ...make.facts import readings_in
from ..origins import from_make, from_recipe, of_figure
from ..wanted import wanted

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Entry, Fact, KnownValue, Scene, State


TEMPS = ("milk_temp_c", "curd_temp_c", "water_temp_c")
IN_VAT = TEMPS[:2]


def _temp_quantity(step: "RecipeStep") -> "str | None":
    if step["end"]["by"] == "reading" and step["end"]["quantity"] in TEMPS:
        return str(step["end"]["quantity"])
    for asked in step.get("targets", []) + step.get("readings", []):
        if asked["quantity"] in TEMPS:
            return str(asked["quantity"])
    return None


def temp_entries(
    scene: "Scene", fact: "Fact | None" = None, state: "State | None" = None
) -> "list[Entry]":
    """Return the step's readings of the temperature it is about, oldest first.

    Args:
        scene: see `inputs.scene`.
        fact: Fact of the same step in another make, or None for this one's.
        state: State of that make, or None.
    """
    quantity = _temp_quantity(scene["step"])
    if quantity is None:
        return []
    return one_an_instant(
        readings_in(state or scene["state"], fact or scene["fact"], quantity)
    )


def table(entries: "list[Entry]", start_ms: int, column: str) -> "list[dict[str, Any]]":
    """Return readings as rows of minutes and values.

    Args:
        entries: see `run.entries`, at rising instants.
        start_ms: instant of minute 0 [ms].
        column: name of the value's column.
    """
    return [
        {"at_min": minutes(entry["t_ms"], start_ms), column: entry["data"]["value"]}
        for entry in entries
    ]


def minutes(at_ms: int, start_ms: int) -> float:
    """Return an instant on the clock of a table [min].

    Args:
        at_ms: the instant [ms].
        start_ms: instant of minute 0 [ms].
    """
    return (at_ms - start_ms) / 60000.0


def next_wash(scene: "Scene") -> "RecipeStep | None":
    """Return the step from this one on that warms the curd, or None.

    Args:
        scene: see `inputs.scene`.
    """
    is_later = False
    for step in scene["recipe"]["steps"]:
        is_later = is_later or step["key"] == scene["step"]["key"]
        if is_later and is_wash(step):
            return step
    return None


def is_wash(step: "RecipeStep") -> bool:
    """Tell whether a step warms the curd until it reads so much.

    Args:
        step: step of the recipe.
    """
    end = step["end"]
    return end["by"] == "reading" and end["quantity"] == "curd_temp_c"


def _wanted_of(scene: "Scene", step: "RecipeStep") -> "KnownValue | None":
    end = step["end"]
    names = ["target/" + quantity for quantity in IN_VAT]
    if end["by"] == "reading" and end["quantity"] in TEMPS:
        names = ["end/at_least", "end/at_most"]
    for name in names:
        figure = wanted(scene, name, step)
        if figure is not None:
            return of_figure(figure)
    return None


def _target_temp_c(scene: "Scene") -> "KnownValue | None":
    own = _wanted_of(scene, scene["step"])
    wash = next_wash(scene) if own is None else None
    return own if wash is None else _wanted_of(scene, wash)


def _vat_temps(scene: "Scene") -> "KnownValue | None":
    entries = temp_entries(scene)
    if not entries:
        return None
    return from_make(table(entries, entries[0]["t_ms"], "value"))


def _temps_start_ms(scene: "Scene") -> "KnownValue | None":
    entries = temp_entries(scene)
    return from_make(entries[0]["t_ms"]) if entries else None


def _temps_now_min(scene: "Scene") -> "KnownValue | None":
    start = _temps_start_ms(scene)
    return start and from_make(minutes(scene["now_ms"], start["value"]))


def _vat_temp_c(scene: "Scene") -> "KnownValue | None":
    """Return the vat's temperature as this step begins.

    What a step is planned by must not follow what it brings about: that is
    `vat_now_c`. Before all that it waits on is over nobody knows.
    """
    fact = scene["fact"]
    if fact["begun_ms"] is None and fact["waits_on"]:
        return None
    before = together(scene["state"], IN_VAT, None, fact["begun_ms"])
    if before:
        return from_make(before[-1]["data"]["value"])
    first = together(scene["state"], IN_VAT, fact["begun_ms"], fact["ended_ms"])
    return from_make(first[0]["data"]["value"]) if first else None


def _vat_now_c(scene: "Scene") -> "KnownValue | None":
    """Return the vat's temperature as of this step: what is warmed later is not."""
    entries = together(scene["state"], IN_VAT, None, scene["fact"]["ended_ms"])
    return from_make(entries[-1]["data"]["value"]) if entries else None


def _due_s(scene: "Scene") -> "KnownValue | None":
    """Return by when the recipe wants it, on the clock of the readings."""
    start = _temps_start_ms(scene)
    from_ms = scene["fact"]["from_ms"]
    lasts = wanted(scene, "lasts")
    if start is None or from_ms is None or lasts is None:
        return None
    most_s = lasts["value"] if lasts["high"] is None else lasts["high"]
    due_s = most_s + (from_ms - start["value"]) / 1000.0
    if due_s < 0.0:
        return None
    return from_recipe(due_s, lasts["status"], lasts["source"])


KNOWN = {
    "vat_temps": _vat_temps,
    "temps_start_ms": _temps_start_ms,
    "temps_now_min": _temps_now_min,
    "vat_temp_c": _vat_temp_c,
    "vat_now_c": _vat_now_c,
    "target_temp_c": _target_temp_c,
    "due_s": _due_s,
}
