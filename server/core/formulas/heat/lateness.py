"""Whether a forecast, of heat or of acid, will come in time."""

from ...numbers.refused import require

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


def lateness(
    low_s: "float | None", high_s: "float | None", due_s: float
) -> "dict[str, Any]":
    """Return whether a forecast will come in time, as early as that is known.

    Args:
        low_s: earliest time of the 90 % range [s], or None.
        high_s: latest time of the 90 % range [s], or None.
        due_s: time by which it is wanted, on the same clock [s].

    Returns:
        {"basis"}: "time.in_time" when the whole range is, "time.not_in_time" when
        none of it is, "time.may_be_late" between, "time.not_known" without a
        range. {"late_s"}: least lateness when not in time, else None.

    Raises:
        Refused: the range is the wrong way round.

    Source: comparison of a range with an instant.
    Check: a range of 10 to 12 min is not in time for 9 min, by 1 min at least.

    >>> lateness(600, 720, 540)["late_s"]
    60
    """
    if low_s is None:
        return {"basis": "time.not_known", "late_s": None}
    in_order = high_s is None or high_s >= low_s
    require(in_order, "below", "high_s", high_s, low_s)
    if low_s > due_s:
        return {"basis": "time.not_in_time", "late_s": low_s - due_s}
    in_time = high_s is not None and high_s <= due_s
    return {"basis": "time.in_time" if in_time else "time.may_be_late", "late_s": None}
