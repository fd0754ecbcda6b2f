"""The acid alert: against the recipe's curve, with what the recipe says to do."""

import pytest

from tests.core.builders import Phone, at, recipe

STALL = {"en": "Hold the make as a lot of its own."}
CURVE = {
    "start_step": "rennet",
    "source": "OURS",
    "status": "derived",
    "times_s": [0, 10800, 28800],
    "phs": [6.60, 6.35, 5.40],
}


def curve_recipe():
    found = recipe()
    found["curve"] = CURVE
    for step in found["steps"]:
        if step["key"] == "cut":
            step["drift"] = [{"form": "acid_slow", "do": STALL}]
    return found


def make(*readings, begun=True, target=None):
    """Return events of a make whose curve starts at minute 0."""
    phone = Phone()
    body = curve_recipe()
    if target:
        body["steps"][-1]["targets"] = [{"quantity": "ph", "figure": target}]
    events = [phone.opened(recipe=body)]
    if begun:
        events.append(phone.event("step_begun", 0, step="rennet"))
    for minute, ph in readings:
        events.append(phone.reading("ph", ph, minute))
    return events


def acid(ask, events, at_min):
    found = ask.view(events, at_min)["alerts"]
    return [row for row in found if row["key"].startswith("alert.acid")]


def test_a_make_on_its_curve_has_no_acid_alert(ask):
    assert acid(ask, make((0, 6.60), (180, 6.35)), 181) == []


def test_a_slow_make_is_told_with_the_band_and_the_recipes_words(ask):
    # At 4 h the curve has 6.35 - 0.95 / 5 = 6.16, its band ends at 6.26.
    (row,) = acid(ask, make((0, 6.60), (180, 6.35), (240, 6.28)), 241)
    assert row["key"] == "alert.acid_slow"
    assert row["level"] == "check"
    assert (row["value"], row["unit"]) == (6.28, "pH")
    assert row["high"] == pytest.approx(6.26)
    assert row["do"] == STALL


def test_a_stalled_make_asks_to_act(ask):
    (row,) = acid(ask, make((0, 6.60), (180, 6.35), (240, 6.34)), 241)
    assert (row["key"], row["level"]) == ("alert.acid_stalled", "act")
    # The curve had 6.34 about 3 min after 180: it is nearly an hour behind.
    assert 50 * 60 < row["by_s"] < 60 * 60


def test_a_stall_says_by_when_it_is_to_be_read_again(ask):
    (row,) = acid(ask, make((0, 6.60), (180, 6.35), (240, 6.34)), 241)
    assert row["due_ms"] == at(240 + 30)
    (slow,) = acid(ask, make((0, 6.60), (180, 6.35), (240, 6.28)), 241)
    assert slow["due_ms"] is None


def test_a_stall_is_told_in_the_recipes_words_for_it(ask):
    events = make((0, 6.60), (180, 6.35), (240, 6.34))
    for step in events[0]["data"]["recipe"]["steps"]:
        if step["key"] == "cut":
            step["drift"].append({"form": "acid_stalled", "do": {"en": "Stop."}})
    (row,) = acid(ask, events, 241)
    assert row["do"] == {"en": "Stop."}


def test_a_night_without_acid_is_a_stall(ask):
    (row,) = acid(ask, make((0, 6.60), (120, 6.43), (460, 6.40)), 461)
    assert row["key"] == "alert.acid_stalled"


def test_nothing_stalls_where_the_curve_itself_hardly_falls(ask):
    flat = {**CURVE, "times_s": [0, 28800, 604800], "phs": [6.60, 5.40, 5.20]}
    events = make((0, 6.60), (480, 5.40), (6000, 5.38))
    events[0]["data"]["recipe"]["curve"] = flat
    assert acid(ask, events, 6001) == []


def test_a_fast_make_is_told(ask):
    (row,) = acid(ask, make((0, 6.60), (240, 5.90)), 241)
    assert row["key"] == "alert.acid_fast"


def test_a_new_reading_replaces_the_alert_of_the_one_before(ask):
    events = make((0, 6.60), (180, 6.35), (240, 6.28), (300, 6.00))
    assert acid(ask, events, 301) == []


def test_before_the_starter_there_is_no_curve(ask):
    assert acid(ask, make((240, 6.60), begun=False), 241) == []


def test_a_recipe_without_a_curve_has_no_acid_alert(ask):
    phone = Phone()
    events = [
        phone.opened(),
        phone.event("step_begun", 0, step="rennet"),
        phone.reading("ph", 6.9, 240),
    ]
    assert acid(ask, events, 241) == []


def test_a_closed_make_is_left_in_peace(ask):
    events = make((0, 6.60), (180, 6.35), (240, 6.34))
    events.append(Phone(device=1).event("make_closed", 250))
    assert acid(ask, events, 251) == []


def test_an_acknowledged_alert_stays_and_says_by_whom(ask):
    events = make((0, 6.60), (180, 6.35), (240, 6.34))
    (row,) = acid(ask, events, 241)
    seen = Phone(device=1).event("alert_acknowledged", 242, alert=row["id"])
    (row,) = acid(ask, [*events, seen], 243)
    assert row["acknowledged"]["by"] == "ida"


def test_of_two_readings_at_one_instant_the_later_entry_counts(ask):
    assert acid(ask, make((0, 6.60), (240, 6.60), (240, 6.15)), 241) == []


def test_a_reading_past_the_curve_is_not_judged(ask):
    assert acid(ask, make((0, 6.60), (500, 6.40)), 501) == []


def test_a_value_its_own_target_tells_already_is_told_once(ask):
    events = make((0, 6.60), (180, 6.35))
    body = events[0]["data"]["recipe"]
    for step in body["steps"]:
        if step["key"] == "cut":
            figure = {
                "value": 6.1,
                "low": 6.0,
                "high": 6.2,
                "unit": "pH",
                "source": "OURS",
                "status": "derived",
            }
            step["targets"] = [{"quantity": "ph", "figure": figure}]
    phone = Phone(device=1)
    events.append(phone.event("step_begun", 235, step="cut"))
    events.append(phone.reading("ph", 6.28, 240, "cut"))
    keys = [row["key"] for row in ask.view(events, 241)["alerts"]]
    assert "alert.reading_above" in keys
    assert "alert.acid_slow" not in keys


def test_far_behind_the_first_point_nothing_stalls(ask):
    # pH 6.9 is above the curve's first point: sweet milk, not a dead starter.
    (row,) = acid(ask, make((0, 6.90), (60, 6.90)), 61)
    assert row["key"] == "alert.acid_slow"
