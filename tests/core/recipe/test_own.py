"""The recipe's own figures by name, for the milk of a make."""

import pytest

from tests.core.builders import figure, recipe

MILK = {"milk_kg": 515.0, "milk_l": 500.0, "milk_from": "volume"}


def own(core, told, step, name, milk=MILK):
    return core("recipe.own", "own_figure", told, step, name, milk, 480.0)


def dosed(**rest):
    told = recipe()
    told["ingredients"][0].update(rest)
    return told


@pytest.mark.parametrize(
    ("per", "unit", "value"),
    [
        ("kg_milk", "mL/kg", 103.0),  # 0.2 x 515
        ("l_milk", "mL/L", 100.0),  # 0.2 x 500
        ("make", "mL", 0.2),
    ],
)
def test_a_dose_follows_the_milk(core, per, unit, value):
    told = dosed(dose={"per": per, "amount": figure(0.2, unit)})
    found = own(core, told, told["steps"][4], "dose/rennet")
    # Two roundings of a double at the most; the recipe allows 5 % each way.
    assert found["value"] == pytest.approx(value, rel=1e-12)
    assert found["low"] == pytest.approx(0.95 * value, rel=1e-12)
    assert found["high"] == pytest.approx(1.05 * value, rel=1e-12)
    assert (found["unit"], found["status"]) == ("mL", "derived")


def test_without_a_tolerance_a_dose_has_no_band(core):
    told = dosed()
    del told["ingredients"][0]["tolerance_frac"]
    found = own(core, told, told["steps"][4], "dose/rennet")
    assert (found["low"], found["high"]) == (None, None)


def with_target(quantity, wanted, **rest):
    told = recipe()
    told["steps"][0]["targets"] = [{"quantity": quantity, "figure": wanted, **rest}]
    return told


def test_a_figure_per_litre_is_for_the_milk_in_the_make(core):
    told = with_target("whey_drained_l", figure(0.3, "L/L", 0.27, 0.33))
    found = own(core, told, told["steps"][0], "target/whey_drained_l")
    # 500 L of milk.
    assert [found[name] for name in ("low", "value", "high")] == [135.0, 150.0, 165.0]
    assert found["unit"] == "L"


def test_the_milk_itself_is_judged_by_what_the_make_was_opened_for(core):
    told = with_target("milk_volume_l", figure(1, "L/L"))
    found = own(core, told, told["steps"][0], "target/milk_volume_l")
    assert found["value"] == 480.0


def test_every_figure_of_a_step_has_a_name_that_finds_it(core):
    for step in recipe()["steps"]:
        names = core("recipe.own", "names", step)
        for name in names:
            assert own(core, recipe(), step, name) is not None
    heat = recipe()["steps"][1]
    assert core("recipe.own", "names", heat) == [
        "lasts",
        "target/milk_temp_c",
        "end/at_least",
    ]


def test_what_a_recipe_does_not_have_is_none(core):
    told = recipe()
    for name in ("lasts", "target/ph", "end/at_least", "dose/tea"):
        assert own(core, told, told["steps"][0], name) is None
