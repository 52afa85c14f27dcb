"""In what a text says that weights are, of all boards or of some each: 'Basis weights: SBS and CUK in lb per 3,000 sq
ft; CRB and URB in lb per 1,000 sq ft'."""

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from functools import lru_cache

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.boards.weight import weight_units
from tracker.intake.values.boards.weights_told import (
    SAID,
    UNTOLD,
    WeightBasis,
    basis_of_part,
    one_told,
    span_of_weights,
    weight_basis,
)
from tracker.intake.values.figures.sheetsize import without_sheet_sizes
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.orders.masses import find_mass_units
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.prices.units_by_board import boards_of_unit
from tracker.intake.words.lists import joined, pattern, phrases


@dataclass(frozen=True, slots=True)
class WeightsTold:
    """What the weights of some grades are in, () for all or for all others; `words`: the clause that says so."""

    basis: WeightBasis
    words: str
    grades: tuple[str, ...] = ()


@lru_cache(maxsize=8192)
def weights_told(text: str) -> tuple[WeightsTold, ...]:
    """What a text says weights are in, clause by clause; what it says of some boards and more than is understood leaves
    those open."""
    told: list[WeightsTold] = []
    before: list[WeightsTold] = []
    for clause in clauses(text):
        part = clause[slice(*span_of_weights(clause))] or (clause if before and _goes_on(clause, before) else "")
        if _names_boards(part):
            before = [replace(one, words=clause) for one in _of_boards(part)]
        else:
            basis = weight_basis(clause)
            before = [] if basis is None else [WeightsTold(basis, clause)]
        told += before
    return tuple(told)


def together(told: Iterable[tuple[WeightBasis, tuple[str, ...]]]) -> WeightBasis | None:
    """What several say together, each of some grades or of all; None where there are none."""
    told = [*told]
    general = one_told(basis for basis, grades in told if not grades)
    named = dict.fromkeys(grade for _, grades in told for grade in grades)
    if not named:
        return general
    by_grade = ((grade, one_told(basis for basis, grades in told if grade in grades) or UNTOLD) for grade in named)
    return replace(general or UNTOLD, by_grade=tuple(by_grade))


def of_grades(told: WeightBasis, grades: Iterable[str]) -> WeightBasis:
    """What holds for a board: UNTOLD where grades have their own and this one's is not known."""
    if not told.by_grade:
        return told
    own, others = dict(told.by_grade), replace(told, by_grade=())
    said = {own.get(grade, others) for grade in grades}
    return said.pop() if len(said) == 1 else UNTOLD


def _goes_on(clause: str, before: Iterable[WeightsTold]) -> bool:
    """'CRB and URB in lb per 1,000 sq ft', behind what is said of weights; 'CRB per 1,000 sq ft' only behind what is
    said of those of other boards."""
    priced = phrases("price_words").find(clause) or find_currencies(clause)
    weighed = bool(find_mass_units(clause)) or all(one.grades for one in before)
    return _names_boards(clause) and bool(weight_units(clause)) and weighed and not priced


def _names_boards(text: str) -> bool:
    return boards_of_unit(text).any or bool(phrases("the_others").find(text))


def _of_boards(part: str) -> list[WeightsTold]:
    told: list[WeightsTold] = []
    ahead: tuple[str, ...] = ()
    for piece in _pieces(part):
        boards, basis = boards_of_unit(piece), basis_of_part(piece)
        if _is_unread(piece) or boards.perhaps or (basis is None and weight_units(piece)):
            return _left_open(part)
        ahead += boards.grades
        if basis is not None:
            told.append(WeightsTold(basis, part, ahead))
            ahead = ()
    # 'In lb per 3,000 sq ft, except CRB'.
    return [*told, WeightsTold(UNTOLD, part, ahead)] if ahead else told


def _left_open(part: str) -> list[WeightsTold]:
    boards = boards_of_unit(part)
    named = (*boards.grades, *boards.perhaps)
    return [WeightsTold(UNTOLD, part, named)] if named else [WeightsTold(UNTOLD, part)]


def _pieces(part: str) -> Iterator[str]:
    """What stands between commas and brackets; two boards' units that only 'and' joins as two."""
    for piece in _STOPS.split(part):
        if any(map(str.isalnum, piece)):
            yield from _joined_by_and(piece)


_STOPS = re.compile(r",(?!\d)|[()]")
_AND = re.compile(rf"\s(?:{pattern('range', 'and')}|&)\s")


def _joined_by_and(piece: str) -> Iterator[str]:
    for match in _AND.finditer(piece):
        first, second = piece[: match.start()], piece[match.end() :]
        if all(basis_of_part(half) is not None and boards_of_unit(half).any for half in (first, second)):
            yield first
            yield from _joined_by_and(second)
            return
    yield piece


def _is_unread(piece: str) -> bool:
    grade = find_grade(piece)
    for word in grade.words.split() if grade is not None else ():
        piece = re.sub(rf"(?<!\w){re.escape(word)}(?!\w)", " ", piece, count=1)
    left = joined("weight_words", "weight_units").find(piece)
    return bool(rest_of(without_sheet_sizes(piece), (match.span for match in left), *SAID, *_BESIDE_BOARDS))


_BESIDE_BOARDS = (
    "the_others", "exceptions", "excepted", "relative_words", "copula", "those_of", "only_these", "board_goods",
    "all_of_them", "price_words",
)  # fmt: skip
