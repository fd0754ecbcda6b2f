"""One row of a table of pasteurisation against the readings of a batch.

The answer to a row is "met", "not_met" or "unknown", with reasons as keys and
numbers, and the hold that was judged.
"""

from .holds import longest_gap_s, longest_hold, restarts

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


def judge_row(
    row: "dict[str, Any]",
    readings: "list[dict[str, Any]]",
    unit: str,
    product: "dict[str, Any]",
    rule: "dict[str, Any]",
) -> "dict[str, Any]":
    """Return whether one row of a rule's table is met.

    Args:
        row: one of the rule's rows.
        readings: as heat_verdict takes them; one temperature at least.
        unit: "F" or "C", what the legal thermometer reads.
        product: as heat_verdict takes it.
        rule: the whole rule, for supplement, airspace and gap.

    Returns:
        {"state", "reasons", "hold"}: "met", "not_met" or "unknown"; the hold is
        None where no temperature of the row could be tried.

    Raises:
        KeyError: a rule without a part that its rows need.

    Source: the rule given.
    Check: a temperature not printed in the unit is unknown.

    >>> row = {"key": "vat_30_min", "min_temp": {}}
    >>> judge_row(row, [], "F", {}, {})["state"]
    'unknown'
    """
    figure = row["min_temp"].get(unit)
    if figure is None:
        return _unknown({"key": "rule_not_printed_in_unit", "row": row["key"]})
    if product["vessel"] not in row["vessels"]["value"]:
        return _judge_other_equipment(row, figure, readings, unit, product, rule)
    base = _try(row, figure["value"], [figure], readings, unit, product, rule)
    if row["supplement"] == "none" or base["state"] == "not_met":
        return base
    supplement = rule["supplement"]
    needed = _is_supplemented(product, supplement)
    if needed is False:
        return base
    reason = {"row": row["key"], "value": product.get("fat_frac")}
    if row["supplement"] != "applies":
        scope = "supplement_scope_unclear" if needed else "fat_not_entered"
        return _unknown(dict(reason, key=scope))
    rise = supplement["rise"][unit]
    figures = [figure, rise, supplement["fat_min_frac"]]
    raised_temp = figure["value"] + rise["value"]
    raised = _try(row, raised_temp, figures, readings, unit, product, rule)
    if needed or raised["state"] == "met":
        return raised
    # The base temperature is met, or may be, and the raised one is not: the fat
    # decides.
    answer = _unknown(dict(reason, key="fat_not_entered"))
    answer["reasons"] = base["reasons"] + answer["reasons"]
    return answer


def _judge_other_equipment(
    row: "dict[str, Any]",
    figure: "dict[str, Any]",
    readings: "list[dict[str, Any]]",
    unit: str,
    product: "dict[str, Any]",
    rule: "dict[str, Any]",
) -> "dict[str, Any]":
    """A row made for other equipment can leave the answer open, never give it."""
    plain = dict(rule, airspace=None)
    tried = _try(row, figure["value"], [figure], readings, unit, product, plain)
    if tried["state"] == "met":
        return _unknown({"key": "row_for_other_equipment", "row": row["key"]})
    return {"state": "not_met", "reasons": [], "hold": None}


def _unknown(reason: "dict[str, Any]") -> "dict[str, Any]":
    return {"state": "unknown", "reasons": [reason], "hold": None}


def _is_supplemented(
    product: "dict[str, Any]", supplement: "dict[str, Any]"
) -> "bool | None":
    """Return True, False, or None when fat or sweetener is not known."""
    fat_frac, is_sweetened = product.get("fat_frac"), product.get("is_sweetened")
    if is_sweetened and supplement["sweetened"]:
        return True
    if fat_frac is None:
        return None
    return fat_frac >= supplement["fat_min_frac"]["value"]


def _try(
    row: "dict[str, Any]",
    min_temp: int,
    figures: "list[dict[str, Any]]",
    readings: "list[dict[str, Any]]",
    unit: str,
    product: "dict[str, Any]",
    rule: "dict[str, Any]",
) -> "dict[str, Any]":
    """Judge the readings against one temperature and hold of a row."""
    air_min = None
    airspace = rule.get("airspace")
    if airspace and product["vessel"] in airspace["vessels"]:
        rise = airspace["rise"].get(unit)
        if rise is None:
            return _unknown({"key": "rule_not_printed_in_unit", "row": row["key"]})
        air_min = min_temp + rise["value"]
        figures = figures + [rise]
    figures = figures + [row["hold_s"], row["vessels"]]
    needed_s = row["hold_s"]["value"] + product.get("extra_hold_s", 0)
    gap_max_s = rule["gap_max_s"]["value"]
    if product["vessel"] == "flow":
        judged = _judge_flow(row, min_temp, readings, needed_s, gap_max_s, product)
    else:
        judged = _judge_vat(row, min_temp, air_min, readings, needed_s, gap_max_s)
    if any(figure["status"] == "memory" for figure in figures):
        return _unknown({"key": "rule_figure_from_memory", "row": row["key"]})
    judged["hold"]["row"] = row["key"]
    judged["hold"]["min_temp"] = min_temp
    judged["hold"]["air_min_temp"] = air_min
    judged["hold"]["needed_s"] = needed_s
    return judged


def _judge_vat(
    row: "dict[str, Any]",
    min_temp: int,
    air_min: "int | None",
    readings: "list[dict[str, Any]]",
    needed_s: float,
    gap_max_s: float,
) -> "dict[str, Any]":
    sure = longest_hold(readings, min_temp, air_min, gap_max_s, False)
    hold = {key: sure[key] for key in ("start_ms", "end_ms", "held_s")}
    if sure["held_s"] >= needed_s and not sure["air_missing"]:
        return {"state": "met", "reasons": [], "hold": hold}
    best = longest_hold(readings, min_temp, air_min, None, True)
    state = "unknown" if best["held_s"] >= needed_s else "not_met"
    reasons = _why(row, min_temp, air_min, readings, needed_s, gap_max_s)
    return {"state": state, "reasons": reasons, "hold": hold}


def _judge_flow(
    row: "dict[str, Any]",
    min_temp: int,
    readings: "list[dict[str, Any]]",
    needed_s: float,
    gap_max_s: float,
    product: "dict[str, Any]",
) -> "dict[str, Any]":
    held_s = product.get("holding_s")
    temps = [r["temp"] for r in readings if r.get("temp") is not None]
    times = [r["at_ms"] for r in readings if r.get("temp") is not None]
    hold = {"start_ms": times[0], "end_ms": times[-1], "held_s": held_s}
    state, reasons = "met", []
    if min(temps) < min_temp:
        state = "not_met"
        if max(temps) >= min_temp:
            reasons = [_reason("temperature_fell_below", row, min(temps), min_temp)]
    elif held_s is not None and held_s < needed_s:
        state = "not_met"
        reasons = [_reason("hold_too_short", row, held_s, needed_s)]
    elif held_s is None:
        state = "unknown"
        reasons = [_reason("holding_time_not_entered", row, None, needed_s)]
    elif longest_gap_s(readings) > gap_max_s:
        gap_s = longest_gap_s(readings)
        state, reasons = "unknown", [_reason("gap_too_long", row, gap_s, gap_max_s)]
    return {"state": state, "reasons": reasons, "hold": hold}


def _why(
    row: "dict[str, Any]",
    min_temp: int,
    air_min: "int | None",
    readings: "list[dict[str, Any]]",
    needed_s: float,
    gap_max_s: float,
) -> "list[dict[str, Any]]":
    """Return what kept a row from being met, in the order a maker would ask."""
    milk_only = longest_hold(readings, min_temp, None, gap_max_s, False)
    if milk_only["held_s"] < needed_s:
        gapless = longest_hold(readings, min_temp, None, None, False)
        if gapless["held_s"] >= needed_s:
            gap_s = longest_gap_s(readings)
            return [_reason("gap_too_long", row, gap_s, gap_max_s)]
        filled = longest_hold(readings, min_temp, None, None, True)
        if filled["held_s"] >= needed_s:
            return [_reason("reading_missing", row, gapless["held_s"], needed_s)]
        if milk_only["start_ms"] is None:
            return []
        short = _reason("hold_too_short", row, milk_only["held_s"], needed_s)
        short["min_temp"] = min_temp
        short["restarts"] = restarts(readings, min_temp)
        return [short]
    lowest = [
        r["air_temp"]
        for r in readings
        if r.get("air_temp") is not None
        and r.get("temp") is not None
        and r["temp"] >= min_temp
        and r["air_temp"] < air_min
    ]
    if lowest:
        return [_reason("airspace_too_cold", row, min(lowest), air_min)]
    return [_reason("airspace_not_recorded_in_hold", row, None, air_min)]


def _reason(
    key: str, row: "dict[str, Any]", value: "float | None", limit: "float | None"
) -> "dict[str, Any]":
    return {"key": key, "row": row["key"], "value": value, "limit": limit}
