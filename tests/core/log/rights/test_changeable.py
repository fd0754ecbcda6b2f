"""What may be changed of an entry, and by whom: what is offered is what is taken."""

import pytest

from server.core.log.kinds.columns import ROLES
from server.core.log.kinds.table import KINDS
from server.core.units.table import UNITS
from tests.core.builders import MAKE, Phone, at

OTHER = {"device": "another", "person": "bo", "boot": "another"}


def asked(ask, entry, *before, hand=None, at_min=30):
    hand = dict(hand or OTHER, entered_ms=at(at_min))
    return ask.desk(
        ("take", [*before, entry]), ("changeable", MAKE, entry["id"], hand)
    )[1]


def fields(ask, entry, *before):
    return [
        (one["name"], one["form"], one["unit"], one["longest"])
        for one in asked(ask, entry, *before)["fields"]
    ]


@pytest.mark.parametrize("quantity", ["milk_temp_c", "curd_temp_c"])
@pytest.mark.parametrize("kind", ["entry_corrected", "entry_struck"])
def test_who_is_offered_a_change_is_who_may_make_it(ask, quantity, kind):
    phone = Phone()
    opened, reading = phone.opened(), phone.reading(quantity, 33.0, 10, "heat")
    extra = {"set": {"value": 33.5}} if kind == "entry_corrected" else {}
    change = phone.event(kind, 20, ref=reading["id"], why="Misread", **extra)
    told = asked(ask, reading, opened)
    offered = told["correct" if kind == "entry_corrected" else "strike"]
    for role in ROLES:
        taken = ask.desk(
            ("take", [opened, reading]), ("tap", change, [role], MAKE, at(30))
        )[1]
        assert (taken["problems"] == []) == (role in offered), role


def test_a_helper_is_offered_no_change_of_a_legal_reading(ask):
    phone = Phone()
    reading = phone.reading("milk_temp_c", 64.0, 10, "hold")
    told = asked(ask, reading, phone.opened())
    assert told["correct"] == told["strike"] == ["maker", "owner"]


def test_a_helper_may_take_back_a_slip_of_a_moment_ago(ask):
    phone = Phone()
    opened, reading = phone.opened(), phone.reading("milk_temp_c", 64.0, 10, "hold")
    same = {name: reading[name] for name in ("device", "person", "boot")}
    told = asked(ask, reading, opened, hand=same, at_min=10.5)
    assert told["strike"] == ["helper", "maker", "owner"]
    assert told["correct"] == ["maker", "owner"]


def test_nothing_of_a_struck_entry_is_changed(ask):
    phone = Phone()
    reading = phone.reading("curd_temp_c", 33.0, 10)
    struck = phone.event("entry_struck", 20, ref=reading["id"], why="twice")
    told = asked(ask, reading, phone.opened(), struck)
    assert told == {"correct": [], "strike": [], "fields": []}


def test_a_number_is_put_right_in_the_unit_of_its_field(ask):
    phone = Phone()
    dose = phone.event(
        "ingredient_added", 10, ingredient="rennet", amount=90.0, unit="mL", lot="L1"
    )
    wheels = phone.event("wheels_moulded", 11, size="small", count=20)
    reading = phone.reading("ph", 6.5, 12)
    assert fields(ask, dose) == [
        ("amount", "number", "mL", None),
        ("lot", "text", None, 40),
    ]
    assert fields(ask, wheels) == [("count", "count", None, None)]
    assert fields(ask, reading) == [("value", "reading", None, None)]


def test_a_choice_has_no_number_to_put_right(ask):
    reading = Phone().reading("drug_test", "negative", 10)
    assert asked(ask, reading)["fields"] == []


def test_of_a_make_that_is_not_known_nothing_is_changed(ask):
    told = ask.desk(("changeable", MAKE, "x", dict(OTHER, entered_ms=at(1))))
    assert told == [{"correct": [], "strike": [], "fields": []}]


def test_each_field_that_is_put_right_has_a_pad_and_a_number_a_unit():
    from server.core.log.rights.changeable import _FORMS

    for kind, row in KINDS.items():
        own = {field["name"]: field for field in row["fields"]}
        for name in row["mends"]:
            form = _FORMS[own[name]["type"]]
            unit = own[name]["unit"]
            if form == "number":
                assert unit in UNITS or "unit" in own, kind
            if form == "text":
                assert own[name]["high"] is not None, kind
