"""The hold of a heat treatment in a running make: its clock and its verdict.

Rules first.
1. The hold's clock runs from the first reading of an unbroken row in which milk
   and air space are hot enough by the rule. One reading below begins it again:
   while it is low, from that reading; then from the first that is hot enough.
2. Readings are compared as they were typed, in the unit the rule prints. Most of
   them say which unit that is; one in another unit is a reading not taken.
3. An air reading belongs to the milk reading nearest to it, at most PAIR_MS off;
   the colder of two counts. One that finds no milk reading stands by itself.
4. The chart of the plant is the record that counts. What is kept here tells the
   fields that the rule asks for as far as they are entered here.
5. Phosphatase comes days later, from the milk or from the cheese. A number is
   tried against the rule's own limits; a test that says a word is taken at it.
   One positive result outweighs any number of negative ones.
6. The longest gap between readings is this tool's own figure. A shorter one is a
   maker's own to set; a longer one counts on the word of somebody who is named.
"""

from ..log import run
from ..log.equipment import in_effect
from ..log.equipment_form import AGREED
from ..log.opening import opening
from ..units.quantities import check_number
from ..units.readings import parse

PAIR_MS = 150000
RULE = "us_heat_treatment"


def hold_rule(step: dict, rules: dict) -> "dict | None":
    """Return the rule by which a step's hold is judged, or None.

    Args:
        step: step of the recipe; its "rule" names one, else RULE.
        rules: {rule id: the rule}.
    """
    if not step.get("heat_treatment"):
        return None
    return rules.get(step.get("rule") or RULE)


def hold_readings(state: dict, begun_ms: int, ended_ms: "int | None") -> dict:
    """Return the readings of a hold, as the thermometer shows them.

    Args:
        state: State of the make.
        begun_ms: when the hold's step began [ms].
        ended_ms: when it ended [ms], or None.

    Returns:
        {"unit", "rows"}: "F" or "C", and list of {"at_ms", "temp", "air_temp",
        "recorder_temp"} as `formulas.pasteurisation.heat_verdict` takes it.
    """
    milk = _within(state, "milk_temp_c", begun_ms, ended_ms)
    air = _within(state, "air_space_temp_c", begun_ms, ended_ms)
    recorder = _within(state, "recorder_temp_c", begun_ms, ended_ms)
    unit = _unit(milk + air)
    rows = []
    for entry in milk:
        rows.append(_row(entry["t_ms"], _as_typed(entry, unit)))
    for entry in air:
        _pair(rows, entry, "air_temp", _as_typed(entry, unit), True)
    for entry in recorder:
        _pair(rows, entry, "recorder_temp", _as_typed(entry, unit), False)
    return {"unit": unit, "rows": sorted(rows, key=_by_time)}


def _row(at_ms, temp):
    return {"at_ms": at_ms, "temp": temp, "air_temp": None, "recorder_temp": None}


def _by_time(row):
    # Total, since the phone's sort shuffles what is equal.
    blank = row["temp"] is None
    return (row["at_ms"], blank, 0.0 if blank else row["temp"])


def _within(state, quantity, begun_ms, ended_ms):
    return [
        entry
        for entry in run.entries(state, "reading_taken", quantity)
        if begun_ms <= entry["t_ms"] and (ended_ms is None or entry["t_ms"] <= ended_ms)
    ]


def _unit(entries):
    fahrenheit = 0
    for entry in entries:
        if entry["data"].get("typed_unit") == "F":
            fahrenheit += 1
    return "F" if 2 * fahrenheit > len(entries) else "C"


def _as_typed(entry, unit):
    """Return the number in the unit wanted as it was typed, or None."""
    data = entry["data"]
    typed_unit = data.get("typed_unit") or "C"
    if typed_unit != unit:
        return None
    if data.get("typed") is None:
        return data["value"]
    return parse(data["typed"])


def _pair(rows, entry, name, temp, alone):
    nearest = None
    for row in rows:
        gap_ms = abs(row["at_ms"] - entry["t_ms"])
        if row["temp"] is None or gap_ms > PAIR_MS:
            continue
        if nearest is None or gap_ms < nearest[0]:
            nearest = (gap_ms, row)
    if nearest is None:
        if alone:
            row = _row(entry["t_ms"], None)
            row[name] = temp
            rows.append(row)
        return
    row = nearest[1]
    if row[name] is None or (temp is not None and _is_worse(name, temp, row[name])):
        row[name] = temp


def _is_worse(name, temp, other):
    # The colder air and the higher recorder are what the rule asks about.
    return temp < other if name == "air_temp" else temp > other


def hold_product(state: dict) -> dict:
    """Return what is known of the milk in the vat, for the rule.

    Args:
        state: State of the make.
    """
    fat = run.last(state, "reading_taken", "fat_frac")
    equipment = in_effect(state)
    extra_s = equipment.get("extra_hold_s")
    return {
        "vessel": "vat",
        "fat_frac": None if fat is None else fat["data"]["value"],
        "is_sweetened": equipment.get("sweetened") == "yes",
        "extra_hold_s": 0
        if check_number("extra_hold_s", extra_s, 0, 86400)
        else extra_s,
    }


def phosphatase(state: dict, rule: dict) -> "str | None":
    """Return what the tests for phosphatase say by a rule, or None without any.

    A number between the rule's limits for different cheeses says nothing, nor
    does one that the rule has no limit for, or only one from memory.

    Args:
        state: State of the make.
        rule: a heat treatment rule.

    Returns:
        "negative", "positive" or None.
    """
    words = [
        entry["data"]["value"]
        for entry in run.entries(state, "reading_taken", "phosphatase_test")
    ]
    limits = rule.get("phosphatase") or {}
    for quantity, judge in (
        ("milk_phosphatase_mu_l", _milk_word),
        ("cheese_phosphatase_ug", _cheese_word),
    ):
        for entry in run.entries(state, "reading_taken", quantity):
            words.append(judge(limits, entry["data"]["value"]))
    for word in ("positive", "negative"):
        if word in words:
            return word
    return None


def _milk_word(limits, value):
    limit = limits.get("milk_max_mu_l")
    if limit is None or limit["status"] == "memory":
        return None
    return "negative" if value < limit["value"] else "positive"


def _cheese_word(limits, value):
    printed = [
        limits[name]["value"]
        for name in limits
        if name.endswith("_max_ug_phenol") and limits[name]["status"] != "memory"
    ]
    if not printed:
        return None
    if value <= min(printed):
        return "negative"
    return "positive" if value > max(printed) else None


def required(rule: dict, unit: str, product: dict, hold_s: float) -> "dict | None":
    """Return what a vat must show for a hold of this length, or None.

    Args:
        rule: a heat treatment rule.
        unit: "F" or "C".
        product: see `hold_product`.
        hold_s: how long the step holds [s].

    Returns:
        {"temp", "air_temp"} in `unit`; air_temp None where it is not asked.
    """
    chosen = None
    for row in rule["rows"]:
        if row["kind"] != "milk" or "vat" not in row["vessels"]["value"]:
            continue
        if row["min_temp"].get(unit) is None or row["hold_s"]["value"] > hold_s:
            continue
        if chosen is None or row["hold_s"]["value"] > chosen["hold_s"]["value"]:
            chosen = row
    if chosen is None:
        return None
    temp = chosen["min_temp"][unit]["value"] + _supplement(rule, chosen, unit, product)
    airspace = rule.get("airspace")
    rise = None
    if airspace and "vat" in airspace["vessels"]:
        rise = airspace["rise"].get(unit)
    return {"temp": temp, "air_temp": None if rise is None else temp + rise["value"]}


def _supplement(rule, row, unit, product):
    supplement = rule.get("supplement")
    if not supplement or row["supplement"] != "applies":
        return 0.0
    fat = product["fat_frac"]
    is_rich = fat is not None and fat >= supplement["fat_min_frac"]["value"]
    if is_rich or (product["is_sweetened"] and supplement["sweetened"]):
        return supplement["rise"][unit]["value"]
    return 0.0


def hold_start_ms(
    state: dict, step: dict, begun_ms: int, ended_ms: "int | None", rules: dict
) -> int:
    """Return the instant that a hold's clock runs from.

    Args:
        state: State of the make.
        step: step of the recipe.
        begun_ms: when it began [ms].
        ended_ms: when it ended [ms], or None.
        rules: {rule id: the rule}.

    Returns:
        Instant [ms]; the step's begin for any other step, without its rule, and
        while nothing was read.
    """
    rule = hold_rule(step, rules)
    if rule is None or opening(state) is None or not step.get("lasts"):
        return begun_ms
    found = hold_readings(state, begun_ms, ended_ms)
    product = hold_product(state)
    wanted = required(rule, found["unit"], product, step["lasts"]["value"])
    if wanted is None:
        return begun_ms
    return _last_start_ms(found["rows"], wanted, begun_ms)


def _last_start_ms(rows, wanted, begun_ms):
    start_ms = begun_ms
    is_low = False
    has_begun = False
    for row in rows:
        if _is_below(row, wanted):
            start_ms = row["at_ms"]
            is_low = True
        elif row["temp"] is not None and (is_low or not has_begun):
            start_ms = row["at_ms"]
            is_low = False
            has_begun = True
    return start_ms


def _is_below(row, wanted):
    if row["temp"] is not None and row["temp"] < wanted["temp"]:
        return True
    air = row["air_temp"]
    return (
        wanted["air_temp"] is not None and air is not None and air < wanted["air_temp"]
    )


def met_in_own_unit(
    state: dict, step: dict, fact: dict, rules: dict, target: dict
) -> bool:
    """Tell whether a reading below a target's band meets the rule as it was typed.

    A recipe's band is in Celsius, and a rule prints each unit for itself: 145 °F
    is enough although it is 62.8 °C.

    Args:
        state: State of the make.
        step: step of the recipe.
        fact: its Fact.
        rules: {rule id: the rule}.
        target: a target of the Step, with its last reading.
    """
    rule = hold_rule(step, rules)
    names = {"milk_temp_c": "temp", "air_space_temp_c": "air_temp"}
    if rule is None or target["quantity"] not in names or opening(state) is None:
        return False
    for entry in _within(state, target["quantity"], fact["begun_ms"], fact["ended_ms"]):
        if entry["id"] != target["last"]["id"]:
            continue
        unit = entry["data"].get("typed_unit") or "C"
        product = hold_product(state)
        wanted = required(rule, unit, product, step["lasts"]["value"])
        typed = _as_typed(entry, unit)
        limit = None if wanted is None else wanted[names[target["quantity"]]]
        return typed is not None and limit is not None and typed >= limit
    return False


def hold_chart(state: dict, opened: dict, rows: "list[dict]") -> dict:
    """Return which fields of the chart record are entered here as well.

    Args:
        state: State of the make.
        opened: body of its make_opened event; what it has is looked up anew,
            since more may have been entered after it.
        rows: rows of `hold_readings`.

    Returns:
        {chart field: whether it is}.
    """
    milk = run.entries(state, "reading_taken", "milk_volume_l")
    mass = run.entries(state, "reading_taken", "milk_mass_kg")
    equipment = in_effect(state)
    return {
        "date": bool(opened),
        "plant_name": bool(equipment.get("plant_name")),
        "product_name": True,
        "product_amount": bool(milk or mass),
        "hold_extent": len(rows) > 1,
        "indicating_reading": any(row["temp"] is not None for row in rows),
        "airspace_reading": any(row["air_temp"] is not None for row in rows),
        "operator_initials": bool(rows),
        "recorder_number": bool(equipment.get("recorder_number")),
    }


def verdict(
    rule: dict,
    readings: "list[dict]",
    unit: str,
    product: dict,
    chart: dict,
    is_over: bool,
) -> dict:
    """Return what readings of one batch meet, with what it means for the cheese.

    Args:
        rule: a heat treatment rule.
        readings: list of {"at_ms", "temp", "air_temp", "recorder_temp"}.
        unit: "F" or "C", what the thermometer reads.
        product: as `pasteurisation.heat_verdict` takes it.
        chart: {chart field: whether it is noted}.
        is_over: whether the hold has ended; one that still runs may yet meet the
            rule, so it is not assessed rather than not met.

    Returns:
        {"rule", "unit", "class", "reasons", "warnings", "hold", "if_not_met",
        "meaning"}; the meaning is "counts_as_pasteurised",
        "handle_as_unpasteurised" or "decide_before_use".
    """
    # Loaded when a hold is there to judge: the app starts without it.
    from ..formulas.heat.pasteurisation import heat_verdict

    found = heat_verdict(readings, unit, product, chart, rule)
    if not is_over and found["class"] == "heat_treated_only":
        found["class"] = "not_assessed"
        found["reasons"] = [{"key": "hold_not_over"}] + found["reasons"]
    return {
        "rule": rule["id"],
        "unit": unit,
        "class": found["class"],
        "reasons": found["reasons"],
        "warnings": found["warnings"],
        "hold": found["hold"],
        "if_not_met": found["if_not_met"],
        "meaning": {
            "reads_as_pasteurised": "counts_as_pasteurised",
            "heat_treated_only": "handle_as_unpasteurised",
            "not_assessed": "decide_before_use",
        }[found["class"]],
    }


def hold_verdict(state: dict, step: dict, fact: dict, rules: dict) -> "dict | None":
    """Return what the readings of a hold meet, as far as it has gone.

    Args:
        state: State of the make.
        step: step of the recipe.
        fact: its Fact.
        rules: {rule id: the rule}.

    Returns:
        As `verdict`, with "start_ms" the clock's start, [ms], and "gap" as
        `gap_of` tells it; None for any other step, before it began, or without
        its rule.
    """
    rule = hold_rule(step, rules)
    opened = opening(state)
    if rule is None or fact["begun_ms"] is None or opened is None:
        return None
    body = opened["data"]
    found = hold_readings(state, fact["begun_ms"], fact["ended_ms"])
    product = hold_product(state)
    product["phosphatase"] = phosphatase(state, rule)
    chart = hold_chart(state, body, found["rows"])
    gap = gap_of(rule, in_effect(state))
    told = verdict(
        with_gap(rule, gap["gap_s"]),
        found["rows"],
        found["unit"],
        product,
        chart,
        fact["ended_ms"] is not None,
    )
    told["start_ms"] = hold_start_ms(
        state, step, fact["begun_ms"], fact["ended_ms"], rules
    )
    told["gap"] = gap
    return told


def gap_of(rule: dict, equipment: dict) -> dict:
    """Return the longest gap between readings that counts, and on whose word.

    Args:
        rule: a heat treatment rule.
        equipment: see `equipment.in_effect`.

    Returns:
        {"gap_s", "is_own", "agreed_with", "refused_s"}: is_own where it is not
        the rule's; refused_s is one that was entered and does not count, since
        it is longer and nobody is named, else None.
    """
    usual_s = rule["gap_max_s"]["value"]
    found = {
        "gap_s": usual_s,
        "is_own": False,
        "agreed_with": None,
        "refused_s": None,
    }
    own_s = equipment.get("gap_max_s")
    if check_number("gap_max_s", own_s, 1, 3600):
        return found
    who = equipment.get(AGREED["gap_max_s"])
    who = who.strip() if isinstance(who, str) else ""
    if own_s > usual_s and not who:
        found["refused_s"] = own_s
        return found
    found.update({"gap_s": own_s, "is_own": True, "agreed_with": who or None})
    return found


def with_gap(rule: dict, gap_max_s: "float | None") -> dict:
    """Return a rule with the gap between readings that was agreed, if one was.

    The gap is this tool's own setting, to be agreed with the inspector; nothing
    else of a rule can be set.

    Args:
        rule: a heat treatment rule.
        gap_max_s: longest gap agreed [s], or None.
    """
    if check_number("gap_max_s", gap_max_s, 1, 3600):
        return rule
    agreed = dict(rule)
    figure = dict(rule["gap_max_s"])
    figure["value"] = gap_max_s
    agreed["gap_max_s"] = figure
    return agreed
