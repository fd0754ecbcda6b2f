"""How far a value may lie either side, where one of its inputs may."""

from .outputs import value

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.worked import Inputs, WorkedValue


def with_ends(x: "Inputs", name: str) -> "list[float]":
    """Return what an input is taken as, and its low and high end where it has any.

    Args:
        x: what the sum is worked out from, see `answer.answer`.
        name: the input.
    """
    return [x[name]] + (x["ranges"].get(name) or [])


def ranged(name: str, amounts: "list[float]") -> "WorkedValue":
    """Return one value of an answer from what each of `with_ends` comes to.

    Args:
        name: name of the output.
        amounts: the amount itself first; alone where there is no range.
    """
    if len(amounts) == 1:
        return value(name, amounts[0])
    return value(name, amounts[0], min(amounts), max(amounts))
