import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq

from server.core.numbers.roots import root


def counted(of):
    """Return the function and a list that grows with each evaluation."""
    asked = []

    def counting(x):
        asked.append(x)
        return of(x)

    return counting, asked


def test_the_square_root_of_two():
    assert root(lambda x: x * x - 2, 0.0, 2.0) == pytest.approx(math.sqrt(2), rel=1e-15)


@pytest.mark.parametrize(
    ("of", "low", "high"),
    [
        (lambda x: math.cos(x) * -1 + x, 0.0, 1.0),
        (lambda x: x**9 - 0.5, 0.0, 1.0),
        (lambda x: 1 - 1e6 * math.exp(-x), 0.0, 200.0),
        (lambda x: math.atan(x - 3), -100.0, 1000.0),
    ],
)
def test_it_agrees_with_another_library_s_method(of, low, high):
    of, asked = counted(of)
    got = root(of, low, high)
    assert got == pytest.approx(
        brentq(of, low, high, xtol=1e-12, maxiter=999), rel=1e-6
    )
    assert len(asked) <= 54  # what halving to the last digit takes


def test_a_function_that_lies_flat_at_its_root_is_no_trap():
    got = root(lambda x: (x - 0.3) ** 3, 0.0, 1.0)
    assert got == pytest.approx(0.3, abs=1e-12)


def test_a_nearly_straight_function_takes_few_evaluations():
    of, asked = counted(lambda x: 735.25 * x + 269.8 * x * x - 150)
    root(of, 0.0, 0.2645)
    assert len(asked) <= 12  # halving to the last digit would take 52


@given(st.floats(0.001, 0.999))
def test_a_jump_over_nothing_is_found_too(where):
    got = root(lambda x: -1e-5 if x < where else 1.0, 0.0, 1.0)
    assert got == pytest.approx(where, rel=1e-12)


def test_an_end_that_is_the_answer_is_the_answer():
    assert root(lambda x: x, 0.0, 1.0) == 0.0
    assert root(lambda x: x - 1, 0.0, 1.0) == 1.0


@pytest.mark.parametrize(("low", "high"), [(3.0, 4.0), (0.0, 1.0)])
def test_ends_that_do_not_hold_the_answer_are_refused(low, high):
    with pytest.raises(ValueError, match=r"low .* not_computable"):
        root(lambda x: x - 2, low, high)


def test_ends_out_of_order_are_refused():
    with pytest.raises(ValueError, match=r"high 1\.0 not_above 2\.0"):
        root(lambda x: x, 2.0, 1.0)


@pytest.mark.parametrize("at_ends", [math.nan, None])
def test_values_that_are_no_numbers_are_refused_and_not_chased(at_ends):
    def of(x):
        return x - 0.5 if at_ends is None and x in (0.0, 1.0) else math.nan

    with pytest.raises(ValueError, match=r"low 0\.0 not_computable"):
        root(of, 0.0, 1.0)
