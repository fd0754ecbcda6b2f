"""What belongs to a step: targets, readings wanted, doses, wheels, who has it."""

from . import run
from .duplicates import verdict_on_duplicate
from .facts import last_reading, readings_in
from .quantities import QUANTITIES

PER_MILK = "L/L"  # unit of a recipe's figure: litres a litre of milk


def target_view(context: dict, fact: dict, row: dict) -> dict:
    """Return a target of a step with its band and the last reading against it.

    A target given per litre of milk is shown for the milk in this make.

    Args:
        context: as for `steps.step_view`.
        fact: Fact of the step.
        row: target of the recipe's step: {"quantity", "figure"}.

    Returns:
        {"quantity", "value", "low", "high", "unit", "source", "status", "last"}.
    """
    figure = row["figure"]
    times = 1.0
    unit = figure["unit"]
    if unit == PER_MILK:
        times = context["milk"]["milk_l"]
        unit = QUANTITIES[row["quantity"]]["unit"]
    low = _times(figure.get("low"), times)
    high = _times(figure.get("high"), times)
    last = last_reading(context["state"], fact, row["quantity"])
    return {
        "quantity": row["quantity"],
        "value": figure["value"] * times,
        "low": low,
        "high": high,
        "unit": unit,
        "source": figure["source"],
        "status": figure["status"],
        "last": None
        if last is None
        else {
            "id": last["id"],
            "value": last["data"]["value"],
            "at_ms": last["t_ms"],
            "verdict": verdict(last["data"]["value"], low, high),
        },
    }


def _times(limit, times):
    return None if limit is None else limit * times


def verdict(value: float, low: "float | None", high: "float | None") -> str:
    """Return "below", "above" or "in_band" of a value against inclusive limits.

    Args:
        value: the measured value.
        low: lower limit, or None.
        high: upper limit, or None.
    """
    if low is not None and value < low:
        return "below"
    if high is not None and value > high:
        return "above"
    return "in_band"


def reading_view(state: dict, fact: dict, row: dict, met: bool, now_ms: int) -> dict:
    """Return a reading that a step wants, when it is due and how late it is.

    Args:
        state: State of the make.
        fact: Fact of the step.
        row: reading of the recipe's step: {"quantity", "when", "every_s",
            "required"}.
        met: whether what ends the step has come.
        now_ms: now [ms].

    Returns:
        {"quantity", "when", "every_s", "required", "due_ms", "overdue_s",
        "count", "last"}; due_ms None while nothing is wanted [ms].
    """
    taken = readings_in(state, fact, row["quantity"])
    every_s = row.get("every_s")
    due_ms = None
    if fact["status"] == "running":
        if row["when"] == "begin":
            due_ms = None if taken else fact["begun_ms"]
        elif row["when"] == "during" and every_s:
            since_ms = taken[-1]["t_ms"] if taken else fact["begun_ms"]
            due_ms = since_ms + int(every_s * 1000)
        elif not taken:
            due_ms = now_ms if met else fact["due_ms"]
    overdue_s = 0.0
    if due_ms is not None and now_ms > due_ms:
        overdue_s = (now_ms - due_ms) / 1000.0
    return {
        "quantity": row["quantity"],
        "when": row["when"],
        "every_s": every_s,
        "required": bool(row.get("required")),
        "due_ms": due_ms,
        "overdue_s": overdue_s,
        "count": len(taken),
        "last": None
        if not taken
        else {
            "id": taken[-1]["id"],
            "value": taken[-1]["data"]["value"],
            "at_ms": taken[-1]["t_ms"],
        },
    }


def add_view(context: dict, name: str, fact: dict) -> dict:
    """Return what a step adds: the dose asked for and what was really added.

    Args:
        context: as for `steps.step_view`.
        name: key of the ingredient.
        fact: Fact of the step.

    Returns:
        {"ingredient", "title", "planned", "added", "total", "optional", "done"}.
    """
    state = context["state"]
    dose = context["doses"].get(name)
    title = {"en": name}
    optional = False
    for row in context["recipe"]["ingredients"]:
        if row["key"] == name:
            title = row["title"]
            optional = bool(row.get("optional"))
    added = run.entries(state, "ingredient_added", name)
    rows = []
    total = 0.0
    for entry in added:
        same = verdict_on_duplicate(state, entry["id"]) is True
        if not same and entry["data"]["unit"] == (dose or entry["data"])["unit"]:
            total += entry["data"]["amount"]
        rows.append(
            {
                "id": entry["id"],
                "amount": entry["data"]["amount"],
                "unit": entry["data"]["unit"],
                "lot": entry["data"].get("lot"),
                "at_ms": entry["t_ms"],
                "by": entry["by"],
            }
        )
    word = "no_plan"
    if dose is not None and dose["low"] is not None and rows:
        word = verdict(total, dose["low"], dose["high"])
    for row in rows:
        row["verdict"] = word
    return {
        "ingredient": name,
        "title": title,
        "planned": dose,
        "added": rows,
        "total": total,
        "optional": optional,
        "done": bool(rows) or (optional and fact["ended"] is not None),
    }


def moulds_view(context: dict) -> "list[dict]":
    """Return the wheels planned and moulded of each size.

    Args:
        context: as for `step_view`.

    Returns:
        List of {"size", "title", "planned", "moulded"} in recipe order; planned
        None when no count was given.
    """
    planned = {}
    for row in context["opened"].get("moulds") or []:
        planned[row["size"]] = row["count"]
    found = []
    for mould in context["recipe"].get("moulds", []):
        moulded = 0
        for entry in run.entries(context["state"], "wheels_moulded", mould["size"]):
            moulded += entry["data"]["count"]
        found.append(
            {
                "size": mould["size"],
                "title": mould["title"],
                "planned": planned.get(mould["size"]),
                "moulded": moulded,
            }
        )
    return found


def task_view(state: dict, key: str) -> "dict | None":
    """Return who has a step in hand, or None.

    Args:
        state: State of the make.
        key: key of the step.

    Returns:
        {"by", "at_ms"} or None.
    """
    taken = run.last(state, "task_taken", key)
    released = run.last(state, "task_released", key)
    if taken is None or (released is not None and released["t_ms"] > taken["t_ms"]):
        return None
    return {"by": taken["by"], "at_ms": taken["t_ms"]}
