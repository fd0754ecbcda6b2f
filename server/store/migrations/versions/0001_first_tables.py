"""First tables: the log, what needs a look, people and their phones."""

import uuid

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None

NUMBER = sa.BigInteger().with_variant(sa.Integer(), "sqlite")


def upgrade() -> None:
    head = op.create_table(
        "head",
        sa.Column("one", sa.Integer, primary_key=True, autoincrement=False),
        sa.Column("n", NUMBER, nullable=False),
        sa.Column("look_n", NUMBER, nullable=False),
        sa.Column("epoch", sa.String(36), nullable=False),
        sa.CheckConstraint("one = 1", name="one_row"),
    )
    op.bulk_insert(head, [{"one": 1, "n": 0, "look_n": 0, "epoch": str(uuid.uuid4())}])
    _create_log()
    _create_people()


def _create_log() -> None:
    op.create_table(
        "events",
        sa.Column("n", NUMBER, primary_key=True, autoincrement=False),
        sa.Column("id", sa.String(36), nullable=False, unique=True),
        sa.Column("recv_ms", sa.BigInteger, nullable=False),
        sa.Column("make", sa.String(36)),
        sa.Column("device", sa.String(36)),
        sa.Column("seq", sa.BigInteger),
        sa.Column("kind", sa.String(64)),
        sa.Column("sha256", sa.String(64), nullable=False),
        sa.Column("text", sa.Text, nullable=False),
    )
    op.create_index("ix_events_device_seq", "events", ["device", "seq"])
    op.create_index("ix_events_make", "events", ["make", "n"])
    op.create_table(
        "needs_look",
        sa.Column("n", NUMBER, primary_key=True, autoincrement=False),
        sa.Column("id", sa.String(36)),
        sa.Column("device", sa.String(36), nullable=False),
        sa.Column("seq", sa.BigInteger),
        sa.Column("person", sa.String(64), nullable=False),
        sa.Column("recv_ms", sa.BigInteger, nullable=False),
        sa.Column("why", sa.Text, nullable=False),
        sa.Column("sha256", sa.String(64), nullable=False, index=True),
        sa.Column("text", sa.Text, nullable=False),
        sa.Column("settled_ms", sa.BigInteger),
        sa.Column("settled_by", sa.String(64)),
        sa.Column("settled_as", sa.String(20)),
        sa.Column("settled_why", sa.Text),
    )
    op.create_table(
        "held",
        sa.Column("device", sa.String(36), primary_key=True),
        sa.Column("upto_seq", sa.BigInteger, nullable=False),
        sa.Column("missing", sa.Text, nullable=False),
        sa.Column("repeated", sa.Text, nullable=False),
    )


def _create_people() -> None:
    op.create_table(
        "people",
        sa.Column("id", sa.String(64), primary_key=True),
        sa.Column("name", sa.String(80), nullable=False),
        sa.Column("role", sa.String(20), nullable=False),
        sa.Column("active", sa.Boolean, nullable=False),
        sa.Column("made_ms", sa.BigInteger, nullable=False),
    )
    op.create_table(
        "devices",
        sa.Column("id", sa.String(36), primary_key=True),
        sa.Column("name", sa.String(80), nullable=False),
        sa.Column("person", sa.String(64), sa.ForeignKey("people.id"), nullable=False),
        sa.Column("token_sha256", sa.String(64), nullable=False, unique=True),
        sa.Column("paired_ms", sa.BigInteger, nullable=False),
        sa.Column("seen_ms", sa.BigInteger, nullable=False),
        sa.Column("removed_ms", sa.BigInteger),
    )
    op.create_table(
        "pairings",
        sa.Column("id", sa.Integer, primary_key=True),
        sa.Column("person", sa.String(64), sa.ForeignKey("people.id")),
        sa.Column("long_sha256", sa.String(64), nullable=False, unique=True),
        sa.Column("short_sha256", sa.String(64), index=True),
        sa.Column("made_by", sa.String(64)),
        sa.Column("expires_ms", sa.BigInteger),
        sa.Column("used_ms", sa.BigInteger),
    )
    op.create_table(
        "attempts",
        sa.Column("key", sa.String(100), primary_key=True),
        sa.Column("wrong", sa.Integer, nullable=False),
        sa.Column("last_ms", sa.BigInteger, nullable=False),
        sa.Column("until_ms", sa.BigInteger, nullable=False),
    )
