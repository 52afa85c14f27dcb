"""Levels that a published price index carries forward, and the user's own ratios between grades."""

import sqlalchemy as sa
from alembic import op

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Adds two columns to the levels and the table of ratios; levels that are there are carried by no index."""
    op.add_column("level", sa.Column("index_name", sa.Text(), nullable=False, server_default=""))
    op.add_column("level", sa.Column("index_points", sa.JSON(), nullable=True))
    op.create_table(
        "grade_ratio",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("grade", sa.Text(), nullable=False),
        sa.Column("on_day", sa.Date(), nullable=False),
        sa.Column("low_units", sa.BigInteger(), nullable=False),
        sa.Column("low_scale", sa.SmallInteger(), nullable=False),
        sa.Column("high_units", sa.BigInteger(), nullable=False),
        sa.Column("high_scale", sa.SmallInteger(), nullable=False),
        sa.Column("source", sa.Text(), nullable=False),
        sa.CheckConstraint("low_units > 0", name=op.f("ck_grade_ratio_low_positive")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_grade_ratio")),
        sa.UniqueConstraint("grade", "on_day", name=op.f("uq_grade_ratio_grade_on_day")),
        sqlite_autoincrement=True,
    )
