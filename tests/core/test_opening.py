import json

import pytest

from server.config import RECIPES_DIR
from tests.core.builders import recipe

HOUSE = json.loads((RECIPES_DIR / "washed-wheel.json").read_text("utf-8"))


def test_the_milk_and_the_yield_give_whole_wheels(core):
    found = core("opening", "suggestion", recipe(), 500.0)
    # 500 L of milk with 4.0 % fat and 8.95 % solids-not-fat at 4.4 °C weigh
    # 500 * 1.035 kg (Goff, density table, printed to 0.001); a tenth is curd.
    assert found["curd_kg"]["value"] == pytest.approx(51.75, rel=1e-3)
    assert found["curd_kg"]["low"] == pytest.approx(0.09 * 517.5, rel=1e-3)
    # 51.7 kg fill 36 wheels of 1.4 kg, 50.4 kg; a 37th would need 51.8 kg.
    assert found["moulds"] == [{"size": "small", "count": 36}]
    assert found["left_kg"] == pytest.approx(51.7 - 50.4, abs=0.1)
    assert found["ask"] is None


def test_each_size_gets_the_whole_wheels_of_its_share(core):
    found = core("opening", "suggestion", HOUSE, 1000)
    curd_kg = found["curd_kg"]["value"]
    for mould, row in zip(HOUSE["moulds"], found["moulds"], strict=True):
        share_kg = curd_kg * mould["share_frac"]["value"]
        wheel_kg = mould["wheel_kg"]["value"]
        assert row["size"] == mould["size"]
        assert row["count"] * wheel_kg <= share_kg < (row["count"] + 1) * wheel_kg
    assert found["left_kg"] >= 0


@pytest.mark.parametrize(("milk_l", "limit"), [(99, 100), (2001, 2000)])
def test_milk_outside_of_the_recipe_is_asked_about(core, milk_l, limit):
    found = core("opening", "suggestion", recipe(), milk_l)
    assert found["ask"] == {"key": "recipe_milk", "limit": limit}


@pytest.mark.parametrize("milk_l", [100, 2000])
def test_the_limits_themselves_are_not_asked_about(core, milk_l):
    assert core("opening", "suggestion", recipe(), milk_l)["ask"] is None


def test_no_milk_makes_no_cheese(core):
    with pytest.raises(ValueError, match="milk_l"):
        core("opening", "suggestion", recipe(), 0)
