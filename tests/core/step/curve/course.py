"""A make whose course is asked for, and what is looked at of it."""

from tests.core.builders import MAKE, at, recipe

CURVE = {
    "start_step": "rennet",
    "source": "OURS",
    "status": "derived",
    "times_s": [0, 10800, 28800],
    "phs": [6.60, 6.35, 5.40],
}


def curve_recipe(**rest):
    return {**recipe(), "curve": CURVE, **rest}


def curve(ask, events, at_min):
    return ask.desk(("take", events), ("curve", MAKE, at(at_min)))[1]


def series(found, quantity):
    return [row["points"] for row in found["series"] if row["quantity"] == quantity]


def step(found, key):
    return next(row for row in found["steps"] if row["key"] == key)


def heated(phone):
    """Return events: heating begun at 5 min, read twice, once struck, ended at 61."""
    wrong = phone.reading("milk_temp_c", 99.0, 20, "heat")
    return [
        phone.opened(recipe=curve_recipe()),
        phone.event("step_begun", 5, step="heat"),
        phone.reading("milk_temp_c", 45.0, 34, "heat"),
        wrong,
        phone.event("entry_struck", 21, ref=wrong["id"], why="typed wrong"),
        phone.reading("milk_temp_c", 63.9, 60, "heat"),
        phone.event("step_ended", 61, step="heat"),
    ]
