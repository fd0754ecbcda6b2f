"""Codes are kept under a key, and all of them end."""

import sqlalchemy as sa
from alembic import op

revision = "0007"
down_revision = "0006"
branch_labels = None
depends_on = None


def upgrade() -> None:
    # A plain hash can be tried out, and the owner's codes had no end. A new one
    # is printed at the start as long as no owner has a phone.
    op.execute("DELETE FROM pairings WHERE used_ms IS NULL")
    op.execute("UPDATE pairings SET expires_ms = used_ms WHERE expires_ms IS NULL")
    op.drop_index("ix_pairings_short_sha256", "pairings")
    with op.batch_alter_table("pairings") as pairings:
        pairings.alter_column("long_sha256", new_column_name="long_hash")
        pairings.alter_column("short_sha256", new_column_name="short_hash")
        pairings.alter_column("expires_ms", existing_type=sa.BigInteger, nullable=False)
    op.create_index("ix_pairings_short_hash", "pairings", ["short_hash"])
