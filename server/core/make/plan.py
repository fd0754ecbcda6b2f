"""The day ahead: which step waits on which, when each should run, what it takes.

The plan is worked out from the recipe frozen into the make, from the instant
the make was opened and from what has really happened since.
"""

from ..formulas.milk import milk as milk_formulas
from ..log import run
from ..log.touches import WITH_VOLUME_MS

# Cow's milk before it has been tested; used only to turn a metered volume into
# mass, where 0.1 % of fat is worth 0.1 kg in 1,000. Source: GOFF density table,
# row 4.00 fat 8.95 SNF.
USUAL_FAT_FRAC = 0.04
USUAL_SNF_FRAC = 0.0895
USUAL_TEMP_C = 4.4


def in_order(steps: "list[dict]") -> "list[dict]":
    """Return the steps so that each stands after all that it waits on.

    Args:
        steps: steps of a sound recipe, see `recipe.check_recipe`.

    Returns:
        The same steps, reordered; recipe order is kept where it can be.
    """
    left = list(steps)
    placed = {}
    ordered = []
    while left:
        waiting = []
        for step in left:
            if all(key in placed for key in step.get("after", [])):
                ordered.append(step)
                placed[step["key"]] = True
            else:
                waiting.append(step)
        if len(waiting) == len(left):
            raise ValueError("steps wait on each other in a circle")
        left = waiting
    return ordered


def planned(steps: "list[dict]", start_ms: int) -> dict:
    """Return when each step should begin and end if all goes by the recipe.

    Args:
        steps: steps in the order of `in_order`.
        start_ms: when the make is opened [ms].

    Returns:
        {step key: {"begin_ms", "end_ms"}}.
    """
    found: "dict[str, dict]" = {}
    for step in steps:
        begin_ms = _after_ms(step, found, start_ms)
        found[step["key"]] = {
            "begin_ms": begin_ms,
            "end_ms": begin_ms + _lasts_ms(step),
        }
    return found


def expected(
    steps: "list[dict]", facts: dict, start_ms: int, now_ms: int
) -> "dict[str, dict]":
    """Return when each step did or will run, given what has happened.

    Args:
        steps: steps in the order of `in_order`.
        facts: {step key: {"begun_ms", "ended_ms", "skipped_ms", "due_ms"}}, each
            an instant [ms] or None.
        start_ms: when the make was opened [ms].
        now_ms: now, by the server's clock [ms].

    Returns:
        {step key: {"begin_ms", "end_ms"}}.
    """
    found: "dict[str, dict]" = {}
    for step in steps:
        fact = facts[step["key"]]
        ready_ms = _after_ms(step, found, start_ms)
        if fact["ended_ms"] is not None:
            begin_ms = fact["begun_ms"]
            if begin_ms is None or begin_ms > fact["ended_ms"]:
                begin_ms = fact["ended_ms"]
            end_ms = fact["ended_ms"]
        elif fact["begun_ms"] is not None:
            begin_ms = fact["begun_ms"]
            due_ms = fact["due_ms"]
            if due_ms is None:
                due_ms = begin_ms + _lasts_ms(step)
            end_ms = max(due_ms, now_ms)
        elif fact["skipped_ms"] is not None:
            begin_ms = end_ms = ready_ms
        else:
            begin_ms = max(ready_ms, now_ms)
            end_ms = begin_ms + _lasts_ms(step)
        found[step["key"]] = {"begin_ms": begin_ms, "end_ms": end_ms}
    return found


def closing_step(steps: "list[dict]") -> dict:
    """Return the last hands-on step of the make day; the last step if none says so.

    Args:
        steps: steps in the order of `in_order`; at least one.
    """
    for step in steps:
        if step.get("closes_day"):
            return step
    return steps[-1]


def milk_in(state: dict, opened: dict) -> dict:
    """Return the mass of milk in the make and what that rests on.

    A weighed mass goes before a metered volume, and a metered volume before
    the volume that was planned when the make was opened.

    Args:
        state: State of the make.
        opened: body of its make_opened event.

    Returns:
        {"milk_kg", "milk_l", "milk_from": "mass" | "volume" | "opened",
        "density_kg_l"}; density None when weighed without a volume.
    """
    mass = run.last(state, "reading_taken", "milk_mass_kg")
    volume = run.last(state, "reading_taken", "milk_volume_l")
    temp = run.last(state, "reading_taken", "milk_temp_c")
    if mass is not None:
        return {
            "milk_kg": mass["data"]["value"],
            "milk_l": opened["milk_l"] if volume is None else volume["data"]["value"],
            "milk_from": "mass",
            "density_kg_l": None,
        }
    # The volume is metered cold, on receipt; a later reading of the hot vat is
    # not the temperature that belongs to it.
    temp_c = USUAL_TEMP_C
    if volume is not None and temp is not None:
        temp_c = _temp_at(state, volume["t_ms"], USUAL_TEMP_C)
    density = milk_formulas.density_kg_l(USUAL_FAT_FRAC, USUAL_SNF_FRAC, temp_c)
    litres = opened["milk_l"] if volume is None else volume["data"]["value"]
    return {
        "milk_kg": litres * density,
        "milk_l": litres,
        "milk_from": "opened" if volume is None else "volume",
        "density_kg_l": density,
    }


def doses(recipe: dict, milk: dict) -> dict:
    """Return what the recipe asks of each ingredient for this much milk.

    Args:
        recipe: the recipe frozen into the make.
        milk: answer of `milk_in`.

    Returns:
        {ingredient key: {"value", "low", "high", "unit", "basis"}}; low and high
        None where the recipe gives no tolerance.
    """
    found = {}
    for row in recipe.get("ingredients", []):
        per = row["dose"]["per"]
        amount = row["dose"]["amount"]["value"]
        times = 1.0
        if per == "kg_milk":
            times = milk["milk_kg"]
        elif per == "l_milk":
            times = milk["milk_l"]
        value = amount * times
        tolerance = row.get("tolerance_frac")
        found[row["key"]] = {
            "value": value,
            "low": None if tolerance is None else value * (1.0 - tolerance),
            "high": None if tolerance is None else value * (1.0 + tolerance),
            "unit": row["unit"],
            "basis": {
                "per": per,
                "amount": amount,
                "amount_unit": row["dose"]["amount"]["unit"],
                "milk_kg": milk["milk_kg"],
                "milk_l": milk["milk_l"],
                "milk_from": milk["milk_from"],
                "status": row["dose"]["amount"]["status"],
            },
        }
    return found


def _temp_at(state, at_ms, otherwise):
    """Return the milk temperature read nearest to an instant, within an hour."""
    nearest = None
    for entry in run.entries(state, "reading_taken", "milk_temp_c"):
        gap = abs(entry["t_ms"] - at_ms)
        if gap <= WITH_VOLUME_MS and (nearest is None or gap < nearest[0]):
            nearest = (gap, entry["data"]["value"])
    if nearest is None or not 0.0 <= nearest[1] <= 44.0:  # the table's range
        return otherwise
    return nearest[1]


def _after_ms(step, found, start_ms):
    ready_ms = start_ms
    for key in step.get("after", []):
        ready_ms = max(ready_ms, found[key]["end_ms"])
    return ready_ms


def _lasts_ms(step):
    lasts = step.get("lasts")
    return int(lasts["value"] * 1000) if lasts else 0
