"""How each person reads: language and units."""

import sqlalchemy as sa
from alembic import op

revision = "0005"
down_revision = "0004"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column("people", sa.Column("language", sa.String(8)))
    for name in ("temp_unit", "volume_unit", "mass_unit", "pressure_unit"):
        op.add_column("people", sa.Column(name, sa.String(12)))
