import re

import pytest


@pytest.mark.parametrize(
    ("value", "words"),
    [
        (None, "fat_frac None not_a_number"),
        ("3.4", "fat_frac '3.4' not_a_number"),
        (True, "fat_frac True not_a_number"),
        ([], "fat_frac [] not_a_number"),
    ],
)
def test_what_is_not_a_number_is_named_and_shown_as_given(core, value, words):
    with pytest.raises(ValueError, match="^" + re.escape(words) + "$"):
        core("numbers.bounds", "require_number", "fat_frac", value)


def test_a_whole_number_is_a_number(core):
    assert core("numbers.bounds", "require_number", "fat_frac", 0) is None


def test_limits_themselves_are_allowed(core):
    assert core("numbers.bounds", "require_within", "x", 0, 0, 1) is None
    assert core("numbers.bounds", "require_within", "x", 1, 0, 1) is None


def test_a_value_under_the_low_limit_is_refused(core):
    with pytest.raises(ValueError, match=r"x -0\.5 below 0"):
        core("numbers.bounds", "require_within", "x", -0.5, 0, 1)


def test_a_count_may_come_as_a_float_but_not_as_a_fraction(core):
    assert core("numbers.bounds", "require_count", "wheels", 2.0, 1, 9) is None
    with pytest.raises(ValueError, match=r"wheels 2.5 not_whole"):
        core("numbers.bounds", "require_count", "wheels", 2.5, 1, 9)


def test_infinity_and_not_a_number_are_refused_on_the_server():
    # JSON carries neither, so only a caller in Python can bring them.
    from server.core.numbers import bounds

    for value in (float("inf"), float("-inf"), float("nan")):
        with pytest.raises(ValueError, match="not_finite"):
            bounds.require_number("x", value)
