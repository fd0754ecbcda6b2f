"""Steps are found by what they hold, so faults fit other recipes."""

import pytest

from server.core.twin import where
from tests.core.builders import recipe
from tests.core.twin.twins import RECIPE


@pytest.mark.parametrize(
    ("asked", "keys"),
    [
        ({"heat_treatment": True}, ["hold"]),
        ({"end": "reading", "direction": "at_most"}, ["cool"]),
        ({"reads": "water_added_l"}, ["wash_1", "wash_2"]),
        ({"reads": "water_added_l", "nth": 1}, ["wash_2"]),
        ({"reads": "water_added_l", "nth": 2}, []),
        ({"adds": "rennet"}, ["rennet"]),
        ({"mould": True}, ["fill_moulds"]),
        ({"presses": True}, ["press_1", "press_2", "press_3"]),
        ({"turns": True}, ["turn_1", "turn_2", "unmould"]),
        ({"place": "brine"}, ["brine_small", "brine_large"]),
        ({"end": "reading", "quantity": "water_temp_c"}, ["heat_water"]),
    ],
)
def test_the_house_recipe_s_steps_are_found(core, asked, keys):
    assert core("twin.where", "steps", RECIPE, asked) == keys


def test_another_recipe_s_steps_are_found():
    assert where.steps(recipe(), {"end": "floc"}) == ["set"]


def test_a_target_without_a_value_is_none():
    (press,) = [row for row in RECIPE["steps"] if row["key"] == "press_1"]
    assert where.target(press, "press_gauge_kpa") is None
