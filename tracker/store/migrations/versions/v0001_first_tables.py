"""The first tables."""

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Makes every table of the first version."""
    op.create_table(
        "change_log",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("at", sa.DateTime(), nullable=False),
        sa.Column("who", sa.Text(), nullable=False),
        sa.Column("text", sa.Text(), nullable=False),
        sa.Column("table_name", sa.Text(), nullable=False),
        sa.Column("row_id", sa.Integer(), nullable=False),
        sa.Column("was", sa.JSON(none_as_null=True), nullable=True),
        sa.Column("now", sa.JSON(none_as_null=True), nullable=True),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_change_log")),
        sqlite_autoincrement=True,
    )
    op.create_table(
        "level",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("grade", sa.Text(), nullable=False),
        sa.Column("on_day", sa.Date(), nullable=False),
        sa.Column("per_tonne_units", sa.BigInteger(), nullable=False),
        sa.Column("per_tonne_scale", sa.SmallInteger(), nullable=False),
        sa.Column("currency", sa.Text(), nullable=False),
        sa.Column("source", sa.Text(), nullable=False),
        sa.Column("spread_percent", sa.BigInteger(), nullable=True),
        sa.CheckConstraint("per_tonne_units > 0", name=op.f("ck_level_per_tonne_positive")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_level")),
        sa.UniqueConstraint("grade", "on_day", name=op.f("uq_level_grade_on_day")),
        sqlite_autoincrement=True,
    )
    op.create_table(
        "rate",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("currency", sa.Text(), nullable=False),
        sa.Column("on_day", sa.Date(), nullable=False),
        sa.Column("euros_units", sa.BigInteger(), nullable=False),
        sa.Column("euros_scale", sa.SmallInteger(), nullable=False),
        sa.CheckConstraint("euros_units > 0", name=op.f("ck_rate_euros_positive")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_rate")),
        sa.UniqueConstraint("currency", "on_day", name=op.f("uq_rate_currency_on_day")),
        sqlite_autoincrement=True,
    )
    op.create_table(
        "setting",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("value", sa.JSON(), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_setting")),
        sa.UniqueConstraint("key", name=op.f("uq_setting_key")),
        sqlite_autoincrement=True,
    )
    op.create_table(
        "vendor",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("folded", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_vendor")),
        sa.UniqueConstraint("folded", name=op.f("uq_vendor_folded")),
        sqlite_autoincrement=True,
    )
    op.create_table(
        "answer",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("vendor_id", sa.Integer(), nullable=False),
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("value", sa.Text(), nullable=False),
        sa.Column("words", sa.Text(), nullable=False),
        sa.Column("said_at", sa.DateTime(), nullable=False),
        sa.Column("said_by", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(["vendor_id"], ["vendor.id"], name=op.f("fk_answer_vendor_id_vendor")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_answer")),
        sa.UniqueConstraint("vendor_id", "key", name=op.f("uq_answer_vendor_id_key")),
        sqlite_autoincrement=True,
    )
    op.create_index(op.f("ix_answer_vendor_id"), "answer", ["vendor_id"], unique=False)
    op.create_table(
        "layout",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("vendor_id", sa.Integer(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("marked", sa.JSON(), nullable=False),
        sa.Column("made_at", sa.DateTime(), nullable=False),
        sa.Column("made_by", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(["vendor_id"], ["vendor.id"], name=op.f("fk_layout_vendor_id_vendor")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_layout")),
        sqlite_autoincrement=True,
    )
    op.create_index(op.f("ix_layout_vendor_id"), "layout", ["vendor_id"], unique=False)
    op.create_table(
        "price_file",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("sha256", sa.Text(), nullable=False),
        sa.Column("size", sa.Integer(), nullable=False),
        sa.Column("vendor_id", sa.Integer(), nullable=True),
        sa.Column("received", sa.Date(), nullable=False),
        sa.Column("imported_at", sa.DateTime(), nullable=False),
        sa.Column("imported_by", sa.Text(), nullable=False),
        sa.Column("withdrawn_at", sa.DateTime(), nullable=True),
        sa.Column("answers", sa.JSON(), nullable=False),
        sa.Column("passed_over", sa.JSON(), nullable=False),
        sa.Column("evidence", sa.LargeBinary(), nullable=True),
        sa.Column("content", sa.LargeBinary(), nullable=False),
        sa.ForeignKeyConstraint(["vendor_id"], ["vendor.id"], name=op.f("fk_price_file_vendor_id_vendor")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_price_file")),
        sa.UniqueConstraint("sha256", name=op.f("uq_price_file_sha256")),
        sqlite_autoincrement=True,
    )
    op.create_index(op.f("ix_price_file_vendor_id"), "price_file", ["vendor_id"], unique=False)
    op.create_table(
        "sample_request",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("vendor_id", sa.Integer(), nullable=False),
        sa.Column("grade", sa.Text(), nullable=False),
        sa.Column("caliper_um", sa.BigInteger(), nullable=True),
        sa.Column("quantity", sa.Text(), nullable=False),
        sa.Column("for_what", sa.Text(), nullable=False),
        sa.Column("requested_on", sa.Date(), nullable=False),
        sa.Column("needed_by", sa.Date(), nullable=True),
        sa.Column("logged_by", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(["vendor_id"], ["vendor.id"], name=op.f("fk_sample_request_vendor_id_vendor")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_sample_request")),
        sqlite_autoincrement=True,
    )
    op.create_index(op.f("ix_sample_request_vendor_id"), "sample_request", ["vendor_id"], unique=False)
    op.create_table(
        "attachment",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("sample_request_id", sa.Integer(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("sha256", sa.Text(), nullable=False),
        sa.Column("size", sa.Integer(), nullable=False),
        sa.Column("added_at", sa.DateTime(), nullable=False),
        sa.Column("added_by", sa.Text(), nullable=False),
        sa.Column("content", sa.LargeBinary(), nullable=False),
        sa.ForeignKeyConstraint(
            ["sample_request_id"], ["sample_request.id"], name=op.f("fk_attachment_sample_request_id_sample_request")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_attachment")),
        sqlite_autoincrement=True,
    )
    op.create_index(op.f("ix_attachment_sample_request_id"), "attachment", ["sample_request_id"], unique=False)
    op.create_table(
        "board_verdict",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("vendor_id", sa.Integer(), nullable=False),
        sa.Column("sample_request_id", sa.Integer(), nullable=True),
        sa.Column("product", sa.Text(), nullable=False),
        sa.Column("approved", sa.Boolean(), nullable=False),
        sa.Column("for_what", sa.Text(), nullable=False),
        sa.Column("because", sa.Text(), nullable=False),
        sa.Column("said_on", sa.Date(), nullable=False),
        sa.Column("said_by", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(
            ["sample_request_id"], ["sample_request.id"], name=op.f("fk_board_verdict_sample_request_id_sample_request")
        ),
        sa.ForeignKeyConstraint(["vendor_id"], ["vendor.id"], name=op.f("fk_board_verdict_vendor_id_vendor")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_board_verdict")),
        sqlite_autoincrement=True,
    )
    op.create_index(op.f("ix_board_verdict_sample_request_id"), "board_verdict", ["sample_request_id"], unique=False)
    op.create_index(op.f("ix_board_verdict_vendor_id"), "board_verdict", ["vendor_id"], unique=False)
    op.create_table(
        "held_line",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("price_file_id", sa.Integer(), nullable=False),
        sa.Column("sheet", sa.Text(), nullable=False),
        sa.Column("cell", sa.Text(), nullable=False),
        sa.Column("state", sa.Text(), nullable=False),
        sa.Column("product", sa.Text(), nullable=False),
        sa.Column("as_written", sa.Text(), nullable=False),
        sa.Column("notes", sa.JSON(), nullable=False),
        sa.ForeignKeyConstraint(
            ["price_file_id"], ["price_file.id"], name=op.f("fk_held_line_price_file_id_price_file")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_held_line")),
        sqlite_autoincrement=True,
    )
    op.create_index(op.f("ix_held_line_price_file_id"), "held_line", ["price_file_id"], unique=False)
    op.create_table(
        "offer",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("price_file_id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("vendor_id", sa.Integer(), nullable=True),
        sa.Column("sheet", sa.Text(), nullable=False),
        sa.Column("cell", sa.Text(), nullable=False),
        sa.Column("as_written", sa.Text(), nullable=False),
        sa.Column("also", sa.Text(), nullable=False),
        sa.Column("product", sa.Text(), nullable=False),
        sa.Column("grade", sa.Text(), nullable=True),
        sa.Column("coated_sides", sa.SmallInteger(), nullable=True),
        sa.Column("caliper_um", sa.BigInteger(), nullable=True),
        sa.Column("grammage_gsm", sa.BigInteger(), nullable=True),
        sa.Column("grammage_from", sa.Text(), nullable=True),
        sa.Column("price_units", sa.BigInteger(), nullable=False),
        sa.Column("price_scale", sa.SmallInteger(), nullable=False),
        sa.Column("currency", sa.Text(), nullable=False),
        sa.Column("basis", sa.Text(), nullable=False),
        sa.Column("sheet_width_mm", sa.BigInteger(), nullable=True),
        sa.Column("sheet_length_mm", sa.BigInteger(), nullable=True),
        sa.Column("from_kg", sa.BigInteger(), nullable=True),
        sa.Column("below_kg", sa.BigInteger(), nullable=True),
        sa.Column("minimum_kg", sa.BigInteger(), nullable=True),
        sa.Column("lead_low", sa.Integer(), nullable=True),
        sa.Column("lead_high", sa.Integer(), nullable=True),
        sa.Column("valid_until", sa.Date(), nullable=True),
        sa.Column("delivered", sa.Boolean(), nullable=True),
        sa.Column("received", sa.Date(), nullable=False),
        sa.Column("board_key", sa.BigInteger(), nullable=False),
        sa.Column("notes", sa.JSON(none_as_null=True), nullable=True),
        sa.CheckConstraint("price_units > 0", name=op.f("ck_offer_price_positive")),
        sa.ForeignKeyConstraint(["price_file_id"], ["price_file.id"], name=op.f("fk_offer_price_file_id_price_file")),
        sa.ForeignKeyConstraint(["vendor_id"], ["vendor.id"], name=op.f("fk_offer_vendor_id_vendor")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_offer")),
        sa.UniqueConstraint("price_file_id", "position", name=op.f("uq_offer_price_file_id_position")),
        sqlite_autoincrement=True,
    )
    op.create_index(op.f("ix_offer_board_key"), "offer", ["board_key"], unique=False)
    op.create_index(op.f("ix_offer_price_file_id"), "offer", ["price_file_id"], unique=False)
    op.create_index(op.f("ix_offer_vendor_id"), "offer", ["vendor_id"], unique=False)
    op.create_table(
        "question",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("price_file_id", sa.Integer(), nullable=False),
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("code", sa.Text(), nullable=False),
        sa.Column("text", sa.Text(), nullable=False),
        sa.Column("words", sa.Text(), nullable=False),
        sa.Column("choices", sa.JSON(), nullable=False),
        sa.Column("cells", sa.JSON(), nullable=False),
        sa.Column("set_aside_at", sa.DateTime(), nullable=True),
        sa.ForeignKeyConstraint(
            ["price_file_id"], ["price_file.id"], name=op.f("fk_question_price_file_id_price_file")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_question")),
        sqlite_autoincrement=True,
    )
    op.create_index(op.f("ix_question_price_file_id"), "question", ["price_file_id"], unique=False)
    op.create_table(
        "reading",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("sample_request_id", sa.Integer(), nullable=False),
        sa.Column("property", sa.Text(), nullable=False),
        sa.Column("value_units", sa.BigInteger(), nullable=False),
        sa.Column("value_scale", sa.SmallInteger(), nullable=False),
        sa.Column("unit", sa.Text(), nullable=False),
        sa.Column("taken_on", sa.Date(), nullable=False),
        sa.Column("taken_by", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(
            ["sample_request_id"], ["sample_request.id"], name=op.f("fk_reading_sample_request_id_sample_request")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_reading")),
        sqlite_autoincrement=True,
    )
    op.create_index(op.f("ix_reading_sample_request_id"), "reading", ["sample_request_id"], unique=False)
    op.create_table(
        "sample_event",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("sample_request_id", sa.Integer(), nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("on_day", sa.Date(), nullable=False),
        sa.Column("until_day", sa.Date(), nullable=True),
        sa.Column("note", sa.Text(), nullable=False),
        sa.Column("recorded_at", sa.DateTime(), nullable=False),
        sa.Column("recorded_by", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(
            ["sample_request_id"], ["sample_request.id"], name=op.f("fk_sample_event_sample_request_id_sample_request")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_sample_event")),
        sqlite_autoincrement=True,
    )
    op.create_index(op.f("ix_sample_event_sample_request_id"), "sample_event", ["sample_request_id"], unique=False)
    op.create_table(
        "charge",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("offer_id", sa.Integer(), nullable=False),
        sa.Column("label", sa.Text(), nullable=False),
        sa.Column("price_units", sa.BigInteger(), nullable=False),
        sa.Column("price_scale", sa.SmallInteger(), nullable=False),
        sa.Column("currency", sa.Text(), nullable=True),
        sa.Column("basis", sa.Text(), nullable=True),
        sa.Column("freight", sa.Boolean(), nullable=False),
        sa.ForeignKeyConstraint(["offer_id"], ["offer.id"], name=op.f("fk_charge_offer_id_offer")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_charge")),
        sqlite_autoincrement=True,
    )
    op.create_index(op.f("ix_charge_offer_id"), "charge", ["offer_id"], unique=False)
