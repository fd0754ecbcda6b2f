"""Docstrings of the core tell the truth about names and units."""

import ast
import re

import pytest

from tests.conftest import ROOT

FILES = sorted((ROOT / "server" / "core").rglob("*.py"))
UNITS = {
    "c": "°C",
    "k": "K",
    "s": "s",
    "ms": "ms",
    "min": "min",
    "h": "h",
    "kg": "kg",
    "g": "g",
    "l": "L",
    "ml": "mL",
    "m": "m",
    "m2": "m²",
    "m3": "m³",
    "pa": "Pa",
    "kpa": "kPa",
    "frac": "0..1",
}
# A unit after one of these is part of a compound: `k_per_h`, `ph_s`, `w_m_k`.
COMPOUND = {*UNITS, "per", "ph", "mol", "j", "kj", "w", "v", "mm", "n", "mg"}
# A fraction may say a narrower range, such as [0..0.4] or [0.8..1].
PART_OF_ONE = re.compile(r"\[(0(\.\d+)?)\.\.(0\.\d+|1)\]")
SECTION = re.compile(r"^(Args|Returns|Raises|Yields|Source|Changed|Valid|Check):")
ENTRY = re.compile(r"^    \*{0,2}(\w+): ")


def functions(source):
    return [
        node
        for node in ast.parse(source).body
        if isinstance(node, ast.FunctionDef) and not node.name.startswith("_")
    ]


def section(docstring, title):
    """Return the text under a title, one line or an indented block."""
    kept, inside = [], False
    for line in docstring.splitlines():
        if SECTION.match(line):
            inside = line.startswith(f"{title}:")
        elif line.startswith(">>>"):
            inside = False
        elif inside:
            kept.append(line)
    return "\n".join(kept)


def entries(text):
    """Return {argument: its text} in the order they are written."""
    found = {}
    name = None
    for line in text.splitlines():
        match = ENTRY.match(line)
        if match:
            name = match[1]
            found[name] = line
        elif name:
            found[name] += " " + line.strip()
    return found


def unit_of(name):
    """Return the unit a name promises, or None."""
    words = name.split("_")
    if len(words) < 2 or words[-1] not in UNITS:
        return None
    if words[-2] in COMPOUND:
        return None
    return UNITS[words[-1]]


def unit_problem(name, text):
    unit = unit_of(name)
    if unit is None or f"[{unit}]" in text:
        return None
    if unit == "0..1" and PART_OF_ONE.search(text):
        return None
    return f"{name}: says no [{unit}]"


def problems_of(function):
    docstring = ast.get_docstring(function)
    if not docstring:
        return [f"{function.name}: has no docstring"]
    args = function.args
    spread = [arg for arg in (args.vararg, args.kwarg) if arg]
    names = [arg.arg for arg in args.args + args.kwonlyargs + spread]
    documented = entries(section(docstring, "Args"))
    found = []
    if (len(names) > 1 or documented) and list(documented) != names:
        found.append(f"{function.name}: Args {list(documented)} but takes {names}")
    pairs = list(documented.items())
    returns = section(docstring, "Returns")
    if returns:
        pairs.append((function.name, returns))
    units = (unit_problem(name, text) for name, text in pairs)
    return found + [f"{function.name}: {text}" for text in units if text]


def refuses(function):
    """Return whether a function raises by itself or asks another to."""
    nodes = list(ast.walk(function))
    called = [node.func for node in nodes if isinstance(node, ast.Call)]
    return any(isinstance(node, ast.Raise) for node in nodes) or any(
        getattr(func, "id", "").startswith("require") for func in called
    )


def formula_problems(function):
    """Return what a formula's docstring leaves out: every sum rests on one."""
    docstring = ast.get_docstring(function) or ""
    found = [] if ">>> " in docstring else ["no worked example"]
    # A check has nothing to return; a helper of one argument says it in a line.
    if function.name.startswith("require") or len(function.args.args) < 2:
        return [f"{function.name}: {text}" for text in found]
    wanted = ["Args", "Returns", "Source", *(["Raises"] if refuses(function) else [])]
    found += [f"no {title}:" for title in wanted if f"\n{title}:" not in docstring]
    if "\nCheck:" not in docstring and "\nValid:" not in docstring:
        found.append("neither Valid: nor Check:")
    return [f"{function.name}: {text}" for text in found]


def problems(source):
    return [text for function in functions(source) for text in problems_of(function)]


@pytest.mark.parametrize("file", FILES, ids=lambda file: str(file.relative_to(ROOT)))
def test_docstrings_match_their_signatures(file):
    assert problems(file.read_text(encoding="utf-8")) == []


@pytest.mark.parametrize(
    "file",
    [file for file in FILES if "formulas" in file.parts],
    ids=lambda file: file.stem,
)
def test_a_formula_says_model_source_validity_and_a_worked_example(file):
    found = functions(file.read_text(encoding="utf-8"))
    assert [text for function in found for text in formula_problems(function)] == []


GOOD = '''
def cooling_time_s(start_c, end_c):
    """Return the time to cool.

    Args:
        start_c: temperature now [°C].
        end_c: temperature wanted, which may
            go on over a line [°C].

    Returns:
        Time from start to end [s].

    Raises:
        ValueError: never here.
    """
'''


def test_a_true_docstring_passes():
    assert problems(GOOD) == []


@pytest.mark.parametrize("text", ["[0..1]", "[0..0.4]", "[0.8..1]"])
def test_a_fraction_may_say_its_range(text):
    assert unit_problem("fat_frac", f"fat_frac: fat by mass {text}.") is None


@pytest.mark.parametrize("text", ["[0..100]", "[%]", "[1..2]"])
def test_a_percentage_is_not_a_fraction(text):
    assert unit_problem("fat_frac", f"fat_frac: fat by mass {text}.")


@pytest.mark.parametrize(
    ("old", "new", "words"),
    [
        ("now [°C]", "now [K]", "start_c: says no [°C]"),
        ("over a line [°C]", "over a line", "end_c: says no [°C]"),
        ("end [s]", "end [min]", "cooling_time_s: says no [s]"),
        ("        end_c: temp", "        stop_c: temp", "but takes"),
        ("start_c, end_c", "end_c, start_c", "but takes"),
        ("start_c, end_c", "start_c, end_c, *, tau_s", "but takes"),
    ],
)
def test_a_planted_fault_is_found(old, new, words):
    assert old in GOOD
    assert any(words in problem for problem in problems(GOOD.replace(old, new, 1)))


def test_a_missing_docstring_is_found():
    assert problems("def heat(): pass") == ["heat: has no docstring"]


def test_a_private_helper_needs_none():
    assert problems("def _heat(a, b): pass") == []


FORMULA = '''
def halved(a, b):
    """Return half of two.

    Args:
        a: one.
        b: other.

    Returns:
        Half.

    Raises:
        ValueError: never here.

    Source: arithmetic.
    Check: half of 2 and 2.

    >>> halved(2, 2)
    2.0
    """
    require_number("a", a)
    return (a + b) / 2
'''


def test_a_formula_that_says_all_passes():
    assert formula_problems(functions(FORMULA)[0]) == []


@pytest.mark.parametrize(
    ("old", "words"),
    [
        ("    Source: arithmetic.\n", "no Source:"),
        ("    Check: half of 2 and 2.\n", "neither Valid: nor Check:"),
        ("    >>> halved(2, 2)\n", "no worked example"),
        ("    Raises:\n        ValueError: never here.\n", "no Raises:"),
        ("    Returns:\n        Half.\n", "no Returns:"),
    ],
)
def test_a_formula_that_leaves_something_out_is_found(old, words):
    assert old in FORMULA
    (function,) = functions(FORMULA.replace(old, ""))
    assert formula_problems(function) == [f"halved: {words}"]
