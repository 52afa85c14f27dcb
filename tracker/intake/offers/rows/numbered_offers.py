"""'Offer 1 | Offer 2' that number the boards on offer, and are no rounds of bids for one board."""

import re
from collections.abc import Iterable, Iterator, Set
from itertools import combinations
from typing import NamedTuple

from tracker.intake.offers.sheet import ReadSheet, ReadTable
from tracker.intake.tables.table import BodyRow, Words
from tracker.intake.values.boards.caliper import caliper_text, find_calipers
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.boards.weight import find_weights, weight_text
from tracker.intake.values.changes.others_prices import round_of_bids
from tracker.intake.values.heads.roles import Role
from tracker.intake.words.lists import phrases

_NAMES = (Role.PRODUCT, Role.GRADE, Role.COATING)
_CLOSE = 1.03
"""18 pt and 457 µm, or 370 g/m² and what 76 lb are in grams, are the same board."""


class _Board(NamedTuple):
    """A row's grades, calipers in µm and basis weights in g/m², in all that they may be; empty where it tells none."""

    grades: Set[str]
    calipers: Set[float]
    weights: Set[float]


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
    boards: dict[Words, set[_Board]] = {}
    for read in sheet.tables:
        current = next(_named(read.table.titles), None)
        for row in read.table.rows:
            current = next(_named(reversed(row.headings.own if row.headings is not None else ())), current)
            if current is not None:
                boards.setdefault(current, set()).add(_board(read, row))
    pairs = combinations(boards.values(), 2)
    apart = not any(_may_be_one(one, other) for own, others in pairs for one in own for other in others)
    return frozenset(boards) if apart and all(map(_is_numbered, boards)) else frozenset()


_NUMBERED = re.compile(r"\W*(?P<name>[^\W\d]+)\W*\d+\W*|\W*\d+\W*(?P<behind>[^\W\d]+)\W*")


def _is_numbered(words: Words) -> bool:
    said = _NUMBERED.fullmatch(words.text)
    return said is not None and phrases("list_names").whole(said["name"] or said["behind"]) is not None


def _board(read: ReadTable, row: BodyRow) -> _Board:
    cells = read.table.view.rows[row.index]
    names = [cells[column.index].text for column in read.columns.of(*_NAMES) if column.index in cells]
    thick = [(cells[one.index].text, one) for one in read.columns.of(Role.CALIPER) if one.index in cells]
    heavy = [(cells[one.index].text, one) for one in read.columns.of(Role.WEIGHT) if one.index in cells]
    calipers = [
        measure.um for text, column in thick if (said := caliper_text(text, column.caliper_unit)) is not None
        for measure in said.readings
    ]  # fmt: skip
    weights = [
        measure.gsm for text, column in heavy if (told := weight_text(text, column.weight_units)) is not None
        for measure in told.readings
    ]  # fmt: skip
    calipers += [measure.um for name in names for measure in find_calipers(name)]
    weights += [measure.gsm for name in names for measure in find_weights(name)]
    grades = (grade for name in names if (named := find_grade(name)) is not None for grade in named.grades)
    return _Board(frozenset(grades), frozenset(map(float, calipers)), frozenset(map(float, weights)))


def _may_be_one(one: _Board, other: _Board) -> bool:
    """Whether nothing that both tell of their board differs: two written otherwise may be one, 'SBS C1S 18' and 'SBS
    0.018'."""
    if one.grades and other.grades and not one.grades & other.grades:
        return False
    return not any(_differ(*measures) for measures in ((one.calipers, other.calipers), (one.weights, other.weights)))


def _differ(one: Set[float], other: Set[float]) -> bool:
    return bool(one and other) and not any(a <= b * _CLOSE and b <= a * _CLOSE for a in one for b in other)
