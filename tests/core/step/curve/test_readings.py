from tests.core.builders import Phone, at, figure
from tests.core.step.curve.course import curve, curve_recipe, heated, series


def test_readings_stand_in_time_without_those_struck_out(ask):
    (points,) = series(curve(ask, heated(Phone()), 70), "milk_temp_c")
    assert [(row["at_ms"], row["value"], row["step"]) for row in points] == [
        (at(34), 45.0, "heat"),
        (at(60), 63.9, "heat"),
    ]


def test_a_corrected_reading_stands_where_it_was_corrected_to(ask):
    phone = Phone()
    events = heated(phone)
    changes = {"value": 46.0, "at_ms": at(35)}
    events.append(
        phone.event("entry_corrected", 70, ref=events[2]["id"], set=changes, why="x")
    )
    (points,) = series(curve(ask, events, 71), "milk_temp_c")
    assert [(row["at_ms"], row["value"]) for row in points] == [
        (at(35), 46.0),
        (at(60), 63.9),
    ]


def test_a_reading_is_judged_by_the_band_of_its_step(ask):
    (points,) = series(curve(ask, heated(Phone()), 70), "milk_temp_c")
    # The recipe of the builders wants 63 to 66 °C while heating.
    assert [(row["low"], row["high"], row["verdict"]) for row in points] == [
        (63.0, 66.0, "below"),
        (63.0, 66.0, "in_band"),
    ]


def test_a_reading_without_a_step_belongs_to_what_ran_then(ask):
    phone = Phone()
    events = heated(phone)
    for minute in (3, 30, 65):
        events.append(phone.reading("jacket_temp_c", 80.0, minute))
    (points,) = series(curve(ask, events, 70), "jacket_temp_c")
    assert [row["step"] for row in points] == [None, "heat", None]
    assert [row["verdict"] for row in points] == [None, None, None]


def test_a_band_of_the_step_goes_before_the_curve(ask):
    phone = Phone()
    body = curve_recipe()
    body["steps"][6]["targets"] = [
        {"quantity": "ph", "figure": figure(6.3, "pH", 6.2, 6.4)}
    ]
    events = [
        phone.opened(recipe=body),
        phone.event("step_begun", 0, step="rennet"),
        phone.reading("ph", 6.35, 240, "cut"),
    ]
    (points,) = series(curve(ask, events, 241), "ph")
    assert (points[0]["low"], points[0]["high"]) == (6.2, 6.4)
    assert points[0]["verdict"] == "in_band"
