"""Samples from request to verdict: form and contact, carrier, conditioned readings, claims, templates, contacts."""

from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Adds columns in place and three tables; rows that are there keep what they say."""
    _add("sample_request", _words("product"), _words("form"), _words("contact"))
    _add("sample_request", sa.Column("pieces", sa.Integer(), nullable=True))
    _add("sample_request", *(sa.Column(name, sa.BigInteger(), nullable=True) for name in ("width_mm", "length_mm")))
    _add("sample_event", _words("carrier"), _words("tracking"))
    _add("reading", sa.Column("conditioned", sa.Boolean(), nullable=True), _words("method"))
    _add("attachment", sa.Column("withdrawn_at", sa.DateTime(), nullable=True))
    _make_claims()
    _make_templates()
    _make_contacts()


def _add(table: str, *columns: "sa.Column[Any]") -> None:
    for column in columns:
        op.add_column(table, column)


def _words(name: str) -> "sa.Column[str]":
    return sa.Column(name, sa.Text(), nullable=False, server_default="")


def _make_claims() -> None:
    op.create_table(
        "claim",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("sample_request_id", sa.Integer(), nullable=False),
        sa.Column("property", sa.Text(), nullable=False),
        sa.Column("value_units", sa.BigInteger(), nullable=False),
        sa.Column("value_scale", sa.SmallInteger(), nullable=False),
        sa.Column("unit", sa.Text(), nullable=False),
        sa.Column("source", sa.Text(), nullable=False),
        sa.Column("said_on", sa.Date(), nullable=False),
        sa.Column("said_by", sa.Text(), nullable=False),
        sa.CheckConstraint("value_units > 0", name=op.f("ck_claim_value_positive")),
        sa.ForeignKeyConstraint(
            ["sample_request_id"], ["sample_request.id"], name=op.f("fk_claim_sample_request_id_sample_request")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_claim")),
        sa.UniqueConstraint("sample_request_id", "property", name=op.f("uq_claim_sample_request_id_property")),
        sqlite_autoincrement=True,
    )
    op.create_index(op.f("ix_claim_sample_request_id"), "claim", ["sample_request_id"], unique=False)


def _make_templates() -> None:
    op.create_table(
        "sample_template",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("folded", sa.Text(), nullable=False),
        sa.Column("contents", sa.JSON(), nullable=False),
        sa.Column("made_at", sa.DateTime(), nullable=False),
        sa.Column("made_by", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_sample_template")),
        sa.UniqueConstraint("folded", name=op.f("uq_sample_template_folded")),
        sqlite_autoincrement=True,
    )


def _make_contacts() -> None:
    op.create_table(
        "vendor_contact",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("vendor_id", sa.Integer(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("mail", sa.Text(), nullable=False),
        sa.Column("language", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(["vendor_id"], ["vendor.id"], name=op.f("fk_vendor_contact_vendor_id_vendor")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_vendor_contact")),
        sa.UniqueConstraint("vendor_id", name=op.f("uq_vendor_contact_vendor_id")),
        sqlite_autoincrement=True,
    )
