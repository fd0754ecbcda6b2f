"""Work that one process has is known by its beats, not by an instant."""

import sqlalchemy as sa
from alembic import op

revision = "0006"
down_revision = "0005"
branch_labels = None
depends_on = None


def upgrade() -> None:
    with op.batch_alter_table("leases") as leases:
        leases.drop_column("until_ms")
        leases.add_column(
            sa.Column("beat", sa.BigInteger, nullable=False, server_default="0")
        )
    # Whoever held it then is judged anew.
    op.execute("UPDATE leases SET holder = ''")
