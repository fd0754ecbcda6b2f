"""The cellar: brine tanks and what goes into them.

Loaded when it is first looked at: the app starts without it.
"""

from ..log.apart import ask
from ..log.typed import checked, refused
from ..units.readings import parse

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any

    from server.shapes.core.brine import Tank
    from server.shapes.core.state import Desk


def tanks(desk: "Desk", now_ms: int) -> "list[Tank]":
    """Return the account of every brine tank, see `tanks.tanks`.

    Args:
        desk: Desk.
        now_ms: now, by the server's clock [ms].
    """
    from ..brine.tanks import tanks as accounts
    from ..figures.brining import wants

    def of_one(stream: str, question: "Callable[..., Any]", *args: "Any") -> "Any":
        return ask(desk, stream, "tank", now_ms, question, *args)

    def wants_now(account: "Tank") -> None:
        wants(desk, account, now_ms)

    return accounts(desk["makes"], now_ms, of_one, wants_now)


def read_mass(
    kind: str,
    typed: str,
    unit: str,
    salt_frac: float = 0.0,
    temp_c: "float | None" = None,
    before_kg: "float | None" = None,
) -> "dict[str, Any]":
    """Return the mass that was typed for an entry of a tank, or what is wrong with it.

    Args:
        kind: kind of the entry.
        typed: text as typed, comma or point.
        unit: unit it was typed in, of mass or of volume.
        salt_frac: strength of what is told by volume, mass fraction [0..1]; 0 for
            water.
        temp_c: its temperature [°C]; None for the usual one of a cellar.
        before_kg: mass of the same wheels when they were put in [kg], or None.

    Returns:
        {"value" [kg], "problems", "ask"}; ask as `tanks.second_look`.
    """
    from ..brine.amounts import mass_kg
    from ..brine.amounts import second_look as unlikely

    amount = parse(typed)
    if amount is None:
        return refused([{"field": "mass_kg", "key": "not_a_number", "limit": None}])
    answer = checked(kind, "mass_kg", mass_kg(amount, unit, salt_frac, temp_c))
    if answer["value"] is not None and before_kg is not None:
        answer["ask"] = unlikely(before_kg, answer["value"])
    return answer
