"""Read-only links and the browsers that opened them."""

import json
from typing import NamedTuple

from sqlalchemy import delete, select

from server.store.database import reading, writing
from server.store.models import LinkRow, LinkVisitRow


class StoredLink(NamedTuple):
    """What a guest may see, and until when."""

    id: str
    name: str
    makes: list[str]
    made_by: str
    made_ms: int
    until_ms: int
    opened_ms: int | None
    revoked_ms: int | None


def add_link(link: StoredLink, token_sha256: str) -> None:
    """Keep a new link.

    Args:
        link: the link.
        token_sha256: hash of its token.
    """
    with writing() as session:
        values = {**link._asdict(), "makes": json.dumps(link.makes)}
        session.add(LinkRow(token_sha256=token_sha256, **values))
        session.flush()


def all_links() -> list[StoredLink]:
    """Return every link, newest first."""
    query = select(LinkRow).order_by(LinkRow.made_ms.desc(), LinkRow.id)
    with reading() as session:
        return [_stored(row) for row in session.scalars(query)]


def link_of_token(token_sha256: str) -> StoredLink | None:
    """Return the link of a token.

    Args:
        token_sha256: hash of the token that stands in the link.
    """
    query = select(LinkRow).where(LinkRow.token_sha256 == token_sha256)
    with reading() as session:
        row = session.scalars(query).first()
        return None if row is None else _stored(row)


def link_of_visit(token_sha256: str) -> StoredLink | None:
    """Return the link that a guest's browser opened.

    Args:
        token_sha256: hash of the token that the browser holds.
    """
    query = (
        select(LinkRow)
        .join(LinkVisitRow, LinkVisitRow.link == LinkRow.id)
        .where(LinkVisitRow.token_sha256 == token_sha256)
    )
    with reading() as session:
        row = session.scalars(query).first()
        return None if row is None else _stored(row)


def add_visit(link: str, token_sha256: str, at_ms: int, most: int) -> None:
    """Let one more browser in; beyond `most` the oldest must open the link anew.

    Args:
        link: id of the link.
        token_sha256: hash of the browser's own token.
        at_ms: server time [ms].
        most: how many browsers a link lets in at a time.
    """
    with writing() as session:
        known = session.scalars(
            select(LinkVisitRow.token_sha256)
            .where(LinkVisitRow.link == link)
            .order_by(LinkVisitRow.opened_ms.desc(), LinkVisitRow.token_sha256)
            .offset(most - 1)
        ).all()
        session.execute(
            delete(LinkVisitRow).where(LinkVisitRow.token_sha256.in_(known))
        )
        session.add(LinkVisitRow(token_sha256=token_sha256, link=link, opened_ms=at_ms))
        session.get_one(LinkRow, link).opened_ms = at_ms
        session.flush()


def revoke_link(link: str, at_ms: int) -> bool:
    """Take a link back; its first revoking stands.

    Args:
        link: id of the link.
        at_ms: server time [ms].

    Returns:
        False when there is no such link.
    """
    with writing() as session:
        row = session.get(LinkRow, link)
        if row is None:
            return False
        row.revoked_ms = row.revoked_ms or at_ms
        session.flush()
        return True


def _stored(row: LinkRow) -> StoredLink:
    return StoredLink(
        id=row.id,
        name=row.name,
        makes=json.loads(row.makes),
        made_by=row.made_by,
        made_ms=row.made_ms,
        until_ms=row.until_ms,
        opened_ms=row.opened_ms,
        revoked_ms=row.revoked_ms,
    )
