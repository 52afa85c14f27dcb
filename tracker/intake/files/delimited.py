"""Delimited text: CSV, semicolons, tabs, bars. Every record counts, empty ones too; all values stay text."""

import csv
import io
from collections import Counter
from collections.abc import Iterator
from itertools import islice

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
_RECORDS_TRIED = 2_000


def read_delimited(content: bytes) -> Grid:
    """One grid named '' whose rows are the file's records; a `sep=;` record counts but holds no cells.

    Raises Wrong where commas both part the fields and mark decimals, since no reading of that is certain.
    """
    text = decoded(content)
    named = named_delimiter(text.split("\n", 1)[0].rstrip("\r"))
    delimiter = named or delimiter_of(text)
    first = list(islice(_records(text, delimiter), _RECORDS_TRIED))
    if delimiter == "," and decimal_commas_split_fields(first):
        raise Wrong(
            "uses commas both between its columns and as decimal signs, so its prices can't be told apart",
            "save it again with semicolons, or as .xlsx",
        )
    builder = RowBuilder()
    for row, record in enumerate(_records(text, delimiter)):
        if row or not named:
            builder.add(row, [(column, _UNFORMATTED, clean(field)) for column, field in enumerate(record)])
    return Grid("", SheetCells(builder.rows))


class _Lines:
    """Lines of a text one by one, keeping those that the record being read has taken."""

    def __init__(self, text: str) -> None:
        self._lines = io.StringIO(text, newline="")
        self.taken: list[str] = []

    def __iter__(self) -> Iterator[str]:
        for line in self._lines:
            self.taken.append(line)
            yield line


def _records(text: str, delimiter: str) -> Iterator[list[str]]:
    """The records as quotes make them, except where a lone inch mark makes several lines one: those stay lines."""
    csv.field_size_limit(_LONGEST_FIELD)
    usual = _usual_counts(text, delimiter)
    lines = _Lines(text)
    reader = csv.reader(lines, delimiter=delimiter)
    while True:
        lines.taken.clear()
        try:
            record = next(reader, None)
        except csv.Error:  # a quote that runs on for ever
            yield from (_line_record(line, delimiter) for line in lines.taken)
            reader = csv.reader(lines, delimiter=delimiter)
            continue
        if record is None:
            return
        if len(lines.taken) > 1 and _swallowed(lines.taken, delimiter, usual):
            yield from (_line_record(line, delimiter) for line in list(lines.taken))
        else:
            yield record


def _usual_counts(text: str, delimiter: str) -> tuple[int, ...]:
    """How many delimiters most lines hold, most lines without quotes, which are whole records, most of those whose
    quotes are all closed, and most records where every quote stands at a field's end.

    They differ where a header of many quoted line breaks is longer than the list below it.
    """
    lines = [line for line in islice(io.StringIO(text, newline=""), _RECORDS_TRIED) if line.strip()]
    every = [line.count(delimiter) for line in lines]
    whole = [count for line, count in zip(lines, every, strict=True) if count and '"' not in line]
    closed = [len(_line_record(line, delimiter)) - 1 for line in lines if line.count('"') % 2 == 0]
    quoted = _widths_as_quoted(lines, delimiter)
    return tuple(Counter(counts).most_common(1)[0][0] for counts in (every, whole, closed, quoted) if counts)


def _widths_as_quoted(lines: list[str], delimiter: str) -> list[int]:
    """How many delimiters the records hold that quotes make of the lines; [] where a quote stands within a field."""
    try:
        return [len(record) - 1 for record in csv.reader(lines, delimiter=delimiter, strict=True) if len(record) > 1]
    except csv.Error:
        return []


def _swallowed(span: list[str], delimiter: str, usual: tuple[int, ...]) -> bool:
    """Whether a quote has made one record of lines that are whole records by themselves."""
    if len(span) > _MOST_LINES_IN_A_FIELD:
        return True
    whole_each = usual[0] > 0 and all(line.count(delimiter) == usual[0] for line in span)
    return whole_each and not _well_quoted(span, delimiter, usual)


def _well_quoted(span: list[str], delimiter: str, usual: tuple[int, ...]) -> bool:
    """One record of a usual width whose quotes all stand at fields' ends, so that none of them is an inch mark."""
    try:
        records = list(csv.reader(span, delimiter=delimiter, strict=True))
    except csv.Error:
        return False
    return len(records) == 1 and len(records[0]) - 1 in usual


def _line_record(line: str, delimiter: str) -> list[str]:
    """One line as a record of its own; an odd number of quotes are inch marks, not quotes."""
    bare = line.rstrip("\r\n")
    if bare.count('"') % 2 or not bare:
        return bare.split(delimiter) if bare else []
    return next(csv.reader([bare], delimiter=delimiter), [])
