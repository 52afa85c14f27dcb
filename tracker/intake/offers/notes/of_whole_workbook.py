"""Sentences on a sheet of prices that speak of the whole file: 'All prices in this workbook are in CAD'."""

from collections.abc import Iterable, Iterator
from dataclasses import replace

from tracker.intake.offers.sheet import ReadSheet
from tracker.intake.tables.table import Words
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.words.lists import phrases


def of_whole_workbook(sheets: Iterable[ReadSheet]) -> Iterator[Words]:
    """The sentences of these sheets that do; what else their texts say is of their own prices."""
    for sheet in sheets:
        titles = (words for read in sheet.tables for words in (*read.table.titles, *read.table.notes))
        for words in dict.fromkeys((*sheet.found.texts, *titles)):
            for clause in clauses(words.text) if phrases("whole_book").find(words.text) else ():
                if phrases("whole_book").find(clause):
                    yield replace(words, text=clause)
