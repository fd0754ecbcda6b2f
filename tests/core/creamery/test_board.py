"""All makes at once: how each stands, and what falls due next."""

from tests.core.builders import MAKE, Phone, a_day, at, figure, until
from tests.core.step.parts.test_step_parts import wanted
from tests.core.step.test_steps import one_step

OTHER = "0193a5b0-0000-7000-8000-00000000000b"
THIRD = "0193a5b0-0000-7000-8000-00000000000c"
LASTS = figure(1800, "s", 1500, 2100)


def board(ask, events, at_min):
    return ask.desk(("take", events), ("board", at(at_min)))[1]


def due(ask, events, at_min):
    return [
        (row["what"], row["step"], row["quantity"], row["due_ms"] - at(0), row["level"])
        for row in board(ask, events, at_min)["due"]
    ]


def ms(minutes):
    return minutes * 60_000


def test_an_empty_desk_has_an_empty_board(ask):
    assert ask.desk(("board", at(0))) == [
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
        }
    ]


def test_makes_that_run_stand_first_the_newest_opening_on_top(ask):
    phone = Phone()
    first = [phone.opened(), phone.event("make_closed", 5)]
    second = [Phone(make=OTHER).opened()]
    third = [Phone(make=THIRD).opened()]
    third[0]["at_ms"] += 1
    found = board(ask, first + second + third, 6)
    assert [row["id"] for row in found["makes"]] == [THIRD, OTHER, MAKE]
    assert [row["state"] for row in found["makes"]] == ["running", "running", "closed"]
    # What is over has nothing due.
    assert {row["make"] for row in found["due"]} == {OTHER, THIRD}


def test_a_make_is_summed_up(ask):
    found = board(ask, until(a_day(Phone()), 61), 70)
    (make,) = found["makes"]
    view = ask.view(until(a_day(Phone()), 61), 70)
    assert make["focus"]["key"] == "hold"
    assert make["focus"]["main"] == {"kind": "countdown", "due_ms": at(91)}
    assert [row["key"] for row in make["running"]] == ["hold"]
    assert make["focus"]["mark"] == make["running"][0]["mark"] == "running"
    assert make["last_word_ms"] == at(61)
    for name in ("alerts", "day", "whole"):
        assert make[name] == view[name]
    for name in ("name", "batch", "state", "vat", "opened_ms", "recipe_title"):
        assert make[name] == view["make"][name]
    assert found["next_change_ms"] == view["next_change_ms"]


def test_a_make_with_nothing_to_do_has_no_focus(ask):
    phone = Phone()
    events = [*one_step(phone), phone.event("step_ended", 5, step="work")]
    (make,) = board(ask, events, 6)["makes"]
    assert (make["focus"], make["running"]) == (None, [])


def test_what_is_due_stands_in_the_order_it_falls_due(ask):
    phone = Phone()
    rows = [wanted("during", 600)]
    events = one_step(phone, readings=rows, lasts=LASTS, end={"by": "time"})
    events.append(phone.event("timer_started", 1, label="Tea", lasts_s=300))
    assert due(ask, events, 2) == [
        ("timer", None, None, ms(6), "later"),
        ("reading", "work", "ph", ms(10), "later"),
        ("step_end", "work", None, ms(30), "later"),
    ]
    # Past the band at 35 the step is late; a timer is merely due.
    assert due(ask, events, 36) == [
        ("timer", None, None, ms(6), "due"),
        ("reading", "work", "ph", ms(10), "check"),
        ("step_end", "work", None, ms(30), "check"),
    ]
    (timer,) = [row for row in board(ask, events, 2)["due"] if row["what"] == "timer"]
    assert (timer["label"], timer["timer"]) == ("Tea", events[-1]["id"])


def test_a_stopped_timer_is_not_due(ask):
    phone = Phone()
    timer = phone.event("timer_started", 1, label="Tea", lasts_s=300)
    stop = phone.event("timer_stopped", 2, ref=timer["id"])
    events = one_step(phone, lasts=LASTS, end={"by": "time"})
    assert [row[0] for row in due(ask, [*events, timer, stop], 3)] == ["step_end"]


def test_what_is_ready_is_due_now(ask):
    assert due(ask, [Phone().opened()], 7) == [
        ("step_begin", "receive", None, ms(7), "due")
    ]


def test_a_step_without_a_deadline_is_due_when_it_may_end(ask):
    events = one_step(Phone())
    assert due(ask, events, 3) == [("step_end", "work", None, ms(3), "due")]
    # Unless something else comes first.
    events = one_step(Phone(), readings=[wanted("begin")])
    assert due(ask, events, 1) == [("reading", "work", "ph", ms(0), "due")]
    # More than ten minutes overdue it is late: from when its alert is.
    assert due(ask, events, 10) == [("reading", "work", "ph", ms(0), "due")]
    assert due(ask, events, 11) == [("reading", "work", "ph", ms(0), "check")]


def test_a_quantity_wanted_twice_is_due_once_and_the_optional_never(ask):
    # Seen: the same reading stood twice on the board, beside those nobody wants.
    rows = [
        wanted("during", 600),
        wanted("begin"),
        wanted("begin", quantity="room_temp_c", required=False),
    ]
    events = one_step(Phone(), readings=rows, lasts=LASTS, end={"by": "time"})
    readings = [row for row in due(ask, events, 1) if row[0] == "reading"]
    assert readings == [("reading", "work", "ph", ms(0), "due")]


def test_two_makes_share_one_list_of_what_is_due(ask):
    first = one_step(Phone(), lasts=LASTS, end={"by": "time"})
    second = one_step(Phone(make=OTHER), lasts=figure(600, "s"), end={"by": "time"})
    found = board(ask, first + second, 1)
    assert [row["make"] for row in found["due"]] == [OTHER, MAKE]
    assert found["next_change_ms"] == at(10)


def test_readings_due_at_one_instant_stand_in_one_order(ask):
    rows = [
        wanted("begin", quantity=name) for name in ("ph", "curd_temp_c", "room_temp_c")
    ]
    for order in (rows, rows[::-1]):
        found = due(ask, one_step(Phone(), readings=order), 1)
        assert [row[2] for row in found] == ["curd_temp_c", "ph", "room_temp_c"]
