"""Which kind of thing each field of a recipe holds, and how much of it.

One table. What a field means is checked elsewhere; here is only asked whether those
who read it find what they read: a list where they walk along one, yes or no where
they decide. A field may be left out, and where it is one thing it may be null, which
says the same; a list is left out or it is a list. Fields that are not named here are
of newer apps or somebody's own, are read by nobody, and stay as they are.
"""

from ..checks import MAX_KEY
from ..route import DIFFERS
from ..treatments import TREATMENTS

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


MOST_LETTERS = 4000  # of one text, in one language
MOST_LANGUAGES = 40
MOST_NAMED = 200
MOST_STEPS = 120  # a View works through all of them
MOST_ROWS = 60


def _form(
    kind: str,
    most: "int | None" = None,
    of: "dict[str, Any] | None" = None,
    label: "str | None" = None,
) -> "dict[str, Any]":
    return {"kind": kind, "most": most, "of": of, "label": label}


_TEXT = _form("text", MOST_LETTERS)
_KEY = _form("text", MAX_KEY)
_WORDS = _form("words", MOST_LETTERS)
_NUMBER = _form("number")
_YES_NO = _form("yes_no")
_TEXTS = _form("texts", MOST_ROWS)

BY = {"sum": _KEY, "of": _KEY, "size": _KEY}  # "value" is a name or a list of them
# Its other fields are looked at by `figures.check_figure`, wherever one stands.
_FIGURE = _form("mapping", of={"by": _form("mapping", of=BY)})

SOURCE = {"title": _TEXT, "where": _TEXT, "status": _KEY}

END = {
    "by": _KEY,
    "quantity": _KEY,
    "at_least": _FIGURE,
    "at_most": _FIGURE,
    "judgement": _TEXTS,
    "from_step": _KEY,
}

# In each unit by itself, as a thermometer is marked.
_IN_UNITS = _form("mapping", of={"F": _FIGURE, "C": _FIGURE})
OWN_HOLD = {
    "by": _KEY,
    "temp": _IN_UNITS,
    "air_rise": _IN_UNITS,
    "gap_max_s": _FIGURE,
    "why": _WORDS,
}

_HOLD = _form("yes_no_or_mapping", of=OWN_HOLD)

STEP = {
    "key": _KEY,
    "title": _WORDS,
    "now": _form("many_words", MOST_ROWS),
    "do": _form("many_words", MOST_ROWS),
    "place": _KEY,
    "stage": _KEY,
    "round": _NUMBER,
    "rounds": _NUMBER,
    "after": _form("texts", MOST_STEPS),
    "lasts": _FIGURE,
    "end": _form("mapping", of=END),
    "targets": _form(
        "rows",
        MOST_ROWS,
        {
            "quantity": _KEY,
            "size": _KEY,
            "instead_of": _KEY,
            "when": _KEY,
            "figure": _FIGURE,
        },
        "quantity",
    ),
    "readings": _form(
        "rows",
        MOST_ROWS,
        {
            "quantity": _KEY,
            "instead_of": _KEY,
            "when": _KEY,
            "every_s": _NUMBER,
            "required": _YES_NO,
        },
        "quantity",
    ),
    "adds": _TEXTS,
    "cautions": _TEXTS,
    "own_cautions": _form("rows", MOST_ROWS, {"hazard": _KEY, "do": _WORDS}),
    "drift": _form("rows", MOST_ROWS, {"form": _KEY, "quantity": _KEY, "do": _WORDS}),
    "judge": _form("mapping", of={"choices": _TEXTS, "from_frac": _NUMBER}),
    "sums": _TEXTS,
    "size": _KEY,
    "turns": _form("rows", MOST_ROWS, {"every": _FIGURE, "until": _FIGURE}),
    "mould": _YES_NO,
    "closes_day": _YES_NO,
    "heat_treatment": _HOLD,
    "rule": _KEY,
    "treatments": _TEXTS,
    "choice": _KEY,
    "option": _KEY,
}
# What a step may have of its own on one route, see `route.DIFFERS`.
STEP["by_treatment"] = _form(
    "mapping",
    of={
        treatment: _form("mapping", of={name: STEP[name] for name in DIFFERS})
        for treatment in TREATMENTS
    },
)
# Heat-treated milk is held by own figures or not at all: no yes or no there.
STEP["by_treatment"]["of"]["heat_treated"]["of"]["heat_treatment"] = _form(
    "mapping", of=OWN_HOLD
)

MOULD = {
    "size": _KEY,
    "title": _WORDS,
    "wheel_kg": _FIGURE,
    "diameter_m": _FIGURE,
    "height_m": _FIGURE,
    "share_frac": _FIGURE,
}

INGREDIENT = {
    "key": _KEY,
    "title": _WORDS,
    "unit": _KEY,
    "dose": _form("mapping", of={"per": _KEY, "amount": _FIGURE}),
    "tolerance_frac": _NUMBER,
    "optional": _YES_NO,
}

CURVE = {
    "start_step": _KEY,
    "times_s": _form("numbers", MOST_ROWS),
    "phs": _form("numbers", MOST_ROWS),
    "source": _KEY,
    "status": _KEY,
    "note": _TEXT,
}

GATE = {
    "key": _KEY,
    "watch": _KEY,
    "step": _KEY,
    "from_step": _KEY,
    "quantity": _KEY,
    "rule": _KEY,
    "row": _KEY,
    "window_s": _FIGURE,
    "instead": _form("mapping", of={"quantity": _KEY, "least": _FIGURE}),
    "stops": _form(
        "rows", MOST_ROWS, {"what": _KEY, "step": _KEY, "when": _TEXTS}, "what"
    ),
    "do": _WORDS,
}

RECIPE = {
    "schema": _NUMBER,
    "id": _KEY,
    "version": _NUMBER,
    "title": _WORDS,
    "about": _WORDS,
    "family": _KEY,
    "sources": _form("named", MOST_NAMED, SOURCE),
    "milk": _form(
        "mapping",
        of={
            "unit": _KEY,
            "low_l": _NUMBER,
            "high_l": _NUMBER,
            "fat_frac": _FIGURE,
            "heat_class": _KEY,
            "treatments": _TEXTS,
            "usual_treatment": _KEY,
        },
    ),
    "yield_frac": _FIGURE,
    "moulds": _form("rows", MOST_ROWS, MOULD, "size"),
    "ingredients": _form("rows", MOST_ROWS, INGREDIENT, "key"),
    "figures": _form("named", MOST_NAMED, {}),
    "steps": _form("rows", MOST_STEPS, STEP, "key"),
    "curve": _form("mapping", of=CURVE),
    "gates": _form("rows", MOST_ROWS, GATE, "key"),
}
