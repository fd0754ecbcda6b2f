"""The core goes to phones in two parts, and the first is enough to make cheese."""

import ast
import importlib
import json
import sys

import pytest

from server.api.core_document import (
    CORE,
    FIRST_TOPICS,
    LATER,
    WORDS,
    bodies_of,
    core_texts,
    first_files,
    squeezed,
)
from server.config import CORE_DIR, read_rules
from server.core import desk as whole_desk
from server.core.desk.makes import LEADING
from tests.conftest import ROOT
from tests.core.builders import MAKE, Phone, a_day, at, recipe

OTHER = "0193a5b0-0000-7000-8000-0000000000dd"
TEXTS = core_texts(ROOT / "static", CORE_DIR, lambda path: path.read_text("utf-8"))


def test_every_file_is_in_one_part_and_no_file_in_both():
    first = first_files(TEXTS)
    assert (
        {"host.py", "shelf.py", "core/__init__.py", "core/desk/__init__.py"}
        <= first
        < set(TEXTS)
    )


def test_the_twin_stays_on_the_server():
    assert (CORE_DIR / "twin" / "play.py").is_file()
    assert [name for name in TEXTS if "twin" in name] == []


def test_what_the_first_part_loads_is_in_it():
    first = first_files(TEXTS)
    for name in first - {"host.py", "shelf.py"}:
        for node in ast.parse(TEXTS[name]).body:
            if isinstance(node, ast.ImportFrom) and node.module:
                folder = name.split("/")[: -node.level]
                path = "/".join([*folder, *node.module.split(".")])
                assert {f"{path}.py", f"{path}/__init__.py"} & first, (name, path)


def without_words(row):
    return {key: row[key] for key in row if key not in WORDS}


def test_no_module_of_a_phone_reads_the_words_of_a_rule():
    # Recipes have notes, too; their check reads those.
    readers = [name for name in TEXTS for word in WORDS if f'"{word}"' in TEXTS[name]]
    assert sorted(readers) == [
        "core/recipe/check/form.py",
        "core/recipe/figures.py",
    ]


def test_both_parts_carry_the_version_of_the_whole():
    rules = read_rules()
    parts = {name: json.loads(body) for name, body in bodies_of(TEXTS, rules).items()}
    assert parts[CORE]["version"] == parts[LATER]["version"]
    told = {**parts[CORE]["rules"], **parts[LATER]["rules"]}
    assert told == json.loads(json.dumps(rules), object_hook=without_words) != rules
    leading = {key for key in rules if rules[key]["topic"] in LEADING}
    assert set(FIRST_TOPICS) == set(LEADING)
    assert set(parts[CORE]["rules"]) == leading != set()
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


@pytest.fixture
def the_rest(tmp_path):
    """Let the rest of the core come to a phone that has the first part."""

    def come():
        for name in TEXTS:
            file = tmp_path / name
            file.parent.mkdir(parents=True, exist_ok=True)
            file.write_text(TEXTS[name], "utf-8")
        importlib.invalidate_caches()

    return come


def bare_day():
    """Return a day whose recipe has no figure that a sum answers."""
    plain = recipe()
    plain["steps"][5]["end"] = {"by": "judged", "judgement": ["clean_break"]}
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
    assert first_part("alarm.alarms", "alarms", desk, at(166), 300)["alarms"] == []
    assert "core.sums.catalogue" not in sys.modules


def test_a_make_is_taken_at_once_and_its_recipe_checked_with_the_rest(
    first_part, the_rest
):
    rules, sound, odd = read_rules(), bare_day(), bare_day()
    for event in odd:
        event["id"] = event["id"][:-4] + "0dd0"
        event["make"] = OTHER
        if event.get("ref"):
            event["ref"] = event["ref"][:-4] + "0dd0"
    # Where a person let an entry in that the check refuses.
    odd[0]["data"]["recipe"]["steps"][0]["readings"] = None
    desk = first_part("desk", "new")
    first_part("desk", "set_rules", desk, rules)
    assert first_part("desk", "take", desk, [*sound, *odd])["problems"] == []
    first_part("desk", "view", desk, MAKE, at(166))
    first_part("desk", "board", desk, at(166))
    kept = desk["makes"][MAKE]
    the_rest()
    first_part("desk", "set_rules", desk, rules)
    whole = whole_desk.new()
    whole_desk.set_rules(whole, rules)
    (told,) = whole_desk.take(whole, [*sound, *odd])["problems"]
    assert [row["field"] for row in told["why"]] == ["steps.receive.readings"]
    (broken,) = whole_desk.board(whole, at(166))["broken"]
    assert (broken["make"], broken["why"]) == (OTHER, "unsound")
    assert first_part("desk", "board", desk, at(166)) == whole_desk.board(
        whole, at(166)
    )
    assert desk["makes"][MAKE] is kept  # what is sound is not filed twice
    assert "unchecked" not in desk


def test_a_make_begins_here_only_once_its_recipe_can_be_checked(first_part, the_rest):
    desk = first_part("desk", "new")
    opening = bare_day()[0]
    ask = ("desk", "tap", desk, opening, ["maker"], MAKE, at(1))
    with pytest.raises(ImportError):
        first_part(*ask)
    assert desk["makes"] == {}
    the_rest()
    assert first_part(*ask)["problems"] == []


def test_what_a_gate_waits_for_asks_for_the_rest_and_is_no_fault(first_part):
    desk = first_part("desk", "new")
    first_part("desk", "set_rules", desk, read_rules())
    events = bare_day()
    gate = {"key": "lab", "watch": "laboratory", "step": "receive", "stops": []}
    events[0]["data"]["recipe"]["gates"] = [gate]
    first_part("desk", "take", desk, events)
    with pytest.raises(ImportError):
        first_part("desk", "view", desk, MAKE, at(166))
    assert not desk.get("broken")


def test_a_figure_that_a_sum_answers_asks_for_the_rest_and_is_no_fault(first_part):
    # The phone fetches the rest and puts the question again; nothing is named broken.
    desk = first_part("desk", "new")
    first_part("desk", "take", desk, a_day(Phone()))
    with pytest.raises(ImportError):
        first_part("desk", "view", desk, MAKE, at(120))
    assert not desk.get("broken")


def test_a_hold_asks_for_the_rest_and_is_no_fault(first_part):
    desk = first_part("desk", "new")
    first_part("desk", "set_rules", desk, read_rules())
    events = bare_day()
    hold = events[0]["data"]["recipe"]["steps"][2]
    hold.update(heat_treatment=True, rule="us_heat_treatment")
    first_part("desk", "take", desk, events)
    with pytest.raises(ImportError):
        first_part("desk", "view", desk, MAKE, at(70))
    assert not desk.get("broken")
    first = [name for name in first_files(TEXTS) if "/heat/hold/" in name]
    assert sorted(first) == ["core/heat/hold/__init__.py", "core/heat/hold/steps.py"]


def test_a_question_for_the_rest_says_that_a_module_is_not_here(first_part):
    desk = first_part("desk", "new")
    with pytest.raises(ImportError):
        first_part("desk", "sums_catalogue", desk)


def test_a_copy_of_other_bytes_is_not_sent(tmp_path):
    assert squeezed(tmp_path, CORE, b"any") is None
