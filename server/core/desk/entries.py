"""Entries: what speaks against one, and the tap that records it."""

from ..creamery.kept import file, view
from ..heat.treatment import check_change
from ..log import amends
from ..log.kinds.allowed import may, role_for
from ..log.kinds.event import check_event
from ..log.kinds.table import KINDS
from ..log.rights.legal import about_of
from ..log.rights.proof import proof_for as proof_for
from ..log.rights.roles import rights as rights
from ..matters.stopped import may_be_refused
from ..matters.stopped import refused as passed
from .shown import view_for

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping
    from typing import Any

    from server.shapes.core.record import Changeable
    from server.shapes.core.state import Desk, Event
    from server.shapes.core.view import Reader
    from server.shapes.core.words import Problem


def check(event: "Any", role: str) -> "list[Problem]":
    """Return what speaks against an event, the role of who sends it included.

    Args:
        event: the event.
        role: one of `kinds.columns.ROLES`.

    Returns:
        List of {"field", "key", "limit"}.
    """
    return check_new(event) + _not_allowed(event, role)


def check_new(event: "Any") -> "list[Problem]":
    """Return everything that is wrong with an event about to be recorded.

    What is recorded already is taken by its form alone, see `take`: a limit that
    is drawn tighter later must not make it disappear.

    Args:
        event: the event.

    Returns:
        List of {"field", "key", "limit"}.
    """
    problems = check_event(event)
    if problems or event["kind"] != "equipment_set":
        return problems
    # Its limits are those of the sums, which the app starts without.
    from ..sums.equipment import check_limits

    return check_limits(event)


def check_in_make(desk: "Desk", event: "Event") -> "list[Problem]":
    """Return what of its make speaks against an entry about to be recorded here.

    What another phone recorded without knowing it is kept and shown as it is.

    Args:
        desk: Desk.
        event: the event, sound in itself.

    Returns:
        List of {"field", "key", "limit"}.
    """
    if event["kind"] != "treatment_changed":
        return []
    return check_change(desk["makes"].get(event["make"]), event["data"])


def _not_allowed(
    event: "Mapping[str, Any]", role: str, about: "str | None" = None
) -> "list[Problem]":
    kind = event.get("kind") if isinstance(event, dict) else None
    if not isinstance(kind, str) or kind not in KINDS:
        return []
    if may(role, kind, about):
        return []
    limit = role_for(kind, about)
    return [{"field": "person", "key": "not_allowed", "limit": limit}]


def _about(desk: "Desk", event: "Event") -> "str | None":
    state = desk["makes"].get(event["make"])
    events: "dict[str, Any]" = {} if state is None else dict(state["events"])
    return about_of(dict(event), events.get)


def tap(
    desk: "Desk",
    event: "Event",
    roles: "list[str]",
    make_id: str,
    now_ms: int,
    reader: "Reader | None" = None,
) -> "dict[str, Any]":
    """Check an event, file it and answer with the View, all in one question.

    A tap on a slow phone waits for each exchange with the core; this is the one
    that it needs.

    Args:
        desk: Desk; changed in place when the event is sound.
        event: the event; one that would pass a standing matter is not filed.
        roles: roles that must all be allowed to record it.
        make_id: UUID of the make that is shown, or "".
        now_ms: now, by the server's clock [ms].
        reader: as for `makes.view`.

    Returns:
        {"problems": as from `check`, "view": View or None}; with problems the
        event is not filed.
    """
    problems = check_new(event) or check_in_make(desk, event)
    if not problems:
        about = _about(desk, event)
        for role in roles:
            problems = problems + _not_allowed(event, role, about)
    problems = problems or refused(desk, event, roles, now_ms)
    if problems:
        return {"problems": problems, "view": None}
    file(desk, event)
    return {"problems": [], "view": view_for(desk, make_id, now_ms, reader)}


def refused(
    desk: "Desk", event: "Event", roles: "list[str]", now_ms: int
) -> "list[Problem]":
    """Return which standing matters an event would pass, as far as is known here.

    Args:
        desk: Desk; without the event.
        event: a sound event.
        roles: roles of those who record it.
        now_ms: now, by the server's clock [ms].

    Returns:
        List of {"field", "key", "limit"}, see `matters.stopped.refused`.
    """
    if not may_be_refused(event):
        return []
    make_id = event["data"].get("load_make", event["make"])
    state, shown = desk["makes"].get(make_id), view(desk, make_id, now_ms)
    if state is None or shown is None:
        return []
    return passed(state, shown["matters"], event, roles, desk.get("rules", {}))


def check_correction(
    desk: "Desk", make_id: str, ref: str, changes: "dict[str, Any]"
) -> "list[Problem]":
    """Return what speaks against a correction, before it is recorded.

    Args:
        desk: Desk.
        make_id: UUID of the make.
        ref: id of the entry to correct.
        changes: the fields to set.

    Returns:
        List of {"field", "key", "limit"}.
    """
    state = desk["makes"].get(make_id)
    event = None if state is None else state["events"].get(ref)
    if state is None or event is None:
        return [{"field": "ref", "key": "unknown", "limit": None}]
    data = amends.effective(state, event)["data"]
    problems = amends.check_correction(event["kind"], data, changes)
    if problems or event["kind"] != "equipment_set" or "value" not in changes:
        return problems
    from ..sums.equipment import check_value

    return check_value(data["key"], changes["value"])


def changeable(
    desk: "Desk", make_id: str, entry: str, hand: "dict[str, Any]"
) -> "Changeable":
    """Return what may be changed of an entry and by whom, see `changeable.changeable`.

    Args:
        desk: Desk.
        make_id: UUID of the make or tank.
        entry: id of the entry.
        hand: {"device", "person", "boot", "entered_ms"} of whoever looks at it.
    """
    # Loaded when first asked: the app starts without it.
    from ..log.rights.changeable import changeable as what_may_change

    state = desk["makes"].get(make_id)
    if state is None:
        return {"correct": [], "strike": [], "fields": []}
    return what_may_change(state, entry, hand)


def check_pin(pin: str) -> "list[Problem]":
    """Return what speaks against a new PIN; the PIN itself is never told back.

    Args:
        pin: the digits as text.

    Returns:
        List of {"field", "key", "limit"}, at most one problem.
    """
    # Loaded when first asked: the app starts without it.
    from ..log.rights.pin import check_pin as check

    return check(pin)
