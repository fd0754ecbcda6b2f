"""One cause is told once: what goes under the first alert's name, and what does not."""

from tests.core.builders import MAKE, Phone, at, figure, step
from tests.core.matters.gated import Make
from tests.core.step.alerts.test_acid_drift import make
from tests.core.step.test_steps import with_steps

MILK, AIR = "milk_temp_c", "air_space_temp_c"


def wants(*rows):
    return [
        {"quantity": name, "figure": figure(low + 1.0, "C", low, high)}
        for name, low, high in rows
    ]


def two(*readings, second_place="vat", second=(30.0, 40.0)):
    """Return alerts of two steps that want milk of 60 to 70 °C, then of another."""
    phone = Phone()
    body = with_steps(
        step("one", place="vat", targets=wants((MILK, 60.0, 70.0), (AIR, 60.0, 80.0))),
        step("two", ["one"], place=second_place, targets=wants((MILK, *second))),
    )
    events = [phone.opened(recipe=body), phone.event("step_begun", 0, step="one")]
    for minute, key, quantity, value in readings:
        if key == "two":
            events.append(phone.event("step_ended", minute - 1, step="one"))
            events.append(phone.event("step_begun", minute - 1, step="two"))
        events.append(phone.reading(quantity, value, minute, key))
    return events


def told(ask, events):
    found = ask.view(events, 30)["alerts"]
    return [(row["step"], row["quantity"], row["since_ms"] - at(0)) for row in found]


def test_two_temperatures_off_on_one_side_of_a_step_are_one_matter(ask):
    both = two((1, "one", MILK, 59.0), (2, "one", AIR, 58.0))
    assert len(told(ask, both)) == 1
    apart = two((1, "one", MILK, 71.0), (2, "one", AIR, 58.0))
    assert len(told(ask, apart)) == 2


def test_what_the_step_before_left_off_here_too_is_one_matter(ask):
    # 75 °C is above either band; 71 is not above a band that reaches to 72.
    carried = two((1, "one", MILK, 75.0), (9, "two", MILK, 74.0), second=(60.0, 72.0))
    assert told(ask, carried) == [("two", MILK, 60_000)]
    other = two((1, "one", MILK, 71.0), (9, "two", MILK, 74.0), second=(60.0, 72.0))
    assert len(told(ask, other)) == 2


def test_steps_of_one_work_are_one_matter_whatever_their_bands(ask):
    phone = Phone()
    presses = [
        step(key, after, place="press", end={"by": "time"}, lasts=figure(600, "s"))
        for key, after in (("one", []), ("two", ["one"]))
    ]
    for row, low in zip(presses, (20.0, 50.0), strict=True):
        wanted = figure(low + 5.0, "kPa", low, low + 10.0)
        row["targets"] = [{"quantity": "press_gauge_kpa", "figure": wanted}]
    events = [phone.opened(recipe=with_steps(*presses))]
    for minute, key, value in ((0, "one", 12.0), (9, "two", 30.0)):
        events.append(phone.event("step_begun", minute, step=key))
        events.append(phone.reading("press_gauge_kpa", value, minute + 1, key))
        events.append(phone.event("step_ended", minute + 8, step=key))
    (alert,) = ask.view(events, 30)["alerts"]
    assert alert["since_ms"] == at(1)
    word = phone.event("alert_acknowledged", 3, alert=alert["id"])
    assert ask.view([*events, word], 30)["alerts"] == []


def test_an_acid_that_is_slow_and_then_stalls_is_one_matter(ask):
    # At 4 h the band ends at 6.26; after an hour more without a fall it has stalled.
    slow = make((0, 6.60), (180, 6.35), (240, 6.28))
    stalled = make((0, 6.60), (180, 6.35), (240, 6.28), (300, 6.28))
    (first,) = ask.view(slow, 241)["alerts"]
    rows = ask.view(stalled, 301)["alerts"]
    assert [row["key"] for row in (first, *rows)] == [
        "alert.acid_slow",
        "alert.acid_stalled",
    ]
    assert rows[0]["since_ms"] == first["since_ms"]


def test_the_verdict_on_a_hold_goes_on_under_the_reading_that_told_of_it(ask):
    day = Make().received()
    day.add("step_begun", 60, step="hold")
    for minute in range(60, 93, 2):
        day.hot(minute, milk_f=145.0 if minute < 90 else 144.0)
    (during,) = rung(ask, day, 92)
    day.add("step_ended", 93, step="hold")
    (after,) = rung(ask, day, 94)
    assert (during["kind"], after["kind"]) == ("alert", "matter")
    assert after["id"] == during["id"]
    assert after["rings_ms"] == at(93)
    day.add("alert_acknowledged", 95, alert=after["matter"])
    (matter,) = day.matters(ask, 96).values()
    assert matter["acknowledged"]["at_ms"] == at(95)
    assert rung(ask, day, 96)[0]["state"] == "acknowledged"


def rung(ask, day, minute):
    call = ("alarms", at(minute), 600)
    found = ask.desk(*day.calls(), call)[2]["alarms"]
    return [
        row
        for row in found
        if row["make"] == MAKE and row["kind"] in ("alert", "matter")
    ]
