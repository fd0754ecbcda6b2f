"""The account of each brine tank: what is in it, how strong it should be.

A tank is a stream of its own: its id stands in the place of a make's. Its state
is folded like a make's, so corrections and strikes work alike. How much water goes
with the salt is the published middle until a room types its own; its newest figure
counts for the whole account.
"""

from ..formulas.salt.salting import WATER_SALT_RATIO
from ..log.opening import tank_opening
from ..log.readings import last_value
from .ledger import book, in_order
from .loads import book_inside
from .top_up import USUAL_SALT_FRAC

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any

    from server.shapes.core.brine import Tank, WaterSaltRatio
    from server.shapes.core.state import Entry, State

# Range of the abstract that the usual figure is from.
RATIO_LOW, RATIO_HIGH = 0.5, 2.42


def _plainly(stream: str, question: "Callable[..., Any]", *args: "Any") -> "Any":
    return question(*args)


def tanks(
    makes: "dict[str, State]",
    now_ms: int,
    of_one: "Callable[..., Any]" = _plainly,
    wants: "Callable[[Tank], None] | None" = None,
) -> "list[Tank]":
    """Return the account of every tank, by name.

    Args:
        makes: {stream id: State}, makes and tanks alike.
        now_ms: now, by the server's clock [ms].
        of_one: asks a question of one tank, see `apart.ask`; without it the fault of
            one is the fault of all.
        wants: says in an account when its wheels come out and what its brine wants,
            see `figures.brining`; None where only what is in it is asked.

    Returns:
        List of {"id", "name", "opened_ms", "mass_kg", "salt_kg", "salt_frac",
        "temp_c", "measured" {"value", "at_ms", "id", "typed", "typed_unit"} as it
        was read, or None, "drift_frac" of that measurement against the ledger or
        None, "water_salt_ratio" {"value", "low", "high", "from", "status"},
        "loads" [Load], "wanted_frac", "band" {"low_frac", "high_frac", "bar"} of the
        strength or None, "salt_to_add_kg" or "water_to_add_kg", "outside" [problem],
        "notes" [{"key"}]}. Load is {"id", "make", "size", "wheels", "mass_kg",
        "in_ms", "due_ms", "out_ms", "out_kg", "basis", "salt_kg" taken up and
        "water_kg" given back so far, "salt_due_kg" when it is due, "time" and
        "uptake" as bars}.
    """
    accounts: "list[Tank]" = []
    for stream in sorted(makes):
        opened = tank_opening(makes[stream])
        if opened is not None:
            tank = of_one(stream, _tank, makes, stream, opened, now_ms, wants)
            accounts.extend([] if tank is None else [tank])
    return sorted(accounts, key=lambda tank: (tank["name"], tank["id"]))


def _tank(
    makes: "dict[str, State]",
    stream: str,
    opened: "Entry",
    now_ms: int,
    wants: "Callable[[Tank], None] | None",
) -> "Tank":
    state = makes[stream]
    account: "Tank" = {
        "id": stream,
        "name": opened["data"]["name"],
        "opened_ms": opened["t_ms"],
        "mass_kg": opened["data"]["mass_kg"],
        "salt_kg": opened["data"]["mass_kg"] * opened["data"]["salt_frac"],
        "salt_frac": opened["data"]["salt_frac"],
        "temp_c": last_value(state, "brine_temp_c"),
        "measured": None,
        "drift_frac": None,
        "water_salt_ratio": _ratio(state),
        "loads": [],
        "wanted_frac": USUAL_SALT_FRAC,
        "band": None,
        "salt_to_add_kg": None,
        "water_to_add_kg": None,
        "outside": [],
        "notes": [],
    }
    for entry in in_order(state, makes):
        if opened["t_ms"] <= entry["t_ms"] <= now_ms:
            book(account, makes, entry)
    book_inside(account, makes, now_ms)
    if wants is not None:
        wants(account)
    return account


def _ratio(state: "State") -> "WaterSaltRatio":
    own = last_value(state, "water_salt_ratio")
    return {
        "value": WATER_SALT_RATIO if own is None else own,
        "low": RATIO_LOW,
        "high": RATIO_HIGH,
        "from": "default" if own is None else "typed",
        "status": "abstract" if own is None else "measured",
    }
