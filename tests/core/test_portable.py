"""The core keeps to what the phone's interpreter understands.

Each rule stands for something that was seen to fail, or to answer otherwise,
on MicroPython 1.27: a syntax error, a missing name, or a different result.
"""

import ast

import pytest

from tests.conftest import ROOT

FILES = sorted((ROOT / "server" / "core").rglob("*.py"))
# What `math` has there. No fsum, prod, hypot, cbrt, log1p, gcd, comb.
MATH = """
    acos acosh asin asinh atan atan2 atanh ceil copysign cos cosh degrees e erf
    erfc exp expm1 fabs factorial floor fmod frexp gamma inf isclose isfinite
    isinf isnan ldexp lgamma log log10 log2 modf nan pi pow radians sin sinh
    sqrt tan tanh tau trunc
""".split()
ABSENT_METHODS = """
    bit_length capitalize casefold expandtabs format_map is_integer isalnum
    isascii isdecimal isidentifier isnumeric isprintable istitle ljust maketrans
    removeprefix removesuffix rjust swapcase title translate zfill
""".split()
ABSENT_BUILTINS = {"vars", "breakpoint", "input", "print", "open", "exec", "eval"}
# Text and rounding come out differently, so neither belongs in the core.
MEANING_ONLY = {"round", "hash", "id"}


def is_type_checking(node):
    return isinstance(node, ast.If) and getattr(node.test, "id", "") == "TYPE_CHECKING"


def import_problem(node):
    if isinstance(node, ast.Import):
        names = {alias.name for alias in node.names}
        return None if names == {"math"} else "imports only math and siblings"
    if node.level == 0 and node.module != "math":
        return "imports only math and siblings"
    return None


def is_exception(node):
    bases = [getattr(base, "id", "") for base in node.bases]
    return any(name.endswith(("Error", "Exception")) for name in bases)


def call_problem(node):
    if isinstance(node.func, ast.Name):
        if node.func.id in ABSENT_BUILTINS | MEANING_ONLY:
            return f"calls {node.func.id}()"
        if node.func.id == "sum" and node.keywords:
            return "sum() takes no keyword there"
    if isinstance(node.func, ast.Attribute) and node.func.attr in ABSENT_METHODS:
        return f".{node.func.attr}() is absent there"
    return None


def attribute_problem(node):
    if node.attr == "__doc__":
        return "docstrings are absent there"
    if getattr(node.value, "id", "") == "math" and node.attr not in MATH:
        return f"math.{node.attr} is absent there"
    return None


FORBIDDEN = {
    ast.Match: "match is a syntax error there",
    ast.NamedExpr: "the core is written as Python 3.7",
    ast.Global: "the core keeps no state",
    ast.Nonlocal: "the core keeps no state",
    ast.AsyncFunctionDef: "the core does not wait",
    ast.Await: "the core does not wait",
    ast.With: "the core holds nothing open",
}


def problem_of(node):
    if type(node) in FORBIDDEN:
        return FORBIDDEN[type(node)]
    match node:
        case ast.Import() | ast.ImportFrom():
            return import_problem(node)
        case ast.ClassDef():
            return None if is_exception(node) else "only exceptions may be classes"
        case ast.List() | ast.Tuple() | ast.Set() if any(
            isinstance(item, ast.Starred) for item in node.elts
        ):
            return "[*a] is a syntax error there"
        case ast.Dict() if None in node.keys:
            return "{**d} is a syntax error there"
        case ast.Raise() if node.cause is not None:
            return "raise … from prints a warning there"
        case ast.arguments() if node.posonlyargs:
            return "positional-only / is a syntax error there"
        case ast.Call():
            return call_problem(node)
        case ast.Attribute():
            return attribute_problem(node)
    return None


def walk(node):
    """Yield every node but the imports that only type checkers read."""
    yield node
    for child in ast.iter_child_nodes(node):
        if is_type_checking(child):
            # These lines must still parse there, but are never run.
            yield from (
                inner
                for inner in ast.walk(child)
                if not isinstance(inner, ast.Import | ast.ImportFrom)
            )
        else:
            yield from walk(child)


def problems(source):
    tree = ast.parse(source)
    found = [(node, problem_of(node)) for node in walk(tree)]
    return [
        f"line {getattr(node, 'lineno', '?')}: {text}" for node, text in found if text
    ]


@pytest.mark.parametrize("file", FILES, ids=lambda file: str(file.relative_to(ROOT)))
def test_a_core_file_is_portable(file):
    assert problems(file.read_text(encoding="utf-8")) == []


@pytest.mark.parametrize(
    ("source", "words"),
    [
        ("import os", "imports only math"),
        ("from typing import Any", "imports only math"),
        ("from server.store import events", "imports only math"),
        ("import math\nmath.fsum([1])", "math.fsum is absent"),
        ("class Vat:\n    pass", "only exceptions"),
        ("a = [1]\nb = [*a, 2]", "syntax error"),
        ("a = {}\nb = {**a}", "syntax error"),
        ("def f(a, /):\n    pass", "positional-only"),
        ("match 1:\n    case 1:\n        pass", "match"),
        ("raise ValueError('x') from None", "raise … from"),
        ("'7'.zfill(2)", ".zfill() is absent"),
        ("round(2.5)", "calls round()"),
        ("sum([1], start=2)", "no keyword"),
        ("def f():\n    global a\n    a = 1", "no state"),
        ("TYPE_CHECKING = False\nif TYPE_CHECKING:\n    f(*[], **{**{}})", "{**d}"),
    ],
)
def test_a_planted_fault_is_found(source, words):
    assert any(words in problem for problem in problems(source))


def test_what_only_type_checkers_import_is_allowed():
    source = "TYPE_CHECKING = False\nif TYPE_CHECKING:\n    from typing import Any"
    assert problems(source) == []


def test_an_exception_with_attributes_is_allowed():
    assert problems("class BadFact(ValueError):\n    pass") == []
