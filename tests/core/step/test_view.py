"""What every screen shows of one make."""

import pytest

from tests.core.builders import MAKE, Phone, a_day, at, figure, step, until
from tests.core.step.test_focus import side_by_side
from tests.core.step.test_steps import one_step, with_steps


def test_without_its_opening_a_make_is_not_shown(ask):
    phone = Phone()
    phone.opened()
    reading = phone.reading("ph", 6.5, 1)
    assert ask.desk(
        ("view", MAKE, at(0)),
        ("take", [reading]),
        ("view", MAKE, at(0)),
        ("step", MAKE, "heat", at(0)),
        ("board", at(0)),
    )[2:] == [
        None,
        None,
        {
            "now_ms": at(0),
            "next_change_ms": None,
            "makes": [],
            "ripening": [],
            "due": [],
            "clashes": [],
            "clash_count": 0,
            "broken": [],
            "unread": {"newer": 0, "unsound": 0},
        },
    ]


def test_the_make_says_what_it_is(ask):
    phone = Phone()
    events = [phone.opened(vat="Vat 1"), phone.reading("milk_volume_l", 480.0, 2)]
    found = ask.view(events, 3)["make"]
    kg = found.pop("milk_kg")
    # Cold milk of 4.00 % fat, 8.95 % solids-not-fat: 1.035 kg/L (D. Goff's table).
    assert kg == pytest.approx(480 * 1.035, rel=1.5e-3)
    assert found == {
        "id": MAKE,
        "name": "Make",
        "batch": "A1",
        "practice": False,
        "recipe_id": "small-wheel",
        "recipe_version": 1,
        "recipe_title": {"en": "Small wheel"},
        "milk_l": 500.0,
        "milk_measured_l": 480.0,
        "milk_from": "volume",
        "vat": "Vat 1",
        "opened_ms": at(0),
        "opened_by": "ida",
        "state": "running",
        "is_open": True,
        "holds": [],
        "moulds": [
            {
                "size": "small",
                "title": {"en": "Small"},
                "planned": 30,
                "suggested": 28,  # 30 × 470 / 500
                "moulded": 0,
            }
        ],
        "sizes": ["small"],
        "store_step": None,
        "before_store": None,
        # No step of this recipe holds the milk by a rule.
        "milk": {
            "is": {
                "class": "undecided",
                "why": "no_hold",
                "since_ms": at(0),
                "treatment": "pasteurised",
                "step": None,
            },
            "treatment": {
                "treatment": "pasteurised",
                "usual": "pasteurised",
                "said": {
                    "id": events[0]["id"],
                    "at_ms": at(0),
                    "by": "ida",
                    "why": None,
                },
                "was_changed": False,
                "others": [],
            },
            "follows": None,
        },
    }


def test_of_two_openings_the_earlier_counts(ask):
    first, second = Phone().opened(), Phone(1).opened(name="Other")
    second["at_ms"] += 1
    for arrival in ([first, second], [second, first]):
        assert ask.view(arrival, 1)["make"]["name"] == "Make"


@pytest.mark.parametrize(
    ("kinds", "state", "is_open"),
    [
        ([], "running", True),
        (["hold_placed"], "held", True),
        (["hold_placed", "make_closed"], "closed", False),
        (["make_closed", "make_abandoned"], "abandoned", False),
    ],
)
def test_the_make_says_how_it_stands_and_whether_it_is_open(ask, kinds, state, is_open):
    phone = Phone()
    events = [phone.opened()]
    events += [phone.event(kind, 5, why="So it is.") for kind in kinds]
    told = ask.view(events, 6)["make"]
    assert (told["state"], told["is_open"]) == (state, is_open)


def test_a_day_is_late_or_early_by_more_than_a_minute_alone(ask):
    opened = [Phone().opened()]
    assert ask.view(opened, 0)["day"]["state"] == "on_time"
    assert ask.view(opened, 1)["day"]["state"] == "on_time"
    assert ask.view(opened, 1.1)["day"]["state"] == "late"
    phone = Phone()
    taken = [phone.opened(), phone.event("step_begun", 0, step="receive")]
    early = [
        phone.event("step_ended", 1, step="receive"),
        phone.event("step_begun", 1, step="heat"),
        phone.event("step_ended", 10, step="heat"),
        phone.event("step_begun", 10, step="hold"),
    ]
    assert ask.view(taken + early, 10)["day"]["state"] == "early"


def test_the_day_and_the_whole_say_how_late_they_are(ask):
    found = ask.view([Phone().opened()], 30)
    # receive 0, heat 60, hold 30, fans, rennet 0, set 30, cut 9, fill 0: 129 min.
    assert found["day"] == {
        "planned_end_ms": at(129),
        "expected_end_ms": at(159),
        "late_s": 1800.0,
        "state": "late",
    }
    assert found["whole"]["planned_end_ms"] == at(129 + 28 * 24 * 60)


def test_the_whole_make_is_over_when_its_last_step_is(ask):
    # Seen: with two last steps side by side, the one that stands last in the
    # recipe counted, though the other ends later.
    found = ask.view(side_by_side(Phone())[:1], 0)
    assert found["whole"]["planned_end_ms"] == at(60)
    steps = [step("long", lasts=figure(3600, "s")), step("short")]
    opened = Phone().opened(recipe=with_steps(*steps))
    assert ask.view([opened], 0)["whole"]["planned_end_ms"] == at(60)


def test_a_correction_of_a_finished_step_moves_the_plan(ask):
    phone = Phone()
    events = until(a_day(phone), 61)
    hold = next(
        row
        for row in events
        if row["kind"] == "step_begun" and row["data"]["step"] == "hold"
    )
    before = ask.view(events, 62)
    assert before["day"]["expected_end_ms"] == at(91 + 39)
    mend = phone.event(
        "entry_corrected", 62, ref=hold["id"], set={"at_ms": at(66)}, why="Waited."
    )
    after = ask.view([*events, mend], 67)
    # Begun at 66, due at 96; then 30 of setting and 9 of cutting.
    assert after["day"]["expected_end_ms"] == at(96 + 39)
    heat = next(
        row
        for row in events
        if row["kind"] == "step_ended" and row["data"]["step"] == "heat"
    )
    mend = phone.event(
        "entry_corrected", 62, ref=heat["id"], set={"at_ms": at(64)}, why="Misread."
    )
    (step_heat,) = [
        row for row in ask.view([*events, mend], 67)["steps"] if row["key"] == "heat"
    ]
    assert step_heat["ended"]["at_ms"] == step_heat["expected_end_ms"] == at(64)


def test_a_step_ended_by_two_phones_is_asked_about(ask):
    phone, other = Phone(), Phone(1, person="bo")
    events = until(a_day(phone), 60)
    first = phone.event("step_ended", 61, step="heat")
    later = other.event("step_ended", 61.5, step="heat")
    for arrival in ([*events, first, later], [later, first, *events]):
        found = ask.view(arrival, 62)
        (asked,) = found["to_judge"]
        assert (asked["step"], asked["kind"]) == ("heat", "step_ended")
        assert (asked["first"]["id"], asked["later"]["id"]) == (
            first["id"],
            later["id"],
        )
        (heat,) = [row for row in found["steps"] if row["key"] == "heat"]
        assert heat["ended"]["at_ms"] == at(61)


def test_a_step_may_be_begun_out_of_order_with_a_why(ask):
    phone = Phone()
    events = until(a_day(phone), 4)
    events.append(phone.event("step_begun", 5, step="fans", why="Cleaning early."))
    found = {row["key"]: row for row in ask.view(events, 6)["steps"]}
    assert (found["fans"]["status"], found["heat"]["status"]) == ("running", "ready")
    assert found["fans"]["waits_on"] == ["hold"]
    (line,) = [row for row in ask.view(events, 6)["log"] if row["step"] == "fans"]
    assert line["data"]["why"] == "Cleaning early."


def test_the_log_shows_the_newest_lines_first(ask):
    day = a_day(Phone())
    found = [line["id"] for line in ask.view(day, 170)["log"]]
    assert 1 < len(found) < len(day)  # the record itself has them all
    assert found == [event["id"] for event in day[::-1]][: len(found)]


def test_one_step_can_be_asked_for_whatever_its_status(ask):
    day = a_day(Phone())
    found = ask.step(day, "receive", 170)
    assert (found["status"], found["full"]) == ("ended", True)
    assert ask.step(day, "brew", 170) is None
    assert ask.desk(("step", MAKE, "heat", at(0))) == [None]


def test_what_counts_down_stands_in_the_order_it_comes(ask):
    phone = Phone()
    lasts = figure(1800, "s", 1500, 2100)
    events = one_step(phone, lasts=lasts, end={"by": "time"})
    timers = [
        phone.event("timer_started", 1, label=label, lasts_s=lasts_s)
        for label, lasts_s in (("Late", 3600), ("Soon", 600), ("Off", 60))
    ]
    stop = phone.event("timer_stopped", 2, ref=timers[2]["id"])
    view = ask.view([*events, *timers, stop], 20)
    told = [(row["step"], row["label"], row["due_ms"]) for row in view["countdowns"]]
    # One that is over goes on counting until somebody answers it.
    assert told == [
        (None, "Soon", at(11)),
        ("work", None, at(30)),
        (None, "Late", at(61)),
    ]


def test_a_step_may_be_worked_on_once_it_is_ready_and_until_it_is_over(ask):
    phone = Phone()
    events = a_day(phone)
    view = ask.view(until(events, 30), 30)
    told = {row["key"]: (row["status"], row["is_open"]) for row in view["steps"]}
    assert set(told.values()) == {
        ("ended", False),
        ("running", True),
        ("waiting", False),
    }
    assert ask.view(events[:1], 1)["steps"][0]["status"] == "ready"
    assert ask.view(events[:1], 1)["steps"][0]["is_open"]
