"""What a make knows of its set and its doses."""

import pytest

from tests.core.known.making import Make


def test_a_dose_by_the_litre_is_told_by_the_kilogram(ask):
    make = Make("ripen", "calcium_chloride").run("ripen", 10)
    make.read("milk_volume_l", 1000.0, 1).read("milk_mass_kg", 1030.0, 2)
    # 0.15 g/L of 1.030 kg/L.
    assert make.known(ask, 11)["dose_g_per_kg"] == pytest.approx(0.15 / 1.03)


def test_a_dose_that_cannot_be_weighed_is_asked_for(ask):
    make = Make("ripen", "calcium_chloride").run("ripen", 10)
    for row in make.recipe["ingredients"]:
        if row["key"] == "calcium_chloride":
            row["unit"], row["dose"]["per"] = "mL", "kg_milk"
            row["dose"]["amount"]["unit"] = "mL/kg"
    # Seen: 0.15 mL/kg of a solution was taken as 150 g/kg of the salt.
    assert "dose_g_per_kg" not in make.known(ask, 11)


def test_colour_goes_by_the_recipes_dose(ask):
    make = Make("ripen", "colour").run("ripen", 10).read("milk_mass_kg", 1000.0, 1)
    # 0.0015 mL/kg is 1.5 mL on the tonne.
    assert make.value(ask, 11, "colour_ml") == pytest.approx(1.5)


def set_and_cut():
    make = Make("set", "cut_time")
    make.run("rennet", 100, 102).run("set", 102)
    make.add("curd_judged", 110, judgement="not_flocculated", step="set")
    make.add("curd_judged", 112, judgement="flocculated", step="set")
    return make


def test_the_floc_time_and_the_looks_before_it_are_known(ask):
    known = set_and_cut().known(ask, 113)
    assert known["floc_s"] == 720
    assert known["tested_every_s"] == 120
    # 12 min times 3.
    assert set_and_cut().value(ask, 113, "cut_s") == pytest.approx(36 * 60)


def test_a_floc_seen_at_the_first_look_leaves_the_spacing_to_the_default(ask):
    make = Make("set", "cut_time").run("rennet", 100, 102).run("set", 102)
    make.add("curd_judged", 112, judgement="flocculated", step="set")
    assert "tested_every_s" not in make.known(ask, 113)


def test_the_next_dose_starts_from_what_went_in(ask):
    make = Make("set", "rennet_next").run("rennet", 100, 102).run("set", 102)
    make.add("ingredient_added", 101, ingredient="rennet", amount=190.0, unit="mL")
    make.add("curd_judged", 110, judgement="not_flocculated", step="set")
    make.add("curd_judged", 112, judgement="flocculated", step="set")
    known = make.known(ask, 113)
    assert known["rennet_ml"] == 190.0
    # The set is to last 30 min at three times the floc time.
    assert known["target_floc_s"] == pytest.approx(600)
    # 12 min, wanted 10, delay 2: 10 / 8 of the dose.
    got = make.value(ask, 113, "next_rennet_ml")
    assert got == pytest.approx(190 * 10 / 8)


def test_rennet_weighed_in_is_no_volume(ask):
    make = Make("set", "rennet_next").run("rennet", 100, 102).run("set", 102)
    make.add("ingredient_added", 101, ingredient="rennet", amount=19.0, unit="g")
    assert "rennet_ml" not in make.known(ask, 113)
