"""Gates of a recipe: what is waited for, at which step, and what it stops until then.

A gate says where; what may be done about it, and by whom, is the rules' to say. So
no step key and no rule stands in code.

    {"key": "hold", "watch": "hold", "step": "hold",
     "stops": [{"what": "begin", "step": "cool"}, {"what": "release"}]}

What a stop says of a step holds for all that waits on it, too. `when` limits a stop
to words of the watcher: milk that tested positive stops more than a test that is
missing. `instead` names what may be read where a gate's quantity is not, with the
`least` that it must show where a source has such a figure.
"""

from ...units.quantities import QUANTITIES
from ..checks import check_choice, check_key, check_keys, mappings, problem

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import Recipe, RecipeGate
    from server.shapes.core.words import Problem


# What each watcher must be told; see `matters.watch`.
WATCHES = {
    "test": ("step", "quantity"),
    "hold": ("step",),
    "recorder": ("step",),
    "thermometer": ("step",),
    "acid": ("step", "from_step", "quantity", "rule", "row"),
    "curing": ("step",),
    "laboratory": ("step",),
}
BEGIN, END, CLOSE, RELEASE = "begin", "end", "close", "release"
OF_A_STEP = (BEGIN, END)
WHATS = (BEGIN, END, CLOSE, RELEASE)


def gates_of(recipe: "Recipe") -> "list[RecipeGate]":
    """Return the gates of a recipe whose step is on its route.

    Args:
        recipe: a sound recipe.
    """
    keys = [step["key"] for step in recipe["steps"]]
    return [gate for gate in recipe.get("gates", []) if gate["step"] in keys]


def behind(recipe: "Recipe", key: str) -> "list[str]":
    """Return a step and all that it waits on, at whatever distance.

    Args:
        recipe: a sound recipe.
        key: key of the step.
    """
    after = {step["key"]: step.get("after", []) for step in recipe["steps"]}
    found, asked = [key], [key]
    while asked:
        for one in after.get(asked.pop(), []):
            if one not in found:
                found.append(one)
                asked.append(one)
    return found


def check_gates(recipe: "dict[str, Any]", steps: "list[str]") -> "list[Problem]":
    """Return everything that is wrong with the gates of a recipe.

    Args:
        recipe: the recipe; its sources are a mapping.
        steps: keys of its steps.
    """
    if recipe.get("gates") is None:
        return []
    # Loaded when a recipe is checked: the app starts without it.
    from ..figures import check_figure

    sources: "Any" = recipe["sources"]
    gates, problems = mappings("gates", recipe["gates"])
    paths, _, wrong = check_keys("gates", gates, "key")
    problems.extend(wrong)
    for path, gate in zip(paths, gates):
        problems.extend(_check_watch(path, gate, steps))
        problems.extend(_check_stops(path + ".stops", gate.get("stops"), steps))
        if gate.get("window_s") is not None:
            field, figure = path + ".window_s", gate["window_s"]
            problems.extend(check_figure(field, figure, sources, ["s"], 60, 86400))
        if isinstance(gate.get("instead"), dict):
            problems.extend(_check_instead(path + ".instead", gate["instead"], sources))
    return problems


def _check_watch(
    path: str, gate: "dict[str, Any]", steps: "list[str]"
) -> "list[Problem]":
    watch = gate.get("watch")
    names = sorted(WATCHES)
    problems = check_choice(path + ".watch", watch, names, "not_a_choice")
    for name in ("step",) if problems else WATCHES[str(watch)]:
        problems.extend(check_key(path + "." + name, gate.get(name)))
    for name in ("step", "from_step"):
        if gate.get(name) is not None and gate[name] not in steps:
            problems.append(problem(path + "." + name, "unknown_step", gate[name]))
    return problems


def _check_instead(path: str, instead: "Any", sources: "Any") -> "list[Problem]":
    quantity = instead.get("quantity")
    row = QUANTITIES.get(quantity) if isinstance(quantity, str) else None
    if row is None or "unit" not in row:
        return [problem(path + ".quantity", "not_a_choice", quantity)]
    if instead.get("least") is None:
        return []
    from ..figures import check_figure

    return check_figure(path + ".least", instead["least"], sources, [row["unit"]])


def _check_stops(path: str, stops: "Any", steps: "list[str]") -> "list[Problem]":
    rows, problems = mappings(path, stops)
    if not rows and not problems:
        return [problem(path, "missing", None)]
    for index, row in enumerate(rows):
        here = path + "." + str(index)
        what, step = row.get("what"), row.get("step")
        problems.extend(check_choice(here + ".what", what, WHATS, "not_a_choice"))
        if what in OF_A_STEP and step not in steps:
            problems.append(problem(here + ".step", "unknown_step", step))
    return problems
