"""How often the wheels of a step are turned, as a recipe may say it."""

import pytest

SOURCES = {"OURS": {"title": "Our own", "where": "tests", "status": "derived"}}


def seconds(value):
    return {"value": value, "unit": "s", "source": "OURS", "status": "derived"}


def found(core, turns):
    step = {"turns": turns}
    return core("recipe.steps.turns", "check_turns", "steps.0", step, SOURCES)


DAY, WEEK = seconds(86400), seconds(604800)


@pytest.mark.parametrize(
    "turns",
    [
        None,
        [{"every": DAY}],
        [{"every": DAY, "until": WEEK}, {"every": WEEK}],
    ],
)
def test_turning_in_parts_is_sound(core, turns):
    assert found(core, turns) == []


@pytest.mark.parametrize(
    ("turns", "field", "key", "limit"),
    [
        ([], "turns", "missing", None),
        ("daily", "turns", "not_a_list", None),
        ([{}], "turns.0.every", "missing", None),
        ([{"every": seconds(59)}], "turns.0.every.value", "below", 60),
        # The last part has no end, and every other has one.
        ([{"every": DAY, "until": WEEK}], "turns.0.until", "unknown_field", None),
        ([{"every": DAY}, {"every": DAY}], "turns.0.until", "missing", None),
        (
            [
                {"every": DAY, "until": WEEK},
                {"every": DAY, "until": WEEK},
                {"every": DAY},
            ],
            "turns.1.until.value",
            "below",
            604801,
        ),
    ],
)
def test_what_is_wrong_is_named(core, turns, field, key, limit):
    problem = {"field": "steps.0." + field, "key": key, "limit": limit}
    assert found(core, turns) == [problem]
