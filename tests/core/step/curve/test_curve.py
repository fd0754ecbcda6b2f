from tests.core.builders import Phone, at
from tests.core.step.curve.course import curve, curve_recipe, heated

HOUR_MS = 3_600_000


def test_a_make_that_is_not_known_has_no_curve(ask):
    assert curve(ask, [], 5) is None
    reading = Phone().reading("milk_temp_c", 30.0, 2)
    assert curve(ask, [reading], 5) is None


def test_only_temperatures_and_ph_are_drawn(ask):
    phone = Phone()
    events = heated(phone)
    events.append(phone.reading("milk_volume_l", 500.0, 2, "receive"))
    events.append(phone.reading("curd_temp_c", 31.0, 110, "set"))
    events.append(phone.reading("ph", 6.5, 110, "set"))
    found = curve(ask, events, 120)
    assert [row["quantity"] for row in found["series"]] == [
        "milk_temp_c",
        "curd_temp_c",
        "ph",
    ]


def test_spans_hold_the_last_hour_the_day_and_all(ask):
    phone = Phone()
    found = curve(ask, heated(phone), 70)
    assert found["spans"]["hour"] == [at(70) - HOUR_MS, at(70) + HOUR_MS // 4]
    # The day ends with "fill": from 70 min 30 hold, 30 set and 9 cut.
    assert found["spans"]["day"] == [at(0), at(139)]
    assert found["spans"]["all"] == [at(0), at(139)]


def test_a_night_of_rest_lies_before_the_make_day(ask):
    phone = Phone()
    events = [
        phone.opened(recipe=curve_recipe()),
        phone.event("step_begun", 5, step="receive"),
        phone.event("step_ended", 5 + 12 * 60, step="receive"),
    ]
    spans = curve(ask, events, 800)["spans"]
    assert spans["day"][0] == at(725)
    assert spans["all"][0] == at(0)


def test_all_holds_readings_after_the_day(ask):
    phone = Phone()
    events = heated(phone)
    events.append(phone.reading("ph", 5.3, 2000, "store"))
    found = curve(ask, events, 2001)["spans"]
    assert found["all"][1] >= at(2000)


def test_a_make_that_is_over_stands_still(ask):
    phone = Phone()
    events = [*heated(phone), phone.event("make_closed", 200, why="done")]
    early, late = curve(ask, events, 201), curve(ask, events, 5000)
    assert early == late
    assert late["now_ms"] == at(200)
