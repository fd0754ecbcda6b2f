"""Whey, wash and lactose: what leaves the grain is found in the whey."""

import pytest

from server.core.twin.laws import whey
from tests.core.twin.twins import do, go, gouda, lactose_kg, twin, water_kg


def cut(size_mm=8.0, temp_c=31.0):
    made = twin(temp_c=temp_c)
    do(made, "cut", size_mm=size_mm)
    return made


def whey_share(made):
    return made["curd"]["whey_kg"] / water_kg(made)


def test_a_third_of_the_whey_can_be_drawn_after_the_published_stirring():
    # A. Hill, Gouda: cut, stir 20 to 30 min, run off a third of the whey.
    _, _, _, drained_l = gouda()
    assert drained_l == pytest.approx(0.3 * 500.0, rel=1e-9)
    made = go(cut(), 25)
    assert made["curd"]["whey_kg"] > 0.89 * 515 / 3


def test_water_and_lactose_only_change_places():
    made = cut()
    water, lactose = water_kg(made), lactose_kg(made)
    go(made, 60)
    assert water_kg(made) == pytest.approx(water, rel=1e-12)
    assert lactose_kg(made) == pytest.approx(lactose, rel=1e-12)


@pytest.mark.parametrize("better", [{"size_mm": 5.0}, {"temp_c": 36.0}])
def test_smaller_and_warmer_grains_give_more_whey(better):
    assert whey_share(go(cut(**better), 15)) > whey_share(go(cut(), 15)) + 0.02


def test_sour_curd_holds_less_and_weights_squeeze_it():
    assert whey.holds(34.0, 6.1, 0.0) < whey.holds(34.0, 6.4, 0.0)
    assert whey.holds(34.0, 6.4, 0.3) < whey.holds(34.0, 6.4, 0.0)
    assert whey.holds(60.0, 4.0, 1.0) == 0.7  # never less than pressed cheese


def test_milk_that_is_not_cut_gives_no_whey():
    assert go(twin(), 60)["curd"]["whey_kg"] == 0.0


def test_wash_water_thins_lactose_towards_the_full_exchange():
    # By hand: after an hour grain and whey are even, so the strength is all lactose
    # on all water.
    made = go(cut(), 30)
    do(made, "drain", l=150.0)
    do(made, "wash", l=100.0, water_c=36.0)
    lactose = lactose_kg(made)
    go(made, 150)
    strength = made["curd"]["lactose_kg"] / made["curd"]["water_kg"]
    assert strength == pytest.approx(lactose / water_kg(made), rel=0.02)


def test_no_more_whey_is_drained_than_there_is():
    made = go(cut(), 10)
    there = made["curd"]["whey_kg"]
    do(made, "drain", l=5000.0)
    assert made["drained_l"] == pytest.approx(there / 0.958)
    assert made["curd"]["whey_kg"] == made["curd"]["whey_lactose_kg"] == 0.0
    do(made, "drain", l=10.0)
    assert made["drained_l"] == 0.0


def test_draining_whey_leaves_the_ph_and_takes_its_buffers():
    made = go(cut(), 20)
    ph, soluble = made["acid"]["ph"], made["acid"]["soluble_mol"]
    share = made["curd"]["whey_kg"] / water_kg(made)
    do(made, "drain", l=5000.0)
    assert made["acid"]["ph"] == ph
    assert made["acid"]["soluble_mol"] == pytest.approx(soluble * (1 - share))
    assert made["acid"]["casein_mol"] == pytest.approx(500 * 1.031)


def test_curd_off_the_vat_has_the_usual_water():
    # 58 to 65 % after stirring at 36 to 37 °C (common practice, no source).
    made = twin()
    do(made, "cut", size_mm=8.0)
    do(made, "wash", 30, l=0.0, water_c=60.0)
    made["vat"]["milk_c"] = 36.5
    curd = go(made, 90)["curd"]
    assert 0.56 <= curd["water_kg"] / (curd["water_kg"] + curd["solids_kg"]) <= 0.66
