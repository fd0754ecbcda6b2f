"""A note carries the units of its numbers: the page guesses none by its name."""

import pytest

from server.core.units.notes import AS_READ, NOTE_UNITS, with_units
from server.core.units.table import UNITS
from tests.conftest import ROOT
from tests.core.sums.asking import answer, table
from tests.core.sums.heat.test_heat_treatment import hold, judged


def test_every_unit_of_a_note_is_in_the_table():
    named = {unit for units in NOTE_UNITS.values() for unit in units.values()}
    assert named - {AS_READ} <= set(UNITS)


@pytest.mark.parametrize("name", sorted(NOTE_UNITS))
def test_every_note_with_units_is_one_that_the_core_can_give(name):
    files = (ROOT / "server" / "core").rglob("*.py")
    told = "".join(path.read_text("utf-8") for path in files if path.name != "notes.py")
    assert f'"{name}"' in told


def test_a_number_that_is_not_there_has_no_unit():
    told = with_units({"key": "holding_time_not_entered", "value": None, "limit": 15})
    assert told["units"] == {"limit": "s"}


def test_a_note_of_counts_stays_as_it_is():
    told = {"key": "note.samples_too_few", "count": 2, "wanted": 5}
    assert with_units(told) == told


def test_a_rules_temperature_is_told_in_the_unit_of_the_thermometer(core):
    found = judged(core, hold(30, 140))
    note = next(
        row for row in found["notes"] if row["key"] == "note.temperature_never_reached"
    )
    assert note["units"] == {"value": "F", "limit": "F"}
    assert note["as_read"]


def test_the_makers_own_temperatures_are_told_as_each_person_reads_them(core):
    rows = table(["at_min", "value"], [0, 20], [2, 21], [4, 45], [6, 23], [8, 24])
    given = {"vat_temps": rows, "target_temp_c": 35, "jacket_temp_c": 60}
    notes = answer(core, "heat_forecast", given)["notes"]
    aside = [row for row in notes if row["key"] == "note.reading_set_aside"]
    assert [row["units"] for row in aside] == [{"temp_c": "C"}]
    assert not aside[0]["as_read"]
