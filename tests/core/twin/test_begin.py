"""Impossible equipment, milk and instruments are refused with field, value, limit."""

import pytest

from server.core.numbers.refused import Refused
from server.core.twin import begin, plant
from tests.core.twin.twins import START_MS

IMPOSSIBLE = [
    ({"jacket_kg": 0}, {}, {}, "jacket_kg 0 below 5.0"),
    ({"supply_w_k": -4200.0}, {}, {}, "supply_w_k -4200.0 below 50.0"),
    ({"vat_l": 400.0}, {"volume_l": 500.0}, {}, "volume_l 500.0 above 400.0"),
    ({"hot_c": 41.0, "cold_c": 31.0}, {}, {}, "cold_c 31.0 above 30.0"),
    ({"brine_frac": 0.4}, {}, {}, "brine_frac 0.4 above 0.264"),
    ({"store_humidity_frac": 87.0}, {}, {}, "store_humidity_frac 87.0 above 1.0"),
    ({"jacket": 3}, {}, {}, "jacket 3 unknown_input"),
    ({"bore_m": None}, {}, {}, "bore_m None not_a_number"),
    ({"bore_m": True}, {}, {}, "bore_m True not_a_number"),
    ({}, {"fat_frac": 3.4}, {}, "fat_frac 3.4 above 0.12"),
    ({}, {"volume_l": 0}, {}, "volume_l 0 below 1.0"),
    ({}, {"temp_c": float("nan")}, {}, "temp_c nan not_finite"),
    ({}, {"inhibitor_frac": 1.5}, {}, "inhibitor_frac 1.5 above 1.0"),
    ({}, {}, {"ph": {"noise": -0.1}}, "noise -0.1 below 0.0"),
    ({}, {}, {"ph": {"colour": 1}}, "colour 1 unknown_input"),
    ({}, {}, {"moon_phase": {}}, "moon_phase None unknown_input"),
]


@pytest.mark.parametrize(("has", "milk", "shows", "words"), IMPOSSIBLE)
def test_what_cannot_be_is_refused_with_its_limit(has, milk, shows, words):
    with pytest.raises(Refused) as refused:
        begin.begin(has, milk, shows, 1, START_MS)
    assert str(refused.value) == words


@pytest.mark.parametrize(
    ("seed", "words"), [(-1, "seed -1 below 0"), (1.5, "seed 1.5 not_whole")]
)
def test_a_seed_is_a_whole_number_from_0(seed, words):
    with pytest.raises(Refused) as refused:
        begin.begin({}, {}, {}, seed, START_MS)
    assert str(refused.value) == words


def test_the_phone_refuses_alike(core):
    with pytest.raises(ValueError, match="jacket_kg 0 below"):
        core("twin.begin", "begin", {"jacket_kg": 0}, {}, {}, 1, START_MS)


def test_equipment_that_is_no_mapping_is_refused():
    with pytest.raises(Refused, match="not_a_mapping"):
        plant.complete([1], plant.EQUIPMENT)


def test_what_is_not_given_is_usual_and_within_its_own_limits(core):
    made = core("twin.begin", "begin", {}, {}, {}, 1, START_MS)
    for table, held in ((plant.EQUIPMENT, made["plant"]), (plant.MILK, made["milk"])):
        assert set(held) == set(table)
        for name, (usual, low, high) in table.items():
            assert low <= held[name] == usual <= high
    # 3.5 % fat and 8.85 % other solids: by hand 876.5 g of water in a kilogram.
    assert made["curd"]["water_kg"] == pytest.approx(1031.0 * 0.8765)
    assert made["curd"]["lactose_kg"] == pytest.approx(1031.0 * 0.0478)


def test_sick_udders_give_less_curd():
    sound = begin.begin({}, {"somatic_per_ml": 1e5}, {}, 1, START_MS)
    sick = begin.begin({}, {"somatic_per_ml": 1e6}, {}, 1, START_MS)
    assert sick["curd"]["solids_kg"] < 0.99 * sound["curd"]["solids_kg"]
