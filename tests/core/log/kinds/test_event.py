"""The check of an event as a whole, and how large it may be."""

import copy

import pytest

from server.core.log.kinds.event import check_event
from server.core.log.kinds.table import KINDS
from tests.core.builders import Phone, a_day, recipe
from tests.core.log.kinds.checking import a_note, problem


def test_every_event_of_a_whole_day_is_sound(core):
    for event in a_day(Phone()):
        assert core("log.kinds.event", "check_event", event) == []


def test_all_that_is_wrong_is_told_at_once(core):
    event = {**a_note(), "seq": 0, "person": "", "data": {"text": "", "colour": "red"}}
    assert core("log.kinds.event", "check_event", event) == [
        problem("person", "missing", 64),
        problem("seq", "below", 1),
        problem("text", "missing", 1),
        problem("colour", "unknown_field"),
    ]


def test_a_check_changes_nothing(core):
    event = Phone().opened()
    before = copy.deepcopy(event)
    check_event(event)
    assert event == before


def nested(deep):
    value = 1
    for _ in range(deep):
        value = [value]
    return value


@pytest.mark.parametrize(
    ("data", "expected"),
    [
        ({"set": {"text": "w" * 20000}}, problem("event", "too_large", 16384)),
        ({"set": {"value": "é" * 9000}}, problem("event", "too_large", 16384)),
        ({"set": {"value": nested(25)}}, problem("event", "too_deep", 20)),
        (
            {"set": {str(n): 1 for n in range(21)}},
            problem("set", "too_many", 20),
        ),
        ({"set": {"k" * 61: 1}}, problem("set", "too_long", 60)),
    ],
)
def test_a_correction_has_a_limit_in_every_direction(core, data, expected):
    phone = Phone()
    ref = phone.opened()["id"]
    event = phone.event("entry_corrected", 5, ref=ref, why="mistyped", **data)
    assert core("log.kinds.event", "check_event", event) == [expected]


def test_no_kind_takes_more_than_every_phone_can_keep(core):
    for kind in KINDS:
        event = Phone().event(kind, 5, junk=["j" * 100] * 4000)
        told = core("log.kinds.event", "check_event", event)
        assert told == [problem("event", "too_large", 16384)], kind


def test_what_stands_beside_the_envelope_counts_too(core):
    event = {**Phone().event("note_added", 5, text="ok"), "beside": "b" * 17000}
    told = core("log.kinds.event", "check_event", event)
    assert told == [problem("event", "too_large", 16384)]


def test_the_longest_note_in_the_widest_letters_fits(core):
    event = Phone().event("note_added", 5, text="\U0001f9c0" * 2000)
    assert core("log.kinds.event", "check_event", event) == []


def test_a_recipe_as_deep_as_nobody_writes_it_is_refused(core):
    deep = {**recipe(), "remarks": nested(25)}
    told = core("log.kinds.event", "check_event", Phone().opened(recipe=deep))
    assert told == [problem("recipe", "too_deep", 20)]
