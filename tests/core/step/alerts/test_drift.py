"""Alerts of a whole make: merged, most urgent first, silenced but never lost."""

from tests.core.builders import Phone, a_day, at
from tests.core.log.test_run import struck
from tests.core.step.parts.test_step_parts import wanted
from tests.core.step.test_steps import one_step


def seen(phone, at_min, alert, **rest):
    return phone.event("alert_acknowledged", at_min, alert=alert, **rest)


def told(ask, events, at_min):
    return ask.view(events, at_min)["alerts"]


def test_a_make_that_goes_by_its_recipe_gives_no_alert(ask):
    day = a_day(Phone())
    for place, event in enumerate(day):
        now_min = (event["at_ms"] - at(0)) / 60000
        assert told(ask, day[: place + 1], now_min) == []


def test_a_hold_asks_to_check_until_it_is_lifted(ask):
    phone = Phone()
    hold = phone.event("hold_placed", 5, why="Odd smell.")
    events = [phone.opened(), hold]
    (alert,) = told(ask, events, 6)
    assert (alert["id"], alert["value"]) == ("hold/" + hold["id"], "Odd smell.")
    assert ask.view(events, 6)["make"]["state"] == "held"
    lifted = phone.event("hold_lifted", 7, ref=hold["id"], why="It was the drain.")
    assert told(ask, [*events, lifted], 8) == []
    assert ask.view([*events, lifted], 8)["make"]["state"] == "running"


def test_silencing_never_hides_what_lasts(ask):
    events = one_step(Phone(), readings=[wanted("begin")])
    (alert,) = told(ask, events, 11)
    events.append(seen(Phone(1, person="bo"), 12, alert["id"]))
    (alert,) = told(ask, events, 13)
    assert alert["acknowledged"] == {"by": "bo", "at_ms": at(12)}


def test_a_silenced_gap_of_an_ended_step_goes(ask):
    phone = Phone()
    events = one_step(phone, readings=[wanted("begin")])
    events.append(phone.event("step_ended", 5, step="work", why="Meter broke."))
    (alert,) = told(ask, events, 6)
    assert told(ask, [*events, seen(phone, 7, alert["id"])], 8) == []


def test_a_word_of_before_does_not_silence_what_falls_due_later(ask):
    # Seen: one tap silenced a quantity for the rest of its step.
    phone = Phone()
    events = one_step(phone, readings=[wanted("during", 600)])
    (alert,) = told(ask, events, 16)
    events.append(seen(phone, 16, alert["id"]))
    assert told(ask, events, 17)[0]["acknowledged"] is not None
    events.append(phone.reading("ph", 6.5, 17, "work"))
    # Due again at 27.
    (again,) = told(ask, events, 33)
    assert (again["id"], again["acknowledged"]) == (alert["id"], None)


def test_a_struck_acknowledgement_does_not_silence(ask):
    phone = Phone()
    events = one_step(phone, readings=[wanted("begin")])
    word = seen(phone, 12, "overdue/work")
    undo = struck(phone, word["id"], 13)
    assert told(ask, [*events, word, undo], 14)[0]["acknowledged"] is None


def test_the_most_urgent_stands_first(ask):
    phone = Phone()
    events = [phone.opened()]
    events.append(phone.event("hold_placed", 4, why="Odd smell."))  # check, at 4
    events.append(phone.event("timer_started", 1, label="Tea", lasts_s=60))  # act, at 2
    events.append(
        phone.event("timer_started", 1, label="Salt", lasts_s=120)
    )  # act, at 3
    keys = [(row["key"][6:], row["value"]) for row in told(ask, events, 6)]
    assert keys == [
        ("timer_due", "Tea"),
        ("timer_due", "Salt"),
        ("hold", "Odd smell."),
    ]
    first = told(ask, events, 6)[0]["id"]
    events.append(seen(phone, 6, first))
    assert told(ask, events, 7)[-1]["id"] == first


def test_a_make_that_is_over_asks_for_no_more_work(ask):
    # Seen: a make that was given up went on ringing for its overdue readings.
    phone = Phone()
    events = one_step(phone, readings=[wanted("begin")])
    events.append(phone.event("timer_started", 1, label="Tea", lasts_s=60))
    assert ask.alerts(events, 30) == ["reading_overdue", "timer_due"]
    over = phone.event("make_abandoned", 30, why="Power cut.")
    assert ask.alerts([*events, over], 40) == []


def test_what_the_record_lacks_is_told_of_a_make_that_is_over_too(ask):
    phone = Phone()
    events = one_step(phone, readings=[wanted("begin")])
    events.append(phone.event("step_ended", 5, step="work", why="Meter broke."))
    events.append(phone.event("make_closed", 30))
    assert ask.alerts(events, 40) == ["reading_missing"]
