"""Delimited text: CSV, semicolons, tabs, bars. Every record counts, empty ones too; all values stay text."""

import csv
import io
from collections import Counter

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
    """The records as quotes make them, except where a lone inch mark makes several lines one: those stay lines."""
    csv.field_size_limit(max(csv.field_size_limit(), _LONGEST_FIELD))
    lines = list(io.StringIO(text, newline=""))
    usual = Counter(line.count(delimiter) for line in lines if line.strip()).most_common(1)[0][0]
    reader = csv.reader(lines, delimiter=delimiter)
    records: list[list[str]] = []
    first = 0
    try:
        for record in reader:
            span = lines[first : reader.line_num]
            first = reader.line_num
            if len(span) > 1 and _swallowed(span, delimiter, usual):
                records.extend(_line_record(line, delimiter) for line in span)
            else:
                records.append(record)
    except csv.Error:
        records.extend(_line_record(line, delimiter) for line in lines[first:])
    return records


def _swallowed(span: list[str], delimiter: str, usual: int) -> bool:
    """Whether a quote has made one record of lines that are whole records by themselves."""
    if len(span) > _MOST_LINES_IN_A_FIELD:
        return True
    return usual > 0 and all(line.count(delimiter) == usual for line in span)


def _line_record(line: str, delimiter: str) -> list[str]:
    """One line as a record of its own; an odd number of quotes are inch marks, not quotes."""
    bare = line.rstrip("\r\n")
    if bare.count('"') % 2 or not bare:
        return bare.split(delimiter) if bare else []
    return next(csv.reader([bare], delimiter=delimiter), [])
