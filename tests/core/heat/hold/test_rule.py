"""The rule of a hold: which gap between readings counts."""

import pytest

from tests.core.heat.holding import every_two_minutes, whole

AGREED = {"gap_max_s": 300, "gap_agreed_with": "District inspector"}


def every_five_minutes(hold, ask):
    for minute in range(0, 31, 5):
        hold.read(minute, 145.0, 150.0)
    hold.add("step_ended", 31, step="hold")
    return hold.step(ask, 32)["verdict"]


def test_readings_five_minutes_apart_are_a_gap_unless_agreed(ask):
    plain = every_five_minutes(whole(), ask)
    assert "gap_too_long" in [row["key"] for row in plain["reasons"]]
    # 120 s is the tool's own figure, in server/rules.
    assert plain["gap"] == {
        "gap_s": 120,
        "is_own": False,
        "agreed_with": None,
        "refused_s": None,
    }
    agreed = every_five_minutes(whole(AGREED), ask)
    assert agreed["class"] == "reads_as_pasteurised"
    assert agreed["gap"] == {
        "gap_s": 300,
        "is_own": True,
        "agreed_with": "District inspector",
        "refused_s": None,
    }


@pytest.mark.parametrize("who", [None, "", "  ", 7])
def test_a_longer_gap_on_nobodys_word_does_not_count(ask, who):
    told = every_five_minutes(whole({"gap_max_s": 300, "gap_agreed_with": who}), ask)
    assert told["class"] == "not_assessed"
    assert told["gap"]["gap_s"] == 120
    assert told["gap"]["refused_s"] == 300


def test_a_shorter_gap_is_the_makers_own_to_set(ask):
    hold = whole({"gap_max_s": 60})
    every_two_minutes(hold, 0, 30)
    hold.add("step_ended", 31, step="hold")
    told = hold.step(ask, 32)["verdict"]
    assert told["class"] == "not_assessed"
    assert told["gap"]["gap_s"] == 60
    assert told["gap"]["refused_s"] is None


@pytest.mark.parametrize("gap_s", [0, -5, 1e9, "300", True, None])
def test_a_gap_that_cannot_be_agreed_leaves_the_rule_as_it_is(core, gap_s):
    rule = {"gap_max_s": {"value": 120}}
    assert core("heat.hold.rule", "with_gap", rule, gap_s) == rule
