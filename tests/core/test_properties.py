"""What holds for every log of events, drawn from the table of kinds itself."""

import copy
import json
import uuid

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from server.core import desk as desk_of
from server.core.log import run
from server.core.log.kinds.event import check_event
from server.core.log.kinds.table import KINDS
from server.core.recipe.treatments import TREATMENTS
from server.core.step.view import view as view_of
from server.core.units.quantities import QUANTITIES
from tests.conftest import through_json
from tests.core.builders import MAKE, START_MS, Phone, a_day, at, recipe, three_ways

NEVER = "0193a5b0-0000-7000-8000-0000000000ff"
STEPS = [row["key"] for row in recipe()["steps"]]
LAST_MIN = 200  # the small make's day is over by then
MANY = settings(max_examples=100)
FEW = settings(max_examples=20)  # each is a whole fold on the phone's interpreter

# Names that mean something in the small make, and one that means nothing.
NAMES = {
    "step": [*STEPS, "brew"],
    "ingredient": ["rennet", "lemon"],
    "size": ["small", "huge"],
    "matter": ["drug_test", "hold"],
    "way": ["discard", "confirmed_negative", "hold_again"],
    "key": ["plant_name", "sweetened", "extra_hold_s", "of_a_newer_app"],
    "alert": [
        "matter/drug_test",
        "step_end/hold",
        "overdue/heat/milk_temp_c",
        "missing/receive/drug_test",
        "caution:heat",
    ],
}
SEEN = ["scald", "lifting", "scald/heat", "of_a_newer_app"]
HAS = {
    "plant_name": st.just("Quernbeck"),
    "sweetened": st.sampled_from(["no", "yes"]),
    "extra_hold_s": st.integers(0, 900),
    "of_a_newer_app": st.booleans(),
}
READ = ("milk_temp_c", "milk_volume_l", "milk_mass_kg", "drug_test", "ph")
MINUTES = st.integers(-5, LAST_MIN) | st.sampled_from([91, 100, 102, 110, 131])


def numbers(low, high):
    """Return numbers of a range, whole ones as JavaScript sends them, too."""
    if high - low < 3:
        return st.floats(low, high)
    return st.integers(int(low) + 1, int(high) - 1) | st.floats(low, high)


def readings(draw, quantity):
    row = QUANTITIES[quantity]
    if row["type"] == "choice":
        return draw(st.sampled_from(row["choices"]))
    usual = [row["ask_low"], row["ask_high"], 63.9, 31.5]
    usual = [value for value in usual if row["low"] <= value <= row["high"]]
    return draw(st.sampled_from(usual) | st.floats(row["low"], row["high"]))


CORRECTIONS = st.fixed_dictionaries(
    {},
    optional={
        "at_ms": MINUTES.map(at),
        "value": st.sampled_from([31.5, 64, 500, "positive", None]),
        "amount": st.sampled_from([103, 50.0]),
        "size": st.sampled_from(NAMES["size"]),
        "count": st.integers(-1, 40),
        "judgement": st.sampled_from(["even", "flocculated", "nice"]),
        "milk_l": st.sampled_from([400, 600.0]),
        "lasts_s": st.just(1200),
        "same": st.booleans(),
        "colour": st.just("red"),
    },
)


def value_of(draw, kind, field, data):
    name, form = field["name"], field["type"]
    if name in NAMES and form in ("key", "text"):
        return draw(st.sampled_from(NAMES[name]))
    if form in ("key", "text"):
        return draw(st.text("abc ", min_size=1, max_size=8)) + "x"
    if form == "quantity":
        return draw(st.sampled_from(READ))
    if form == "equipment":
        return draw(HAS[data["key"]])
    if form == "reading":
        return readings(draw, data["quantity"])
    if form == "number":
        return draw(numbers(field["low"], min(field["high"], 5000)))
    if form == "int":
        return draw(st.integers(field["low"], 40))
    if form == "bool":
        return draw(st.booleans())
    if form in ("choice", "treatment"):
        return draw(st.sampled_from(field["choices"]))
    if form == "recipe":
        return three_ways()
    if form == "options":
        return {}  # its recipe leaves no choice
    if form == "names":
        return draw(st.lists(st.sampled_from(SEEN), min_size=1, max_size=3))
    if form == "moulds":
        return [{"size": "small", "count": draw(st.integers(0, 40))}]
    return draw(CORRECTIONS) if kind == "entry_corrected" else {"vat": "jacketed"}


@st.composite
def bodies(draw, kind):
    """Return a sound body of a kind, from the fields of the table."""
    data = {}
    for field in KINDS[kind]["fields"]:
        if field["required"] or draw(st.booleans()):
            data[field["name"]] = value_of(draw, kind, field, data)
    return data


def id_of(device, seq):
    return str(uuid.uuid5(uuid.UUID(int=device), str(seq)))


@st.composite
def logs(draw, longest=10):
    """Return part of a day that goes by the recipe, with anything on top of it."""
    ways = [{"recipe": three_ways(), "treatment": way} for way in TREATMENTS]
    day = a_day(Phone(), **draw(st.sampled_from([{}, *ways])))
    log = day[: draw(st.integers(0, len(day)))]
    phones = [Phone(0), Phone(1)]
    phones[0].seq = 1000
    ids = [event["id"] for event in log]
    more = draw(st.lists(st.sampled_from(sorted(KINDS)), max_size=longest))
    ids += [id_of(1, place) for place in range(len(more))]
    for place, kind in enumerate(more):
        phone = phones[draw(st.integers(0, 1))]
        ref = None
        if KINDS[kind]["ref"] == "required":
            ref = draw(st.sampled_from([*ids, NEVER]))
        event = phone.event(kind, draw(MINUTES), ref=ref, **draw(bodies(kind)))
        event["id"] = id_of(1, place)
        log.append(event)
    return log


READER = {"person": "ida", "tz_min": 120}
NOWS = st.integers(-60, 3 * LAST_MIN)


def fold(pieces, now_min):
    """Return what a desk shows after pieces of a log, asked after each."""
    desk = desk_of.new()
    for piece in pieces:
        assert desk_of.take(desk, piece)["problems"] == []
        shown = [
            desk_of.view(desk, MAKE, at(now_min), READER),
            desk_of.board(desk, at(now_min)),
        ]
    return through_json([*shown, desk_of.record(desk, MAKE)])


def fold_on(ask, pieces, now_min):
    """Do the same where `ask` asks."""
    calls = []
    for piece in pieces:
        view = ("view", MAKE, at(now_min), READER)
        calls += [("take", piece), view, ("board", at(now_min))]
    answers = ask.desk(*calls, ("record", MAKE))
    return answers[-3:]


@MANY
@given(logs())
def test_every_event_that_the_table_allows_is_sound(log):
    for event in log:
        assert check_event(event) == []


@MANY
@given(logs(), NOWS, st.randoms(use_true_random=False))
def test_the_order_of_arrival_does_not_matter(log, now_min, chance):
    shuffled = list(log)
    chance.shuffle(shuffled)
    assert fold([shuffled], now_min) == fold([log], now_min)


@MANY
@given(logs(), NOWS, st.data())
def test_sending_twice_equals_sending_once(log, now_min, data):
    again = data.draw(st.lists(st.sampled_from(log), max_size=8)) if log else []
    assert fold([log, again, again], now_min) == fold([log], now_min)


@MANY
@given(logs(), NOWS, st.data())
def test_two_pieces_equal_the_whole(log, now_min, data):
    cut = data.draw(st.integers(0, len(log)))
    assert fold([log[:cut], log[cut:]], now_min) == fold([log], now_min)
    assert fold([log[cut:], log[:cut]], now_min) == fold([log], now_min)


@settings(max_examples=60)
@given(logs(), st.data())
def test_what_is_kept_never_differs_from_a_fresh_fold(log, data):
    kept = desk_of.new()
    for place, event in enumerate(log):
        desk_of.take(kept, [event])
        now_ms = at(data.draw(NOWS))
        shown = through_json(desk_of.view(kept, MAKE, now_ms))
        state = run.new_state(MAKE)
        for taken in log[: place + 1]:
            run.take(state, taken)
        # A view still fresh is as it was when it was asked for.
        fresh_ms = now_ms if shown is None else shown["now_ms"]
        assert shown == through_json(view_of(state, fresh_ms))


@settings(max_examples=60)
@given(logs(), NOWS)
def test_every_prefix_folds_and_shows_at_any_now(log, now_min):
    desk = desk_of.new()
    opened = False
    for event in log:
        desk_of.take(desk, [event])
        opened = opened or event["kind"] == "make_opened"
        shown = desk_of.view(desk, MAKE, at(now_min))
        assert opened or shown is None
        json.dumps([shown, desk_of.board(desk, at(now_min))], allow_nan=False)


def skewed(event, off_ms):
    """Return an event as a phone with a wrong clock would have made it."""
    if event["device"] != Phone(1).device:
        return event
    return {
        **event,
        "at_ms": event["at_ms"] - off_ms,
        "entered_ms": event["entered_ms"] - off_ms,
        "off_ms": event["off_ms"] + off_ms,
    }


def without_clocks(shown):
    view, board, lines = shown
    for line in lines + (view["log"] if view else []):
        line["clock_off_s"] = None
    return [view, board, lines]


@MANY
@given(logs(), NOWS, st.integers(-10_000_000, 10_000_000))
def test_a_wrong_clock_that_is_corrected_changes_nothing(log, now_min, off_ms):
    wrong = [skewed(event, off_ms) for event in log]
    shown = without_clocks(fold([wrong], now_min))
    assert shown == without_clocks(fold([log], now_min))


def whole_as_ints(value):
    if isinstance(value, dict):
        return {name: whole_as_ints(value[name]) for name in value}
    if isinstance(value, list):
        return [whole_as_ints(one) for one in value]
    return int(value) if isinstance(value, float) and value == int(value) else value


@MANY
@given(logs(), NOWS)
def test_whole_numbers_may_come_without_a_point(log, now_min):
    assert fold([whole_as_ints(log)], now_min) == fold([log], now_min)


@MANY
@given(logs(), NOWS, NOWS)
def test_deadlines_do_not_move_with_the_clock(log, first_min, second_min):
    def deadlines(now_min):
        view = fold([log], now_min)[0]
        if view is None:
            return None
        steps = [(row["key"], row["due_ms"], row["status"]) for row in view["steps"]]
        return steps, view["timers"], view["to_judge"]

    assert deadlines(first_min) == deadlines(second_min)


MOVING = (
    "now_ms",
    "next_change_ms",
    "expected_begin_ms",
    "expected_end_ms",
    "end_low_ms",
    "end_high_ms",
    "overdue_s",
    "by_s",
    "day",
    "whole",
)


def standing(value):
    """Return a View without the figures that move with the clock by themselves."""
    if isinstance(value, dict):
        told = {name: standing(value[name]) for name in value if name not in MOVING}
        if "band" in value:
            told["band"] = [(stage["key"], stage["how"]) for stage in value["band"]]
        return told
    return [standing(one) for one in value] if isinstance(value, list) else value


@settings(max_examples=250)
@given(logs(), st.integers(LAST_MIN * 60_000, 3 * LAST_MIN * 60_000), st.data())
def test_until_the_next_change_nothing_changes(log, now_min_ms, data):
    # A now after all that was observed: only the clock moves from here on.
    now_ms = START_MS + now_min_ms
    _until_next_change(log, now_ms, data)


@settings(max_examples=250)
@given(st.integers(1, 31), st.integers(0, LAST_MIN * 60_000), st.data())
def test_in_a_day_by_the_recipe_nothing_changes_before_it_is_told(
    count, later_ms, data
):
    log = a_day(Phone())[:count]
    _until_next_change(log, log[-1]["at_ms"] + later_ms, data)


def _until_next_change(log, now_ms, data):
    desk = desk_of.new()
    desk_of.take(desk, log)
    state = desk["makes"].get(MAKE)
    view = None if state is None else through_json(view_of(state, now_ms))
    if view is None:
        return
    last_ms = view["next_change_ms"] or now_ms + 100 * 86_400_000
    assert last_ms > now_ms
    between_ms = data.draw(st.integers(now_ms, last_ms - 1))
    for later_ms in (between_ms, last_ms - 1):
        later = through_json(view_of(state, later_ms))
        assert standing(later) == standing(view)


ACTS = st.sampled_from(["step_begun", "step_ended"])


@given(ACTS, st.sampled_from(STEPS), MINUTES, MINUTES, st.booleans())
def test_of_two_phones_the_earlier_holds_and_one_question_is_asked(
    kind, step, first_min, second_min, swapped
):
    opened = Phone(0).opened()
    here, there = Phone(0), Phone(1)
    here.seq = 7
    pair = [
        here.event(kind, first_min, step=step),
        there.event(kind, second_min, step=step),
    ]
    # At one instant the order of the devices decides, on every phone alike.
    first, later = sorted(pair, key=lambda event: (event["at_ms"], event["device"]))
    arrival = [opened, *(pair[::-1] if swapped else pair)]
    view = fold([[one] for one in arrival], LAST_MIN)[0]
    (asked,) = view["to_judge"]
    assert (asked["first"]["id"], asked["later"]["id"]) == (first["id"], later["id"])
    (row,) = [row for row in view["steps"] if row["key"] == step]
    held = row["begun"] if kind == "step_begun" else row["ended"]
    assert held["id"] == first["id"]


def test_folding_changes_no_event():
    day = a_day(Phone())
    before = copy.deepcopy(day)
    fold([day, day], 170)
    assert day == before


@pytest.mark.parametrize("kind", sorted(KINDS))
def test_every_kind_is_drawn_from_the_table(kind):
    # A field added to the table is drawn from that day on, or this says so.
    @settings(max_examples=5)
    @given(bodies(kind))
    def drawn(data):
        event = {**Phone().event(kind, 1, ref=NEVER), "data": data}
        assert check_event(event) == []

    drawn()


@FEW
@given(logs(), NOWS, st.randoms(use_true_random=False), st.data())
def test_the_phone_shows_the_same_as_the_server(ask_phone, log, now_min, chance, data):
    shuffled = list(log)
    chance.shuffle(shuffled)
    cut = data.draw(st.integers(0, len(log)))
    pieces = [shuffled[:cut], shuffled[cut:], shuffled[: cut + 1]]
    on_phone = fold_on(ask_phone, pieces, now_min)
    assert alike(on_phone, fold([log], now_min))


@FEW
@given(logs(), NOWS, st.integers(-10_000_000, 10_000_000))
def test_on_the_phone_a_corrected_clock_and_whole_numbers_change_nothing(
    ask_phone, log, now_min, off_ms
):
    wrong = whole_as_ints([skewed(event, off_ms) for event in log])
    shown = without_clocks(fold_on(ask_phone, [wrong], now_min))
    assert alike(shown, without_clocks(fold([log], now_min)))


def alike(one, other):
    """Tell whether two answers are equal but for the last digit of a number."""
    if isinstance(one, dict) and isinstance(other, dict):
        return sorted(one) == sorted(other) and all(
            alike(one[name], other[name]) for name in one
        )
    if isinstance(one, list) and isinstance(other, list):
        return len(one) == len(other) and all(map(alike, one, other))
    if isinstance(one, float) or isinstance(other, float):
        return one == pytest.approx(other, rel=1e-12, abs=1e-12)
    return one == other
