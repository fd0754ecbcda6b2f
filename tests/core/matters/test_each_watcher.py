"""Each watcher in turn: its matter stops what it must, for whoever taps, offline too.

Each tap is answered by the core alone, as on a phone without a network.
"""

import pytest

from tests.core.builders import MAKE, at
from tests.core.matters.gated import HELPER, MAKER, OWNER, Make
from tests.core.matters.test_acid import started
from tests.core.matters.test_hold import refused_by
from tests.core.matters.test_instruments import at_the_chart
from tests.core.matters.test_instruments import read as read_both
from tests.core.matters.test_store import DAY, MOULDED, lab, samples, stored

H = 60


def milk(result=None):
    make = Make("drug")
    make.add("step_begun", 1, step="receive")
    make.read("milk_volume_l", 500.0, 2, "receive")
    if result is not None:
        make.read("drug_test", result, 3, "receive")
    make.add("step_ended", 4, step="receive")
    return make


def cold_air():
    make = Make("heat_hold").received()
    make.add("step_begun", 60, step="hold")
    for minute in range(60, 93, 2):
        # 145 °F asks for air at 150 °F, 5 °F above: 3 CCR 584(b).
        make.hot(minute, air_f=149.0)
    make.add("step_ended", 92, step="hold")
    return make


def instrument(gate, other, typed):
    make = at_the_chart(gate)
    read_both(make, 146.0, typed, other)
    return make


# What happened; the word that is told; when; and what it stops.
TROUBLES = {
    "dip": (
        lambda: Make("heat_hold").received().held(dip_at=29),
        ("hold_not_met", 93),
        ("begin/fans", "close", "release"),
    ),
    "gaps": (
        lambda: Make("heat_hold").received().held(every=16),
        ("hold_not_assessed", 93),
        ("begin/fans", "close", "release"),
    ),
    "cold_air": (
        cold_air,
        ("hold_not_met", 93),
        ("begin/fans", "close", "release"),
    ),
    "drug_positive": (
        lambda: milk("positive"),
        ("drug_test_positive", 5),
        ("begin/heat", "close", "release"),
    ),
    "drug_missing": (
        milk,
        ("drug_test_missing", 5),
        ("begin/heat", "close", "release"),
    ),
    "recorder": (
        lambda: instrument("chart", "recorder_temp_c", 147.0),
        ("recorder_above", 94),
        ("end/fans", "close", "release"),
    ),
    "thermometer": (
        lambda: instrument("thermometer", "check_temp_c", 146.6),
        ("thermometer_out", 94),
        ("end/fans", "close", "release"),
    ),
    "slow_acid": (
        lambda: started((6, 5.9)),
        ("acid_too_slow", 8 * H),
        ("begin/salt", "close", "release"),
    ),
    "no_acid": (
        started,
        ("acid_missed", 8 * H),
        ("begin/salt", "close", "release"),
    ),
    "days": (
        lambda: stored(until_day=30),
        ("curing_days_left", MOULDED + 30 * DAY + 60),
        ("end/store", "close", "release"),
    ),
    "lab_failed": (
        lambda: lab(*samples(110000)),
        ("lab_failed", MOULDED + 31 * DAY),
        ("close", "release"),
    ),
    # Results come late: a make may be closed, and nothing leaves before them.
    "lab_awaited": (lab, ("lab_awaited", MOULDED + 95 * DAY), ("release",)),
}


def tapped(ask, make, minute, what, roles):
    kinds = {"begin": "step_begun", "end": "step_ended", "close": "make_closed"}
    word, _, step = what.partition("/")
    data = {"step": step, "why": "In a hurry"} if step else {}
    return make.tap(ask, kinds[word], minute, roles, **data)


@pytest.mark.parametrize("trouble", TROUBLES)
def test_each_matter_stops_what_it_must_for_everybody(ask, core, trouble):
    build, (word, minute), stops = TROUBLES[trouble]
    make = build()
    (matter,) = make.matters(ask, minute).values()
    assert matter["key"] == word
    assert matter["rule"]
    told = {one["what"] + "/" + (one["step"] or "") for one in matter["stops"]}
    assert told == {stop if "/" in stop else stop + "/" for stop in stops}
    for what in stops:
        if what == "release":
            recipe = make.events[0]["data"]["recipe"]
            by = core("matters.stopped", "stopped", [matter], what, None, recipe)
            assert [one["key"] for one in by] == [word]
            continue
        for roles in (HELPER, MAKER, OWNER, ["maker", "helper"]):
            if what == "close" and "helper" in roles:
                (problem,) = tapped(ask, make, minute, what, roles)[:1]
                assert problem["key"] == "not_allowed"
            else:
                problems = tapped(ask, make, minute, what, roles)
                assert refused_by(problems)[0] == "matter." + word


@pytest.mark.parametrize("trouble", TROUBLES)
def test_a_helper_decides_no_matter_in_any_way(ask, trouble):
    build, (_, minute), _ = TROUBLES[trouble]
    make = build()
    (matter,) = make.matters(ask, minute).values()
    assert matter["ways"]
    for way in matter["ways"]:
        event = way["event"] or {"kind": "matter_decided", "data": {}}
        data = {"why": "It looks good.", **event["data"]}
        if way["event"] is None:
            data.update(matter=matter["id"], way=way["way"])
        for roles in (HELPER, ["maker", "helper"]):
            problems = make.tap(ask, event["kind"], minute, roles, **data)
            assert problems[0]["key"] == "not_allowed"


@pytest.mark.parametrize("trouble", TROUBLES)
def test_each_matter_is_told_on_now_and_make_alike(ask, trouble):
    build, (word, minute), _ = TROUBLES[trouble]
    make = build()
    view, board = ask.desk(
        *make.calls(), ("view", MAKE, at(minute)), ("board", at(minute))
    )[2:]
    assert board["makes"][0]["matters"] == view["matters"]
    assert [one["key"] for one in view["matters"] if one["level"] != "wait"] == [word]
