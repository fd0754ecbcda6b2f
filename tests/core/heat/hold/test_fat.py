"""Fat is asked for before the hold where it decides the row, and only there.

21 CFR 1240.61, footnote 1: where the fat of the milk product is 10 percent or more,
or it has added sweeteners, the temperature is raised by 5 °F (3 °C).
"""

import pytest

from tests.core.builders import at
from tests.core.heat.holding import Hold, every_two_minutes, hold_recipe, led_recipe
from tests.core.heat.ways import Way


def asks(ask, hold, key="hold", minute=5):
    hold.events[0]["data"].setdefault("treatment", "pasteurised")
    from tests.core.builders import MAKE
    from tests.core.heat.holding import RULES

    calls = ("set_rules", RULES), ("take", hold.events), ("step", MAKE, key, at(minute))
    step = ask.desk(*calls)[2]
    return [row["quantity"] for row in step["readings"]].count("fat_frac")


def test_fat_that_nobody_entered_is_asked_for_while_the_milk_heats(ask):
    hold = Hold(recipe=led_recipe())
    assert (asks(ask, hold, "heat"), asks(ask, hold, "hold")) == (1, 1)
    assert asks(ask, hold, "receive") == 0


def test_the_hold_says_what_it_decides(ask):
    hold = Hold(recipe=led_recipe())
    said = hold.step(ask, 1)["hold"]["says"]
    (fat,) = [row for row in said if row["key"] == "fat_decides"]
    assert fat["fat_frac"] == 0.1
    assert fat["raised"] == {"F": 150, "C": 66}


def test_fat_that_is_known_is_not_asked_for(ask):
    hold = Hold(recipe=led_recipe())
    hold.fat(0.04)
    assert (asks(ask, hold, "heat"), asks(ask, hold, "hold")) == (0, 0)


def test_sweetened_milk_is_asked_more_whatever_its_fat(ask):
    hold = Hold({"sweetened": "yes"}, led_recipe())
    assert asks(ask, hold, "hold") == 0
    assert hold.step(ask, 1)["hold"]["asked"]["F"] == {"temp": 150, "air_temp": 155}


def test_a_hold_by_own_figures_asks_for_no_fat(ask):
    way = Way()
    way.events = [
        row for row in way.events if row["data"].get("quantity") != "fat_frac"
    ]
    way.add("step_begun", 10, step="hold")
    rows = way.step(ask, "hold", 11)["readings"]
    assert "fat_frac" not in [row["quantity"] for row in rows]


def test_a_step_that_asks_by_itself_asks_once(ask):
    fat = [{"quantity": "fat_frac", "when": "begin"}]
    hold = Hold(recipe=hold_recipe(readings=fat))
    assert asks(ask, hold) == 1


def test_the_hold_ends_with_the_fat(ask):
    hold = Hold({"plant_name": "Quernbeck"}, led_recipe())
    hold.add("reading_taken", -6, quantity="milk_volume_l", value=500.0)
    every_two_minutes(hold, 0, 30)
    step = hold.step(ask, 30)
    assert step["button"] == {"act": "reading", "arg": "fat_frac"}
    hold.add("reading_taken", 31, quantity="fat_frac", value=0.04, step="hold")
    hold.read(31, 145.0, 150.0)
    assert hold.step(ask, 31)["button"]["act"] == "end"


@pytest.mark.parametrize(
    ("fat_frac", "asked"),
    # The footnote says 10 percent or more.
    [(0.099, {"temp": 145, "air_temp": 150}), (0.1, {"temp": 150, "air_temp": 155})],
)
def test_the_fat_sets_what_is_asked(ask, fat_frac, asked):
    hold = Hold(recipe=led_recipe())
    hold.fat(fat_frac)
    assert hold.step(ask, 1)["hold"]["asked"]["F"] == asked
