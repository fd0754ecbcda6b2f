"""The clock of a hold: it begins again after a dip."""

import json

from tests.core.builders import MAKE, at
from tests.core.heat.holding import ROOT, RULES, Hold, every_two_minutes, hold_recipe


def alerts(ask, hold, minute):
    calls = (("set_rules", RULES), ("take", hold.events), ("view", MAKE, at(minute)))
    return [row["key"] for row in ask.desk(*calls)[2]["alerts"]]


def test_the_clock_runs_from_the_first_reading_that_is_hot_enough(ask):
    hold = Hold()
    hold.read(1, 145.0, 150.0)
    assert hold.step(ask, 5)["due_ms"] == at(31)


def test_a_dip_of_the_milk_begins_the_hold_again(ask):
    hold = Hold()
    hold.read(0, 145.0, 150.0)
    hold.read(12, 144.9, 150.0)
    assert hold.step(ask, 13)["due_ms"] == at(42)
    hold.read(14, 145.2, 150.0)
    assert hold.step(ask, 15)["due_ms"] == at(44)


def test_cold_air_above_the_milk_begins_the_hold_again(ask):
    hold = Hold()
    hold.read(0, 145.0, 150.0)
    hold.read(10, 145.0, 149.9)
    hold.read(12, 145.0, 150.0)
    assert hold.step(ask, 13)["due_ms"] == at(42)


def test_a_late_reading_of_cold_air_alone_counts_too(ask):
    hold = Hold()
    hold.read(0, 145.0, 150.0)
    hold.read(10, None, 140.0)
    assert hold.step(ask, 13)["due_ms"] == at(40)


def test_readings_that_are_hot_enough_leave_the_clock_alone(ask):
    hold = Hold()
    every_two_minutes(hold, 0, 20)
    assert hold.step(ask, 21)["due_ms"] == at(30)


def test_145_f_is_enough_though_it_is_below_63_c(ask):
    # 145 °F is 62.78 °C: the rule prints both, and the thermometer shows °F.
    hold = Hold()
    hold.read(0, 145.0, 150.0)
    hold.read(5, 145.0, 150.0)
    assert hold.step(ask, 6)["due_ms"] == at(30)


def test_145_f_raises_no_alert_and_144_9_does(ask):
    hold = Hold()
    hold.read(0, 145.0, 150.0)
    assert "alert.reading_below" not in alerts(ask, hold, 1)
    hold.read(2, 144.9, 150.0)
    assert "alert.reading_below" in alerts(ask, hold, 3)


def test_62_8_on_a_celsius_thermometer_is_not(ask):
    hold = Hold()
    hold.read(0, 63.0, 66.0, "C")
    hold.read(5, 62.8, 66.0, "C")
    assert hold.step(ask, 6)["due_ms"] == at(35)


def test_rich_milk_must_be_five_degrees_hotter(ask):
    hold = Hold()
    hold.fat(0.12)
    hold.read(0, 150.0, 155.0)
    hold.read(6, 149.0, 155.0)
    hold.read(8, 150.0, 155.0)
    assert hold.step(ask, 9)["due_ms"] == at(38)


def test_without_rules_the_hold_is_a_plain_step(ask):
    hold = Hold()
    hold.read(12, 100.0, 100.0)
    step = hold.step(ask, 13, rules={})
    assert step["due_ms"] == at(30)
    assert step["verdict"] is None


def test_a_corrected_dip_does_not_begin_the_hold_again(ask):
    hold = Hold()
    hold.read(0, 145.0, 150.0)
    hold.read(12, 144.9, 150.0)
    dip = hold.events[-2]
    assert dip["data"]["typed"] == "144.9"
    change = {"value": 62.83, "typed": "145.1", "typed_unit": "F"}
    event = hold.phone.event(
        "entry_corrected", 13, dip["id"], set=change, why="misread"
    )
    hold.events.append(event)
    assert hold.step(ask, 14)["due_ms"] == at(30)


def test_a_value_entered_without_its_text_is_in_celsius(ask):
    hold = Hold()
    for minute in (0, 10):
        hold.add("reading_taken", minute, quantity="milk_temp_c", value=63.5)
    assert hold.step(ask, 11)["due_ms"] == at(30)
    hold.add("reading_taken", 12, quantity="milk_temp_c", value=62.9)
    assert hold.step(ask, 13)["due_ms"] == at(42)


def test_a_rule_that_asks_for_no_air_looks_at_the_milk_alone(ask):
    eu = json.loads(
        (ROOT / "server" / "rules" / "eu_uk_heat_treatment.json").read_text("utf-8")
    )
    hold = Hold()
    body = hold.events[0]["data"]
    body["recipe"] = hold_recipe(rule="eu_uk_heat_treatment")
    hold.read(0, 63.0, 40.0, "C")
    hold.read(10, 63.0, 40.0, "C")
    rules = {"eu_uk_heat_treatment": eu}
    step = hold.step(ask, 11, rules)
    assert step["due_ms"] == at(30)
    # Regulation 853/2004 asks for a negative phosphatase test as well.
    assert step["verdict"]["class"] == "not_assessed"


def test_a_rule_not_printed_in_fahrenheit_moves_no_clock(ask):
    eu = json.loads(
        (ROOT / "server" / "rules" / "eu_uk_heat_treatment.json").read_text("utf-8")
    )
    hold = Hold()
    hold.events[0]["data"]["recipe"] = hold_recipe(rule="eu_uk_heat_treatment")
    hold.read(10, 100.0, 100.0)
    step = hold.step(ask, 11, {"eu_uk_heat_treatment": eu})
    assert step["due_ms"] == at(30)


def test_sweetened_milk_must_be_five_degrees_hotter(ask):
    hold = Hold(equipment={"sweetened": "yes"})
    hold.read(0, 150.0, 155.0)
    hold.read(6, 149.0, 155.0)
    assert hold.step(ask, 7)["due_ms"] == at(36)
