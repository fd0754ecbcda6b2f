"""How long wheels stay in the store: the later of the recipe's time and the law's."""

import pytest

from tests.core.builders import MAKE, at
from tests.core.known.making import Make
from tests.core.sums.asking import RULES, answer, values

DAY_S = 86400
OWN = {"store_own_days": {"typed": "28", "unit": "d"}}


# 21 CFR 133.138(a), 133.142: of milk that is not pasteurised, at least 60 days.
@pytest.mark.parametrize(
    ("milk", "days"),
    [("pasteurised", 28), ("heat_treated", 60), ("raw", 60), ("undecided", 60)],
)
def test_milk_that_is_not_pasteurised_waits_out_the_days_of_curing(core, milk, days):
    given = {**OWN, "milk_is": {"value": milk}}
    found = values(core, "store_time", given, ["us_curing", "milk_classes"])
    assert found[("store_s", None)]["value"] == days * DAY_S


def test_a_recipe_that_ripens_longer_than_the_law_keeps_its_own_time(core):
    given = {"store_own_days": {"typed": "90", "unit": "d"}}
    given["milk_is"] = {"value": "raw"}
    found = values(core, "store_time", given, ["us_curing", "milk_classes"])
    assert found[("store_s", None)]["value"] == 90 * DAY_S


def test_without_its_rules_nothing_is_said(core):
    given = {**OWN, "milk_is": {"value": "raw"}}
    assert answer(core, "store_time", given)["missing"] == ["rules"]


def test_days_of_curing_are_not_asked_of_pasteurised_milk(core):
    rows = {"rows": [{"at_min": 0, "value": 50}, {"at_min": 1440, "value": 50}]}
    given = {"store_thermometer": {"value": "F"}, "curing_temps": rows}
    for milk, word in (("pasteurised", "not_asked"), ("raw", "does_not_meet")):
        known = {**given, "milk_is": {"value": milk}}
        found = values(core, "curing_days", known, ["us_curing", "milk_classes"])
        assert found[("verdict", "unpasteurised_60_days")]["value"] == word


def stored(treatment, days, temp=10.0, **body):
    """A make that was moulded at minute 0 and came to the store a day later."""
    make = Make("store", "store_time", treatment=treatment, **body)
    make.run("fill_moulds", -1, 0).run("store", 1440)
    for day in range(days + 1):
        make.read("store_temp_c", temp, 1440 * day)
    return make


def step(ask, make, day):
    question = ("step", MAKE, "store", at(1440 * day + 10))
    return ask.desk(("set_rules", RULES), ("take", make.events), question)[2]


@pytest.mark.parametrize("treatment", ["raw", "heat_treated"])
def test_the_store_step_ends_when_the_days_of_curing_may_be_over(ask, treatment):
    told = step(ask, stored(treatment, 30), 30)
    # They count from the moulds, a day before the store began.
    assert told["end_low_ms"] == at(60 * 1440)
    assert told["lasts"]["origin"]["from"] == "sum"
    assert told["button"]["act"] != "end"


def test_between_two_readings_the_end_stands_still(ask):
    make = stored("raw", 30)
    early = step(ask, make, 30)["end_low_ms"]
    assert step(ask, make, 31)["end_low_ms"] == early


def test_days_too_cold_put_the_end_off(ask):
    # 35 °F is 1.7 °C: none of these days counts.
    told = step(ask, stored("raw", 30, temp=1.0), 30)
    assert told["end_low_ms"] == at(30 * 1440 + 60 * 1440)


def test_pasteurised_milk_goes_by_the_recipe(ask):
    make = stored("pasteurised", 22, equipment={"plant_name": "Quernbeck"})
    make.read("milk_volume_l", 1000.0, -300).read("fat_frac", 0.04, -299)
    make.run("hold", -200)
    for minute in range(0, 31, 2):
        for quantity, typed in (("milk_temp_c", 145), ("air_space_temp_c", 150)):
            told = {"typed": str(typed), "typed_unit": "F", "step": "hold"}
            make.read(quantity, (typed - 32) / 1.8, minute - 200, **told)
    make.add("step_ended", -169, step="hold")
    told = step(ask, make, 22)
    assert told["end_low_ms"] == at(1440 + 21 * 1440)
    assert told["lasts"]["value_s"] == 28 * DAY_S
