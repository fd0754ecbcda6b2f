"""In what unit the numbers of a note or reason are: carried with it, never guessed.

A number that is not named here is a count, or its words say what it is of.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


# What the thermometer shows: a rule's temperature is never told in another unit.
AS_READ = "as_read"
_SPANS = {"value": "s", "limit": "s"}
_READ = {"value": AS_READ, "limit": AS_READ}

NOTE_UNITS = {
    "hold_too_short": _SPANS,
    "gap_too_long": _SPANS,
    "reading_missing": _SPANS,
    "holding_time_not_entered": _SPANS,
    "reads_as_thermised": _SPANS,
    "thermised_if_phosphatase_positive": _SPANS,
    "temperature_never_reached": _READ,
    "temperature_fell_below": _READ,
    "airspace_too_cold": _READ,
    "airspace_not_recorded_in_hold": _READ,
    "recorder_reads_above_indicator": _READ,
    "thermometer_off": {"value": "K", "limit": "K"},
    "ph_not_reached": {"value": "pH", "limit": "pH", "after_s": "s"},
    "mark_missed": {"value": "s"},
    "acidity_without_limit": {"value": "fraction lactic", "after_s": "s"},
    "acidity_not_reached": {
        "value": "fraction lactic",
        "limit": "fraction lactic",
        "after_s": "s",
    },
    "cut.floc_too_early": {"low": "s", "high": "s"},
    "cut.floc_too_late": {"low": "s", "high": "s"},
    "density_outside_table": {"low": "C", "high": "C"},
    "drain_more_than_whey": {"value": "kg", "limit": "kg"},
    "jacket_out_of_reach": {"value": "C"},
    "reading_set_aside": {"temp_c": "C"},
    "vat_is_warm_enough": {"value": "C"},
    "water_hotter_than_most": {"value": "C", "limit": "C"},
}


def with_units(
    told: "dict[str, Any]", read_in: "str | None" = None
) -> "dict[str, Any]":
    """Return a note or reason with the units of its numbers.

    Args:
        told: {"key", ...}; the key with or without "note." before it.
        read_in: unit that the thermometer reads, of a rule's reason; else None.

    Returns:
        A copy; with "units" {name of the number: unit} where it has any, and
        "as_read" where those are a thermometer's own.
    """
    key = told["key"]
    units = NOTE_UNITS.get(key[5:] if key.startswith("note.") else key)
    whole = dict(told)
    if units is None:
        return whole
    whole["as_read"] = AS_READ in units.values()
    whole["units"] = {
        name: read_in if units[name] == AS_READ else units[name]
        for name in units
        if told.get(name) is not None
    }
    return whole
