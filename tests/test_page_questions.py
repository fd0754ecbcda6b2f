"""What the page asks the core: each question is a door of the desk, by its names."""

import inspect
import re
from pathlib import Path

import pytest

from server.core import desk

ASK = Path(__file__).resolve().parents[1] / "static" / "js" / "data" / "ask.js"
QUESTION = re.compile(r'(call|ofDesk)\(\s*"(\w+)"(?:,\s*\{([^}]*)\})?,?\s*\)')


def questions():
    """Return {name: (is of the desk kept, names of the arguments)} from ask.js."""
    found = QUESTION.findall(ASK.read_text("utf-8"))
    return {
        name: (
            way == "ofDesk",
            {one.split(":")[0].strip() for one in given.split(",") if one.strip()},
        )
        for way, name, given in found
    }


def test_every_function_of_ask_is_looked_at():
    functions = re.findall(r"^export function (\w+)", ASK.read_text("utf-8"), re.M)
    assert len(questions()) == len(functions) > 20


@pytest.mark.parametrize(("name", "asked"), sorted(questions().items()))
def test_a_question_of_the_page_is_a_door_of_the_desk(name, asked):
    of_desk, given = asked
    parameters = dict(inspect.signature(getattr(desk, name)).parameters)
    assert ("desk" in parameters) == of_desk
    parameters.pop("desk", None)
    wanted = {key for key, one in parameters.items() if one.default is one.empty}
    assert wanted <= given <= set(parameters)
