"""Corrections and strikes: what counts of an entry in the end."""

import itertools

import pytest

from tests.core.builders import MAKE, Phone, at
from tests.core.log.test_run import NEVER, corrected, struck, values


def test_a_correction_counts_wherever_it_arrives(ask):
    phone = Phone()
    reading = phone.reading("milk_temp_c", 13.5, 5)
    events = [reading, corrected(phone, reading["id"], value=31.5)]
    assert values(ask, events) == [31.5]
    assert values(ask, events[::-1]) == [31.5]


def test_of_two_corrections_the_later_counts(ask):
    phone = Phone()
    reading = phone.reading("milk_temp_c", 13.5, 5)
    events = [
        reading,
        corrected(phone, reading["id"], 50, value=30.0),
        corrected(phone, reading["id"], 60, value=31.5),
    ]
    for arrival in itertools.permutations(events):
        assert values(ask, list(arrival)) == [31.5]


def test_a_struck_correction_leaves_the_entry_as_it_was(ask):
    phone = Phone()
    reading = phone.reading("milk_temp_c", 31.5, 5)
    wrong = corrected(phone, reading["id"], value=13.5)
    events = [reading, wrong, struck(phone, wrong["id"])]
    for arrival in itertools.permutations(events):
        assert values(ask, list(arrival)) == [31.5]


def test_a_strike_takes_out_and_a_strike_of_it_brings_back(ask):
    phone = Phone()
    reading = phone.reading("milk_temp_c", 31.5, 5)
    first = struck(phone, reading["id"])
    second = struck(phone, first["id"], why="It was right.")
    third = struck(phone, second["id"], why="No, wrong.")
    for arrival in itertools.permutations([reading, first]):
        assert values(ask, list(arrival)) == []
    for arrival in itertools.permutations([reading, first, second]):
        assert values(ask, list(arrival)) == [31.5]
    for arrival in itertools.permutations([reading, first, second, third]):
        assert values(ask, list(arrival)) == []


def test_two_strikes_need_both_to_be_struck(ask):
    phone, other = Phone(), Phone(1)
    reading = phone.reading("milk_temp_c", 31.5, 5)
    here, there = struck(phone, reading["id"]), struck(other, reading["id"])
    back = struck(phone, here["id"], 60)
    assert values(ask, [reading, here, there, back]) == []
    again = struck(phone, there["id"], 61)
    assert values(ask, [reading, here, there, back, again]) == [31.5]


def test_strikes_that_strike_each_other_end(ask):
    phone, other = Phone(), Phone(1)
    here, there = struck(phone, NEVER), struck(other, NEVER)
    here["ref"], there["ref"] = there["id"], here["id"]
    for arrival in ([here, there], [there, here]):
        answers = [
            ask.one(arrival, "log.amends", "is_struck", event["id"])
            for event in (here, there)
        ]
        assert answers == [False, False]


def test_a_strike_of_itself_ends(ask):
    event = struck(Phone(), NEVER)
    event["ref"] = event["id"]
    assert ask.one([event], "log.amends", "is_struck", event["id"]) is False


@pytest.mark.parametrize("length", range(1, 13))
def test_a_long_chain_of_strikes_is_the_same_in_any_order(ask, length):
    phone = Phone()
    chain = [phone.reading("milk_temp_c", 31.5, 5)]
    for _ in range(length):
        chain.append(struck(phone, chain[-1]["id"]))
    forwards = values(ask, chain)
    assert values(ask, chain[::-1]) == forwards
    assert values(ask, chain[1::2] + chain[::2]) == forwards
    if length <= 8:  # as deep as strikes are looked at
        assert forwards == ([] if length % 2 else [31.5])


def test_corrections_and_strikes_of_what_never_comes_do_no_harm(ask):
    phone = Phone()
    events = [
        phone.reading("milk_temp_c", 31.5, 5),
        corrected(phone, NEVER, value=1.0),
        struck(phone, NEVER),
    ]
    assert values(ask, events) == [31.5]


def test_a_corrected_instant_moves_the_entry(ask):
    phone = Phone()
    first = phone.reading("milk_temp_c", 30.0, 5)
    second = phone.reading("milk_temp_c", 31.0, 10)
    moved = corrected(phone, first["id"], at_ms=at(15))
    assert values(ask, [first, second]) == [30.0, 31.0]
    assert values(ask, [first, second, moved]) == [31.0, 30.0]


def test_a_corrected_value_no_longer_claims_to_be_as_typed(ask):
    phone = Phone()
    reading = phone.event(
        "reading_taken",
        5,
        quantity="milk_temp_c",
        value=100.0,
        typed="212",
        typed_unit="F",
    )
    events = [reading, corrected(phone, reading["id"], value=99.0)]
    (entry,) = ask.one(events, "log.run", "entries", "reading_taken", "milk_temp_c")
    assert entry["data"] == {"quantity": "milk_temp_c", "value": 99.0}
    retyped = corrected(phone, reading["id"], value=99.0, typed="99", typed_unit="C")
    (entry,) = ask.one(
        [reading, retyped], "log.run", "entries", "reading_taken", "milk_temp_c"
    )
    assert (entry["data"]["typed"], entry["data"]["typed_unit"]) == ("99", "C")


def test_a_corrected_size_moves_the_wheels_to_that_size(ask):
    # Seen: wheels entered under the wrong size stayed counted under it for
    # ever, though the record showed the correction.
    phone = Phone()
    wheels = phone.event("wheels_moulded", 5, size="small", count=28)
    mend = corrected(phone, wheels["id"], size="large")
    for arrival in ([wheels, mend], [mend, wheels]):
        small = ask.one(arrival, "log.run", "entries", "wheels_moulded", "small")
        (large,) = ask.one(arrival, "log.run", "entries", "wheels_moulded", "large")
        assert small == []
        assert large["data"]["count"] == 28
    back = struck(phone, mend["id"])
    (small,) = ask.one(
        [wheels, mend, back], "log.run", "entries", "wheels_moulded", "small"
    )
    assert small["data"] == {"size": "small", "count": 28}


@pytest.mark.parametrize(
    ("changes", "field", "key", "limit"),
    [
        ({}, "set", "missing", None),
        ({"value": 200.0}, "value", "above", 110.0),
        ({"value": "hot"}, "value", "not_a_number", None),
        ({"value": None}, "value", "missing", None),
        ({"quantity": "curd_temp_c"}, "quantity", "not_correctable", None),
        ({"step": "heat"}, "step", "not_correctable", None),
        ({"colour": "red"}, "colour", "unknown_field", None),
        ({"at_ms": 5}, "at_ms", "below", 946684800000),
        ({"at_ms": "noon"}, "at_ms", "not_a_number", None),
        ({"value": 30.0, "typed": 5}, "typed", "not_text", None),
    ],
)
def test_a_correction_that_cannot_be_has_no_effect(ask, changes, field, key, limit):
    phone = Phone()
    reading = phone.reading("milk_temp_c", 31.5, 5)
    problems, before = ask.desk(
        ("take", [reading]),
        ("check_correction", MAKE, reading["id"], changes),
        ("desk",),
    )[1:]
    assert problems == [{"field": field, "key": key, "limit": limit}]
    assert before["makes"][MAKE]["amends"] == {}
    mend = corrected(phone, reading["id"], **changes)
    (entry,) = ask.one(
        [reading, mend], "log.run", "entries", "reading_taken", "milk_temp_c"
    )
    assert entry["t_ms"] == at(5)
    assert entry["data"] == {"quantity": "milk_temp_c", "value": 31.5}


def test_a_correction_of_what_is_not_known_is_refused(ask):
    reading = Phone().reading("milk_temp_c", 31.5, 5)
    unknown = [{"field": "ref", "key": "unknown", "limit": None}]
    assert ask.desk(
        ("check_correction", MAKE, reading["id"], {"value": 30.0}),
        ("take", [reading]),
        ("check_correction", MAKE, NEVER, {"value": 30.0}),
        ("check_correction", MAKE, reading["id"], {"value": 30.0}),
    ) == [unknown, {"changed": [MAKE], "problems": []}, unknown, []]


def test_the_plan_of_a_make_can_be_corrected_but_not_its_recipe(ask):
    opened = Phone().opened()
    checks = ask.desk(
        ("take", [opened]),
        ("check_correction", MAKE, opened["id"], {"milk_l": 600.0}),
        ("check_correction", MAKE, opened["id"], {"milk_l": 0.0}),
        ("check_correction", MAKE, opened["id"], {"recipe": {}}),
    )[1:]
    assert checks == [
        [],
        [{"field": "milk_l", "key": "below", "limit": 1.0}],
        [
            {"field": "recipe", "key": "not_correctable", "limit": None},
        ],
    ]


def test_an_effective_body_is_a_new_one(ask):
    phone = Phone()
    reading = phone.reading("milk_temp_c", 13.5, 5)
    mend = corrected(phone, reading["id"], value=31.5)
    found, amends, state = ask.state(
        [reading, mend],
        ("log.amends", "effective", reading),
        ("log.amends", "standing_amends", reading["id"]),
        ("", "state"),
    )
    assert found == {
        "t_ms": at(5),
        "data": {"quantity": "milk_temp_c", "value": 31.5},
    }
    assert amends == [mend]
    # What was entered stays as it was entered.
    assert state["events"][reading["id"]] == reading
