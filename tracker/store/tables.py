"""Every table. A change here needs a migration in store/migrations/versions; a test fails where the two disagree."""

from typing import Any

from sqlalchemy import (
    JSON,
    BigInteger,
    Boolean,
    CheckConstraint,
    Column,
    Date,
    ForeignKey,
    Integer,
    LargeBinary,
    MetaData,
    SmallInteger,
    Table,
    Text,
    UniqueConstraint,
)

from tracker.store.types import Measure, Moment, exact_columns

metadata = MetaData(
    naming_convention={
        "ix": "ix_%(table_name)s_%(column_0_N_name)s",
        "uq": "uq_%(table_name)s_%(column_0_N_name)s",
        "ck": "ck_%(table_name)s_%(constraint_name)s",
        "fk": "fk_%(table_name)s_%(column_0_N_name)s_%(referred_table_name)s",
        "pk": "pk_%(table_name)s",
    }
)


def _table(name: str, *contents: Column[Any] | CheckConstraint | UniqueConstraint) -> Table:
    # AUTOINCREMENT: the number of a deleted row is never given to another one, because the change log still names it.
    return Table(name, metadata, Column("id", Integer, primary_key=True), *contents, sqlite_autoincrement=True)


def _to(table: str, *, nullable: bool = False) -> Column[int]:
    return Column(f"{table}_id", Integer, ForeignKey(f"{table}.id"), nullable=nullable, index=True)


def _words(name: str) -> Column[str]:
    """Text that rows made before the column was there have none of."""
    return Column(name, Text, nullable=False, server_default="")


vendor = _table(
    "vendor",
    Column("name", Text, nullable=False),
    # The same vendor however it is written in capitals; unique so that two imports can't make it twice.
    Column("folded", Text, nullable=False, unique=True),
)

price_file = _table(
    "price_file",
    Column("name", Text, nullable=False),
    Column("sha256", Text, nullable=False, unique=True),
    Column("size", Integer, nullable=False),
    _to("vendor", nullable=True),
    Column("received", Date, nullable=False),
    Column("imported_at", Moment, nullable=False),
    Column("imported_by", Text, nullable=False),
    Column("withdrawn_at", Moment),
    Column("answers", JSON, nullable=False),
    Column("passed_over", JSON, nullable=False),
    Column("evidence", LargeBinary),
    Column("content", LargeBinary, nullable=False),
)

offer = _table(
    "offer",
    _to("price_file"),
    Column("position", Integer, nullable=False),
    _to("vendor", nullable=True),
    Column("sheet", Text, nullable=False),
    Column("cell", Text, nullable=False),
    Column("as_written", Text, nullable=False),
    Column("also", Text, nullable=False),
    Column("product", Text, nullable=False),
    Column("grade", Text),
    Column("coated_sides", SmallInteger),
    Column("caliper_um", Measure),
    Column("grammage_gsm", Measure),
    Column("grammage_from", Text),
    *exact_columns("price"),
    Column("currency", Text, nullable=False),
    Column("basis", Text, nullable=False),
    Column("sheet_width_mm", Measure),
    Column("sheet_length_mm", Measure),
    Column("from_kg", Measure),
    Column("below_kg", Measure),
    Column("minimum_kg", Measure),
    Column("lead_low", Integer),
    Column("lead_high", Integer),
    Column("valid_until", Date),
    Column("delivered", Boolean),
    Column("received", Date, nullable=False),
    # Says which offers are the same one at another date (store/boards.py).
    Column("board_key", BigInteger, nullable=False, index=True),
    Column("notes", JSON(none_as_null=True)),
    UniqueConstraint("price_file_id", "position"),
    CheckConstraint("price_units > 0", name="price_positive"),
)

charge = _table(
    "charge",
    _to("offer"),
    Column("label", Text, nullable=False),
    *exact_columns("price"),
    Column("currency", Text),
    Column("basis", Text),
    Column("freight", Boolean, nullable=False),
)

question = _table(
    "question",
    _to("price_file"),
    Column("key", Text, nullable=False),
    Column("code", Text, nullable=False),
    Column("text", Text, nullable=False),
    Column("words", Text, nullable=False),
    Column("choices", JSON, nullable=False),
    Column("cells", JSON, nullable=False),
    Column("set_aside_at", Moment),
)

held_line = _table(
    "held_line",
    _to("price_file"),
    Column("sheet", Text, nullable=False),
    Column("cell", Text, nullable=False),
    Column("state", Text, nullable=False),
    Column("product", Text, nullable=False),
    Column("as_written", Text, nullable=False),
    Column("notes", JSON, nullable=False),
)

answer = _table(
    "answer",
    _to("vendor"),
    Column("key", Text, nullable=False),
    Column("value", Text, nullable=False),
    Column("words", Text, nullable=False),
    Column("said_at", Moment, nullable=False),
    Column("said_by", Text, nullable=False),
    UniqueConstraint("vendor_id", "key"),
)

layout = _table(
    "layout",
    _to("vendor"),
    Column("name", Text, nullable=False),
    Column("marked", JSON, nullable=False),
    Column("made_at", Moment, nullable=False),
    Column("made_by", Text, nullable=False),
)

level = _table(
    "level",
    Column("grade", Text, nullable=False),
    Column("on_day", Date, nullable=False),
    *exact_columns("per_tonne"),
    Column("currency", Text, nullable=False),
    Column("source", Text, nullable=False),
    Column("spread_percent", Measure),
    # The published price index that carries the level forward: its name and [day, value] as text, in order of day.
    _words("index_name"),
    Column("index_points", JSON(none_as_null=True)),
    UniqueConstraint("grade", "on_day"),
    CheckConstraint("per_tonne_units > 0", name="per_tonne_positive"),
)

grade_ratio = _table(
    # What the user says of a grade's price beside the reference grade's, in place of resources/bands.toml.
    "grade_ratio",
    Column("grade", Text, nullable=False),
    Column("on_day", Date, nullable=False),
    *exact_columns("low"),
    *exact_columns("high"),
    Column("source", Text, nullable=False),
    UniqueConstraint("grade", "on_day"),
    CheckConstraint("low_units > 0", name="low_positive"),
)

rate = _table(
    "rate",
    Column("currency", Text, nullable=False),
    Column("on_day", Date, nullable=False),
    *exact_columns("euros"),
    UniqueConstraint("currency", "on_day"),
    CheckConstraint("euros_units > 0", name="euros_positive"),
)

sample_request = _table(
    # The row's id is the number a person reads on the label.
    "sample_request",
    _to("vendor"),
    Column("grade", Text, nullable=False),
    Column("caliper_um", Measure),
    Column("quantity", Text, nullable=False),
    Column("for_what", Text, nullable=False),
    Column("requested_on", Date, nullable=False),
    Column("needed_by", Date),
    Column("logged_by", Text, nullable=False),
    # The vendor's own name of the board, where one was asked for or came.
    _words("product"),
    _words("form"),
    Column("pieces", Integer),
    Column("width_mm", Measure),
    Column("length_mm", Measure),
    _words("contact"),
)

sample_event = _table(
    "sample_event",
    _to("sample_request"),
    Column("kind", Text, nullable=False),
    Column("on_day", Date, nullable=False),
    Column("until_day", Date),
    Column("note", Text, nullable=False),
    Column("recorded_at", Moment, nullable=False),
    Column("recorded_by", Text, nullable=False),
    _words("carrier"),
    _words("tracking"),
)

reading = _table(
    "reading",
    _to("sample_request"),
    Column("property", Text, nullable=False),
    *exact_columns("value"),
    Column("unit", Text, nullable=False),
    Column("taken_on", Date, nullable=False),
    Column("taken_by", Text, nullable=False),
    # True: in the standard air; False: not; null: nobody said.
    Column("conditioned", Boolean),
    _words("method"),
)

claim = _table(
    "claim",
    _to("sample_request"),
    Column("property", Text, nullable=False),
    *exact_columns("value"),
    Column("unit", Text, nullable=False),
    Column("source", Text, nullable=False),
    Column("said_on", Date, nullable=False),
    Column("said_by", Text, nullable=False),
    UniqueConstraint("sample_request_id", "property"),
    CheckConstraint("value_units > 0", name="value_positive"),
)

attachment = _table(
    "attachment",
    _to("sample_request"),
    Column("name", Text, nullable=False),
    Column("sha256", Text, nullable=False),
    Column("size", Integer, nullable=False),
    Column("added_at", Moment, nullable=False),
    Column("added_by", Text, nullable=False),
    Column("content", LargeBinary, nullable=False),
    # A file that was taken off again stays, because the change log keeps no bytes to bring it back from.
    Column("withdrawn_at", Moment),
)

sample_template = _table(
    "sample_template",
    Column("name", Text, nullable=False),
    Column("folded", Text, nullable=False, unique=True),
    Column("contents", JSON, nullable=False),
    Column("made_at", Moment, nullable=False),
    Column("made_by", Text, nullable=False),
)

vendor_contact = _table(
    "vendor_contact",
    Column("vendor_id", Integer, ForeignKey("vendor.id"), nullable=False, unique=True),
    Column("name", Text, nullable=False),
    Column("mail", Text, nullable=False),
    # The language a message to the vendor is written in.
    Column("language", Text, nullable=False),
)

board_verdict = _table(
    "board_verdict",
    _to("vendor"),
    # The sample that was tried, where the decision rests on one.
    _to("sample_request", nullable=True),
    Column("product", Text, nullable=False),
    Column("approved", Boolean, nullable=False),
    Column("for_what", Text, nullable=False),
    Column("because", Text, nullable=False),
    Column("said_on", Date, nullable=False),
    Column("said_by", Text, nullable=False),
)

setting = _table(
    "setting",
    Column("key", Text, nullable=False, unique=True),
    Column("value", JSON, nullable=False),
)

change_log = _table(
    "change_log",
    Column("at", Moment, nullable=False),
    Column("who", Text, nullable=False),
    Column("text", Text, nullable=False),
    Column("table_name", Text, nullable=False),
    Column("row_id", Integer, nullable=False),
    Column("was", JSON(none_as_null=True)),
    Column("now", JSON(none_as_null=True)),
)
