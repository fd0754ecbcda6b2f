"""A maker's hands: one thing after another, each as late as people are.

What is to come lies on an agenda by its time. What is done at one time takes some
time itself: a tap, a look at the thermometer, a jug.
"""

from ...recipe.own import ingredient
from .. import acts
from ..chance import between, delay_s
from ..course import advance
from ..faults import levers
from ..instruments import read
from . import habits
from .entries import at_place, record

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.twin import Maker

TAP_S, POUR_S = (8.0, 25.0), (25.0, 70.0)
# Read for each size of wheel; the place of the reading names the size.
BY_SIZE = ("wheel_mass_kg", "press_gauge_kpa")


def plan_at(maker: "Maker", at_ms: float, key: str, what: str, arg: "Any") -> None:
    """Put something on the agenda.

    Args:
        maker: the work; it changes.
        at_ms: when [ms].
        key: key of the step that it belongs to.
        what: a key of `play.DOES`.
        arg: what it needs besides.
    """
    maker["asked"] += 1
    row = [int(at_ms), maker["asked"], key, what, arg]
    agenda, place = maker["agenda"], len(maker["agenda"])
    # Most of what is planned lies ahead of the rest, so walk back from the end; by
    # time and then by number, which no two share.
    while place and agenda[place - 1][:2] > row[:2]:
        place -= 1
    agenda.insert(place, row)


def late_ms(maker: "Maker", step: "RecipeStep") -> float:
    """Draw how late the person of a step is [ms].

    Args:
        maker: the work; the people's stream moves on.
        step: the step.
    """
    who = at_place(maker, step.get("place"))
    of = maker["twin"]["streams"]["people"]
    return 1000.0 * delay_s(of, who["low_s"], who["usual_s"], who["high_s"])


def spend(maker: "Maker", span_s: "tuple[float, float]") -> None:
    """Let the time pass that hands need.

    Args:
        maker: the work; its twin moves on.
        span_s: least and most [s].
    """
    twin = maker["twin"]
    taken_s = between(twin["streams"]["people"], span_s[0], span_s[1])
    advance(twin, twin["now_ms"] + int(1000.0 * taken_s))


def write(
    maker: "Maker", step: "RecipeStep", kind: str, data: "dict[str, Any]"
) -> None:
    """Write down an entry of a step, now.

    Args:
        maker: the work; it changes.
        step: the step in hand.
        kind: kind of entry.
        data: its body but for the step.
    """
    body = dict(data)
    body["step"] = step["key"]
    record(maker, maker["twin"]["now_ms"], kind, body, step.get("place"))


def do(maker: "Maker", step: "RecipeStep", act: "dict[str, Any]") -> None:
    """Do an act to the milk, as a fault would have it.

    Args:
        maker: the work; its twin changes.
        step: the step in hand.
        act: see `acts.act`.
    """
    acts.act(maker["twin"], levers.aimed(maker, step, act))


def take(maker: "Maker", step: "RecipeStep", quantity: str) -> None:
    """Read an instrument and write down what it shows; of wheels, one of each size.

    Args:
        maker: the work; it changes.
        step: the step in hand.
        quantity: what is read.
    """
    if quantity not in BY_SIZE:
        put_down(maker, step, quantity, read(maker["twin"], quantity), None)
        return
    for wheels in maker["twin"]["wheels"]:
        if step.get("size") in (None, wheels["size"]):
            size = wheels["size"]
            put_down(maker, step, quantity, read(maker["twin"], quantity, size), size)


def put_down(
    maker: "Maker",
    step: "RecipeStep",
    quantity: str,
    value: "float | str",
    size: "str | None",
) -> None:
    """Write down a reading.

    Args:
        maker: the work; it changes.
        step: the step in hand.
        quantity: what was read.
        value: what the instrument showed.
        size: size of wheel, or None.
    """
    data: "dict[str, Any]" = {"quantity": quantity, "value": value}
    if not isinstance(value, str):
        maker["seen"][quantity] = value
        data["value"] = levers.typed(maker, step, quantity, value)
    if size is not None:
        data["place"] = size
    write(maker, step, "reading_taken", data)
    spend(maker, TAP_S)


def add(maker: "Maker", step: "RecipeStep", key: str) -> None:
    """Put an ingredient in and write it down; one that may be left out is.

    Args:
        maker: the work; it changes.
        step: the step in hand.
        key: the ingredient.
    """
    row = ingredient(maker["recipe"], key)
    if not row or row.get("optional") or levers.omits(maker, step, "add", key):
        return
    spend(maker, POUR_S)
    dose = habits.dose(maker, step, row)
    act = {"kind": "add", "ingredient": key, "amount": dose["value"]}
    act["unit"] = dose["unit"]
    do(maker, step, act)
    maker["doses_ms"][step["key"]] = maker["twin"]["now_ms"]
    data = {"ingredient": key, "amount": dose["value"], "unit": dose["unit"]}
    data["lot"] = "T-" + key[:12]
    write(maker, step, "ingredient_added", data)
    spend(maker, TAP_S)
