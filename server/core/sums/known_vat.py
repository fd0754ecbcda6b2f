"""What a make knows while it is in the vat: heat, hold, acid, wash, rennet."""

from .. import acid_drift, heat_hold, run
from ..facts import readings_in
from ..figures import scaled_figure
from ..formulas import heat, heat_forecast
from .found import from_make, from_recipe, of_figure
from .wash import WATER_KG_L, WHEY_KG_L

TEMPS = ("milk_temp_c", "curd_temp_c", "water_temp_c")
MOST_MAKES = 5  # a vat changes little; more would only cost the phone time
AQUEOUS_FRAC = 0.94  # water phase of milk with its lactose; facts' worked wash


def base_ms(place: dict) -> "int | None":
    """Return the instant that the tables of a sum count their minutes from [ms].

    Args:
        place: see `known.scene`.
    """
    if place["topic"] == "acid":
        return _curve_start_ms(place)
    if place["topic"] == "heat_treatment":
        return _hold_fact(place)["begun_ms"]
    if place["key"] == "curing_days":
        return _moulded_ms(place)
    if place["key"] == "ripening_days":
        found = run.entries(place["state"], "reading_taken", "store_temp_c")
        return found[0]["t_ms"] if found else None
    found = _temp_entries(place)
    return found[0]["t_ms"] if found else None


def _moulded_ms(place):
    times = []
    for step in place["recipe"]["steps"]:
        fact = place["context"]["facts"][step["key"]]
        if step.get("mould") and fact["ended_ms"] is not None:
            times.append(fact["ended_ms"])
    return max(times) if times else None


def _temp_quantity(place):
    step = place["step"]
    if step["end"]["by"] == "reading" and step["end"]["quantity"] in TEMPS:
        return step["end"]["quantity"]
    for rows in (step.get("targets", []), step.get("readings", [])):
        for row in rows:
            if row["quantity"] in TEMPS:
                return row["quantity"]
    return None


def _temp_entries(place, step=None, fact=None, state=None):
    quantity = _temp_quantity(place)
    if quantity is None:
        return []
    fact = fact or place["fact"]
    return _one_an_instant(readings_in(state or place["state"], fact, quantity))


def _one_an_instant(entries):
    # Two readings at one instant are one: the later entry counts.
    found: "list[dict]" = []
    for entry in entries:
        if found and found[-1]["t_ms"] == entry["t_ms"]:
            found[-1] = entry
        else:
            found.append(entry)
    return found


def table(entries: "list[dict]", start_ms: int, column: str) -> "list[dict]":
    """Return readings as rows of minutes and values.

    Args:
        entries: see `run.entries`, at rising instants.
        start_ms: instant of minute 0 [ms].
        column: name of the value's column.
    """
    return [
        {
            "at_min": (entry["t_ms"] - start_ms) / 60000.0,
            column: entry["data"]["value"],
        }
        for entry in entries
    ]


def _vat_temps(place):
    entries = _temp_entries(place)
    if not entries:
        return None
    return from_make(table(entries, entries[0]["t_ms"], "value"))


def _vat_temp_c(place):
    newest = None
    for quantity in ("milk_temp_c", "curd_temp_c"):
        entry = run.last(place["state"], "reading_taken", quantity)
        if entry is not None and (newest is None or entry["t_ms"] > newest["t_ms"]):
            newest = entry
    return None if newest is None else from_make(newest["data"]["value"])


def _target_temp_c(place):
    step = place["step"]
    if place["key"] == "wash_drain":
        step = _next_wash(place) or step
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
        opened = run.entries(state, "make_opened")
        if stream == mine or not opened or opened[0]["data"].get("vat") != vat:
            continue
        begun = run.entries(state, "step_begun", key)
        ended = run.entries(state, "step_ended", key)
        if not begun or not ended or begun[0]["t_ms"] >= place["now_ms"]:
            continue
        fact = {
            "begun": begun[0],
            "begun_ms": begun[0]["t_ms"],
            "ended_ms": ended[0]["t_ms"],
        }
        found.append({"state": state, "fact": fact, "opened": opened[0]["data"]})
    found.sort(key=lambda row: (-row["fact"]["begun_ms"], row["state"]["make"]))
    return found[:MOST_MAKES]


def _tau_s(place):
    """Return the time constant that this vat showed before, for this much milk."""
    if place["topic"] != "heat":
        return None
    contents_kg = _vat_kg_now(place)
    lows, values, highs = [], [], []
    for earlier in _earlier_makes(place):
        fitted = _fitted_tau(place, earlier)
        kg = earlier["opened"]["milk_l"] * 1.03
        if fitted is None:
            continue
        told = heat.tau_at_fill(fitted, kg, contents_kg)
        lows.append(told["low_s"])
        values.append(told["value_s"])
        highs.append(told["high_s"])
    if not values:
        return None
    middle = sorted(values)[len(values) // 2]
    # Even at one fill a vat is not known better than a tenth.
    return from_make(
        middle, min(min(lows), 0.9 * middle), max(max(highs), 1.1 * middle)
    )


def _fitted_tau(place, earlier):
    temps = _temp_entries(place, None, earlier["fact"], earlier["state"])
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
    start_ms = base_ms(place)
    high_ms = place["fact"]["due"]["high_ms"]
    if start_ms is None or high_ms is None or high_ms < start_ms:
        return None
    lasts = place["step"].get("lasts")
    status = lasts["status"] if lasts else "derived"
    source = lasts["source"] if lasts else "the recipe"
    return from_recipe((high_ms - start_ms) / 1000.0, status, source)


def _sum_of(place, quantity, before_ms=None):
    total = 0.0
    for entry in run.entries(place["state"], "reading_taken", quantity):
        if before_ms is None or entry["t_ms"] < before_ms:
            total += entry["data"]["value"]
    return total


def _vat_kg_now(place, before_ms=None):
    """Return milk less whey drawn off plus water let in so far [kg]."""
    milk_kg = place["context"]["milk"]["milk_kg"]
    off_kg = _sum_of(place, "whey_drained_l", before_ms) * WHEY_KG_L
    in_kg = _sum_of(place, "water_added_l", before_ms) * WATER_KG_L
    return milk_kg - off_kg + in_kg


def _vat_kg(place):
    # The step's own water is not in yet, or is counted as added.
    kg = _vat_kg_now(place, place["fact"]["begun_ms"])
    return from_make(kg) if kg > 0 else None


def _contents_kg(place):
    kg = _vat_kg_now(place)
    return from_make(kg) if kg > 0 else None


def _drained_before_kg(place):
    return from_make(
        _sum_of(place, "whey_drained_l", place["fact"]["begun_ms"]) * WHEY_KG_L
    )


def _water_in_kg(place):
    return from_make(
        _sum_of(place, "water_added_l", place["fact"]["begun_ms"]) * WATER_KG_L
    )


def _added_kg(place):
    found = readings_in(place["state"], place["fact"], "water_added_l")
    if not found:
        return None
    return from_make(sum(entry["data"]["value"] for entry in found) * WATER_KG_L)


def _next_wash(place):
    is_later = False
    for step in place["recipe"]["steps"]:
        is_later = is_later or step["key"] == place["step"]["key"]
        end = step["end"]
        if is_later and end["by"] == "reading" and end["quantity"] == "curd_temp_c":
            return step
    return None


def _wash_figure(place, quantity):
    step = place["step"]
    if place["key"] == "wash_drain":
        step = _next_wash(place) or step
    for target in step.get("targets", []):
        if target["quantity"] == quantity:
            milk_l = place["context"]["milk"]["milk_l"]
            return scaled_figure(target["figure"], milk_l)
    return None


def _water_temp_c(place):
    entry = run.last(place["state"], "reading_taken", "water_temp_c")
    if entry is not None and place["key"] != "wash_drain":
        return from_make(entry["data"]["value"])
    figure = _wash_figure(place, "water_temp_c")
    if figure is not None:
        return of_figure(figure)
    return None if entry is None else from_make(entry["data"]["value"])


def _water_kg(place):
    if place["topic"] == "yield":
        return from_make(_sum_of(place, "water_added_l") * WATER_KG_L)
    figure = _wash_figure(place, "water_added_l")
    if figure is None:
        return None
    ends = [
        None if figure.get(name) is None else figure[name] * WATER_KG_L
        for name in ("value", "low", "high")
    ]
    return from_recipe(ends[0], figure["status"], figure["source"], ends[1], ends[2])


def _drain_frac(place):
    for target in place["step"].get("targets", []):
        if target["quantity"] == "whey_drained_l":
            milk = place["context"]["milk"]
            figure = scaled_figure(target["figure"], milk["milk_l"])
            whey_l = milk["milk_kg"] * 0.89 / WHEY_KG_L
            share = [
                None if figure.get(name) is None else figure[name] / whey_l
                for name in ("value", "low", "high")
            ]
            return from_recipe(
                share[0], figure["status"], figure["source"], share[1], share[2]
            )
    return None


def _washes(place):
    """Return each wash so far: whey off before it, then its water."""
    rows = []
    off_kg = 0.0
    timeline = []
    for quantity in ("whey_drained_l", "water_added_l"):
        for entry in run.entries(place["state"], "reading_taken", quantity):
            timeline.append((entry["t_ms"], quantity, entry["data"]["value"]))
    for _, quantity, litres in sorted(timeline):
        if quantity == "whey_drained_l":
            off_kg += litres * WHEY_KG_L
        else:
            rows.append({"drained_kg": off_kg, "water_kg": litres * WATER_KG_L})
            off_kg = 0.0
    return from_make(rows) if rows else None


def _aqueous_kg(place):
    return from_recipe(
        place["context"]["milk"]["milk_kg"] * AQUEOUS_FRAC,
        "derived",
        "water phase of milk, 94 kg of 100",
    )


def _curve_start_ms(place):
    curve = place["recipe"].get("curve")
    if not curve:
        return None
    return place["context"]["facts"][curve["start_step"]]["begun_ms"]


def _ph_readings(place):
    start_ms = _curve_start_ms(place)
    if start_ms is None:
        return None
    entries = acid_drift.ph_readings(place["state"], start_ms)
    return from_make(table(entries, start_ms, "ph")) if entries else None


def _curve(place):
    curve = place["recipe"].get("curve")
    if not curve:
        return None
    rows = [
        {"at_min": curve["times_s"][i] / 60.0, "ph": curve["phs"][i]}
        for i in range(len(curve["phs"]))
    ]
    return from_recipe(rows, curve["status"], curve["source"])


def _targets(place):
    """Return the pH that each step still to come wants, as far as the curve goes."""
    curve = place["recipe"].get("curve")
    if not curve:
        return None
    rows = []
    for step in place["recipe"]["steps"]:
        fact = place["context"]["facts"][step["key"]]
        if fact["ended_ms"] is not None or step["key"] == curve["start_step"]:
            continue
        for target in step.get("targets", []):
            ph = target["figure"]["value"]
            if target["quantity"] == "ph" and curve["phs"][-1] <= ph < curve["phs"][0]:
                rows.append({"of": step["key"], "ph": ph})
    return from_recipe(rows, "derived", "the recipe's targets") if rows else None


def _curd_temps(place):
    start_ms = _curve_start_ms(place)
    if start_ms is None:
        return None
    entries = []
    for quantity in TEMPS[:2]:
        for entry in run.entries(place["state"], "reading_taken", quantity):
            if entry["t_ms"] >= start_ms:
                entries.append(entry)
    entries.sort(key=lambda entry: (entry["t_ms"], entry["device"], entry["seq"]))
    entries = _one_an_instant(entries)
    if len(entries) < 2:
        return None
    return from_make(table(entries, start_ms, "value"))


def _hold_step(place):
    for step in place["recipe"]["steps"]:
        if step.get("heat_treatment"):
            return step
    return place["step"]


def _hold_fact(place):
    return place["context"]["facts"][_hold_step(place)["key"]]


def _hold(place):
    # Each field of the chart asks, and pairing all readings takes time.
    kept = place["kept"]
    if "hold" not in kept:
        fact = _hold_fact(place)
        kept["hold"] = None
        if fact["begun_ms"] is not None:
            kept["hold"] = heat_hold.hold_readings(
                place["state"], fact["begun_ms"], fact["ended_ms"]
            )
    return kept["hold"]


def _thermometer(place):
    if place["topic"] != "heat_treatment":
        return None
    found = _hold(place)
    return from_make(found["unit"]) if found and found["rows"] else None


def _hold_over(place):
    fact = _hold_fact(place)
    if fact["begun_ms"] is None:
        return None
    return from_make("no" if fact["ended_ms"] is None else "yes")


def _milk_temps(place):
    found = _hold(place)
    if found is None or not found["rows"]:
        return None
    start_ms = _hold_fact(place)["begun_ms"]
    rows = []
    for row in found["rows"]:
        rows.append(
            {
                "at_min": (row["at_ms"] - start_ms) / 60000.0,
                "value": row["temp"],
                "air": row["air_temp"],
                "recorder": row["recorder_temp"],
            }
        )
    return from_make(rows)


def chart_field(place: dict, name: str) -> "dict | None":
    """Return whether a field of the chart record is entered in the make.

    Args:
        place: see `known.scene`.
        name: input, "chart_" and the field.
    """
    found = _hold(place)
    if found is None:
        return None
    kept = place["kept"]
    if "chart" not in kept:
        kept["chart"] = heat_hold.hold_chart(
            place["state"], place["opened"], found["rows"]
        )
    told = kept["chart"]
    # What is not entered here may stand on the plant's own chart: it is asked.
    return from_make("noted") if told.get(name[len("chart_") :]) else None


def _floc_s(place):
    for step in place["recipe"]["steps"]:
        floc = place["context"]["facts"][step["key"]]["floc"]
        if floc is not None and floc["floc_s"] is not None:
            return from_make(floc["floc_s"])
    return None


def _recipe_figure(name):
    def look_up(place):
        figure = (place["recipe"].get("figures") or {}).get(name)
        return None if figure is None else of_figure(figure)

    return look_up


def _target_floc_s(place):
    factor = (place["recipe"].get("figures") or {}).get("floc_factor")
    for step in place["recipe"]["steps"]:
        if step["end"]["by"] == "floc" and step.get("lasts") and factor:
            lasts = step["lasts"]
            wanted = lasts["value"] / factor["value"]
            return from_recipe(wanted, lasts["status"], lasts["source"])
    return None


def _tested_every_s(place):
    for step in place["recipe"]["steps"]:
        if step["end"]["by"] != "floc":
            continue
        looks = run.entries(place["state"], "curd_judged", step["key"])
        for index in range(1, len(looks)):
            if looks[index]["data"]["judgement"] == "flocculated":
                gap_ms = looks[index]["t_ms"] - looks[index - 1]["t_ms"]
                return from_make(gap_ms / 1000.0)
    return None


def _rennet_ml(place):
    entry = run.last(place["state"], "ingredient_added", "rennet")
    if entry is None or entry["data"]["unit"] != "mL":
        return None
    return from_make(entry["data"]["amount"])


def _dose(ingredient, unit):
    def look_up(place):
        for row in place["recipe"]["ingredients"]:
            if row["key"] != ingredient:
                continue
            figure = row["dose"]["amount"]
            milk = place["context"]["milk"]
            scale = {"g/kg": 1.0, "kg/kg": 1.0, "mL/kg": 1000.0}.get(figure["unit"])
            if figure["unit"] == "g/L" and unit == "g/kg":
                scale = milk["milk_l"] / milk["milk_kg"]
            if scale is None:
                return None
            told = of_figure(figure)
            for name in ("value", "low", "high"):
                if told[name] is not None:
                    told[name] = told[name] * scale
            return told
        return None

    return look_up


KNOWN = {
    "vat_temps": _vat_temps,
    "vat_temp_c": _vat_temp_c,
    "target_temp_c": _target_temp_c,
    "tau_s": _tau_s,
    "due_s": _due_s,
    "contents_kg": _contents_kg,
    "vat_kg": _vat_kg,
    "drained_before_kg": _drained_before_kg,
    "water_in_kg": _water_in_kg,
    "added_kg": _added_kg,
    "water_temp_c": _water_temp_c,
    "water_kg": _water_kg,
    "drain_frac": _drain_frac,
    "washes": _washes,
    "aqueous_kg": _aqueous_kg,
    "ph_readings": _ph_readings,
    "curve": _curve,
    "targets": _targets,
    "curd_temps": _curd_temps,
    "thermometer": _thermometer,
    "hold_over": _hold_over,
    "milk_temps": _milk_temps,
    "floc_s": _floc_s,
    "floc_factor": _recipe_figure("floc_factor"),
    "dilution_times": _recipe_figure("rennet_dilution"),
    "target_floc_s": _target_floc_s,
    "tested_every_s": _tested_every_s,
    "rennet_ml": _rennet_ml,
    "starter_frac": _dose("starter_bulk", "kg/kg"),
    "dose_g_per_kg": _dose("calcium_chloride", "g/kg"),
    "dose_ml_per_t": _dose("annatto", "mL/t"),
}
