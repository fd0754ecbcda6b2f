"""The ledger of a tank: its entries in their order, each booked once.

A measured strength is believed from then on; how far the ledger was off it is kept
beside it as drift.
"""

from ..log import run
from ..log.order import sort_key
from ..log.readings import every
from ..make.practice import is_practice
from .account import change
from .loads import book_inside, load_of, unload

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.brine import Tank
    from server.shapes.core.state import Entry, State

KINDS = (
    "salt_added",
    "water_added_to_tank",
    "tank_loaded",
    "tank_unloaded",
)


def _practised(makes: "dict[str, State]", state: "State") -> "list[str]":
    """Return the ids of loads that a practice make put in: no wheel is there."""
    return [
        entry["id"]
        for entry in run.entries(state, "tank_loaded")
        if is_practice(makes.get(entry["data"]["load_make"]))
    ]


def in_order(state: "State", makes: "dict[str, State]") -> "list[dict[str, Any]]":
    """Return all that counts in a tank's account, oldest first.

    Args:
        state: State of the tank.
        makes: {stream id: State}.

    Returns:
        List of entries with their "kind"; "measured" for a strength that was read.
    """
    practised = _practised(makes, state)
    entries = [_of_kind(entry, "measured") for entry in every(state, "brine_salt_frac")]
    for kind in KINDS:
        entries.extend(
            _of_kind(entry, kind)
            for entry in run.entries(state, kind)
            if entry["id"] not in practised
            and entry["data"].get("load") not in practised
        )
    return sorted(entries, key=sort_key)


def _of_kind(entry: "Entry", kind: str) -> "dict[str, Any]":
    told: "dict[str, Any]" = dict(entry)
    told["kind"] = kind
    return told


def book(account: "Tank", makes: "dict[str, State]", entry: "dict[str, Any]") -> None:
    """Book one entry.

    Args:
        account: account of the tank; changed in place.
        makes: {stream id: State}.
        entry: see `in_order`.
    """
    data = entry["data"]
    if entry["kind"] == "salt_added":
        change(account, data["mass_kg"], 0.0)
    elif entry["kind"] == "water_added_to_tank":
        change(account, 0.0, data["mass_kg"])
    elif entry["kind"] == "tank_loaded":
        account["loads"].append(load_of(entry))
    elif entry["kind"] == "tank_unloaded":
        unload(account, makes, entry)
    else:
        _measure(account, makes, entry)


def _measure(account: "Tank", makes: "dict[str, Any]", entry: "dict[str, Any]") -> None:
    # What the wheels inside have taken by now is in what was measured.
    book_inside(account, makes, entry["t_ms"])
    measured = entry["data"]["value"]
    account["drift_frac"] = measured - account["salt_frac"]
    account["measured"] = {
        "id": entry["id"],
        "at_ms": entry["t_ms"],
        "value": measured,
        "typed": entry["data"].get("typed"),
        "typed_unit": entry["data"].get("typed_unit"),
    }
    account["salt_frac"] = measured
    account["salt_kg"] = measured * account["mass_kg"]
