"""What a make knows of its milk."""

import pytest

from tests.core.known.making import RECIPE, Make


def test_weighed_milk_goes_before_metered_and_that_before_planned(ask):
    make = Make("ripen", "starter_bulk").run("ripen", 10)
    planned = make.known(ask, 11)["milk_kg"]
    # Goff: 1.035 kg/L at 4.4 °C.
    assert planned == pytest.approx(1035, rel=1e-3)
    make.read("milk_volume_l", 900.0, 1)
    assert make.known(ask, 11)["milk_kg"] == pytest.approx(0.9 * planned)
    make.read("milk_mass_kg", 950.0, 2)
    assert make.known(ask, 11)["milk_kg"] == 950.0
    # 0.75 % by the recipe (Guelph's Gouda page).
    assert make.value(ask, 11, "starter_kg") == pytest.approx(950 * 0.0075)


def test_fat_that_was_tested_goes_before_the_recipes(ask):
    make = Make("receive", "expected_yield").run("receive", 1)
    told = RECIPE["milk"].get("fat_frac")
    first = make.known(ask, 2).get("fat_frac")
    assert first == (told["value"] if told else None)
    make.read("fat_frac", 0.0412, 3)
    assert make.known(ask, 4)["fat_frac"] == 0.0412


def test_a_temperature_typed_in_fahrenheit_is_judged_so_on_receipt(ask):
    make = Make("receive", "milk_receipt").run("receive", 1)
    make.read("milk_temp_c", 7.28, 2, typed="45.1", typed_unit="F")
    # 45.1 °F against 45 °F (1 NYCRR 2.49).
    got = make.value(ask, 3, "temperature", "held_in_plant")
    assert got == "does_not_meet"


def test_protein_that_was_read_serves_the_ratio_to_fat(ask):
    make = Make("receive", "standardise_ratio").run("receive", 1)
    assert "protein_frac" not in make.known(ask, 5)
    make.read("protein_frac", 0.0335, 2).read("fat_frac", 0.041, 3)
    assert make.known(ask, 5)["protein_frac"] == 0.0335
    given = {"protein_fat_ratio": {"value": 0.9}}
    now = make.value(ask, 5, "protein_fat_ratio_now", given=given)
    assert now == pytest.approx(0.0335 / 0.041)
