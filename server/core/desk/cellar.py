"""The cellar: brine tanks and what goes into them.

Loaded when it is first looked at: the app starts without it.
"""

from ..log.apart import ask

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

    def of_one(stream: str, question: "Callable[..., Any]", *args: "Any") -> "Any":
        return ask(desk, stream, "tank", now_ms, question, *args)

    return accounts(desk["makes"], now_ms, desk.get("rules") or {}, of_one)


def brine_mass_kg(
    amount: float, unit: str, salt_frac: float, temp_c: "float | None"
) -> float:
    """Return the mass of so much brine, or of water, told by mass or by volume [kg].

    Args:
        amount: as it was read, in `unit`.
        unit: a unit of mass or of volume.
        salt_frac: strength, mass fraction of the brine [0..1]; 0 for water.
        temp_c: its temperature [°C]; None for the usual one of a cellar.
    """
    from ..brine.tanks import mass_kg

    return mass_kg(amount, unit, salt_frac, temp_c)


def second_look(in_kg: float, out_kg: float) -> "dict[str, Any] | None":
    """Return what makes a mass out of the tank unlikely, see `tanks.second_look`.

    Args:
        in_kg: mass of the wheels when they were put in [kg].
        out_kg: mass of the same wheels taken out [kg].
    """
    from ..brine.tanks import second_look as unlikely

    return unlikely(in_kg, out_kg)
