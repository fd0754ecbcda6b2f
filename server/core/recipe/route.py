"""The way of one treatment through a recipe: only its steps, with its figures.

1. A step without "treatments" is of every route; one with them only of those.
2. What a step has under "by_treatment" goes, on that route, in place of its own.
3. Who waits on a step that is left out waits on what that one waits on, unless
   another step that it waits on does so already.
4. Nothing is left out of a recipe that says nothing of treatments.
5. Steps may be options of a choice, such as coat or wax: once one was chosen, at the
   opening or by the step that begins first, those of the others are left out.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import Recipe, RecipeStep, Treatment


# What may differ between the routes of one step: not what others know it by.
DIFFERS = (
    "title",
    "now",
    "do",
    "lasts",
    "end",
    "targets",
    "readings",
    "adds",
    "cautions",
    "drift",
    "sums",
    "heat_treatment",
    "rule",
)


def route(recipe: "Recipe", treatment: "Treatment") -> "Recipe":
    """Return a recipe with only the steps of one treatment's route.

    Args:
        recipe: a recipe whose steps are a list of mappings with keys.
        treatment: how the milk is treated.

    Returns:
        The recipe itself where it says nothing of treatments, else a new one.
    """
    steps = recipe["steps"]
    if not any(step.get("treatments") or step.get("by_treatment") for step in steps):
        return recipe
    out = {step["key"]: step for step in steps if not is_on(step, treatment)}
    on = [_of_route(step, treatment) for step in steps if step["key"] not in out]
    return _with_steps(recipe, on, out)


def choices(recipe: "Recipe") -> "list[RecipeStep]":
    """Return the steps of a recipe that are one option of a choice.

    Args:
        recipe: a recipe whose steps are a list of mappings with keys.
    """
    return [step for step in recipe["steps"] if step.get("choice")]


def usual_options(recipe: "Recipe") -> "dict[str, str]":
    """Return {choice: its option that the recipe names first}.

    Args:
        recipe: a recipe whose steps are a list of mappings with keys.
    """
    options: "dict[str, str]" = {}
    for step in choices(recipe):
        options.setdefault(step["choice"], step["option"])
    return options


def taken(recipe: "Recipe", options: "dict[str, str]") -> "Recipe":
    """Return a recipe without the steps of the options that were not taken.

    Args:
        recipe: a recipe whose steps are a list of mappings with keys.
        options: {choice: its option that was taken}; all options of a choice that
            nobody has made yet stay.
    """
    out = {
        step["key"]: step
        for step in choices(recipe)
        if options.get(step["choice"], step["option"]) != step["option"]
    }
    on = [dict(step) for step in recipe["steps"] if step["key"] not in out]
    return _with_steps(recipe, on, out)


def _with_steps(
    recipe: "Recipe", on: "list[Any]", out: "dict[str, RecipeStep]"
) -> "Recipe":
    for step in on:
        step["after"] = _bridged(step.get("after") or [], out)
    before = {step["key"]: step["after"] for step in on}
    for step in on:
        step["after"] = _needed(step["after"], before)
    told: "Any" = dict(recipe)
    told["steps"] = on
    return told


def is_on(step: "RecipeStep", treatment: "Treatment") -> bool:
    """Tell whether a step is on the route of a treatment.

    Args:
        step: step of the recipe.
        treatment: how the milk is treated.
    """
    named = step.get("treatments")
    return named is None or treatment in named


def _of_route(step: "RecipeStep", treatment: "Treatment") -> "Any":
    told: "Any" = dict(step)
    own = (told.pop("by_treatment", None) or {}).get(treatment) or {}
    for name in own:
        told[name] = own[name]
    return told


def _bridged(after: "list[str]", out: "dict[str, RecipeStep]") -> "list[str]":
    """Return what is waited on, past the steps that are left out."""
    told: "list[str]" = []
    asked, seen = list(after), list(after)
    while asked:
        key = asked.pop(0)
        if key not in out:
            told.append(key)
            continue
        for earlier in out[key].get("after") or []:
            if earlier not in seen:
                seen.append(earlier)
                asked.append(earlier)
    return told


def _needed(after: "list[str]", before: "dict[str, list[str]]") -> "list[str]":
    """Return what is waited on without what another of it waits on anyway."""
    past: "list[str]" = []
    asked = [earlier for key in after for earlier in before.get(key, [])]
    while asked:
        key = asked.pop()
        if key not in past:
            past.append(key)
            asked.extend(before.get(key, []))
    # In a circle each would wait on the other: then nothing is left out.
    told = [key for key in after if key not in past]
    return told or after
