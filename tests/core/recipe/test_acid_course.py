"""The first recipe's acid against its page and table, by the recipe's own clock."""

import json

import pytest

from server.core.formulas.milk.acid_curve import curve_ph
from tests.conftest import ROOT
from tests.core.known.making import Make

FILE = ROOT / "server" / "recipes" / "washed-wheel.json"
RECIPE = json.loads(FILE.read_text(encoding="utf-8"))
STEPS = {step["key"]: step for step in RECIPE["steps"]}


def ends_s(key):
    """Return when a step ends, from the begin of the starter, all on time [s]."""
    step = STEPS[key]
    before = [ends_s(one) for one in step["after"]] if key != "starter" else [0]
    return max(before) + step["lasts"]["value"]


def wanted(key):
    (target,) = [row for row in STEPS[key]["targets"] if row["quantity"] == "ph"]
    return target["figure"]


def test_curd_is_stirred_before_the_whey_is_read_and_drawn_off():
    # A. Hill, University of Guelph, Gouda: stir 20 to 30 min; at 6.40 to 6.45 whey off.
    assert STEPS["drain_1"]["after"] == ["stir"]
    assert STEPS["stir"]["after"] == ["heal"]
    figure = wanted("drain_1")
    assert figure["low"] <= 6.40 < 6.45 <= figure["high"]
    curve = RECIPE["curve"]
    ph = curve_ph(ends_s("stir"), curve["times_s"], curve["phs"])
    assert 6.40 <= ph <= 6.45


@pytest.mark.parametrize("pressed_h", [5, 6.5, 8])
def test_a_wheel_pressed_as_long_as_the_page_says_has_its_ph(pressed_h):
    # The same page: press 5 to 8 h, then pH 5.3 to 5.5.
    begin_s = ends_s("fill_moulds")
    curve = RECIPE["curve"]
    ph = curve_ph(begin_s + pressed_h * 3600, curve["times_s"], curve["phs"])
    assert 5.3 <= ph <= 5.5


def test_each_gate_of_the_acid_lies_on_the_curve_at_its_own_time():
    curve = RECIPE["curve"]
    for key, begins_after in (
        ("cut", "set"),
        ("drain_1", "stir"),
        ("turn_2", "press_2"),
        ("unmould", "press_3"),
    ):
        ph = curve_ph(ends_s(begins_after), curve["times_s"], curve["phs"])
        figure = wanted(key)
        assert figure["low"] <= ph <= figure["high"], key


@pytest.mark.parametrize("ph", [5.15, 5.2, 5.25, 5.3])
def test_a_usual_ph_after_a_night_in_the_press_asks_for_nothing(ask, ph):
    make = Make("unmould").run("starter", 0, 5)
    minute = ends_s("press_3") / 60
    make.run("unmould", minute).read("ph", ph, minute + 1, step="unmould")
    alerts = ask.view(make.events, minute + 2)["alerts"]
    assert [row["key"] for row in alerts if row["form"] == "acid"] == []


@pytest.mark.parametrize(("ph", "key"), [(5.6, "above"), (4.95, "below")])
def test_a_ph_that_is_off_after_the_night_is_told(ask, ph, key):
    make = Make("unmould").run("starter", 0, 5)
    minute = ends_s("press_3") / 60
    make.run("unmould", minute).read("ph", ph, minute + 1, step="unmould")
    alerts = ask.view(make.events, minute + 2)["alerts"]
    told = [row for row in alerts if row["form"] == "acid"]
    assert [row["key"] for row in told] == ["alert.reading_" + key]


def test_wheels_are_marked_when_they_are_moulded_and_looked_for_in_the_brine():
    def says(key):
        return " ".join(line["en"] for line in STEPS[key]["do"])

    assert "batch and date" in says("fill_moulds")
    for key in ("brine_small", "brine_large"):
        assert "mark" in says(key)
