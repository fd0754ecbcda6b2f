"""Entries that pass a standing matter of their make, unknown to the phone that sent.

A phone asks its own core before it records; what stood elsewhere it may not have
known. So the server asks anew with the very same core. What passes a matter is put
aside with the reason, for a maker to settle: it was done, and is kept.

An entry is judged twice: by what was known at its own instant, since what came later
could not be heeded, and by all that is known now, since a decision that has come
meanwhile lifts what stood. Only what both refuse is refused.
"""

from collections.abc import Iterable
from functools import cache
from typing import Any

from server.config import read_rules
from server.core import desk as core_desk
from server.core.log.kinds.event import check_event
from server.core.log.order import corrected_ms
from server.core.matters.stopped import may_be_refused
from server.shapes import Problem
from server.shapes.core.state import Desk
from server.store import log


class Gates:
    """The makes that one batch is about, folded as they stand before each entry."""

    def __init__(self) -> None:
        self._events: dict[str, list[Any]] = {}
        self._desks: dict[str, Desk] = {}
        # The log gets a batch as a whole, so what came before in it is held here.
        self._ahead: dict[str, list[Any]] = {}

    def refused(self, event: Any, roles: list[str]) -> list[Problem]:
        """Return which matters an event passes, or may not decide.

        Args:
            event: a sound event that is not in the log.
            roles: roles of those who send it.
        """
        if not may_be_refused(event):
            return []
        make = event["data"].get("load_make", event["make"])
        at_ms = corrected_ms(event)
        found = core_desk.refused(self._desk(make), event, roles, at_ms)
        if not found:
            return []
        before = [one for one in self._events[make] if corrected_ms(one) <= at_ms]
        return core_desk.refused(_folded(before), event, roles, at_ms)

    def add(self, event: Any) -> None:
        """Take an event of the batch that the log will hold.

        Args:
            event: a sound event.
        """
        make = event["make"]
        if make in self._desks:
            self._events[make].append(event)
            core_desk.take(self._desks[make], [event])
        else:
            self._ahead.setdefault(make, []).append(event)

    def _desk(self, make: str) -> Desk:
        if make not in self._desks:
            rows = [row.event for row in log.events_of_make(make)]
            rows += self._ahead.get(make, [])
            self._events[make] = [row for row in rows if not check_event(row)]
            self._desks[make] = _folded(self._events[make])
        return self._desks[make]


@cache
def _rules() -> dict[str, Any]:
    return read_rules()


def _folded(events: Iterable[dict[str, Any]]) -> Desk:
    desk: Desk = core_desk.new()
    core_desk.set_rules(desk, _rules())
    core_desk.take(desk, list(events))
    return desk
