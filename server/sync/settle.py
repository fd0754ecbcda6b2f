"""Let a person decide what becomes of an item that the log did not take."""

from server.shapes import Problem
from server.store import log, look, people, writing
from server.store.head import locked_head
from server.sync.items import read_item
from server.sync.proofs import accepted_state
from server.sync.push import new_event_of

WAYS = ("accept", "keep_aside")
TOO_MUCH = ("too_large", "too_deep")


def settle(n: int, way: str, why: str, by: str, now_ms: int) -> list[Problem]:
    """Take an item into the log after all, or leave it aside for good.

    The item itself stays in the list with who decided, when and why.

    Args:
        n: the item's number.
        way: "accept" or "keep_aside".
        why: the person's words.
        by: id of the person.
        now_ms: server time [ms].

    Returns:
        What stands against it; empty when it was done.

    Raises:
        ValueError: `way` is neither of the two.
    """
    if way not in WAYS:
        raise ValueError(f"an item is settled as one of {WAYS}, not {way!r}")
    with writing():
        locked_head()
        found = look.find_look(n)
        if found is None:
            return [{"field": "n", "key": "unknown_item", "limit": None}]
        if found.settled_as is not None:
            return [{"field": "n", "key": "settled_already", "limit": None}]
        problems = _accept(found, now_ms) if way == "accept" else []
        if not problems:
            look.settle_looks([n], way, why, by, now_ms)
        return problems


def _accept(found: look.Look, now_ms: int) -> list[Problem]:
    raw = found.event
    event = new_event_of(raw) if isinstance(raw, dict) else None
    if event is None:
        return [{"field": "id", "key": "not_a_uuid", "limit": None}]
    # Every phone would have to keep it, and none could show it.
    large = [why for why in read_item(raw).problems if why["key"] in TOO_MUCH]
    if large:
        return large
    if log.taken_ids([event.id]):
        return [{"field": "id", "key": "id_taken", "limit": event.id}]
    phone = people.find_device(found.device)
    state = accepted_state(raw, phone.person if phone else "")
    log.add_events([event._replace(proof_state=state)], now_ms)
    return []
