"""What a make knows of its acid."""

import pytest

from tests.core.known.making import Make


def test_the_warmth_of_the_curd_is_followed_from_the_starter(ask):
    make = Make("stir", "acid_temperature").run("starter", 0, 3).run("stir", 100)
    make.read("milk_temp_c", 32.0, 5).read("milk_temp_c", 32.0, 50)
    make.read("curd_temp_c", 32.0, 65)
    # An hour at the reference is an hour.
    assert make.value(ask, 101, "worth_s") == pytest.approx(3600)


def test_one_temperature_is_no_course(ask):
    make = Make("stir", "acid_temperature").run("starter", 0, 3).run("stir", 100)
    (row,) = make.read("milk_temp_c", 32.0, 5).answers(ask, 101)
    assert row["missing"] == ["curd_temps"]


def test_before_the_starter_no_acid_is_known(ask):
    make = Make("receive", "acid_forecast").run("receive", 1)
    (row,) = make.read("ph", 6.68, 2).answers(ask, 3)
    assert "ph_readings" not in {item["name"] for item in row["known"]}


def test_two_readings_at_one_instant_are_one(ask):
    make = Make("cut", "acid_band").run("starter", 0, 3).run("cut", 90)
    make.read("ph", 6.50, 90).read("ph", 6.45, 90)
    assert make.known(ask, 91)["ph_readings"] == [{"at_min": 90, "ph": 6.45}]


def test_a_recipe_without_a_curve_falls_back_on_the_published_one(ask):
    make = Make("cut", "acid_band").run("starter", 0, 3).run("cut", 90)
    del make.recipe["curve"]
    make.read("ph", 6.45, 90)
    (row,) = make.answers(ask, 91)
    assert row["missing"] == ["ph_readings"]
