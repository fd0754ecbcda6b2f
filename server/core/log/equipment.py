"""What a creamery has: frozen into a make at its opening, added to while it runs.

Rules first.
1. A key is the name of the sums' input that it serves, or a word of the
   heat-treatment record; `sums.equipment` lists them, with unit and limits. Here
   nothing is known of limits, so that an entry which was sound once stays so.
2. The opening of a make freezes a mapping {key: value in the input's unit}.
   An `equipment_set` entry alters one key from then on; the newest one holds.
   Beside the values stand "typed", {key: [as typed, unit]}, and for what was
   agreed with the authority a key of AGREED with whom it was agreed.
3. A value and whom it was agreed with belong together: a new value without a
   name leaves none standing.
4. What a vat itself showed, such as its time constant, is no equipment: it is
   learnt from its makes, and nothing here goes before it.
5. Of a bottle or pack the key of its lot comes first: see `labels`.
6. Keys that are not known here, of older or newer apps, are kept.
"""

from ..units.quantities import check_number
from . import run
from .equipment_form import AGREED, BESIDE
from .labels import is_same_lot, label_keys
from .opening import opening

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.equipment import EquipmentSet
    from server.shapes.core.state import Desk, State

# Of one vat and its recorder alone: another vat does not take it over.
OF_VAT = (
    "heating",
    "power_kw",
    "recorder_number",
    "gap_max_s",
    "gap_agreed_with",
    "extra_hold_s",
)


def in_effect(state: "State") -> "dict[str, Any]":
    """Return the equipment of a make as it stands: its opening's, then what was set.

    Args:
        state: State of the make.

    Returns:
        {key: value} with "typed" and the keys of AGREED; see the module's rules.
    """
    equipment: "dict[str, Any]" = {"typed": {}}
    opened = opening(state)
    base = None if opened is None else opened["data"].get("equipment")
    base = base or {}
    for key in base:
        equipment[key] = base[key]
    typed = equipment["typed"]
    equipment["typed"] = dict(typed) if isinstance(typed, dict) else {}
    for entry in run.entries(state, "equipment_set"):
        _set(equipment, entry["data"])
    return equipment


def has_any(equipment: "dict[str, Any]") -> bool:
    """Tell whether equipment says anything beside how it was typed and agreed.

    Args:
        equipment: see `in_effect`.
    """
    return any(key not in BESIDE for key in equipment)


def altered(
    equipment: "dict[str, Any]", edits: "dict[str, EquipmentSet | None]"
) -> "dict[str, Any]":
    """Return equipment with what was altered in it, as a make is to be opened with it.

    Args:
        equipment: see `in_effect`; not changed.
        edits: {key: {"value", "typed" [as typed, unit], "agreed_with"}, or None
            where it was taken out}; typed and agreed_with only where there are any.
    """
    after = dict(equipment)
    after["typed"] = dict(equipment["typed"])
    for key in sorted(edits, key=lambda key: (not label_keys(key), key)):
        edit = edits[key]
        _leave_bottle(after, key, None if edit is None else edit["value"])
        _take_out(after, key)
        if edit is not None:
            _put(after, key, edit["value"], edit.get("typed"), edit.get("agreed_with"))
    return after


def _set(equipment: "dict[str, Any]", data: "dict[str, Any]") -> None:
    key, typed = data["key"], None
    if data.get("typed") is not None:
        typed = [data["typed"], data.get("typed_unit") or ""]
    _leave_bottle(equipment, key, data["value"])
    _take_out(equipment, key)
    _put(equipment, key, data["value"], typed, data.get("agreed_with"))


def _leave_bottle(equipment: "dict[str, Any]", key: str, lot: "Any") -> None:
    """Take out what the label of the last bottle said, where the lot is another."""
    if equipment.get(key) and lot and not is_same_lot(equipment[key], lot):
        for name in label_keys(key):
            _take_out(equipment, name)


def _take_out(equipment: "dict[str, Any]", key: str) -> None:
    equipment.pop(key, None)
    equipment["typed"].pop(key, None)
    if key in AGREED:
        equipment.pop(AGREED[key], None)


def _put(
    equipment: "dict[str, Any]",
    key: str,
    value: "Any",
    typed: "list[str] | None",
    agreed_with: "str | None",
) -> None:
    equipment[key] = value
    if typed:
        equipment["typed"][key] = typed
    if key in AGREED and agreed_with:
        equipment[AGREED[key]] = agreed_with


def of_make(desk: "Desk", make_id: str) -> "dict[str, Any]":
    """Return the equipment of a make that a desk holds, see `in_effect`.

    Args:
        desk: Desk.
        make_id: UUID of the make.
    """
    state = desk["makes"].get(make_id)
    return {"typed": {}} if state is None else in_effect(state)


def served(equipment: "dict[str, Any]", item: "dict[str, Any]") -> "Any":
    """Return what equipment says of one input of a sum, or None.

    A value that the input could not take is not handed on: it is asked for.

    Args:
        equipment: see `in_effect`.
        item: the sum's input.
    """
    told: "Any" = equipment.get(item["name"])
    if item["kind"] == "choice":
        return told if told in item["choices"] else None
    if item["kind"] == "series" or check_number("", told, item["low"], item["high"]):
        return None
    if item["kind"] == "count" and told != int(told):
        return None
    if item["name"] in AGREED and not equipment.get(AGREED[item["name"]]):
        return None  # on nobody's word: the rule's own figure stands
    return told
