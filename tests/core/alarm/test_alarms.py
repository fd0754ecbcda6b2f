"""What rings, for whom it goes on, and when it is told to the owner."""

import pytest

from tests.core.builders import MAKE, Phone, a_day, at, figure, step, until
from tests.core.step.parts.test_step_parts import wanted
from tests.core.step.test_steps import one_step, with_steps

OTHER = "0193a5b0-0000-7000-8000-00000000000b"
LASTS = figure(1800, "s", 1500, 2100)  # begun at 0: due at 30 min, late past 35
ESCALATE_S = 600


def asked(ask, events, at_min):
    desk = ask.desk(("take", events), ("desk",))[1]
    return ask.call("alarm.alarms", "alarms", desk, at(at_min), ESCALATE_S)


def matters(ask, events, at_min):
    found = asked(ask, events, at_min)["alarms"]
    return [(row["matter"], row["priority"], row["state"]) for row in found]


def timed_step(phone):
    return one_step(phone, lasts=LASTS, end={"by": "time"})


def seen(phone, at_min, matter):
    return phone.event("alert_acknowledged", at_min, alert=matter)


def shelved(phone, at_min, matter, for_s=3600):
    return phone.event("alarm_shelved", at_min, alert=matter, for_s=for_s, why="Known")


def test_an_empty_desk_has_no_alarm(ask):
    assert asked(ask, [], 0) == {
        "now_ms": at(0),
        "next_change_ms": None,
        "alarms": [],
        "deadlines": [],
        "wall": [],
    }


def test_a_timer_rings_at_its_instant_and_not_a_millisecond_before(ask):
    phone = Phone()
    timer = phone.event("timer_started", 1, label="Press", lasts_s=300)
    events = [phone.opened(), timer]
    desk = ask.desk(("take", events), ("desk",))[1]
    before = ask.call("alarm.alarms", "alarms", desk, at(6) - 1, ESCALATE_S)
    assert before["alarms"] == []
    assert [row["due_ms"] for row in before["deadlines"]] == [at(6)]
    assert before["next_change_ms"] <= at(6)
    found = asked(ask, events, 6)
    (alarm,) = found["alarms"]
    assert alarm["id"] == f"{MAKE}/timer/{timer['id']}"
    assert before["deadlines"][0]["id"] == alarm["id"]
    assert (alarm["kind"], alarm["priority"], alarm["state"]) == (
        "timer",
        2,
        "unacknowledged",
    )
    assert (alarm["due_ms"], alarm["rings_ms"]) == (at(6), at(6))
    assert alarm["numbers"]["value"] == "Press"
    assert alarm["make_name"] == "Make"
    assert found["deadlines"] == []


def test_a_stopped_timer_never_rings(ask):
    phone = Phone()
    timer = phone.event("timer_started", 1, label="Press", lasts_s=300)
    stop = phone.event("timer_stopped", 3, ref=timer["id"])
    assert matters(ask, [phone.opened(), timer, stop], 10) == []


def test_the_end_of_a_step_and_its_lateness_are_one_alarm_that_grows(ask):
    events = timed_step(Phone())
    assert matters(ask, events, 29) == []
    assert matters(ask, events, 30) == [("step_end/work", 2, "unacknowledged")]
    assert matters(ask, events, 36) == [("step_end/work", 2, "unacknowledged")]
    (due,) = asked(ask, events, 30)["alarms"]
    (late,) = asked(ask, events, 36)["alarms"]
    assert (due["id"], due["kind"], late["kind"]) == (
        late["id"],
        "step_due",
        "step_late",
    )
    assert (late["due_ms"], late["rings_ms"]) == (at(30), at(35))


def test_a_word_for_the_due_step_does_not_silence_the_late_one(ask):
    phone = Phone()
    events = [*timed_step(phone), seen(phone, 31, "step_end/work")]
    assert matters(ask, events, 32) == [("step_end/work", 2, "acknowledged")]
    assert matters(ask, events, 36) == [("step_end/work", 2, "unacknowledged")]
    assert ask.view(events, 36)["alerts"][0]["acknowledged"] is None


def test_a_step_that_a_person_ends_is_a_prompt_until_its_band_is_over(ask):
    events = one_step(Phone(), lasts=LASTS)
    assert matters(ask, events, 31) == []
    assert matters(ask, events, 36) == [("step_end/work", 2, "unacknowledged")]
    # A quarter of its half hour over the band, it is to be acted on.
    assert matters(ask, events, 43) == [("step_end/work", 1, "unacknowledged")]


def ahead(ask, events, at_min):
    found = asked(ask, events, at_min)["deadlines"]
    return [(row["step"], row["due_ms"] - at(0), row["rings"]) for row in found]


def test_a_prompt_stays_in_sight_until_its_band_is_over(ask):
    events = one_step(Phone(), lasts=LASTS)
    for at_min in (10, 31, 35):
        assert ahead(ask, events, at_min) == [("work", 30 * 60_000, False)]
    assert ahead(ask, events, 36) == []
    assert ahead(ask, timed_step(Phone()), 10) == [("work", 30 * 60_000, True)]
    assert ahead(ask, timed_step(Phone()), 31) == []  # it rings


def test_a_setting_rings_at_its_cutting_time(ask):
    # Rennet at 100, flocculation at 110: three times ten minutes end at 130.
    events = until(a_day(Phone()), 128)
    assert [row[0] for row in matters(ask, events, 129)] == []
    assert matters(ask, events, 130) == [("step_end/set", 2, "unacknowledged")]


def test_a_reading_of_a_round_rings_half_its_interval_after_it_fell_due(ask):
    phone = Phone()
    events = one_step(phone, readings=[wanted("during", 600)])
    assert matters(ask, events, 14.9) == []
    assert matters(ask, events, 15.1) == [("overdue/work", 3, "unacknowledged")]
    (alarm,) = asked(ask, events, 15.1)["alarms"]
    assert (alarm["kind"], alarm["rings_ms"]) == ("reading_overdue", at(15))


def test_only_an_alert_that_asks_to_act_rings(ask):
    phone = Phone()
    events = [*until(a_day(phone), 61), phone.reading("milk_temp_c", 60.0, 70, "hold")]
    (alarm,) = asked(ask, events, 71)["alarms"]
    assert (alarm["kind"], alarm["priority"]) == ("alert", 1)
    assert alarm["numbers"]["value"] == 60.0
    assert alarm["do"] == {"en": "Start the hold again."}
    # Too much rennet is to be looked at, and makes no noise.
    dose = phone.event(
        "ingredient_added", 2, ingredient="rennet", amount=150.0, unit="mL", step="work"
    )
    quiet = [*one_step(phone, adds=["rennet"]), dose]
    assert [row["level"] for row in ask.view(quiet, 3)["alerts"]] == ["check"]
    assert matters(ask, quiet, 3) == []


def test_a_held_make_rings_and_one_that_is_over_does_not(ask):
    phone = Phone()
    events = timed_step(phone)
    held = [*events, phone.event("hold_placed", 5, why="Waiting for the lab")]
    assert [row[0] for row in matters(ask, held, 31)] == ["step_end/work"]
    closed = [*events, phone.event("make_closed", 29)]
    assert matters(ask, closed, 31) == []


def test_acknowledging_keeps_the_alarm_listed_with_who_and_when(ask):
    phone = Phone()
    timer = phone.event("timer_started", 1, label="Press", lasts_s=300)
    word = seen(Phone(1, person="bo"), 7, "timer/" + timer["id"])
    (alarm,) = asked(ask, [phone.opened(), timer, word], 30)["alarms"]
    assert alarm["state"] == "acknowledged"
    assert alarm["acknowledged"] == {"by": "bo", "at_ms": at(7)}
    assert (alarm["escalates_ms"], alarm["escalated"]) == (None, False)


def test_a_timer_of_a_step_that_has_ended_is_silenced_and_not_hidden(ask):
    # Seen: its alert goes with the step, and so the alarm went at the word.
    phone = Phone()
    events = timed_step(phone)
    timer = phone.event("timer_started", 1, label="Tea", lasts_s=300, step="work")
    events += [timer, phone.event("step_ended", 28, step="work")]
    word = seen(phone, 29, "timer/" + timer["id"])
    assert matters(ask, events, 30) == [("timer/" + timer["id"], 2, "unacknowledged")]
    assert matters(ask, [*events, word], 30) == [
        ("timer/" + timer["id"], 2, "acknowledged")
    ]


def test_what_a_fast_clock_tells_of_the_future_rings_when_it_has_come(ask):
    # Seen: nobody could silence it before, since a word must follow its alarm.
    phone = Phone()
    events = until(a_day(phone), 61)
    events.append(phone.reading("milk_temp_c", 60.0, 80, "hold"))
    before = asked(ask, events, 70)
    assert before["alarms"] == []
    assert before["next_change_ms"] <= at(80)
    assert matters(ask, events, 80) != []


def test_a_word_from_before_an_alarm_began_does_not_silence_it(ask):
    phone = Phone()
    events = [*timed_step(phone), seen(phone, 29, "step_end/work")]
    assert matters(ask, events, 31) == [("step_end/work", 2, "unacknowledged")]


def test_a_shelved_alarm_is_listed_and_comes_back_by_itself(ask):
    phone = Phone()
    events = one_step(phone, readings=[wanted("during", 600)])
    shelf = shelved(phone, 16, "overdue/work", for_s=1800)
    (alarm,) = asked(ask, [*events, shelf], 20)["alarms"]
    assert alarm["state"] == "shelved"
    assert alarm["shelved"] == {
        "id": shelf["id"],
        "by": "ida",
        "at_ms": at(16),
        "until_ms": at(46),
        "why": "Known",
    }
    (back,) = asked(ask, [*events, shelf], 46)["alarms"]
    assert (back["state"], back["shelved"]) == ("unacknowledged", None)
    # It has not waited for an answer while it was shelved.
    assert back["escalates_ms"] == at(56)


def test_a_struck_shelf_ends_at_once(ask):
    phone = Phone()
    events = one_step(phone, readings=[wanted("during", 600)])
    shelf = shelved(phone, 16, "overdue/work")
    strike = phone.event("entry_struck", 18, ref=shelf["id"], why="undo")
    assert matters(ask, [*events, shelf, strike], 19) == [
        ("overdue/work", 3, "unacknowledged")
    ]


@pytest.mark.parametrize(("for_s", "key"), [(28801, "above"), (59, "below")])
def test_nobody_shelves_for_longer_than_a_shift_or_for_no_time(ask, for_s, key):
    event = shelved(Phone(), 1, "overdue/work", for_s)
    (problem,) = ask.call("log.kinds.event", "check_event", event)
    assert (problem["field"], problem["key"]) == ("for_s", key)
    _, kept = ask.desk(("take", [event]), ("desk",))
    assert [state["lists"] for state in kept["makes"].values()] == [{}]


def test_a_helper_may_acknowledge_and_not_shelve(ask):
    assert ask.call("log.kinds.allowed", "may", "helper", "alert_acknowledged")
    assert not ask.call("log.kinds.allowed", "may", "helper", "alarm_shelved")
    assert ask.call("log.kinds.allowed", "may", "maker", "alarm_shelved")


def test_an_alarm_that_nobody_answers_is_told_to_the_owner(ask):
    phone = Phone()
    timer = phone.event("timer_started", 1, label="Press", lasts_s=300)
    events = [phone.opened(), timer]
    early = asked(ask, events, 15.9)
    assert early["alarms"][0]["escalates_ms"] == at(16)  # ten minutes past the sixth
    assert not early["alarms"][0]["escalated"]
    assert early["next_change_ms"] <= at(16)
    assert asked(ask, events, 16)["alarms"][0]["escalated"]
    answered = [*events, seen(phone, 15, "timer/" + timer["id"])]
    assert not asked(ask, answered, 16)["alarms"][0]["escalated"]


def test_what_ended_without_a_word_stays_listed_for_half_an_hour(ask):
    phone = Phone()
    timer = phone.event("timer_started", 1, label="Press", lasts_s=300)
    stop = phone.event("timer_stopped", 9, ref=timer["id"])
    events = [phone.opened(), timer, stop]
    (alarm,) = asked(ask, events, 10)["alarms"]
    assert (alarm["state"], alarm["returned_ms"]) == ("returned", at(9))
    assert not alarm["escalated"]
    assert asked(ask, events, 38.9)["alarms"] != []
    assert asked(ask, events, 39)["alarms"] == []
    answered = [*events, seen(phone, 7, "timer/" + timer["id"])]
    assert asked(ask, answered, 10)["alarms"] == []


def test_a_late_step_that_was_ended_without_a_word_is_listed_as_returned(ask):
    phone = Phone()
    events = [*timed_step(phone), phone.event("step_ended", 40, step="work")]
    assert matters(ask, events, 41) == [("step_end/work", 2, "returned")]


def test_the_most_urgent_of_all_makes_stands_first(ask):
    first = one_step(Phone(), readings=[wanted("during", 600)])
    phone = Phone(make=OTHER)
    timer = phone.event("timer_started", 1, label="Press", lasts_s=300)
    found = asked(ask, [*first, phone.opened(), timer], 16)
    assert [row["kind"] for row in found["alarms"]] == ["timer", "reading_overdue"]
    assert {row["make"] for row in found["alarms"]} == {MAKE, OTHER}


def test_the_answer_is_to_be_asked_for_again_when_it_changes(ask):
    # Every instant at which the answer differs is announced by the answer before.
    phone = Phone()
    events = timed_step(phone)
    timer = phone.event("timer_started", 1, label="Press", lasts_s=1000)
    events += [timer, shelved(phone, 18, "timer/" + timer["id"], 300)]
    desk = ask.desk(("take", events), ("desk",))[1]

    def states(now_ms):
        found = ask.call("alarm.alarms", "alarms", desk, now_ms, ESCALATE_S)
        rows = [
            (one["matter"], one["state"], one["escalated"]) for one in found["alarms"]
        ]
        return rows, found["next_change_ms"]

    now_ms = at(19)
    while now_ms < at(50):
        before, change_ms = states(now_ms)
        assert change_ms is not None
        assert states(change_ms - 1)[0] == before
        now_ms = change_ms


def calendar(ask, events, at_min, *step):
    view = ask.view(events, at_min)
    found = ask.call("alarm.calendar", "calendar", view, *step)
    return [(row["name"], row["at_ms"], row["sure"]) for row in found]


def test_the_calendar_holds_what_nobody_stands_by_for(ask):
    events = a_day(Phone())
    # The small make's store begins at 165 and lasts 28 days.
    due_ms = at(165) + 28 * 86_400_000
    assert calendar(ask, events, 166) == [("step_end/store", due_ms, True)]
    # A hold of half an hour is watched by whoever does it.
    assert calendar(ask, until(events, 61), 62) == []
    assert calendar(ask, until(events, 61), 62, "hold") == [
        ("step_end/hold", at(91), True)
    ]


def test_what_is_to_begin_after_the_day_is_in_the_calendar_as_a_forecast(ask):
    night = [
        step("fill", closes_day=True),
        step("press", ["fill"], lasts=figure(43200, "s", 36000, 50400)),
        step("turn", ["press"]),
    ]
    phone = Phone()
    events = [phone.opened(recipe=with_steps(*night))]
    events.append(phone.event("step_begun", 0, step="fill"))
    # Nothing says how long the filling takes, so it is expected to end now; the
    # pressing follows at once and takes twelve hours.
    assert calendar(ask, events, 10) == [("step_begin/turn", at(10 + 720), False)]
    events += [
        phone.event("step_ended", 20, step="fill"),
        phone.event("step_begun", 30, step="press"),
    ]
    assert calendar(ask, events, 31) == [
        ("step_begin/turn", at(750), False),
        ("step_end/press", at(750), True),
    ]


def test_a_long_timer_is_in_the_calendar_until_it_is_stopped(ask):
    phone = Phone()
    timer = phone.event("timer_started", 1, label="Press", lasts_s=14400)
    short = phone.event("timer_started", 1, label="Tea", lasts_s=14399)
    events = [phone.opened(recipe=with_steps(step("work")))]
    events += [timer, short]
    assert calendar(ask, events, 2) == [("timer/" + timer["id"], at(241), True)]
    stop = phone.event("timer_stopped", 3, ref=timer["id"])
    assert calendar(ask, [*events, stop], 4) == []


def test_an_alarm_is_open_and_marked_until_somebody_answers(ask):
    # A tenth of a step's length over is to be looked at, a third to be acted on.
    phone = Phone()
    events = timed_step(phone)
    for minute, mark in ((36, "check"), (60, "act")):
        (alarm,) = asked(ask, events, minute)["alarms"]
        assert (alarm["is_open"], alarm["mark"]) == (True, mark)
    (alarm,) = asked(ask, [*events, seen(phone, 61, "step_end/work")], 62)["alarms"]
    assert (alarm["is_open"], alarm["mark"]) == (False, "ok")


def waits(ask, events, at_min):
    wall = asked(ask, events, at_min)["wall"]
    return [(row["make"], row["label"], row["due_ms"]) for row in wall]


def timers(phone, count):
    return [
        phone.event("timer_started", 1, label=f"{number}", lasts_s=600 * number)
        for number in range(1, count + 1)
    ]


def test_the_wall_has_a_row_of_every_make_and_then_what_is_next(ask):
    busy, idle = Phone(), Phone(make=OTHER, device=1)
    events = [busy.opened(), idle.opened(), *timers(busy, 6)]
    assert waits(ask, events, 2) == [
        (MAKE, "1", at(11)),
        (MAKE, "2", at(21)),
        (MAKE, "3", at(31)),
        (MAKE, "4", at(41)),
        (OTHER, None, None),
    ]


def test_a_row_of_the_wall_says_how_what_it_names_stands(ask):
    phone = Phone()
    events = [*timed_step(phone), *timers(phone, 1)]
    idle = Phone(make=OTHER, device=1).opened()
    wall = asked(ask, [*events, idle], 2)["wall"]
    told = [(row["kind"], row["mark"]) for row in wall]
    assert told == [("timer", "running"), ("step_due", "running"), (None, None)]
    # A prompt stays past its instant: by then it is due.
    events = one_step(Phone(), lasts=LASTS, end={"by": "person"})
    told = [asked(ask, events, at_min)["wall"][0]["mark"] for at_min in (29, 31)]
    assert told == ["running", "due"]


def test_what_is_next_in_a_make_is_on_the_wall_though_others_come_sooner(ask):
    busy, slow = Phone(), Phone(make=OTHER, device=1)
    late = slow.event("timer_started", 1, label="Late", lasts_s=36000)
    events = [busy.opened(), slow.opened(), *timers(busy, 6), late]
    assert waits(ask, events, 2)[-1] == (OTHER, "Late", at(601))


def test_alarms_take_rows_of_the_wall_but_leave_each_make_one(ask):
    busy, other = Phone(), Phone(make=OTHER, device=1)
    late = other.event("timer_started", 1, label="Late", lasts_s=36000)
    events = [busy.opened(), other.opened(), *timers(busy, 6), late]
    # Two have rung at minute 22: of the five rows three are left.
    assert [row[1] for row in waits(ask, events, 22)] == ["3", "4", "Late"]
    # All but one have rung: each make keeps the row of what is next in it.
    assert [row[1] for row in waits(ask, events, 52)] == ["6", "Late"]


def test_what_is_late_stays_on_the_wall_once_it_is_silenced(ask):
    phone = Phone()
    events = [*timed_step(phone), *timers(phone, 1)]
    # Open alarms stand apart; the make waits for nothing else.
    assert waits(ask, events, 40) == [(MAKE, None, None)]
    (timer,) = [event for event in events if event["kind"] == "timer_started"]
    silent = [seen(phone, 41, "step_end/work"), seen(phone, 41, "timer/" + timer["id"])]
    wall = asked(ask, [*events, *silent], 42)["wall"]
    assert [(row["kind"], row["label"], row["mark"]) for row in wall] == [
        ("timer", "1", "late"),
        ("step_late", None, "late"),
    ]
    assert [row["due_ms"] for row in wall] == [at(11), at(30)]
    assert wall[1]["title"] is not None
    # So does what was put aside.
    aside = shelved(phone, 41, "step_end/work")
    wall = asked(ask, [*events, silent[1], aside], 42)["wall"]
    assert [row["kind"] for row in wall] == ["timer", "step_late"]


def test_a_silenced_late_step_leaves_its_make_the_row_of_what_is_next(ask):
    phone = Phone()
    later = phone.event("timer_started", 1, label="Later", lasts_s=36000)
    events = [*timed_step(phone), later, seen(phone, 41, "step_end/work")]
    assert [row[1] for row in waits(ask, events, 42)] == [None, "Later"]
