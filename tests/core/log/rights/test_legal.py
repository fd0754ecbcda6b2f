"""A helper takes the readings that the law asks for; a maker changes them."""

import pytest

from tests.core.builders import MAKE, Phone, at

NOT_A_HELPER = [{"field": "person", "key": "not_allowed", "limit": "maker"}]
LEGAL = ("milk_temp_c", "air_space_temp_c", "indicator_temp_c", "recorder_temp_c")


def told(ask, event, role, *before):
    """Return what speaks against an event of a person in a role."""
    desk = ask.desk(("take", list(before)), ("tap", event, [role], MAKE, at(30)))
    return desk[1]["problems"]


def corrected(phone, entry, at_min=20, **to):
    change = {"set": to or {"value": 64.1}, "why": "Misread"}
    return phone.event("entry_corrected", at_min, ref=entry["id"], **change)


@pytest.mark.parametrize("quantity", LEGAL)
def test_a_helper_takes_a_legal_reading_and_only_a_maker_corrects_it(ask, quantity):
    phone = Phone()
    opened = phone.opened()
    reading = phone.reading(quantity, 64.0, 10, "hold")
    assert told(ask, reading, "helper", opened) == []
    fix = corrected(phone, reading)
    assert told(ask, fix, "helper", opened, reading) == NOT_A_HELPER
    assert told(ask, fix, "maker", opened, reading) == []


def test_a_drug_test_is_a_legal_reading_too(ask):
    phone = Phone()
    opened, reading = phone.opened(), phone.reading("drug_test", "positive", 10)
    fix = corrected(phone, reading, value="negative")
    assert told(ask, fix, "helper", opened, reading) == NOT_A_HELPER


def test_what_is_refused_changes_nothing(ask):
    phone = Phone()
    opened, reading = phone.opened(), phone.reading("milk_temp_c", 62.0, 10, "hold")
    fix = corrected(phone, reading)
    answers = ask.desk(
        ("take", [opened, reading]),
        ("record", MAKE),
        ("tap", fix, ["helper"], MAKE, at(30)),
        ("record", MAKE),
    )
    assert answers[1] == answers[3]


def test_a_helper_corrects_every_other_reading(ask):
    phone = Phone()
    opened, reading = phone.opened(), phone.reading("ph", 6.5, 10)
    assert told(ask, corrected(phone, reading, value=6.4), "helper", opened) == []
    fix = corrected(phone, reading, value=6.4)
    assert told(ask, fix, "helper", opened, reading) == []


@pytest.mark.parametrize(
    ("at_min", "problems"), [(11, []), (11.1, NOT_A_HELPER), (9.9, NOT_A_HELPER)]
)
def test_a_slip_is_taken_back_within_the_minute(ask, at_min, problems):
    phone = Phone()
    opened, reading = phone.opened(), phone.reading("milk_temp_c", 6.4, 10, "hold")
    undo = phone.event("entry_struck", at_min, ref=reading["id"], why="undo")
    assert told(ask, undo, "helper", opened, reading) == problems


@pytest.mark.parametrize("phone", [Phone(1), Phone(person="bo")])
def test_nobody_takes_back_another_s_reading(ask, phone):
    phone.seq = 50
    first = Phone()
    opened, reading = first.opened(), first.reading("milk_temp_c", 64.0, 10, "hold")
    undo = phone.event("entry_struck", 10.5, ref=reading["id"], why="undo")
    assert told(ask, undo, "helper", opened, reading) == NOT_A_HELPER


def test_a_correction_stands_for_what_it_corrects(ask):
    # Else a helper could strike what the maker has put right.
    phone = Phone()
    opened, reading = phone.opened(), phone.reading("milk_temp_c", 64.0, 10, "hold")
    fix = corrected(phone, reading)
    strike = phone.event("entry_struck", 20.5, ref=fix["id"], why="No")
    assert told(ask, strike, "helper", opened, reading, fix) == NOT_A_HELPER
    assert told(ask, strike, "maker", opened, reading, fix) == []


def test_two_changes_that_name_each_other_are_about_a_change(ask):
    phone = Phone()
    opened = phone.opened()
    first = phone.event("entry_struck", 10, why="One")
    second = phone.event("entry_struck", 11, ref=first["id"], why="Two")
    first["ref"] = second["id"]
    third = phone.event("entry_struck", 12, ref=second["id"], why="Three")
    assert told(ask, third, "helper", opened, first, second) == []


def test_what_is_not_here_yet_is_left_to_the_server(ask):
    phone = Phone()
    opened, reading = phone.opened(), phone.reading("milk_temp_c", 64.0, 10)
    assert told(ask, corrected(phone, reading), "helper", opened) == []
    assert told(ask, corrected(phone, reading), "helper") == []
