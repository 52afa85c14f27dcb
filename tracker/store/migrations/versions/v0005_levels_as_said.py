"""A market level as it was said, where that was per another weight than the tonne."""

import sqlalchemy as sa
from alembic import op

revision = "0005"
down_revision = "0004"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Adds the columns, empty: levels that are there were said per tonne, or tell in their source what was said."""
    op.add_column("level", sa.Column("said_units", sa.BigInteger(), nullable=True))
    op.add_column("level", sa.Column("said_scale", sa.SmallInteger(), nullable=True))
    op.add_column("level", sa.Column("said_basis", sa.Text(), nullable=True))
