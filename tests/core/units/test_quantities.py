"""What can be read off an instrument: hard limits refuse, soft limits ask."""

import pytest

from server.core.units.quantities import QUANTITIES

NUMBERS = sorted(name for name in QUANTITIES if QUANTITIES[name]["type"] == "number")


@pytest.mark.parametrize("name", NUMBERS)
def test_soft_limits_lie_inside_the_hard_ones(name):
    row = QUANTITIES[name]
    assert row["low"] <= row["ask_low"] < row["ask_high"] <= row["high"]
    assert row["decimals"] in range(6)


@pytest.mark.parametrize("name", NUMBERS)
def test_limits_themselves_are_possible_and_what_is_beyond_is_not(core, name):
    row = QUANTITIES[name]
    assert core("units.quantities", "check_value", name, row["low"]) == []
    assert core("units.quantities", "check_value", name, row["high"]) == []
    assert core("units.quantities", "check_value", name, row["low"] - 0.001) == [
        {"field": "value", "key": "below", "limit": row["low"]}
    ]
    assert core("units.quantities", "check_value", name, row["high"] + 0.001) == [
        {"field": "value", "key": "above", "limit": row["high"]}
    ]


@pytest.mark.parametrize("value", [None, True, False, "31.5", [], {}])
def test_only_a_number_is_a_number(core, value):
    assert core("units.quantities", "check_number", "temp_c", value, 0, 10) == [
        {"field": "temp_c", "key": "not_a_number", "limit": None}
    ]


def test_limits_may_be_open(core):
    assert core("units.quantities", "check_number", "x", -1e12, None, None) == []


@pytest.mark.parametrize("value", ["positive", "negative"])
def test_a_choice_is_one_of_its_words(core, value):
    assert core("units.quantities", "check_value", "drug_test", value) == []


@pytest.mark.parametrize("value", ["", "Positive", 1, None])
def test_any_other_word_is_refused_with_the_choices(core, value):
    assert core("units.quantities", "check_value", "drug_test", value) == [
        {"field": "value", "key": "not_a_choice", "limit": ["negative", "positive"]}
    ]


def test_an_unknown_quantity_is_named(core):
    assert core("units.quantities", "check_value", "mood", 5) == [
        {"field": "quantity", "key": "unknown", "limit": "mood"}
    ]


@pytest.mark.parametrize(
    ("quantity", "value", "expected"),
    [
        # pH is asked again outside 4.0 to 7.2, the limits themselves are not.
        ("ph", 4.0, None),
        ("ph", 7.2, None),
        ("ph", 3.9, {"key": "unlikely_low", "limit": 4.0}),
        ("ph", 7.3, {"key": "unlikely_high", "limit": 7.2}),
        ("drug_test", "positive", None),
    ],
)
def test_an_unlikely_value_is_asked_about(core, quantity, value, expected):
    assert core("units.quantities", "needs_second_look", quantity, value) == expected
