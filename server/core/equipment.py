"""What a creamery has: asked once, frozen into a make, added to while it runs.

Rules first.
1. A row's key is the name of the sums' input that it serves; unit, limits and
   choices are that input's own and stand nowhere else. Rows without a sum are
   words of the heat-treatment record.
2. The opening of a make freezes a mapping {key: value in the input's unit}.
   An `equipment_set` entry alters one key from then on; the newest one holds.
   Beside the values stand "typed", {key: [as typed, unit]}, and for what was
   agreed with the authority a key of AGREED with whom it was agreed.
3. A value and whom it was agreed with belong together: a new value without a
   name leaves none standing.
4. What a vat itself showed, such as its time constant, is no equipment: it is
   learnt from its makes, and nothing here goes before it.
5. Keys that are not known here, of older or newer apps, are kept.
"""

from . import run
from .quantities import check_number

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

GROUPS = (
    "vat",
    "heat_record",
    "instruments",
    "rennet",
    "press",
    "bed",
    "brine",
    "store",
)

# (key, group, topic of its sum, its sum); a row of words has no sum.
TABLE: "tuple[tuple[str, str, str | None, str | None], ...]" = (
    ("heating", "vat", "heat", "heat_time"),
    ("power_kw", "vat", "heat", "heat_time"),
    ("water_most_c", "vat", "wash", "wash_water"),
    ("plant_name", "heat_record", None, None),
    ("recorder_number", "heat_record", None, None),
    ("gap_max_s", "heat_record", "heat_treatment", "heat_treatment"),
    ("extra_hold_s", "heat_record", "heat_treatment", "heat_treatment"),
    ("sweetened", "heat_record", "heat_treatment", "heat_treatment"),
    ("reading_sd_k", "instruments", "heat", "heat_forecast"),
    ("reading_sd_ph", "instruments", "acid", "acid_forecast"),
    ("alkali_mol_l", "instruments", "milk", "acidity_titration"),
    ("sample_ml", "instruments", "milk", "acidity_titration"),
    ("strength_kind", "rennet", "ingredients", "rennet_dose"),
    ("strength_imcu_per_ml", "rennet", "ingredients", "rennet_dose"),
    ("strength_soxhlet", "rennet", "ingredients", "rennet_dose"),
    ("form", "rennet", "ingredients", "calcium_chloride"),
    ("solution_frac", "rennet", "ingredients", "calcium_chloride"),
    ("solution_density_kg_l", "rennet", "ingredients", "calcium_chloride"),
    ("starter_kind", "rennet", "acid", "acid_temperature"),
    ("pack_units", "rennet", "ingredients", "starter_packs"),
    ("dose_units_per_l", "rennet", "ingredients", "starter_packs"),
    ("bore_m", "press", "press", "press_gauge"),
    ("cylinder_count", "press", "press", "press_gauge"),
    ("lever_ratio", "press", "press", "press_gauge"),
    ("efficiency_frac", "press", "press", "press_gauge"),
    ("dead_weight_kg", "press", "press", "press_gauge"),
    ("side_by_side", "press", "press", "press_gauge"),
    ("plate_kg", "press", "press", "press_stack"),
    ("weight_arm_m", "press", "press", "press_lever"),
    ("plate_arm_m", "press", "press", "press_lever"),
    ("length_m", "bed", "press", "bed_weights"),
    ("width_m", "bed", "press", "bed_weights"),
    ("volume_l", "brine", "brine", "brine_make_up"),
    ("method", "brine", "brine", "brine_strength"),
    ("silver_mol_l", "brine", "brine", "brine_strength"),
    ("bulb_error_k", "store", "store", "humidity"),
    ("air_pressure_kpa", "store", "store", "humidity"),
)

# What is agreed with the authority, and under which key with whom.
AGREED = {"gap_max_s": "gap_agreed_with"}

# Of one vat and its recorder alone: another vat does not take it over.
OF_VAT = (
    "heating",
    "power_kw",
    "recorder_number",
    "gap_max_s",
    "gap_agreed_with",
    "extra_hold_s",
)

LONGEST = 80  # letters of a row of words
BESIDE = ("typed",)  # what stands beside the values in a mapping


def layout() -> "list[dict]":
    """Return every row that can be entered, in the order of its groups.

    Returns:
        List of {"name", "group", "kind", "unit", "units", "low", "high",
        "ask_low", "ask_high", "choices", "sum", "agreed", "longest"}; kind is
        "number", "count", "choice" or "text"; agreed tells whether it only
        counts with the name of who agreed.
    """
    return [_row(entry) for entry in TABLE]


def _row(entry):
    key, group, topic, sum_key = entry
    found = {
        "name": key,
        "group": group,
        "kind": "text",
        "unit": "",
        "units": [""],
        "low": None,
        "high": None,
        "ask_low": None,
        "ask_high": None,
        "choices": None,
    }
    if topic is not None:
        item = _input(key, topic, sum_key)
        for name in ("kind", "unit", "units", "low", "high", "choices"):
            found[name] = item[name]
        found["ask_low"] = item["ask_low"]
        found["ask_high"] = item["ask_high"]
    found["sum"] = sum_key
    found["agreed"] = key in AGREED
    found["longest"] = LONGEST if topic is None else None
    return found


def _input(key, topic, sum_key):
    for row in _topic_rows(topic):
        if row["key"] == sum_key:
            for item in row["inputs"]:
                if item["name"] == key:
                    return item
    raise ValueError("key %r is no input of %r" % (key, sum_key))


def _topic_rows(topic):
    # One topic at a time, and only when asked: a phone that starts with an
    # entry of the press need not load every sum.
    if topic == "heat":
        from .sums.heat import ROWS
    elif topic == "heat_treatment":
        from .sums.heat_treatment import ROWS
    elif topic == "ingredients":
        from .sums.ingredients import ROWS
    elif topic == "milk":
        from .sums.milk import ROWS
    elif topic == "acid":
        from .sums.acid import ROWS
    elif topic == "wash":
        from .sums.wash import ROWS
    elif topic == "press":
        from .sums.press import ROWS
    elif topic == "brine":
        from .sums.brine import ROWS
    else:
        from .sums.store import ROWS
    return ROWS


def _find(key):
    for entry in TABLE:
        if entry[0] == key:
            return _row(entry)
    return None


def read(key: str, given: dict) -> dict:
    """Return what was typed for one row, in its own unit.

    Args:
        key: key of TABLE.
        given: {"typed", "unit"} or {"value"}, as `sums.reading.read_given`
            takes it; "sure" true once the maker stands by an unlikely value.

    Returns:
        {"value", "typed", "problems", "ask"}: value None with problems.
    """
    row = _find(key)
    if row is None:
        unknown = {"field": "key", "key": "unknown", "limit": key}
        return {"value": None, "typed": None, "problems": [unknown], "ask": []}
    if row["kind"] == "text":
        word = given.get("value")
        problems = check_value(key, word)
        value = None if problems else word
        return {"value": value, "typed": None, "problems": problems, "ask": []}
    # Units are only needed where something is typed.
    from .sums.reading import read_given

    return read_given(row, given)


def check_value(key: str, value: "Any") -> "list[dict]":
    """Return what makes a value of one key impossible.

    Args:
        key: key of TABLE; any other is not known here and is let through.
        value: in the row's own unit.

    Returns:
        List of {"field", "key", "limit"}; the field is the key.
    """
    row = _find(key)
    if row is None:
        return _check_plain(key, value)
    if row["kind"] == "text":
        return _check_words(key, value)
    if row["kind"] == "choice":
        if value in row["choices"]:
            return []
        return [{"field": key, "key": "not_a_choice", "limit": row["choices"]}]
    problems = check_number(key, value, row["low"], row["high"])
    if not problems and row["kind"] == "count" and value != int(value):
        return [{"field": key, "key": "not_whole", "limit": None}]
    return problems


def _check_plain(key, value):
    if isinstance(value, str):
        return _check_words(key, value)
    if value is True or value is False:
        return []
    return check_number(key, value, None, None)


def _check_words(key, value):
    if not isinstance(value, str):
        return [{"field": key, "key": "not_text", "limit": None}]
    if not value.strip():
        return [{"field": key, "key": "missing", "limit": None}]
    if len(value) > LONGEST:
        return [{"field": key, "key": "too_long", "limit": LONGEST}]
    return []


def check_entry(data: dict) -> "list[dict]":
    """Return what is wrong with the body of an `equipment_set` entry.

    Args:
        data: {"key", "value", "agreed_with"} and what was typed.

    Returns:
        List of {"field", "key", "limit"}.
    """
    key = data["key"]
    if key in BESIDE or key in AGREED.values():
        return [{"field": "key", "key": "unknown", "limit": key}]
    problems = check_value(key, data["value"])
    if key in AGREED and not problems:
        problems = _check_words("agreed_with", data.get("agreed_with") or "")
    return problems


def check_equipment(mapping: dict) -> "list[dict]":
    """Return what is wrong with the equipment that a make is to be opened with.

    Args:
        mapping: {key: value in the row's own unit}; see the module's rules.

    Returns:
        List of {"field", "key", "limit"}; keys not known here are no problem.
    """
    if not isinstance(mapping, dict):
        return [{"field": "equipment", "key": "not_a_mapping", "limit": None}]
    problems = []
    for entry in TABLE:
        key = entry[0]
        if mapping.get(key) is None:
            continue
        problems.extend(check_value(key, mapping[key]))
        if key in AGREED and _check_words("", mapping.get(AGREED[key]) or ""):
            problems.append({"field": key, "key": "agreed_with_missing", "limit": None})
    return problems


def in_effect(state: dict) -> dict:
    """Return the equipment of a make as it stands: its opening's, then what was set.

    Args:
        state: State of the make.

    Returns:
        {key: value} with "typed" and the keys of AGREED; see the module's rules.
    """
    found: dict = {"typed": {}}
    opened = run.entries(state, "make_opened")
    base = opened[0]["data"].get("equipment") if opened else None
    base = base or {}
    for key in base:
        found[key] = base[key]
    typed = found["typed"]
    found["typed"] = dict(typed) if isinstance(typed, dict) else {}
    for entry in run.entries(state, "equipment_set"):
        _set(found, entry["data"])
    return found


def _set(found, data):
    key = data["key"]
    found[key] = data["value"]
    found["typed"].pop(key, None)
    if data.get("typed") is not None:
        found["typed"][key] = [data["typed"], data.get("typed_unit") or ""]
    if key in AGREED:
        found.pop(AGREED[key], None)
        if data.get("agreed_with"):
            found[AGREED[key]] = data["agreed_with"]


def of_make(desk: dict, make_id: str) -> dict:
    """Return the equipment of a make that a desk holds, see `in_effect`.

    Args:
        desk: Desk.
        make_id: UUID of the make.
    """
    state = desk["makes"].get(make_id)
    return {"typed": {}} if state is None else in_effect(state)


def served(equipment: dict, item: dict) -> "Any":
    """Return what equipment says of one input of a sum, or None.

    A value that the input could not take is not handed on: it is asked for.

    Args:
        equipment: see `in_effect`.
        item: the sum's input.
    """
    told: "Any" = equipment.get(item["name"])
    if item["kind"] == "choice":
        return told if told in item["choices"] else None
    if item["kind"] == "series" or check_number("", told, item["low"], item["high"]):
        return None
    if item["kind"] == "count" and told != int(told):
        return None
    if item["name"] in AGREED and not equipment.get(AGREED[item["name"]]):
        return None  # on nobody's word: the rule's own figure stands
    return told
