"""The one table of what a make can know: which look-up serves which input.

An input's name has one meaning in all sums. Where two sums would ask for two things
under one name, one of them names its own: nothing here asks which sum it is for.
"""

from .vat import acid, heat, hold, milk, temps, wash
from .vat import set as set_of_curd
from .wheel import brine, lab, moulds, store

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any

    from server.shapes.core.state import KnownValue, Scene

PARTS = (milk, temps, heat, hold, set_of_curd, acid, wash, moulds, brine, lab, store)


def joined(
    parts: "tuple[Any, ...]",
) -> "dict[str, Callable[[Scene], KnownValue | None]]":
    """Return the look-ups of several modules in one table.

    Args:
        parts: modules with a table KNOWN, {input name: look-up}.

    Raises:
        KeyError: two of them look up one input.
    """
    table: "dict[str, Callable[[Scene], KnownValue | None]]" = {}
    for part in parts:
        for name in part.KNOWN:
            if name in table:
                raise KeyError(name)
            table[name] = part.KNOWN[name]
    return table


KNOWN = joined(PARTS)
