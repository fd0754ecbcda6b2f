"""Which bottle or pack goes into a make, and what its label says.

The entry of an ingredient names its lot, and so does the equipment that its label was
read into. Where the two differ the label is of another bottle: what another make knows
of this lot is taken, else nothing, and the label has to be read.
"""

from ..log import run
from ..log.equipment import in_effect
from ..log.labels import LABELS, is_same_lot
from ..log.opening import opening
from ..make.practice import is_practice

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.state import Desk, State
    from server.shapes.core.step import Bottle


def at_hand(desk: "Desk", state: "State") -> "dict[str, Any]":
    """Return the equipment of a make with the labels of the bottles really used.

    Args:
        desk: Desk.
        state: State of the make.

    Returns:
        As `equipment.in_effect`.
    """
    equipment = in_effect(state)
    for name, (lot_key, keys) in LABELS.items():
        said = equipment.get(lot_key)
        lot = _lot_used(state, name) or said
        if not said or (is_same_lot(lot, said) and _has_any(equipment, keys)):
            continue
        known = _label_elsewhere(desk, state, lot_key, lot, keys)
        for key in keys:
            equipment.pop(key, None)
            equipment["typed"].pop(key, None)
        equipment.update(known)
        equipment[lot_key] = lot
    return equipment


def bottle(desk: "Desk", state: "State", name: str) -> "Bottle | None":
    """Return the bottle that an ingredient of a make comes from, or None.

    Args:
        desk: Desk.
        state: State of the make.
        name: key of the ingredient.

    Returns:
        {"lot", "of_label", "is_read"}: the lot in use or None; the lot whose label
        was read in this make, or None; whether anything of the label is known.
    """
    if name not in LABELS:
        return None
    lot_key, keys = LABELS[name]
    said = in_effect(state).get(lot_key)
    return {
        "lot": _lot_used(state, name) or said,
        "of_label": said,
        "is_read": _has_any(at_hand(desk, state), keys),
    }


def _lot_used(state: "State", name: str) -> "str | None":
    in_hand = state.get("in_hand", {}).get(name)
    if in_hand:
        return in_hand
    entry = run.last(state, "ingredient_added", name)
    return None if entry is None else entry["data"].get("lot")


def _has_any(equipment: "dict[str, Any]", keys: "tuple[str, ...]") -> bool:
    return any(equipment.get(key) is not None for key in keys)


def _label_elsewhere(
    desk: "Desk",
    state: "State",
    lot_key: str,
    lot: "Any",
    keys: "tuple[str, ...]",
) -> "dict[str, Any]":
    """Return what the newest other make knows of a lot's label; empty for nothing."""
    best: "tuple[tuple[int, str], dict[str, Any]] | None" = None
    for stream in desk["makes"]:
        other = desk["makes"][stream]
        opened = opening(other)
        if opened is None or other is state or is_practice(other):
            continue
        rank = (opened["t_ms"], stream)
        equipment = in_effect(other)
        is_it = equipment.get(lot_key) and is_same_lot(equipment[lot_key], lot)
        if is_it and _has_any(equipment, keys) and (best is None or rank > best[0]):
            best = (rank, equipment)
    if best is None:
        return {}
    return {key: best[1][key] for key in keys if best[1].get(key) is not None}
