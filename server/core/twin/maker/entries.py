"""What people write down: the envelopes that phones make, in the order of the work."""

from ...numbers.bounds import require_count, require_within
from ...numbers.refused import Refused
from ..chance import stream, uuid
from ..course import advance
from ..truth import course_row

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.twin import Maker, Person

DAY_S = 86400.0
DAY_MS = 86400000
QUALITY_MS = 40.0
OFF = ("clock_off_ms", "told_off_ms")
# One for all, late by half a minute to two; both ids are invented.
USUAL: "dict[str, Any]" = {
    "person": "twin-maker",
    "device": "0193a5b0-0000-7000-8000-00000000f001",
    "places": [],
    "low_s": 30.0,
    "usual_s": 60.0,
    "high_s": 120.0,
    "clock_off_ms": 0,
    "told_off_ms": 0,
}


def people(given: "list[dict[str, Any]]") -> "list[Person]":
    """Return who works; the first does what nobody else is at hand for.

    Args:
        given: fields of Person, the usual ones where left out; empty for one person.

    Raises:
        Refused: a field that is not known, or a delay below 0 or out of order.
    """
    found: "list[Any]" = []
    for row in given or [{}]:
        whole = dict(USUAL)
        for name in row:
            if name not in USUAL:
                raise Refused("unknown_input", name, row[name])
            whole[name] = row[name]
        require_within("low_s", whole["low_s"], 0.0, DAY_S)
        require_within("usual_s", whole["usual_s"], whole["low_s"], DAY_S)
        require_within("high_s", whole["high_s"], whole["usual_s"], DAY_S)
        for name in OFF:
            require_count(name, whole[name], -400 * DAY_MS, 400 * DAY_MS)
        found.append(whole)
    return found


def at_place(maker: "Maker", place: "str | None") -> "Person":
    """Return who looks after a place.

    Args:
        maker: the work.
        place: a place of the recipe.
    """
    for row in maker["people"]:
        if place in row["places"]:
            return row
    return maker["people"][0]


def record(
    maker: "Maker", at_ms: int, kind: str, data: "dict[str, Any]", place: "str | None"
) -> None:
    """Write an entry down, once the milk has come so far.

    Args:
        maker: the work; it changes.
        at_ms: when [ms].
        kind: kind of entry.
        data: its body.
        place: where it happens, so who writes.
    """
    twin, who = maker["twin"], at_place(maker, place)
    advance(twin, max(at_ms, twin["now_ms"]))
    device = who["device"]
    own_ms = twin["now_ms"] - who["clock_off_ms"]
    seq = maker["seqs"].get(device, 0) + 1
    maker["seqs"][device] = seq
    ids = twin["streams"]["ids"]
    if device not in maker["boots"]:
        maker["boots"][device] = uuid(ids, own_ms)
    is_told = who["told_off_ms"] == who["clock_off_ms"]
    maker["events"].append(
        {
            "id": uuid(ids, own_ms),
            "make": maker["make"],
            "device": device,
            "seq": seq,
            "person": who["person"],
            "at_ms": own_ms,
            "entered_ms": own_ms,
            "tz_min": 0,
            "mono_ms": float(seq * 1000),
            "boot": maker["boots"][device],
            "off_ms": who["told_off_ms"],
            "off_q_ms": QUALITY_MS if is_told else None,
            "kind": kind,
            "v": 1,
            "ref": None,
            "data": data,
        }
    )
    maker["course"].append(course_row(twin))


def own_streams(maker: "Maker") -> None:
    """Give the twin the streams that people draw from.

    Args:
        maker: the work; its twin changes.
    """
    twin = maker["twin"]
    for name in ("ids", "people"):
        twin["streams"][name] = stream(twin["seed"], name)
