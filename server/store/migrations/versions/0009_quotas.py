"""How far each phone has used up what it may send in a day."""

import sqlalchemy as sa
from alembic import op

revision = "0009"
down_revision = "0008"
branch_labels = None
depends_on = None


def upgrade() -> None:
    with op.batch_alter_table("held") as held:
        for name in ("events_until_ms", "bytes_until_ms"):
            held.add_column(
                sa.Column(name, sa.BigInteger, nullable=False, server_default="0")
            )
