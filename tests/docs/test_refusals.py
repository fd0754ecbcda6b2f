"""Every refusal of the core has its sentence, and every sentence its numbers."""

import ast
import re

from server.core.brine.account import CALLED
from tests.conftest import ROOT

CORE = ROOT / "server" / "core"
ENGLISH = ROOT / "static" / "js" / "messages" / "en" / "sums.js"
SENTENCE = re.compile(r'^  "refused\.(\w+)":\s+"([^"]+)"', re.M)
# Where the key and what follows it stand among the arguments.
CALLS = {"Refused": 0, "require": 1, "problem": 1, "_refused": 1, "_not_answered": 2}
# Chosen by a check of limits; `look_at` follows another sentence.
CHOSEN = {"below", "above", "look_at"}
# Of these, value and limit are those of an input, put in by the reader.
READ = {"_refused", "problem", "_not_answered"}


def sentences():
    return dict(SENTENCE.findall(ENGLISH.read_text("utf-8")))


def refusals():
    """Yield (function called, key, arguments after it, figures) of every refusal."""
    for path in sorted(CORE.rglob("*.py")):
        calls = CALLS if "sums" in path.parts else {"Refused": 0, "require": 1}
        for call in ast.walk(ast.parse(path.read_text("utf-8"))):
            name = getattr(getattr(call, "func", None), "id", "")
            if not isinstance(call, ast.Call) or name not in calls:
                continue
            key, *rest = call.args[calls[name] :] or [None]
            if isinstance(key, ast.Constant) and isinstance(key.value, str):
                yield name, key.value, rest, {one.arg for one in call.keywords}


def test_no_formula_says_in_words_of_its_own_why_it_refuses():
    raised = {
        getattr(getattr(node.exc, "func", None), "id", "")
        for wing in ("formulas", "numbers", "units")
        for path in sorted((CORE / wing).rglob("*.py"))
        for node in ast.walk(ast.parse(path.read_text("utf-8")))
        if isinstance(node, ast.Raise)
    }
    assert raised == {"Refused"}


def test_every_refusal_has_its_sentence():
    keys = {key for _, key, _, _ in refusals()}
    assert len(keys) > 40
    assert sorted(keys - set(sentences())) == []


def test_every_sentence_of_a_refusal_is_said_somewhere():
    keys = {key for _, key, _, _ in refusals()}
    assert sorted(set(sentences()) - keys - CHOSEN) == []


def test_a_refusal_gives_every_number_that_its_sentence_speaks_of():
    told = sentences()
    for name, key, rest, figures in refusals():
        if name in READ:
            continue
        given = {"field", "value"} | figures
        given |= {"limit", "low", "high"} if len(rest) > 2 else set()
        assert set(re.findall(r"\{(\w+)\}", told[key])) <= given, key


def test_whatever_a_tank_cannot_hold_is_named_in_words():
    text = (CORE / "formulas" / "salt" / "brine_tank.py").read_text("utf-8")
    fields = {CALLED.get(one, one) for one in re.findall(r'require\w*\("(\w+)"', text)}
    assert {"salt_out_kg", "brine_salt_frac"} <= fields
    known = ENGLISH.read_text("utf-8")
    starts = ("in.", "out.", "of.")
    named = {one for one in fields if any(f'"{s}{one}"' in known for s in starts)}
    assert sorted(fields - named) == []
