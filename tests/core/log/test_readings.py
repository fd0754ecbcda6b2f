"""Readings gathered: in a span, of several quantities, one an instant, the last."""

from tests.core.builders import Phone, at


def named(entries):
    return [entry["data"]["value"] for entry in entries]


def temps():
    phone, other = Phone(), Phone(1)
    return [
        phone.opened(),
        phone.reading("milk_temp_c", 20.0, 5),
        phone.reading("curd_temp_c", 33.0, 10),
        other.reading("milk_temp_c", 30.0, 10),
        phone.reading("milk_temp_c", 31.0, 15),
    ]


def test_a_span_takes_in_both_its_ends(ask):
    (told,) = ask.state(
        temps(), ("log.readings", "within", "milk_temp_c", at(5), at(10))
    )
    assert named(told) == [20.0, 30.0]


def test_several_quantities_stand_in_one_row_of_time(ask):
    quantities = ["milk_temp_c", "curd_temp_c"]
    told = ask.one(temps(), "log.readings", "together", quantities, at(6))
    assert named(told) == [33.0, 30.0, 31.0]


def test_of_two_readings_at_one_instant_the_later_entry_counts(ask, core):
    told = ask.one(
        temps(), "log.readings", "together", ["milk_temp_c", "curd_temp_c"], None
    )
    assert named(core("log.readings", "one_an_instant", told)) == [20.0, 30.0, 31.0]


def test_what_was_never_read_has_no_last_value(ask):
    told = ask.state(
        temps(),
        ("log.readings", "last_value", "milk_temp_c"),
        ("log.readings", "last_value", "ph"),
    )
    assert told == [31.0, None]
