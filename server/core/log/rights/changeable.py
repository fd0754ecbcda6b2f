"""What may be changed of one entry of the record, and by whom."""

from ...units.quantities import QUANTITIES
from .. import amends
from ..kinds.allowed import role_for
from ..kinds.columns import ROLES
from ..kinds.table import KINDS
from .legal import about_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.record import Changeable, Mendable, MendForm
    from server.shapes.core.state import Event, State

# What a field is put right on, by the form that it has in the table of kinds.
_FORMS: "dict[str, MendForm]" = {
    "number": "number",
    "int": "count",
    "text": "text",
    "reading": "reading",
    "equipment": "equipment",
}


def changeable(state: "State", entry: str, hand: "dict[str, Any]") -> "Changeable":
    """Return what may be changed of an entry, and the roles that may do it.

    Nothing of what is struck; of what this app cannot read, nothing is corrected.

    Args:
        state: State of the make or tank.
        entry: id of the entry.
        hand: {"device", "person", "boot", "entered_ms"} of whoever would strike it
            now: a slip is taken back at once by whoever made it, see `legal`.

    Returns:
        {"correct": roles, "strike": roles, "fields": list of {"name", "form",
        "unit", "longest"}}; who may correct it may set its instant, too.
    """
    event = state["events"].get(entry)
    if amends.is_struck(state, entry):
        return {"correct": [], "strike": [], "fields": []}
    strike = _roles(state, "entry_struck", entry, hand)
    if event is None:
        return {"correct": [], "strike": strike, "fields": []}
    correct = _roles(state, "entry_corrected", entry, hand)
    return {"correct": correct, "strike": strike, "fields": _fields(state, event)}


def _roles(
    state: "State", kind: str, entry: str, hand: "dict[str, Any]"
) -> "list[str]":
    change = dict(hand)
    change["kind"] = kind
    change["ref"] = entry
    events: "dict[str, Any]" = dict(state["events"])
    least = role_for(kind, about_of(change, events.get))
    return list(ROLES[ROLES.index(least) :])


def _fields(state: "State", event: "Event") -> "list[Mendable]":
    row = KINDS[event["kind"]]
    data = amends.effective(state, event)["data"]
    fields = [
        _field(field, data) for field in row["fields"] if field["name"] in row["mends"]
    ]
    return [field for field in fields if field is not None]


def _field(field: "dict[str, Any]", data: "dict[str, Any]") -> "Mendable | None":
    form = _FORMS[field["type"]]
    if form == "reading" and QUANTITIES[data["quantity"]]["type"] == "choice":
        return None  # taken anew: there is no pad for it
    return {
        "name": field["name"],
        "form": form,
        # An ingredient is measured in a unit that its own entry names.
        "unit": (field["unit"] or data.get("unit")) if form == "number" else None,
        "longest": field["high"] if form == "text" else None,
    }
