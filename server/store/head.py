"""The one row that gives out numbers.

A database's own sequence gives numbers before COMMIT, so a reader with a cursor
can pass a number whose row is not visible yet and never see it. Numbers taken
from this row, locked until COMMIT, become visible in their own order, and
without holes, on both databases.
"""

import uuid

from sqlalchemy import select

from server.store.database import reading, writing
from server.store.models import Head


def locked_head() -> Head:
    """Return the head row, locked until the writer that asks commits."""
    with writing() as session:
        return session.execute(select(Head).with_for_update()).scalar_one()


def head_n() -> int:
    """Return the last number given to an event; 0 before the first."""
    with reading() as session:
        return session.execute(select(Head.n)).scalar_one()


def epoch() -> str:
    """Return which life of the database this is."""
    with reading() as session:
        return session.execute(select(Head.epoch)).scalar_one()


def new_epoch() -> str:
    """Begin a new life of the database, after a restore or a copy.

    Phones compare it and offer again all that they still hold, so that what a
    backup lacks comes back.

    Returns:
        The new epoch.
    """
    with writing():
        head = locked_head()
        head.epoch = str(uuid.uuid4())
        return head.epoch
