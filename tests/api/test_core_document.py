"""The core goes to phones in two parts, and the first is enough to make cheese."""

import ast
import importlib
import json
import sys

import pytest

from server.api.core_document import (
    CORE,
    LATER,
    bodies_of,
    core_texts,
    first_files,
    squeezed,
)
from server.config import CORE_DIR, read_rules
from tests.conftest import ROOT
from tests.core.builders import MAKE, Phone, a_day, at, recipe

TEXTS = core_texts(ROOT / "static", CORE_DIR, lambda path: path.read_text("utf-8"))


def test_every_file_is_in_one_part_and_no_file_in_both():
    first = first_files(TEXTS)
    assert (
        {"host.py", "core/__init__.py", "core/desk/__init__.py"} <= first < set(TEXTS)
    )


def test_what_the_first_part_loads_is_in_it():
    first = first_files(TEXTS)
    for name in first - {"host.py"}:
        for node in ast.parse(TEXTS[name]).body:
            if isinstance(node, ast.ImportFrom) and node.module:
                folder = name.split("/")[: -node.level]
                path = "/".join([*folder, *node.module.split(".")])
                assert {f"{path}.py", f"{path}/__init__.py"} & first, (name, path)


def test_both_parts_carry_the_version_of_the_whole():
    rules = read_rules()
    parts = {name: json.loads(body) for name, body in bodies_of(TEXTS, rules).items()}
    assert parts[CORE]["version"] == parts[LATER]["version"]
    assert {**parts[CORE]["rules"], **parts[LATER]["rules"]} == rules
    judge_holds = {key for key in rules if rules[key]["topic"] == "heat_treatment"}
    assert set(parts[CORE]["rules"]) == judge_holds != set()
    changed = {
        **TEXTS,
        "core/creamery/trends.py": TEXTS["core/creamery/trends.py"] + "\n",
    }
    again = json.loads(bodies_of(changed, rules)[CORE])
    assert again["version"] != parts[CORE]["version"]
    assert again["files"] == parts[CORE]["files"]


@pytest.fixture
def first_part(tmp_path, monkeypatch):
    """Give the core as a phone has it before the rest has come."""
    for name in first_files(TEXTS):
        file = tmp_path / name
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text(TEXTS[name], "utf-8")
    monkeypatch.syspath_prepend(tmp_path)

    def call(module, name, *args):
        return getattr(importlib.import_module(f"core.{module}"), name)(*args)

    yield call
    for name in [one for one in sys.modules if one.split(".")[0] == "core"]:
        del sys.modules[name]


def bare_day():
    """Return a day whose recipe has no figure that a sum answers."""
    plain = recipe()
    plain["steps"][5]["end"] = {"by": "judged", "judgement": ["clean_break"]}
    plain["steps"][2].update(heat_treatment=True, rule="us_heat_treatment")
    events = a_day(Phone())
    events[0]["data"]["recipe"] = plain
    return events


def test_a_make_without_sums_is_led_and_rung_by_the_first_part_alone(first_part):
    desk = first_part("desk", "new")
    first_part("desk", "set_rules", desk, read_rules())
    assert first_part("desk", "take", desk, bare_day())["problems"] == []
    view = first_part("desk", "view", desk, MAKE, at(166))
    assert [row["key"] for row in view["steps"] if row["status"] == "running"] == [
        "store"
    ]
    hold = first_part("desk", "step", desk, MAKE, "hold", at(166))
    assert hold["verdict"]["rule"] == "us_heat_treatment"
    assert first_part("alarm.alarms", "alarms", desk, at(166), 300)["alarms"] == []
    assert "core.sums.catalogue" not in sys.modules


def test_a_figure_that_a_sum_answers_asks_for_the_rest_and_is_no_fault(first_part):
    # The phone fetches the rest and puts the question again; nothing is named broken.
    desk = first_part("desk", "new")
    first_part("desk", "take", desk, a_day(Phone()))
    with pytest.raises(ImportError):
        first_part("desk", "view", desk, MAKE, at(120))
    assert not desk.get("broken")


def test_a_question_for_the_rest_says_that_a_module_is_not_here(first_part):
    desk = first_part("desk", "new")
    with pytest.raises(ImportError):
        first_part("desk", "sums_catalogue", desk)


def test_a_copy_of_other_bytes_is_not_sent(tmp_path):
    assert squeezed(tmp_path, CORE, b"any") is None
