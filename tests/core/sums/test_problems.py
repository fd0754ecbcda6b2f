"""What a formula refuses is told of what the sum asks for, by its own declaration."""

import random
import sys

import pytest

from server.core.numbers.refused import Refused
from server.core.sums import catalogue
from server.core.sums.problems import problem_of

ROWS = {row["key"]: row for row in catalogue.rows()}
# Checked by formulas, but fixed by the sum: nobody's entry can make them fail.
FIXED = {
    "aged_ms",
    "ash_ratio",
    "best_c",
    "d_s",
    "exchange_frac",
    "first_frac",
    "from_unit",
    "gap_max_ms",
    "high",
    "known_tau_s",
    "max_c",
    "min_c",
    "model_spread",
    "modulus",
    "reference_c",
    "side_by_side",
    "specific_heat_j_kg_k",
    "to_unit",
    "value",
    "vat_cp_j_kg_k",
    "water_c",
    "wheels",
}
TRIALS = 20


def chosen(rng, item):
    """Return a value that an input lets through, at its ends now and then."""
    if item["kind"] == "choice":
        return rng.choice(item["choices"])
    if item["kind"] == "series":
        return rows_of(rng, item)
    low, high = item["low"], item["high"]
    if item["ask_low"] is not None and rng.random() < 0.7:
        low, high = item["ask_low"], item["ask_high"]
    number = rng.choice([low, high]) if rng.random() < 0.1 else rng.uniform(low, high)
    return int(number) if item["kind"] == "count" else number


def rows_of(rng, item):
    rows = []
    for index in range(max(int(item["low"]), rng.randint(1, 5))):
        row = {part["name"]: chosen(rng, part) for part in item["columns"]}
        if "at_min" in row:
            row["at_min"] = index * 10.0
        rows.append(row)
    return rows


def taken(rng, row):
    """Return what the work of a sum is handed: some by default, some left out."""
    given = {"ranges": {}, "typed": {}, "from": {}, "rules": {}}
    for item in row["inputs"]:
        value = None
        if item["default"] and rng.random() < 0.5:
            value = item["default"]["value"]
        elif not item["hidden"] and not (item["optional"] and rng.random() < 0.4):
            value = chosen(rng, item)
        given[item["name"]] = value
        given["from"][item["name"]] = "typed"
        if value is not None and item["kind"] == "number":
            given["typed"][item["name"]] = [value, item["unit"]]
    return given


def worked(row):
    """Return the fields that the formulas of a sum check, and what they refuse."""
    rng = random.Random(row["key"])
    fields, refusals = set(), []

    def look(frame, event, _):
        name = frame.f_code.co_name
        if event == "call" and name.startswith("require"):
            field = frame.f_locals.get("field")
            fields.update([field] if isinstance(field, str) else [])

    for _ in range(TRIALS):
        given = taken(rng, row)
        sys.setprofile(look)
        try:
            row["work"](given)
        except Refused as refusal:
            refusals.append(refusal)
        except ArithmeticError:
            pass
        finally:
            sys.setprofile(None)
    return fields | {one.field for one in refusals}, refusals


@pytest.mark.parametrize("key", sorted(ROWS))
def test_whatever_the_formulas_check_is_told_of_an_input(key):
    row = ROWS[key]
    names = {item["name"] for item in row["inputs"]}
    fields, refusals = worked(row)
    told = names | set(row["called"]) | set(row["follows"]) | FIXED
    assert {one for one in fields if not one.startswith("spread_of_")} <= told
    for refusal in refusals:
        assert problem_of(row, refusal)["field"] in names


@pytest.mark.parametrize("key", sorted(ROWS))
def test_a_sum_declares_only_inputs_that_it_asks_for(key):
    row = ROWS[key]
    names = {item["name"] for item in row["inputs"]}
    assert set(row["called"].values()) | set(row["follows"].values()) <= names
    declared = set(row["called"]) | set(row["follows"])
    assert declared.isdisjoint(names)
    assert set(row["called"]).isdisjoint(row["follows"])


def told(key, refusal):
    problem = problem_of(ROWS[key], refusal)
    return problem["field"], problem["value"], problem["limit"], problem["unit"]


def test_another_name_and_unit_become_those_of_the_input():
    refusal = Refused("below_dead_weight", "pressure_pa", 5000, 20000)
    assert told("press_gauge", refusal) == ("cheese_kpa", 5, 20, "kPa")


def test_one_name_means_what_each_sum_says_it_is():
    refusal = Refused("more_than_brine_gives", "salt_frac", 0.09, 0.08)
    assert told("brine_time", refusal)[0] == "wanted_salt_frac"
    assert told("brine_factor", refusal)[0] == "cheese_salt_frac"
    assert told("brine_make_up", refusal)[0] == "brine_salt_frac"


def test_a_time_among_readings_is_told_as_its_column_is_typed():
    refusal = Refused("not_rising", "times_s", 60, 120)
    assert told("lethality", refusal) == ("vat_temps", 1, 2, "min")


def test_a_range_is_told_in_the_unit_of_the_input_too():
    refusal = Refused("off_curve", "ph", 5.1, [5.2, 6.6])
    assert told("acid_ends", refusal) == ("target_ph", 5.1, [5.2, 6.6], "pH")


def test_what_only_follows_from_an_input_keeps_its_own_unit():
    problem = problem_of(ROWS["press_lever"], Refused("above", "force_n", 2e7, 1e7))
    assert (problem["field"], problem["of"]) == ("weight_kg", "force_n")
    assert (problem["value"], problem["limit"], problem["unit"]) == (2e7, 1e7, "N")
