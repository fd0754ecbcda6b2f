"""Which quantity, and which time, a small drawing of a make shows."""

from tests.core.builders import Phone, at
from tests.core.step.curve.course import curve, curve_recipe, heated

HOUR_MS = 3_600_000


def at_hand(ask, events, at_min):
    return curve(ask, events, at_min)["at_hand"]


def test_what_the_running_step_wants_is_drawn_from_the_hour_before(ask):
    phone = Phone()
    events = [*heated(phone)[:-1], phone.reading("ph", 6.6, 62, "heat")]
    found = at_hand(ask, events, 64)
    # "heat" wants a temperature of the milk, and pH was read since.
    assert found == {
        "quantity": "milk_temp_c",
        "from_ms": at(64) - HOUR_MS,
        "to_ms": at(64) + HOUR_MS // 4,
    }
    # A step that began before that hour is drawn whole, for four hours at most.
    assert at_hand(ask, events, 100)["from_ms"] == at(5)
    # The last reading stays in sight all the same.
    assert at_hand(ask, events, 400)["from_ms"] == at(60)


def test_where_no_step_wants_one_that_was_read_acid_is_drawn(ask):
    phone = Phone()
    events = [
        *heated(phone),
        phone.event("step_begun", 100, step="rennet"),
        phone.reading("ph", 6.5, 101, "rennet"),
        phone.reading("milk_temp_c", 31.0, 102, "rennet"),
        phone.event("step_ended", 103, step="rennet"),
    ]
    assert at_hand(ask, events, 110)["quantity"] == "ph"


def test_without_an_acid_curve_what_was_read_last_is_drawn(ask):
    phone = Phone()
    events = heated(phone)
    assert at_hand(ask, events, 70)["quantity"] == "milk_temp_c"
    last = phone.reading("ph", 6.5, 71, "heat")
    assert at_hand(ask, [*events, last], 72)["quantity"] == "ph"


def test_of_a_make_with_no_reading_nothing_is_drawn(ask):
    opened = Phone().opened(recipe=curve_recipe())
    assert at_hand(ask, [opened], 5) is None
