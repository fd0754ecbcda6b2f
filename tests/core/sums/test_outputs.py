"""An output is declared once; every value of an answer carries what it says."""

import ast

import pytest

from server.core.sums import catalogue, outputs
from tests.conftest import ROOT
from tests.core.sums.asking import table, typed, values
from tests.core.sums.heat.test_heat_treatment import hold, judged

ROWS = catalogue.rows()


def by_key(row):
    return row["key"]


@pytest.mark.parametrize("row", ROWS, ids=by_key)
def test_a_sum_declares_each_output_once_and_says_which_is_the_headline(row):
    names = [output["name"] for output in row["outputs"]]
    assert len(set(names)) == len(names)
    assert any(output["headline"] for output in row["outputs"])
    assert {output["role"] for output in row["outputs"]} <= set(outputs.ROLES)
    assert {o["told_by"] for o in row["outputs"]} - {None} <= set(names)


@pytest.mark.parametrize("row", ROWS, ids=by_key)
def test_what_depends_on_an_input_names_one_of_the_sum(row):
    names = [item["name"] for item in row["inputs"]]
    for output in row["outputs"]:
        for unit in (output["unit"], output["ends"]):
            if isinstance(unit, dict) and "as_read" in unit:
                assert unit["as_read"] in names


def topic_files():
    folder = ROOT / "server" / "core" / "sums"
    return sorted(folder.glob("*/*.py"))


def named(tree, called):
    """Return the names that calls of a function are given as plain words."""
    return {
        node.args[0].value
        for node in ast.walk(tree)
        if isinstance(node, ast.Call)
        and isinstance(node.func, ast.Name)
        and node.func.id == called
        and node.args
        and isinstance(node.args[0], ast.Constant)
    }


@pytest.mark.parametrize("path", topic_files(), ids=lambda path: path.stem)
def test_a_topic_declares_every_value_that_it_gives(path):
    tree = ast.parse(path.read_text("utf-8"))
    assert named(tree, "value") <= named(tree, "output")


def test_a_value_that_is_not_declared_is_a_fault_of_the_program():
    with pytest.raises(KeyError, match="left_kg"):
        outputs.declared([outputs.value("left_kg", 1.0)], [], {"typed": {}})


def test_a_verdict_tells_what_was_read_and_which_side_must_not_be_passed(core):
    given = {"method": "density", "density_kg_m3": 1100, "brine_kind": "clean"}
    row = values(core, "brine_strength", given, ["brine"])[("outside", "salt_frac")]
    assert row["role"] == "limit"
    assert (row["low"], row["high"]) == (0.16, None)  # the rule's least
    assert row["read"] < 0.16
    assert (row["unit"], row["ends_unit"]) == ("key", "fraction")


def test_a_rule_answers_in_the_unit_that_was_read(core):
    given = {"milk_temp_c": typed("44", "F"), "drug_test": "negative"}
    found = values(core, "milk_receipt", given, ["us_milk_receiving"])
    row = found[("temperature", "held_in_plant")]
    assert (row["read"], row["high"], row["ends_unit"]) == (44, 45, "F")
    assert row["as_read"]


def test_a_heat_rule_answers_in_the_unit_of_the_thermometer(core):
    told = {row["name"]: row for row in judged(core, hold(30))["values"]}
    asked, held = told["required_temp"], told["held_s"]
    assert (asked["value"], asked["unit"], asked["as_read"]) == (145, "F", True)
    assert (held["role"], held["low"], held["high"]) == ("limit", 1800, None)


def test_a_wanted_band_is_no_uncertainty(core):
    moulds = table(["diameter_m", "side_by_side"], [0.3, 1])
    found = values(core, "press_programme", {"bore_m": 0.05, "moulds": moulds})
    assert {row["role"] for (name, _), row in found.items() if name != "time_s"} == {
        "band"
    }


@pytest.mark.parametrize(
    ("role", "told", "at"),
    [
        ("band", (30.0, 21.0, 60.0), 1 / 3 + 9 / 39 / 3),  # 9 of 39 days into it
        ("band", (30.0, 21.0, None), None),  # no band with one end
        ("band", (30.0, 21.0, 21.0), None),
        ("limit", (15.0, 60.0, None), 0.25),  # of the least that is asked
        ("limit", (15.0, None, 60.0), None),  # not to be passed: nothing grows to it
        ("limit", (None, 60.0, None), None),
        ("estimate", (30.0, 21.0, 60.0), None),
    ],
)
def test_a_bar_is_drawn_in_a_band_and_towards_a_least(core, role, told, at):
    row = outputs.output("days", "d", role)
    given = outputs.value("days", *told)
    (found,) = core("sums.outputs", "declared", [given], [row], {"typed": {}})
    drawn = found["bar"] and found["bar"]["at_frac"]
    assert drawn == (None if at is None else pytest.approx(at))


def test_ends_in_another_unit_draw_no_bar():
    row = outputs.output("verdict", "key", "limit", ends="d")
    given = outputs.value("verdict", "meets", 60.0)
    (found,) = outputs.declared([given], [row], {"typed": {}})
    assert found["bar"] is None


def test_of_several_targets_the_next_one_stands_first(core):
    known = {
        "targets": {
            "value": [{"of": "cut", "ph": 6.4}, {"of": "brine", "ph": 5.4}],
            "from": "recipe",
            "status": "practice",
            "source": None,
            "low": None,
            "high": None,
            "typed": None,
        }
    }
    found = core("sums.catalogue", "work_out", "acid_forecast", {}, known, {})
    heads = [row["of"] for row in found["values"] if row["headline"]]
    assert heads == ["cut"]


def test_the_same_figure_told_twice_names_the_one_that_is_read(core):
    found = values(core, "acidity_units", {"acidity_frac": typed("16", "dornic")})
    assert found[("lactic_percent", None)]["repeats"] == "acidity_frac"
    assert found[("dornic", None)]["repeats"] is None


def test_every_range_of_a_sum_says_what_it_is_the_range_of():
    told = [row for sum_row in ROWS for row in sum_row["outputs"]]
    assert {row["range_of"] for row in told} <= set(outputs.RANGES)
    # A limit is the rule's and a band the recipe's; an estimate has its own words.
    for row in told:
        if row["role"] != "estimate":
            assert row["range_of"] == outputs.RANGE_OF_ROLE[row["role"]], row["name"]
