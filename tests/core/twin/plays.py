"""Makes played once for all tests that look at them, and how a desk tells a maker."""

import copy
import functools

from demo import twin_day
from server.config import read_rules
from server.core import desk
from server.core.twin import play
from tests.conftest import untraced
from tests.core.twin.twins import RECIPE, START_MS

PLAN = {
    "name": "Twin vat",
    "batch": "T-1",
    "milk_l": 1000.0,
    "vat": "Long vat",
    "treatment": "pasteurised",  # the longest of the routes
}
SEED = 3
# The house's recipe with six days in the store instead of four weeks: what happens
# there happens in the first days, and hundreds of turns more tell nothing new.
SHORT = copy.deepcopy(RECIPE)
SHORT["steps"][-1]["lasts"].update(value=6 * 86400, low=5 * 86400, high=8 * 86400)


def played(*faults, seed=SEED, setting=None, told=None, **plan):
    return play.play(
        SHORT, setting or {}, {**PLAN, **plan}, seed, START_MS, list(faults), told
    )


@functools.cache
def whole(*faults):
    """Return a whole make; nobody may change it."""
    with untraced():
        return played(*faults)


def entries(made, kind, **data):
    """Return the bodies of entries of a kind that hold these values."""
    return [
        row["data"]
        for row in made["events"]
        if row["kind"] == kind
        and all(row["data"].get(name) == value for name, value in data.items())
    ]


def values(made, quantity, **data):
    rows = entries(made, "reading_taken", quantity=quantity, **data)
    return [row["value"] for row in rows]


def t_ms(row):
    return row["at_ms"] + row["off_ms"]


def at_min(made, kind, step):
    """Return when a step began or ended, in minutes from the opening."""
    (row,) = [
        row
        for row in made["events"]
        if row["kind"] == kind and row["data"].get("step") == step
    ]
    return (t_ms(row) - START_MS) / 60_000


def truth(made, step):
    """Return the truth at the instant at which a step's end was written down."""
    pairs = zip(made["events"], made["course"], strict=True)
    (found,) = [
        course
        for row, course in pairs
        if row["kind"] == "step_ended" and row["data"]["step"] == step
    ]
    return found


def desk_of(events):
    kept = desk.new()
    desk.set_rules(kept, read_rules())
    problems = desk.take(kept, events)["problems"]
    return kept, problems


class Screen(twin_day.Screen):
    """What a crew is told, and what it was told of."""

    def __init__(self):
        super().__init__(PLAN["milk_l"])
        self.asked = []

    def __call__(self, events, now_ms, step_key, name, size):
        told = super().__call__(events, now_ms, step_key, name, size)
        self.asked.append((step_key, name, size, told))
        return told
