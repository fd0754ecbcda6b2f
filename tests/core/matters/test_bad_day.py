"""A bad day, driven as a technologist would: each matter told once, and it stops.

The tool's answers stood beside the make: a dip at minute 29 raised nothing, milk
that tested positive was pumped, a make of raw milk was closed on day 30.
"""

from tests.core.builders import MAKE, at
from tests.core.matters.gated import HELPER, Make
from tests.core.matters.test_hold import passed, refused_by
from tests.core.matters.test_store import DAY, MAKER, MOULDED, stored


def places(ask, make, minute):
    """Return the words that stand in each place: the View, the board, what rings."""
    shown, board, rung = ask.desk(
        *make.calls(),
        ("view", MAKE, at(minute)),
        ("board", at(minute)),
        ("alarms", at(minute), 600.0),
    )[2:]
    (summary,) = board["makes"]
    assert summary["matters"] == shown["matters"]
    assert summary["alerts"] == shown["alerts"]
    told = [one["key"] for one in shown["matters"] if one["level"] != "wait"]
    return (
        told,
        [one["key"] for one in shown["alerts"]],
        [one["key"] for one in rung["alarms"]],
        shown,
    )


def test_a_dip_at_minute_29_is_told_once_and_stops_the_draining(ask):
    make = Make().received().held(dip_at=29, last=92)
    # Seen: nothing was told, then or later.
    matters, _, rings, shown = places(ask, make, 93)
    assert matters == ["hold_not_met"]
    assert [one for one in shown["alerts"] if one["step"] == "hold"] == []
    assert [key for key in rings if key.startswith("matter.")] == [
        "matter.hold_not_met"
    ]
    fans = next(one for one in shown["steps"] if one["key"] == "fans")
    assert (fans["status"], fans["stopped_by"]) == ("ready", ["heat_hold"])
    assert fans["button"] == {"act": "stopped", "arg": "heat_hold"}
    assert refused_by(make.tap(ask, "step_begun", 93, HELPER, step="fans"))[0]


def test_a_stopped_step_is_not_told_as_ready_to_begin(ask):
    make = Make().received().held(dip_at=29)
    due = ask.desk(*make.calls(), ("board", at(93)))[2]["due"]
    assert [one["what"] for one in due if one["step"] == "fans"] == []


def test_a_positive_test_is_told_once_and_stops_the_pump(ask):
    make = Make()
    make.add("step_begun", 1, step="receive")
    make.read("milk_volume_l", 500.0, 2, "receive")
    make.read("drug_test", "positive", 3, "receive")
    make.add("step_ended", 4, step="receive")
    matters, alerts, rings, shown = places(ask, make, 5)
    assert matters == ["drug_test_positive"]
    assert alerts == []
    assert rings == ["matter.drug_test_positive"]
    # Seen: "Begin" was the large button.
    heat = next(one for one in shown["steps"] if one["key"] == "heat")
    assert heat["button"]["act"] == "stopped"
    for kind, data in (
        ("step_begun", {"step": "heat"}),
        ("step_begun", {"step": "cut", "why": "Now"}),
        ("step_ended", {"step": "heat", "why": "Now"}),
        ("make_closed", {}),
    ):
        assert refused_by(make.tap(ask, kind, 5, MAKER, **data))[0]


def test_a_make_of_raw_milk_is_not_closed_on_day_30_nor_59(ask):
    for days in (30, 59):
        make = stored(until_day=days)
        minute = MOULDED + days * DAY + 60
        matters, alerts, rings, _ = places(ask, make, minute)
        assert matters == ["curing_days_left"]
        # Days to wait are nothing to ring about, nor is the step late for them.
        # What rings is what this small make left out: a reading, and a step before.
        left_out = ("alert.reading_overdue", "alert.begin_late")
        assert [key for key in rings if key not in left_out] == []
        assert "alert.step_late" not in alerts
        assert refused_by(make.tap(ask, "make_closed", minute, MAKER))[0]
    assert passed(
        stored(until_day=61).tap(ask, "make_closed", MOULDED + 61 * DAY, MAKER)
    )


def test_a_matter_of_a_make_that_is_over_stays_in_its_view(ask):
    make = Make().received().held(dip_at=29)
    make.add("make_abandoned", 100, why="Hold not met.")
    matters, _, rings, _ = places(ask, make, 2000)
    assert matters == ["hold_not_met"]
    assert rings == []
