import pytest


def series(core, times_s, values, at_least=1):
    return core(
        "numbers.readings", "require_series", times_s, "temps_c", values, at_least
    )


def test_readings_that_rise_in_time_are_accepted(core):
    assert series(core, [0, 60, 61.5], [31, 31.5, 30]) is None


@pytest.mark.parametrize(
    ("times_s", "values", "words"),
    [
        ([0, 60], [31], "temps_c 1 do not pair 2 times"),
        ([], [], "temps_c 0 are fewer than 1"),
        ([0, 0], [31, 32], "times_s 0 is not after 0"),
        ([60, 0], [31, 32], "times_s 0 is not after 60"),
        ([0, 60], [31, None], "temps_c None is not a number"),
        ([None, 60], [31, 32], "times_s None is not a number"),
    ],
)
def test_readings_that_make_no_sense_are_refused(core, times_s, values, words):
    with pytest.raises(ValueError, match=words):
        series(core, times_s, values)


def test_a_limit_itself_is_at_least_the_limit(core):
    assert core("numbers.readings", "require_at_least", "milk_kg", 0, 0) is None


@pytest.mark.parametrize(
    ("value", "words"), [(-1, "milk_kg -1 is below 0"), ("9", "'9' is not a number")]
)
def test_a_value_below_its_limit_is_refused(core, value, words):
    with pytest.raises(ValueError, match=words):
        core("numbers.readings", "require_at_least", "milk_kg", value, 0)
