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
        ([0, 60], [31], "temps_c 1 not_paired 2"),
        ([], [], "temps_c 0 too_few 1"),
        ([0, 0], [31, 32], "times_s 0 not_rising 0"),
        ([60, 0], [31, 32], "times_s 0 not_rising 60"),
        ([0, 60], [31, None], "temps_c None not_a_number"),
        ([None, 60], [31, 32], "times_s None not_a_number"),
    ],
)
def test_readings_that_make_no_sense_are_refused(core, times_s, values, words):
    with pytest.raises(ValueError, match=words):
        series(core, times_s, values)


def test_a_limit_itself_is_at_least_the_limit(core):
    assert core("numbers.bounds", "require_at_least", "milk_kg", 0, 0) is None


@pytest.mark.parametrize(
    ("value", "words"), [(-1, "milk_kg -1 below 0"), ("9", "'9' not_a_number")]
)
def test_a_value_below_its_limit_is_refused(core, value, words):
    with pytest.raises(ValueError, match=words):
        core("numbers.bounds", "require_at_least", "milk_kg", value, 0)
