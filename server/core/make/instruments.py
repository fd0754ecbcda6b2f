"""What is measured here: without its instrument nobody is asked for a reading.

A creamery says which instruments it has. What needs one that it has not is neither
asked for nor missed, unless it was read all the same. A recipe may name what is read
where something else cannot be (`instead_of`): titratable acidity for pH. Each has its
own figure; the two are never turned into each other.
"""

from ..log.equipment import in_effect
from ..log.kinds.columns import EQUIPMENT
from ..log.touches import keep, kept
from ..units.quantities import INSTRUMENTS

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping
    from typing import Any

    from server.shapes.core.state import State


def lacking(state: "State") -> "list[str]":
    """Return the instruments that the creamery of a make says it has not.

    Args:
        state: State of the make.
    """
    told: "list[str] | None" = kept(state, "instruments", "lacking")
    if told is None:
        equipment = in_effect(state)
        told = [name for name in INSTRUMENTS if equipment.get(name) == "no"]
        keep(state, "instruments", "lacking", told, [EQUIPMENT])
    return told


def is_measured(state: "State", quantity: str) -> bool:
    """Tell whether a quantity can be read here.

    Args:
        state: State of the make.
        quantity: key of `quantities.QUANTITIES`.
    """
    return not any(quantity in INSTRUMENTS[name] for name in lacking(state))


def is_wanted(state: "State", row: "Mapping[str, Any]") -> bool:
    """Tell whether a reading or target of a step is this creamery's.

    Args:
        state: State of the make.
        row: a reading or a target of a recipe's step.
    """
    instead_of = row.get("instead_of")
    if instead_of is not None and is_measured(state, instead_of):
        return False
    return is_measured(state, row["quantity"])
