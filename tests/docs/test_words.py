"""Every key that the core can answer with has an English text.

The keys are read off the core's own tables and, where they stand in its code, off
its syntax tree; a key that is put together is listed with what it is made of.
"""

import ast
import json
import re

from server.core import desk
from server.core.log.kinds.table import KINDS
from server.core.recipe.hazards import HAZARDS
from server.core.sums import catalogue
from server.core.sums.answer import STATUSES
from server.core.units.quantities import QUANTITIES
from tests.conftest import ROOT

CORE = ROOT / "server" / "core"
MESSAGES = ROOT / "static" / "js" / "messages"
CATALOGUE = desk.sums_catalogue({})
ENTRY = re.compile(r"^ +(?:'([^']+)'|\"([^\"]+)\"):", re.M)
# What a value rests on when no input of that name is asked for.
NAMED = ("in.", "out.", "of.", "quantity.")
# Where a sum says by a note what its answer follows from.
TOLD = ("heat", "heat_forecast", "rennet", "ageing", "mass_balance")
# No note is made of these: a range says it, or nothing is amiss.
UNTOLD = ["rennet.q10", "wet_bulb_error", "accounted"]


def texts():
    """Return every key that has an English text."""
    found = set()
    for path in sorted(MESSAGES.glob("en/*.js")):
        for one in ENTRY.finditer(path.read_text("utf-8")):
            found.add(one[1] or one[2])
    return found


def trees():
    for path in sorted(CORE.rglob("*.py")):
        yield path, ast.parse(path.read_text("utf-8"))


def words_in(node):
    """Return the words that an expression may be: "a" or ("a" if x else "b")."""
    if isinstance(node, ast.Constant):
        return [node.value] if isinstance(node.value, str) else []
    if isinstance(node, ast.IfExp):
        return words_in(node.body) + words_in(node.orelse)
    return []


def called(tree, name):
    """Return the arguments of every call of a function, by its bare name."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and getattr(node.func, "id", "") == name:
            yield node.args


def entries(tree, name):
    """Return the words given to a key of any dict in the code."""
    found = []
    for node in ast.walk(tree):
        if isinstance(node, ast.Dict):
            for key, value in zip(node.keys, node.values, strict=True):
                if isinstance(key, ast.Constant) and key.value == name:
                    found += words_in(value)
        elif isinstance(node, ast.Assign) and any(
            getattr(target, "id", "") == name for target in node.targets
        ):
            found += words_in(node.value)
    return found


def wanted_of_tables():
    """Return lists of keys of which one must have a text, from the core's tables."""
    found = []
    for row in CATALOGUE:
        found += [[f"sum.{row['key']}"], [f"topic.{row['topic']}"]]
        for item in row["inputs"]:
            name = item["name"]
            found.append([f"in.{name}"])
            found += [[f"in.{column['name']}"] for column in item["columns"] or []]
            found += [
                [f"pick.{name}.{word}", f"pick.{word}"]
                for word in item["choices"] or []
            ]
        found += [
            [f"out.{item['name']}", f"in.{item['name']}"] for item in row["outputs"]
        ]
    for row in catalogue.rows():
        found += [[f"in.{one}", f"out.{one}", f"of.{one}"] for one in row["follows"]]
    found += [[f"status.{one}"] for one in STATUSES]
    found += [[f"quantity.{one}"] for one in QUANTITIES]
    found += [[f"kind.{one}", f"line.{one}"] for one in KINDS]
    found += [
        [f"{start}.{one}"] for start in ("caution", "caution_do") for one in HAZARDS
    ]
    return found


def wanted_of_code():
    """Return the same, from what stands in the core's code."""
    found = []
    for path, tree in trees():
        is_sum = {"sums", "known"} & set(path.parts)
        for arguments in called(tree, "note"):
            found += [[f"note.{one}"] for one in words_in(arguments[0])]
        for arguments in called(tree, "rests"):
            if is_sum:
                found += [
                    [start + one for start in NAMED] for one in words_in(arguments[0])
                ]
        for arguments in called(tree, "value"):
            if is_sum and len(arguments) > 2 and words_in(arguments[2]) == ["key"]:
                name = (words_in(arguments[0]) or ["figure"])[0]
                found += [
                    [f"is.{name}.{one}", f"is.{one}", f"pick.{one}"]
                    for one in words_in(arguments[1])
                ]
        found += [[one] for one in entries(tree, "key") if one.startswith("note.")]
    return found


def wanted_of_reasons():
    """Return the keys of the rules' reasons: words of a note, or of what they judge."""
    found = []
    for name in ("pasteurisation", "heat_rows", "curing", "verdict"):
        (path,) = CORE.rglob(f"{name}.py")
        tree = ast.parse(path.read_text("utf-8"))
        found += [
            [f"note.{one}", f"problem.{one}", f"of.{one}"]
            for one in entries(tree, "key")
        ]
    return found


def wanted_of_matters():
    """Return the keys of what stands, of the ways to decide it, and of its reasons."""
    rules = json.loads((ROOT / "server" / "rules" / "matters.json").read_text("utf-8"))
    found = []
    for row in rules["rows"]:
        found += [[f"{kind}.{row['key']}"] for kind in ("matter", "matter_do")]
        for way in row["ways"]:
            found += [[f"{kind}.{way['way']}"] for kind in ("way", "way_means")]
    found += [[f"of.{test['key']}"] for test in rules["tests"]]
    for path in (CORE / "matters" / "watch").glob("*.py"):
        tree = ast.parse(path.read_text("utf-8"))
        found += [[f"note.{one}"] for one in entries(tree, "key")]
    return found


def wanted_of_bases():
    """Return the keys that say what an answer follows from, put into a note."""
    found = []
    for path, tree in trees():
        if "formulas" not in path.parts or path.stem not in TOLD:
            continue
        found += [
            [f"note.{one}", f"note.account.{one}", f"basis.{one}"]
            for one in entries(tree, "basis")
            if one not in UNTOLD
        ]
    return found


# Counted things, whose name is their unit; figures of a table that a person typed.
COUNTED = {"packs", "count", "strips", "across", "wheels", "wheels_by_share"}
# Tenfold reductions are counted, and so much protein is told for 1 of fat.
COUNTED |= {"log_reduction", "protein_fat_ratio_now"}
AS_TYPED = {"mean", "average", "beyond", "run"}


def test_no_answer_is_a_bare_number():
    bare = {
        item["name"]
        for row in CATALOGUE
        for item in row["outputs"]
        if item["unit"] == ""
    }
    assert bare - COUNTED - AS_TYPED == set()


def lacking(wanted):
    known = texts()
    return sorted({keys[0] for keys in wanted if not known.intersection(keys)})


def test_every_name_and_choice_of_the_core_has_words():
    wanted = wanted_of_tables()
    assert len(wanted) > 500
    assert lacking(wanted) == []


def test_every_note_word_and_problem_in_the_code_has_words():
    wanted = wanted_of_code()
    assert len(wanted) > 60
    assert lacking(wanted) == []


def test_every_reason_of_a_rule_has_words():
    wanted = wanted_of_reasons()
    assert len(wanted) > 15
    assert lacking(wanted) == []


def test_every_matter_and_way_has_words():
    wanted = wanted_of_matters()
    assert len(wanted) > 60
    assert lacking(wanted) == []


def test_every_basis_of_an_answer_has_words():
    wanted = wanted_of_bases()
    assert len(wanted) > 5
    assert lacking(wanted) == []


def test_a_key_that_is_chosen_in_the_code_is_found_in_each_of_its_forms():
    code = """
note("one" if x else "two", value=3)
found = {"basis": "three"}
basis = "four"
"""
    tree = ast.parse(code)
    [arguments] = called(tree, "note")
    assert words_in(arguments[0]) == ["one", "two"]
    assert sorted(entries(tree, "basis")) == ["four", "three"]


def test_a_key_without_words_is_told():
    assert lacking([["note.never_worded"], ["note.no_chlorine"]]) == [
        "note.never_worded"
    ]


def test_every_sign_of_a_hazard_is_drawn():
    page = (ROOT / "static/js/screens/make/pictograms.js").read_text("utf-8")
    warnings, mandatory = page.split("const MANDATORY")
    drawn = {"warning": warnings, "mandatory": mandatory}
    signs = [sign for signs in HAZARDS.values() for sign in signs]
    assert len(signs) > 20
    missing = [
        sign
        for sign in signs
        if f"\n  {sign['pictogram']}: html`" not in drawn[sign["kind"]]
    ]
    assert missing == []
