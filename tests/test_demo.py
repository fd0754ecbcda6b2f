import random

import pytest

from demo import replay, seed, twin_day
from demo.recorded import new_id
from server import store
from server.app import create_app
from server.config import Settings, read_rules
from server.core import desk
from server.core.log.kinds.event import check_event
from server.core.sums.equipment import check_equipment
from tests.conftest import CREAMERY_MS as NOW_MS


@pytest.fixture(scope="module")
def board(demo_creamery):
    mine = desk.new()
    for make in demo_creamery[1]:
        assert desk.take(mine, make.events)["problems"] == []
    return desk.board(mine, NOW_MS)


def events(demo_creamery):
    return [
        event for make in demo_creamery[1] for event in make.events
    ] + demo_creamery[2]


def test_every_entry_is_sound_and_none_lies_in_the_future(demo_creamery):
    for event in events(demo_creamery):
        assert check_event(event) == []
        assert event["at_ms"] + event["off_ms"] <= NOW_MS


def test_each_phone_counts_without_gap_or_repeat(demo_creamery):
    counted = {}
    for event in events(demo_creamery):
        counted.setdefault(event["device"], []).append(event["seq"])
    assert len(counted) == 3
    for numbers in counted.values():
        assert sorted(numbers) == list(range(1, len(numbers) + 1))


def test_ids_are_all_different_and_of_version_seven(demo_creamery):
    ids = [event["id"] for event in events(demo_creamery)]
    assert len(set(ids)) == len(ids)
    assert {id_[14] for id_ in ids} == {"7"}
    assert {id_[19] for id_ in ids} <= set("89ab")


def test_one_make_runs_one_lies_in_brine_and_one_is_closed(board):
    rows = {row["name"]: row for row in board["makes"]}
    running, brined, closed = (
        rows[name] for name in ("Evening make", "Frost make", "Harvest make")
    )
    assert (running["state"], running["focus"]["key"]) == ("running", "wash_1")
    assert running["focus"]["status"] == "running"
    assert (brined["state"], brined["focus"]["place"]) == ("running", "brine")
    assert closed["state"] == "closed"


def test_a_step_begun_on_two_phones_waits_to_be_judged(demo_creamery):
    mine = desk.new()
    make = demo_creamery[1][-1]
    desk.take(mine, make.events)
    view = desk.view(mine, make.make, NOW_MS)
    assert [(row["step"], row["kind"]) for row in view["to_judge"]] == [
        ("drain_1", "step_begun")
    ]


def test_the_record_shows_a_correction_beside_what_was_typed(demo_creamery):
    mine = desk.new()
    make = demo_creamery[1][0]
    desk.take(mine, make.events)
    lines = [row for row in desk.record(mine, make.make) if row["corrections"]]
    assert len(lines) == 1
    assert lines[0]["original"]["data"]["value"] != lines[0]["data"]["value"]


@pytest.fixture(scope="module")
def judged(demo_creamery):
    """Return a desk that holds the makes, and the rules that judge them."""
    mine = desk.new()
    desk.set_rules(mine, read_rules())
    for make in demo_creamery[1]:
        desk.take(mine, make.events)
    assert desk.take(mine, demo_creamery[2])["problems"] == []
    return mine


def test_every_hold_of_the_creamery_is_assessed(demo_creamery, judged):
    assert check_equipment(seed.EQUIPMENT) == []
    agreed_with = seed.EQUIPMENT["gap_agreed_with"]
    told = {
        plan.treatment: desk.step(judged, make.make, "hold", NOW_MS)["verdict"]
        for plan, make in zip(seed.PLANS, demo_creamery[1], strict=True)
    }
    by_rule, own = told["pasteurised"], told["heat_treated"]
    assert (by_rule["class"], own["class"]) == (
        "reads_as_pasteurised",
        "meets_own_figures",
    )
    # What was agreed is about the law's rule, not about the maker's own figures.
    assert by_rule["gap"]["agreed_with"] == agreed_with
    assert own["gap"]["agreed_with"] is None


def test_the_creamery_shows_what_its_milk_is_and_what_follows(demo_creamery, judged):
    milk = [
        desk.view(judged, make.make, NOW_MS)["make"]["milk"]
        for make in demo_creamery[1]
    ]
    told = [(row["is"]["class"], row["follows"]["curing_days"]) for row in milk]
    assert told == [
        ("pasteurised", None),
        ("heat_treated", 60),
        ("heat_treated", 60),
    ]


def test_no_sum_of_a_step_asks_for_what_the_creamery_has(demo_creamery, judged):
    asked = []
    for make in demo_creamery[1]:
        for step in make.recipe["steps"]:
            for told in desk.step_sums(judged, make.make, step["key"], NOW_MS):
                asked += told["missing"]
    assert asked  # what only the day can tell is asked for
    assert set(asked) & set(seed.EQUIPMENT) == set()


def test_each_weighing_says_of_which_size_the_wheel_was(demo_creamery, judged):
    weighed = [
        event["data"]
        for event in events(demo_creamery)
        if event["data"].get("quantity") == "wheel_mass_kg"
    ]
    assert {row["place"] for row in weighed} == {"small", "large"}
    stored = demo_creamery[1][0]
    lost = [
        told
        for told in desk.step_sums(judged, stored.make, "store", NOW_MS)
        if told["key"] == "weight_loss"
    ]
    assert [told["of"] for told in lost] == ["small", "large"]
    assert all(told["values"] and not told["missing"] for told in lost)


def test_each_gauge_says_of_which_size_of_wheel_it_was_read(demo_creamery):
    gauges = {
        event["data"].get("place")
        for event in events(demo_creamery)
        if event["data"].get("quantity") == "press_gauge_kpa"
    }
    assert gauges == {"small", "large"}


def test_the_brine_tank_has_held_the_wheels_of_two_makes(demo_creamery, judged):
    (tank,) = desk.tanks(judged, NOW_MS)
    stored, brined, running = demo_creamery[1]
    held = [(row["make"], row["size"], row["out_ms"] is None) for row in tank["loads"]]
    assert (stored.make, "small", False) in held
    assert (stored.make, "large", False) in held
    assert (brined.make, "small", False) in held
    assert (brined.make, "large", True) in held
    assert running.make not in [make for make, _, _ in held]
    assert len(held) == 4


def test_the_wheels_of_the_tank_are_those_that_were_moulded(demo_creamery):
    for event in demo_creamery[2]:
        if event["kind"] != "tank_loaded":
            continue
        (make,) = (
            row for row in demo_creamery[1] if row.make == event["data"]["load_make"]
        )
        size = event["data"]["size"]
        filled = [
            row["data"]["count"]
            for row in make.events
            if row["kind"] == "wheels_moulded" and row["data"]["size"] == size
        ]
        assert event["data"]["wheels"] == sum(filled)


def test_salt_was_added_to_the_tank_once_and_brought_its_strength_back(demo_creamery):
    mine = desk.new()
    desk.set_rules(mine, read_rules())
    desk.take(mine, demo_creamery[1][0].events)
    kinds = [event["kind"] for event in demo_creamery[2]]
    assert kinds.count("salt_added") == 1
    place = kinds.index("salt_added")
    at_ms = demo_creamery[2][place]["at_ms"] + demo_creamery[2][place]["off_ms"]
    desk.take(mine, demo_creamery[2][:place])
    (before,) = desk.tanks(mine, at_ms)
    desk.take(mine, demo_creamery[2][: place + 1])
    (after,) = desk.tanks(mine, at_ms + 1)
    assert before["salt_frac"] < after["salt_frac"]
    # Weighed out to 0.1 kg.
    assert after["salt_frac"] == pytest.approx(after["wanted_frac"], abs=1e-4)


def test_seeding_twice_is_refused_and_adds_nothing(demo_creamery, tmp_path, capsys):
    app = create_app(Settings(data_dir=tmp_path))
    with app.app_context():
        seed.require_empty(tmp_path)
        seed.fill(*demo_creamery, NOW_MS)
        held = store.count_events()
    assert f"3 makes, {held} entries" in capsys.readouterr().out
    with pytest.raises(ValueError, match="already holds makes"):
        seed.seed(tmp_path)
    with app.app_context():
        assert store.count_events() == held > 0


def test_a_recording_sends_each_entry_when_it_falls_due():
    entries = [{"at_ms": at_ms, "off_ms": 100} for at_ms in (0, 900, 901, 2000)]
    ready, waiting = replay.due(entries, 1000)
    assert [row["at_ms"] for row in ready] == [0, 900]
    assert replay.due(waiting, 1000) == ([], waiting)


def test_the_replay_s_make_is_about_to_be_heated_and_every_entry_is_stored(tmp_path):
    by_person = seed.phones(random.Random(5))
    entries = twin_day.entries(replay.PLAN, by_person, seed.EQUIPMENT, NOW_MS)
    (heat,) = [
        row
        for row in entries
        if row["kind"] == "step_begun" and row["data"]["step"] == "heat"
    ]
    assert replay.corrected_ms(heat) == NOW_MS
    assert {row["person"] for row in entries} == set(by_person)
    app = create_app(Settings(data_dir=tmp_path))
    with app.app_context():
        seed.pair(by_person, NOW_MS)
        seed.send(entries, by_person)
        assert store.count_events() == len(entries)


def test_an_id_begins_with_its_instant():
    class Zero:
        def getrandbits(self, count):
            return 0

    # RFC 9562, section 5.7: 48 bits of Unix time in ms, then version and variant.
    assert new_id(Zero(), 0x017F22E279B0) == "017f22e2-79b0-7000-8000-000000000000"
