"""The one thing to do next in a step, what speaks against its end, its number."""

import pytest

from tests.core.builders import Phone, a_day, at, figure, step, until
from tests.core.step.test_steps import day, one_step, with_steps


def buttons(ask, at_mins, key):
    return [ask.step(day(at_min), key, at_min)["button"] for at_min in at_mins]


def test_reading_by_reading_the_button_leads_through_the_heating(ask):
    # Readings every 10 min from the begin at 5, taken at 14, 34 and 60.
    asked = buttons(ask, [5, 13.9, 15, 24, 43, 45, 60], "heat")
    reading = {"act": "reading", "arg": "milk_temp_c"}
    assert asked == [reading] * 6 + [{"act": "end", "arg": None}]


def test_a_hold_asks_for_nothing_until_its_time_is_over(ask):
    before = until(a_day(Phone()), 90)
    assert ask.step(before, "hold", 90.99)["button"]["act"] == "none"
    assert ask.step(before, "hold", 91)["button"] == {"act": "end", "arg": None}


def test_a_dose_is_asked_for_before_the_end(ask):
    found = ask.step(day(100), "rennet", 100)
    assert found["button"] == {"act": "add", "arg": "rennet"}
    # 500 L at the 20 °C read nearest to it: 500 x 1.030 x 0.2 mL = 103.0 mL.
    assert found["main"]["kind"] == "dose"
    assert found["main"]["value"] == pytest.approx(103.0, rel=1.5e-3)
    assert found["main"]["unit"] == "mL"
    assert ask.step(day(101), "rennet", 101)["button"]["act"] == "end"


def test_the_curd_is_looked_at_from_test_to_break(ask):
    # Rennet begun at 100: floc test from 106, again 2 min after each look;
    # flocculated at 110: break from 100 + 0.85 x 30 = 125.5; soft at 128, so
    # looked at again at 130.
    asked = buttons(ask, [105.9, 106, 109, 110, 125.4, 125.5, 129, 130], "set")
    acts = ["none", "judge", "none", "none", "none", "judge", "none", "judge"]
    assert [row["act"] for row in asked] == acts
    assert ask.step(day(131), "set", 131)["ended"]["at_ms"] == at(131)


def test_wheels_are_moulded_until_none_is_left(ask):
    events = day(150)
    phone = Phone(1)
    mould = {"act": "mould", "arg": "small"}
    assert ask.step(events, "fill", 151)["button"] == mould
    events.append(phone.event("wheels_moulded", 152, size="small", count=29))
    assert ask.step(events, "fill", 152)["button"] == mould
    events.append(phone.event("wheels_moulded", 153, size="small", count=1))
    assert ask.step(events, "fill", 153)["button"]["act"] == "end"


def test_a_reading_at_the_begin_is_asked_for_first(ask):
    rows = [
        {"quantity": "ph", "when": "begin", "required": True},
        {"quantity": "room_temp_c", "when": "begin", "required": False},
    ]
    phone = Phone()
    events = one_step(phone, readings=rows)
    assert ask.step(events, "work", 0)["button"] == {"act": "reading", "arg": "ph"}
    events.append(phone.reading("ph", 6.5, 1, "work"))
    # What is not required is never asked for.
    assert ask.step(events, "work", 2)["button"]["act"] == "end"


def test_a_reading_at_the_end_is_asked_for_last(ask):
    phone = Phone()
    rows = [{"quantity": "ph", "when": "end", "required": True}]
    events = one_step(phone, readings=rows, lasts=figure(600, "s", 300, 900))
    # Work under the hands, which a person may end at once.
    found = ask.step(events, "work", 1)
    assert found["button"] == {"act": "reading", "arg": "ph"}
    assert found["end_blockers"] == [{"key": "reading_missing", "arg": "ph"}]
    events.append(phone.reading("ph", 6.5, 2, "work"))
    found = ask.step(events, "work", 2)
    assert (found["button"]["act"], found["end_blockers"]) == ("end", [])


def test_a_long_rest_asks_for_its_last_reading_only_when_it_is_due(ask):
    phone = Phone()
    rows = [{"quantity": "milk_temp_c", "when": "end", "required": True}]
    rest = figure(43200, "s", 3600, 57600)
    events = one_step(phone, readings=rows, lasts=rest)
    # 12 h, from 1 h on it may end; its reading is due at 12 h.
    assert ask.step(events, "work", 59)["button"]["act"] == "none"
    assert ask.step(events, "work", 60)["button"]["act"] == "end"
    assert ask.step(events, "work", 720)["button"]["act"] == "reading"
    blockers = ask.step(events, "work", 59)["end_blockers"]
    assert blockers == [
        {"key": "reading_missing", "arg": "milk_temp_c"},
        {"key": "too_early", "arg": at(60)},
    ]


def blocked(ask, events, key, at_min):
    found = ask.step(events, key, at_min)["end_blockers"]
    return [(row["key"], row["arg"]) for row in found]


def test_what_speaks_against_an_end_is_named(ask):
    assert blocked(ask, day(5), "heat", 5) == [
        ("reading_missing", "milk_temp_c"),
        ("target_not_met", "milk_temp_c"),
    ]
    assert blocked(ask, day(61), "hold", 70) == [("too_early", at(91))]
    assert blocked(ask, day(100), "rennet", 100) == [("add_missing", "rennet")]
    assert blocked(ask, day(110), "set", 111) == [("judgement_missing", "set")]
    assert blocked(ask, day(131), "cut", 132) == [("judgement_missing", "cut")]
    assert blocked(ask, day(139), "cut", 139) == []


def test_a_quantity_wanted_twice_is_named_once(ask):
    rows = [
        {"quantity": "ph", "when": "begin", "required": True},
        {"quantity": "ph", "when": "end", "required": True},
    ]
    events = one_step(Phone(), readings=rows)
    assert blocked(ask, events, "work", 1) == [("reading_missing", "ph")]


def test_flocculation_without_any_judging_blocks_nothing(ask):
    phone = Phone()
    made = with_steps(step("work", end={"by": "floc", "from_step": "work"}))
    events = [phone.opened(recipe=made), phone.event("step_begun", 0, step="work")]
    found = ask.step(events, "work", 5)
    assert (found["end_blockers"], found["button"]["act"]) == ([], "none")
    assert found["end"] == {"by": "floc", "factor": 3.0}


def test_the_one_number_that_matters(ask):
    def main(at_min, key):
        return ask.step(day(at_min), key, at_min)["main"]

    heating = main(34, "heat")
    assert (heating["kind"], heating["quantity"], heating["value"]) == (
        "target",
        "milk_temp_c",
        63.0,
    )
    assert (heating["last"]["value"], heating["last"]["at_ms"]) == (45.0, at(34))
    assert main(61, "hold") == {"kind": "countdown", "due_ms": at(91)}
    assert main(110, "set") == {"kind": "countdown", "due_ms": at(130)}
    assert main(92, "fans") == {"kind": "instruction"}
    assert main(91, "fans") == {"kind": "instruction"}


def test_an_upper_figure_to_reach_is_the_number_that_matters(ask):
    end = {"by": "reading", "quantity": "milk_temp_c", "at_most": figure(32.0, "C")}
    found = ask.step(one_step(Phone(), end=end), "work", 1)
    assert found["main"] == {
        "kind": "target",
        "quantity": "milk_temp_c",
        "value": 32.0,
        "last": None,
    }
    assert (found["end"]["at_least"], found["end"]["at_most"]) == (None, 32.0)
    assert found["button"] == {"act": "reading", "arg": "milk_temp_c"}


def test_an_end_per_litre_of_milk_is_scaled_to_the_make(ask):
    end = {
        "by": "reading",
        "quantity": "whey_drained_l",
        "at_least": figure(0.3, "L/L"),
    }
    phone = Phone()
    events = one_step(phone, end=end)
    # 0.3 of 500 L.
    assert ask.step(events, "work", 1)["main"]["value"] == pytest.approx(150.0)
    events.append(phone.reading("whey_drained_l", 149.0, 2, "work"))
    assert ask.step(events, "work", 2)["button"]["act"] == "reading"
    events.append(phone.reading("whey_drained_l", 151.0, 3, "work"))
    assert ask.step(events, "work", 3)["button"]["act"] == "end"
