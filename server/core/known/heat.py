"""What a make knows of its warming: readings, jacket, and how slow this vat is."""

from ..log import run
from ..log.apart import ask
from ..log.opening import opening
from ..log.readings import together
from ..make import plan
from ..make.facts import readings_in
from ..make.practice import is_practice
from .found import from_make, from_recipe, of_figure
from .temps import TEMPS, table, temp_entries
from .wash import next_wash, vat_kg_now

MOST_MAKES = 5  # a vat changes little; more would only cost the phone time
# Fills this near to each other count as one: less than a tank's dip stick tells.
SAME_FILL = 0.1


def _vat_temps(place):
    entries = temp_entries(place)
    if not entries:
        return None
    return from_make(table(entries, entries[0]["t_ms"], "value"))


def _vat_temp_c(place):
    """Return the vat's temperature as of this step: what is warmed later is not."""
    ended_ms = place["fact"]["ended_ms"]
    entries = together(place["state"], TEMPS[:2], None, ended_ms)
    return from_make(entries[-1]["data"]["value"]) if entries else None


def _target_temp_c(place):
    step = place["step"]
    if place["key"] == "wash_drain":
        step = next_wash(place) or step
    end = step["end"]
    if end["by"] == "reading" and end["quantity"] in TEMPS:
        return of_figure(end.get("at_least") or end["at_most"])
    for target in step.get("targets", []):
        if target["quantity"] in TEMPS[:2]:
            return of_figure(target["figure"])
    return None


def jacket_temp_c(place: dict) -> "dict | None":
    """Return the jacket's temperature: as read now, or as in the last such step.

    Args:
        place: see `known.scene`.
    """
    found = readings_in(place["state"], place["fact"], "jacket_temp_c")
    if found:
        return from_make(found[-1]["data"]["value"])
    for earlier in _earlier_makes(place):
        entries = readings_in(earlier["state"], earlier["fact"], "jacket_temp_c")
        if entries:
            return from_make(entries[-1]["data"]["value"])
    return None


def _earlier_makes(place):
    """Return the last makes in this vat that did this step, newest first."""
    vat = place["opened"].get("vat")
    if vat is None:
        return []
    key = place["step"]["key"]
    mine = place["state"]["make"]
    found = []
    for stream in sorted(place["desk"]["makes"]):
        state = place["desk"]["makes"][stream]
        opened = opening(state)
        if stream == mine or opened is None or opened["data"].get("vat") != vat:
            continue
        if is_practice(state):
            continue  # played through, not warmed
        begun = run.entries(state, "step_begun", key)
        ended = run.entries(state, "step_ended", key)
        if not begun or not ended or begun[0]["t_ms"] >= place["now_ms"]:
            continue
        fact = {
            "begun": begun[0],
            "begun_ms": begun[0]["t_ms"],
            "ended_ms": ended[0]["t_ms"],
        }
        found.append({"state": state, "fact": fact, "opened": opened["data"]})
    found.sort(key=lambda row: (-row["fact"]["begun_ms"], row["state"]["make"]))
    return found[:MOST_MAKES]


def _tau_s(place):
    """Return the time constant that this vat showed before, for this much milk."""
    if place["topic"] != "heat":
        return None
    # Loaded when a step first heats: other steps answer sooner without.
    from ..formulas.heat import heat

    contents_kg = vat_kg_now(place)
    fitted = []
    for earlier in _earlier_makes(place):
        make_id = earlier["state"]["make"]
        told = ask(place["desk"], make_id, "learnt", None, _tau_of, place, earlier)
        if told is not None:
            fitted.append(heat.tau_at_fill(told[0], told[1], contents_kg))
    # What another fill says is a guess while this one has been measured.
    near = [told for told in fitted if _is_same_fill(told)]
    fitted = near or fitted
    if not fitted:
        return None
    middle = sorted([told["value_s"] for told in fitted])[len(fitted) // 2]
    low = min([told["low_s"] for told in fitted])
    high = max([told["high_s"] for told in fitted])
    # Even at one fill a vat is not known better than a tenth.
    return from_make(middle, min(low, 0.9 * middle), max(high, 1.1 * middle))


def _tau_of(place, earlier):
    """Return (time constant [s], what was in the vat [kg]) of an earlier make."""
    try:
        tau_s = _fitted_tau(place, earlier)
        return None if tau_s is None else (tau_s, _fill_kg(earlier))
    except (ValueError, ArithmeticError):
        return None  # entries that contradict each other teach nothing


def _fill_kg(earlier):
    """Return what was in the vat in an earlier make when the step was over."""
    milk = plan.milk_in(earlier["state"], earlier["opened"])
    then = {"state": earlier["state"], "context": {"milk": milk}}
    return vat_kg_now(then, earlier["fact"]["ended_ms"])


def _is_same_fill(told):
    return told["high_s"] <= (1 + SAME_FILL) * told["low_s"]


def _fitted_tau(place, earlier):
    from ..formulas.heat import heat_forecast

    temps = temp_entries(place, earlier["fact"], earlier["state"])
    jackets = readings_in(earlier["state"], earlier["fact"], "jacket_temp_c")
    if len(temps) < 3 or not jackets:
        return None
    start_ms = temps[0]["t_ms"]
    try:
        return heat_forecast.fit_tau_robust(
            [(entry["t_ms"] - start_ms) / 1000.0 for entry in temps],
            [entry["data"]["value"] for entry in temps],
            jackets[-1]["data"]["value"],
        )["tau_s"]
    except ValueError:
        return None  # readings that cross the jacket tell nothing of the vat


def _due_s(place):
    """Return by when the recipe wants it, on the clock of the readings."""
    entries = temp_entries(place)
    high_ms = place["fact"]["due"]["high_ms"]
    if not entries or high_ms is None or high_ms < entries[0]["t_ms"]:
        return None
    start_ms = entries[0]["t_ms"]
    lasts = place["step"].get("lasts")
    status = lasts["status"] if lasts else "derived"
    source = lasts["source"] if lasts else "the recipe"
    return from_recipe((high_ms - start_ms) / 1000.0, status, source)


KNOWN = {
    "vat_temps": _vat_temps,
    "vat_temp_c": _vat_temp_c,
    "target_temp_c": _target_temp_c,
    "tau_s": _tau_s,
    "due_s": _due_s,
}
