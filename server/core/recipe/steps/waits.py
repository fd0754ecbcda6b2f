"""Which step waits on which: find circles in which no step could ever begin."""

from ..checks import problem
from ..figures import is_text

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.words import Problem


def check_waits(
    path: str, step: "dict[str, Any]", keys: "list[str]"
) -> "list[Problem]":
    """Return what is wrong with what a step waits on.

    Args:
        path: where the step stands in the recipe.
        step: the step.
        keys: keys of all the recipe's steps.
    """
    if not isinstance(step.get("after"), list):
        return [problem(path + ".after", "not_a_list", None)]
    return [
        problem(path + ".after", "unknown_step", key)
        for key in step["after"]
        if key not in keys
    ]


def check_circles(steps: "list[dict[str, Any]]", keys: "list[str]") -> "list[Problem]":
    """Return the circles in which no step could ever begin.

    Args:
        steps: all steps of the recipe.
        keys: their keys.
    """
    # Of two steps with one key the first counts; the second is reported already.
    waits = {}
    order = []
    for key, step in zip(keys, steps):
        if key not in waits:
            waits[key] = _before(step)
            order.append(key)
    return [
        problem("steps", "circular_wait", circle)
        for circle in circular_waits(waits, order)
    ]


def _before(step: "dict[str, Any]") -> "list[str]":
    after = step.get("after")
    return [key for key in after if is_text(key)] if isinstance(after, list) else []


def circular_waits(
    waits: "dict[str, list[str]]", order: "list[str]"
) -> "list[list[Any]]":
    """Return every circle of steps that wait on each other, one circle a time.

    Works with lists and loops: a hostile recipe may be long, and the phone's
    interpreter allows about 150 nested calls.

    Args:
        waits: for each step the steps it waits on; unknown ones are ignored.
        order: all keys of `waits`, in recipe order.

    Returns:
        List of circles; each names its steps so that every step waits on the
        next one and the last on the first, beginning with the earliest in
        `order`. Circles that share a step are reported as one.
    """
    circles = []
    stuck = _stuck(waits, order)
    while stuck:
        circle = _one_circle(waits, stuck)
        circles.append(_turned_to_earliest(circle, order))
        stuck = _stuck(waits, [key for key in stuck if key not in circle])
    return circles


def _stuck(waits: "dict[str, list[str]]", order: "list[str]") -> "list[str]":
    # Take away every step that could begin; what stays is in or behind a circle.
    left: "dict[str, int]" = {}
    followers: "dict[str, list[str]]" = {}
    for key in order:
        left[key] = 0
        followers[key] = []
    for key in order:
        for before in waits[key]:
            if before in left:
                left[key] += 1
                followers[before].append(key)
    free = [key for key in order if left[key] == 0]
    while free:
        for follower in followers[free.pop()]:
            left[follower] -= 1
            if left[follower] == 0:
                free.append(follower)
    return [key for key in order if left[key] > 0]


def _one_circle(waits: "dict[str, list[str]]", stuck: "list[str]") -> "list[str]":
    # Every stuck step waits on a stuck one, so walking back must meet itself.
    stuck_keys = set(stuck)
    met_at: "dict[str, int]" = {}
    path: "list[str]" = []
    key = stuck[0]
    while key not in met_at:
        met_at[key] = len(path)
        path.append(key)
        key = next(before for before in waits[key] if before in stuck_keys)
    return path[met_at[key] :]


def _turned_to_earliest(circle: "list[str]", order: "list[str]") -> "list[str]":
    first = min(order.index(key) for key in circle)
    start = circle.index(order[first])
    return circle[start:] + circle[:start]
