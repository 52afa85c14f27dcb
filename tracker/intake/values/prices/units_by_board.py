"""Currencies and bases that a clause gives some boards each: 'SBS in USD, CUK and CRB in CAD', 'per short ton, except
the recycled board, which is per tonne'."""

import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import TypeVar

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.boards.open_grades import GRADES, UNCOATED, left_open
from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.prices.basis import BasisReading, find_basis
from tracker.intake.values.prices.currency import CurrencyReading, find_currencies
from tracker.intake.values.prices.units_in_doubt import leaves_unit_open
from tracker.intake.words.lists import joined, phrases, without_words
from tracker.intake.words.phrases import tokens_of

U = TypeVar("U", BasisReading, CurrencyReading)


@dataclass(frozen=True, slots=True)
class OfBoards:
    """The grades of which a unit is said, () for all, and the words for them; `perhaps`: those that these may mean as
    well, as 'recycled board' may be meant of chipboard, and those beside which more is said than is understood."""

    grades: tuple[str, ...] = ()
    perhaps: tuple[str, ...] = ()
    words: str = ""

    @property
    def any(self) -> bool:
        """Whether boards are named at all."""
        return bool(self.grades or self.perhaps)

    def and_of(self, other: "OfBoards") -> "OfBoards":
        """These boards and others that are named before the same unit."""
        grades = dict.fromkeys((*self.grades, *other.grades))
        perhaps = tuple(set(self.perhaps + other.perhaps) - set(grades))
        return OfBoards(tuple(grades), perhaps, f"{self.words} {other.words}".strip())


OF_ALL = OfBoards()


@dataclass(frozen=True, slots=True)
class _Part:
    """What stands between commas and words for an exception. `excepted`: behind such a word."""

    text: str
    excepted: bool


def units_by_board(clause: str, find: Callable[[str], tuple[U, ...]]) -> tuple[tuple[U, OfBoards], ...]:
    """Each unit of a clause with the boards that it is said of, as `find` reads units: one of all, several of some
    boards each, or one of all and another of what is excepted.

    () where it names several and doesn't tell whose they are.
    """
    parts = tuple(_parts_of(clause))
    said = tuple(_told(parts, find))
    if len({_units(unit) for unit, _ in said}) <= 1:
        boards = _boards_of_one(clause, parts, find) if said else OF_ALL
        return tuple((unit, boards) for unit in dict.fromkeys(unit for unit, _ in said))
    return said if any(of.any for _, of in said) else tuple(_excepting(parts, find))


def _told(parts: tuple[_Part, ...], find: Callable[[str], tuple[U, ...]]) -> Iterator[tuple[U, OfBoards]]:
    """The units of each part, with the boards that it and those without a unit before it name; 'CUK ditto' names them
    behind its unit."""
    boards = OF_ALL
    ahead: tuple[str, ...] = ()
    before: tuple[U, ...] = ()
    for part in parts:
        named = find(part.text)
        own = boards_of_unit(part.text)
        if charges_named(part.text) and own.any:
            # 'CRB freight per tonne' tells in what its freight is.
            continue
        if own.any and not named and before and phrases("ditto").find(part.text):
            yield from ((unit, _surely(own, without_words(part.text, "ditto"))) for unit in before)
            continue
        boards = boards.and_of(own)
        # 'SBS in US dollars (USD)' says it twice, and both times of SBS.
        for unit in named:
            yield unit, _surely(boards, *ahead, part.text)
        ahead = () if named else (*ahead, part.text)
        boards, before = (OF_ALL, named) if named else (boards, before)


def _excepting(parts: tuple[_Part, ...], find: Callable[[str], tuple[U, ...]]) -> Iterator[tuple[U, OfBoards]]:
    """Another unit behind an exception from boards that can't be told: 'EUR per tonne, except for our Kvist boards, in
    SEK'. Which prices are in which is then open."""
    first = next((place for place, part in enumerate(parts) if part.excepted), None)
    if first is None:
        return
    ahead = [unit for part in parts[:first] for unit in find(part.text)]
    behind = [unit for part in parts[first:] for unit in find(part.text)]
    others = [unit for unit in behind if ahead and not any(_units(unit) & _units(one) for one in ahead)]
    if not others:
        return
    # The sheets of 'per 1,000 sheets' are none that are excepted.
    excepted = " ".join(part.text for part in parts[first:]).partition(others[0].words)[0]
    named = {section for section in _NO_BOARDS if phrases(section).find(excepted)}
    if named & {"forms", "list_parts"}:
        return
    yield from ((unit, OF_ALL) for unit in ahead)
    if not named:
        yield others[0], OF_ALL


_NO_BOARDS = ("charges", "list_parts", "countries", "sold_apart", "taxes", "column_words", "forms")
"""What is said of these is heard elsewhere, or says nothing of the list's own prices."""


def _boards_of_one(clause: str, parts: tuple[_Part, ...], find: Callable[[str], tuple[U, ...]]) -> OfBoards:
    """The boards of which a clause says its only unit: 'SEK/ton delivered, except SBS: ex works' and 'USD/t, SBS in
    USD/t' say theirs of all, 'prices in USD, except CUK, which is per tonne' the tonne of CUK."""
    telling = [part for part in parts if find(part.text)]
    if len(telling) > 1 and not boards_of_unit(telling[0].text).grades:
        return OF_ALL
    if _tells_of_all(parts, telling):
        return OF_ALL
    if not telling[0].excepted and any(part.excepted and boards_of_unit(part.text).grades for part in parts):
        clause = " ".join(part.text for part in parts if not part.excepted)
    return _surely(boards_of_unit(clause), *(part.text for part in parts[: parts.index(telling[-1]) + 1]))


def _tells_of_all(parts: tuple[_Part, ...], telling: list[_Part]) -> bool:
    """'Prices per short ton in USD, those of CRB in CAD': what is said of all prices before a part about some boards
    and a unit of the other kind, 'CRB in CAD'."""
    first = parts.index(telling[0])
    others = [place for place, part in enumerate(parts) if place > first and _names_others(part, telling)]
    of_all = not any(boards_of_unit(part.text).any for part in parts[: first + 1])
    return of_all and bool(others) and all(any(map(_has_unit, parts[place:])) for place in others)


def _names_others(part: _Part, telling: list[_Part]) -> bool:
    return part not in telling and boards_of_unit(part.text).any


def _has_unit(part: _Part) -> bool:
    return bool(find_currencies(part.text)) or find_basis(part.text) is not None


def _surely(boards: OfBoards, *parts: str) -> OfBoards:
    """The boards for which the last of some parts gives a unit; where these may speak of something of theirs, or of
    what is not the case yet, they only may be meant."""
    if all(map(_are_about_boards, parts)) and not leaves_unit_open(*reversed(parts)):
        return boards
    return OfBoards((), boards.grades + boards.perhaps, boards.words)


def _are_about_boards(part: str) -> bool:
    """Whether the boards of a part are what it is about: nothing unread stands before them or right behind them, as in
    'CRB cores by the tonne' and 'cores of CRB'."""
    boards, basis = find_grade(part), find_basis(part)
    if boards is None:
        return True
    units = [unit.words for unit in find_currencies(part)] + ([] if basis is None else [basis.words])
    for words, sign in (*((unit, " ") for unit in units), *((board, _BOARD) for board in boards.words.split())):
        part = re.sub(rf"(?<!\w){re.escape(words)}(?!\w)", sign, part, count=1)
    ahead, _, behind = part.rpartition(_BOARD)
    # Of 'SBS: USD/ST' signs are left.
    told = [token for token in tokens_of(behind) if token[0][0].isalnum()]
    goes_on = bool(told) and not told[0][0][0].isdigit() and joined(*_SMALL).at(told, 0) is None
    return not goes_on and not rest_of(ahead, (), "those_of", *_SMALL)


_BOARD = " • "
_SMALL = (
    "says_nothing_more", "price_words", "per", "copula", "all_goods", "board_goods", "forms", "relative_words",
    "only_these", "sold_by_unit", "unit_words", "bought_in", "ton_definitions", "delivery", "incoterms", "all_of_them",
    "already_since", "coating", "stated_in",
)  # fmt: skip


def _parts_of(clause: str) -> Iterator[_Part]:
    excepted, start = False, 0
    for first, last, excepts in _stops(clause):
        # 'USD/ST, CUK excepted' has its boards before the word.
        ahead = excepts and _ENDS.match(clause, last) is not None
        yield _Part(clause[start:first], excepted or ahead)
        excepted, start = excepted or (excepts and not ahead), last
    yield _Part(clause[start:], excepted)


def _stops(clause: str) -> list[tuple[int, int, bool]]:
    """Where commas and words for an exception stand, and which of both each is."""
    words = [(one.start, one.end, True) for one in joined("exceptions", "excepted", "excepted_behind").find(clause)]
    asides = (span for one in _ASIDE.finditer(clause) for span in _brackets_of(one))
    commas = (one.span() for one in _COMMA.finditer(clause))
    return sorted([*words, *((start, end, False) for start, end in (*commas, *asides))])


def _brackets_of(aside: re.Match[str]) -> tuple[tuple[int, int], ...]:
    """The brackets of 'USD/ST (CRB: CAD/ST)', which says something of its own of some boards; '(USD)' and '(2,000 lb)'
    go on about what stands before them."""
    if not boards_of_unit(aside["said"]).any:
        return ()
    return (aside.start(), aside.start("said")), (aside.end("said"), aside.end())


_ASIDE = re.compile(r"\((?P<said>[^()]*)\)")


_ENDS = re.compile(r"\W*(?:$|,)")
_COMMA = re.compile(r",(?!\d)")


def boards_of_unit(part: str) -> OfBoards:
    """The boards that a part names by grade, or by a word that leaves open which of few grades they are."""
    reading = find_grade(part)
    if reading is None:
        return OF_ALL
    left = left_open(reading.kinds) if reading.kinds and not reading.grades else frozenset[str]()
    if reading.coated is not None:
        # 'Coated kraft' is no uncoated one.
        left = left - UNCOATED if reading.coated else left & UNCOATED
    if reading.grades or not left or len(left) > _FEW_GRADES:
        return OfBoards(reading.grades, words=reading.words)
    # Grey board is recycled too, and seldom called so.
    perhaps = ("URB",) if left == {"CRB", "URB"} else ()
    return OfBoards(tuple(grade for grade in GRADES if grade in left and grade not in perhaps), perhaps)


_FEW_GRADES = 2


def _units(unit: BasisReading | CurrencyReading) -> frozenset[object]:
    return frozenset(unit.codes if isinstance(unit, CurrencyReading) else unit.bases)
