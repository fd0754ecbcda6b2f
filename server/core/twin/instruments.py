"""What an instrument shows of the truth: offset, drift, noise, and its last digit."""

import math

from ..units.quantities import QUANTITIES
from .chance import normal
from .truth import true_value

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.twin import Twin

DAY_MS = 86400000.0


def read(twin: "Twin", quantity: str, size: "str | None" = None) -> "float | str":
    """Return what the instrument of a quantity shows now.

    Reading twice at one instant may show two values, as it does at a vat.

    Args:
        twin: the make; the instrument's stream of noise moves on.
        quantity: as the core's quantities name it.
        size: size of wheel, where that is asked.

    Raises:
        Refused: a quantity that the twin does not know.
    """
    true = true_value(twin, quantity, size)
    has = twin["instruments"].get(quantity)
    if isinstance(true, str) or has is None:
        return true
    days = (twin["now_ms"] - twin["start_ms"]) / DAY_MS
    shown = true + has["offset"] + has["drift_per_day"] * days
    shown += has["noise"] * normal(twin["streams"][quantity])
    low, high = QUANTITIES[quantity]["low"], QUANTITIES[quantity]["high"]
    return min(high, max(low, _to_step(shown, has["step"])))


def can_read(twin: "Twin", quantity: str) -> bool:
    """Tell whether there is something to read a quantity with.

    Args:
        twin: the make.
        quantity: as the core's quantities name it.
    """
    return quantity in twin["instruments"] or quantity == "drug_test"


def _to_step(value: float, step: float) -> float:
    if step <= 0.0:
        return value
    # Counted in whole parts, so that 0.1 eleven times is 1.1 to the last digit.
    count = math.floor(value / step + 0.5)
    per = math.floor(1.0 / step + 0.5)
    return count / per if per > 1 else count * step
