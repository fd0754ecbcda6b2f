import math

import pytest

MIN_S = 60


def ask(core, name, *args):
    return core("formulas.milk.cutting", name, *args)


@pytest.mark.parametrize(
    # Cheddar 3, bloomy 6, hard alpine 2: practice, read in makers' own words.
    ("floc_min", "multiple", "cut_min"),
    [(12, 3, 36), (12, 6, 72), (15, 2, 30), (10, 3.5, 35)],
)
def test_the_curd_is_cut_at_a_multiple_of_its_floc_time(
    core, floc_min, multiple, cut_min
):
    found = ask(core, "cut_time", floc_min * MIN_S, multiple, 30)
    assert found["value_s"] == pytest.approx(cut_min * MIN_S, rel=1e-12)
    assert found["basis"] == "cut.floc_multiple"


def test_floc_fell_between_two_tests_so_the_cut_is_a_range(core):
    found = ask(core, "cut_time", 720, 3, 60)
    assert (found["low_s"], found["high_s"]) == (1980, 2160)


@pytest.mark.parametrize(
    ("floc_min", "basis"),
    [
        (5.99, "cut.floc_too_early"),
        (6, "cut.floc_multiple"),
        (25, "cut.floc_multiple"),
        (25.01, "cut.floc_too_late"),
    ],
)
def test_a_floc_point_outside_its_window_tells_no_cut(core, floc_min, basis):
    found = ask(core, "cut_time", floc_min * MIN_S, 3, 30)
    assert found["basis"] == basis
    assert (found["value_s"] is None) == (basis != "cut.floc_multiple")


@pytest.mark.parametrize("floc_s", [480, 720, 1200])
def test_the_same_multiple_is_the_same_firmness_however_fast_it_set(core, floc_s):
    cut_s = ask(core, "cut_time", floc_s, 3, 0)["value_s"]
    # First order from the gel point on, 0.4 over one flocculation time (Tokita 1982,
    # abstract): 1 - exp(-0.4 × 2) = 0.550671 at every floc time.
    share = -math.expm1(-0.4 * (cut_s - floc_s) / floc_s)
    assert share == pytest.approx(0.550671, abs=5e-7)


@pytest.mark.parametrize(
    ("args", "words"),
    [
        ((0, 3, 0), "floc_s 0 not_above 0"),
        ((720, 0.5, 0), "multiple 0.5 below 1"),
        ((720, 3, 900), "tested_every_s 900 above 720"),
    ],
)
def test_an_impossible_cut_is_refused(core, args, words):
    with pytest.raises(ValueError, match=words):
        ask(core, "cut_time", *args)
