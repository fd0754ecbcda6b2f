"""Whether makes of one recipe are alike: a chart for each figure worth watching.

Makes come in the order they were opened. Abandoned ones are left out. Below ten
makes a chart has points and no limits. Beside the single values runs their weighted
average of late, which feels a small shift that lasts sooner than they do.
"""

from ..log.opening import opening, recipe_of
from ..log.readings import every
from ..log.standing import make_state
from ..make.curd import floc_s
from ..make.plan import milk_in
from ..make.practice import is_practice
from ..make.wheels import cheese_kg
from ..numbers import spc

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any

    from server.shapes.core.state import Entry, State
    from server.shapes.core.trends import Chart, ChartAverage, ChartPoint, ChartVerdict

# NIST/SEMATECH e-Handbook, 6.3.2.4: 0.2 to 0.3, and three standard deviations.
AVERAGE_WEIGHT = 0.3
AVERAGE_WIDTH = 3.0


def _plainly(stream: str, question: "Callable[..., Any]", *args: "Any") -> "Any":
    return question(*args)


def trends(
    makes: "dict[str, State]", recipe_id: str, of_one: "Callable[..., Any]" = _plainly
) -> "list[Chart]":
    """Return the charts of one recipe.

    Args:
        makes: {stream id: State}.
        recipe_id: "id" of the recipe; every version of it counts.
        of_one: asks a question of one make, see `apart.ask`.

    Returns:
        List of {"key", "unit", "points", "chart", "average"}: key "ph_at_drain",
        "floc_time", "yield" or "salt"; points list of {"make", "batch", "at_ms",
        "value"}, oldest first; chart as `formulas.spc.control_chart`, its indices
        counting in points, or None without points; average {"values": one for
        each point, "low", "high", "beyond": indices}, or None where the chart has
        no limits or the points no spread.
    """
    told = []
    for state, opened in _makes(makes, recipe_id):
        figures = of_one(state["make"], _figures, state, opened)
        if figures is not None:
            told.append((state["make"], opened, figures))
    return [_chart(told, key, unit) for key, unit, _ in FIGURES]


def _chart(told: "list[tuple[str, Entry, Any]]", key: str, unit: str) -> "Chart":
    points: "list[ChartPoint]" = [
        {
            "make": make,
            "batch": opened["data"]["batch"],
            "at_ms": opened["t_ms"],
            "value": figures[key],
        }
        for make, opened, figures in told
        if figures[key] is not None
    ]
    values = [point["value"] for point in points]
    chart = spc.control_chart(values) if points else None
    return {
        "key": key,
        "unit": unit,
        "points": points,
        "chart": chart,
        "average": _average(values, chart),
    }


def _average(
    values: "list[float]", chart: "ChartVerdict | None"
) -> "ChartAverage | None":
    limits = chart["limits"] if chart else None
    if limits is None or limits["spread"] <= 1e-9 * abs(limits["mean"]):
        return None  # equal values leave only the noise of the last digit
    averages = spc.ewma(values, limits["mean"], AVERAGE_WEIGHT)
    ends = spc.ewma_limits(
        limits["mean"], limits["spread"], AVERAGE_WEIGHT, AVERAGE_WIDTH
    )
    beyond = [
        i
        for i in range(len(averages))
        if not ends["low"] <= averages[i] <= ends["high"]
    ]
    return {
        "values": averages,
        "low": ends["low"],
        "high": ends["high"],
        "beyond": beyond,
    }


def _makes(makes: "dict[str, State]", recipe_id: str) -> "list[tuple[State, Entry]]":
    opened_makes = []
    for stream in sorted(makes):
        state = makes[stream]
        opened, recipe = opening(state), recipe_of(state)
        if opened is None or recipe is None or recipe["id"] != recipe_id:
            continue
        if make_state(state) != "abandoned" and not is_practice(state):
            opened_makes.append((state, opened))
    opened_makes.sort(key=lambda pair: (pair[1]["t_ms"], pair[0]["make"]))
    return opened_makes


def _figures(state: "State", opened: "Entry") -> "dict[str, Any]":
    return {key: look_up(state, opened) for key, _, look_up in FIGURES}


def _ph_at_drain(state: "State", opened: "Entry") -> "float | None":
    """Return the first pH of the first step that draws whey off."""
    recipe = recipe_of(state)
    for step in recipe["steps"] if recipe else []:
        wanted = [reading["quantity"] for reading in step.get("readings", [])]
        if "whey_drained_l" in wanted and "ph" in wanted:
            for entry in every(state, "ph"):
                if entry["data"].get("step") == step["key"]:
                    return entry["data"]["value"]
            return None
    return None


def _floc_s(state: "State", opened: "Entry") -> "float | None":
    recipe = recipe_of(state)
    return None if recipe is None else floc_s(state, recipe)


def _yield_frac(state: "State", opened: "Entry") -> "float | None":
    """Return the cheese for a kilogram of milk, where all wheels were weighed."""
    total_kg = cheese_kg(state)
    milk_kg = milk_in(state, opened["data"])["milk_kg"]
    return total_kg / milk_kg if total_kg and milk_kg > 0 else None


def _salt_frac(state: "State", opened: "Entry") -> "float | None":
    salts = [entry["data"]["value"] for entry in every(state, "cheese_salt_frac")]
    return sum(salts) / len(salts) if salts else None


FIGURES = (
    ("ph_at_drain", "pH", _ph_at_drain),
    ("floc_time", "s", _floc_s),
    ("yield", "fraction", _yield_frac),
    ("salt", "fraction", _salt_frac),
)
