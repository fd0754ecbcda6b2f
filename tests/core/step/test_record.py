"""The batch record: nothing that was entered is lost from sight."""

import pytest

from tests.core.builders import MAKE, Phone, a_day, at
from tests.core.log.test_run import NEVER, corrected, struck


def lines(ask, events):
    return ask.desk(("take", events), ("record", MAKE))[1]


def kinds(ask, events):
    return [line["kind"] for line in lines(ask, events)]


def test_a_day_is_told_oldest_first(ask):
    day = a_day(Phone())
    found = lines(ask, day[::-1])
    assert [line["id"] for line in found] == [event["id"] for event in day]


def test_a_make_not_known_has_no_record(ask):
    assert ask.desk(("record", NEVER)) == [[]]


def test_a_plain_line_is_as_it_was_entered(ask):
    event = Phone().reading("milk_temp_c", 31.5, 5, "heat")
    assert lines(ask, [event]) == [
        {
            "id": event["id"],
            "kind": "reading_taken",
            "at_ms": at(5),
            "entered_ms": at(5),
            "by": "ida",
            "device": event["device"],
            "step": "heat",
            "data": {"quantity": "milk_temp_c", "value": 31.5, "step": "heat"},
            "original": None,
            "corrections": [],
            "struck": None,
            "late_entry_s": None,
            "clock_off_s": None,
            "leads_nowhere": None,
            "later_of": None,
            "same": None,
            "proved": None,
        }
    ]


def test_a_correction_shows_both_values_who_when_and_why(ask):
    phone, other = Phone(), Phone(1, person="bo")
    reading = phone.reading("milk_temp_c", 13.5, 5)
    mend = corrected(other, reading["id"], 50, value=31.5, at_ms=at(6))
    (line,) = lines(ask, [reading, mend])
    assert line["at_ms"] == at(6)
    assert line["data"] == {"quantity": "milk_temp_c", "value": 31.5}
    assert line["original"] == {
        "at_ms": at(5),
        "data": {"quantity": "milk_temp_c", "value": 13.5},
    }
    assert line["corrections"] == [
        {
            "id": mend["id"],
            "set": {"value": 31.5, "at_ms": at(6)},
            "before": {"value": 13.5, "at_ms": at(5)},
            "why": "Misread.",
            "by": "bo",
            "at_ms": at(50),
        }
    ]


def test_each_correction_shows_the_value_before_it(ask):
    phone = Phone()
    reading = phone.reading("milk_temp_c", 13.5, 5)
    events = [
        reading,
        corrected(phone, reading["id"], 50, value=30.0),
        corrected(phone, reading["id"], 60, value=31.5),
    ]
    (line,) = lines(ask, events[::-1])
    befores = [row["before"]["value"] for row in line["corrections"]]
    assert befores == [13.5, 30.0]
    assert line["data"]["value"] == 31.5


def test_a_correction_without_effect_is_shown_and_changes_nothing(ask):
    phone = Phone()
    reading = phone.reading("milk_temp_c", 31.5, 5)
    (line,) = lines(ask, [reading, corrected(phone, reading["id"], value=500.0)])
    assert line["data"]["value"] == 31.5
    assert line["corrections"][0]["set"] == {"value": 500.0}


def test_a_corrected_opening_shows_the_milk_that_counts(ask):
    # Seen: the record went on showing the milk as first entered.
    phone = Phone()
    opened = phone.opened()
    (line,) = lines(ask, [opened, corrected(phone, opened["id"], milk_l=600.0)])
    assert line["data"]["milk_l"] == 600.0
    assert line["original"]["data"]["milk_l"] == 500.0
    # The frozen recipe is named, not printed.
    assert line["data"]["recipe_id"] == "small-wheel"
    assert line["data"]["recipe_version"] == 1
    assert "recipe" not in line["data"]
    assert "recipe" not in line["original"]["data"]


def test_a_struck_line_stays_with_who_when_and_why(ask):
    phone = Phone()
    reading = phone.reading("milk_temp_c", 13.5, 5)
    strike = struck(phone, reading["id"])
    (line,) = lines(ask, [strike, reading])
    assert line["data"]["value"] == 13.5
    assert line["struck"] == {
        "id": strike["id"],
        "why": "Wrong vat.",
        "by": "ida",
        "at_ms": at(50),
    }


def test_a_struck_correction_is_a_line_of_its_own(ask):
    # Seen: a correction that was undone could not be found in the record.
    phone = Phone()
    reading = phone.reading("milk_temp_c", 31.5, 5)
    wrong = corrected(phone, reading["id"], 50, value=13.5)
    undo = struck(phone, wrong["id"], 51)
    first, second = lines(ask, [reading, wrong, undo])
    assert (first["data"]["value"], first["corrections"]) == (31.5, [])
    assert second["kind"] == "entry_corrected"
    assert second["data"]["set"] == {"value": 13.5}
    assert second["struck"]["id"] == undo["id"]


def test_an_undone_strike_is_a_line_of_its_own(ask):
    phone = Phone()
    reading = phone.reading("milk_temp_c", 31.5, 5)
    strike = struck(phone, reading["id"], 50)
    undo = struck(phone, strike["id"], 51, why="It was right.")
    first, second = lines(ask, [reading, strike, undo])
    assert first["struck"] is None
    assert (second["kind"], second["struck"]["id"]) == ("entry_struck", undo["id"])


def test_a_second_strike_of_the_same_entry_is_a_line_of_its_own(ask):
    phone, other = Phone(), Phone(1, person="bo")
    reading = phone.reading("milk_temp_c", 31.5, 5)
    events = [
        reading,
        struck(phone, reading["id"], 50),
        struck(other, reading["id"], 51),
    ]
    first, second = lines(ask, events)
    assert (first["struck"]["by"], second["by"]) == ("ida", "bo")


def test_a_correction_of_a_correction_is_a_line_of_its_own(ask):
    phone = Phone()
    reading = phone.reading("milk_temp_c", 31.5, 5)
    mend = corrected(phone, reading["id"], 50, value=30.0)
    odd = corrected(phone, mend["id"], 51, why="Better words.")
    assert kinds(ask, [reading, mend, odd]) == ["reading_taken", "entry_corrected"]


@pytest.mark.parametrize("about", [struck, corrected])
def test_a_word_on_an_entry_not_known_here_is_a_line_of_its_own(ask, about):
    event = about(Phone(), NEVER)
    assert [line["id"] for line in lines(ask, [event])] == [event["id"]]


def test_an_entry_made_over_two_minutes_later_says_so(ask):
    phone = Phone()
    prompt, late = phone.reading("ph", 6.5, 5), phone.reading("ph", 6.4, 10)
    prompt["entered_ms"] += 120_000
    late["entered_ms"] += 120_001
    found = lines(ask, [prompt, late])
    assert [line["late_entry_s"] for line in found] == [None, 120.001]


@pytest.mark.parametrize(
    ("off_ms", "shown_s"),
    [(120_000, None), (-120_000, None), (120_001, 120.001), (-3_600_000, -3600.0)],
)
def test_a_clock_over_two_minutes_wrong_is_shown_beside_the_entry(ask, off_ms, shown_s):
    (line,) = lines(ask, [Phone(clock_off_ms=off_ms).reading("ph", 6.5, 5)])
    assert line["clock_off_s"] == shown_s
    assert (line["at_ms"], line["entered_ms"]) == (at(5), at(5))


def test_the_newest_lines_alone_are_still_oldest_first(ask):
    day = a_day(Phone())
    found = ask.one(day, "step.record", "lines", 3)
    assert [line["id"] for line in found] == [event["id"] for event in day[-3:]]


def test_a_second_begin_names_the_first_and_the_word_on_it(ask):
    phone, other = Phone(), Phone(1, person="bo")
    first = phone.event("step_begun", 5, step="heat")
    later = other.event("step_begun", 6, step="heat")
    again = phone.event("step_begun", 7, step="heat")  # the same phone: no double
    word = phone.event("duplicate_judged", 8, ref=later["id"], same=True)
    found = lines(ask, [later, first, again])
    assert [line["later_of"] for line in found] == [None, first["id"], None]
    found = lines(ask, [later, first, word])
    assert [line["same"] for line in found] == [None, True, None]
    # Who judged it, and when, stands in the record too.
    assert (found[2]["kind"], found[2]["by"]) == ("duplicate_judged", "ida")
