"""Delimited text: CSV, semicolons, tabs, bars. Every record counts, empty ones too; all values stay text."""

import csv
import io

from tracker.intake.files.cell_values import clean
from tracker.intake.files.cells import RowBuilder, SheetCells, Style
from tracker.intake.files.delimiters import (
    decimal_commas_split_fields,
    delimiter_of,
    named_delimiter,
)
from tracker.intake.files.encodings import decoded
from tracker.intake.files.sniff import Wrong
from tracker.intake.grid import Grid

_UNFORMATTED = Style("")
_LONGEST_FIELD = 1_000_000
_MOST_LINES_IN_A_FIELD = 40


def read_delimited(content: bytes) -> Grid:
    """One grid named '' whose rows are the file's records; a `sep=;` record counts but holds no cells.

    Raises Wrong where commas both part the fields and mark decimals, since no reading of that is certain.
    """
    text = decoded(content)
    first_line = text.split("\n", 1)[0].rstrip("\r")
    named = named_delimiter(first_line)
    delimiter = named or delimiter_of(text)
    records = _records(text, delimiter)
    if named:
        records[0] = []
    if delimiter == "," and decimal_commas_split_fields(records):
        raise Wrong(
            "uses commas both between its columns and as decimal signs, so its prices can't be told apart",
            "save it again with semicolons, or as .xlsx",
        )
    builder = RowBuilder()
    for row, record in enumerate(records):
        builder.add(row, [(column, _UNFORMATTED, clean(field)) for column, field in enumerate(record)])
    return Grid("", SheetCells(builder.rows))


def _records(text: str, delimiter: str) -> list[list[str]]:
    """The records as quoted fields have them; where one quote swallows dozens of lines (a lone inch mark), as lines."""
    csv.field_size_limit(max(csv.field_size_limit(), _LONGEST_FIELD))
    try:
        records = list(csv.reader(io.StringIO(text, newline=""), delimiter=delimiter))
    except csv.Error:
        records = []
    swallowed = any(field.count("\n") > _MOST_LINES_IN_A_FIELD for record in records for field in record)
    if swallowed or not records:
        return [line.split(delimiter) for line in text.splitlines()]
    return records
