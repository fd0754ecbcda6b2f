"""A refusal is data: key, field, value, limit and what else its sentence speaks of."""

import pytest

from server.core.numbers.problems import of_refusal, unit_of
from server.core.numbers.refused import Refused, require


def test_a_claim_that_holds_refuses_nothing():
    require(True, "beyond_jacket", "target_c", 50, 60)


def test_a_refusal_carries_its_parts():
    with pytest.raises(Refused) as caught:
        require(False, "above_saturation", "salt_frac", 0.27, 0.2645, at_c=21)
    refusal = caught.value
    assert (refusal.key, refusal.field) == ("above_saturation", "salt_frac")
    assert (refusal.value, refusal.limit) == (0.27, 0.2645)
    assert refusal.figures == {"at_c": 21}


def test_a_traceback_names_all_of_it():
    words = "salt_frac 0.27 above_saturation 0.2645 at_c 21"
    assert str(Refused("above_saturation", "salt_frac", 0.27, 0.2645, at_c=21)) == words
    assert str(Refused("not_a_number", "milk_kg", None)) == "milk_kg None not_a_number"


def test_a_problem_tells_the_numbers_with_their_units():
    refusal = Refused("water_not_liquid", "water_kg", 5, needed_c=120)
    problem = of_refusal(refusal)
    assert (problem["field"], problem["value"], problem["unit"]) == (
        "water_kg",
        5,
        "kg",
    )
    assert problem["figures"] == {"needed_c": {"value": 120, "unit": "C"}}
    assert problem["from"] == "formula"


def test_a_count_of_readings_has_no_unit():
    problem = of_refusal(Refused("too_few", "temps_c", 1, 2))
    assert (problem["value"], problem["limit"], problem["unit"]) == (1, 2, "")


def test_a_list_is_no_value_to_tell():
    assert (
        of_refusal(Refused("none_between", "phs", [6.7], [5.2, 6.6]))["value"] is None
    )


@pytest.mark.parametrize(
    ("name", "unit"),
    [
        ("pressure_pa", "Pa"),
        ("cheese_kpa", "kPa"),
        ("density_kg_m3", "kg/m3"),
        ("density_kg_l", "kg/L"),
        ("diffusion_m2_s", "m2/s"),
        ("ph", "pH"),
        ("phs", "pH"),
        ("temps_c", "C"),
        ("modulus", ""),
    ],
)
def test_a_name_tells_its_unit(name, unit):
    assert unit_of(name) == unit
