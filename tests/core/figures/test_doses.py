"""One dose: for the bottle really used, the milk really there, as it is measured."""

import uuid

import pytest

from tests.core.builders import MAKE, Phone, at
from tests.core.figures.test_figure import HOUSE, house, one

OTHERS = [str(uuid.UUID(int=number)) for number in (21, 22, 23)]


def rennet(phone, at_min, amount, unit="mL", **rest):
    data = {"ingredient": "rennet", "amount": amount, "unit": unit, "step": "rennet"}
    return phone.event("ingredient_added", at_min, **data, **rest)


def set_to(phone, at_min, key, value):
    return phone.event("equipment_set", at_min, key=key, value=value)


@pytest.mark.parametrize(
    ("label", "unit", "amount"),
    [
        # 600 L at 52.5 IMCU/L is 31,500 IMCU; 1 g of this powder has 2,100.
        ({"strength_kind": "imcu_powder", "strength_imcu_per_g": 2100.0}, "g", 15.0),
        # One tablet for 50 L.
        ({"strength_kind": "tablet", "tablet_sets_l": 50.0}, "tablet", 12.0),
        # 1:15,000 clots 15 L a millilitre in Soxhlet's own time.
        ({"strength_kind": "soxhlet", "strength_soxhlet": 15000.0}, "mL", 40.0),
    ],
)
def test_the_dose_is_told_in_what_the_bottle_is_measured_in(ask, label, unit, amount):
    told = one(ask, house(**label), "rennet", "dose/rennet")
    assert told["from"] == "sum"
    assert (told["value"], told["unit"]) == (pytest.approx(amount), unit)


@pytest.mark.parametrize(
    ("step", "name", "label"),
    [
        ("rennet", "rennet", {"strength_imcu_per_ml": 200.0}),
        ("ripen", "calcium_chloride", {"form": "dihydrate"}),
        ("starter", "starter", {"pack_units": 50.0, "dose_units_per_l": 0.1}),
    ],
)
def test_half_the_milk_takes_half_the_dose(ask, step, name, label):
    phone = Phone()
    whole = house(phone, **label)
    half = [*whole, phone.reading("milk_volume_l", 300.0, 2, "receive")]
    told = [one(ask, events, step, "dose/" + name) for events in (whole, half)]
    assert told[1]["from"] == "sum"
    # A volume read warm or cold weighs a little more or less than planned.
    assert told[1]["value"] == pytest.approx(told[0]["value"] / 2, rel=5e-3)


def test_a_pack_with_its_weight_is_told_in_grams(ask):
    label = {"pack_units": 50.0, "dose_units_per_l": 0.1}
    packs = one(ask, house(**label), "starter", "dose/starter")
    assert (packs["value"], packs["unit"]) == (pytest.approx(1.2), "pack")
    weighed = one(ask, house(pack_g=500.0, **label), "starter", "dose/starter")
    assert (weighed["value"], weighed["unit"]) == (pytest.approx(600.0), "g")


def test_another_bottle_asks_for_its_own_label(ask):
    phone = Phone()
    label = {"rennet_lot": "A 1", "strength_imcu_per_ml": 200.0}
    events = [*house(phone, **label), set_to(phone, 3, "rennet_lot", "B 7")]
    told = one(ask, events, "rennet", "dose/rennet")
    assert (told["fell_back"], told["needs"]) == ("missing", ["strength_imcu_per_ml"])
    read = [*events, set_to(phone, 4, "strength_imcu_per_ml", 400.0)]
    assert one(ask, read, "rennet", "dose/rennet")["value"] == pytest.approx(78.75)


def test_the_same_lot_written_otherwise_is_the_same_bottle(ask):
    phone = Phone()
    label = {"rennet_lot": "A 1", "strength_imcu_per_ml": 200.0}
    events = [*house(phone, **label), set_to(phone, 3, "rennet_lot", "a1")]
    assert one(ask, events, "rennet", "dose/rennet")["value"] == pytest.approx(157.5)


def test_the_dose_goes_by_the_bottle_that_its_entry_names(ask):
    # Poured from lot B although the label entered was of lot A.
    phone = Phone()
    label = {"rennet_lot": "A1", "strength_imcu_per_ml": 200.0}
    poured = rennet(phone, 6, 157.0, lot="B7")
    events = [*house(phone, **label), poured]
    unread = one(ask, events, "rennet", "dose/rennet")
    assert unread["fell_back"] == "missing"
    earlier = Phone(make=OTHERS[0])
    known = {"rennet_lot": "b7", "strength_imcu_per_ml": 400.0}
    both = [*house(earlier, **known), *events]
    told = one(ask, both, "rennet", "dose/rennet")
    assert told["value"] == pytest.approx(78.75)


def test_a_view_says_which_bottle_the_dose_is_for(ask):
    phone = Phone()
    label = {"rennet_lot": "A1", "strength_imcu_per_ml": 200.0}
    events = [
        *house(phone, **label),
        phone.event("step_begun", 5, step="rennet", why="Test."),
    ]
    (add,) = shown(ask, events)["adds"]
    assert add["planned"]["bottle"] == {
        "lot": "A1",
        "of_label": "A1",
        "is_read": True,
    }
    poured = [*events, rennet(phone, 6, 157.0, lot="B7")]
    (add,) = shown(ask, poured)["adds"]
    assert add["planned"]["bottle"] == {
        "lot": "B7",
        "of_label": "A1",
        "is_read": False,
    }


def from_lot(ask, events, lot):
    """Return the View before, the dose from a lot in hand, and the View after."""
    asked = ("add_from_lot", MAKE, "rennet", "rennet", lot, at(7))
    view = ("view", MAKE, at(7))
    _, before, add, after = ask.desk(("take", events), view, asked, view)
    assert after == before  # to ask is to enter nothing
    return add


def test_a_lot_in_hand_has_its_dose_before_it_is_saved(ask):
    # Seen: the pad kept the dose of the last bottle when another lot was chosen.
    phone, earlier = Phone(), Phone(make=OTHERS[0])
    label = {"rennet_lot": "A1", "strength_imcu_per_ml": 200.0}
    known = {"rennet_lot": "b7", "strength_imcu_per_ml": 400.0}
    begun = phone.event("step_begun", 5, step="rennet", why="Test.")
    events = [*house(earlier, **known), *house(phone, **label), begun]
    assert from_lot(ask, events, "A1")["planned"]["value"] == pytest.approx(157.5)
    told = from_lot(ask, events, " B7 ")
    assert told["planned"]["value"] == pytest.approx(78.75)
    assert told["planned"]["bottle"]["lot"] == "B7"
    assert told["added"] == []
    # As it stands once the entry has named the lot.
    poured = [*events, rennet(phone, 6, 78.0, lot="B7")]
    (add,) = shown(ask, poured)["adds"]
    assert add["planned"] == told["planned"]
    unread = from_lot(ask, events, "C3")["planned"]
    assert unread["origin"]["fell_back"] == "missing"
    assert unread["bottle"] == {"lot": "C3", "of_label": "A1", "is_read": False}
    assert from_lot(ask, events, "")["planned"]["value"] == pytest.approx(157.5)


def test_what_the_make_does_not_know_has_no_dose_from_a_lot(ask):
    events = house()
    for make, step, name in (
        (OTHERS[0], "rennet", "rennet"),
        (MAKE, "no_such", "rennet"),
        (MAKE, "rennet", "salt"),
    ):
        asked = ("add_from_lot", make, step, name, "B7", at(7))
        assert ask.desk(("take", events), asked)[1] is None


def shown(ask, events, key="rennet", at_min=7):
    view = ask.view(events, at_min)
    return next(row for row in view["steps"] if row["key"] == key)


def set_make(make, rennet_ml, floc_min, start=0, **rest):
    """Return a make of 600 L that got so much of 200 IMCU/mL and set so long after."""
    phone = Phone(make=make)
    return [
        *house(phone, strength_imcu_per_ml=200.0, **rest),
        phone.event("step_begun", start + 1, step="rennet", why="Test."),
        rennet(phone, start + 1, rennet_ml),
        phone.event("step_begun", start + 2, step="set", why="Test."),
        phone.event(
            "curd_judged", start + 1 + floc_min, judgement="flocculated", step="set"
        ),
    ]


def learnt(ask, *makes, **rest):
    events = [event for made in makes for event in made]
    here = house(**{"strength_imcu_per_ml": 200.0, **rest})
    return one(ask, [*events, *here], "rennet", "dose/rennet", 100)


def wanted_floc_min():
    lasts = next(row for row in HOUSE["steps"] if row["key"] == "set")["lasts"]
    return lasts["value"] / HOUSE["figures"]["floc_factor"]["value"] / 60


def test_the_dose_is_what_would_have_set_the_last_makes_on_time(ask):
    # Each set two minutes late at 150 mL: (t + 2 - 2) / (t - 2) of 50 IMCU/L.
    due = wanted_floc_min()
    makes = [set_make(make, 150.0, due + 2) for make in OTHERS]
    told = learnt(ask, *makes)
    assert told["value"] == pytest.approx(150.0 * due / (due - 2))


def test_two_makes_are_too_few_to_learn_a_dose_of(ask):
    due = wanted_floc_min()
    told = learnt(ask, *[set_make(make, 150.0, due + 2) for make in OTHERS[:2]])
    assert told["value"] == pytest.approx(157.5)


def test_a_learnt_dose_moves_by_a_quarter_at_most(ask):
    makes = [set_make(make, 100.0, 24) for make in OTHERS]
    assert learnt(ask, *makes)["value"] == pytest.approx(125.0)


def test_a_floc_point_outside_its_window_teaches_no_dose(ask):
    makes = [set_make(make, 150.0, 40) for make in OTHERS]
    assert learnt(ask, *makes)["value"] == pytest.approx(157.5)


def test_a_dose_is_learnt_in_units_and_so_serves_another_bottle(ask):
    due = wanted_floc_min()
    makes = [set_make(make, 150.0, due) for make in OTHERS]
    told = learnt(ask, *makes, strength_imcu_per_ml=400.0)
    assert told["value"] == pytest.approx(75.0)


def dose_after(ask, *pieces):
    """Return the dose that a desk shows which was asked after each piece came in."""
    calls = []
    for events in pieces:
        calls += [("take", events), ("step", MAKE, "rennet", at(100))]
    told = ask.desk(*calls)
    (add,) = told[-1]["adds"]
    return add["planned"]["value"]


def test_what_another_make_shows_reaches_a_dose_that_was_told_before(ask):
    due = wanted_floc_min()
    others = [event for make in OTHERS for event in set_make(make, 150.0, due + 2)]
    here = house(strength_imcu_per_ml=200.0)
    # All but the last look at the curd: nothing has been learnt yet.
    told = dose_after(ask, [*here, *others[:-1]])
    assert told == pytest.approx(157.5)
    told = dose_after(ask, [*here, *others[:-1]], others[-1:])
    assert told == pytest.approx(150.0 * due / (due - 2))


def test_a_label_read_elsewhere_reaches_a_dose_that_was_told_before(ask):
    phone, earlier = Phone(), Phone(make=OTHERS[0])
    label = {"rennet_lot": "A1", "strength_imcu_per_ml": 200.0}
    here = [*house(phone, **label), set_to(phone, 3, "rennet_lot", "B7")]
    there = house(earlier, rennet_lot="b7")
    read = set_to(earlier, 5, "strength_imcu_per_ml", 400.0)
    told = dose_after(ask, [*here, *there])
    assert told == pytest.approx(118, abs=0.5)
    told = dose_after(ask, [*here, *there], [read])
    assert told == pytest.approx(78.75)


def test_milk_that_was_treated_otherwise_teaches_no_dose(ask):
    due = wanted_floc_min()
    makes = [set_make(make, 150.0, due + 2) for make in OTHERS]
    for made in makes:
        made[0]["data"]["treatment"] = "raw"
    assert learnt(ask, *makes)["value"] == pytest.approx(157.5)
