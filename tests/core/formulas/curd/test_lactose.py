import pytest

from tests.core.formulas.tables import table

CASE = table("wash")


LACTOSE = CASE["lactose"]


def ask(core, name, *args):
    return core("formulas.curd.lactose", name, *args)


@pytest.mark.parametrize(
    ("exchange", "column"), [(1, "full"), (0.9, "at_0_9"), (0.8, "at_0_8")]
)
@pytest.mark.parametrize("row", LACTOSE, ids=lambda row: f"{row['drained_kg']} kg off")
def test_lactose_left_is_as_worked_by_hand(core, row, exchange, column):
    washes = [[row["drained_kg"], row["water_kg"]]]
    got = ask(core, "lactose_left_frac", CASE["aqueous_kg"], washes, exchange)
    assert got == pytest.approx(row[column], abs=CASE["lactose_tolerance"])


def test_two_washes_multiply_with_the_vat_as_the_first_left_it(core):
    both = ask(core, "lactose_left_frac", 94, [[30, 20], [30, 25]], 0.9)
    first = ask(core, "lactose_left_frac", 94, [[30, 20]], 0.9)
    second = ask(core, "lactose_left_frac", 84, [[30, 25]], 0.9)
    assert both == pytest.approx(first * second, rel=1e-12)


@pytest.mark.parametrize("washes", [[], [[30, 0]], [[0, 0]]])
def test_without_water_the_lactose_stays(core, washes):
    assert ask(core, "lactose_left_frac", 94, washes, 0.9) == 1


def test_a_wash_without_exchange_takes_nothing(core):
    assert ask(core, "lactose_left_frac", 94, [[30, 20]], 0) == 1


def test_the_range_of_lactose_left_runs_over_the_exchange(core):
    found = ask(core, "lactose_left", 94, [[30, 20]])
    row, tolerance = LACTOSE[0], CASE["lactose_tolerance"]
    assert found["value_frac"] == pytest.approx(row["at_0_9"], abs=tolerance)
    assert found["high_frac"] == pytest.approx(row["at_0_8"], abs=tolerance)
    assert row["full"] < found["low_frac"] < found["value_frac"]
    assert found["basis"] == "wash.exchange"


@pytest.mark.parametrize(
    ("name", "args", "words"),
    [
        ("lactose_left_frac", (94, [[94, 20]], 1), "drained_kg 94 no_water_left 94"),
        ("lactose_left_frac", (94, [[30, -1]], 1), "water_kg -1 below 0"),
        ("lactose_left_frac", (94, [[30, 20]], 90), "exchange_frac 90 above 1"),
        ("lactose_left_frac", (0, [], 1), "aqueous_kg 0 not_above 0"),
    ],
)
def test_an_impossible_exchange_is_refused(core, name, args, words):
    with pytest.raises(ValueError, match=words):
        ask(core, name, *args)
