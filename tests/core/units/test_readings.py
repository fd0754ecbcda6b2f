"""What was typed on the pad: nothing rounded, clamped or guessed."""

import pytest


def read(core, quantity, typed, unit=""):
    return core("desk", "read_typed", quantity, typed, unit)


def wrong(field, key, limit):
    problem = {"field": field, "key": key, "limit": limit}
    return {"value": None, "problems": [problem], "ask": None}


@pytest.mark.parametrize(
    ("typed", "value"),
    [
        ("31.5", 31.5),
        ("31,5", 31.5),
        (" 31,50 ", 31.5),
        ("+31", 31.0),
        ("-1,5", -1.5),
        (".5", 0.5),
        ("5.", 5.0),
        ("007", 7.0),
        ("0.1", 0.1),
    ],
)
def test_comma_and_point_are_the_same(core, typed, value):
    found = read(core, "milk_temp_c", typed)
    assert found["value"] == value
    assert found["problems"] == []


@pytest.mark.parametrize(
    "typed", ["", " ", ".", "-", "1,234.5", "1.2.3", "--5", "3 1", "1e3", "31°", "٣"]
)
def test_what_is_no_plain_number_is_refused_as_typed(core, typed):
    assert read(core, "milk_temp_c", typed) == wrong("value", "not_a_number", typed)


@pytest.mark.parametrize(
    ("quantity", "typed", "unit", "value"),
    [
        # By hand: (145 - 32) / 1.8 = 62.777...; 212 °F is 100 °C.
        ("milk_temp_c", "145", "F", 113 / 1.8),
        ("milk_temp_c", "212", "F", 100.0),
        ("milk_temp_c", "32", "F", 0.0),
        # A US gallon is 231 cubic inches of 2.54 cm: 3.785411784 L.
        ("milk_volume_l", "100", "gal", 378.5411784),
        # A pound is 0.45359237 kg.
        ("milk_mass_kg", "1000", "lb", 453.59237),
        ("press_gauge_kpa", "2,5", "bar", 250.0),
        # A pound-force on a square inch: 0.45359237 * 9.80665 / 0.0254^2 Pa.
        ("press_gauge_kpa", "14", "psi", 14 * 0.45359237 * 9.80665 / 0.00064516 / 1e3),
        ("milk_temp_c", "31.5", "C", 31.5),
        # A share is kept as 0..1: the point moves two places.
        ("brine_salt_frac", "20,5", "%", 0.205),
        ("fat_frac", "4.05", "%", 0.0405),
        ("titratable_acidity_frac", "0,145", "%", 0.00145),
    ],
)
def test_a_value_typed_in_another_unit_is_converted(core, quantity, typed, unit, value):
    found = read(core, quantity, typed, unit)
    # Two roundings of a double at the most.
    assert found["value"] == pytest.approx(value, rel=1e-12, abs=1e-12)
    assert found["problems"] == []


def test_a_unit_that_does_not_fit_is_named(core):
    found = read(core, "milk_temp_c", "31", "gal")
    assert found == wrong("typed_unit", "unknown_unit", "gal")


def test_an_unknown_quantity_is_named(core):
    assert read(core, "mood", "5") == wrong("quantity", "unknown", "mood")


def test_a_value_beyond_what_an_instrument_shows_is_refused(core):
    # 300 °F are 148.9 °C; the limit is told in the quantity's own unit.
    assert read(core, "milk_temp_c", "300", "F") == wrong("value", "above", 110.0)
    assert read(core, "ph", "-1") == wrong("value", "below", 0.0)


def test_a_number_too_long_to_hold_is_refused(core):
    assert read(core, "ph", "9" * 400) == wrong("value", "not_a_number", None)
    # In another unit than its own, too.
    found = read(core, "milk_temp_c", "9" * 400, "F")
    assert found == wrong("value", "not_a_number", None)


def test_a_share_of_57_percent_is_0_57_to_the_last_digit(core):
    # 57 × 0.01 in doubles is 0.5700000000000001.
    assert read(core, "cheese_moisture_frac", "57", "%")["value"] == 0.57


def test_what_is_colder_than_can_be_is_refused_with_the_limit(core):
    assert read(core, "milk_temp_c", "-500", "F") == wrong("value", "below", -2.0)


def test_lactic_acid_is_typed_in_percent_or_in_degrees(core):
    quantity = "titratable_acidity_frac"
    assert read(core, quantity, "0,16", "%")["value"] == pytest.approx(0.0016)
    assert read(core, quantity, "16", "dornic")["value"] == pytest.approx(0.0016)


def test_an_unlikely_value_is_kept_as_typed_and_asked_about(core):
    assert read(core, "milk_temp_c", "80") == {
        "value": 80.0,
        "problems": [],
        "ask": {"key": "unlikely_high", "limit": 75.0},
    }


def test_a_choice_is_taken_as_it_is(core):
    assert read(core, "drug_test", "negative")["value"] == "negative"
    choices = ["negative", "positive"]
    assert read(core, "drug_test", "no") == wrong("value", "not_a_choice", choices)


@pytest.mark.parametrize(
    ("quantity", "last", "typed", "asks"),
    [
        # Two digits the wrong way round. By hand: 6.5 - 4.6 = 1.9 is over 0.5.
        ("ph", 6.5, "4,6", True),
        ("ph", 6.5, "6.05", False),
        ("ph", 6.5, "6.0", False),  # a step of 0.5 itself is none
        ("curd_temp_c", 31.5, "37.0", False),
        ("curd_temp_c", 31.5, "51.3", True),
        # A zero too many or too few: eight times and more.
        ("whey_drained_l", 180.0, "1800", True),
        ("whey_drained_l", 180.0, "18", True),
        ("whey_drained_l", 180.0, "90", False),
        ("press_gauge_kpa", 0.0, "100", False),  # from nothing any step is one
        # Milk that is heated steps by any number of degrees.
        ("milk_temp_c", 4.2, "64.0", False),
    ],
)
def test_a_large_step_from_the_last_value_is_asked_about(
    core, quantity, last, typed, asks
):
    found = core("desk", "read_typed", quantity, typed, "", last)
    assert found["problems"] == []
    assert found["ask"] == ({"key": "jump", "limit": last} if asks else None)


def test_an_unlikely_value_is_asked_about_before_a_large_step(core):
    found = core("desk", "read_typed", "ph", "3.9", "", 6.5)
    assert found["ask"] == {"key": "unlikely_low", "limit": 4.0}
