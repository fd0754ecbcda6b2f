"""The codes of batches: the day and a number, each once in a creamery."""

from ..log.opening import opening
from ..numbers.dates import day_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.state import Desk


def batch_code(desk: "Desk", now_ms: int, tz_min: int) -> str:
    """Return a code for a make opened now that no make known here has.

    Args:
        desk: Desk.
        now_ms: now, by the server's clock [ms].
        tz_min: the phone's time zone east of UTC [min].

    Returns:
        The day as eight digits, a hyphen and the first number that is free.
    """
    day = "%04d%02d%02d-" % day_of(now_ms, tz_min)
    makes = desk["makes"]
    opened = [opening(makes[make_id]) for make_id in makes]
    taken = [entry["data"]["batch"] for entry in opened if entry is not None]
    number = 1
    while day + str(number) in taken:
        number += 1
    return day + str(number)
