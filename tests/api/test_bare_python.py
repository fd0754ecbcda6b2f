import ast

import pytest

from server.api.bare_python import DOCUMENTED, bare, is_for_types
from server.config import CORE_DIR

FILES = sorted(CORE_DIR.rglob("*.py"))


class Untyped(ast.NodeTransformer):
    """Take the annotations out of a syntax tree."""

    def visit_FunctionDef(self, node):
        node.returns = None
        return self.generic_visit(node)

    def visit_arg(self, node):
        return ast.arg(node.arg)

    def visit_AnnAssign(self, node):
        return ast.Assign([node.target], self.visit(node.value))


def program(source):
    """Return the syntax tree as text, without docstrings and types."""
    tree = Untyped().visit(ast.parse(source))
    tree.body = [node for node in tree.body if not is_for_types(node)]
    for node in ast.walk(tree):
        if isinstance(node, DOCUMENTED):
            first = node.body[0]
            is_text = isinstance(first, ast.Expr) and isinstance(
                first.value, ast.Constant
            )
            if is_text and isinstance(first.value.value, str):
                first.value.value = ""
    return ast.dump(tree)


@pytest.mark.parametrize("file", FILES, ids=lambda file: file.name)
def test_what_the_phone_gets_is_the_same_program(file):
    source = file.read_text("utf-8")
    assert program(bare(source)) == program(source)


@pytest.mark.parametrize("file", FILES, ids=lambda file: file.name)
def test_lines_keep_their_numbers(file):
    source = file.read_text("utf-8")
    assert bare(source).count("\n") == source.count("\n")
    kept = {
        node.name: node.lineno
        for node in ast.walk(ast.parse(bare(source)))
        if isinstance(node, ast.FunctionDef)
    }
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.FunctionDef):
            assert kept[node.name] > 0
    assert "Args:" not in bare(source)


def test_words_in_a_string_that_look_like_a_comment_stay():
    source = 'a = "# no comment"  # a comment\n\n\ndef b():\n    """Say é."""\n'
    assert bare(source) == "a='# no comment'\n\n\ndef b():\n ''\n"


def test_texts_that_hold_quotes_and_signs_stay_as_they_are():
    source = 'a = "it\'s", "b = c", "\\n", "é" + f"{b} = {c}", "a, b"  # é\n'
    wanted = "a=\"it's\",'b = c',\"\\n\",'é'+f\"{b} = {c}\",'a, b'\n"
    assert bare(source) == wanted
    assert program(wanted) == program(source)


def test_types_stay_at_home():
    source = """TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

A: "list[str]" = ["é"]


def b(c: "int | None", *d: int, e: "dict[str, Any]" = 2) -> "list[str]":
    return f(c, "é: int")
"""
    wanted = """



A=['é']


def b(c,*d,e=2):
 return f(c,'é: int')
"""
    assert bare(source) == wanted


def test_what_follows_types_over_several_lines_is_kept():
    source = """def b(
    c: "int", d: "str"
) -> (
    "list[str]"
): return 1
"""
    assert program(bare(source)) == program(source)


def test_blocks_are_set_in_by_one_space():
    source = "def b(c):\n    if c:\n        return [\n            1,\n        ]\n"
    assert bare(source) == "def b(c):\n if c:\n  return [\n1,\n]\n"
