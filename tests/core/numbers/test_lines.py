import math
import statistics

import pytest
from scipy import stats

from server.core.numbers import lines


@pytest.mark.parametrize("freedom", [1, 2, 3, 4, 5, 6, 8, 10, 15, 30, 100])
def test_student_t_is_the_library_value(core, freedom):
    # The expansion is cut after three terms: 0.3 % at 3 degrees of freedom.
    expected = stats.t.ppf(0.95, freedom)
    assert core("numbers.lines", "t90", freedom) == pytest.approx(expected, rel=3e-3)


@pytest.mark.parametrize("values", [[5], [2, 1], [9, 1, 4], [4, 4, 1, 8, 2, 6]])
def test_the_median_is_the_library_value(core, values):
    assert core("numbers.lines", "median", values) == statistics.median(values)


def test_the_robust_line_is_the_library_value(core):
    xs, ys = [0, 1, 2, 4, 5, 7], [1.0, 2.9, 5.2, 70, 10.8, 15.1]
    expected = stats.theilslopes(ys, xs)
    intercept, slope = core("numbers.lines", "robust_line", xs, ys)
    assert slope == pytest.approx(expected.slope, rel=1e-12)
    # Ours takes the median residual, the library the median point.
    residuals = [y - expected.slope * x for x, y in zip(xs, ys, strict=True)]
    assert intercept == pytest.approx(statistics.median(residuals), rel=1e-12)


def test_a_long_series_keeps_its_robust_slope(core):
    xs = list(range(120))
    ys = [3 + 0.5 * x + (40 if x % 7 == 0 else 0) for x in xs]
    _, slope = core("numbers.lines", "robust_line", xs, ys)
    assert slope == pytest.approx(0.5, abs=0.02)  # one in seven points is wild


def test_the_weighted_line_solves_its_normal_equations(core):
    xs, ys, weights = [0, 1, 3, 4], [2.0, 3.1, 6.8, 9.2], [1, 4, 2, 1]
    line = core("numbers.lines", "weighted_line", xs, ys, weights, 0, 0)
    misses = [
        y - line["y"] - line["slope"] * (x - line["x"])
        for x, y in zip(xs, ys, strict=True)
    ]
    assert sum(w * m for w, m in zip(weights, misses, strict=True)) == pytest.approx(
        0, abs=1e-12
    )
    moments = zip(weights, misses, xs, strict=True)
    assert sum(w * m * x for w, m, x in moments) == pytest.approx(0, abs=1e-12)


def test_a_firm_prior_holds_the_slope(core):
    args = ([0, 1, 2], [1, 3, 5], [1, 1, 1], 0.5, 1e12)
    line = core("numbers.lines", "weighted_line", *args)
    assert line["slope"] == pytest.approx(0.5, rel=1e-9)


def test_one_reading_and_a_prior_make_a_line(core):
    line = core("numbers.lines", "weighted_line", [10], [4], [25], -0.5, 100)
    assert (line["x"], line["y"], line["slope"]) == (10, 4, -0.5)
    assert line["slope_var"] == pytest.approx(0.01)


def found_range(line, level, t_value):
    _, low, high = lines.crossing(line, level, t_value)
    return low, high


def test_the_range_is_where_the_target_enters_and_leaves_the_band(core):
    line = lines.weighted_line([0, 1, 2, 3], [0.1, 0.9, 2.1, 2.9], [50] * 4, 0, 0)
    _, low, high = core("numbers.lines", "crossing", line, 6, 1.9)
    for x in (low, high):
        gap = x - line["x"]
        band = 1.9 * math.sqrt(line["centre_var"] + line["slope_var"] * gap * gap)
        height = line["y"] + line["slope"] * gap
        assert abs(height - 6) == pytest.approx(band, rel=1e-9)
    assert low < high


def test_a_farther_target_has_a_wider_and_lopsided_range():
    line = lines.weighted_line([0, 1, 2, 3], [0.1, 0.9, 2.1, 2.9], [50] * 4, 0, 0)
    near, far = found_range(line, 4, 1.9), found_range(line, 12, 1.9)
    best = lines.crossing(line, 12, 1.9)[0]
    assert far[1] - far[0] > near[1] - near[0]
    assert far[1] - best > best - far[0]


def test_readings_that_may_not_be_moving_bound_only_the_near_end(core):
    line = lines.weighted_line([0, 1, 2], [0.0, 0.3, 0.2], [20] * 3, 0, 0)
    best, low, high = core("numbers.lines", "crossing", line, 3, 2.0)
    assert low is not None
    assert low < best
    assert high is None


def test_a_level_behind_such_readings_is_bounded_on_their_side(core):
    line = lines.weighted_line([0, 1, 2], [0.0, 0.3, 0.2], [20] * 3, 0, 0)
    best, low, high = core("numbers.lines", "crossing", line, -3, 2.0)
    assert low is None
    assert best < high < 1


@pytest.mark.parametrize(("slope", "level"), [(0.01, 0.2), (1.2, 2.2), (0.2, 1.0)])
def test_readings_that_may_be_there_and_may_not_move_bound_nothing(core, slope, level):
    # Height and slope are both within their own error of nothing.
    line = lines.weighted_line([0, 1, 2], [0, slope, 2 * slope], [1] * 3, 0, 0)
    _, low, high = core("numbers.lines", "crossing", line, level, 2.0)
    assert (low, high) == (None, None)


def test_a_flat_line_never_arrives(core):
    line = lines.weighted_line([0, 1, 2], [1, 1, 1], [1] * 3, 0, 0)
    assert core("numbers.lines", "crossing", line, 5, 1.0) == [None, None, None]


def test_scatter_and_knowledge_are_pooled(core):
    # Six known readings of variance 0.04 and two seen of 0.1 each:
    # (0.24 + 0.2) / 8 = 0.055.
    got = core("numbers.lines", "pooled_var", 0.2, 2, 0.2)
    assert got == pytest.approx(0.055, rel=1e-12)


def test_a_wild_reading_is_named_and_set_aside(core):
    ys = [0.1, 1.0, 2.05, 9.0, 4.0, 5.02]
    kept, aside = core("numbers.lines", "set_aside", list(range(6)), ys, [0.1] * 6)
    assert (kept, aside) == ([0, 1, 2, 4, 5], [3])


def test_four_readings_cannot_say_which_is_wrong(core):
    args = ([0, 1, 2, 3], [0, 1, 9, 3], [0.1] * 4)
    assert core("numbers.lines", "set_aside", *args) == [[0, 1, 2, 3], []]


def test_when_more_than_a_quarter_look_wrong_the_line_is(core):
    ys = [0, 1, 52, 3, 4, -45, 6, 7, 58, 9]
    args = (list(range(10)), ys, [0.1] * 10)
    assert core("numbers.lines", "set_aside", *args) == [list(range(10)), []]


def test_scatter_all_over_is_the_spread_and_not_wild_readings(core):
    ys = [0, 3, 1, 5, 2, 7, 5, 9]
    kept, aside = core("numbers.lines", "set_aside", list(range(8)), ys, [0.1] * 8)
    assert (len(kept), aside) == (8, [])


def test_a_reading_set_aside_does_not_move_the_answer(core):
    xs, ys = list(range(6)), [0, 1, 2, 30, 4, 5]
    found = core("numbers.lines", "reach", xs, ys, [0.1] * 6, (0, 0), 8)
    assert found["value"] == pytest.approx(8, rel=1e-12)
    assert found["set_aside"] == [3]
