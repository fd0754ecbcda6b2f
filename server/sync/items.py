"""One pushed item, read and checked on its own before any lock is taken."""

import logging
import re
from dataclasses import dataclass
from typing import Any

from server.core import desk
from server.shapes import Problem
from server.sync.canonical import EXACT, canonical_text, sha256_of

logger = logging.getLogger(__name__)
UUID = re.compile(r"[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}")
PLAIN = re.compile(r"[\x20-\x7e]{1,64}")


@dataclass(frozen=True)
class Item:
    """One pushed item: what was sent, and what can be told from it alone.

    Args:
        raw: the item as sent, any JSON value.
        text: its canonical text.
        sha256: hash of that text.
        said_id: what it calls its id, if that is text.
        id: its id when that is a UUID, else None.
        problems: what is wrong with it on its own.
    """

    raw: Any
    text: str
    sha256: str
    said_id: str | None
    id: str | None
    problems: list[Problem]

    def field(self, name: str) -> Any:
        """Return a field of the item, None when it has no such field.

        Args:
            name: the field's name.
        """
        return self.raw.get(name) if isinstance(self.raw, dict) else None

    def uuid(self, name: str) -> str | None:
        """Return a field that is a UUID, else None.

        Args:
            name: the field's name.
        """
        return as_uuid(self.field(name))

    def plain(self, name: str) -> str | None:
        """Return a field that is short plain text, else None.

        Args:
            name: the field's name.
        """
        value = self.field(name)
        return value if isinstance(value, str) and PLAIN.fullmatch(value) else None

    def seq(self) -> int | None:
        """Return the phone's own number of the item, else None."""
        value = whole(self.field("seq"))
        return value if value is not None and 1 <= value < EXACT else None


def as_uuid(value: Any) -> str | None:
    """Return a value that is a UUID in lower case, else None.

    Args:
        value: any JSON value.
    """
    return value if isinstance(value, str) and UUID.fullmatch(value) else None


def whole(value: Any) -> int | None:
    """Return a value that is a whole number a double can hold, else None.

    Args:
        value: any JSON value.
    """
    if isinstance(value, bool) or not isinstance(value, int | float):
        return None
    return int(value) if abs(value) <= EXACT and value == int(value) else None


def read_item(raw: Any) -> Item:
    """Read one pushed item.

    Args:
        raw: any JSON value.

    Returns:
        The item; its problems are empty for a sound event of a known kind.
    """
    said_id = raw.get("id") if isinstance(raw, dict) else None
    text = canonical_text(raw)
    return Item(
        raw=raw,
        text=text,
        sha256=sha256_of(text),
        said_id=said_id if isinstance(said_id, str) else None,
        id=as_uuid(said_id),
        problems=_problems(raw),
    )


def _problems(raw: Any) -> list[Problem]:
    try:
        found = desk.check_new(raw)
    except Exception:
        # A check that trips must cost neither this item nor its neighbours.
        logger.exception("the check of an event failed")
        return [{"field": "event", "key": "check_failed", "limit": None}]
    # What was found of a proof is the server's word alone, and stands beside it.
    if isinstance(raw, dict) and "proof_state" in raw:
        found = [
            *found,
            {"field": "proof_state", "key": "unknown_field", "limit": None},
        ]
    return found
