"""Alerts of one step: few, each with its band and what the recipe says to do."""

import pytest

from tests.core.builders import Phone, a_day, at, figure, until
from tests.core.step.parts.test_step_parts import add, wanted
from tests.core.step.test_steps import one_step


def told(ask, events, at_min):
    return ask.view(events, at_min)["alerts"]


def one(ask, events, at_min):
    (found,) = told(ask, events, at_min)
    return found


def brief(ask, events, at_min):
    return [
        (row["key"][6:], row["level"], row["quantity"])
        for row in told(ask, events, at_min)
    ]


def drift(*forms):
    return [{"form": form, "do": {"en": form}} for form in forms]


def test_a_late_step_asks_to_check_and_then_to_act(ask):
    lasts = figure(1800, "s", 1500, 2100)
    events = one_step(Phone(), lasts=lasts, drift=drift("time_late"))
    assert told(ask, events, 35) == []
    found = one(ask, events, 36)
    assert found == {
        "id": "step_end/work",
        "form": "time",
        "level": "check",
        "key": "alert.step_late",
        "step": "work",
        "quantity": None,
        "value": None,
        "low": 1500,
        "high": 2100,
        "unit": "s",
        "by_s": 60.0,  # past the band's end at 35 min
        "due_ms": None,
        "rings_ms": at(35),
        "do": {"en": "time_late"},
        "since_ms": at(30),
        "acknowledged": None,
    }
    # A quarter of 1800 s, 7.5 min, past the band's end.
    assert one(ask, events, 42.5)["level"] == "check"
    assert one(ask, events, 42.51)["level"] == "act"


def test_a_curd_that_waits_past_its_cut_asks_to_act(ask):
    # Cut due at 130, its band to 135.
    events = until(a_day(Phone()), 128)
    assert told(ask, events, 135) == []
    found = one(ask, events, 136)
    assert (found["key"], found["by_s"]) == ("alert.step_late", 60.0)
    # Seen: it named the recipe's duration, against which it was not late. After
    # the rennet, 2.5 times the 8 min of the look before and 3.5 times the 10 min to
    # flocculation.
    assert (found["low"], found["high"]) == (1200.0, 2100.0)
    assert (found["since_ms"], found["level"]) == (at(130), "check")
    # A quarter of the setting's 1800 s, 7.5 min, past the band's end.
    assert one(ask, events, 142.5)["level"] == "check"
    assert one(ask, events, 142.51)["level"] == "act"


def test_a_setting_without_a_duration_of_its_own_is_measured_by_its_cut(ask):
    phone = Phone()
    events = until(a_day(phone), 128)
    events[0]["data"]["recipe"]["steps"][5]["lasts"] = None
    # A quarter of the 30 min to the cut, past the band's end at 135.
    assert one(ask, events, 142.5)["level"] == "check"
    assert one(ask, events, 142.51)["level"] == "act"
    assert ask.view(events, 134.9)["next_change_ms"] == at(135) + 1


@pytest.mark.parametrize(
    ("quantity", "unit", "value", "form", "key", "says"),
    [
        ("milk_temp_c", "C", 62.0, "temperature", "below", "temperature_low"),
        ("milk_temp_c", "C", 68.0, "temperature", "above", "temperature_high"),
        ("room_temp_c", "C", 20.0, "temperature", "below", "temperature_low"),
    ],
)
def test_a_reading_outside_its_band_asks_to_act(
    ask, quantity, unit, value, form, key, says
):
    target = {"quantity": quantity, "figure": figure(64.0, unit, 63.0, 66.0)}
    phone = Phone()
    events = one_step(phone, targets=[target], drift=drift(says))
    reading = phone.reading(quantity, value, 2, "work")
    found = one(ask, [*events, reading], 3)
    assert (found["id"], found["form"]) == ("reading/" + reading["id"] + "/work", form)
    assert (found["level"], found["key"]) == ("act", "alert.reading_" + key)
    assert (found["value"], found["low"], found["high"]) == (value, 63.0, 66.0)
    assert (found["do"], found["since_ms"]) == ({"en": says}, at(2))


@pytest.mark.parametrize(
    ("value", "word", "says"),
    [
        # A pH above its band means too little acid yet.
        (6.7, "above", "acid_slow"),
        (6.3, "below", "acid_fast"),
    ],
)
def test_acid_drifts_the_other_way_than_ph(ask, value, word, says):
    target = {"quantity": "ph", "figure": figure(6.5, "pH", 6.4, 6.6)}
    phone = Phone()
    events = one_step(phone, targets=[target], drift=drift("acid_slow", "acid_fast"))
    found = one(ask, [*events, phone.reading("ph", value, 2, "work")], 3)
    assert (found["form"], found["key"]) == ("acid", "alert.reading_" + word)
    assert found["do"] == {"en": says}


@pytest.mark.parametrize(
    ("value", "word", "says"),
    [(0.0014, "below", "acid_slow"), (0.0018, "above", "acid_fast")],
)
def test_titrated_acid_above_its_band_is_fast(ask, value, word, says):
    # Seen: acid read by titration was told the wrong way round, as if it were pH.
    target = {
        "quantity": "titratable_acidity_frac",
        "figure": figure(0.0016, "fraction lactic", 0.0015, 0.0017),
    }
    phone = Phone()
    events = one_step(phone, targets=[target], drift=drift("acid_slow", "acid_fast"))
    reading = phone.reading("titratable_acidity_frac", value, 2, "work")
    found = one(ask, [*events, reading], 3)
    assert (found["form"], found["key"]) == ("acid", "alert.reading_" + word)
    assert found["do"] == {"en": says}


def test_a_new_reading_replaces_the_alert_of_the_one_before(ask):
    target = {"quantity": "ph", "figure": figure(6.5, "pH", 6.4, 6.6)}
    phone = Phone()
    events = one_step(phone, targets=[target])
    events.append(phone.reading("ph", 6.8, 2, "work"))
    events.append(phone.reading("ph", 6.7, 3, "work"))
    assert one(ask, events, 4)["value"] == 6.7
    assert told(ask, [*events, phone.reading("ph", 6.5, 5, "work")], 6) == []


def test_a_quantity_that_is_not_heat_or_acid_is_a_quantity(ask):
    target = {"quantity": "whey_drained_l", "figure": figure(0.3, "L/L", 0.25, 0.35)}
    phone = Phone()
    events = one_step(phone, targets=[target], drift=drift("quantity_low"))
    found = one(ask, [*events, phone.reading("whey_drained_l", 100.0, 2, "work")], 3)
    assert (found["form"], found["do"]) == ("quantity", {"en": "quantity_low"})
    assert (found["low"], found["high"]) == (125.0, 175.0)  # of 500 L


def test_milk_on_its_way_up_is_no_alert_and_beyond_the_band_is(ask):
    phone = Phone()
    events = until(a_day(phone), 34)  # 45 °C on the way to 63
    assert told(ask, events, 40) == []
    events.append(phone.reading("milk_temp_c", 67.0, 44, "heat"))
    found = one(ask, events, 45)
    assert (found["key"], found["do"]) == (
        "alert.reading_above",
        {"en": "Close the steam."},
    )


def test_milk_on_its_way_down_is_no_alert_and_below_the_band_is(ask):
    end = {"by": "reading", "quantity": "milk_temp_c", "at_most": figure(32.0, "C")}
    targets = [
        {"quantity": "milk_temp_c", "figure": figure(31.0, "C", 30.0, 32.0)},
        {"quantity": "room_temp_c", "figure": figure(20.0, "C", 15.0, 25.0)},
    ]
    phone = Phone()
    events = one_step(phone, end=end, targets=targets)
    assert told(ask, [*events, phone.reading("milk_temp_c", 45.0, 2, "work")], 3) == []
    low = phone.reading("milk_temp_c", 29.0, 4, "work")
    assert brief(ask, [*events, low], 5) == [("reading_below", "act", "milk_temp_c")]
    # Only the quantity that ends the step is on its way.
    room = phone.reading("room_temp_c", 28.0, 4, "work")
    assert brief(ask, [*events, room], 5) == [("reading_above", "act", "room_temp_c")]


def test_an_alert_of_a_step_that_has_ended_asks_to_check(ask):
    phone = Phone()
    events = until(a_day(phone), 75)
    events.append(phone.reading("milk_temp_c", 62.0, 85, "hold"))
    assert one(ask, events, 86)["level"] == "act"
    events.append(phone.event("step_ended", 91, step="hold"))
    found = one(ask, events, 92)
    assert (found["level"], found["do"]) == ("check", {"en": "Start the hold again."})


def test_an_overdue_reading_asks_to_check_and_then_to_act(ask):
    phone = Phone()
    rows = [wanted("during", 600)]
    events = one_step(phone, readings=rows, drift=drift("record_missing"))
    # Due at 10 min; half an interval of grace; to act once a whole interval late.
    assert told(ask, events, 15) == []
    found = one(ask, events, 15.01)
    assert (found["id"], found["level"]) == ("overdue/work", "check")
    assert (found["form"], found["quantity"]) == ("record", "ph")
    assert (found["since_ms"], found["do"]) == (at(10), {"en": "record_missing"})
    assert found["by_s"] == pytest.approx(300.6)
    assert one(ask, events, 20)["level"] == "check"
    assert one(ask, events, 20.01)["level"] == "act"


def test_a_reading_without_an_interval_asks_to_act_after_twice_its_grace(ask):
    events = one_step(Phone(), readings=[wanted("begin")])
    assert told(ask, events, 10) == []
    assert one(ask, events, 20)["level"] == "check"
    assert one(ask, events, 20.01)["level"] == "act"


def test_readings_due_together_are_one_matter_with_the_advice_of_its_own(ask):
    # Seen: four at a begin rang four times, each with the drug test's advice.
    rows = [wanted("begin", quantity=name) for name in ("milk_age_h", "drug_test")]
    of_test = {"form": "record_missing", "quantity": "drug_test", "do": {"en": "Test"}}
    phone = Phone()
    events = one_step(phone, readings=rows, drift=[of_test])
    found = one(ask, events, 11)
    assert (found["key"], found["value"]) == ("alert.readings_overdue", 2)
    assert (found["quantity"], found["do"]) == (None, {"en": "Test"})
    events.append(phone.reading("drug_test", "negative", 11, "work"))
    found = one(ask, events, 12)
    assert (found["key"], found["quantity"]) == ("alert.reading_overdue", "milk_age_h")
    assert (found["id"], found["do"]) == ("overdue/work", None)


def test_the_end_of_a_step_asks_for_its_last_reading_itself(ask):
    lasts = figure(1800, "s", 1500, 2100)
    events = one_step(
        Phone(), lasts=lasts, end={"by": "time"}, readings=[wanted("end")]
    )
    assert told(ask, events, 35) == []
    assert one(ask, events, 36)["id"] == "step_end/work"


def test_a_value_that_stays_out_of_its_band_is_one_matter(ask):
    # Seen: each further reading of the same dip rang anew.
    phone = Phone()
    target = {"quantity": "milk_temp_c", "figure": figure(30.0, "C", 28.0, 32.0)}
    events = one_step(phone, targets=[target])
    events.append(phone.reading("milk_temp_c", 27.0, 5, "work"))
    first = one(ask, events, 6)
    events.append(phone.reading("milk_temp_c", 26.0, 8, "work"))
    second = one(ask, events, 9)
    assert (second["id"], second["since_ms"]) == (first["id"], at(5))
    assert second["value"] == 26.0
    events.append(phone.reading("milk_temp_c", 30.0, 10, "work"))
    events.append(phone.reading("milk_temp_c", 27.5, 12, "work"))
    assert one(ask, events, 13)["id"] != first["id"]


def test_what_is_not_required_is_never_overdue(ask):
    events = one_step(Phone(), readings=[wanted("begin", required=False)])
    assert told(ask, events, 500) == []


def test_a_quantity_overdue_at_two_times_is_one_alert(ask):
    # Seen: the same alert twice, with one id.
    rows = [wanted("begin"), wanted("during", 600)]
    events = one_step(Phone(), readings=rows)
    found = one(ask, events, 20.5)
    assert (found["level"], found["by_s"]) == ("act", 1230.0)


def test_a_required_reading_that_an_ended_step_lacks_is_a_gap_in_the_record(ask):
    phone = Phone()
    rows = [wanted("begin"), wanted("end"), wanted("begin", quantity="room_temp_c")]
    events = one_step(phone, readings=rows, drift=drift("record_missing"))
    events.append(phone.event("step_ended", 5, step="work", why="Meter broke."))
    assert brief(ask, events, 6) == [
        ("reading_missing", "check", "ph"),
        ("reading_missing", "check", "room_temp_c"),
    ]
    found = told(ask, events, 6)[0]
    assert (found["id"], found["since_ms"]) == ("missing/work/ph", at(5))
    events.append(phone.reading("ph", 6.5, 5, "work"))
    events.append(phone.reading("ph", 6.5, 5.1, "work"))
    assert brief(ask, events, 6) == [("reading_missing", "check", "room_temp_c")]


@pytest.mark.parametrize(
    ("amount", "key"), [(90.0, "dose_below"), (100.0, None), (110.0, "dose_above")]
)
def test_a_dose_outside_its_band_asks_to_check(ask, amount, key):
    phone = Phone()
    events = [
        phone.opened(),
        phone.reading("milk_mass_kg", 500.0, 1, "receive"),
        phone.reading("drug_test", "negative", 1, "receive"),
        phone.event("step_begun", 10, step="rennet"),
        add(phone, 11, amount),
    ]
    rows = [row for row in told(ask, events, 12) if row["form"] == "quantity"]
    if key is None:
        assert rows == []
        return
    (found,) = rows
    assert found["key"] == "alert." + key
    assert (found["level"], found["value"], found["unit"]) == ("check", amount, "mL")
    # 100 mL, 5 % each way.
    assert (found["low"], found["high"]) == (pytest.approx(95), pytest.approx(105))
    # It stays when the step has ended.
    events.append(phone.event("step_ended", 13, step="rennet"))
    assert "alert." + key in [row["key"] for row in told(ask, events, 14)]


def test_a_curd_past_its_break_asks_to_act(ask):
    phone = Phone()
    events = until(a_day(phone), 128)
    events.append(phone.event("curd_judged", 131, judgement="past_it", step="set"))
    found = one(ask, events, 132)
    assert (found["key"], found["level"], found["form"]) == (
        "alert.past_it",
        "act",
        "time",
    )


@pytest.mark.parametrize(
    ("floc_min", "do"), [(104, "time_early"), (126, "time_late"), (110, None)]
)
def test_flocculation_outside_its_window_asks_to_check(ask, floc_min, do):
    phone = Phone()
    events = until(a_day(phone), 102)
    opened = events[0]
    opened["data"]["recipe"]["steps"][5]["drift"] = drift("time_early", "time_late")
    events.append(
        phone.event("curd_judged", floc_min, judgement="flocculated", step="set")
    )
    rows = [row for row in told(ask, events, 127) if row["key"] == "alert.floc_window"]
    if do is None:
        assert rows == []
        return
    # Rennet at 100: after 4 min and after 26.
    (found,) = rows
    assert (found["value"], found["unit"]) == ((floc_min - 100) * 60.0, "s")
    assert found["do"] == {"en": do}


def test_a_step_that_waits_or_is_skipped_gives_no_alert(ask):
    phone = Phone()
    events = [phone.opened(), phone.event("step_skipped", 1, step="heat", why="Warm.")]
    assert told(ask, events, 500) == []


@pytest.mark.parametrize("status", ["waiting", "ready", "skipped"])
def test_a_step_not_begun_has_no_alerts_to_give(core, status):
    assert core("step.alerts.step_alerts", "step_alerts", {"status": status}) == []


def test_without_advice_the_recipe_says_nothing(core):
    assert core("step.alerts.step_alerts", "what_to_do", {}, "time_late") is None
    rows = {"drift": drift("time_early", "time_late")}
    assert core("step.alerts.step_alerts", "what_to_do", rows, "time_late") == {
        "en": "time_late"
    }


def test_wheels_that_lie_a_round_too_long_are_told_once_until_they_are_turned(ask):
    # Seen: a store in which nobody turned a wheel for weeks, and nothing rang.
    phone = Phone()
    events = one_step(phone, turns=[{"every": figure(3600, "s")}])
    assert told(ask, events, 120) == []
    found = one(ask, events, 121)
    assert (found["key"], found["since_ms"]) == ("alert.turn_late", at(60))
    assert (found["level"], found["rings_ms"]) == ("act", at(120))
    assert one(ask, events, 600)["id"] == found["id"]
    events.append(phone.event("wheel_turned", 600, step="work"))
    assert told(ask, events, 700) == []


def test_a_step_that_ended_without_an_ingredient_says_so(ask):
    phone = Phone()
    events = one_step(phone, adds=["rennet"])
    assert told(ask, events, 4) == []
    events.append(phone.event("step_ended", 5, step="work", why="Forgotten."))
    found = one(ask, events, 6)
    assert (found["key"], found["quantity"]) == ("alert.add_missing", "rennet")
    assert found["level"] == "check"
