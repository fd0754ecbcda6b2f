"""The make as one band of stages: it tiles the day, and now lies where the make is."""

import itertools

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from server.core import desk as desk_of
from tests.core.builders import MAKE, Phone, a_day, at, figure, recipe, step, until
from tests.core.recipe.steps.test_stages import staged

HOUR = 60
ON_TIME = {"planned_end_ms": at(0), "expected_end_ms": at(1e6), "late_s": 0.0}
ON_TIME["state"] = "on_time"


def bar(core, rows, now, day=ON_TIME, opened=0):
    """Return the band of steps given as {key: (stage, status, begin, end)} [min]."""
    steps = [step(key, stage=row[0]) for key, row in rows.items()]
    shown = [
        {
            "key": key,
            "status": status,
            "expected_begin_ms": at(begin),
            "expected_end_ms": at(end),
            "timing": {"state": "on_time", "by_s": 0.0},
            **(more[0] if more else {}),
        }
        for key, (_, status, begin, end, *more) in rows.items()
    ]
    return core("step.parts.band", "band", steps, shown, at(opened), at(now), day)


def drawn(band):
    """Return (stage, how, begin, end) of each stage [min]."""
    return [
        (
            row["key"],
            row["how"],
            (row["begin_ms"] - at(0)) / 60_000,
            (row["end_ms"] - at(0)) / 60_000,
        )
        for row in band
    ]


def test_each_stage_ends_where_the_next_begins(core):
    rows = {
        "receive": ("milk", "ended", 5, 20),
        "warm": ("heat", "ended", 25, 60),
        "set": ("set", "running", 70, 100),
        "cut": ("cut", "waiting", 100, 110),
    }
    assert drawn(bar(core, rows, 90)) == [
        ("milk", "done", 0, 20),
        ("heat", "done", 20, 60),
        # From the end of the heat on the make waited for it.
        ("set", "running", 60, 100),
        ("cut", "to_come", 100, 110),
    ]


def test_a_stage_that_is_over_hands_the_make_to_the_next(core):
    rows = {"warm": ("heat", "ended", 0, 30), "set": ("set", "ready", 40, 70)}
    assert drawn(bar(core, rows, 40)) == [
        ("heat", "done", 0, 30),
        ("set", "running", 30, 70),
    ]


def test_steps_side_by_side_are_one_stage(core):
    rows = {
        "cool": ("heat", "running", 10, 50),
        "knives": ("heat", "ready", 20, 35),
        "set": ("set", "waiting", 50, 60),
    }
    assert drawn(bar(core, rows, 20)) == [
        ("heat", "running", 0, 50),
        ("set", "to_come", 50, 60),
    ]


def test_what_was_passed_by_is_left_open_and_cuts_no_later_stage_short(core):
    rows = {
        "warm": ("heat", "running", 10, 95),
        "set": ("set", "running", 40, 100),
        "cut": ("cut", "waiting", 100, 110),
    }
    assert drawn(bar(core, rows, 60)) == [
        ("heat", "left_open", 0, 40),
        ("set", "running", 40, 100),
        ("cut", "to_come", 100, 110),
    ]


def test_a_stage_whose_steps_are_all_skipped_is_not_drawn(core):
    rows = {
        "press": ("press", "running", 0, 60),
        "brine": ("brine", "skipped", 60, 60),
        "dry": ("store", "waiting", 60, 90),
    }
    assert [row["key"] for row in bar(core, rows, 30)] == ["press", "store"]
    assert bar(core, {"dry": ("store", "skipped", 0, 0)}, 30) == []


def test_where_all_is_over_no_stage_runs(core):
    rows = {"press": ("press", "ended", 0, 60), "dry": ("store", "ended", 60, 90)}
    assert drawn(bar(core, rows, 500)) == [
        ("press", "done", 0, 60),
        ("store", "done", 60, 90),
    ]


def test_a_phone_whose_clock_is_ahead_moves_now_to_no_other_stage(core):
    rows = {"warm": ("heat", "ended", 0, 33), "set": ("set", "running", 33, 60)}
    assert drawn(bar(core, rows, 30)) == [
        ("heat", "done", 0, 30),
        ("set", "running", 30, 60),
    ]


def test_widths_go_by_time_and_no_night_or_month_squeezes_the_day(core):
    rows = {
        "rest": ("milk", "running", 0, 12 * HOUR),
        "warm": ("heat", "waiting", 12 * HOUR, 14 * HOUR),
        "set": ("set", "waiting", 14 * HOUR, 15 * HOUR),
        "brine": ("brine", "waiting", 15 * HOUR, 60 * HOUR),
        "ripen": ("store", "waiting", 60 * HOUR, 2000 * HOUR),
    }
    band = bar(core, rows, 10)
    # 4 h of the milk's night at most, 2 h, 1 h, and 1 h each after the day: 9 h.
    shares = [row["share_frac"] for row in band]
    assert shares == pytest.approx([4 / 9, 2 / 9, 1 / 9, 1 / 9, 1 / 9])
    assert [row["has_end"] for row in band] == [True, True, True, True, False]


def test_a_make_whose_steps_take_no_time_is_drawn_in_equal_parts(core):
    rows = {"a": ("milk", "ready", 0, 0), "b": ("heat", "waiting", 0, 0)}
    assert [row["share_frac"] for row in bar(core, rows, 0)] == [0.5, 0.5]


LATE_DAY = {**ON_TIME, "late_s": 900.0, "state": "late"}
LATE_STEP = {"timing": {"state": "late", "by_s": 120.0}}


def lates(band):
    return [row["late_s"] for row in band]


def test_the_stage_that_runs_is_late_by_what_the_day_is(core):
    rows = {
        "warm": ("heat", "ended", 0, 30),
        # Beyond its own band, too: the day is what the board tells.
        "set": ("set", "running", 30, 60, LATE_STEP),
        "cut": ("cut", "waiting", 60, 90),
    }
    assert lates(bar(core, rows, 40, LATE_DAY)) == [0.0, 900.0, 0.0]
    assert lates(bar(core, rows, 40)) == [0.0, 0.0, 0.0]


def test_after_the_day_a_stage_is_late_by_its_own_steps(core):
    over = {**LATE_DAY, "expected_end_ms": at(20)}
    rows = {
        "press": ("press", "ended", 0, 30),
        "small": ("brine", "running", 30, 60, LATE_STEP),
        "large": ("brine", "running", 30, 90),
    }
    assert lates(bar(core, rows, 40, over)) == [0.0, 120.0]
    rows["small"] = ("brine", "running", 30, 60)
    assert lates(bar(core, rows, 40, over)) == [0.0, 0.0]


def views(ask, events, at_min):
    told, view, board = ask.desk(
        ("take", events), ("view", MAKE, at(at_min)), ("board", at(at_min))
    )
    assert told["problems"] == []
    assert board["makes"][0]["band"] == view["band"]
    return view


def test_view_and_board_carry_the_band_of_a_make(ask):
    view = views(ask, until(a_day(Phone()), 115), 115)
    assert [(row["key"], row["how"]) for row in view["band"]] == [
        ("milk", "done"),
        ("heat", "done"),
        ("set", "running"),
        ("cut", "to_come"),
        ("press", "to_come"),
        ("store", "to_come"),
    ]
    # The milk was received until 4, the fans were fitted until 95; it flocculated at
    # 110, 10 min after the rennet, and three times that is 130.
    ends = [(row["end_ms"] - at(0)) / 60_000 for row in view["band"]]
    assert ends[:3] == [4, 95, 130]


def test_a_make_that_is_over_has_no_band(ask):
    phone = Phone()
    events = [*a_day(phone), phone.event("make_closed", 170)]
    assert views(ask, events, 180)["band"] == []


# How a day may go: each step begins and ends in its turn, with waits and hurry, and
# some are skipped; or out of turn.
@st.composite
def days(draw):
    phone = Phone()
    given_recipe = draw(st.sampled_from([recipe(), staged(), long_recipe()]))
    keys = [row["key"] for row in given_recipe["steps"]]
    if draw(st.booleans()):
        keys = draw(st.permutations(keys))
    events = [phone.opened(recipe=given_recipe)]
    minute = 0
    for key in keys[: draw(st.integers(0, len(keys)))]:
        minute += draw(st.integers(0, 90))
        how = draw(st.sampled_from(["done", "done", "done", "begun", "skipped"]))
        if how == "skipped":
            skip = phone.event("step_skipped", minute, step=key, why="none")
            events.append(skip)
            continue
        events.append(phone.event("step_begun", minute, step=key))
        if how == "done":
            minute += draw(st.integers(0, 90))
            events.append(phone.event("step_ended", minute, step=key))
    return events, minute + draw(st.integers(-30, 500))


def long_recipe():
    """The short recipe with a night of rest, and brine and weeks behind its day."""
    found = staged()
    rest = step("rest", ["receive"], stage="milk", lasts=figure(43200, "s"))
    found["steps"].insert(1, rest)
    found["steps"][2]["after"] = ["rest"]
    brine = step("brine", ["fill"], stage="brine", lasts=figure(90000, "s"))
    found["steps"].insert(-1, {**brine, "place": "brine", "end": {"by": "time"}})
    found["steps"][-1]["after"] = ["brine"]
    return found


def holds(view, row):
    """Hold a View and its make on the board to what a band is."""
    band, now_ms = view["band"], view["now_ms"]
    assert row["band"] == band
    for stage, following in itertools.pairwise(band):
        assert stage["end_ms"] == following["begin_ms"]
    assert all(stage["begin_ms"] <= stage["end_ms"] for stage in band)
    assert band == [] or sum(s["share_frac"] for s in band) == pytest.approx(1.0)
    hows = [stage["how"] for stage in band]
    running = [stage for stage in band if stage["how"] == "running"]
    assert len(running) <= 1
    for stage in running:
        here = hows.index("running")
        assert stage["begin_ms"] <= now_ms <= stage["end_ms"]
        assert set(hows[:here]) <= {"done", "left_open"}
        assert set(hows[here + 1 :]) <= {"to_come"}
        assert band[-1]["end_ms"] == view["whole"]["expected_end_ms"]
        if row["day"]["expected_end_ms"] >= now_ms:
            is_late = row["day"]["state"] == "late"
            assert stage["late_s"] == (row["day"]["late_s"] if is_late else 0.0)
        else:
            late = [s["timing"]["by_s"] for s in row["running"]]
            assert stage["late_s"] in [0.0, *late]
    assert all(s["late_s"] == 0.0 for s in band if s["how"] != "running")
    is_all_over = all(s["status"] in ("ended", "skipped") for s in view["steps"])
    assert not is_all_over or not running


@settings(max_examples=150)
@given(days())
def test_however_a_day_goes_its_stages_tile_it(day):
    events, now_min = day
    desk = desk_of.new()
    assert desk_of.take(desk, events)["problems"] == []
    view = desk_of.view(desk, MAKE, at(now_min))
    (row,) = desk_of.board(desk, at(now_min))["makes"]
    holds(view, row)


@settings(max_examples=15)
@given(days())
def test_on_the_phone_stages_tile_the_day_too(ask_phone, day):
    events, now_min = day
    told, view, board = ask_phone.desk(
        ("take", events), ("view", MAKE, at(now_min)), ("board", at(now_min))
    )
    assert told["problems"] == []
    holds(view, board["makes"][0])
