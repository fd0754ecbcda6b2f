"""The account of a brine tank; balances by hand, salting from the facts."""

import copy
import json
from pathlib import Path

import pytest

from server.core.log.kinds.table import KINDS
from tests.core.builders import MAKE, Phone, at, figure, step
from tests.core.creamery.test_clashes import of_steps

TANK = "0193a5b0-0000-7000-8000-0000000000ba"
ROOT = Path(__file__).resolve().parents[3]
BRINE = json.loads((ROOT / "server" / "rules" / "brine.json").read_text("utf-8"))
DAY = 24 * 60


def tank_of(ask, events, at_min):
    calls = (("set_rules", {"brine": BRINE}), ("take", events))
    answers = ask.desk(*calls, ("tanks", at(at_min)))
    assert answers[1]["problems"] == []
    (found,) = answers[2]
    return found


class Tank:
    """Events of one tank, each at a minute."""

    def __init__(self):
        self.phone = Phone(make=TANK)
        self.events = []
        self.add("tank_opened", 0, name="Large tank", mass_kg=500.0, salt_frac=0.20)

    def add(self, kind, minute, **data):
        row = self.phone.event(kind, minute, **data)
        self.events.append(row)
        return row

    def measured(self, minute, salt_frac):
        return self.add(
            "reading_taken", minute, quantity="brine_salt_frac", value=salt_frac
        )

    def load(self, minute, kg, size="small", make=MAKE):
        return self.add(
            "tank_loaded",
            minute,
            load_make=make,
            size=size,
            wheels=10,
            mass_kg=kg,
            days=1,
        )


def test_a_new_tank_holds_what_it_was_filled_with(ask):
    found = tank_of(ask, Tank().events, 10)
    assert found["name"] == "Large tank"
    assert found["salt_kg"] == pytest.approx(100)
    assert found["measured"] is None


def test_salt_and_water_are_booked_by_hand(ask):
    tank = Tank()
    tank.add("salt_added", 5, mass_kg=10.0)
    tank.add("water_added_to_tank", 6, mass_kg=40.0)
    found = tank_of(ask, tank.events, 10)
    assert found["mass_kg"] == pytest.approx(550)
    assert found["salt_frac"] == pytest.approx(110 / 550)


def test_a_weighed_load_takes_two_kilograms_of_salt_out(ask):
    # 2 kg of salt out and 4 kg of water in leave 19.5219 %, 3.000 kg restore it.
    tank = Tank()
    load = tank.load(1, 100.0)
    tank.add("tank_unloaded", DAY, load=load["id"], mass_kg=98.0)
    found = tank_of(ask, tank.events, DAY + 10)
    assert found["salt_frac"] == pytest.approx(0.195219, abs=5e-7)
    assert found["salt_to_add_kg"] == pytest.approx(3.0, abs=5e-4)
    assert found["loads"][0]["basis"] == "tank.weighed"


def test_wheels_of_a_known_size_inside_are_counted_by_the_model(ask):
    tank = Tank()
    tank.load(1, 14.0)
    opened = Phone().opened()
    found = tank_of(ask, [*tank.events, opened], DAY)
    (load,) = found["loads"]
    assert load["basis"] == "tank.model"
    # 1 kg wheels of 130 × 75 mm take 1.8 % in .63 d at 1.5e-10 m²/s.
    assert 0.015 < load["salt_kg"] / 14.0 < 0.03
    assert found["salt_kg"] == pytest.approx(100 - load["salt_kg"])
    assert found["mass_kg"] == pytest.approx(500 - load["salt_kg"] + load["water_kg"])


def test_wheels_nobody_knows_the_size_of_are_left_out_and_told(ask):
    tank = Tank()
    tank.load(1, 14.0)
    found = tank_of(ask, tank.events, DAY)
    (load,) = found["loads"]
    assert load["basis"] == "tank.not_known"
    assert found["salt_kg"] == pytest.approx(100)
    # How long they are in is known all the same; one minute of the day is not over.
    assert load["time"]["at_frac"] == pytest.approx((DAY - 1) / DAY)
    assert (load["uptake"], load["salt_due_kg"]) == (None, None)


def test_wheels_inside_have_come_so_far_in_time_and_in_salt(ask):
    tank = Tank()
    tank.load(0, 14.0)
    events = [*tank.events, Phone().opened()]

    def load_at(minute):
        return tank_of(ask, events, minute)["loads"][0]

    early, half, whole, after = [
        load_at(minute) for minute in (0, DAY / 2, DAY, 2 * DAY)
    ]
    assert half["time"]["at_frac"] == pytest.approx(0.5)
    assert whole["time"]["at_frac"] == after["time"]["at_frac"] == 1.0
    assert (early["time"]["at_frac"], early["uptake"]["at_frac"]) == (0.0, 0.0)
    # Salt goes in by the root of time at first: after half of it more than half.
    assert 0.6 < half["uptake"]["at_frac"] < 0.8
    # The brine is a little weaker by then, so the forecast is not met to the gram.
    assert whole["salt_kg"] == pytest.approx(early["salt_due_kg"], rel=0.05)
    assert whole["uptake"]["at_frac"] > 0.95


def test_what_is_taken_out_is_on_no_way_any_more(ask):
    tank = Tank()
    load = tank.load(1, 100.0)
    tank.add("tank_unloaded", 60, load=load["id"], mass_kg=98.0)
    (gone,) = tank_of(ask, tank.events, 90)["loads"]
    assert (gone["time"], gone["uptake"]) == (None, None)


def test_a_strength_lies_in_the_working_range_of_the_rule(ask):
    tank = Tank()
    tank.measured(30, 0.195)
    band = tank_of(ask, tank.events, 60)["band"]
    assert (band["low_frac"], band["high_frac"]) == (0.16, 0.23)
    # 16 to 23 %: half way between them is half of the bar; 20 % is 11 of its 21.
    assert band["bar"]["at_frac"] == pytest.approx(0.5)
    assert band["bar"]["aim_frac"] == pytest.approx(11 / 21)


@pytest.mark.parametrize("rule", ["none", "from memory"])
def test_no_band_is_drawn_that_no_rule_gives(ask, rule):
    rules = {}
    if rule == "from memory":
        rules = {"brine": copy.deepcopy(BRINE)}
        rules["brine"]["limits"]["salt_max_frac"]["status"] = "memory"
    calls = (("set_rules", rules), ("take", Tank().events))
    (found,) = ask.desk(*calls, ("tanks", at(10)))[2]
    assert found["band"] is None


def test_a_measurement_is_believed_and_its_drift_kept(ask):
    tank = Tank()
    tank.measured(30, 0.19)
    found = tank_of(ask, tank.events, 60)
    assert found["drift_frac"] == pytest.approx(-0.01)
    assert found["salt_frac"] == pytest.approx(0.19)
    # 500 kg from 19 to 20 %: 500 × .01 / .80.
    assert found["salt_to_add_kg"] == pytest.approx(6.25)


def test_what_was_measured_with_the_wheels_inside_is_not_booked_twice(ask):
    tank = Tank()
    load = tank.load(1, 14.0)
    opened = Phone().opened()
    before = tank_of(ask, [*tank.events, opened], DAY)
    tank.measured(DAY, before["salt_frac"])
    tank.add("tank_unloaded", DAY + 1, load=load["id"], mass_kg=14.0)
    after = tank_of(ask, [*tank.events, opened], DAY + 2)
    assert after["salt_frac"] == pytest.approx(before["salt_frac"], rel=1e-4)


def test_a_struck_addition_does_not_count(ask):
    tank = Tank()
    salt = tank.add("salt_added", 5, mass_kg=10.0)
    strike = tank.phone.event("entry_struck", 6, salt["id"], why="wrong tank")
    found = tank_of(ask, [*tank.events, strike], 10)
    assert found["salt_kg"] == pytest.approx(100)


def test_order_of_arrival_does_not_matter(ask):
    tank = Tank()
    load = tank.load(1, 100.0)
    tank.add("salt_added", 5, mass_kg=10.0)
    tank.measured(30, 0.21)
    tank.add("tank_unloaded", DAY, load=load["id"], mass_kg=98.0)
    forward = tank_of(ask, tank.events, DAY + 10)
    assert tank_of(ask, list(reversed(tank.events)), DAY + 10) == forward


def test_a_weak_brine_is_outside_the_working_limits(ask):
    tank = Tank()
    tank.measured(30, 0.159)
    (row,) = tank_of(ask, tank.events, 60)["outside"]
    assert row["limit"] == 0.16


def test_an_unloading_of_what_was_never_loaded_is_told(ask):
    tank = Tank()
    tank.add("tank_unloaded", 5, load=MAKE, mass_kg=98.0)
    found = tank_of(ask, tank.events, 10)
    assert [row["key"] for row in found["notes"]] == ["note.tank.unknown_load"]


def test_more_salt_out_than_there_was_is_told_and_changes_nothing(ask):
    tank = Tank()
    load = tank.load(1, 400.0)
    tank.add("tank_unloaded", DAY, load=load["id"], mass_kg=250.0)
    found = tank_of(ask, tank.events, DAY + 1)
    (note,) = found["notes"]
    assert note["key"] == "note.tank.cannot_be"
    # 150 kg of salt into the wheels, and the tank has 100.
    refused = note["refused"]
    assert (refused["field"], refused["key"], refused["unit"]) == (
        "salt_out_kg",
        "above",
        "kg",
    )
    assert refused["limit"] == pytest.approx(100)
    assert found["salt_kg"] == pytest.approx(100)


def test_a_tank_is_no_make(ask):
    answers = ask.desk(("take", Tank().events), ("board", at(1)), ("view", TANK, at(1)))
    assert answers[1]["makes"] == []
    assert answers[2] is None


@pytest.mark.parametrize(
    "kind",
    ["tank_opened", "tank_loaded", "tank_unloaded", "salt_added"],
)
def test_an_event_of_a_tank_lacking_a_field_is_refused(core, kind):
    row = Tank().add(kind, 1)
    row["data"] = {}
    found = core("log.kinds.event", "check_event", row)
    wanted = [field["name"] for field in KINDS[kind]["fields"] if field["required"]]
    assert [problem["field"] for problem in found] == wanted


def test_tanks_come_by_name(ask):
    first = Tank()
    other = Phone(make="0193a5b0-0000-7000-8000-0000000000bb", device=1)
    event = other.event("tank_opened", 0, name="A tank", mass_kg=100.0, salt_frac=0.2)
    found = ask.desk(("take", [*first.events, event]), ("tanks", at(5)))[1]
    assert [row["name"] for row in found] == ["A tank", "Large tank"]


def test_a_strong_brine_is_thinned_with_water(ask):
    tank = Tank()
    tank.measured(30, 0.22)
    found = tank_of(ask, tank.events, 60)
    # 500 × .02 / .20.
    assert found["water_to_add_kg"] == pytest.approx(50)
    assert found["salt_to_add_kg"] is None


def test_a_recipe_that_leaves_the_strength_to_a_sum_asks_for_the_usual_one(ask):
    recipe = json.loads(
        (ROOT / "server" / "recipes" / "washed-wheel.json").read_text("utf-8")
    )
    for row in recipe["steps"]:
        for target in row.get("targets", []):
            if target["quantity"] == "brine_salt_frac":
                target["figure"].update(value=None, low=None, high=None)
                target["figure"]["by"] = {"sum": "brine_time", "value": "salt_frac"}
    maker = Phone()
    opened = maker.opened(recipe=recipe)
    tank = Tank()
    tank.load(1, 100.0)
    found = tank_of(ask, [opened, *tank.events], 10)
    assert found["wanted_frac"] == 0.2


def test_a_tank_keeps_its_own_temperature(ask):
    tank = Tank()
    tank.add("reading_taken", 5, quantity="brine_temp_c", value=18.0)
    found = tank_of(ask, tank.events, 10)
    assert found["temp_c"] == 18.0
    # Read working range: 10 to 15 °C.
    assert [row["limit"] for row in found["outside"]] == [15]


def test_a_brine_too_cold_to_reckon_with_is_told(ask):
    tank = Tank()
    tank.add("reading_taken", 5, quantity="brine_temp_c", value=-5.0)
    found = tank_of(ask, tank.events, 10)
    assert [row["key"] for row in found["notes"]] == ["note.tank.cannot_be"]
    refused = found["notes"][0]["refused"]
    assert (refused["field"], refused["key"]) == ("brine_temp_c", "below")


def test_wheels_weighed_heavier_after_the_brine_go_by_the_model(ask):
    tank = Tank()
    load = tank.load(1, 14.0)
    tank.add("tank_unloaded", DAY, load=load["id"], mass_kg=14.2)
    found = tank_of(ask, [*tank.events, Phone().opened()], DAY + 10)
    assert found["loads"][0]["basis"] == "tank.model"


def ratio_typed(tank, minute, value):
    return tank.add("reading_taken", minute, quantity="water_salt_ratio", value=value)


def test_a_room_without_a_figure_of_its_own_goes_by_the_published_one(ask):
    # Guinee and Fox 1983, abstract: 0.5 to 2.42 of water for 1 of salt.
    found = tank_of(ask, Tank().events, 10)["water_salt_ratio"]
    assert (found["value"], found["low"], found["high"]) == (2.0, 0.5, 2.42)
    assert (found["from"], found["status"]) == ("default", "abstract")


def test_a_room_own_figure_counts_for_its_weighed_loads(ask):
    # 3 kg lost at 2.5 of water for 1 of salt: 2 kg of salt, 5 kg of water.
    tank = Tank()
    load = tank.load(1, 100.0)
    tank.add("tank_unloaded", DAY, load=load["id"], mass_kg=97.0)
    ratio_typed(tank, DAY + 1, 2.5)
    found = tank_of(ask, tank.events, DAY + 10)
    assert found["water_salt_ratio"]["from"] == "typed"
    assert found["salt_kg"] == pytest.approx(98)
    assert found["mass_kg"] == pytest.approx(503)


def test_a_loss_on_the_scale_tells_nothing_where_as_much_salt_goes_in(ask):
    tank = Tank()
    load = tank.load(1, 14.0)
    tank.add("tank_unloaded", DAY, load=load["id"], mass_kg=13.9)
    ratio_typed(tank, 2, 1.1)
    found = tank_of(ask, [*tank.events, Phone().opened()], DAY + 10)
    assert found["loads"][0]["basis"] == "tank.model"


def test_a_measurement_keeps_the_scale_it_was_read_on(ask):
    tank = Tank()
    read = tank.measured(30, 0.175)
    read["data"].update(typed="18,5", typed_unit="Baume")
    measured = tank_of(ask, tank.events, 60)["measured"]
    assert (measured["typed"], measured["typed_unit"]) == ("18,5", "Baume")


def test_a_corrected_mass_no_longer_says_what_was_typed(ask):
    tank = Tank()
    added = tank.add("salt_added", 5, mass_kg=9.07, typed="20", typed_unit="lb")
    fixed = tank.phone.event(
        "entry_corrected", 6, ref=added["id"], set={"mass_kg": 10.0}, why="mistyped"
    )
    events = [*tank.events, fixed]
    answers = ask.desk(("take", events), ("tanks", at(10)), ("record", TANK))
    assert answers[1][0]["salt_kg"] == pytest.approx(110)
    line = next(row for row in answers[2] if row["id"] == added["id"])
    assert line["data"] == {"mass_kg": 10.0}
    assert line["original"]["data"]["typed"] == "20"


def brining(**rest):
    """Return a recipe whose only step brines small wheels; invented figures."""
    target = {"quantity": "brine_salt_frac", "figure": figure(0.19, "fraction")}
    return of_steps(
        step("brine", place="brine", size="small", targets=[target], **rest)
    )


def shown(ask, events, at_min, step="brine"):
    """Return the one tank, and the step of the make, both as of a minute."""
    answers = ask.desk(
        ("take", events), ("tanks", at(at_min)), ("step", MAKE, step, at(at_min))
    )
    assert answers[0]["problems"] == []
    return answers[1][0], answers[2]


def test_a_tank_wants_the_strength_that_the_step_shows(ask):
    maker, tank = Phone(), Tank()
    tank.load(1, 14.0)
    found, told = shown(ask, [maker.opened(recipe=brining()), *tank.events], 10)
    assert found["wanted_frac"] == told["targets"][0]["value"] == 0.19


def test_a_tank_wants_the_strength_for_the_size_that_was_put_in(ask):
    recipe = brining()
    large = copy.deepcopy(recipe["steps"][0])
    large.update(key="brine_large", size="large")
    large["targets"][0]["figure"]["value"] = 0.22
    (mould,) = recipe["moulds"]
    mould["share_frac"]["value"] = 0.5
    recipe["moulds"].append({**copy.deepcopy(mould), "size": "large"})
    recipe["steps"].insert(0, large)
    tank = Tank()
    tank.load(1, 14.0)
    found, _ = shown(ask, [Phone().opened(recipe=recipe), *tank.events], 10)
    assert found["wanted_frac"] == 0.19


def test_wheels_come_out_when_the_sum_of_their_step_says(ask):
    by = {"sum": "brine_time", "value": "time_s"}
    recipe = brining(lasts={**figure(64800, "s", 43200, 86400), "by": by})
    recipe["steps"][0]["targets"][0]["figure"]["value"] = 0.2
    maker, tank = Phone(), Tank()
    tank.load(1, 14.0)["data"].pop("days")
    events = [maker.opened(recipe=recipe), *tank.events]
    events.append(maker.reading("cheese_moisture_frac", 0.45, 2))
    found, told = shown(ask, events, 10)
    assert told["lasts"]["origin"]["from"] == "sum"
    due_ms = found["loads"][0]["due_ms"]
    assert due_ms == at(1) + round(told["lasts"]["value_s"] * 1000)
    board = ask.desk(("take", events), ("board", at(10)))[1]
    (out,) = [row for row in board["due"] if row["what"] == "unload"]
    assert out["due_ms"] == due_ms


def test_what_was_said_of_wheels_goes_before_how_long_their_step_lasts(ask):
    tank = Tank()
    tank.load(1, 14.0)
    recipe = brining(lasts=figure(64800, "s", 43200, 86400))
    found, _ = shown(ask, [Phone().opened(recipe=recipe), *tank.events], 10)
    assert found["loads"][0]["due_ms"] == at(1 + DAY)
