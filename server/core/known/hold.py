"""What a make knows of its heat treatment: readings in the hold, and the chart."""

from ..heat.readings import hold_readings
from ..heat.verdict import hold_chart
from .found import from_make


def _hold_step(place):
    for step in place["recipe"]["steps"]:
        if step.get("heat_treatment"):
            return step
    return place["step"]


def hold_fact(place: dict) -> dict:
    """Return the Fact of the step that holds the milk, else of the one that asks.

    Args:
        place: see `known.scene`.
    """
    return place["context"]["facts"][_hold_step(place)["key"]]


def _hold(place):
    # Each field of the chart asks, and pairing all readings takes time.
    kept = place["kept"]
    if "hold" not in kept:
        fact = hold_fact(place)
        kept["hold"] = None
        if fact["begun_ms"] is not None:
            kept["hold"] = hold_readings(
                place["state"], fact["begun_ms"], fact["ended_ms"]
            )
    return kept["hold"]


def _thermometer(place):
    if place["topic"] != "heat_treatment":
        return None
    found = _hold(place)
    return from_make(found["unit"]) if found and found["rows"] else None


def _hold_over(place):
    fact = hold_fact(place)
    if fact["begun_ms"] is None:
        return None
    return from_make("no" if fact["ended_ms"] is None else "yes")


def _milk_temps(place):
    found = _hold(place)
    if found is None or not found["rows"]:
        return None
    start_ms = hold_fact(place)["begun_ms"]
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
        kept["chart"] = hold_chart(place["state"], place["opened"], found["rows"])
    told = kept["chart"]
    # What is not entered here may stand on the plant's own chart: it is asked.
    return from_make("noted") if told.get(name[len("chart_") :]) else None


KNOWN = {
    "thermometer": _thermometer,
    "hold_over": _hold_over,
    "milk_temps": _milk_temps,
}
