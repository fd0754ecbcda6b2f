"""What a PIN must be: digits that nobody tries first."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.words import Problem


SHORTEST = 4
LONGEST = 8
DIGITS = "0123456789"


def check_pin(pin: str) -> "list[Problem]":
    """Return what speaks against a new PIN; the PIN itself is never told back.

    Args:
        pin: the digits as text.

    Returns:
        List of {"field", "key", "limit"}, at most one problem.
    """
    if not isinstance(pin, str) or [letter for letter in pin if letter not in DIGITS]:
        return [_problem("pin_not_digits", None)]
    if len(pin) < SHORTEST:
        return [_problem("pin_too_short", SHORTEST)]
    if len(pin) > LONGEST:
        return [_problem("pin_too_long", LONGEST)]
    if _is_run(pin) or _is_repeated(pin):
        return [_problem("pin_too_easy", None)]
    return []


def _problem(key: str, limit: "int | None") -> "Problem":
    return {"field": "pin", "key": key, "limit": limit}


def _is_run(pin: str) -> bool:
    """Tell whether each digit follows the one before alike: 1234, 8642, 0000."""
    steps = [int(pin[at + 1]) - int(pin[at]) for at in range(len(pin) - 1)]
    first = steps[0] % 10  # 8901 goes on past the nine
    return all(step % 10 == first for step in steps)


def _is_repeated(pin: str) -> bool:
    """Tell whether a piece of at most half the PIN makes all of it: 1212, 123123."""
    for length in (1, 2, 3, 4):
        if len(pin) >= 2 * length and pin[length:] == pin[:-length]:
            return True
    return False
