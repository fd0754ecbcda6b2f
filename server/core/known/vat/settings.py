"""What the creamery's makes show of setting: how much rennet, and how soon it set."""

from ...log import run
from ...log.apart import ask
from ...log.opening import ending, opening, recipe_of, treatment_of
from ...make import plan
from ...make.curd import floc
from ...make.practice import is_practice
from ..bottle import at_hand
from ..origins import from_make
from .set import target_floc

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import Recipe
    from server.shapes.core.state import Desk, KnownValue, Scene, State

MOST_SETTINGS = 40
# Doses nearer to each other than this say nothing of what a dose does. Our judgement.
LEAST_SPREAD = 1.2
# The dose is learnt of the newest of a recipe's makes, when they are as many: one make
# may have been odd. It moves by no more than this at once. Practice, no source.
LEARNT_OF, LEAST_LEARNT = 5, 3
MOST_CHANGE = 1.25
# Time that no dose can save; a floc point outside its window teaches nothing.
DELAY_S = 120.0
FLOC_WINDOW_S = (360.0, 1500.0)
# What says how strong rennet is, by what it was measured in.
STRENGTH_BY = {"mL": "strength_imcu_per_ml", "g": "strength_imcu_per_g"}


def _settings(scene: "Scene") -> "KnownValue | None":
    """Return dose and time of the other makes, where their doses differ enough."""
    told = [
        {"given_imcu_per_l": made["dose"], "set_min": made["floc_s"] / 60.0}
        for made in _others(scene)
    ]
    doses = [row["given_imcu_per_l"] for row in told]
    if not doses or max(doses) < LEAST_SPREAD * min(doses):
        return None
    return from_make(told[-MOST_SETTINGS:])


def _dose_learnt(scene: "Scene") -> "KnownValue | None":
    """Return the dose that would have set the last makes of this recipe on time.

    Milk that was treated otherwise sets otherwise, and teaches nothing of it.
    """
    target = target_floc(scene)
    if target is None or target["value"] <= DELAY_S:
        return None
    like = [scene["recipe"]["id"], treatment_of(scene["state"])]
    made = [row for row in _others(scene) if row["like"] == like]
    made = [
        row for row in made if FLOC_WINDOW_S[0] <= row["floc_s"] <= FLOC_WINDOW_S[1]
    ]
    made.sort(key=lambda row: (row["floc_ms"], row["make"]))
    made = made[-LEARNT_OF:]
    if len(made) < LEAST_LEARNT:
        return None
    wait_s = target["value"] - DELAY_S
    doses = [row["dose"] * (row["floc_s"] - DELAY_S) / wait_s for row in made]
    doses.sort()
    last = made[-1]["dose"]
    middle = min(max(doses[len(doses) // 2], last / MOST_CHANGE), last * MOST_CHANGE)
    return from_make(middle, min(doses[0], middle), max(doses[-1], middle))


def _others(scene: "Scene") -> "list[dict[str, Any]]":
    """Return how the other makes set that this one may learn from."""
    kept = scene["kept"]
    if "settings" not in kept:
        over = ending(scene["state"])
        until_ms = scene["now_ms"] if over is None else over["t_ms"]
        kept["settings"] = _read_others(scene["desk"], scene["state"], until_ms)
    return list(kept["settings"])


def _read_others(desk: "Desk", here: "State", until_ms: int) -> "list[dict[str, Any]]":
    rows: "list[dict[str, Any]]" = []
    for stream in sorted(desk["makes"]):
        state = desk["makes"][stream]
        if stream == here["make"] or is_practice(state):
            continue
        row = ask(desk, stream, "learnt", None, _setting, desk, state, until_ms)
        rows.extend([] if row is None else [row])
    return rows


def _setting(desk: "Desk", state: "State", until_ms: int) -> "dict[str, Any] | None":
    recipe = recipe_of(state)
    dose = _given_imcu_per_l(desk, state)
    if recipe is None or dose is None:
        return None
    seen = _seen(state, recipe, until_ms)
    if seen is None:
        return None
    return {
        "make": state["make"],
        "like": [recipe["id"], treatment_of(state)],
        "dose": dose,
        "floc_s": float(seen["floc_s"]),
        "floc_ms": seen["floc_ms"],
    }


def _seen(state: "State", recipe: "Recipe", until_ms: int) -> "dict[str, Any] | None":
    for step in recipe["steps"]:
        seen = floc(state, step, recipe.get("figures", {}))
        if seen is not None and seen["floc_s"] and seen["floc_ms"] <= until_ms:
            return seen
    return None


def _given_imcu_per_l(desk: "Desk", state: "State") -> "float | None":
    """Return the rennet in the milk of a make, by the strength of its bottle."""
    opened = opening(state)
    given = run.last(state, "ingredient_added", "rennet")
    if opened is None or given is None or given["data"]["amount"] <= 0.0:
        return None
    key = STRENGTH_BY.get(given["data"]["unit"])
    strength = None if key is None else at_hand(desk, state).get(key)
    if not strength:
        return None
    milk_l = plan.milk_in(state, opened["data"])["milk_l"]
    return float(given["data"]["amount"] * strength / milk_l)


def _given(scene: "Scene") -> "KnownValue | None":
    dose = _given_imcu_per_l(scene["desk"], scene["state"])
    return None if dose is None else from_make(dose)


KNOWN = {
    "settings": _settings,
    "given_imcu_per_l": _given,
    "dose_imcu_per_l": _dose_learnt,
}
