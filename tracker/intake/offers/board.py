"""The board of a row: grade, coating, caliper, basis weight, sheet size; from its cells and what stands around it."""

from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from tracker.intake.columns.cells import caliper_of, weight_of
from tracker.intake.columns.column import Columns, PriceColumn
from tracker.intake.grid import Cell
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.said import Said, at
from tracker.intake.offers.scope import Scope
from tracker.intake.values.caliper import find_calipers
from tracker.intake.values.grade import GradeReading, find_grade
from tracker.intake.values.header import Role
from tracker.intake.values.sheetsize import SheetSize, find_sheet_sizes, sheet_text
from tracker.intake.values.weight import WeightReading, find_weights
from tracker.intake.words.fold import fold
from tracker.trade.quantities import WeightUnit


@dataclass(slots=True)
class Board:
    """What is said of one row's board. Several values of a kind that differ are all kept: that is a contradiction."""

    product: str = ""
    grades: tuple[str, ...] = ()
    grade_said: Said[GradeReading] | None = None
    grade_words: str = ""
    coated_sides: int | None = None
    calipers: tuple[Decimal, ...] = ()
    caliper_said: Said[Decimal] | None = None
    weights: tuple[WeightReading, ...] = ()
    weight_said: Said[WeightReading] | None = None
    weights_differ: bool = False
    weight_unread: Cell | None = None
    sheets: tuple[SheetSize, ...] = ()
    sheet_said: Said[SheetSize] | None = None
    own_words: bool = False


Cells = dict[int, Cell]


def board_of(cells: Cells, columns: Columns, scope: Scope, facts: FileFacts) -> Board:
    """The board that a row describes; `cells` holds the row's cells, once-written values filled in."""
    board = Board()
    words = _descriptions(cells, columns)
    board.product = _product(cells, columns)
    board.own_words = bool(words)
    _grade(board, words, scope, facts)
    _coated_count(board, cells, columns)
    _caliper(board, cells, columns, words, scope)
    _weight(board, cells, columns, words, scope, facts)
    _sheet(board, cells, columns, words, scope)
    return board


def _coated_count(board: Board, cells: Cells, columns: Columns) -> None:
    """A coating column may simply count the coated sides."""
    for column in columns.of(Role.COATING):
        count = cells[column.index].text.strip() if column.index in cells else ""
        if count in ("0", "1", "2"):
            board.coated_sides = int(count)


def _descriptions(cells: Cells, columns: Columns) -> list[Cell]:
    """The row's cells of words for the board."""
    wanted = columns.of(Role.PRODUCT, Role.GRADE, Role.COATING, Role.FORM)
    return [cells[column.index] for column in wanted if column.index in cells]


def _product(cells: Cells, columns: Columns) -> str:
    """The vendor's own words: the product, else the grade, with the coating behind where it has a column of its own."""
    for role in (Role.PRODUCT, Role.GRADE):
        pieces = [cells[column.index].text.strip() for column in columns.of(role) if column.index in cells]
        if pieces:
            coat = [cells[column.index].text.strip() for column in columns.of(Role.COATING) if column.index in cells]
            return " ".join([*pieces, *coat])
    return ""


def _grade(board: Board, words: list[Cell], scope: Scope, facts: FileFacts) -> None:
    """Every cell of the row that names a grade counts; only where none does, what stands around it."""
    named: dict[str, Said[GradeReading]] = {}
    for cell in words:
        reading = _explained(cell.text, facts)
        if reading is None:
            continue
        if board.coated_sides is None:
            board.coated_sides = reading.coated_sides
        for grade in reading.grades:
            named.setdefault(grade, Said(reading, at(cell), cell.text.strip()))
        if not reading.grades and reading.words:
            board.grade_words = cell.text.strip()
    if not named and words:
        named = _together(words, facts)
    _take_grades(board, named)
    _grade_around(board, scope, facts)


def _together(words: list[Cell], facts: FileFacts) -> dict[str, Said[GradeReading]]:
    """'Unbleached kraft' in one cell and 'C1S' in the next are one name."""
    joined = " ".join(cell.text.strip() for cell in words)
    reading = _explained(joined, facts)
    return {grade: Said(reading, at(words[0]), joined) for grade in reading.grades} if reading is not None else {}


def _take_grades(board: Board, named: dict[str, Said[GradeReading]]) -> None:
    if named:
        board.grades = tuple(named)
        board.grade_said = next(iter(named.values()))


def _grade_around(board: Board, scope: Scope, facts: FileFacts) -> None:
    """The nearest level that names a grade, and the nearest that says how many sides are coated."""
    for level in scope.of_boards:
        named: dict[str, Said[GradeReading]] = {}
        for said in level.grades:
            for grade in said.value.grades:
                named.setdefault(grade, said)
            if board.coated_sides is None and not board.grades:
                board.coated_sides = said.value.coated_sides
        for words in level.texts:
            explained = facts.names.get(fold(words.text).strip())
            if explained is not None and explained.grade is not None:
                named.setdefault(explained.grade, Said(explained, level.place(words), words.text))
        if not board.grades and named:
            _take_grades(board, named)
            return


def _explained(text: str, facts: FileFacts) -> GradeReading | None:
    """The grade in a text; a trade name counts as what the file's legend says it is."""
    reading = find_grade(text)
    if (reading is not None and reading.grades) or not facts.names:
        return reading
    folded = f" {fold(text)} "
    for name, explained in facts.names.items():
        if f" {name} " in folded:
            own = reading.coated_sides if reading is not None else None
            sides = own if own is not None else explained.coated_sides
            return GradeReading(explained.grades, sides, explained.words, explained.coated)
    return reading


def _caliper(board: Board, cells: Cells, columns: Columns, words: list[Cell], scope: Scope) -> None:
    found: dict[Decimal, Said[Decimal]] = {}
    for column in columns.of(Role.CALIPER):
        cell = cells.get(column.index)
        read = caliper_of(cell, column.caliper_unit) if cell is not None else None
        if cell is not None and read is not None and not read.upper:
            for reading in read.readings:
                found.setdefault(reading.um, Said(reading.um, at(cell), cell.text.strip()))
    for cell in [*words, *_mixed(cells, columns)]:
        for reading in find_calipers(cell.text):
            found.setdefault(reading.um, Said(reading.um, at(cell), cell.text.strip()))
    if not found:
        found = _caliper_around(scope)
    board.calipers = _merged(tuple(found), Decimal("0.03"))
    if board.calipers:
        board.caliper_said = found[board.calipers[0]]


def _mixed(cells: Cells, columns: Columns) -> list[Cell]:
    """Cells of a caliper or weight column that hold more than one figure: '18 pt / 75 lb/MSF'."""
    found = [cells[column.index] for column in columns.of(Role.CALIPER, Role.WEIGHT) if column.index in cells]
    return [cell for cell in found if isinstance(cell.value, str) and ("/" in cell.text or len(cell.text) > 12)]


def _caliper_around(scope: Scope) -> dict[Decimal, Said[Decimal]]:
    for level in scope.of_boards:
        found: dict[Decimal, Said[Decimal]] = {}
        for words in level.titles:
            for reading in find_calipers(words.text):
                found.setdefault(reading.um, Said(reading.um, level.place(words), words.text))
        if found:
            return found
    return {}


def _merged(values: tuple[Decimal, ...], tolerance: Decimal) -> tuple[Decimal, ...]:
    """The first of values that agree within rounding (18 pt and 0.46 mm), and any that do not."""
    kept: list[Decimal] = []
    for value in values:
        if not any(abs(value - other) <= tolerance * other for other in kept):
            kept.append(value)
    return tuple(kept)


def _weight(
    board: Board, cells: Cells, columns: Columns, words: list[Cell], scope: Scope, facts: FileFacts
) -> None:
    """The weight columns first, then the descriptions; two columns (lb and g/m²) are one weight where they agree."""
    groups: list[tuple[Cell, tuple[WeightReading, ...]]] = []
    for column in columns.of(Role.WEIGHT):
        cell = cells.get(column.index)
        units = column.weight_units or ((facts.weight_unit,) if facts.weight_unit is not None else _ANY_UNIT)
        read = weight_of(cell, units) if cell is not None else None
        if cell is not None and read is not None and not read.is_range:
            groups.append((cell, read.readings))
        elif cell is not None and any(sign.isdigit() for sign in cell.text):
            board.weight_unread = cell
    read_already = {at(cell) for cell, _ in groups}
    for cell in [*words, *(cell for cell in _mixed(cells, columns) if at(cell) not in read_already)]:
        readings = find_weights(cell.text)
        if readings:
            groups.append((cell, readings))
            board.weight_unread = None
    if groups:
        _take_weights(board, groups)
        return
    for level in scope.of_boards:
        for said in level.titles:
            readings = find_weights(said.text)
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


def _sheet(board: Board, cells: Cells, columns: Columns, words: list[Cell], scope: Scope) -> None:
    for column in columns.of(Role.SHEET_SIZE):
        cell = cells.get(column.index)
        sizes = sheet_text(cell.text, column.length_unit) if cell is not None else ()
        if cell is not None and sizes:
            board.sheets, board.sheet_said = sizes, Said(sizes[0], at(cell), cell.text.strip())
            return
    sides = _sides(cells, columns)
    if sides is not None:
        board.sheets, board.sheet_said = (sides.value,), sides
        return
    for cell in words:
        sizes = find_sheet_sizes(cell.text)
        if sizes:
            board.sheets, board.sheet_said = sizes, Said(sizes[0], at(cell), cell.text.strip())
            return
    for level in scope.of_boards:
        for said in level.titles:
            sizes = find_sheet_sizes(said.text)
            if sizes:
                board.sheets, board.sheet_said = sizes, Said(sizes[0], level.place(said), said.text)
                return


def _sides(cells: Cells, columns: Columns) -> Said[SheetSize] | None:
    """Width and length in two columns."""
    width, length = columns.first(Role.WIDTH), columns.first(Role.LENGTH)
    if width is None or length is None or width.index not in cells or length.index not in cells:
        return None
    unit = width.length_unit or length.length_unit
    text = f"{_figure(cells[width.index])} x {_figure(cells[length.index])}"
    sizes = sheet_text(text, unit)
    return Said(sizes[0], at(cells[width.index]), text) if len(sizes) == 1 else None


def _figure(cell: Cell) -> str:
    return format(cell.value, "f") if isinstance(cell.value, Decimal) else cell.text.strip()


def with_column(board: Board, price: PriceColumn) -> Board:
    """The board with what the price column's own header adds: one caliper, weight, grade or sheet of a cross-tab."""
    if price.caliper is None and not price.weights and price.grade is None and price.sheet is None:
        return board
    added = _copy(board)
    head = price.column.heads[-1]
    if price.caliper is not None:
        added.calipers = _merged((price.caliper.um, *board.calipers), Decimal("0.03"))
        added.caliper_said = Said(price.caliper.um, at(head), head.text)
    if price.weights:
        added.weights, added.weights_differ = price.weights, bool(board.weights)
        added.weight_said = Said(price.weights[0], at(head), head.text)
    if price.sheet is not None and not board.sheets:
        added.sheets, added.sheet_said = (price.sheet,), Said(price.sheet, at(head), head.text)
    _add_grade(added, price)
    return added


def _add_grade(board: Board, price: PriceColumn) -> None:
    if price.grade is None:
        return
    if not price.grade.grades:
        board.coated_sides = price.grade.coated_sides
        return
    head = price.column.heads[-1]
    said = Said(price.grade, at(head), price.grade_words)
    by_row = board.grade_said is not None and board.own_words
    board.grades = tuple(dict.fromkeys((*price.grade.grades, *(board.grades if by_row else ()))))
    board.grade_said = said
    board.product = board.product or price.grade_words
    board.coated_sides = price.grade.coated_sides if price.grade.coated_sides is not None else board.coated_sides


def _copy(board: Board) -> Board:
    return Board(
        board.product, board.grades, board.grade_said, board.grade_words, board.coated_sides, board.calipers,
        board.caliper_said, board.weights, board.weight_said, board.weights_differ, board.weight_unread, board.sheets,
        board.sheet_said, board.own_words,
    )  # fmt: skip


