import pytest


@pytest.mark.parametrize("pin", ["2580", "1357924", "40718263", "1221", "9021"])
def test_digits_that_nobody_tries_first_are_taken(core, pin):
    assert core("log.rights.pin", "check_pin", pin) == []


@pytest.mark.parametrize(
    "pin",
    ["0000", "77777777", "1234", "87654", "2468", "8901", "1212", "123123", "47474"],
)
def test_a_pin_that_is_tried_first_is_refused(core, pin):
    problem = {"field": "pin", "key": "pin_too_easy", "limit": None}
    assert core("log.rights.pin", "check_pin", pin) == [problem]


@pytest.mark.parametrize(
    ("pin", "key", "limit"),
    [
        ("", "pin_too_short", 4),
        ("158", "pin_too_short", 4),
        ("158273649", "pin_too_long", 8),
        ("15a2", "pin_not_digits", None),
        ("15²2", "pin_not_digits", None),
        (1582, "pin_not_digits", None),
        (None, "pin_not_digits", None),
    ],
)
def test_a_pin_has_four_to_eight_digits(core, pin, key, limit):
    problem = {"field": "pin", "key": key, "limit": limit}
    assert core("log.rights.pin", "check_pin", pin) == [problem]
