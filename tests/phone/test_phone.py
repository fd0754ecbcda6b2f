"""The bridge to the phone's interpreter, on both interpreters.

A small module stands in for the core where a trap has to be provoked.
"""

import json
import math
import runpy
import sys

import pytest

from tests.conftest import ROOT, Phone

TRAPS = """
class BadFact(ValueError):
    pass

def echo(value):
    return value

def join(first, second, sep=" "):
    return first + sep + second

def refuse():
    raise BadFact("temp_c: 140 is above 110")

def slip():
    return {}["absent"]

def _private():
    return 1
"""


@pytest.fixture(scope="module")
def traps(tmp_path_factory):
    folder = tmp_path_factory.mktemp("traps")
    (folder / "core").mkdir()
    (folder / "core" / "__init__.py").write_text("")
    (folder / "core" / "traps.py").write_text(TRAPS)
    return folder


@pytest.fixture(params=["server", "phone"])
def call(request, traps, monkeypatch):
    if request.param == "phone":
        process = Phone(traps)
        yield process
        process.close()
        return
    monkeypatch.syspath_prepend(str(traps))
    host = runpy.run_path(str(ROOT / "static" / "js" / "core" / "host.py"))

    def call(module, name, *args, **kwargs):
        text = json.dumps(
            {"module": module, "name": name, "args": args, "kwargs": kwargs}
        )
        answer = json.loads(host["call"](text))
        if "error" in answer:
            raise RuntimeError(answer["error"])
        return answer["ok"]

    yield call
    for name in [name for name in sys.modules if name.split(".")[0] == "core"]:
        del sys.modules[name]


@pytest.mark.parametrize(
    "value",
    [
        None,
        True,
        0,
        -(2**53),
        1764057600123,
        0.1,
        31.25,
        6.62607015e-34,
        math.pi,
        "",
        "Käse, fromage, 30 °C − “curd” 🧀\n\t\\",
        [],
        [[1, [2, [3]]]],
        {"name": "Quern", "parts": [{"at_ms": 5}, {}]},
    ],
)
def test_a_value_comes_back_as_it_went(call, value):
    assert call("traps", "echo", value) == value


def test_a_named_argument_arrives_by_its_name(call):
    assert call("traps", "join", "curd", second="whey", sep="/") == "curd/whey"


@pytest.mark.parametrize("name", ["_private", "__name__", "", "absent"])
def test_only_public_names_of_the_core_can_be_called(call, name):
    with pytest.raises((ValueError, RuntimeError), match=r"not a public|has no"):
        call("traps", name)


def test_a_module_outside_the_core_cannot_be_reached(call):
    with pytest.raises((ImportError, RuntimeError), match="the core has no os"):
        call("os", "getcwd")


def test_a_refusal_keeps_its_words(call):
    with pytest.raises((ValueError, RuntimeError), match="140 is above 110"):
        call("traps", "refuse")


def test_the_next_call_works_after_a_failed_one(call):
    with pytest.raises((KeyError, RuntimeError), match="absent"):
        call("traps", "slip")
    assert call("traps", "echo", 7) == 7
