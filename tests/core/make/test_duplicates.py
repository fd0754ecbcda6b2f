"""The same act on two phones: the earliest holds, a person says what it was."""

import itertools

from tests.core.builders import Phone, at, step

STEP = step("heat")


def pair(kind="step_begun"):
    phone, other = Phone(), Phone(1, person="bo")
    first = phone.event(kind, 5, step="heat")
    later = other.event(kind, 6, step="heat")
    return phone, other, first, later


def to_judge(ask, events):
    return ask.one(events, "make.duplicates", "duplicates", STEP)


def test_a_step_begun_on_two_phones_is_asked_about_once(ask):
    for kind in ("step_begun", "step_ended"):
        _, _, first, later = pair(kind)
        for arrival in ([first, later], [later, first]):
            assert to_judge(ask, arrival) == [
                {
                    "step": "heat",
                    "kind": kind,
                    "first": {"id": first["id"], "at_ms": at(5), "by": "ida"},
                    "later": {"id": later["id"], "at_ms": at(6), "by": "bo"},
                }
            ]


def test_a_double_tap_on_one_phone_is_not_asked_about(ask):
    phone, _, first, _ = pair()
    assert to_judge(ask, [first, phone.event("step_begun", 6, step="heat")]) == []


def test_a_struck_begin_is_no_double(ask):
    phone, _, first, later = pair()
    strike = phone.event("entry_struck", 7, ref=first["id"], why="Not me.")
    assert to_judge(ask, [first, later, strike]) == []


def test_the_last_standing_word_counts(ask):
    phone, _, first, later = pair()
    same = phone.event("duplicate_judged", 7, ref=later["id"], same=True)
    twice = phone.event("duplicate_judged", 8, ref=later["id"], same=False)
    undo = phone.event("entry_struck", 9, ref=twice["id"], why="Same after all.")
    undo_too = phone.event("entry_struck", 9, ref=same["id"], why="Not sure.")
    cases = [
        ([], None),
        ([same], True),
        ([same, twice], False),
        ([same, twice, undo], True),
        ([same, twice, undo, undo_too], None),
    ]
    for words, verdict in cases:
        for arrival in itertools.permutations([first, later, *words]):
            told, asked = ask.state(
                list(arrival),
                ("make.duplicates", "verdict_on_duplicate", later["id"]),
                ("make.duplicates", "duplicates", STEP),
            )
            assert told is verdict
            assert len(asked) == (1 if verdict is None else 0)


def added(phone, at_min, amount=100.0, step="rennet"):
    return phone.event(
        "ingredient_added",
        at_min,
        ingredient="rennet",
        amount=amount,
        unit="mL",
        **({"step": step} if step else {}),
    )


def test_an_ingredient_added_on_two_phones_is_asked_about(ask):
    # Seen: a dose entered on two phones could only be judged too high, never
    # be said to be the same.
    phone, other = Phone(), Phone(1, person="bo")
    first, later = added(phone, 5), added(other, 6)
    rennet = step("rennet", adds=["rennet"])
    for arrival in ([first, later], [later, first]):
        (asked,) = ask.one(arrival, "make.duplicates", "duplicates", rennet)
        assert asked["kind"] == "ingredient_added"
        assert (asked["first"]["id"], asked["later"]["id"]) == (
            first["id"],
            later["id"],
        )
        assert ask.state(
            arrival,
            ("make.duplicates", "first_of", first),
            ("make.duplicates", "first_of", later),
        ) == [None, first["id"]]


def test_an_ingredient_is_no_double_in_another_step_or_by_the_same_phone(ask):
    phone, other = Phone(), Phone(1)
    rennet = step("rennet", adds=["rennet"])
    for later in (
        added(phone, 6),
        added(other, 6, step="set"),
        added(other, 6, step=None),
    ):
        found = ask.state(
            [added(phone, 5), later],
            ("make.duplicates", "duplicates", rennet),
            ("make.duplicates", "first_of", later),
        )
        assert found == [[], None]


def test_a_note_repeats_nothing(ask):
    note = Phone().event("note_added", 5, text="Warm.")
    assert ask.one([note], "make.duplicates", "first_of", note) is None
