"""One total order: by corrected instant, then device, its counter, then id."""

import itertools

from tests.core.builders import DEVICES, START_MS, Phone


def entry(t_ms, device=0, seq=1, name="a"):
    return {"t_ms": t_ms, "device": DEVICES[device], "seq": seq, "id": name}


# In order: an earlier instant goes first; at one instant the device decides,
# then its counter, then the id.
ORDERED = [
    entry(5, 1, 9, "z"),
    entry(6, 0, 1, "b"),
    entry(6, 0, 2, "a"),
    entry(6, 1, 1, "a"),
    entry(6, 1, 1, "b"),
]


def test_the_clock_of_the_phone_is_corrected(core):
    event = Phone(clock_off_ms=90_000).event("note_added", 2, text="x")
    # Two minutes after the start by true time: the phone says 90 s less.
    assert event["at_ms"] == START_MS + 30_000
    assert core("log.order", "corrected_ms", event) == START_MS + 120_000


def test_every_way_of_inserting_gives_the_same_order(ask):
    for arrival in itertools.permutations(ORDERED):
        kept = []
        for one in arrival:
            kept = ask.changed("log.order", "insert", kept, one)["args"][0]
        assert kept == ORDERED


def test_removing_takes_out_the_one_entry_that_is_named(ask):
    kept = ask.changed("log.order", "remove", ORDERED[:3], "b")["args"][0]
    assert kept == [ORDERED[0], ORDERED[2]]


def test_removing_what_is_not_there_changes_nothing(ask):
    assert ask.changed("log.order", "remove", ORDERED, "q")["args"][0] == ORDERED
    assert ask.changed("log.order", "remove", [], "q")["args"][0] == []
