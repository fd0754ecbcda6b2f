"""Every number that every sum asks for: refused, asked about once more, or kept."""

import pytest

from server.core.recipe.sum_keys import SUM_KEYS
from server.core.sums import catalogue
from tests.core.sums.asking import answer

ROWS = {row["key"]: row for row in catalogue.rows()}


def numbers(key):
    """Return the numbers that a sum asks for, by name."""
    return [
        item
        for item in ROWS[key]["inputs"]
        if item["kind"] in ("number", "count") and not item["hidden"]
    ]


def beyond(limit, way):
    """Return the next number that a person could type past a limit."""
    return limit + way * max(1, abs(limit) / 100)


@pytest.mark.parametrize("key", SUM_KEYS)
def test_what_cannot_be_true_is_refused_with_its_limit(core, key):
    for item in numbers(key):
        for word, way, limit in (("below", -1, "low"), ("above", 1, "high")):
            value = beyond(item[limit], way)
            found = answer(core, key, {item["name"]: value})
            problem = {row["field"]: row for row in found["problems"]}[item["name"]]
            assert (problem["key"], problem["limit"]) == (word, item[limit])
            assert problem["value"] == value
            assert (problem["unit"], problem["from"]) == (item["unit"], "input")
            assert found["values"] == []


@pytest.mark.parametrize("key", SUM_KEYS)
def test_what_is_unlikely_is_kept_as_typed_and_asked_about_once(core, key):
    for item in numbers(key):
        for word, soft, hard in (
            ("unlikely_low", "ask_low", "low"),
            ("unlikely_high", "ask_high", "high"),
        ):
            if item[soft] is None or item[soft] == item[hard]:
                continue
            value = (item[soft] + item[hard]) / 2
            asked = {"value": value}
            found = answer(core, key, {item["name"]: asked})
            told = {"field": item["name"], "key": word, "limit": item[soft]}
            assert told in found["ask"]
            kept = {row["name"]: row["value"] for row in found["rests_on"]}
            assert kept[item["name"]] == value
            sure = answer(core, key, {item["name"]: {**asked, "sure": True}})
            assert told not in sure["ask"]


def problem(core, key, **given):
    (found,) = answer(core, key, given)["problems"]
    return found


def test_ph_15_is_refused_with_its_limit(core):
    rows = {"rows": [{"at_min": 0, "ph": 15}]}
    found = problem(core, "acid_band", ph_readings=rows)
    assert (found["key"], found["limit"], found["value"]) == ("above", 14, 15)


def test_brine_of_27_per_cent_is_refused_with_its_limit(core):
    found = problem(core, "brine_make_up", volume_l=100, brine_salt_frac=0.27)
    assert (found["key"], found["limit"]) == ("above", 0.266)


def test_a_brine_past_saturation_at_its_own_temperature_is_refused(core):
    # 26.3 % at 0 °C by the Salt Institute; 26.5 % dissolves at 25 °C only.
    given = {"volume_l": 100, "brine_salt_frac": 0.265, "brine_temp_c": 0}
    found = problem(core, "brine_make_up", **given)
    assert found["field"] == "brine_salt_frac"
    assert found["key"] == "above_saturation"
    assert found["limit"] == pytest.approx(0.2629)


def test_a_target_beyond_the_jacket_is_refused_with_the_jacket(core):
    given = {"vat_temp_c": 32, "target_temp_c": 61, "jacket_temp_c": 60, "tau_s": 2400}
    found = problem(core, "heat_time", **given)
    assert (found["field"], found["value"], found["limit"]) == ("target_temp_c", 61, 60)
