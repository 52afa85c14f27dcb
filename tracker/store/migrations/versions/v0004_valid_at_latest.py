"""The later of two days where an offer's last day can be read two ways."""

import sqlalchemy as sa
from alembic import op

revision = "0004"
down_revision = "0003"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Adds the column, empty: offers that are there were stored without it."""
    op.add_column("offer", sa.Column("valid_at_latest", sa.Date(), nullable=True))
