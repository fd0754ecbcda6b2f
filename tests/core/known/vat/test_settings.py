"""What other makes show of setting, so that nobody types their table anew."""

import uuid

import pytest

from tests.core.known.making import Make

OTHERS = [str(uuid.UUID(int=number)) for number in (11, 12, 13)]
STRENGTH = {"strength_imcu_per_ml": 200.0}


def setting(rennet_ml, floc_min, make=None, **rest):
    """Return a make of 1000 L that got its rennet at 100 min and set so long after."""
    made = Make("set", "setting_own", equipment=STRENGTH, **make_of(make), **rest)
    made.run("rennet", 100)
    made.add(
        "ingredient_added",
        100,
        ingredient="rennet",
        amount=rennet_ml,
        unit="mL",
        step="rennet",
    )
    made.add("step_ended", 102, step="rennet").run("set", 102)
    if floc_min is not None:
        made.add("curd_judged", 100 + floc_min, judgement="flocculated", step="set")
    return made


def make_of(make):
    return {} if make is None else {"make": make}


def test_the_dose_given_goes_by_the_strength_of_the_bottle(ask):
    # 150 mL of 200 IMCU/mL in 1000 L.
    assert setting(150.0, None).known(ask, 105) == {"given_imcu_per_l": 30.0}


def test_a_make_is_forecast_from_how_others_set(ask):
    # 20 and 40 IMCU/L set in 14 and 8 minutes: at 30 it takes 10.
    others = [setting(100.0, 14, OTHERS[0]), setting(200.0, 8, OTHERS[1])]
    here = setting(150.0, None)
    known = here.known(ask, 130, others=others)
    assert known["settings"] == [
        {"given_imcu_per_l": 20.0, "set_min": 14.0},
        {"given_imcu_per_l": 40.0, "set_min": 8.0},
    ]
    forecast_s = here.value(ask, 130, "set_s", others=others)
    assert forecast_s == pytest.approx(600)


def test_makes_of_about_one_dose_teach_nothing_of_the_dose(ask):
    others = [setting(150.0, 14, OTHERS[0]), setting(155.0, 12, OTHERS[1])]
    assert "settings" not in setting(150.0, None).known(ask, 130, others=others)


def test_a_make_for_practice_teaches_nothing(ask):
    others = [
        setting(100.0, 14, OTHERS[0]),
        setting(200.0, 8, OTHERS[1], practice=True),
    ]
    assert "settings" not in setting(150.0, None).known(ask, 130, others=others)


def test_a_make_that_is_over_learns_nothing_from_a_later_setting(ask):
    others = [setting(100.0, 14, OTHERS[0]), setting(200.0, 8, OTHERS[1])]
    here = setting(150.0, None)
    here.add("make_closed", 110)
    assert "settings" not in here.known(ask, 130, others=others)
