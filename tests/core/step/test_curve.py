"""The course of a make: readings, bands and boundaries over time."""

from tests.core.builders import MAKE, Phone, at, figure, recipe

HOUR_MS = 3_600_000
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


def test_a_make_that_is_not_known_has_no_curve(ask):
    assert curve(ask, [], 5) is None
    reading = Phone().reading("milk_temp_c", 30.0, 2)
    assert curve(ask, [reading], 5) is None


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


def test_a_band_stands_at_the_steps_real_or_expected_time(ask):
    found = curve(ask, heated(Phone()), 70)
    heat, hold = found["bands"]
    assert (heat["step"], heat["low"], heat["high"]) == ("heat", 63.0, 66.0)
    assert (heat["begin_ms"], heat["end_ms"], heat["is_real"]) == (at(5), at(61), True)
    # Not begun at 70 min: it can begin now at the earliest and takes 30 min.
    assert (hold["begin_ms"], hold["end_ms"]) == (at(70), at(100))
    assert hold["is_real"] is False


def test_a_skipped_step_and_a_target_without_limits_have_no_band(ask):
    phone = Phone()
    body = curve_recipe()
    body["steps"][5]["targets"] = [
        {"quantity": "milk_temp_c", "figure": figure(31.0, "C")}
    ]
    events = [
        phone.opened(recipe=body),
        phone.event("step_skipped", 5, step="heat", why="milk came hot"),
    ]
    assert [row["step"] for row in curve(ask, events, 6)["bands"]] == ["hold"]


def test_boundaries_tell_the_plan_beside_what_is_expected(ask):
    found = curve(ask, heated(Phone()), 70)
    assert [row["key"] for row in found["steps"]][:3] == ["receive", "heat", "hold"]
    # By plan receiving takes no time and heating 60 min; holding 30 min after it.
    heat, hold = step(found, "heat"), step(found, "hold")
    assert (heat["planned_begin_ms"], heat["planned_end_ms"]) == (at(0), at(60))
    assert (heat["begin_ms"], heat["end_ms"]) == (at(5), at(61))
    assert (hold["planned_begin_ms"], hold["planned_end_ms"]) == (at(60), at(90))
    assert (heat["status"], hold["status"]) == ("ended", "ready")


def test_the_acid_curve_begins_when_its_step_really_began(ask):
    phone = Phone()
    events = [
        phone.opened(recipe=curve_recipe()),
        phone.event("step_begun", 100, step="rennet"),
    ]
    acid = curve(ask, events, 130)["acid"]
    assert (acid["start_ms"], acid["is_real"]) == (at(100), True)
    # 0, 3 and 8 h after the 100th minute, as the recipe's curve has it.
    assert [row["at_ms"] for row in acid["points"]] == [at(100), at(280), at(580)]
    assert [row["ph"] for row in acid["points"]] == [6.60, 6.35, 5.40]
    for row in acid["points"]:  # the band of the acid alert: 0.1 to either side
        assert abs(row["high_ph"] - row["ph"] - 0.1) < 1e-9
        assert abs(row["ph"] - row["low_ph"] - 0.1) < 1e-9


def test_before_its_step_begins_the_acid_curve_is_only_expected(ask):
    found = curve(ask, heated(Phone()), 70)
    # Holding takes 30 min from now on, cooling none, so rennet comes at 100 min.
    assert (found["acid"]["start_ms"], found["acid"]["is_real"]) == (at(100), False)


def test_without_a_curve_or_its_step_there_is_no_acid_line(ask):
    phone = Phone()
    assert curve(ask, [phone.opened()], 5)["acid"] is None
    events = [
        phone.opened(recipe=curve_recipe()),
        phone.event("step_skipped", 3, step="rennet", why="acid set"),
    ]
    assert curve(ask, events, 5)["acid"] is None


def test_a_ph_without_a_band_of_its_step_is_judged_by_the_acid_curve(ask):
    phone = Phone()
    events = [
        phone.opened(recipe=curve_recipe()),
        phone.event("step_begun", 0, step="rennet"),
        phone.reading("ph", 6.35, 180, "cut"),
        phone.reading("ph", 6.35, 240, "cut"),
    ]
    (points,) = series(curve(ask, events, 241), "ph")
    # At 3 h the curve has 6.35; at 4 h 6.35 - 0.95 / 5 = 6.16, thus at most 6.26.
    assert [row["verdict"] for row in points] == ["in_band", "above"]
    assert abs(points[1]["high"] - 6.26) < 1e-9


def test_a_ph_off_the_curves_time_is_not_judged(ask):
    phone = Phone()
    events = [
        phone.opened(recipe=curve_recipe()),
        phone.reading("ph", 6.7, 10, "receive"),
        phone.event("step_begun", 60, step="rennet"),
        phone.reading("ph", 5.2, 60 + 481, "fill"),
    ]
    (points,) = series(curve(ask, events, 600), "ph")
    assert [row["verdict"] for row in points] == [None, None]


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
