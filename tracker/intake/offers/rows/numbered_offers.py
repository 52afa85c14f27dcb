"""'Offer 1 | Offer 2' that number the boards on offer, and are no rounds of bids for one board."""

import re
from collections.abc import Hashable, Iterable, Iterator

from tracker.intake.offers.sheet import ReadSheet, ReadTable
from tracker.intake.tables.table import BodyRow, Words
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.changes.others_prices import round_of_bids
from tracker.intake.values.heads.roles import Role
from tracker.intake.words.lists import phrases

_NAMES = (Role.PRODUCT, Role.GRADE, Role.COATING)
_MEASURES = (Role.CALIPER, Role.WEIGHT, Role.SHEET_SIZE)


def offers_numbered(read: ReadTable, sheet: ReadSheet) -> frozenset[Words]:
    """The words above prices that number offers: side by side over a table on its side, or below each other, where no
    board comes under two of them."""
    own = frozenset(words for words in read.table.titles if round_of_bids(words.text))
    rounds = {round_of_bids(words.text) for words in own}
    if len(own) > 1 and "last" not in rounds and len({words.row for words in own}) == 1:
        return own
    return _over_different_boards(sheet)


def _named(texts: Iterable[Words]) -> Iterator[Words]:
    return (words for words in texts if round_of_bids(words.text) or _is_numbered(words))


def _over_different_boards(sheet: ReadSheet) -> frozenset[Words]:
    """'Offer 1', 'Offer 2' of a sheet, where each has boards that none of the others has; none where one is called by
    another word, as 'Round 2' and 'Final offer' are."""
    boards: dict[Words, set[Hashable]] = {}
    for read in sheet.tables:
        current = next(_named(read.table.titles), None)
        for row in read.table.rows:
            current = next(_named(reversed(row.headings.own if row.headings is not None else ())), current)
            if current is not None:
                boards.setdefault(current, set()).add(_board(read, row))
    every = [board for own in boards.values() for board in own]
    apart = None not in every and len(set(every)) == len(every)
    return frozenset(boards) if apart and all(map(_is_numbered, boards)) else frozenset()


_NUMBERED = re.compile(r"\W*(?P<name>[^\W\d]+)\W*\d+\W*|\W*\d+\W*(?P<behind>[^\W\d]+)\W*")


def _is_numbered(words: Words) -> bool:
    said = _NUMBERED.fullmatch(words.text)
    return said is not None and phrases("list_names").whole(said["name"] or said["behind"]) is not None


def _board(read: ReadTable, row: BodyRow) -> Hashable:
    """A row's grades and the figures that measure it, however they are written; None where it does not tell both."""
    cells = read.table.view.rows[row.index]
    names = [cells[column.index].text for column in read.columns.of(*_NAMES) if column.index in cells]
    measured = [cells[column.index].text for column in read.columns.of(*_MEASURES) if column.index in cells]
    grades = frozenset(
        grade for name in names if (told := find_grade(name)) is not None for grade in told.grades
    )  # fmt: skip
    figures = frozenset(re.findall(r"\d+(?:[.,]\d+)?", " ".join((*names, *measured))))
    return (grades, figures) if grades and figures else None
