"""What the milk of a make is, each class against the text of its rule.

21 CFR 1240.61, "Mandatory pasteurization for all milk and milk products in final
package form intended for direct human consumption", (b): 145 °F, 30 minutes, every
particle. 21 CFR 133.138, "Edam cheese", (a), and 133.142, "Gouda cheese": of milk
that is not pasteurised the cheese is cured at not less than 35 °F for at least 60
days. Reg. (EC) 2073/2005, Annex I, Chapter 2, 2.2: coagulase-positive staphylococci.
"""

import pytest

from tests.core.builders import at
from tests.core.heat.ways import Way


def told(ask, way, minute=600):
    milk = way.milk(ask, minute)
    return milk["is"]["class"], milk["is"]["why"]


# ---- 21 CFR 1240.61(b): what is pasteurised


def test_a_hold_in_which_the_rule_is_met_makes_milk_pasteurised(ask):
    way = Way("pasteurised").held(30, 145.0, 150.0)
    assert told(ask, way) == ("pasteurised", "hold_met")
    assert way.milk(ask)["is"]["since_ms"] == at(41)


def test_until_then_it_is_undecided_and_nothing_else(ask):
    way = Way("pasteurised")
    assert told(ask, way) == ("undecided", "hold_awaited")
    way.add("step_begun", 10, step="hold")
    for minute in range(0, 31, 2):
        way.read(10 + minute, 145.0, 150.0)
    assert told(ask, way, 41) == ("undecided", "hold_running")


def test_a_minute_too_short_is_heat_treated(ask):
    assert told(ask, Way("pasteurised").held(28)) == ("heat_treated", "hold_not_met")


def test_a_hold_that_cannot_be_assessed_leaves_it_undecided(ask):
    way = Way("pasteurised", equipment={}).held(30)  # the chart names no plant
    assert told(ask, way) == ("undecided", "hold_not_assessed")
    way.add("equipment_set", 50, key="plant_name", value="Quernbeck")
    assert told(ask, way) == ("pasteurised", "hold_met")


def test_a_positive_phosphatase_test_unmakes_it(ask):
    way = Way("pasteurised").held(30)
    way.add("reading_taken", 500, quantity="phosphatase_test", value="positive")
    assert told(ask, way) == ("heat_treated", "phosphatase_positive")


def test_milk_whose_hold_was_skipped_is_raw(ask):
    way = Way("pasteurised")
    way.add("step_skipped", 20, step="hold", why="The boiler is cold.")
    assert told(ask, way) == ("raw", "hold_skipped")


# ---- heat-treated and raw


@pytest.mark.parametrize(
    ("minutes", "why"),
    [(16, "own_hold_met"), (40, "own_hold_met"), (8, "own_hold_not_met")],
)
def test_heat_treated_milk_is_heat_treated_whatever_its_hold_shows(ask, minutes, why):
    assert told(ask, Way().held(minutes)) == ("heat_treated", why)


def test_raw_milk_is_raw(ask):
    assert told(ask, Way("raw")) == ("raw", "chosen_raw")


# ---- a word makes no milk pasteurised


def test_a_word_after_the_hold_makes_no_milk_pasteurised(ask):
    way = Way().held(16)
    way.change(60, "pasteurised")
    assert told(ask, way) == ("heat_treated", "hold_not_met")


def test_a_word_after_a_hold_that_the_rule_was_met_in_follows_the_rule(ask):
    way = Way().held(32)
    assert told(ask, way) == ("heat_treated", "own_hold_met")
    way.change(60, "pasteurised")
    assert told(ask, way) == ("pasteurised", "hold_met")


def test_a_word_may_make_less_of_milk(ask):
    way = Way("pasteurised").held(30)
    assert told(ask, way)[0] == "pasteurised"
    way.change(60, "heat_treated", "The seal of the chart was broken.")
    assert told(ask, way) == ("heat_treated", "own_hold_met")


def test_milk_that_was_held_hot_is_not_raw_by_a_word(ask):
    way = Way().held(16)
    way.change(60, "raw")  # from a phone that did not know of the hold
    assert told(ask, way) == ("heat_treated", "was_heated")


# ---- what follows


CURED = {"curing_days": 60, "curing_min_temp": {"F": 35, "C": 1.7}}


@pytest.mark.parametrize(
    ("way", "cured", "label", "role"),
    [
        (lambda: Way("pasteurised").held(30), None, "label.pasteurised", "maker"),
        (lambda: Way().held(16), CURED, "label.heat_treated", "maker"),
        (lambda: Way("raw"), CURED, "label.raw", "owner"),
        (lambda: Way("pasteurised"), CURED, "label.undecided", "owner"),
    ],
)
def test_what_follows_from_a_class_is_the_rules_word(ask, way, cured, label, role):
    # 21 CFR 133.138(a), 133.142: 60 days at 35 °F unless the milk is pasteurised.
    follows = way().milk(ask)["follows"]
    wanted = cured or {"curing_days": None, "curing_min_temp": None}
    assert {name: follows[name] for name in wanted} == wanted
    assert follows["curing_by"]["section"] == "21 CFR 133.138(a), 133.142"
    assert (follows["label"]["key"], follows["release_role"]) == (label, role)


def test_milk_of_which_no_rule_is_known_yet_follows_nothing(ask):
    way = Way()
    from tests.core.builders import MAKE

    told = ask.desk(("take", way.events), ("view", MAKE, at(5)))[1]
    assert told["make"]["milk"]["follows"] is None
    assert told["make"]["milk"]["is"]["class"] == "heat_treated"
