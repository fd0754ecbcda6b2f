"""Alarms: who sends them, to which phones, what was sent, and the walls."""

import sqlalchemy as sa
from alembic import op

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None

NUMBER = sa.BigInteger().with_variant(sa.Integer(), "sqlite")


def upgrade() -> None:
    leases = op.create_table(
        "leases",
        sa.Column("name", sa.String(40), primary_key=True),
        sa.Column("holder", sa.String(36), nullable=False),
        sa.Column("until_ms", sa.BigInteger, nullable=False),
    )
    # The row is there from the start, so that two workers lock the same one.
    op.bulk_insert(leases, [{"name": "alarms", "holder": "", "until_ms": 0}])
    settings = op.create_table(
        "alarm_settings",
        sa.Column("one", sa.Integer, primary_key=True, autoincrement=False),
        sa.Column("escalate_s", sa.Integer, nullable=False),
        sa.CheckConstraint("one = 1", name="one_row_of_alarm_settings"),
    )
    op.bulk_insert(settings, [{"one": 1, "escalate_s": 600}])
    op.create_table(
        "push_subscriptions",
        sa.Column("id", sa.String(64), primary_key=True),
        sa.Column("endpoint", sa.Text, nullable=False),
        sa.Column("p256dh", sa.String(120), nullable=False),
        sa.Column("auth", sa.String(40), nullable=False),
        sa.Column("device", sa.String(36), sa.ForeignKey("devices.id"), nullable=False),
        sa.Column("wants", sa.String(12), nullable=False),
        sa.Column("page", sa.String(300), nullable=False),
        sa.Column("posted_ms", sa.BigInteger, nullable=False),
        sa.Column("sent_ms", sa.BigInteger),
        sa.Column("status", sa.Integer),
        sa.Column("ok_ms", sa.BigInteger),
        sa.Column("dropped_ms", sa.BigInteger),
    )
    op.create_index("ix_push_subscriptions_device", "push_subscriptions", ["device"])
    op.create_table(
        "push_log",
        sa.Column("n", NUMBER, primary_key=True),
        sa.Column("at_ms", sa.BigInteger, nullable=False),
        sa.Column("subscription", sa.String(64), nullable=False),
        sa.Column("what", sa.String(12), nullable=False),
        sa.Column("tag", sa.String(240), nullable=False),
        sa.Column("status", sa.Integer, nullable=False),
    )
    op.create_table(
        "listeners",
        sa.Column("person", sa.String(64), primary_key=True),
        sa.Column("heard", sa.Text, nullable=False),
    )
    op.create_table(
        "walls",
        sa.Column(
            "device", sa.String(36), sa.ForeignKey("devices.id"), primary_key=True
        ),
        sa.Column("seen_ms", sa.BigInteger, nullable=False),
        sa.Column("sound", sa.Boolean, nullable=False),
    )
