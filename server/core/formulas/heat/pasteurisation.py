"""Do the recorded readings meet a named rule of pasteurisation?

The verdict comes from the rule's own table and from nothing else: never from a
lethality integral, never from a converted or rounded temperature. It speaks of
readings; the legal record is the plant's chart, and the inspector decides.

How a hold is judged:
1. Readings are compared in the unit the legal thermometer reads, with the figure
   the rule prints in that unit.
2. In a vat the hold runs from the first reading at or above the temperature to the
   last one in an unbroken row. One reading below, of the milk or of the air above
   it, starts it again. Nothing is credited outside the first and last reading.
   In a continuous plant the hold is the timed holding tube's, and every reading
   must be at or above the temperature: an hour of readings is not an hour of hold.
3. Three answers are kept apart: met, not met, and not known. A gap longer than the
   rule allows, a missing reading, no reading of the air, fat not entered, a
   figure known from memory or a rule made for other equipment make it not known.
4. One row of the table met is enough, and then the chart must be complete.
   If none is met and one is not known, the answer is not known.

Milk that is not shown to be pasteurised is to be handled as if it were not.
"""

from ...numbers.bounds import require_number, require_within
from ...numbers.refused import Refused
from .heat_rows import judge_row
from .holds import longest_hold

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


def heat_verdict(
    readings: "list[dict[str, Any]]",
    unit: str,
    product: "dict[str, Any]",
    chart: "dict[str, Any]",
    rule: "dict[str, Any]",
) -> "dict[str, Any]":
    """Return whether the readings of one batch meet a rule of pasteurisation.

    Args:
        readings: list of {"at_ms", "temp", "air_temp", "recorder_temp"} in order
            of time, all in `unit`; `temp` is the indicating thermometer at the
            coldest point, None where it was not read; the last two may be missing.
        unit: "F" or "C", what the legal thermometer reads.
        product: {"vessel": "vat" or "flow", "kind": "milk" unless it says
            otherwise, "fat_frac", "is_sweetened", "phosphatase": "negative" or
            "positive", "extra_hold_s": filling and emptying time to add,
            "holding_s": timed hold of a continuous plant}; only the vessel must
            be there, and milk not said to be sweetened is taken as not.
        chart: what the chart record holds, by the keys of the rule's chart fields.
        rule: a heat treatment file of the rules.

    Returns:
        {"class", "reasons", "warnings", "hold", "if_not_met"}. The class is
        "reads_as_pasteurised", "heat_treated_only" or "not_assessed". A reason or
        warning is {"key", ...numbers}. The hold is {"row", "min_temp",
        "air_min_temp", "start_ms", "end_ms", "held_s", "needed_s"} of the row that
        was met, else None. if_not_met names the rule that then applies, else None.

    Raises:
        Refused: readings out of order, or a figure that cannot be true.

    Source: the rule given.
    Valid: one batch in a vat, or one unbroken run of a continuous plant.
    Check: 145.0 °F held 30:00 under air at 150.0 °F is met; 29:59 is not.

    >>> heat_verdict([], "F", {"vessel": "vat"}, {}, {"rows": []})["class"]
    'not_assessed'
    """
    _require_input(readings, unit, product)
    kind = product.get("kind", "milk")
    rows = [row for row in rule["rows"] if row["kind"] == kind]
    verdict = {
        "class": "not_assessed",
        "reasons": [],
        "warnings": _warnings(readings),
        "hold": None,
        "if_not_met": rule.get("if_not_met"),
    }
    if all(reading.get("temp") is None for reading in readings):
        verdict["reasons"] = [{"key": "no_readings"}]
    elif not rows:
        verdict["reasons"] = [{"key": "no_row_for_product", "kind": kind}]
    else:
        # Only now: without a single reading there is nothing to try a row against.
        results = [judge_row(row, readings, unit, product, rule) for row in rows]
        _settle(verdict, results, readings, product, chart, rule, unit)
    return verdict


def _require_input(
    readings: "list[dict[str, Any]]", unit: str, product: "dict[str, Any]"
) -> None:
    if unit not in ("F", "C"):
        raise Refused("not_a_choice", "unit", unit, ["F", "C"])
    if product.get("vessel") not in ("vat", "flow"):
        raise Refused("not_a_choice", "vessel", product.get("vessel"), ["vat", "flow"])
    if product.get("fat_frac") is not None:
        require_within("fat_frac", product["fat_frac"], 0, 1)
    require_within("extra_hold_s", product.get("extra_hold_s", 0), 0, 86400)
    if product.get("holding_s") is not None:
        require_within("holding_s", product["holding_s"], 0, 86400)
    last_ms = None
    for reading in readings:
        at_ms = reading["at_ms"]
        if last_ms is not None and at_ms < last_ms:
            raise Refused("not_in_order", "at_ms", at_ms, last_ms)
        last_ms = at_ms
        for name in ("temp", "air_temp", "recorder_temp"):
            if reading.get(name) is not None:
                require_number(name, reading[name])


def _settle(
    verdict: "dict[str, Any]",
    results: "list[dict[str, Any]]",
    readings: "list[dict[str, Any]]",
    product: "dict[str, Any]",
    chart: "dict[str, Any]",
    rule: "dict[str, Any]",
    unit: str,
) -> None:
    """Put class, reasons and hold together from the verdicts on all rows."""
    met = [result for result in results if result["state"] == "met"]
    unknown = [result for result in results if result["state"] == "unknown"]
    missing = _missing_fields(chart, product, rule)
    phosphatase = _phosphatase_reason(product, rule, bool(met))
    if met:
        verdict["hold"] = met[0]["hold"]
        if missing:
            verdict["reasons"].append({"key": "record_incomplete", "missing": missing})
        if phosphatase:
            verdict["reasons"].append(phosphatase)
        if not verdict["reasons"]:
            verdict["class"] = "reads_as_pasteurised"
            verdict["if_not_met"] = None
        elif phosphatase and phosphatase["key"] == "phosphatase_positive":
            verdict["class"] = "heat_treated_only"
        return
    if unknown:
        for result in unknown:
            verdict["reasons"] += result["reasons"]
        return
    verdict["class"] = "heat_treated_only"
    if missing:
        verdict["warnings"].append({"key": "record_incomplete", "missing": missing})
    for result in results:
        verdict["reasons"] += result["reasons"]
    if not verdict["reasons"]:
        verdict["reasons"].append(_never_reached(results, readings))
    verdict["reasons"] += _thermised(readings, unit, product, rule)


def _never_reached(
    results: "list[dict[str, Any]]", readings: "list[dict[str, Any]]"
) -> "dict[str, Any]":
    temps = [r["temp"] for r in readings if r.get("temp") is not None]
    limits = [r["hold"]["min_temp"] for r in results if r["hold"]]
    return {
        "key": "temperature_never_reached",
        "value": max(temps),
        "limit": min(limits) if limits else None,
    }


def _missing_fields(
    chart: "dict[str, Any]", product: "dict[str, Any]", rule: "dict[str, Any]"
) -> "list[str]":
    fields = rule.get("chart_fields", {}).get(product["vessel"], [])
    return [
        field["key"]
        for field in fields
        if field["required"] and chart.get(field["key"]) in (None, "", False)
    ]


def _phosphatase_reason(
    product: "dict[str, Any]", rule: "dict[str, Any]", is_met: bool
) -> "dict[str, Any] | None":
    result = product.get("phosphatase")
    if result == "positive":
        return {"key": "phosphatase_positive"}
    if is_met and rule.get("phosphatase_required") and result is None:
        return {"key": "phosphatase_not_entered"}
    return None


def _thermised(
    readings: "list[dict[str, Any]]",
    unit: str,
    product: "dict[str, Any]",
    rule: "dict[str, Any]",
) -> "list[dict[str, Any]]":
    """Name thermised milk where the rule has the word."""
    named = rule.get("thermised")
    if not named or unit not in named["from_temp"]:
        return []
    low, high = named["from_temp"][unit], named["to_temp"][unit]
    if "memory" in (low["status"], high["status"], named["hold_s"]["status"]):
        return []
    temps = [r["temp"] for r in readings if r.get("temp") is not None]
    if max(temps) > high["value"]:
        return []
    gap_max_s = rule["gap_max_s"]["value"]
    held_s = longest_hold(readings, low["value"], None, gap_max_s, False)["held_s"]
    if product["vessel"] == "flow":
        held_s = (product.get("holding_s") or 0) if min(temps) >= low["value"] else 0
    if held_s < named["hold_s"]["value"]:
        return []
    if product.get("phosphatase") == "negative":
        return []
    sure = product.get("phosphatase") == named["phosphatase"]
    key = "reads_as_thermised" if sure else "thermised_if_phosphatase_positive"
    return [{"key": key, "value": held_s, "limit": named["hold_s"]["value"]}]


def _warnings(readings: "list[dict[str, Any]]") -> "list[dict[str, Any]]":
    """Name the first reading at which the recorder stood above the indicator."""
    high = [
        reading
        for reading in readings
        if reading.get("temp") is not None
        and reading.get("recorder_temp") is not None
        and reading["recorder_temp"] > reading["temp"]
    ]
    if not high:
        return []
    return [
        {
            "key": "recorder_reads_above_indicator",
            "at_ms": high[0]["at_ms"],
            "value": high[0]["recorder_temp"],
            "limit": high[0]["temp"],
            "count": len(high),
        }
    ]
