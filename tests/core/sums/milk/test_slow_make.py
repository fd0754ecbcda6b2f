"""Slow makes, by the published mark of their own family only."""

import pytest

from tests.core.sums.asking import answer


def slow(core, mark, **given):
    return answer(core, "slow_make", {"slow_mark": mark, **given}, rules=["slow_make"])


def verdict(found):
    assert found["problems"] == []
    return found["values"][0]["value"]


def notes(found):
    return [row["key"] for row in found["notes"]]


# J Food Prot 69(9):2161: at most 5.8 at 6 h, or 6.3 for the other type.
@pytest.mark.parametrize(
    ("mark", "ph", "word"),
    [
        ("ph_at_6_h_washed", 5.8, "meets"),
        ("ph_at_6_h_washed", 5.9, "does_not_meet"),
        ("ph_at_6_h_salers", 6.3, "meets"),
        ("ph_at_6_h_salers", 6.31, "does_not_meet"),
    ],
)
def test_ph_at_six_hours_is_held_against_its_own_family(core, mark, ph, word):
    found = slow(core, mark, ph=ph, at_h=6)
    assert verdict(found) == word
    assert ("note.slow_make_hold" in notes(found)) == (word == "does_not_meet")


@pytest.mark.parametrize("at_h", [5.4, 6.6, 12])
def test_a_ph_read_at_another_hour_is_a_reading_missed_and_not_interpolated(core, at_h):
    found = slow(core, "ph_at_6_h_washed", ph=5.5, at_h=at_h)
    assert verdict(found) == "not_assessed"
    told = found["notes"][0]
    assert (told["key"], told["low"], told["high"]) == ("note.reading_missed", 5.5, 6.5)


# Zehren and Zehren: Cheddar below 0.40 % at milling; Jack and washed curd at or
# below 0.15 % in the whey at draining.
@pytest.mark.parametrize(
    ("mark", "percent", "word"),
    [
        ("cheddar_milling", 0.39, "does_not_meet"),
        ("cheddar_milling", 0.40, "meets"),
        ("washed_draining", 0.15, "does_not_meet"),
        ("washed_draining", 0.16, "meets"),
    ],
)
def test_acid_at_milling_and_draining(core, mark, percent, word):
    typed = {"typed": str(percent), "unit": "lactic_percent"}
    assert verdict(slow(core, mark, acidity_frac=typed)) == word


def test_no_mark_is_not_a_make_in_time(core):
    found = slow(core, "other", ph=5.2, at_h=6)
    assert verdict(found) == "not_assessed"
    assert notes(found) == ["note.no_limit_set"]


def test_what_the_mark_needs_is_asked_for(core):
    assert slow(core, "ph_at_6_h_washed", ph=5.8)["missing"] == ["at_h"]
    assert slow(core, "cheddar_milling")["missing"] == ["acidity_frac"]


def test_ph_15_is_refused_with_its_limit(core):
    (problem,) = slow(core, "ph_at_6_h_washed", ph=15, at_h=6)["problems"]
    assert (problem["field"], problem["limit"]) == ("ph", 14)


def test_without_the_rules_nothing_is_said(core):
    found = answer(core, "slow_make", {"slow_mark": "cheddar_milling"})
    assert found["missing"] == ["rules"]
