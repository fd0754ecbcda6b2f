"""What falls due in the store and in the brine, beside the steps of a make."""

from tests.core.builders import MAKE, Phone, at, figure, step
from tests.core.creamery.test_board import board
from tests.core.creamery.test_clashes import of_steps

TANK = "0193a5b0-0000-7000-8000-0000000000aa"
DAY = 1440  # minutes


def rows(ask, events, at_min, what):
    return [row for row in board(ask, events, at_min)["due"] if row["what"] == what]


def in_store(phone, turns):
    lasts = figure(28 * 86400, "s")
    store = step("store", lasts=lasts, place="store", turns=turns)
    opened = phone.opened(recipe=of_steps(store))
    return [opened, phone.event("step_begun", 0, step="store")]


TURNS = [
    {"every": figure(86400, "s"), "until": figure(2 * 86400, "s")},
    {"every": figure(3 * 86400, "s")},
]


def turn_due(ask, events, at_min):
    (row,) = rows(ask, events, at_min, "turn")
    return (row["step"], (row["due_ms"] - at(0)) / 60_000, row["level"])


def test_wheels_in_the_store_are_turned_as_the_recipe_says(ask):
    phone = Phone()
    events = in_store(phone, TURNS)
    assert turn_due(ask, events, 10) == ("store", DAY, "later")
    assert turn_due(ask, events, DAY) == ("store", DAY, "due")
    # Left out for a whole turn more, it is late.
    assert turn_due(ask, events, 2 * DAY)[2] == "due"
    assert turn_due(ask, events, 2 * DAY + 1)[2] == "check"
    events.append(phone.event("wheel_turned", DAY + 60, step="store"))
    assert turn_due(ask, events, DAY + 61) == ("store", 2 * DAY + 60, "later")
    # From the second day on every third day.
    events.append(phone.event("wheel_turned", 2 * DAY + 60))
    assert turn_due(ask, events, 2 * DAY + 61) == ("store", 5 * DAY + 60, "later")


def test_what_falls_due_has_the_mark_of_how_near_it_is(ask):
    events = in_store(Phone(), TURNS)
    told = [rows(ask, events, at_min, "turn") for at_min in (10, DAY, 2 * DAY + 1)]
    assert [row["mark"] for (row,) in told] == ["waiting", "due", "late"]
    (row,) = rows(ask, events[:1], 10, "step_begin")
    assert (row["level"], row["mark"]) == ("due", "ready")


def test_the_board_is_asked_again_when_a_turn_falls_due(ask):
    events = in_store(Phone(), TURNS)
    assert board(ask, events, 10)["next_change_ms"] == at(DAY)


def test_another_step_s_turning_counts_for_that_step_alone(ask):
    phone = Phone()
    events = in_store(phone, TURNS)
    events.append(phone.event("wheel_turned", 60, step="press_1"))
    assert turn_due(ask, events, 61)[1] == DAY


def test_a_step_without_turning_asks_for_none(ask):
    assert rows(ask, in_store(Phone(), None), 10, "turn") == []


def tank(phone, **load):
    """Return a tank of a phone, with wheels of the make in it since minute 10."""
    body = {"load_make": MAKE, "size": "small", "wheels": 30, "mass_kg": 42.0}
    return [
        phone.event("tank_opened", 0, name="Trough", mass_kg=900.0, salt_frac=0.2),
        phone.event("tank_loaded", 10, **{**body, **load}),
    ]


def test_wheels_come_out_of_the_brine_size_by_size(ask):
    phone = Phone(make=TANK, device=1)
    events = [Phone().opened(), *tank(phone, days=1)]
    events.append(
        phone.event(
            "tank_loaded",
            11,
            load_make=MAKE,
            size="large",
            wheels=4,
            mass_kg=40.0,
            days=2,
        )
    )
    found = rows(ask, events, 20, "unload")
    told = [(row["size"], row["wheels"], row["due_ms"]) for row in found]
    assert told == [("small", 30, at(10 + DAY)), ("large", 4, at(11 + 2 * DAY))]
    assert {(row["label"], row["make_name"], row["tank"]) for row in found} == {
        ("Trough", "Make", TANK)
    }
    out = phone.event("tank_unloaded", DAY, load=events[2]["id"], mass_kg=41.0)
    found = rows(ask, [*events, out], DAY + 20, "unload")
    assert [(row["size"], row["level"]) for row in found] == [("large", "later")]


def test_wheels_of_a_make_that_is_over_come_out_all_the_same(ask):
    phone = Phone()
    events = [phone.opened(), phone.event("make_closed", 15)]
    events += tank(Phone(make=TANK, device=1), days=1)
    (row,) = rows(ask, events, 20, "unload")
    assert (row["make"], row["level"]) == (MAKE, "later")
    assert board(ask, events, 20)["next_change_ms"] == at(10 + DAY)


def test_a_load_of_a_make_that_is_not_here_is_told_without_its_name(ask):
    (row,) = rows(ask, tank(Phone(make=TANK, device=1), days=1), 20, "unload")
    assert (row["make"], row["make_name"]) == (MAKE, None)


def test_a_load_without_days_falls_due_by_its_step_alone(ask):
    events = [Phone().opened(), *tank(Phone(make=TANK, device=1))]
    assert rows(ask, events, 20, "unload") == []


def test_the_step_in_brine_tells_for_its_own_wheels(ask):
    # Seen: the same wheels stood twice on the list, once for step and once for tank.
    lasts = figure(86400, "s", 43200, 129600)
    brine = step("brine", lasts=lasts, end={"by": "time"}, place="brine", size="small")
    phone = Phone()
    events = [phone.opened(recipe=of_steps(brine))]
    events.append(phone.event("step_begun", 10, step="brine"))
    events += tank(Phone(make=TANK, device=1), days=1)
    assert rows(ask, events, 20, "unload") == []
    (row,) = rows(ask, events, 20, "step_end")
    assert (row["due_ms"], row["late_ms"]) == (at(10 + DAY), at(10 + DAY * 1.5))
    events.append(phone.event("step_ended", 30, step="brine"))
    assert len(rows(ask, events, 40, "unload")) == 1


def test_how_long_a_cut_may_wait_is_the_curd_s_own(ask):
    from tests.core.builders import a_day, until

    events = until(a_day(Phone()), 110)
    (row,) = rows(ask, events, 111, "step_end")
    view = ask.view(events, 111)
    (running,) = [one for one in view["steps"] if one["status"] == "running"]
    assert (row["step"], row["late_ms"]) == ("set", running["floc"]["high_ms"])


def whens(ask, events, at_min, tz_min):
    board = ask.desk(("take", events), ("board", at(at_min), tz_min))[1]
    return {row["label"]: row["when"] for row in board["due"] if row["what"] == "timer"}


def test_what_is_due_stands_by_how_near_it_is(ask):
    phone = Phone()
    # The clock stands at 14:13 UTC, so that midnight is 586.7 min away.
    ends = {"now": 1, "an hour": 61, "more": 62, "tonight": 580, "tomorrow": 590}
    events = [phone.opened()]
    for label, lasts_min in ends.items():
        events.append(
            phone.event("timer_started", 0, label=label, lasts_s=lasts_min * 60)
        )
    assert whens(ask, events, 1, 0) == {
        "now": "now",
        "an hour": "hour",
        "more": "today",
        "tonight": "today",
        "tomorrow": "days",
    }
    east = whens(ask, events, 1, 60)  # midnight comes an hour earlier there
    assert east["tonight"] == "days"
    assert east["more"] == "today"


def test_what_is_late_stands_first(ask):
    events = in_store(Phone(), TURNS)
    (row,) = rows(ask, events, 2 * DAY + 1, "turn")
    assert row["when"] == "late"


def leading(ask, events, at_min):
    due = board(ask, events, at_min)["due"]
    return [(row["what"], row["quantity"]) for row in due if row["leads"]]


def test_the_first_that_falls_due_in_a_step_leads_it(ask):
    readings = [
        {"quantity": "ph", "when": "during", "every_s": 600, "required": True},
        {"quantity": "room_temp_c", "when": "during", "every_s": 900, "required": True},
    ]
    lasts = figure(1800, "s", 1500, 2100)
    work = step("work", lasts=lasts, end={"by": "time"}, readings=readings)
    phone = Phone()
    events = [phone.opened(recipe=of_steps(work))]
    events.append(phone.event("step_begun", 0, step="work"))
    events.append(phone.event("timer_started", 1, label="Tea", lasts_s=60))
    assert leading(ask, events, 2) == [("reading", "ph")]


def test_a_turn_leads_no_step(ask):
    lasts = figure(28 * 86400, "s")
    store = step("store", lasts=lasts, end={"by": "time"}, place="store", turns=TURNS)
    phone = Phone()
    events = [phone.opened(recipe=of_steps(store))]
    events.append(phone.event("step_begun", 0, step="store"))
    due = board(ask, events, 10)["due"]
    assert [row["what"] for row in due] == ["turn", "step_end"]
    assert leading(ask, events, 10) == [("step_end", None)]
