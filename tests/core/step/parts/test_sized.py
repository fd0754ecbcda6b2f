"""A press gauge is read for one size of wheel, and judged by that size's figure."""

import copy

import pytest

from tests.core.builders import MAKE, Phone, at, figure
from tests.core.figures.test_figure import HOUSE, SIZES

# Invented, and not from memory: what is known from memory alone judges nothing.
WANTED = {
    "small": figure(25.0, "kPa", 16.0, 33.0),
    "large": figure(105.0, "kPa", 70.0, 140.0),
}


def pressing():
    """Return the house recipe with figures of ours for the gauge of its press."""
    recipe = copy.deepcopy(HOUSE)
    recipe["sources"]["OURS"] = {"title": "Our own", "status": "derived"}
    (step,) = [row for row in recipe["steps"] if row["key"] == "press_1"]
    for target in step["targets"]:
        if target["quantity"] == "press_gauge_kpa":
            target["figure"] = WANTED[target["size"]]
    return recipe


class Press:
    """A make of the house recipe at its first press, both sizes in it."""

    def __init__(self, moulds=SIZES, recipe=None):
        self.phone = Phone()
        rest = {"moulds": moulds, "equipment": {"bore_m": 0.08}}
        opened = self.phone.opened(recipe=recipe or pressing(), milk_l=600.0, **rest)
        begun = self.phone.event("step_begun", 1, step="press_1", why="Test.")
        self.events = [opened, begun]

    def read(self, kpa, minute, size=None):
        entry = self.phone.reading("press_gauge_kpa", kpa, minute, "press_1")
        if size:
            entry["data"]["place"] = size
        self.events.append(entry)
        return entry

    def shown(self, ask, minute):
        """Return the step, and its alerts of the gauge."""
        answers = ask.desk(
            ("take", self.events),
            ("step", MAKE, "press_1", at(minute)),
            ("view", MAKE, at(minute)),
        )
        assert answers[0]["problems"] == []
        return answers[1], [
            (alert["key"], alert["value"])
            for alert in answers[2]["alerts"]
            if alert["quantity"] == "press_gauge_kpa" and alert["value"] is not None
        ]


def judged(step):
    return {
        row["size"]: row["last"] and (row["last"]["value"], row["last"]["verdict"])
        for row in step["targets"]
        if row["quantity"] == "press_gauge_kpa"
    }


def test_a_step_says_of_which_sizes_its_gauge_may_be_read(ask):
    step, _ = Press().shown(ask, 2)
    (of,) = step["by_size"]
    assert (of["quantity"], of["unsized"]) == ("press_gauge_kpa", None)
    titles = {mould["size"]: mould["title"] for mould in HOUSE["moulds"]}
    assert of["sizes"] == [
        {"size": size, "title": titles[size]} for size in ("small", "large")
    ]


def test_a_make_of_one_size_is_not_asked_which(ask):
    press = Press([{"size": "small", "count": 12}])
    press.read(24.0, 2)
    step, alerts = press.shown(ask, 3)
    assert (step["by_size"], alerts) == ([], [])
    assert judged(step) == {"small": (24.0, "in_band")}


def test_a_gauge_is_judged_by_the_figure_of_its_size(ask):
    press = Press()
    press.read(100.0, 2, "small")
    press.read(100.0, 3, "large")
    step, alerts = press.shown(ask, 4)
    assert judged(step) == {"small": (100.0, "above"), "large": (100.0, "in_band")}
    assert alerts == [("alert.reading_above", 100.0)]


def test_a_gauge_of_no_size_is_judged_by_neither_and_told_once(ask):
    press = Press()
    entry = press.read(100.0, 2)
    step, alerts = press.shown(ask, 3)
    assert judged(step) == {"small": None, "large": None}
    assert alerts == [("alert.reading_no_size", 100.0)]
    (of,) = step["by_size"]
    assert of["unsized"] == {"id": entry["id"], "value": 100.0, "at_ms": at(2)}


def test_a_gauge_read_again_with_its_size_settles_it(ask):
    press = Press()
    press.read(100.0, 2)
    press.read(24.0, 3, "small")
    step, alerts = press.shown(ask, 4)
    assert judged(step) == {"small": (24.0, "in_band"), "large": None}
    assert alerts == []


def test_a_step_that_ended_still_says_that_its_gauge_names_no_size(ask):
    press = Press()
    press.read(100.0, 2)
    press.events.append(press.phone.event("step_ended", 30, step="press_1"))
    _, alerts = press.shown(ask, 31)
    assert alerts == [("alert.reading_no_size", 100.0)]


def test_a_gauge_that_no_figure_would_judge_is_not_asked_for_again(ask):
    # Of a figure from memory.
    recipe = pressing()
    recipe["sources"]["MEMORY"] = {"title": "Kept in mind", "status": "memory"}
    (row,) = [row for row in recipe["steps"] if row["key"] == "press_1"]
    for target in row["targets"]:
        target["figure"] = {**target["figure"], "status": "memory", "source": "MEMORY"}
    press = Press(recipe=recipe)
    press.read(100.0, 2)
    step, alerts = press.shown(ask, 3)
    assert [of["quantity"] for of in step["by_size"]] == ["press_gauge_kpa"]
    assert alerts == []
    assert step["end_blockers"] == [{"key": "too_early", "arg": at(21)}]


def test_the_gauge_of_each_size_is_asked_for_before_the_press_may_end(ask):
    press = Press()
    press.read(24.0, 2, "small")
    step, _ = press.shown(ask, 3)
    assert step["button"] == {"act": "reading", "arg": "press_gauge_kpa"}
    assert {"key": "reading_missing", "arg": "press_gauge_kpa"} in step["end_blockers"]
    press.read(100.0, 3, "large")
    step, _ = press.shown(ask, 4)
    assert step["button"]["act"] != "reading"
    assert step["end_blockers"] == [{"key": "too_early", "arg": at(21)}]


def test_a_press_that_ended_with_one_gauge_is_not_blamed_later(ask):
    press = Press()
    press.read(24.0, 2, "small")
    press.events.append(press.phone.event("step_ended", 30, step="press_1"))
    _, alerts = press.shown(ask, 31)
    assert alerts == []


def test_the_house_press_has_a_gauge_for_each_size(ask):
    # On the cheese 5 to 10 kPa; 14.5 and 30 cm across, piston of 8 cm: by hand,
    # 7.5 kPa x (14.5 / 8)^2 = 24.6 kPa and 7.5 kPa x (30 / 8)^2 = 105.5 kPa.
    step, _ = Press(recipe=HOUSE).shown(ask, 2)
    gauges = {row["size"]: row["value"] for row in step["targets"]}
    assert gauges["small"] == pytest.approx(24.6, abs=0.1)
    assert gauges["large"] == pytest.approx(105.5, abs=0.1)
