"""The curd in the vat: from rennet to flocculation to the cut.

The clock runs from the instant the rennet was added. The first sure sign of
flocculation, times the recipe's factor, is the time to cut (common practice;
the theory behind it: after the gel point firmness grows as a first-order
process whose rate follows the enzyme, so a fixed multiple of the flocculation
time is a fixed relative firmness).
"""

from ..log import run

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import Recipe, RecipeJudge, RecipeStep
    from server.shapes.core.state import Entry, Judging, State


FLOC_TEST_FROM_FRAC = 0.6  # share of the expected floc time; practice, no source
LOOK_AGAIN_MS = 120000  # between two looks at the curd; practice, no source

# A floc point outside its window tells no cut for sure: the multiple is still
# shown, so that the make goes on, with the alert beside it. Outside the recipe's own
# band for the setting, over its multiple, it tells the cut, and that the rennet is not
# what the dose was reckoned with.
PROBLEMS = {
    "cut.floc_too_early": "floc_too_early",
    "cut.floc_too_late": "floc_too_late",
}
FLOC_CHOICES = ("not_flocculated", "flocculated")


def floc(
    state: "State", step: "RecipeStep", figures: "dict[str, Any]"
) -> "dict[str, Any] | None":
    """Return the flocculation facts of a step that ends by flocculation.

    Args:
        state: State of the make.
        step: step of the recipe.
        figures: the recipe's own figures; "floc_factor" with value, low, high.

    Returns:
        {"added_ms", "floc_ms", "floc_s", "factor", "problem"}; instants [ms],
        None while unknown. None when the step ends otherwise. When to cut is
        told by its figures, see `figures.due`.
    """
    if step["end"]["by"] != "floc":
        return None
    factor = figures["floc_factor"]
    floc_facts = {
        "added_ms": None,
        "floc_ms": None,
        "floc_s": None,
        "factor": factor["value"],
        "problem": None,
    }
    begun = run.entries(state, "step_begun", step["end"]["from_step"])
    if not begun:
        return floc_facts
    floc_facts["added_ms"] = begun[0]["t_ms"]
    sign = _first_floc(state, step["key"], floc_facts["added_ms"])
    if sign is None:
        return floc_facts
    floc_ms = sign["t_ms"] - floc_facts["added_ms"]
    floc_s = floc_ms / 1000.0
    floc_facts["floc_ms"] = sign["t_ms"]
    floc_facts["floc_s"] = floc_s
    floc_facts["problem"] = _window_problem(floc_s) or _band_problem(
        step, factor["value"], floc_s - _since_look_s(state, step["key"], sign) / 2.0
    )
    return floc_facts


def floc_s(state: "State", recipe: "Recipe") -> "float | None":
    """Return the time from rennet to flocculation of a make, or None while unseen [s].

    Args:
        state: State of the make.
        recipe: its recipe.
    """
    for step in recipe["steps"]:
        seen = floc(state, step, recipe.get("figures", {}))
        if seen is not None and seen["floc_s"] is not None:
            return float(seen["floc_s"])
    return None


def _window_problem(floc_s: float) -> "str | None":
    # Loaded when a floc point is there to judge: the app starts without it.
    from ..formulas.milk.cutting import cut_time

    # The window is the same for every multiple.
    return PROBLEMS.get(cut_time(floc_s, 1.0, 0.0)["basis"])


def _band_problem(step: "RecipeStep", factor: float, floc_s: float) -> "str | None":
    """Tell whether milk flocculated out of the recipe's band for its setting."""
    lasts: "Any" = step.get("lasts") or {}
    low, high = lasts.get("low"), lasts.get("high")
    if low is not None and floc_s * factor < low:
        return "floc_too_early"
    if high is not None and floc_s * factor > high:
        return "floc_too_late"
    return None


def _since_look_s(state: "State", step_key: str, sign: "Entry") -> float:
    """Return how long before the first sure sign nobody had looked [s].

    It flocculated between the two looks, so half of this is the best guess.
    """
    looks = [
        entry["t_ms"]
        for entry in run.entries(state, "curd_judged", step_key)
        if entry["t_ms"] < sign["t_ms"]
        and entry["data"]["judgement"] == "not_flocculated"
    ]
    return (sign["t_ms"] - max(looks)) / 1000.0 if looks else 0.0


def _first_floc(state: "State", step_key: str, after_ms: int) -> "Entry | None":
    for entry in run.entries(state, "curd_judged", step_key):
        if entry["t_ms"] > after_ms and entry["data"]["judgement"] == "flocculated":
            return entry
    return None


def judging(
    state: "State",
    step: "RecipeStep",
    begun_ms: "int | None",
    curd: "dict[str, Any] | None",
    lasts_s: float,
) -> "Judging | None":
    """Return what to judge in a step, from when, and the last word on it.

    A step that ends by flocculation first asks for the floc test alone; once
    the curd has flocculated it asks for the break, a few minutes before the
    cut is due.

    Args:
        state: State of the make.
        step: step of the recipe.
        begun_ms: when it began [ms], or None.
        curd: its Floc with "cut_ms", see `figures.due`, or None.
        lasts_s: how long it lasts; 0.0 when that is not said [s].

    Returns:
        {"choices", "from_ms", "last", "met"} or None when nothing is judged;
        last is {"id", "judgement", "at_ms", "by"} or None; met is True when the
        last word ends the step.
    """
    judge = step.get("judge")
    if not judge:
        return None
    last = run.last(state, "curd_judged", step["key"])
    return {
        "choices": _choices(judge["choices"], curd),
        "from_ms": _from_ms(judge, begun_ms, curd, last, lasts_s),
        "last": None
        if last is None
        else {
            "id": last["id"],
            "judgement": last["data"]["judgement"],
            "at_ms": last["t_ms"],
            "by": last["by"],
        },
        "met": last is not None and last["data"]["judgement"] in _enders(step),
    }


def _enders(step: "RecipeStep") -> "list[str] | tuple[str, ...]":
    if step["end"]["by"] == "floc":
        return ("clean_break", "past_it")
    wanted = step["end"].get("judgement")
    if wanted is None:
        return ("even", "knitted", "clean_break")
    return wanted if isinstance(wanted, list) else [wanted]


def _choices(choices: "list[str]", curd: "dict[str, Any] | None") -> "list[str]":
    if curd is None:
        return list(choices)
    if curd["floc_ms"] is None:
        return [choice for choice in choices if choice in FLOC_CHOICES]
    return [choice for choice in choices if choice not in FLOC_CHOICES]


def _from_ms(
    judge: "RecipeJudge",
    begun_ms: "int | None",
    curd: "dict[str, Any] | None",
    last: "Entry | None",
    lasts_s: float,
) -> "int | None":
    if begun_ms is None:
        return None
    share = judge.get("from_frac") or 0.0
    if curd is None or curd["added_ms"] is None:
        first_ms = begun_ms + int(lasts_s * share * 1000)
    elif curd["cut_ms"] is None:
        expected_s = lasts_s / curd["factor"]
        first_ms = curd["added_ms"] + int(expected_s * FLOC_TEST_FROM_FRAC * 1000)
    else:
        whole_ms = curd["cut_ms"] - curd["added_ms"]
        first_ms = curd["added_ms"] + int(whole_ms * share)
    if last is not None and last["t_ms"] + LOOK_AGAIN_MS > first_ms:
        first_ms = last["t_ms"] + LOOK_AGAIN_MS
    return max(first_ms, begun_ms)
