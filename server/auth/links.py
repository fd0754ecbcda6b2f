"""Let a buyer or vet look at some makes for a while, and at nothing else.

The owner hands on a link whose token stands behind its #, which no browser
sends to any server. The guest's page gives the token for a token of its own,
kept in a cookie that scripts cannot read. Only hashes are kept here. A guest is
no person and no phone: what asks for either is closed to them.
"""

import uuid
from typing import Any, NamedTuple

from server.auth.codes import hash_of, new_token
from server.auth.masking import Known, Mask
from server.auth.refused import RefusedError
from server.store import links as kept
from server.store import people, writing

MOST_DAYS = 90
DAY_MS = 86_400_000
MOST_BROWSERS = 20  # a link that was passed on widely is one to take back

links = kept.all_links


class NewLink(NamedTuple):
    """A link just made, with the token that is told only now."""

    link: kept.StoredLink
    token: str


def make_link(
    name: str, makes: list[str], until_ms: int, by: str, now_ms: int
) -> NewLink:
    """Make a link.

    Args:
        name: whom it is for.
        makes: ids of the makes that it shows.
        until_ms: server time of its end [ms].
        by: id of the owner who asks.
        now_ms: server time [ms].

    Raises:
        RefusedError: it would end in the past or later than 90 days from now.
    """
    if until_ms <= now_ms:
        raise RefusedError("too_low", "until_ms", now_ms + 1)
    latest_ms = now_ms + MOST_DAYS * DAY_MS
    if until_ms > latest_ms:
        raise RefusedError("too_high", "until_ms", latest_ms)
    token = new_token()
    link = kept.StoredLink(
        id=str(uuid.uuid4()),
        name=name,
        makes=makes,
        made_by=by,
        made_ms=now_ms,
        until_ms=until_ms,
        opened_ms=None,
        revoked_ms=None,
    )
    kept.add_link(link, hash_of(token))
    return NewLink(link, token)


def open_link(token: str, now_ms: int) -> NewLink:
    """Let a browser in by a link; the answer's token is the browser's own.

    Args:
        token: what stood in the link.
        now_ms: server time [ms].

    Raises:
        RefusedError: the link is not known, was revoked or has ended.
    """
    with writing():
        link = _standing(kept.link_of_token(hash_of(token)), "link_unknown", now_ms)
        own = new_token()
        kept.add_visit(link.id, hash_of(own), now_ms, MOST_BROWSERS)
        return NewLink(link, own)


def guest_link(token: str, now_ms: int) -> kept.StoredLink:
    """Return the link of a guest's browser.

    Args:
        token: what its cookie says.
        now_ms: server time [ms].

    Raises:
        RefusedError: it opened none, or its link was revoked or has ended.
    """
    return _standing(kept.link_of_visit(hash_of(token)), "no_guest", now_ms)


def revoke_link(link_id: str, now_ms: int) -> None:
    """Take a link back, at once and for every browser that opened it.

    Args:
        link_id: id of the link.
        now_ms: server time [ms].

    Raises:
        RefusedError: there is no such link.
    """
    if not kept.revoke_link(link_id, now_ms):
        raise RefusedError("unknown_link", "id")


def without_people(answer: Any) -> Any:
    """Return an answer of the core with roles in place of people.

    A person's id becomes their role, a phone's id goes, and a name that someone
    wrote into any text becomes the role in square brackets; see `masking`.

    Args:
        answer: View, record or Curve; it is not changed.
    """
    known = [Known(one.id, one.name, one.role) for one in people.all_people()]
    return Mask(known).answer(answer)


def _standing(
    link: kept.StoredLink | None, unknown: str, now_ms: int
) -> kept.StoredLink:
    if link is None:
        raise RefusedError(unknown)
    if link.revoked_ms is not None:
        raise RefusedError("link_revoked")
    if now_ms >= link.until_ms:
        raise RefusedError("link_ended", limit=link.until_ms)
    return link
