"""What is typed now beside what stood before: the core looks both up itself."""

import pytest

from tests.core.brine.test_tanks import TANK, Tank
from tests.core.builders import MAKE, Phone, at, figure, recipe


def last(ask, events, quantity, size=None, make=MAKE):
    return ask.desk(("take", events), ("last_reading", make, quantity, size))[1]


def typed(ask, events, quantity, text, make=MAKE, size=None):
    question = ("read_reading", make, quantity, text, "", size, at(600))
    return ask.desk(("take", events), question)[1]


def test_the_newest_reading_is_the_last_whatever_step_it_was_of(ask):
    phone = Phone()
    events = [
        phone.opened(),
        phone.reading("milk_temp_c", 20.0, 5, step="receive"),
        phone.reading("milk_temp_c", 31.0, 15, step="heat"),
        phone.reading("milk_temp_c", 30.0, 10),
    ]
    assert last(ask, events, "milk_temp_c")["value"] == 31.0
    assert last(ask, events, "ph") is None
    assert last(ask, events, "milk_temp_c", make="unknown") is None


def test_what_was_struck_out_is_not_the_last(ask):
    phone = Phone()
    wrong = phone.reading("ph", 4.0, 6)
    events = [phone.opened(), phone.reading("ph", 6.6, 5), wrong]
    events.append(phone.event("entry_struck", 7, ref=wrong["id"], why="mistyped"))
    assert last(ask, events, "ph")["value"] == 6.6


def test_a_wheel_is_compared_with_the_last_of_its_own_size(ask):
    phone = Phone()
    read = {"quantity": "wheel_mass_kg"}
    events = [
        phone.opened(),
        phone.event("reading_taken", 5, value=1.4, place="small", **read),
        phone.event("reading_taken", 6, value=7.0, place="large", **read),
    ]
    assert last(ask, events, "wheel_mass_kg", "small")["value"] == 1.4
    assert last(ask, events, "wheel_mass_kg", "third") is None
    assert last(ask, events, "wheel_mass_kg")["value"] == 7.0


@pytest.mark.parametrize(
    ("quantity", "before", "text"),
    [("store_temp_c", 12.0, "19"), ("store_humidity_frac", 0.92, "0.7")],
)
def test_a_jump_in_the_store_is_asked_about(ask, quantity, before, text):
    phone = Phone()
    events = [phone.opened(), phone.reading(quantity, before, 5)]
    assert typed(ask, events, quantity, text)["ask"] == {"key": "jump", "limit": before}
    assert typed(ask, events[:1], quantity, text)["ask"] is None


def test_a_jump_of_a_tank_is_asked_about(ask):
    tank = Tank()
    tank.add("reading_taken", 5, quantity="brine_ph", value=5.2)
    found = typed(ask, tank.events, "brine_ph", "5,9", make=TANK)
    assert found["value"] == 5.9
    assert found["ask"] == {"key": "jump", "limit": 5.2}


def test_a_number_typed_for_a_field_is_read_in_the_unit_it_was_typed_in(core):
    asked = ("desk", "read_field", "timer_started", "lasts_s")
    assert core(*asked, "2,5", "min", "s")["value"] == 150.0
    assert core(*asked, "90")["value"] == 90


def test_a_field_is_kept_in_its_own_unit_where_nobody_says_another(core):
    asked = ("desk", "read_field", "timer_started", "lasts_s")
    assert core(*asked, "2,5", "min")["value"] == 150.0
    milk = core("desk", "read_field", "make_opened", "milk_l", "100", "gal")
    assert milk["value"] == pytest.approx(378.5411784)  # 231 cubic inches a gallon


def test_a_count_is_whole_or_refused(core):
    asked = ("desk", "read_field", "wheels_moulded", "count")
    assert core(*asked, "12") == {"value": 12, "problems": [], "ask": None}
    for text, key in (("1.5", "not_whole"), ("x", "not_a_number"), ("-1", "below")):
        found = core(*asked, text)
        assert found["value"] is None
        assert [one["key"] for one in found["problems"]] == [key], text
        assert found["problems"][0]["field"] == "count"


def test_what_else_an_entry_needs_is_not_missed_on_the_pad(core):
    found = core("desk", "read_field", "tank_loaded", "days", "1,5")
    assert found == {"value": 1.5, "problems": [], "ask": None}


def test_a_mass_of_a_tank_is_read_by_volume_too(core):
    found = core("desk", "read_mass", "tank_opened", "100", "L", 0.0, 4.0)
    assert found["value"] == pytest.approx(100, rel=1e-3)  # water of 4 degrees
    assert core("desk", "read_mass", "tank_opened", "?", "kg")["problems"] == [
        {"field": "mass_kg", "key": "not_a_number", "limit": None}
    ]


def test_wheels_that_weigh_more_out_of_the_tank_are_asked_about(core):
    asked = ("desk", "read_mass", "tank_unloaded")
    assert core(*asked, "61", "kg", 0.0, None, 60.0)["ask"] == {
        "key": "unlikely_high",
        "limit": 60.0,
    }
    assert core(*asked, "58,5", "kg", 0.0, None, 60.0)["ask"] is None
    assert core(*asked, "61", "kg")["ask"] is None


def in_the_hold(ask, text, unit, quantity="milk_temp_c", key="hold"):
    phone = Phone()
    events = [phone.opened(), phone.event("step_begun", 5, step=key)]
    question = ("read_reading", MAKE, quantity, text, unit, None, at(10))
    return ask.desk(("take", events), question)[1]


def test_63_typed_as_fahrenheit_in_a_hold_at_63_c_is_asked_about(ask):
    told = in_the_hold(ask, "63", "F")
    assert told["ask"] == {"key": "other_unit", "limit": "C"}
    assert told["value"] == pytest.approx(17.222, 1e-4)  # (63 - 32) / 1.8, as typed


@pytest.mark.parametrize(
    ("text", "unit"),
    # What fits as it is, what drifts, and what fits in neither, is not asked about.
    [("145", "F"), ("63", "C"), ("60", "C"), ("140", "F"), ("40", "C"), ("32", "F")],
)
def test_a_temperature_that_fits_no_better_elsewhere_is_not_asked_about(
    ask, text, unit
):
    assert in_the_hold(ask, text, unit)["ask"] is None


def test_what_ends_a_step_counts_as_wanted_too(ask):
    told = in_the_hold(ask, "63.5", "F", key="heat")
    assert told["ask"] == {"key": "other_unit", "limit": "C"}


def test_a_step_that_is_over_wants_nothing(ask):
    phone = Phone()
    events = [phone.opened(), phone.event("step_begun", 5, step="hold")]
    events.append(phone.event("step_ended", 40, step="hold"))
    question = ("read_reading", MAKE, "milk_temp_c", "63", "F", None, at(50))
    assert ask.desk(("take", events), question)[1]["ask"] is None
    assert ask.desk(("take", []), question)[1]["ask"] is None


def at_the_press(ask, text, size="small", begun=True):
    """Type what the gauge shows where 40 kPa are wanted on a small wheel."""
    own = recipe()
    press = next(one for one in own["steps"] if one["key"] == "fill")
    wanted = figure(40.0, "kPa", 36.0, 44.0)
    press["targets"] = [
        {"quantity": "press_gauge_kpa", "size": "small", "figure": wanted}
    ]
    phone = Phone()
    events = [phone.opened(recipe=own)]
    if begun:
        events.append(phone.event("step_begun", 5, step="fill", why="Early"))
    question = ("read_reading", MAKE, "press_gauge_kpa", text, "kPa", size, at(6))
    return ask.desk(("take", events), question)[1]


@pytest.mark.parametrize(
    ("text", "limit"),
    # Twice the upper end of the band, half the lower one.
    [("88", 44.0), ("120", 44.0), ("18", 36.0), ("6", 36.0)],
)
def test_a_press_set_far_from_its_figure_is_asked_about_and_kept(ask, text, limit):
    told = at_the_press(ask, text)
    assert told["ask"] == {"key": "far", "limit": limit}
    assert (told["value"], told["problems"]) == (float(text), [])


@pytest.mark.parametrize("text", ["40", "36", "44", "87", "19"])
def test_a_press_near_its_figure_is_not_asked_about(ask, text):
    assert at_the_press(ask, text)["ask"] is None


def test_a_press_whose_figure_is_of_another_size_or_not_at_hand_asks_nothing(ask):
    assert at_the_press(ask, "120", size="large")["ask"] is None
    assert at_the_press(ask, "120", begun=False)["ask"] is None
