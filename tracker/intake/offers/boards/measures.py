"""The measures of a row's board: caliper and basis weight, with every contradiction kept."""

import re
from collections.abc import Callable
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from tracker.intake.columns.column import Column, Columns
from tracker.intake.columns.roles.cells import caliper_of, weight_of, weight_on
from tracker.intake.columns.units.measure_pairs import measured_cells
from tracker.intake.grid import Cell
from tracker.intake.offers.boards.weights_said import weights_in
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.notes.said import Said, at
from tracker.intake.offers.notes.scope import Scope
from tracker.intake.values.boards.caliper import CaliperReading, CaliperText, find_calipers
from tracker.intake.values.boards.grade import GradeReading, find_grade
from tracker.intake.values.boards.measures_by_board import measures_of_board
from tracker.intake.values.boards.weight import WeightReading, find_weights
from tracker.intake.values.figures.formats import format_words
from tracker.intake.values.figures.numbers import SPACED_NUMBER
from tracker.intake.values.figures.sheetsize import SheetSize
from tracker.intake.values.heads.header import Header
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.prices.price_sentences import SaysBasis
from tracker.trade.basis import Basis
from tracker.trade.quantities import CaliperUnit, WeightUnit


@dataclass(slots=True)
class Board:
    """What is said of one row's board. Several values of a kind that differ are all kept: that is a contradiction.

    `open_kinds`: of what kinds its words are that name board and leave the grade open. `coated`: its row says that it
    is coated or is not. `caliper_head`, `weight_head`: the heads that give bare figures their units.
    `sheets_weighed`: the size is told of their weight alone, and is the board's own only where it is sold by the sheet.
    """

    product: str = ""
    product_said: Said[str] | None = None
    grades: tuple[str, ...] = ()
    grade_said: Said[GradeReading] | None = None
    grade_words: str = ""
    open_kinds: tuple[str, ...] = ()
    coated_sides: int | None = None
    coated: bool | None = None
    calipers: tuple[Decimal, ...] = ()
    caliper_said: Said[Decimal] | None = None
    caliper_head: Said[str] | None = None
    weights: tuple[WeightReading, ...] = ()
    weight_said: Said[WeightReading] | None = None
    weight_head: Said[str] | None = None
    weights_differ: bool = False
    caliper_unread: Cell | None = None
    weight_unread: Cell | None = None
    sheets: tuple[SheetSize, ...] = ()
    sheet_said: Said[SheetSize] | None = None
    sheets_weighed: bool = False
    own_words: bool = False


Cells = dict[int, Cell]


def take_caliper(
    board: Board, cells: Cells, columns: Columns, words: list[Cell], scope: Scope, facts: FileFacts
) -> None:
    """Every thickness in the caliper columns and the descriptions `words`, else in the titles around."""
    found: dict[Decimal, Said[Decimal]] = {}
    heads: dict[str, Said[str] | None] = {}
    for cell, column in measured_cells(cells, columns, Role.CALIPER):
        heads[at(cell)] = _unit_head(cell, column, lambda head: head.caliper_unit is not None)
        read = caliper_of(cell, column.caliper_unit)
        if read is not None and not read.upper:
            in_points = len(read.readings) > 1 and (facts.units.thick_in_points or _sold_in_pounds(columns, scope))
            for reading in _in_points(read) if in_points else read.readings:
                found.setdefault(reading.um, Said(reading.um, at(cell), cell.text.strip()))
        elif any(sign.isdigit() for sign in cell.text):
            board.caliper_unread = cell
    for cell in [*words, *_mixed(cells, columns)]:
        for reading in find_calipers(cell.text):
            if reading.loose and found:
                # The width of 'reels 1,020mm' beside a caliper of its own.
                continue
            found.setdefault(reading.um, Said(reading.um, at(cell), cell.text.strip()))
    if not found:
        found = _caliper_around(board, scope)
    board.calipers = merged(tuple(found), Decimal("0.03"))
    if board.calipers:
        board.caliper_said = found[board.calipers[0]]
        board.caliper_head = heads.get(board.caliper_said.where)


def _in_points(read: CaliperText) -> tuple[CaliperReading, ...]:
    """Of the '030' that may be points or millimetres the points."""
    return tuple(reading for reading in read.readings if reading.unit is CaliperUnit.POINT) or read.readings


def _sold_in_pounds(columns: Columns, scope: Scope) -> bool:
    """Whether all that heads and texts around say of the prices' unit is a short ton, pounds or square feet."""
    said = [basis for price in columns.prices for basis in price.column.bases]
    said += [one.value.basis for level in scope.levels for one in level.all_of(SaysBasis)]
    return bool(said) and all(basis.bases <= _OF_POUNDS for basis in said)


_OF_POUNDS = frozenset({Basis.SHORT_TON, Basis.CWT, Basis.LB, Basis.MSF})


def _unit_head(cell: Cell, column: Column, says_unit: Callable[[Header], bool]) -> Said[str] | None:
    """The head that says in which unit a figure without one is; the lowest, which is the nearest, of several."""
    own = cell.text if isinstance(cell.value, str) else ""
    own += format_words(cell.number_format) if cell.number_format not in ("", "General") else ""
    if any(map(str.isalpha, own)):
        return None
    saying = [head for head, said in zip(column.heads, column.said, strict=False) if says_unit(said)]
    return Said("", at(saying[-1]), saying[-1].text.strip()) if saying else None


_FIGURE = re.compile(SPACED_NUMBER)


def _mixed(cells: Cells, columns: Columns) -> list[Cell]:
    """Cells of a caliper or weight column that hold more than one figure: '18 pt / 75 lb/MSF', '18pt 75#'."""
    found = [cells[column.index] for column in columns.of(Role.CALIPER, Role.WEIGHT) if column.index in cells]
    return [cell for cell in found if isinstance(cell.value, str) and len(_FIGURE.findall(cell.text)) > 1]


def _own_measures(board: Board, text: str) -> str:
    """What a title or note may say of the row's board: one that names another grade measures no board of this one."""
    own = measures_of_board(text, board.product or board.grade_words, board.grades, board.calipers)
    grade = find_grade(own) if own == text else None
    if grade is None or not (grade.grades and board.grades):
        return own
    return "" if set(grade.grades).isdisjoint(board.grades) else own


def _caliper_around(board: Board, scope: Scope) -> dict[Decimal, Said[Decimal]]:
    for level in scope.of_boards:
        found: dict[Decimal, Said[Decimal]] = {}
        for words in level.titles:
            for reading in find_calipers(_own_measures(board, words.text)):
                found.setdefault(reading.um, Said(reading.um, level.place(words), words.text))
        if found:
            return found
    return {}


def merged(values: tuple[Decimal, ...], tolerance: Decimal) -> tuple[Decimal, ...]:
    """The first of values that agree within rounding (18 pt and 0.46 mm), and any that do not."""
    kept: list[Decimal] = []
    for value in values:
        if not any(abs(value - other) <= tolerance * other for other in kept):
            kept.append(value)
    return tuple(kept)


def take_weight(
    board: Board, cells: Cells, columns: Columns, words: list[Cell], scope: Scope, facts: FileFacts
) -> None:
    """The weight columns first, then the descriptions; two columns (lb and g/m²) are one weight where they agree."""
    groups: list[tuple[Cell, tuple[WeightReading, ...]]] = []
    heads: dict[str, Said[str] | None] = {}
    for cell, column in measured_cells(cells, columns, Role.WEIGHT):
        told = weights_in(column, scope, facts, board.grades)
        if told.of_sheets:
            continue
        read = weight_of(cell, (told.units or _ANY_UNIT) if told.ream is None else ())
        if told.ream is not None and (read is None or read.lb_without_area):
            read = weight_on(cell, told.ream)
        if read is not None and not read.is_range:
            groups.append((cell, read.readings))
            heads[at(cell)] = _unit_head(cell, column, lambda head: bool(head.weight_units))
        elif any(sign.isdigit() for sign in cell.text):
            board.weight_unread = cell
    read_already = {at(cell) for cell, _ in groups}
    for cell in [*words, *(cell for cell in _mixed(cells, columns) if at(cell) not in read_already)]:
        readings = find_weights(cell.text)
        if readings:
            groups.append((cell, readings))
            board.weight_unread = None
    if groups:
        _take_weights(board, groups)
        board.weight_head = heads.get(board.weight_said.where) if board.weight_said is not None else None
        return
    for level in scope.of_boards:
        for said in level.titles:
            readings = find_weights(_own_measures(board, said.text))
            if readings:
                board.weights = readings
                board.weight_said = Said(readings[0], level.place(said), said.text)
                return


_ANY_UNIT = (WeightUnit.LB_MSF, WeightUnit.LB_3000FT2, WeightUnit.GSM)
"""What a basis weight without a unit may be in: left to physics, else asked."""


def _take_weights(board: Board, groups: list[tuple[Cell, tuple[WeightReading, ...]]]) -> None:
    cell, readings = groups[0]
    for other, others in groups[1:]:
        agreed = tuple(one for one in readings if any(_agree(one.gsm, two.gsm) for two in others))
        if agreed:
            readings = agreed
        elif len({one.gsm for one in readings}) > 1 and len(others) == 1:
            cell, readings = other, others
        else:
            board.weights_differ = True
    board.weights = readings
    board.weight_said = Said(readings[0], at(cell), cell.text.strip()) if readings else None


def _agree(one: Fraction, two: Fraction) -> bool:
    return abs(one - two) <= Fraction(3, 100) * max(one, two)
