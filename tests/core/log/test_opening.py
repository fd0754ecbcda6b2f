"""How a make or a tank begins and ends."""

import pytest

from tests.core.builders import Phone


def asked(ask, events, *names):
    calls = [("log.opening", name) for name in names]
    return ask.state(events, *calls)


def test_of_two_openings_the_earlier_holds_whichever_comes_first(ask):
    first, second = Phone().opened(name="First"), Phone(1).opened(name="Second")
    second["at_ms"] += 1
    for arrival in ([first, second], [second, first]):
        (opened,) = asked(ask, arrival, "opening")
        assert opened["data"]["name"] == "First"


def test_a_tank_is_opened_and_is_no_make(ask):
    tank = Phone().event("tank_opened", 0, name="One", mass_kg=500.0, salt_frac=0.2)
    names = ("opening", "recipe_of", "is_opened", "tank_opening")
    opening, recipe, is_opened, opened = asked(ask, [tank], *names)
    assert (opening, recipe, is_opened) == (None, None, True)
    assert opened["data"]["name"] == "One"


def test_before_its_opening_nothing_is_known_of_a_make(ask):
    begun = Phone().event("step_begun", 1, step="heat")
    names = ("opening", "recipe_of", "is_opened", "is_over")
    assert asked(ask, [begun], *names) == [None, None, False, False]


@pytest.mark.parametrize(
    ("kinds", "by"),
    [
        (["make_closed"], "make_closed"),
        (["make_closed", "make_abandoned"], "make_abandoned"),
        (["make_abandoned", "make_closed"], "make_abandoned"),
    ],
)
def test_a_make_that_one_closed_and_another_abandoned_was_abandoned(ask, kinds, by):
    phone = Phone()
    events = [phone.opened()]
    events += [
        phone.event(kind, 5 + n, why="So it is.") for n, kind in enumerate(kinds)
    ]
    ended, is_over = asked(ask, events, "ending", "is_over")
    assert is_over is True
    assert ended["id"] == next(row["id"] for row in events if row["kind"] == by)


def test_a_struck_closing_leaves_the_make_open(ask):
    phone = Phone()
    closed = phone.event("make_closed", 5, why="All done.")
    struck = phone.event("entry_struck", 6, closed["id"], why="Another make.")
    assert asked(ask, [phone.opened(), closed, struck], "is_over") == [False]
