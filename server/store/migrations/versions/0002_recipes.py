"""Recipes, one row a version."""

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.create_table(
        "recipes",
        sa.Column("id", sa.String(60), primary_key=True),
        sa.Column("version", sa.Integer, primary_key=True, autoincrement=False),
        sa.Column("sha256", sa.String(64), nullable=False),
        sa.Column("text", sa.Text, nullable=False),
        sa.Column("stored_ms", sa.BigInteger, nullable=False),
        sa.Column("person", sa.String(64)),
    )
