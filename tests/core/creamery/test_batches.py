"""Codes of batches: the day and a number, each once."""

from tests.core.builders import MAKE, Phone, at
from tests.core.creamery.test_board import OTHER, THIRD

# By the builders' clock the start is 2026-09-21, 14:13 UTC.
DAY = "20260921"


def code(ask, makes, at_min=0, tz_min=0):
    return ask.desk(("take", makes), ("batch_code", at(at_min), tz_min))[1]


def opened(make, batch):
    event = Phone(make=make).opened()
    return {**event, "data": {**event["data"], "batch": batch}}


def test_the_first_make_of_a_day_has_the_number_one(ask):
    assert code(ask, []) == DAY + "-1"


def test_two_makes_of_a_day_have_two_codes(ask):
    assert code(ask, [opened(MAKE, DAY + "-1")]) == DAY + "-2"


def test_a_number_that_is_free_again_between_two_is_taken(ask):
    makes = [opened(MAKE, DAY + "-1"), opened(OTHER, DAY + "-3")]
    assert code(ask, makes) == DAY + "-2"
    assert code(ask, [*makes, opened(THIRD, DAY + "-2")]) == DAY + "-4"


def test_a_code_of_a_make_that_was_abandoned_is_not_given_again(ask):
    phone = Phone()
    first = {**phone.opened()}
    first["data"] = {**first["data"], "batch": DAY + "-1"}
    events = [first, phone.event("make_abandoned", 5, why="power failed")]
    assert code(ask, events, 6) == DAY + "-2"


def test_what_is_written_by_hand_is_in_nobodys_way(ask):
    assert code(ask, [opened(MAKE, "Monday")]) == DAY + "-1"


def test_the_day_is_the_phones_own(ask):
    assert code(ask, [], tz_min=10 * 60) == "20260922-1"
    assert code(ask, [], tz_min=-15 * 60) == "20260920-1"
