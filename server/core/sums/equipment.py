"""What can be entered as equipment, each row with the limits of the sum it serves.

A row's unit, limits and choices are those of the input of that name and stand
nowhere else; rows without a sum are words, of the heat-treatment record and of lots, or
say whether an instrument is there and how often it is checked.
"""

from ..log.equipment_form import AGREED, LONGEST, check_plain, check_words
from ..units.quantities import check_number
from .reading import read_given

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.equipment import Beside, EquipmentRow
    from server.shapes.core.state import Event
    from server.shapes.core.words import Problem

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

# (key, group, its sum); a row of words has no sum.
TABLE: "tuple[tuple[str, str, str | None], ...]" = (
    ("heating", "vat", "heat_time"),
    ("power_kw", "vat", "heat_time"),
    ("water_most_c", "vat", "wash_water"),
    ("plant_name", "heat_record", None),
    ("recorder_number", "heat_record", None),
    ("gap_max_s", "heat_record", "heat_treatment"),
    ("extra_hold_s", "heat_record", "heat_treatment"),
    ("sweetened", "heat_record", "heat_treatment"),
    ("reading_sd_k", "instruments", "heat_forecast"),
    ("reading_sd_ph", "instruments", "acid_forecast"),
    ("ph_meter", "instruments", None),
    ("titration", "instruments", None),
    ("check_every_days", "instruments", None),
    ("alkali_mol_l", "instruments", "acidity_titration"),
    ("sample_ml", "instruments", "acidity_titration"),
    ("rennet_lot", "rennet", None),
    ("strength_kind", "rennet", "rennet_dose"),
    ("strength_imcu_per_ml", "rennet", "rennet_dose"),
    ("strength_imcu_per_g", "rennet", "rennet_dose"),
    ("strength_soxhlet", "rennet", "rennet_dose"),
    ("tablet_sets_l", "rennet", "rennet_dose"),
    ("calcium_lot", "rennet", None),
    ("form", "rennet", "calcium_chloride"),
    ("solution_frac", "rennet", "calcium_chloride"),
    ("solution_density_kg_l", "rennet", "calcium_chloride"),
    ("starter_lot", "rennet", None),
    ("starter_kind", "rennet", "acid_temperature"),
    ("pack_units", "rennet", "starter_packs"),
    ("dose_units_per_l", "rennet", "starter_packs"),
    ("pack_g", "rennet", "starter_packs"),
    ("bore_m", "press", "press_gauge"),
    ("cylinder_count", "press", "press_gauge"),
    ("lever_ratio", "press", "press_gauge"),
    ("efficiency_frac", "press", "press_gauge"),
    ("dead_weight_kg", "press", "press_gauge"),
    ("side_by_side", "press", "press_gauge"),
    ("plate_kg", "press", "press_stack"),
    ("weight_arm_m", "press", "press_lever"),
    ("plate_arm_m", "press", "press_lever"),
    ("length_m", "bed", "bed_weights"),
    ("width_m", "bed", "bed_weights"),
    ("volume_l", "brine", "brine_make_up"),
    ("method", "brine", "brine_strength"),
    ("silver_mol_l", "brine", "brine_strength"),
    ("bulb_error_k", "store", "humidity"),
    ("air_pressure_kpa", "store", "humidity"),
)

# Rows that serve no sum and are no words: what may be said of them.
CHOICES = {"ph_meter": ("yes", "no"), "titration": ("yes", "no")}

# And of how many: unit, lowest, highest. How often a thermometer is checked is the
# creamery's own to set: common practice, no source.
COUNTS = {"check_every_days": ("d", 1, 366)}

# A row that makes sense beside some words of a choice alone:
# (row of the choice, its words, whether beside none chosen too).
BESIDE = {
    "power_kw": ("heating", ["power"], False),
    "strength_imcu_per_ml": ("strength_kind", ["imcu"], True),
    "strength_imcu_per_g": ("strength_kind", ["imcu_powder"], False),
    "strength_soxhlet": ("strength_kind", ["soxhlet", "soxhlet_powder"], False),
    "tablet_sets_l": ("strength_kind", ["tablet"], False),
    "solution_frac": ("form", ["solution"], False),
    "solution_density_kg_l": ("form", ["solution"], False),
    "silver_mol_l": ("method", ["titration"], False),
}


def layout() -> "list[EquipmentRow]":
    """Return every row that can be entered, in the order of its groups.

    Returns:
        List of {"name", "group", "kind", "unit", "units", "low", "high",
        "ask_low", "ask_high", "choices", "sum", "agreed", "longest", "beside"};
        kind is "number", "count", "choice" or "text"; agreed tells whether it only
        counts with the name of who agreed; beside is {"name", "words", "usual"} of the
        choice that it makes sense with, or None.
    """
    return [_row(entry) for entry in TABLE]


def _row(entry: "tuple[str, str, str | None]") -> "EquipmentRow":
    key, group, sum_key = entry
    told: "Any" = {
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
    if sum_key is not None:
        item = _input(key, sum_key)
        for name in ("kind", "unit", "units", "low", "high", "choices"):
            told[name] = item[name]
        told["ask_low"] = item["ask_low"]
        told["ask_high"] = item["ask_high"]
    if key in CHOICES:
        told["kind"], told["choices"] = "choice", list(CHOICES[key])
    if key in COUNTS:
        told["kind"], (told["unit"], told["low"], told["high"]) = "count", COUNTS[key]
        told["units"] = [told["unit"]]
    told["sum"] = sum_key
    told["agreed"] = key in AGREED
    told["beside"] = _beside(key)
    told["longest"] = LONGEST if told["kind"] == "text" else None
    return told


def _input(key: str, sum_key: str) -> "dict[str, Any]":
    # Loaded when asked, and one topic at a time: a phone that starts with an entry
    # of the press need not load every sum.
    from .catalogue import find

    asked = find(sum_key)
    for item in asked["inputs"] if asked else []:
        if item["name"] == key:
            return item
    raise ValueError("key %r is no input of %r" % (key, sum_key))


def _beside(key: str) -> "Beside | None":
    if key not in BESIDE:
        return None
    name, words, usual = BESIDE[key]
    return {"name": name, "words": words, "usual": usual}


def _find(key: str) -> "EquipmentRow | None":
    for entry in TABLE:
        if entry[0] == key:
            return _row(entry)
    return None


def read(key: str, given: "dict[str, Any]") -> "dict[str, Any]":
    """Return what was typed for one row, in its own unit.

    Args:
        key: key of TABLE.
        given: {"typed", "unit"} or {"value"}, as `sums.reading.read_given`
            takes it; "sure" true once the maker stands by an unlikely value.

    Returns:
        {"value", "typed", "problems", "ask"}: value None with problems.
    """
    item = _find(key)
    if item is None:
        unknown = {"field": "key", "key": "unknown", "limit": key}
        return {"value": None, "typed": None, "problems": [unknown], "ask": []}
    if item["kind"] == "text":
        word = given.get("value")
        problems = check_value(key, word)
        value = None if problems else word
        return {"value": value, "typed": None, "problems": problems, "ask": []}
    return read_given(dict(item), given)


def check_value(key: str, value: "Any") -> "list[Problem]":
    """Return what makes a value of one key impossible.

    Args:
        key: key of TABLE; any other is not known here and is let through.
        value: in the row's own unit.

    Returns:
        List of {"field", "key", "limit"}; the field is the key.
    """
    item = _find(key)
    if item is None:
        return check_plain(key, value)
    if item["kind"] == "text":
        return check_words(key, value)
    if item["kind"] == "choice":
        if value in (item["choices"] or []):
            return []
        return [{"field": key, "key": "not_a_choice", "limit": item["choices"]}]
    problems = check_number(key, value, item["low"], item["high"])
    if not problems and item["kind"] == "count" and value != int(value):
        return [{"field": key, "key": "not_whole", "limit": None}]
    return problems


def check_limits(event: "Event") -> "list[Problem]":
    """Return which limit of its key an entry to be recorded does not keep.

    Args:
        event: event of a sound form; any kind but `equipment_set` keeps all.

    Returns:
        List of {"field", "key", "limit"}; the field is the key.
    """
    if event["kind"] != "equipment_set":
        return []
    return check_value(event["data"]["key"], event["data"]["value"])


def check_equipment(mapping: "dict[str, Any]") -> "list[Problem]":
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
        if key in AGREED and check_words("", mapping.get(AGREED[key]) or ""):
            problems.append({"field": key, "key": "agreed_with_missing", "limit": None})
    return problems
