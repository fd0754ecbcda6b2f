"""A hold's targets ask what its rule asks, in the unit that the thermometer reads.

21 CFR 1240.61(b) prints 145 °F and 63 °C, each for itself; the air space is asked 5 °F
more (3 CCR 584(b)), 3 °C by the rule's next whole degree: 150 °F or 66 °C.
"""

import pytest

from tests.core.builders import MAKE, at
from tests.core.heat.holding import RULES, led


def target(ask, hold, quantity, minute=5):
    rows = hold.step(ask, minute)["targets"]
    (row,) = [row for row in rows if row["quantity"] == quantity]
    return row


@pytest.mark.parametrize(
    ("air_c", "word"), [(65.8, "below"), (65.9, "below"), (66.0, "in_band")]
)
def test_air_in_celsius_is_asked_66_and_no_less(ask, air_c, word):
    hold = led()
    hold.read(0, 63.0, air_c, "C")
    row = target(ask, hold, "air_space_temp_c")
    assert row["low"] == 66
    assert row["last"]["verdict"] == word
    said = [line["key"] for line in hold.step(ask, 5)["hold"]["says"]]
    assert ("air_cold" in said) == (word == "below")


@pytest.mark.parametrize(("air_f", "word"), [(149.9, "below"), (150.0, "in_band")])
def test_air_in_fahrenheit_is_asked_150(ask, air_f, word):
    hold = led()
    hold.read(0, 145.0, air_f)
    row = target(ask, hold, "air_space_temp_c")
    assert row["low"] == pytest.approx((150 - 32) / 1.8, rel=1e-12)
    assert row["last"]["verdict"] == word


def test_the_alert_and_the_clock_give_one_answer(ask):
    hold = led()
    hold.read(0, 63.0, 66.0, "C")
    hold.read(1, 63.0, 65.8, "C")
    calls = ("set_rules", RULES), ("take", hold.events), ("view", MAKE, at(2))
    view = ask.desk(*calls)[2]
    assert "alert.reading_below" in [row["key"] for row in view["alerts"]]
    assert hold.step(ask, 2)["due_ms"] == at(31)


def test_before_the_first_reading_the_unit_is_that_of_the_heating(ask):
    hold = led()
    hold.add(
        "reading_taken",
        -2,
        quantity="milk_temp_c",
        value=(140 - 32) / 1.8,
        typed="140",
        typed_unit="F",
        step="heat",
    )
    low = target(ask, hold, "milk_temp_c")["low"]
    assert low == pytest.approx((145 - 32) / 1.8, rel=1e-12)


def test_rich_milk_moves_the_aim_with_the_floor(ask):
    hold = led()
    hold.fat(0.12)
    hold.read(0, 66.0, 69.0, "C")
    milk = target(ask, hold, "milk_temp_c")
    assert (milk["low"], milk["value"]) == (66, pytest.approx(66.9))
    assert milk["high"] == pytest.approx(68.6)
    assert target(ask, hold, "air_space_temp_c")["low"] == 69


def test_the_curve_draws_the_same_band(ask):
    hold = led()
    hold.read(0, 63.0, 66.0, "C")
    calls = ("set_rules", RULES), ("take", hold.events), ("curve", MAKE, at(2))
    bands = ask.desk(*calls)[2]["bands"]
    (air,) = [row["low"] for row in bands if row["quantity"] == "air_space_temp_c"]
    assert air == 66


def test_without_the_rule_the_recipes_own_band_stands(ask):
    hold = led()
    hold.read(0, 63.0, 65.8, "C")
    rows = hold.step(ask, 5, rules={})["targets"]
    (air,) = [row for row in rows if row["quantity"] == "air_space_temp_c"]
    assert (air["low"], air["last"]["verdict"]) == (65.8, "in_band")
