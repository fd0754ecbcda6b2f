"""Targets, readings wanted, doses, wheels, and who has a step in hand."""

import pytest

from tests.core.builders import Phone, at, figure, recipe, step
from tests.core.step.test_steps import one_step, with_steps


def running(ask, events, at_min):
    return ask.step(events, "work", at_min)


@pytest.mark.parametrize(
    ("value", "low", "high", "word"),
    [
        # The ends belong to the band.
        (62.9, 63.0, 66.0, "below"),
        (63.0, 63.0, 66.0, "in_band"),
        (66.0, 63.0, 66.0, "in_band"),
        (66.1, 63.0, 66.0, "above"),
        (-5.0, None, 66.0, "in_band"),
        (99.0, 63.0, None, "in_band"),
        (99, None, None, "in_band"),
    ],
)
def test_a_value_is_judged_against_its_band(core, value, low, high, word):
    assert core("step.parts.step_parts", "verdict", value, low, high) == word


def test_a_target_shows_its_band_and_the_last_reading_against_it(ask):
    target = {"quantity": "ph", "figure": figure(6.5, "pH", 6.4, 6.6)}
    phone = Phone()
    events = one_step(phone, targets=[target])
    (before,) = running(ask, events, 1)["targets"]
    assert before == {
        "quantity": "ph",
        "size": None,
        "value": 6.5,
        "low": 6.4,
        "high": 6.6,
        "range_of": "recipe",
        "unit": "pH",
        "source": "OURS",
        "status": "derived",
        "origin": None,
        "last": None,
    }
    events += [
        phone.reading("ph", 6.5, 2, "work"),
        phone.reading("ph", 6.39, 3, "work"),
    ]
    (after,) = running(ask, events, 4)["targets"]
    assert after["last"] == {
        "id": events[-1]["id"],
        "value": 6.39,
        "at_ms": at(3),
        "verdict": "below",
        "since": {"id": events[-1]["id"], "at_ms": at(3)},
    }


def test_a_target_per_litre_follows_the_milk(ask):
    target = {"quantity": "whey_drained_l", "figure": figure(0.3, "L/L", 0.25, None)}
    phone = Phone()
    events = one_step(phone, targets=[target])
    # 0.3 and 0.25 of the 500 L planned, then of the 480 L metered.
    (found,) = running(ask, events, 1)["targets"]
    assert (found["value"], found["low"], found["high"]) == (150.0, 125.0, None)
    assert found["unit"] == "L"
    events.append(phone.reading("milk_volume_l", 480.0, 2))
    (found,) = running(ask, events, 3)["targets"]
    assert found["value"] == pytest.approx(144.0, rel=1e-12)


def test_the_metered_milk_is_judged_against_what_was_planned(ask):
    target = {"quantity": "milk_volume_l", "figure": figure(1.0, "L/L", 0.97, 1.03)}
    phone = Phone()
    events = one_step(phone, targets=[target])
    events.append(phone.reading("milk_volume_l", 480.0, 2, "work"))
    (found,) = running(ask, events, 3)["targets"]
    # 97 % of 500 L are 485 L.
    assert (found["value"], found["low"]) == (500.0, 485.0)
    assert found["last"]["verdict"] == "below"


def reading(ask, events, at_min, place=0):
    return running(ask, events, at_min)["readings"][place]


def wanted(when, every_s=None, quantity="ph", required=True):
    row = {"quantity": quantity, "when": when, "required": required}
    return {**row, "every_s": every_s} if every_s else row


def test_a_reading_at_the_begin_is_due_at_once_until_it_is_taken(ask):
    phone = Phone()
    events = one_step(phone, readings=[wanted("begin")])
    found = reading(ask, events, 2)
    assert (found["due_ms"], found["overdue_s"], found["count"]) == (at(0), 120.0, 0)
    events.append(phone.reading("ph", 6.5, 2, "work"))
    found = reading(ask, events, 3)
    assert (found["due_ms"], found["overdue_s"], found["count"]) == (None, 0.0, 1)
    assert found["last"] == {"id": events[-1]["id"], "value": 6.5, "at_ms": at(2)}


def test_a_reading_by_the_clock_is_due_after_the_last_one(ask):
    phone = Phone()
    events = one_step(phone, readings=[wanted("during", 600)])
    assert reading(ask, events, 1)["due_ms"] == at(10)
    events.append(phone.reading("ph", 6.5, 12, "work"))
    found = reading(ask, events, 23)
    assert (found["due_ms"], found["overdue_s"]) == (at(22), 60.0)


def test_a_reading_at_some_time_is_never_due(ask):
    assert (
        reading(ask, one_step(Phone(), readings=[wanted("during")]), 9)["due_ms"]
        is None
    )


def test_a_timed_step_wants_its_last_reading_at_its_end(ask):
    phone = Phone()
    rows = [wanted("begin"), wanted("end")]
    lasts = figure(1800, "s", 1500, 2100)
    events = one_step(phone, readings=rows, lasts=lasts, end={"by": "time"})
    events.append(phone.reading("ph", 6.5, 1, "work"))
    # It may end from 25 min, and is asked for its reading then; it should end,
    # and the reading is due, at 30. Seen: at 26 min it was called overdue.
    found = reading(ask, events, 26, 1)
    assert (found["due_ms"], found["overdue_s"], found["count"]) == (at(30), 0.0, 0)
    assert running(ask, events, 24.9)["button"]["act"] == "none"
    assert running(ask, events, 25)["button"] == {"act": "reading", "arg": "ph"}
    assert reading(ask, events, 31, 1)["overdue_s"] == 60.0
    # One taken up to two minutes before counts.
    events.append(phone.reading("ph", 6.4, 23, "work"))
    assert reading(ask, events, 26, 1)["count"] == 1
    assert reading(ask, events, 26, 0)["count"] == 2


def test_the_reading_that_reaches_the_end_is_the_one_at_the_end(ask):
    phone = Phone()
    end = {"by": "reading", "quantity": "ph", "at_most": figure(6.4, "pH")}
    events = one_step(phone, readings=[wanted("end")], end=end)
    events.append(phone.reading("ph", 6.5, 5, "work"))
    found = reading(ask, events, 6)
    # Nobody knows beforehand when it will be reached.
    assert (found["due_ms"], found["count"]) == (None, 0)
    events.append(phone.reading("ph", 6.4, 10, "work"))
    found = reading(ask, events, 11)
    assert (found["due_ms"], found["count"]) == (None, 1)


def test_another_quantity_is_due_once_the_end_is_reached(ask):
    phone = Phone()
    end = {"by": "reading", "quantity": "ph", "at_most": figure(6.4, "pH")}
    rows = [wanted("end", quantity="curd_temp_c")]
    events = one_step(phone, readings=rows, end=end)
    events.append(phone.reading("ph", 6.4, 10, "work"))
    events.append(phone.reading("ph", 6.3, 12, "work"))
    # Since the first of the readings in a row that reach it.
    found = reading(ask, events, 13)
    assert (found["due_ms"], found["overdue_s"]) == (at(10), 180.0)


def test_where_a_person_ends_the_first_reading_is_that_of_the_begin(ask):
    phone = Phone()
    rows = [wanted("begin"), wanted("end")]
    events = one_step(phone, readings=rows, lasts=figure(600, "s"))
    events.append(phone.reading("ph", 6.5, 1, "work"))
    found = reading(ask, events, 2, 1)
    assert (found["due_ms"], found["count"]) == (at(10), 0)
    events.append(phone.reading("ph", 6.4, 2, "work"))
    assert reading(ask, events, 3, 1)["count"] == 1


def test_where_a_person_ends_and_only_then_is_read_any_reading_counts(ask):
    phone = Phone()
    events = one_step(
        phone, readings=[wanted("end"), wanted("begin", quantity="room_temp_c")]
    )
    events.append(phone.reading("ph", 6.5, 1, "work"))
    assert reading(ask, events, 2)["count"] == 1


@pytest.mark.parametrize("now_min", [21, 26, 40])
def test_what_an_ended_step_lacks_does_not_change_with_the_clock(ask, now_min):
    # Seen: ended early, its reading at the end was missed until the clock
    # passed the end it would have had.
    phone = Phone()
    lasts = figure(1800, "s", 1500, 2100)
    events = one_step(phone, readings=[wanted("end")], lasts=lasts, end={"by": "time"})
    events += [
        phone.reading("ph", 6.5, 19, "work"),
        phone.event("step_ended", 20, step="work", why="Acid is fast."),
    ]
    assert reading(ask, events, now_min)["count"] == 1


def test_a_step_judged_and_ended_unjudged_came_to_its_end_then(ask):
    phone = Phone()
    events = one_step(
        phone, readings=[wanted("end")], end={"by": "judged", "judgement": ["even"]}
    )
    events += [
        phone.reading("ph", 6.5, 19, "work"),
        phone.event("step_ended", 20, step="work", why="In a hurry."),
    ]
    assert reading(ask, events, 30)["count"] == 1


def dose(ask, events, at_min=20, **rest):
    return ask.step(events, "rennet", at_min, **rest)["adds"][0]


def add(phone, at_min, amount, unit="mL", **rest):
    data = {"ingredient": "rennet", "amount": amount, "unit": unit, "step": "rennet"}
    return phone.event("ingredient_added", at_min, **{**data, **rest})


@pytest.fixture
def weighed():
    """A make of 500 kg of milk: 100 mL of rennet, 95 to 105 mL."""
    phone = Phone()
    events = [
        phone.opened(),
        phone.reading("milk_mass_kg", 500.0, 1, "receive"),
        phone.event("step_begun", 10, step="rennet"),
    ]
    return phone, events


def test_a_dose_is_planned_from_the_milk(ask, weighed):
    found = dose(ask, weighed[1])
    # 500 kg x 0.2 mL/kg, 5 % each way.
    planned = found["planned"]
    assert planned["value"] == pytest.approx(100.0, rel=1e-12)
    assert (planned["low"], planned["high"]) == (
        pytest.approx(95.0),
        pytest.approx(105.0),
    )
    assert (found["added"], found["total"], found["done"]) == ([], 0, False)
    assert (found["title"], found["optional"]) == ({"en": "Rennet"}, False)


@pytest.mark.parametrize(
    ("amount", "word"),
    [(94.9, "below"), (96, "in_band"), (104, "in_band"), (105.1, "above")],
)
def test_what_was_added_is_judged_against_the_plan(ask, weighed, amount, word):
    phone, events = weighed
    found = dose(ask, [*events, add(phone, 11, amount, lot="R7")])
    (row,) = found["added"]
    assert (row["amount"], row["unit"], row["lot"], row["by"]) == (
        amount,
        "mL",
        "R7",
        "ida",
    )
    assert (row["verdict"], found["done"]) == (word, True)


def test_parts_of_a_dose_are_judged_together(ask, weighed):
    phone, events = weighed
    found = dose(ask, [*events, add(phone, 11, 60.0), add(phone, 12, 40.0)])
    assert found["total"] == 100.0
    assert [row["verdict"] for row in found["added"]] == ["in_band", "in_band"]


def test_a_dose_from_two_phones_counts_once_when_it_was_the_same(ask, weighed):
    phone, events = weighed
    other = Phone(1)
    events = [*events, add(phone, 11, 100.0), add(other, 12, 100.0)]
    assert dose(ask, events)["added"][0]["verdict"] == "above"  # 200 mL
    same = phone.event("duplicate_judged", 13, ref=events[-1]["id"], same=True)
    found = dose(ask, [*events, same])
    assert (found["total"], found["added"][0]["verdict"]) == (100.0, "in_band")
    assert len(found["added"]) == 2  # both stay in sight
    twice = phone.event("duplicate_judged", 14, ref=events[-1]["id"], same=False)
    assert dose(ask, [*events, same, twice])["total"] == 200.0


def test_an_amount_in_another_unit_is_not_judged(ask, weighed):
    # Seen: 0.1 L was called too little, as 0 mL.
    phone, events = weighed
    found = dose(ask, [*events, add(phone, 11, 0.1, "L")])
    assert (found["total"], found["done"]) == (0, True)
    assert found["added"][0]["verdict"] == "no_plan"


def test_without_a_tolerance_nothing_is_judged(ask):
    made = recipe()
    del made["ingredients"][0]["tolerance_frac"]
    phone = Phone()
    events = [phone.opened(recipe=made), add(phone, 11, 5.0)]
    assert dose(ask, events)["added"][0]["verdict"] == "no_plan"


def test_an_optional_ingredient_left_out_is_done_when_its_step_is(ask):
    made = recipe()
    made["ingredients"][0]["optional"] = True
    phone = Phone()
    events = [phone.opened(recipe=made), phone.event("step_begun", 10, step="rennet")]
    assert dose(ask, events)["done"] is False
    assert ask.step(events, "rennet", 20)["button"]["act"] == "end"
    events.append(phone.event("step_ended", 12, step="rennet"))
    assert dose(ask, events)["done"] is True


def test_wheels_are_counted_by_size(ask):
    phone = Phone()
    events = [
        phone.opened(),
        phone.event("wheels_moulded", 5, size="small", count=10),
        phone.event("wheels_moulded", 6, size="small", count=8),
        phone.event("wheels_moulded", 6, size="huge", count=1),  # not of the recipe
    ]
    assert ask.view(events, 7)["make"]["moulds"] == [
        {
            "size": "small",
            "title": {"en": "Small"},
            "planned": 30,
            "suggested": 30,
            "moulded": 18,
        }
    ]


@pytest.mark.parametrize("moulds", [None, []])
def test_without_a_plan_wheels_are_counted_all_the_same(ask, moulds):
    phone = Phone()
    events = [
        phone.opened(moulds=moulds),
        phone.event("wheels_moulded", 5, size="small", count=10),
    ]
    (row,) = ask.view(events, 7)["make"]["moulds"]
    assert (row["planned"], row["moulded"]) == (None, 10)
    # Nothing planned, nothing to press for.
    begun = phone.event("step_begun", 6, step="fill")
    assert ask.step([*events, begun], "fill", 7)["button"]["act"] == "end"


def test_a_recipe_without_wheels_shows_none(ask):
    made = with_steps(step("work"))
    del made["moulds"]
    assert ask.view([Phone().opened(recipe=made)], 1)["make"]["moulds"] == []


def test_a_view_tells_the_make_s_sizes_and_the_step_s_own(ask):
    phone = Phone()
    events = one_step(phone, size="small")
    assert ask.view(events, 1)["make"]["sizes"] == ["small"]
    assert running(ask, events, 1)["size"] == "small"
    assert running(ask, one_step(Phone()), 1)["size"] is None
