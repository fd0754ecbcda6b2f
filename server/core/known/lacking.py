"""What a make surely lacks for a sum, told before the sum is loaded."""

from ..sums.needs import NEEDS, WAYS
from .inputs import looked_up

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.state import KnownValue, Scene

    LookedUp = dict[str, KnownValue | None]


def lacking(scene: "Scene", key: str, told: "LookedUp") -> "list[str]":
    """Return the inputs of a sum that are missing, as its Answer would name them.

    Args:
        scene: see `inputs.scene`.
        key: key of the sum.
        told: {input name: what its look-up told}; what is looked up here is added.

    Returns:
        List of names; empty where nothing is missing, or the sum itself must say.
    """
    missing = _missing(scene, NEEDS.get(key, ()), told)
    if missing or missing is None or key not in WAYS:
        return missing or []
    chooser, usual, ways = WAYS[key]
    chosen = looked_up(scene, chooser, told)
    word = scene["equipment"].get(chooser) if chosen is None else chosen["value"]
    return _missing(scene, ways.get(str(word or usual), ()), told) or []


def _missing(
    scene: "Scene", names: "tuple[str, ...]", told: "LookedUp"
) -> "list[str] | None":
    """Return the names that nobody knows; None where equipment may serve one."""
    unknown = [name for name in names if looked_up(scene, name, told) is None]
    # Whether the sum can take what was entered, its row alone knows.
    if any(scene["equipment"].get(name) is not None for name in unknown):
        return None
    return unknown
