"""PINs: the keys that they open, and since when acts must be proved."""

import time

import sqlalchemy as sa
from alembic import op

revision = "0008"
down_revision = "0007"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column("events", sa.Column("proof_state", sa.String(12)))
    op.create_table(
        "pins",
        sa.Column("key", sa.String(36), primary_key=True),
        sa.Column("person", sa.String(64), sa.ForeignKey("people.id"), nullable=False),
        sa.Column("public", sa.String(200), nullable=False),
        sa.Column("salt", sa.String(40), nullable=False),
        sa.Column("rounds", sa.Integer, nullable=False),
        sa.Column("wrapped", sa.String(400), nullable=False),
        sa.Column("device", sa.String(36)),
        sa.Column("set_ms", sa.BigInteger, nullable=False),
        sa.Column("ended_ms", sa.BigInteger),
    )
    op.create_index("ix_pins_person", "pins", ["person"])
    op.create_table(
        "pin_grants",
        sa.Column(
            "person", sa.String(64), sa.ForeignKey("people.id"), primary_key=True
        ),
        sa.Column("until_ms", sa.BigInteger, nullable=False),
    )
    start = op.create_table(
        "pin_start",
        sa.Column("one", sa.Integer, primary_key=True, autoincrement=False),
        sa.Column("since_ms", sa.BigInteger, nullable=False),
        sa.CheckConstraint("one = 1", name="one_row_of_pin_start"),
    )
    # Phones may still hold what they recorded before this server knew PINs. A
    # creamery that begins with it has no such entries.
    is_used = op.get_bind().execute(sa.text("SELECT n FROM head")).scalar()
    since_ms = time.time_ns() // 1_000_000 if is_used else 0
    op.bulk_insert(start, [{"one": 1, "since_ms": since_ms}])
