"""Acts: each changes what it should; what cannot be is refused and changes nothing."""

import copy
import math

import pytest

from server.core.numbers.refused import Refused
from server.core.twin import acts, course
from tests.core.twin.twins import MOULDS, do, go, started, twin

REFUSED = [
    ({"kind": "pray"}, "kind 'pray' not_a_choice"),
    ({}, "kind None not_a_choice"),
    ({"kind": "heat"}, "to_c None missing"),
    ({"kind": "heat", "to_c": 200.0}, "to_c 200.0 above 110.0"),
    ({"kind": "drain", "l": -5.0}, "l -5.0 below 0.0"),
    ({"kind": "wash", "l": 10.0, "water_c": 140.0}, "water_c 140.0 above 98.0"),
    ({"kind": "cut", "size_mm": 0.0}, "size_mm 0.0 below 1.0"),
    ({"kind": "add", "ingredient": "salt", "amount": 3.0}, "unit '' unknown_unit"),
    (
        {"kind": "add", "ingredient": "rennet", "amount": 3.0, "unit": "g"},
        "unit 'g' unknown_unit ['mL']",
    ),
    ({"kind": "press", "gauge_kpa": 50.0, "size": "huge"}, "size 'huge' missing"),
    ({"kind": "mould", "moulds": []}, "moulds 0 too_few 1"),
    ({"kind": "change", "field": "moon", "value": 1.0}, "moon 1.0 unknown_input"),
    (
        {"kind": "change", "field": "hot_c", "value": 500.0},
        "hot_c 500.0 above 140.0",
    ),
]


@pytest.mark.parametrize(("act", "words"), REFUSED)
def test_an_act_that_cannot_be_changes_nothing(act, words):
    made = twin()
    before = copy.deepcopy(made)
    with pytest.raises(Refused) as refused:
        acts.act(made, act)
    assert str(refused.value).startswith(words)
    assert made == before


def test_time_does_not_run_backwards():
    made = go(twin(), 10)
    with pytest.raises(Refused, match="before_start"):
        course.advance(made, made["now_ms"] - 1)


def test_two_halves_of_a_time_are_near_the_whole():
    whole, halves = started(twin()), started(twin())
    go(whole, 120)
    for minute in range(1, 121):
        go(halves, minute)
    assert halves["acid"]["ph"] == pytest.approx(whole["acid"]["ph"], abs=1e-4)
    assert halves["now_ms"] == whole["now_ms"]


def test_wash_water_mixes_by_its_heat():
    # 10 L of 60 °C into 500 L of milk at 31 °C: by hand 0.61 K, as milk takes less
    # heat than water.
    made = twin()
    heat = made["vat"]["cp_j_k"]
    do(made, "wash", l=10.0, water_c=60.0)
    rise = 10 * 4186 * 29 / (heat + 10 * 4186)
    assert made["vat"]["milk_c"] == pytest.approx(31.0 + rise)
    assert made["washed_l"] == 10.0
    do(made, "new_wash")
    assert made["washed_l"] == 0.0


def test_rennet_counts_by_its_strength():
    made = twin(equipment={"rennet_imcu_per_ml": 150.0})
    do(made, "add", ingredient="rennet", amount=100.0, unit="mL")
    assert made["clot"]["enzyme"] == pytest.approx(100 * 150 / 515.5)


def test_calcium_counts_by_the_gram_and_by_its_solution():
    grams, solution = twin(), twin()
    do(grams, "add", ingredient="calcium_chloride", amount=43.0, unit="g")
    do(solution, "add", ingredient="calcium_chloride", amount=100.0, unit="mL")
    assert grams["clot"] == solution["clot"]


def test_packs_and_bulk_bring_cells():
    packs, bulk = twin(), twin()
    do(packs, "add", ingredient="starter", amount=1.0, unit="pack")
    do(bulk, "add", ingredient="starter_bulk", amount=3.866, unit="kg")
    # A pack is for 500 L, and 0.75 % of bulk does the same (Gouda, Guelph).
    assert packs["acid"]["cells"] == pytest.approx(bulk["acid"]["cells"], rel=1e-3)


def test_soft_curd_loses_fines():
    soft, firm = twin(), twin()
    firm["clot"]["firm_frac"] = 0.6
    for made in (soft, firm):
        do(made, "cut", size_mm=8.0)
    assert soft["curd"]["solids_kg"] < 0.95 * firm["curd"]["solids_kg"]


def test_all_curd_goes_into_the_moulds_by_the_mass_of_a_wheel():
    made = twin()
    do(made, "table")
    do(made, "add", ingredient="salt", amount=1.0, unit="kg")
    curd = dict(made["curd"])
    rows = [{"mould": MOULDS[0], "count": 10}, {"mould": MOULDS[1], "count": 5}]
    do(made, "mould", moulds=[*rows, {"mould": MOULDS[0], "count": 0}])
    small, large = made["wheels"]
    assert large["solids_kg"] / small["solids_kg"] == pytest.approx(8.0 / 1.4)
    solids = 10 * small["solids_kg"] + 5 * large["solids_kg"]
    assert solids == pytest.approx(curd["solids_kg"])
    salt = 10 * sum(small["salt_kg"]) + 5 * sum(large["salt_kg"])
    assert salt == pytest.approx(1.0)


def test_a_gauge_presses_by_bore_lever_and_face():
    # 63 mm cylinder at 200 kPa: 623.45 N, on a 350 mm face 6480 Pa (by hand).
    made = twin(equipment={"bore_m": 0.063, "lever_ratio": 1.0})
    mould = dict(MOULDS[1], diameter_m={"value": 0.35})
    do(made, "mould", moulds=[{"mould": mould, "count": 5}])
    do(made, "press", gauge_kpa=200.0, size="large")
    assert made["wheels"][0]["pressure_pa"] == pytest.approx(6480.0, rel=1e-4)
    do(made, "release")
    assert made["wheels"][0]["pressure_pa"] == 0.0


def test_wheels_go_where_they_are_put():
    made = twin()
    rows = [{"mould": mould, "count": 3} for mould in MOULDS]
    do(made, "mould", moulds=rows)
    do(made, "brine", size="small")
    assert [row["place"] for row in made["wheels"]] == ["brine", "press"]
    do(made, "shelf")
    assert [row["place"] for row in made["wheels"]] == ["store", "store"]
    do(made, "turn", 5)
    assert {row["turned_ms"] for row in made["wheels"]} == {made["now_ms"]}
    do(made, "coat")
    assert all(row["coated"] for row in made["wheels"])


def test_equipment_and_milk_can_change_on_the_way():
    made = twin()
    do(made, "change", field="store_c", value=18.0)
    do(made, "change", field="inhibitor_frac", value=0.5)
    assert (made["plant"]["store_c"], made["milk"]["inhibitor_frac"]) == (18.0, 0.5)


def test_water_warms_to_its_aim_and_is_tempered():
    made = twin(equipment={"water_k_min": 2.0, "cold_c": 10.0})
    do(made, "warm_water", to_c=60.0)
    go(made, 10)
    assert made["water_c"] == pytest.approx(30.0)
    assert go(made, 40)["water_c"] == 60.0
    do(made, "temper_water", to_c=48.0)
    assert go(made, 50)["water_c"] == 48.0


def test_curd_on_the_table_cools_towards_the_room():
    made = twin(milk_l=500.0, temp_c=36.0, equipment={"room_c": 10.0})
    do(made, "cut", size_mm=8.0)
    do(made, "table", 40)
    before = made["vat"]["milk_c"]
    after = go(made, 100)["vat"]["milk_c"]
    assert 10.0 < after < before - 2.0
    assert made["curd"]["whey_kg"] == 0.0


def test_the_same_acts_give_the_same_milk_on_both_interpreters(core):
    made = core("twin.begin", "begin", {}, {"temp_c": 31.0}, {}, 1, 1_790_000_000_000)
    row = core("twin.truth", "course_row", made)
    assert row["milk_c"] == 31.0
    assert row["wheel_kg"] == {}
    assert math.isclose(row["moisture_frac"], 0.9348, rel_tol=0.01)
