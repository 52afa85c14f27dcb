"""In what form a row's board comes, or for which market it is: of a title's units for each the row's own holds, and
none that it excepts the row from."""

import re
from collections.abc import Iterator
from typing import TypeVar

from tracker.intake.columns.column import Column, Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.boards.boards_held import ANY_BOARD, BoardPriced
from tracker.intake.offers.notes.said import Said
from tracker.intake.offers.notes.scope import Scope
from tracker.intake.offers.notes.titles import titles_of_boards
from tracker.intake.offers.prices.of_all_prices import parts_excepted
from tracker.intake.values.figures.sheetsize import find_sheet_sizes, sheet_text
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.values.prices.units_of_parts import parts_named, units_of_parts
from tracker.intake.words.lists import phrases

S = TypeVar("S", SaysBasis, SaysCurrency)


def parts_of_row(cells: dict[int, Cell], columns: Columns, scope: Scope) -> frozenset[str]:
    """What the row's own words, else the nearest heading or title, names; none where no text around parts its units or
    excepts a part from them."""
    if not _has_parts(scope):
        return frozenset()
    told = (_form_told(cells[column.index].text, column) for column in columns.of(*_FORMS) if column.index in cells)
    named = (parts_named(text) or _sized(text) for text in _texts(cells, columns, scope))
    return next(filter(None, (*told, *named)), frozenset())


_FORMS = (Role.FORM, Role.SHEET_SIZE)


def _form_told(text: str, column: Column) -> frozenset[str]:
    """'Reel' and 'Sheet', which say in what form one board comes; elsewhere they are what a price is per. Beside '70 x
    100 cm' stand 'Roll 700 mm' and 'Roll' in the same column."""
    form = phrases("basis").whole(text)
    named = frozenset({form}) if form in ("roll", "sheet") else parts_named(text)
    rolls = frozenset({"roll"}) if phrases("rolls").find(text) else frozenset[str]()
    sheets = frozenset({"sheet"}) if sheet_text(text, column.length_unit) else _sized(text)
    # 'Rolls, cut to 70 x 100 cm' are either.
    forms = (named - {"export", "home"}) | rolls | sheets
    return named | forms if len(forms) <= 1 else named - forms


def _sized(text: str) -> frozenset[str]:
    return frozenset({"sheet"} if find_sheet_sizes(text) else ())


def _has_parts(scope: Scope) -> bool:
    known = scope.terms.get("parts")
    if known is None:
        known = scope.terms["parts"] = any(
            any(said.value.parts or any(parts_excepted(said.words)) for said in level.all_of(SaysBasis))
            or any(said.value.parts or any(parts_excepted(said.words)) for said in level.all_of(SaysCurrency))
            for level in scope.levels
        )
    return bool(known)


def _texts(cells: dict[int, Cell], columns: Columns, scope: Scope) -> Iterator[str]:
    described = columns.of(Role.PRODUCT, Role.GRADE)
    yield from (cells[column.index].text for column in described if column.index in cells)
    yield from (words.text for words in reversed(scope.headings))
    titles = (words.text for level in scope.levels if level.name == "title" for words in reversed(level.texts_above))
    # 'All prices USD per short ton except sheets' over the rows leaves open in what form they come.
    yield from (text for text in titles if not (units_of_parts(text) or any(parts_excepted(text))))
    yield from titles_of_boards(scope)


def of_parts(said: tuple[Said[S], ...], named: frozenset[str], board: BoardPriced = ANY_BOARD) -> tuple[Said[S], ...]:
    """Of the units of rolls and of sheets, or of home and export, those of the ones named; where none is, those of all
    others, or where each has its own, every one: which it is is open.

    'SBS in sheets per 1,000 sheets' is said of no other board, and leaves open what SBS is per in no form that is told.
    """
    said = tuple(each for each in said if not _is_of_others(each.value, named))
    if not any(each.value.parts for each in said):
        return said
    meant = tuple(each for each in said if not (each.value.parts and _is_of_other_boards(each.value, board)))
    if not named and any(each.value.parts and each.value.grades for each in meant):
        return meant
    own = tuple(each for each in meant if each.value.parts & named)
    others = tuple(each for each in meant if not each.value.parts)
    return own + tuple(each for each in others if not own or each.value.words != own[0].value.words) or said


def _is_of_other_boards(said: SaysBasis | SaysCurrency, board: BoardPriced) -> bool:
    return board.grade is not None and bool(said.grades) and not board.is_of(said.grades, said.called)


def _is_of_others(said: SaysBasis | SaysCurrency, named: frozenset[str]) -> bool:
    """'Sheets USD per MSF' says nothing of rolls."""
    unit = said.basis.words if isinstance(said, SaysBasis) else said.currency.words
    of = parts_named(re.split(rf"(?<!\w){re.escape(unit)}(?!\w)", said.words, maxsplit=1)[0])
    return bool(named and of and not said.parts) and not any(parts_excepted(said.words)) and of.isdisjoint(named)
