"""Whatever is wrong with a recipe is told in a sentence, not by its key."""

import ast
import re

from tests.conftest import ROOT

CORE = ROOT / "server" / "core"
CHECKS = [*sorted((CORE / "recipe").rglob("*.py")), CORE / "figures" / "bound.py"]
ENGLISH = sorted((ROOT / "static" / "js" / "messages" / "en").glob("*.js"))
# Where the key stands among the arguments.
CALLS = {"problem": 1, "_problem": 1, "check_choice": 3}


def keys():
    """Yield the key of every problem that the checks of a recipe give."""
    for path in CHECKS:
        for node in ast.walk(ast.parse(path.read_text("utf-8"))):
            if isinstance(node, ast.Call):
                place = CALLS.get(getattr(node.func, "id", ""), len(node.args))
                yield from (
                    key.value for key in node.args[place : place + 1] if is_text(key)
                )
            elif isinstance(node, ast.Dict):
                row = {
                    getattr(key, "value", ""): value
                    for key, value in zip(node.keys, node.values, strict=True)
                }
                if "field" in row and is_text(row.get("key")):
                    yield row["key"].value


def is_text(node):
    return isinstance(node, ast.Constant) and isinstance(node.value, str)


def test_every_problem_of_a_recipe_has_its_sentence():
    said = {
        key
        for path in ENGLISH
        for key in re.findall(r'^  "problem\.(\w+)":', path.read_text("utf-8"), re.M)
    }
    told = set(keys())
    assert len(told) > 30
    assert sorted(told - said) == []
