"""What an answer stands on is said by the core: the weakest figure, by its name."""

import pytest

from server.core.sums.standing import standing
from tests.core.sums.asking import answer

ROW = {
    "inputs": [
        {"name": "heating", "kind": "choice"},
        {"name": "milk_kg", "kind": "number"},
        {"name": "dose", "kind": "number"},
    ]
}


def rests(name, status, origin="default"):
    return {"name": name, "status": status, "from": origin}


@pytest.mark.parametrize(
    ("told", "basis", "is_figure", "names"),
    [
        ([rests("milk_kg", "measured", "make")], "typed", True, []),
        (
            [rests("milk_kg", "measured", "typed"), rests("dose", "read")],
            "published",
            True,
            [],
        ),
        ([rests("dose", "practice")], "practice", True, ["dose"]),
        (
            [rests("dose", "practice"), rests("milk_kg", "memory")],
            "memory",
            True,
            ["milk_kg"],
        ),
        # A way that is chosen is told only where no figure is weak.
        (
            [rests("heating", "practice"), rests("dose", "setting")],
            "setting",
            True,
            ["dose"],
        ),
        (
            [rests("heating", "practice"), rests("dose", "read")],
            "practice",
            False,
            ["heating"],
        ),
    ],
)
def test_an_answer_stands_on_the_weakest_figure(told, basis, is_figure, names):
    assert standing(ROW, told) == {
        "basis": basis,
        "is_figure": is_figure,
        "names": names,
    }


def test_an_answer_carries_what_it_stands_on(core):
    found = answer(core, "colour", {"milk_kg": 500})
    assert found["standing"]["basis"] == "published"
    missing = answer(core, "colour", {})
    assert missing["standing"] is None
