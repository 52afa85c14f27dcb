"""The tables of samples: requests, what happened to them, what they measured, and what was decided."""

from sqlalchemy import JSON, Boolean, CheckConstraint, Column, Date, Integer, LargeBinary, Text, UniqueConstraint

from tracker.store.table import table, to, words
from tracker.store.types import Measure, Moment, exact_columns

sample_request = table(
    # The row's id is the number a person reads on the label.
    "sample_request",
    to("vendor"),
    Column("grade", Text, nullable=False),
    Column("caliper_um", Measure),
    Column("quantity", Text, nullable=False),
    Column("for_what", Text, nullable=False),
    Column("requested_on", Date, nullable=False),
    Column("needed_by", Date),
    Column("logged_by", Text, nullable=False),
    # The vendor's own name of the board, where one was asked for or came.
    words("product"),
    words("form"),
    Column("pieces", Integer),
    Column("width_mm", Measure),
    Column("length_mm", Measure),
    words("contact"),
)

sample_event = table(
    "sample_event",
    to("sample_request"),
    Column("kind", Text, nullable=False),
    Column("on_day", Date, nullable=False),
    Column("until_day", Date),
    Column("note", Text, nullable=False),
    Column("recorded_at", Moment, nullable=False),
    Column("recorded_by", Text, nullable=False),
    words("carrier"),
    words("tracking"),
)

reading = table(
    "reading",
    to("sample_request"),
    Column("property", Text, nullable=False),
    *exact_columns("value"),
    Column("unit", Text, nullable=False),
    Column("taken_on", Date, nullable=False),
    Column("taken_by", Text, nullable=False),
    # True: in the standard air; False: not; null: nobody said.
    Column("conditioned", Boolean),
    words("method"),
)

claim = table(
    "claim",
    to("sample_request"),
    Column("property", Text, nullable=False),
    *exact_columns("value"),
    Column("unit", Text, nullable=False),
    Column("source", Text, nullable=False),
    Column("said_on", Date, nullable=False),
    Column("said_by", Text, nullable=False),
    UniqueConstraint("sample_request_id", "property"),
    CheckConstraint("value_units > 0", name="value_positive"),
)

attachment = table(
    "attachment",
    to("sample_request"),
    Column("name", Text, nullable=False),
    Column("sha256", Text, nullable=False),
    Column("size", Integer, nullable=False),
    Column("added_at", Moment, nullable=False),
    Column("added_by", Text, nullable=False),
    Column("content", LargeBinary, nullable=False),
    # A file that was taken off again stays, because the change log keeps no bytes to bring it back from.
    Column("withdrawn_at", Moment),
)

sample_template = table(
    "sample_template",
    Column("name", Text, nullable=False),
    Column("folded", Text, nullable=False, unique=True),
    Column("contents", JSON, nullable=False),
    Column("made_at", Moment, nullable=False),
    Column("made_by", Text, nullable=False),
)

board_verdict = table(
    "board_verdict",
    to("vendor"),
    # The sample that was tried, where the decision rests on one.
    to("sample_request", nullable=True),
    Column("product", Text, nullable=False),
    Column("approved", Boolean, nullable=False),
    Column("for_what", Text, nullable=False),
    Column("because", Text, nullable=False),
    Column("said_on", Date, nullable=False),
    Column("said_by", Text, nullable=False),
)
