"""What a make knows already, so that nobody is asked for it.

Each input's name has one meaning in all sums, so one table serves them all. What
a person measured goes before what the recipe says, and what was entered as
equipment serves any input of that name. A value says whether it was measured or
only follows from the plan.
"""

from ..heat.milk import phosphatase
from ..heat.rule import gap_of, hold_rule
from ..log.equipment import in_effect, served
from ..log.readings import last, within
from ..units.readings import parse
from . import store as known_store
from . import vat as known_vat
from .found import from_equipment, from_make, from_recipe


def scene(desk: dict, context: dict, step: dict, now_ms: int) -> dict:
    """Return what the look-ups below start from.

    Args:
        desk: Desk.
        context: see `view.context_of`.
        step: step of the recipe that asks.
        now_ms: now [ms].
    """
    return {
        "desk": desk,
        "state": context["state"],
        "context": context,
        "recipe": context["recipe"],
        "opened": context["opened"],
        "equipment": in_effect(context["state"]),
        "step": step,
        "fact": context["facts"][step["key"]],
        "now_ms": now_ms,
        "size": None,
        "topic": None,
        "key": None,
    }


def known_inputs(place: dict, row: dict) -> dict:
    """Return the inputs of a sum that the make knows.

    Args:
        place: see `scene`, with the "size" of wheel asked about, if one is.
        row: the sum.

    Returns:
        {input name: as `answer.answer` takes it}.
    """
    place = dict(place)
    place["topic"] = row["topic"]
    place["key"] = row["key"]
    found = {}
    for item in row["inputs"]:
        try:
            told = _look_up(place, item)
        except (ValueError, ArithmeticError):
            # Entries that contradict each other tell nothing: it is asked for.
            told = None
        if told is not None:
            found[item["name"]] = told
    return found


def _look_up(place, item):
    name = item["name"]
    for table in (HERE, known_vat.KNOWN, known_store.KNOWN):
        if name in table:
            told = table[name](place)
            if told is not None:
                return told
    if name.startswith("chart_"):
        return known_vat.chart_field(place, name)
    return _equipment(place, item)


def _equipment(place, item):
    told = served(place["equipment"], item)
    return None if told is None else from_equipment(told)


def last_reading(place: dict, quantity: str) -> "dict | None":
    """Return the newest reading of a quantity with its unit as typed, or None.

    Args:
        place: see `scene`.
        quantity: key of `quantities.QUANTITIES`.
    """
    entry = last(place["state"], quantity)
    return None if entry is None else _told(entry)


def _told(entry):
    data = entry["data"]
    told = from_make(data["value"])
    if data.get("typed_unit") == "F" and data.get("typed") is not None:
        told["typed"] = [parse(data["typed"]), "F"]
    return told


def _reading(quantity):
    return lambda place: last_reading(place, quantity)


def _milk_l(place):
    milk = place["context"]["milk"]
    if milk["milk_from"] == "opened":
        return from_recipe(milk["milk_l"], "derived", "milk that was planned")
    return from_make(milk["milk_l"])


def _milk_kg(place):
    milk = place["context"]["milk"]
    if place["key"] == "milk_mass":
        # That sum works the mass out: only a weighed one belongs into it.
        return from_make(milk["milk_kg"]) if milk["milk_from"] == "mass" else None
    if milk["milk_from"] == "mass":
        return from_make(milk["milk_kg"])
    return from_recipe(milk["milk_kg"], "derived", "volume times usual density")


def _fat_frac(place):
    told = last_reading(place, "fat_frac")
    figure = place["recipe"]["milk"].get("fat_frac")
    if told is not None or figure is None or place["topic"] == "heat_treatment":
        return told
    return from_recipe(
        figure["value"],
        figure["status"],
        figure["source"],
        figure.get("low"),
        figure.get("high"),
    )


def _jurisdiction(place):
    """Return whose rule the recipe's hold goes by; elsewhere the default stands."""
    if place["topic"] not in ("milk", "heat_treatment"):
        return None
    for step in place["recipe"]["steps"]:
        rule = step.get("rule") or ""
        for word in ("us", "eu_uk"):
            if rule.startswith(word + "_"):
                return from_recipe(word, "derived", "the rule that the recipe names")
    return None


def _gap_max_s(place):
    """Return the gap between readings that counts in the make's own hold."""
    for step in place["recipe"]["steps"]:
        rule = hold_rule(step, place["context"]["rules"])
        if rule is not None:
            gap = gap_of(rule, place["equipment"])
            return from_equipment(gap["gap_s"]) if gap["is_own"] else None
    return None


def _phosphatase(place):
    """Return what the laboratory found, by the rule that judges the hold."""
    for step in place["recipe"]["steps"]:
        rule = hold_rule(step, place["context"]["rules"])
        if rule is not None:
            word = phosphatase(place["state"], rule)
            return None if word is None else from_make(word)
    return None


def _milk_temp_c(place):
    """Return the milk's temperature as of this step: what is heated later is not."""
    if place["topic"] != "milk":
        return None
    ended_ms = place["fact"]["ended_ms"]
    entries = within(place["state"], "milk_temp_c", None, ended_ms)
    return _told(entries[-1]) if entries else None


def _now_min(place):
    base_ms = known_vat.base_ms(place)
    if base_ms is None:
        return None
    return from_make((place["now_ms"] - base_ms) / 60000.0)


def _base_ms(place):
    base_ms = known_vat.base_ms(place)
    return None if base_ms is None else from_make(base_ms)


HERE = {
    "jurisdiction": _jurisdiction,
    "milk_l": _milk_l,
    "milk_kg": _milk_kg,
    "fat_frac": _fat_frac,
    "snf_frac": _reading("snf_frac"),
    "protein_frac": _reading("protein_frac"),
    "milk_temp_c": _milk_temp_c,
    "gap_max_s": _gap_max_s,
    "phosphatase": _phosphatase,
    "milk_age_h": _reading("milk_age_h"),
    "drug_test": _reading("drug_test"),
    "acidity_frac": _reading("titratable_acidity_frac"),
    "jacket_temp_c": known_vat.jacket_temp_c,
    "gauge_kpa": _reading("press_gauge_kpa"),
    "laid_on_kg": _reading("bed_load_kg"),
    "brine_ph": _reading("brine_ph"),
    "now_min": _now_min,
    "base_ms": _base_ms,
}
