import ast

import pytest

from server.api.bare_python import DOCUMENTED, bare
from server.config import CORE_DIR

FILES = sorted(CORE_DIR.rglob("*.py"))


def program(source):
    """Return the syntax tree as text, without docstrings."""
    tree = ast.parse(source)
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
    assert bare(source) == 'a = "# no comment"\n\n\ndef b():\n    ""\n'
