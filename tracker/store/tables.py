"""Every table, those of samples from their own module. A change needs a migration in store/migrations/versions; a test
fails where the two disagree."""

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
    SmallInteger,
    Text,
    UniqueConstraint,
)

from tracker.store.sample_tables import attachment as attachment
from tracker.store.sample_tables import board_verdict as board_verdict
from tracker.store.sample_tables import claim as claim
from tracker.store.sample_tables import reading as reading
from tracker.store.sample_tables import sample_event as sample_event
from tracker.store.sample_tables import sample_request as sample_request
from tracker.store.sample_tables import sample_template as sample_template
from tracker.store.table import metadata as metadata
from tracker.store.table import table, to, words
from tracker.store.types import Measure, Moment, exact_columns

vendor = table(
    "vendor",
    Column("name", Text, nullable=False),
    # The same vendor however it is written in capitals; unique so that two imports can't make it twice.
    Column("folded", Text, nullable=False, unique=True),
)

price_file = table(
    "price_file",
    Column("name", Text, nullable=False),
    Column("sha256", Text, nullable=False, unique=True),
    Column("size", Integer, nullable=False),
    to("vendor", nullable=True),
    Column("received", Date, nullable=False),
    Column("imported_at", Moment, nullable=False),
    Column("imported_by", Text, nullable=False),
    Column("withdrawn_at", Moment),
    Column("answers", JSON, nullable=False),
    Column("passed_over", JSON, nullable=False),
    Column("evidence", LargeBinary),
    Column("content", LargeBinary, nullable=False),
)

offer = table(
    "offer",
    to("price_file"),
    Column("position", Integer, nullable=False),
    to("vendor", nullable=True),
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
    # Where the last day can be read two ways, the later of the two.
    Column("valid_at_latest", Date),
    Column("delivered", Boolean),
    Column("received", Date, nullable=False),
    # Says which offers are the same one at another date (store/boards.py).
    Column("board_key", BigInteger, nullable=False, index=True),
    Column("notes", JSON(none_as_null=True)),
    UniqueConstraint("price_file_id", "position"),
    CheckConstraint("price_units > 0", name="price_positive"),
)

charge = table(
    "charge",
    to("offer"),
    Column("label", Text, nullable=False),
    *exact_columns("price"),
    Column("currency", Text),
    Column("basis", Text),
    Column("freight", Boolean, nullable=False),
)

question = table(
    "question",
    to("price_file"),
    Column("key", Text, nullable=False),
    Column("code", Text, nullable=False),
    Column("text", Text, nullable=False),
    Column("words", Text, nullable=False),
    Column("choices", JSON, nullable=False),
    Column("cells", JSON, nullable=False),
    Column("set_aside_at", Moment),
)

held_line = table(
    "held_line",
    to("price_file"),
    Column("sheet", Text, nullable=False),
    Column("cell", Text, nullable=False),
    Column("state", Text, nullable=False),
    Column("product", Text, nullable=False),
    Column("as_written", Text, nullable=False),
    Column("notes", JSON, nullable=False),
)

answer = table(
    "answer",
    to("vendor"),
    Column("key", Text, nullable=False),
    Column("value", Text, nullable=False),
    Column("words", Text, nullable=False),
    Column("said_at", Moment, nullable=False),
    Column("said_by", Text, nullable=False),
    UniqueConstraint("vendor_id", "key"),
)

layout = table(
    "layout",
    to("vendor"),
    Column("name", Text, nullable=False),
    Column("marked", JSON, nullable=False),
    Column("made_at", Moment, nullable=False),
    Column("made_by", Text, nullable=False),
)

level = table(
    "level",
    Column("grade", Text, nullable=False),
    Column("on_day", Date, nullable=False),
    *exact_columns("per_tonne"),
    Column("currency", Text, nullable=False),
    Column("source", Text, nullable=False),
    Column("spread_percent", Measure),
    # The published price index that carries the level forward: its name and [day, value] as text, in order of day.
    words("index_name"),
    Column("index_points", JSON(none_as_null=True)),
    # As it was said, where that was not per tonne.
    *exact_columns("said", nullable=True),
    Column("said_basis", Text),
    UniqueConstraint("grade", "on_day"),
    CheckConstraint("per_tonne_units > 0", name="per_tonne_positive"),
)

grade_ratio = table(
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

rate = table(
    "rate",
    Column("currency", Text, nullable=False),
    Column("on_day", Date, nullable=False),
    *exact_columns("euros"),
    UniqueConstraint("currency", "on_day"),
    CheckConstraint("euros_units > 0", name="euros_positive"),
)

vendor_contact = table(
    "vendor_contact",
    Column("vendor_id", Integer, ForeignKey("vendor.id"), nullable=False, unique=True),
    Column("name", Text, nullable=False),
    Column("mail", Text, nullable=False),
    # The language a message to the vendor is written in.
    Column("language", Text, nullable=False),
)

setting = table(
    "setting",
    Column("key", Text, nullable=False, unique=True),
    Column("value", JSON, nullable=False),
)

change_log = table(
    "change_log",
    Column("at", Moment, nullable=False),
    Column("who", Text, nullable=False),
    Column("text", Text, nullable=False),
    Column("table_name", Text, nullable=False),
    Column("row_id", Integer, nullable=False),
    Column("was", JSON(none_as_null=True)),
    Column("now", JSON(none_as_null=True)),
)
