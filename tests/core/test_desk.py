"""The desk: takes what comes, keeps what it worked out until that is stale."""

import pytest

from tests.core.builders import MAKE, Phone, a_day, at
from tests.core.creamery.test_board import OTHER


def test_a_new_desk_is_empty(ask):
    assert ask.desk(("desk",)) == [{"makes": {}, "views": {}, "last_words": {}}]


def test_what_is_sound_is_taken_beside_what_is_not(ask):
    good, bad = Phone().opened(), {**Phone(1).opened(), "seq": 0}
    other = Phone(make=OTHER).opened()
    answer = ask.desk(("take", [bad, good, "nonsense", other, good]))[0]
    assert answer == {
        "changed": [MAKE, OTHER],
        "problems": [
            {"id": bad["id"], "why": [{"field": "seq", "key": "below", "limit": 1}]},
            {
                "id": None,
                "why": [{"field": "event", "key": "not_a_mapping", "limit": None}],
            },
        ],
    }


def test_the_same_again_changes_nothing(ask):
    day = a_day(Phone())
    once, answer, twice = ask.desk(("take", day), ("desk",), ("take", day), ("desk",))[
        1:
    ]
    assert answer == {"changed": [], "problems": []}
    assert once == twice


def test_the_last_word_is_the_newest_instant_whatever_comes_last(ask):
    phone = Phone()
    opened, note = phone.opened(), phone.event("note_added", 9, text="x")
    for arrival in ([opened, note], [note, opened]):
        desk = ask.desk(("take", arrival), ("desk",))[1]
        assert desk["last_words"] == {MAKE: at(9)}


def kept_now(ask, *nows):
    """Return the now_ms of the views given at these minutes, on one desk."""
    calls = [("view", MAKE, at(minute)) for minute in nows]
    answers = ask.desk(("take", a_day(Phone())[:11]), *calls)[1:]
    return [(answer["now_ms"] - at(0)) / 60000 for answer in answers]


def test_a_view_is_kept_until_the_clock_makes_it_stale(ask):
    # In the hold, begun at 61: it changes at 91.
    assert kept_now(ask, 62, 80, 90.999, 91) == [62, 62, 62, 91]


def test_a_view_of_later_does_not_serve_for_earlier(ask):
    assert kept_now(ask, 70, 65) == [70, 65]


def test_a_view_is_kept_only_until_an_event_comes(ask):
    day = a_day(Phone())
    views = ask.desk(
        ("take", day[:11]),
        ("view", MAKE, at(62)),
        ("take", day[11:12]),
        ("view", MAKE, at(76)),
    )
    assert (views[1]["now_ms"], views[3]["now_ms"]) == (at(62), at(76))


@pytest.mark.parametrize(
    ("role", "problems"),
    [
        ("maker", []),
        ("helper", [{"field": "person", "key": "not_allowed", "limit": "maker"}]),
        ("stranger", [{"field": "person", "key": "not_allowed", "limit": "maker"}]),
    ],
)
def test_who_may_not_is_told_who_may(core, role, problems):
    assert core("desk", "check", Phone().opened(), role) == problems


@pytest.mark.parametrize("event", [None, {}, {"kind": []}, {"kind": "moon_seen"}])
def test_what_is_no_event_is_refused_for_what_it_is(core, event):
    found = core("desk", "check", event, "owner")
    assert found == core("log.kinds.event", "check_event", event)
    assert found


def test_what_is_wrong_and_who_may_not_are_both_told(core):
    event = {**Phone().opened(), "seq": 0}
    assert [row["field"] for row in core("desk", "check", event, "viewer")] == [
        "seq",
        "person",
    ]


def tap(event, *roles):
    return ("tap", event, list(roles), MAKE, at(1))


def test_a_tap_files_the_event_and_answers_with_the_view(ask):
    opened = Phone().opened()
    answer, again = ask.desk(tap(opened, "maker", "owner"), ("view", MAKE, at(1)))
    assert answer["problems"] == []
    assert answer["view"] == again
    assert again["make"]["id"] == MAKE


def test_a_tap_of_who_may_not_files_nothing(ask):
    opened = Phone().opened()
    problem = {"field": "person", "key": "not_allowed", "limit": "maker"}
    for roles in (["maker", "helper"], ["viewer", "owner"]):
        answer, kept = ask.desk(tap(opened, *roles), ("desk",))
        assert answer == {"problems": [problem], "view": None}
        assert kept["makes"] == {}


def test_a_helper_may_strike_a_reading_and_not_a_hold(ask):
    phone = Phone()
    opened, reading = phone.opened(), phone.reading("ph", 6.5, 1)
    hold = phone.event("hold_placed", 1, why="Slow.")
    taken = ("take", [opened, reading, hold])
    undo = phone.event("entry_struck", 2, ref=reading["id"], why="undo")
    lift = phone.event("entry_struck", 3, ref=hold["id"], why="undo")
    _, first, second = ask.desk(taken, tap(undo, "helper"), tap(lift, "helper"))
    assert first["problems"] == []
    assert second["problems"] == [
        {"field": "person", "key": "not_allowed", "limit": "maker"}
    ]


def test_a_tap_that_is_not_sound_files_nothing(ask):
    for event in ({**Phone().opened(), "seq": 0}, None, {"kind": []}):
        answer, kept = ask.desk(tap(event, "owner"), ("desk",))
        assert answer["view"] is None
        assert (
            answer["problems"] == ask.desk(("take", [event]))[0]["problems"][0]["why"]
        )
        assert kept["makes"] == {}


def test_the_same_tap_again_changes_nothing(ask):
    opened = Phone().opened()
    first, second = ask.desk(tap(opened, "owner"), tap(opened, "owner"))
    assert first == second
