"""The milk in a hold: what the laboratory finds counts."""

import json

import pytest

from tests.core.heat.holding import ROOT, RULES, hold_recipe, whole

EU = json.loads(
    (ROOT / "server" / "rules" / "eu_uk_heat_treatment.json").read_text("utf-8")
)


def lab_verdict(ask, *results, rule="us_heat_treatment", rules=RULES):
    hold = whole()
    hold.events[0]["data"]["recipe"] = hold_recipe(rule=rule)
    unit, milk, air = ("C", 63.0, 66.0) if rule.startswith("eu") else ("F", 145, 150)
    for minute in range(0, 31, 2):
        hold.read(minute, milk, air, unit)
    hold.add("step_ended", 31, step="hold")
    hold.add("make_closed", 40)
    for day, (quantity, value) in enumerate(results):
        # From the laboratory, days after the make was closed.
        hold.add("reading_taken", 1440 * (day + 2), quantity=quantity, value=value)
    return hold.step(ask, 1440 * 9, rules)["verdict"]


def keys_of(verdict):
    return [row["key"] for row in verdict["reasons"]]


@pytest.mark.parametrize(
    ("quantity", "value", "is_met"),
    [
        # Below 350 mU/L (Pasteurized Milk Ordinance, as server/rules quotes it).
        ("milk_phosphatase_mu_l", 349, True),
        ("milk_phosphatase_mu_l", 350, False),
        # 3 ug phenol of 0.25 g (21 CFR 133.113), 5 ug for brick (133.108): what
        # lies between fails no cheese of a kind that is not named.
        ("cheese_phosphatase_ug", 3.0, True),
        ("cheese_phosphatase_ug", 4.0, True),
        ("cheese_phosphatase_ug", 5.1, False),
        ("phosphatase_test", "negative", True),
        ("phosphatase_test", "positive", False),
    ],
)
def test_phosphatase_that_comes_days_later_counts(ask, quantity, value, is_met):
    told = lab_verdict(ask, (quantity, value))
    assert told["class"] == ("reads_as_pasteurised" if is_met else "heat_treated_only")
    assert ("phosphatase_positive" in keys_of(told)) is not is_met


def test_one_positive_test_outweighs_a_negative_one(ask):
    told = lab_verdict(
        ask, ("phosphatase_test", "positive"), ("milk_phosphatase_mu_l", 9)
    )
    assert keys_of(told) == ["phosphatase_positive"]


def test_the_eu_rule_is_answered_by_a_test_and_not_by_another_rules_number(ask):
    eu = {"rule": "eu_uk_heat_treatment", "rules": {"eu_uk_heat_treatment": EU}}
    assert "phosphatase_not_entered" in keys_of(lab_verdict(ask, **eu))
    number = lab_verdict(ask, ("milk_phosphatase_mu_l", 20), **eu)
    assert "phosphatase_not_entered" in keys_of(number)
    cheese = lab_verdict(ask, ("cheese_phosphatase_ug", 1.0), **eu)
    assert "phosphatase_not_entered" in keys_of(cheese)
    told = lab_verdict(ask, ("phosphatase_test", "negative"), **eu)
    assert "phosphatase_not_entered" not in keys_of(told)


def test_a_limit_from_memory_judges_no_phosphatase(core):
    def entry(value):
        return {"id": "x", "data": {"value": value}}

    lists = {
        "reading_taken/milk_phosphatase_mu_l": [entry(900)],
        "reading_taken/cheese_phosphatase_ug": [entry(90)],
    }
    memory = {"value": 1, "status": "memory"}
    rule = {"phosphatase": {"milk_max_mu_l": memory, "any_max_ug_phenol": memory}}
    assert core("heat.milk", "phosphatase", {"lists": lists}, rule) is None
