"""Counts of staphylococci against the published plan: n 5, c 2."""

import pytest

from tests.core.sums.asking import answer, table


def told(core, made_from, *counts):
    given = {
        "made_from": made_from,
        "counts": table(["count_per_g"], *[[count] for count in counts]),
    }
    return answer(core, "staph_counts", given, rules=["staph"])


def verdict(found):
    assert found["problems"] == []
    return found["values"][0]["value"]


# Reg. 2073/2005 as amended: raw 10^4 and 10^5; thermised or ripened pasteurised
# 100 and 1000; fresh pasteurised 10 and 100.
@pytest.mark.parametrize(
    ("made_from", "lower", "upper"),
    [("raw", 1e4, 1e5), ("thermised", 100, 1000), ("fresh_pasteurised", 10, 100)],
)
def test_two_samples_between_the_figures_meet_and_three_do_not(
    core, made_from, lower, upper
):
    two = told(core, made_from, lower, lower, lower, upper, upper)
    assert verdict(two) == "meets"
    three = told(core, made_from, lower, lower, lower + 1, upper, upper)
    assert verdict(three) == "does_not_meet"
    one_above = told(core, made_from, 0, 0, 0, 0, upper + 1)
    assert verdict(one_above) == "does_not_meet"


def test_one_sample_of_20_000_is_counted_and_no_verdict(core):
    found = told(core, "raw", 2e4)
    assert verdict(found) == "not_assessed"
    assert found["values"][0]["read"] == 1
    assert found["values"][1]["value"] == "between_them"
    assert found["notes"][0]["key"] == "note.samples_too_few"


def test_more_than_100_000_asks_for_a_toxin_test(core):
    found = told(core, "raw", 1.1e5)
    assert verdict(found) == "does_not_meet"
    (note,) = found["notes"]
    assert (note["key"], note["value"]) == ("note.toxin_test_asked", 1.1e5)
    assert told(core, "raw", 1e5)["notes"][0]["key"] == "note.samples_too_few"


def test_more_samples_than_the_plan_has_are_refused(core):
    (problem,) = told(core, "raw", 1, 1, 1, 1, 1, 1)["problems"]
    assert (problem["key"], problem["limit"]) == ("too_many", 5)


def test_without_the_rules_nothing_is_said(core):
    given = {"made_from": "raw", "counts": table(["count_per_g"], [1])}
    assert answer(core, "staph_counts", given)["missing"] == ["rules"]
