"""Footnotes below several tables: one whose sign lines of another table carry is about those, not about this one's."""

from collections.abc import Sequence
from dataclasses import replace

from tracker.intake.offers.notes.scope import Level
from tracker.intake.offers.sheet import ReadTable
from tracker.intake.tables.table import Words
from tracker.intake.values.notes.note_signs import marked, sign_ahead


def of_own_marks(level: Level, read: ReadTable, tables: Sequence[ReadTable]) -> Level:
    """The level without the notes on marks of other tables: '* plus barrier surcharge' below the second table, where
    lines of the first alone carry a star."""
    others = [other for other in tables if other is not read]
    signed = [words for words in level.texts if others and sign_ahead(words.text)]
    left = [words for words in signed if _is_of_others(words, read, others, signed)]
    return replace(level, texts=tuple(words for words in level.texts if words not in left)) if left else level


def _is_of_others(words: Words, read: ReadTable, others: Sequence[ReadTable], signed: Sequence[Words]) -> bool:
    sign = sign_ahead(words.text)
    # '[not *] lead time 3 weeks' is of all lines without one.
    if marked(sign) or sign in read.signs:
        return False
    alike = [other for other in signed if other is not words and sign_ahead(other.text) == sign]
    return any(sign in other.signs and not _explained(other, words, read, alike) for other in others)


def _explained(table: ReadTable, words: Words, read: ReadTable, alike: Sequence[Words]) -> bool:
    """Whether a table above has a note of its own for a sign, right below it: what begins with that sign below the next
    is none of its footnotes."""
    last, first = table.table.last_row, read.table.first_row
    below = words.row > first > last
    notes = (*table.table.notes, *alike)
    return below and any(sign_ahead(own.text) == sign_ahead(words.text) and last < own.row < first for own in notes)
