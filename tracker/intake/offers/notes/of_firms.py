"""What stands below one firm's name, down to the next firm's, is said by that firm alone: 'Lead time 5 weeks, minimum
20,000 lb' over its table says nothing of the table of another firm further down."""

from collections.abc import Iterable, Sequence
from itertools import pairwise

from tracker.intake.offers.sheet import ReadSheet, ReadTable
from tracker.intake.offers.terms.vendor import vendor_among
from tracker.intake.tables.table import Words
from tracker.intake.words.fold import fold


def said_by_other_firms(read: ReadTable, sheet: ReadSheet) -> set[Words]:
    """The texts of a sheet that a firm over other tables says of these.

    What stands above the first name holds for all, and so does what stands below the last table, unless there are
    notes below the tables of an earlier firm as well.
    """
    starts = _first_rows(sheet)
    if len(set(starts.values())) <= 1:
        return set()
    own = _firm_at(read.table.first_row, starts)
    shared = None if _has_notes_between(sheet, starts) else max(table.table.last_row for table in sheet.tables)
    return {
        words
        for words in sheet.found.texts
        if (shared is None or words.row <= shared) and _firm_at(words.row, starts) not in (None, own)
    }


def _first_rows(sheet: ReadSheet) -> dict[int, str]:
    """Where a firm's name stands over a table, and whose; none where tables stand beside each other."""
    tables = sorted(sheet.tables, key=lambda read: read.table.first_row)
    if any(after.table.first_row <= before.table.last_row for before, after in pairwise(tables)):
        return {}
    starts: dict[int, str] = {}
    edge = -1
    for read in tables:
        over = {*sheet.found.texts, *read.table.titles}
        named = _nearest_name([words for words in over if edge < words.row < read.table.first_row])
        starts |= {} if named is None else {named[0]: named[1]}
        edge = read.table.last_row
    return starts


def _nearest_name(over: Iterable[Words]) -> tuple[int, str] | None:
    """The row of the lowest text that names a firm, and the firm."""
    for words in sorted(over, key=lambda each: (-each.row, each.cell.column)):
        named = vendor_among([words])
        if named is not None:
            return words.row, fold(named.value)
    return None


def _firm_at(row: int, starts: dict[int, str]) -> str | None:
    """The firm whose name is the last at or above a row."""
    above: Sequence[int] = [start for start in starts if start <= row]
    return starts[max(above)] if above else None


def _has_notes_between(sheet: ReadSheet, starts: dict[int, str]) -> bool:
    """Whether words stand below a table and above the next firm's name."""
    ends = [read.table.last_row for read in sheet.tables]
    for start in sorted(starts):
        end = max((end for end in ends if end < start), default=None)
        if end is not None and any(end < words.row < start for words in sheet.found.texts):
            return True
    return False
