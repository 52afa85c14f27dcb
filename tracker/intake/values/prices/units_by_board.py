"""Currencies and bases that a clause gives some boards each: 'SBS in USD, CUK and CRB in CAD', 'per short ton, except
the recycled board, which is per tonne'."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import TypeVar

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.boards.open_grades import GRADES, left_open
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.prices.basis import BasisReading, find_basis
from tracker.intake.values.prices.currency import CurrencyReading, find_currencies
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import between

U = TypeVar("U", BasisReading, CurrencyReading)


@dataclass(frozen=True, slots=True)
class OfBoards:
    """The grades of which a unit is said, () for all, and the words for them; `perhaps`: those that these may mean as
    well, as 'recycled board' may be meant of chipboard."""

    grades: tuple[str, ...] = ()
    perhaps: tuple[str, ...] = ()
    words: str = ""

    def __add__(self, other: "OfBoards") -> "OfBoards":
        grades = dict.fromkeys((*self.grades, *other.grades))
        perhaps = tuple(set(self.perhaps + other.perhaps) - set(grades))
        return OfBoards(tuple(grades), perhaps, f"{self.words} {other.words}".strip())


OF_ALL = OfBoards()


def bases_by_board(clause: str) -> tuple[tuple[BasisReading, OfBoards], ...]:
    """'CUK per tonne, all others per short ton' and 'CUK: per tonne': each basis with the boards its part names.

    () where just one is said of all, or none of any board.
    """
    said: list[tuple[BasisReading, OfBoards]] = []
    boards = OF_ALL
    for part in _parts_of(clause):
        boards += boards_of_unit(part)
        basis = find_basis(part)
        if basis is not None:
            said.append((basis, boards))
            boards = OF_ALL
    several = len({basis.bases for basis, _ in said}) > 1
    alone = len(said) == 1 and len(clause.split()) <= _FEW_WORDS
    return tuple(said) if any(of.grades for _, of in said) and (several or alone) else ()


def currencies_by_board(clause: str) -> tuple[tuple[CurrencyReading, OfBoards], ...]:
    """'SBS in USD, CUK and CRB in CAD': each currency with the boards its part names; () where none names any."""
    said: list[tuple[CurrencyReading, OfBoards]] = []
    boards = OF_ALL
    for part in _parts_of(clause):
        boards += boards_of_unit(part)
        # 'SBS in US dollars (USD)' says it twice, and both times of SBS.
        named = find_currencies(part)
        said.extend((currency, boards) for currency in named)
        boards = OF_ALL if named else boards
    several = len({currency.codes for currency, _ in said}) > 1
    return tuple(said) if several and any(of.grades for _, of in said) else ()


_FEW_WORDS = 7
"""'SBS and CRB per short ton'; a longer clause tells more than what prices are per."""


def _parts_of(clause: str) -> Iterator[str]:
    """The parts between commas and words for an exception: '…, except CUK, which is per tonne'."""
    for piece in COMMA.split(clause):
        yield from between(piece, phrases("exceptions").find(piece))


def boards_meant_by(clause: str, find: Callable[[str], object]) -> OfBoards:
    """The boards of which a clause says its unit: 'SEK/ton delivered, except SBS: ex works' and 'USD/t, SBS in CAD/t'
    say theirs of all, 'prices in USD, except CUK, which is per tonne' the tonne of CUK."""
    telling = [part for part in _parts_of(clause) if find(part)]
    if len(telling) > 1 and not boards_of_unit(telling[0]).grades:
        return OF_ALL
    excepted = (one for one in phrases("excepted").find(clause) if boards_of_unit(clause[one.end :]).grades)
    ahead = (clause[: one.start] for one in excepted)
    return boards_of_unit(next((words for words in ahead if find(words)), clause))


def boards_of_unit(part: str) -> OfBoards:
    """The boards that a part names by grade, or by a word that leaves open which of few grades they are."""
    reading = find_grade(part)
    if reading is None:
        return OF_ALL
    left = left_open(reading.kinds) if reading.kinds and not reading.grades else frozenset[str]()
    if reading.grades or not left or len(left) > _FEW_GRADES:
        return OfBoards(reading.grades, words=reading.words)
    # Grey board is recycled too, and seldom called so.
    perhaps = ("URB",) if left == {"CRB", "URB"} else ()
    return OfBoards(tuple(grade for grade in GRADES if grade in left and grade not in perhaps), perhaps)


_FEW_GRADES = 2


def excepted_unit(clause: str, of_all: U, find: Callable[[str], tuple[U, ...]]) -> U | None:
    """Another unit behind an exception from boards that can't be told: 'EUR per tonne, except for our Kvist boards, in
    SEK'. Which prices are in which is then open."""
    for match in phrases("excepted").find(clause) + phrases("exceptions").find(clause):
        behind = clause[match.end :]
        others = [unit for unit in find(behind) if _units(unit) != _units(of_all)]
        # The sheets of 'per 1,000 sheets' are none that are excepted.
        excepted = behind.partition(others[0].words)[0] if others else ""
        if others and not any(phrases(section).find(excepted) for section in _NO_BOARDS):
            return others[0]
    return None


def _units(unit: BasisReading | CurrencyReading) -> frozenset[object]:
    return frozenset(unit.codes if isinstance(unit, CurrencyReading) else unit.bases)


_NO_BOARDS = ("charges", "list_parts", "countries", "sold_apart", "taxes", "column_words", "forms")
"""What is said of these is heard elsewhere, or says nothing of the list's own prices."""
