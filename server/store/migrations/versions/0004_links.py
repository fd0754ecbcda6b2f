"""Read-only links: what a guest may see, until when, and who opened one."""

import sqlalchemy as sa
from alembic import op

revision = "0004"
down_revision = "0003"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.create_table(
        "links",
        sa.Column("id", sa.String(36), primary_key=True),
        sa.Column("name", sa.String(80), nullable=False),
        sa.Column("token_sha256", sa.String(64), nullable=False, unique=True),
        sa.Column("makes", sa.Text, nullable=False),
        sa.Column("made_by", sa.String(64), nullable=False),
        sa.Column("made_ms", sa.BigInteger, nullable=False),
        sa.Column("until_ms", sa.BigInteger, nullable=False),
        sa.Column("opened_ms", sa.BigInteger),
        sa.Column("revoked_ms", sa.BigInteger),
    )
    op.create_table(
        "link_visits",
        sa.Column("token_sha256", sa.String(64), primary_key=True),
        sa.Column("link", sa.String(36), sa.ForeignKey("links.id"), nullable=False),
        sa.Column("opened_ms", sa.BigInteger, nullable=False),
    )
