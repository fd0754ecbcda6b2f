"""Deadlines: absolute instants from facts, the same at any now."""

from tests.core.builders import DEVICES, Phone, at


def started(phone, at_min, label="Turn", lasts_s=600, **rest):
    return phone.event("timer_started", at_min, label=label, lasts_s=lasts_s, **rest)


def timers(ask, events):
    return ask.one(events, "make.timers", "timers")


def test_a_timer_is_due_when_its_time_has_passed(ask):
    event = started(Phone(), 5, step="heat")
    assert timers(ask, [event]) == [
        {
            "id": event["id"],
            "label": "Turn",
            "step": "heat",
            "start_ms": at(5),
            "due_ms": at(15),  # 5 min + 600 s
            "by": "ida",
            "stopped_ms": None,
        }
    ]


def test_timers_stand_in_the_order_they_fall_due(ask):
    phone = Phone()
    events = [
        started(phone, 0, "a", 1800),
        started(phone, 5, "b", 60),
        started(phone, 9, "c", 0 + 600.5),
    ]
    found = timers(ask, events)
    assert [row["label"] for row in found] == ["b", "c", "a"]
    assert found[1]["due_ms"] == at(9) + 600_500


def test_the_first_stop_counts_and_stops_only_its_timer(ask):
    phone, other = Phone(), Phone(1)
    one, two = started(phone, 0), started(phone, 1)
    stops = [
        phone.event("timer_stopped", 8, ref=one["id"]),
        other.event("timer_stopped", 7, ref=one["id"]),
    ]
    for arrival in ([one, two, *stops], [*stops[::-1], two, one]):
        found = {row["id"]: row["stopped_ms"] for row in timers(ask, arrival)}
        assert found == {one["id"]: at(7), two["id"]: None}


def test_a_struck_stop_lets_the_timer_run_on(ask):
    phone = Phone()
    one = started(phone, 0)
    stop = phone.event("timer_stopped", 7, ref=one["id"])
    undo = phone.event("entry_struck", 7.5, ref=stop["id"], why="Wrong timer.")
    assert timers(ask, [one, stop, undo])[0]["stopped_ms"] is None


def test_a_due_timer_asks_until_it_is_stopped(ask):
    phone = Phone()
    events = [phone.opened(), started(phone, 5)]
    # Due at 15 min: not a millisecond sooner.
    assert "timer_due" not in ask.alerts(events, 15 - 1 / 60000)
    (alert,) = ask.view(events, 17)["alerts"]
    assert alert["key"] == "alert.timer_due"
    assert (alert["level"], alert["value"]) == ("act", "Turn")
    assert (alert["since_ms"], alert["by_s"]) == (at(15), 120.0)
    stop = phone.event("timer_stopped", 18, ref=events[1]["id"])
    assert ask.alerts([*events, stop], 19) == []


def test_a_silenced_timer_of_an_unknown_step_is_still_shown(ask):
    # Seen: silencing it broke the whole view, as the recipe has no such step.
    phone = Phone()
    timer = started(phone, 5, step="tea")
    seen = phone.event("alert_acknowledged", 16, alert="timer/" + timer["id"])
    (alert,) = ask.view([phone.opened(), timer, seen], 17)["alerts"]
    assert alert["acknowledged"] == {"by": "ida", "at_ms": at(16)}
    assert alert["step"] == "tea"


def test_two_phones_see_the_same_timer_whatever_their_clocks(ask):
    right = started(Phone(), 5)
    wrong = started(Phone(clock_off_ms=3_600_000), 5)
    assert timers(ask, [right]) == timers(ask, [wrong])
    assert right["device"] == DEVICES[0]
