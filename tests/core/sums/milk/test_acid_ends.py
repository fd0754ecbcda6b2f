"""A forecast of pH from the readings alone, and when there is none yet."""

import pytest

from tests.core.sums.asking import answer, band, table, values


def given(*rows, **rest):
    return {"ph_readings": table(["at_min", "ph"], *rows), "target_ph": 5.4, **rest}


def basis(core, *rows, **rest):
    found = answer(core, "acid_ends", given(*rows, **rest))
    assert found["problems"] == []
    return found["notes"][0]["key"], found["values"][0]["value"]


def test_the_published_gouda_is_forecast_from_its_vat(core):
    # Hill and Ferrer: 6.60, 6.55, 6.45, 6.35 at 0, 1, 1.5, 3 h; 5.40 at 8 h.
    rows = [[0, 6.6], [60, 6.55], [90, 6.45], [180, 6.35]]
    found = values(core, "acid_ends", given(*rows))
    low, value, high = band(found[("reach_s", None)])
    assert low < 8 * 3600 < high
    assert found[("left_s", None)]["value"] == pytest.approx(value - 180 * 60)


def test_three_readings_are_the_fewest(core):
    told = basis(core, [0, 6.6], [60, 6.4])
    assert told == ("note.acid.not_enough_readings", None)


def test_a_small_fall_is_not_enough_yet(core):
    told = basis(core, [0, 6.6], [60, 6.55], [90, 6.5])
    assert told == ("note.acid.not_enough_drop", None)


def test_readings_that_tell_too_little_name_no_time(core):
    rows = [[0, 6.6], [10, 6.5], [20, 6.44]]
    told = basis(core, *rows, shape_sd_ph=0.4)
    assert told == ("note.acid.too_uncertain", None)


def test_a_mistyped_reading_is_named(core):
    # Gompertz with 0.25 pH an hour and 0.75 h lag, to three figures; 4.38 for 6.38.
    rows = [[0, 6.572], [30, 6.537], [60, 6.474], [90, 5.5], [120, 6.282], [180, 6.038]]
    found = answer(core, "acid_ends", given(*rows, shape_sd_ph=0.0))
    told = [row for row in found["notes"] if row["key"] == "note.ph_set_aside"]
    assert [(row["at_min"], row["ph"]) for row in told] == [(90, 5.5)]


def test_a_target_below_the_end_is_refused_with_the_end(core):
    found = answer(core, "acid_ends", given([0, 6.6], [60, 6.4], target_ph=5.1))
    assert found["problems"][0]["field"] == "target_ph"
