"""Alerts of a whole make: merged, most urgent first, silenced but never lost."""

from tests.core.builders import Phone, a_day, at, until
from tests.core.log.test_run import struck
from tests.core.step.test_step_parts import wanted
from tests.core.step.test_steps import one_step


def seen(phone, at_min, alert, **rest):
    return phone.event("alert_acknowledged", at_min, alert=alert, **rest)


def told(ask, events, at_min):
    return ask.view(events, at_min)["alerts"]


def moved(phone):
    """Return an opened make in which the step after receiving has begun."""
    return [
        phone.opened(),
        phone.event("step_begun", 1, step="receive"),
        phone.event("step_begun", 5, step="heat"),
    ]


def test_a_make_that_goes_by_its_recipe_gives_no_alert(ask):
    day = a_day(Phone())
    for place, event in enumerate(day):
        now_min = (event["at_ms"] - at(0)) / 60000
        assert told(ask, day[: place + 1], now_min) == []


def test_milk_moved_without_a_drug_test_asks_to_act_once(ask):
    phone = Phone()
    (alert,) = told(ask, moved(phone), 6)
    assert (alert["id"], alert["level"], alert["step"]) == (
        "drug_test_missing",
        "act",
        None,
    )
    assert (alert["form"], alert["since_ms"]) == ("record", at(5))
    # Seen: once receiving had ended, the same gap was told a second time.
    ended = phone.event("step_ended", 6, step="receive")
    volume = phone.reading("milk_volume_l", 500.0, 5, "receive")
    assert [row["id"] for row in told(ask, [*moved(Phone()), ended, volume], 7)] == [
        "drug_test_missing"
    ]


def test_before_the_milk_moves_a_missing_test_is_no_alert(ask):
    assert told(ask, moved(Phone())[:2], 6) == []


def test_a_negative_test_is_no_alert(ask):
    phone = Phone()
    test = phone.reading("drug_test", "negative", 3, "receive")
    assert told(ask, [*moved(phone), test], 6) == []


def test_a_recipe_that_asks_for_no_drug_test_gives_no_alert(ask):
    assert told(ask, one_step(Phone()), 6) == []


def test_a_positive_test_stays_for_as_long_as_it_is_true(ask):
    # Seen: once it was silenced and receiving had ended, it was gone.
    phone = Phone()
    events = until(a_day(phone), 2)
    test = phone.reading("drug_test", "positive", 3, "receive")
    events.append(test)
    (alert,) = told(ask, events, 4)
    assert (alert["key"], alert["level"]) == ("alert.drug_test_positive", "act")
    assert (alert["value"], alert["step"], alert["since_ms"]) == (
        "positive",
        "receive",
        at(3),
    )
    events.append(phone.event("step_ended", 4, step="receive"))
    events.append(seen(phone, 5, alert["id"]))
    (alert,) = told(ask, events, 6)
    assert alert["acknowledged"] == {"by": "ida", "at_ms": at(5)}
    assert told(ask, [*events, phone.reading("drug_test", "negative", 7)], 8) == []
    # Without it the record has a gap.
    strike = struck(phone, test["id"], 7)
    assert ask.alerts([*events, strike], 8) == ["reading_missing"]


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
    (alert,) = told(ask, events, 5)
    events.append(seen(Phone(1, person="bo"), 6, alert["id"]))
    (alert,) = told(ask, events, 7)
    assert alert["acknowledged"] == {"by": "bo", "at_ms": at(6)}


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
    (alert,) = told(ask, events, 12)
    events.append(seen(phone, 12, alert["id"]))
    assert told(ask, events, 13)[0]["acknowledged"] is not None
    events.append(phone.reading("ph", 6.5, 13, "work"))
    # Due again at 23.
    (again,) = told(ask, events, 25)
    assert (again["id"], again["acknowledged"]) == (alert["id"], None)


def test_a_struck_acknowledgement_does_not_silence(ask):
    phone = Phone()
    events = one_step(phone, readings=[wanted("begin")])
    word = seen(phone, 6, "overdue/work/ph")
    undo = struck(phone, word["id"], 7)
    assert told(ask, [*events, word, undo], 8)[0]["acknowledged"] is None


def test_the_most_urgent_stands_first(ask):
    phone = Phone()
    events = moved(phone)
    events.append(phone.event("hold_placed", 4, why="Odd smell."))  # check, at 4
    events.append(phone.event("timer_started", 1, label="Tea", lasts_s=60))  # act, at 2
    events.append(
        phone.event("timer_started", 1, label="Salt", lasts_s=120)
    )  # act, at 3
    # The missing drug test: act, at 5.
    keys = [(row["key"][6:], row["value"]) for row in told(ask, events, 6)]
    assert keys == [
        ("timer_due", "Tea"),
        ("timer_due", "Salt"),
        ("drug_test_missing", None),
        ("hold", "Odd smell."),
    ]
    events.append(seen(phone, 6, "drug_test_missing"))
    assert told(ask, events, 7)[-1]["key"] == "alert.drug_test_missing"


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
