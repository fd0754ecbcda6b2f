"""Two acts at once for the same hands, told while one of them can still move."""

import pytest

from tests.core.builders import MAKE, Phone, at, figure, recipe, step

OTHER = "0193a5b0-0000-7000-8000-00000000000b"
THIRD = "0193a5b0-0000-7000-8000-00000000000c"


def of_steps(*steps):
    added = any(row.get("adds") for row in steps)
    told = recipe()
    told["ingredients"] = told["ingredients"] if added else []
    return {**told, "steps": list(steps)}


def press(minutes, low, high, key="press", **rest):
    """Return a wait of so many minutes and the turn that follows it."""
    lasts = figure(minutes * 60, "s", low * 60, high * 60)
    return [
        step(key, lasts=lasts, end={"by": "time"}, place="press", **rest),
        step("turn", [key], lasts=figure(600, "s"), place="press"),
    ]


def pressing(make, begun_min, minutes, low, high, name="Make"):
    """Return a make whose press runs since a minute."""
    phone = Phone(make=make)
    opened = phone.opened(name=name, recipe=of_steps(*press(minutes, low, high)))
    return [opened, phone.event("step_begun", begun_min, step="press")]


def board(ask, events, at_min):
    return ask.desk(("take", events), ("board", at(at_min)))[1]


def clashes(ask, events, at_min):
    return board(ask, events, at_min)["clashes"]


def ms(minutes):
    return minutes * 60_000


def test_two_turns_within_five_minutes_are_told_with_what_may_move(ask):
    # Due at 30 (band 25 to 35) and at 33 (band 28 to 48).
    first = pressing(MAKE, 0, 30, 25, 35, "North")
    second = pressing(OTHER, 3, 30, 25, 45, "South")
    (found,) = clashes(ask, first + second, 5)
    assert found["at_ms"] == at(30)
    acts = [
        (row["make_name"], row["what"], row["step"], row["wait"], row["at_ms"])
        for row in found["acts"]
    ]
    assert acts == [
        ("North", "begin", "turn", "press", at(30)),
        ("South", "begin", "turn", "press", at(33)),
    ]
    bands = [(row["early_ms"], row["late_ms"]) for row in found["acts"]]
    assert bands == [(at(25), at(35)), (at(28), at(48))]
    # Only the second may wait for more than five minutes after the other.
    assert found["move"] == {
        "act": 1,
        "to_ms": at(48),
        "way": "later",
        "clears": True,
    }


@pytest.mark.parametrize(("begun_min", "is_told"), [(5, True), (5.1, False)])
def test_five_minutes_apart_is_the_last_that_clashes(ask, begun_min, is_told):
    events = pressing(MAKE, 0, 30, 25, 35) + pressing(OTHER, begun_min, 30, 25, 35)
    assert bool(clashes(ask, events, 6)) is is_told


def test_what_is_due_already_is_no_clash_ahead(ask):
    events = pressing(MAKE, 0, 30, 25, 35) + pressing(OTHER, 3, 30, 25, 35)
    assert len(clashes(ask, events, 29)) == 1
    assert clashes(ask, events, 30) == []


def test_an_earlier_act_is_offered_where_none_may_wait(ask):
    # At 40, with no room to wait; the second from 20 on.
    events = pressing(MAKE, 0, 40, 40, 40) + pressing(OTHER, 0, 40, 20, 40)
    (found,) = clashes(ask, events, 5)
    assert found["move"] == {
        "act": 1,
        "to_ms": at(20),
        "way": "earlier",
        "clears": True,
    }
    # Once that instant has gone by, nothing is left to offer.
    (found,) = clashes(ask, events, 21)
    assert found["move"] is None


def test_a_band_too_narrow_to_part_them_says_so(ask):
    events = pressing(MAKE, 0, 30, 30, 30) + pressing(OTHER, 0, 30, 30, 33)
    (found,) = clashes(ask, events, 5)
    assert found["move"] == {
        "act": 1,
        "to_ms": at(33),
        "way": "later",
        "clears": False,
    }


def test_acts_in_different_hands_do_not_clash(ask):
    events = pressing(MAKE, 0, 30, 25, 35) + pressing(OTHER, 0, 30, 25, 35)
    ida = Phone(make=MAKE, device=1).event("task_taken", 1, step="press")
    tove = Phone(make=OTHER, device=1, person="tove")
    also = tove.event("task_taken", 1, step="press")
    assert len(clashes(ask, [*events, ida], 5)) == 1
    assert clashes(ask, [*events, ida, also], 5) == []
    # One person who has both in hand has two hands all the same.
    both = Phone(make=OTHER, device=1).event("task_taken", 1, step="press")
    assert len(clashes(ask, [*events, ida, both], 5)) == 1


def test_three_at_once_are_one_line(ask):
    events = (
        pressing(MAKE, 0, 30, 25, 35)
        + pressing(OTHER, 1, 30, 25, 35)
        + pressing(THIRD, 2, 30, 25, 35)
    )
    found = board(ask, events, 5)
    assert [len(row["acts"]) for row in found["clashes"]] == [3]
    assert found["clash_count"] == 1


def test_what_falls_together_within_the_hour_is_soon(ask):
    events = pressing(MAKE, 0, 90, 80, 95) + pressing(OTHER, 0, 90, 80, 95)
    # It begins to be so at 30 min, and the board says when.
    before = board(ask, events, 29)
    assert [row["is_soon"] for row in before["clashes"]] == [False]
    assert before["next_change_ms"] == at(30)
    assert [row["is_soon"] for row in clashes(ask, events, 30)] == [True]


def test_no_more_than_three_are_told_and_all_are_counted(ask):
    # Five waits of half an hour, one after the other, in two makes alike.
    steps = []
    for number in range(5):
        after = [f"wait_{number - 1}"] if number else []
        lasts = figure(1800, "s")
        steps.append(step(f"wait_{number}", after, lasts=lasts, end={"by": "time"}))
    events = []
    for make in (MAKE, OTHER):
        phone = Phone(make=make)
        events.append(phone.opened(recipe=of_steps(*steps)))
        events.append(phone.event("step_begun", 0, step="wait_0"))
    found = board(ask, events, 1)
    assert [row["at_ms"] for row in found["clashes"]] == [at(30), at(60), at(90)]
    assert found["clash_count"] == 5


def test_waits_that_follow_each_other_in_one_make_do_not_clash(ask):
    steps = [
        step("wash", lasts=figure(1800, "s"), end={"by": "time"}),
        step("settle", ["wash"], lasts=figure(300, "s"), end={"by": "time"}),
        step("drain", ["settle"]),
    ]
    phone = Phone()
    events = [phone.opened(recipe=of_steps(*steps))]
    events.append(phone.event("step_begun", 0, step="wash"))
    assert clashes(ask, events, 5) == []


def test_two_waits_of_one_make_side_by_side_do(ask):
    water = step("water", lasts=figure(1740, "s"), end={"by": "time"}, place="tank")
    events = [Phone().opened(recipe=of_steps(water, *press(30, 25, 35)))]
    phone = Phone(device=1)
    events += [phone.event("step_begun", 0, step=key) for key in ("water", "press")]
    (found,) = clashes(ask, events, 5)
    told = [(row["what"], row["step"], row["place"]) for row in found["acts"]]
    assert told == [("end", "water", "tank"), ("begin", "turn", "press")]


def test_two_waits_for_one_and_the_same_step_do_not(ask):
    wait = {"lasts": figure(1800, "s"), "end": {"by": "time"}}
    steps = [step("stir", **wait), step("water", **wait)]
    steps.append(step("wash", ["stir", "water"]))
    events = [Phone().opened(recipe=of_steps(*steps))]
    phone = Phone(device=1)
    events += [phone.event("step_begun", 0, step=key) for key in ("stir", "water")]
    assert clashes(ask, events, 5) == []


def test_work_that_ends_at_will_is_no_act(ask):
    # Half an hour under the hands; it ends when the person says so.
    work = step("work", lasts=figure(1800, "s"))
    phone = Phone()
    events = [phone.opened(recipe=of_steps(work))]
    events.append(phone.event("step_begun", 0, step="work"))
    assert clashes(ask, events + pressing(OTHER, 0, 30, 25, 35), 5) == []
    # Nor is a step that nothing says the length of.
    events[0]["data"]["recipe"]["steps"][0]["lasts"] = None
    assert clashes(ask, events + pressing(OTHER, 0, 30, 25, 35), 5) == []


def test_a_timer_clashes_with_another_make_and_not_with_its_own(ask):
    phone = Phone(device=1)
    timer = phone.event("timer_started", 2, label="Eggs", lasts_s=1740)
    events = [*pressing(MAKE, 0, 30, 25, 35), timer]
    assert clashes(ask, events, 5) == []
    (found,) = clashes(ask, events + pressing(OTHER, 3, 30, 30, 60), 5)
    # 2 + 29 = 31: between the two turns, at 30 and 33.
    assert [row["what"] for row in found["acts"]] == ["begin", "timer", "begin"]
    assert found["acts"][1]["label"] == "Eggs"
    assert found["acts"][1]["late_ms"] is None
    assert found["move"]["act"] == 2
    stop = phone.event("timer_stopped", 4, ref=timer["id"])
    (found,) = clashes(ask, [*events, stop, *pressing(OTHER, 3, 30, 30, 60)], 5)
    assert [row["what"] for row in found["acts"]] == ["begin", "begin"]


def test_the_hour_of_the_cut_is_the_curd_s_own(ask):
    # Flocculation after 10 minutes; cut at 3 times that; from 2.5 times the look two
    # minutes before, to 3.5 times it.
    steps = [
        step("rennet", adds=["rennet"]),
        step(
            "set",
            ["rennet"],
            lasts=figure(2400, "s"),
            end={"by": "floc", "from_step": "rennet"},
            judge={"choices": ["not_flocculated", "flocculated"], "from_frac": 0.5},
        ),
        step("cut", ["set"]),
    ]
    phone = Phone()
    took = phone.event
    events = [
        phone.opened(recipe=of_steps(*steps)),
        took("step_begun", 0, step="rennet"),
        took(
            "ingredient_added",
            0,
            ingredient="rennet",
            amount=103.0,
            unit="mL",
            step="rennet",
        ),
        took("step_ended", 1, step="rennet"),
        took("step_begun", 1, step="set"),
        took("curd_judged", 10, judgement="flocculated", step="set"),
    ]
    (found,) = clashes(ask, events + pressing(OTHER, 0, 30, 30, 30), 12)
    (cut,) = [row for row in found["acts"] if row["step"] == "cut"]
    assert [cut[name] for name in ("early_ms", "at_ms", "late_ms")] == [
        at(20),
        at(30),
        at(35),
    ]


def test_a_make_that_is_over_asks_for_nothing(ask):
    phone = Phone(make=OTHER, device=1)
    events = pressing(MAKE, 0, 30, 25, 35) + pressing(OTHER, 0, 30, 25, 35)
    events.append(phone.event("make_abandoned", 4, why="Power cut"))
    assert clashes(ask, events, 5) == []


def test_a_tap_in_one_make_moves_its_acts(ask):
    events = pressing(MAKE, 0, 30, 25, 35) + pressing(OTHER, 0, 30, 25, 35)
    ended = Phone(device=1).event("step_ended", 20, step="press")
    answers = ask.desk(
        ("take", events), ("board", at(5)), ("take", [ended]), ("board", at(20))
    )
    assert [answers[n]["clash_count"] for n in (1, 3)] == [1, 0]
