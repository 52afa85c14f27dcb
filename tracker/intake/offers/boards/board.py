"""The board of a row: grade, coating and measures, from its cells and from what stands around it."""

from collections.abc import Iterable
from dataclasses import replace
from decimal import Decimal

from tracker.intake.columns.column import Columns, PriceColumn
from tracker.intake.columns.groups.corner_boards import COSTS_BY, corner_boards
from tracker.intake.columns.sizes.forms import form_alone
from tracker.intake.grid import Cell
from tracker.intake.offers.boards.line_defaults import take_defaults
from tracker.intake.offers.boards.loosely_named import beside_headings
from tracker.intake.offers.boards.measures import Board, Cells, merged, take_caliper, take_weight
from tracker.intake.offers.boards.sheets_said import take_sheet
from tracker.intake.offers.boards.sheets_weight import take_sheets_weight
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.notes.said import Said, at
from tracker.intake.offers.notes.scope import Level, Scope
from tracker.intake.values.boards.board_words import names_only_another_board, names_only_board
from tracker.intake.values.boards.grade import GradeReading, coated_count, find_grade
from tracker.intake.values.boards.open_grades import UNCOATED, by_coating, contradicted, left_open
from tracker.intake.values.boards.open_headings import board_unknown, coats_any
from tracker.intake.values.heads.roles import MEASURES, Role
from tracker.intake.values.prices.was_now import without_earlier
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases

BOARD_ROLES = (
    Role.PRODUCT, Role.GRADE, Role.COATING, Role.FORM, Role.CALIPER, Role.WEIGHT, Role.SHEET_SIZE, Role.WIDTH,
    Role.LENGTH, Role.ROLL_WIDTH, Role.SHEETS_WEIGHT, Role.BASIS,
)  # fmt: skip
"""The columns that a board may be read from: the row's other cells are not handed over."""


def board_of(cells: Cells, columns: Columns, scope: Scope, facts: FileFacts) -> Board:
    """The board that a row describes; `cells` holds the row's cells, once-written values filled in."""
    board = Board()
    words = _descriptions(cells, columns)
    board.product_said = _product(cells, columns)
    board.product = board.product_said.value if board.product_said is not None else ""
    board.own_words = bool(words)
    _coated_count(board, cells, columns)
    _grade(board, cells, columns, scope, facts)
    _plain_surface(board, cells, columns)
    measured = [*words, *corner_boards(columns)]
    take_caliper(board, cells, columns, measured, scope, facts)
    take_weight(board, cells, columns, measured, scope, facts)
    take_sheet(board, cells, columns, words, scope)
    take_sheets_weight(board, cells, columns, scope, facts)
    take_defaults(board, scope)
    return board


def _coated_count(board: Board, cells: Cells, columns: Columns) -> None:
    """A coating column may simply count the coated sides."""
    for column in columns.of(Role.COATING):
        count = coated_count(cells[column.index].text) if column.index in cells else None
        if count is not None:
            board.coated_sides = count


def _plain_surface(board: Board, cells: Cells, columns: Columns) -> None:
    """'UUK | plain' bears no coating; beside a coated grade such words name a finish."""
    surfaces = [cells[column.index].text for column in columns.of(Role.COATING) if column.index in cells]
    plain = any(phrases("no_coating").whole(text) == "uncoated_grade" for text in surfaces)
    if plain and board.coated_sides is None and board.grades and UNCOATED.issuperset(board.grades):
        board.coated_sides = 0


def _descriptions(cells: Cells, columns: Columns) -> list[Cell]:
    """The row's cells of words for the board, without what those in brackets say of it as it was."""
    wanted = columns.of(Role.PRODUCT, Role.GRADE, Role.COATING, Role.FORM)
    return [_as_it_is(cells[column.index]) for column in wanted if column.index in cells]


def _as_it_is(cell: Cell) -> Cell:
    bracketed = isinstance(cell.value, str) and ("(" in cell.text or "[" in cell.text)
    text = without_earlier(cell.text) if bracketed else cell.text
    return cell if text == cell.text else cell._replace(text=text)


def _product(cells: Cells, columns: Columns) -> Said[str] | None:
    """The vendor's own words: the product, else the grade, with the coating behind where it has a column of its own."""
    for role in (Role.PRODUCT, Role.GRADE):
        named = [cells[column.index] for column in columns.of(role) if column.index in cells]
        if named:
            coat = [cells[column.index].text.strip() for column in columns.of(Role.COATING) if column.index in cells]
            pieces = [cell.text.strip() for cell in named]
            # A bare count of coated sides is no part of a board's name.
            words = " ".join([*pieces, *(words for words in coat if coated_count(words) is None)])
            return Said(words, at(named[0]), pieces[0])
    return None


def _grade(board: Board, cells: Cells, columns: Columns, scope: Scope, facts: FileFacts) -> None:
    """Every cell of the row that names a grade counts; only where none does, what stands around it."""
    words = _descriptions(cells, columns)
    others = [cell for cell in words if names_only_another_board(cell.text)]
    named: dict[str, Said[GradeReading]] = {}
    for cell in words:
        reading = None if cell in others else _explained(cell.text, facts)
        if reading is None:
            continue
        board.coated = reading.coated if board.coated is None else board.coated
        if board.coated_sides is None:
            board.coated_sides = reading.coated_sides
        for grade in reading.grades:
            named.setdefault(grade, Said(reading, at(cell), cell.text.strip()))
        if not reading.grades and reading.words:
            board.grade_words = cell.text.strip()
            board.open_kinds += reading.kinds
    if named:
        named = beside_headings(named, cells, columns, scope)
    elif words and not others:
        named = _together(words, facts, board.coated_sides)
    if not named and all(form_alone(cell.text) for cell in words):
        named = _over_the_rows(columns)
        board.coated_sides = next((said.value.coated_sides for said in named.values()), board.coated_sides)
    _take_grades(board, named)
    if board.grades or not (others or any(board_unknown(cell.text) for cell in words)):
        _grade_around(board, scope, facts)
    board.grades = tuple(contradicted(list(board.grades), board.coated_sides, board.coated))


def _over_the_rows(columns: Columns) -> dict[str, Said[GradeReading]]:
    """'SBS C1S' over '14 pt' and '18 pt', or over the order sizes, forms or ways of delivery of a cross-tab: its
    name heads what a board costs by."""
    heads = [
        (cell, head.grade)
        for column in columns.of(*MEASURES, *COSTS_BY)
        for cell, head in zip(column.heads, column.said, strict=True)
        if column.role in MEASURES or names_only_board(cell.text)
    ]
    named = {grade: Said(read, at(cell), cell.text) for cell, read in heads if read for grade in read.grades}
    return named if len(named) == 1 else {}


def _together(words: list[Cell], facts: FileFacts, sides: int | None) -> dict[str, Said[GradeReading]]:
    """'Unbleached kraft' in one cell and 'C1S' in the next are one name; `sides`: a column counts those coated."""
    joined = " ".join(cell.text.strip() for cell in words)
    reading = _explained(joined, facts)
    if reading is None:
        return {}
    grades = reading.grades or by_coating(reading.kinds, sides, reading.coated)
    return {grade: Said(reading, at(words[0]), joined) for grade in grades}


def _take_grades(board: Board, named: dict[str, Said[GradeReading]]) -> None:
    if named:
        board.grades = tuple(named)
        board.grade_said = next(iter(named.values()))


def _grade_around(board: Board, scope: Scope, facts: FileFacts) -> None:
    """The nearest level that names a grade, and the nearest that says how many sides are coated.

    A title and the sheet's name are equally near: where they name different grades, both stand, and it is asked. What
    the row or a nearer level calls it, 'Unbleached kraft', is no other grade's: then a title 'SBS' says nothing of it.
    """
    levels = scope.of_boards
    kinds = board.open_kinds
    for place, level in enumerate(levels):
        heard = _heard(level, board, facts)
        named = _grades_at(level, heard, facts) or _by_its_coating(board, level, heard)
        for said in heard:
            if board.coated_sides is None and _coats(said, level, board):
                board.coated_sides = said.value.coated_sides
        if not board.grades and named:
            if left_open(kinds).isdisjoint(named):
                return
            by_name = next((other for other in levels[place + 1 :] if other.name == "sheet name"), None)
            also = {}
            if by_name is not None and level.name in ("title", "sheet"):
                also = _grades_at(by_name, by_name.grades, facts)
            _take_grades(board, named if named.keys() & also.keys() else named | also)
            if board.product and level.name != "heading":
                _doubt_title(board, facts)
            return
        if not board.grades and level.leaves_board_open:
            return
        if level.name == "heading":
            kinds += tuple(kind for said in heard for kind in said.value.kinds)
            board.grade_words = next((said.words for said in heard if said.value.kinds), board.grade_words)


def _coats(said: Said[GradeReading], level: Level, board: Board) -> bool:
    """Whether a coating is that of a row's board: what names the same grade says so, and a sub-heading of any grade."""
    same = not board.grades or said.value.grades == board.grades
    return same or (level.name == "heading" and coats_any(said.value, said.words, board.grades))


def _by_its_coating(board: Board, level: Level, heard: Iterable[Said[GradeReading]]) -> dict[str, Said[GradeReading]]:
    """A row that says 'C1S' below the sub-heading 'Unbleached kraft'."""
    if level.name != "heading" or board.open_kinds:
        return {}
    return {grade: said for said in heard for grade in by_coating(said.value.kinds, board.coated_sides, board.coated)}


def _doubt_title(board: Board, facts: FileFacts) -> None:
    """A list called 'Folding boxboard' that holds other grades as well does not say what a name of its own is."""
    board.grades += tuple(sorted(facts.grades_in_rows - set(board.grades)))


def _heard(level: Level, board: Board, facts: FileFacts) -> tuple[Said[GradeReading], ...]:
    """What a level says of a row's grade; 'Bright = GC1' says nothing of a row that is called Nova."""
    said = level.grades_above if board.product else level.grades
    return tuple(each for each in said if each.words not in facts.explaining) if facts.explaining else said


def _grades_at(level: Level, heard: Iterable[Said[GradeReading]], facts: FileFacts) -> dict[str, Said[GradeReading]]:
    named: dict[str, Said[GradeReading]] = {}
    for said in heard:
        for grade in said.value.grades:
            named.setdefault(grade, said)
    for words in level.texts_above:
        explained = facts.names.get(fold(words.text).strip())
        if explained is not None and explained.grade is not None:
            named.setdefault(explained.grade, Said(explained, level.place(words), words.text))
    return named


def _explained(text: str, facts: FileFacts) -> GradeReading | None:
    """The grade in a text; a trade name counts as what the file's legend says it is.

    Of 'Larkin' and 'Larkin Plain' the longer is meant where it stands, also where nothing says what it is.
    """
    reading = find_grade(text)
    if (reading is not None and reading.grades) or not facts.names:
        return reading
    folded = f" {fold(text)} "
    name = max((name for name in (*facts.names, *facts.unexplained) if f" {name} " in folded), key=len, default="")
    explained = facts.names.get(name)
    if explained is None:
        return reading
    own = reading.coated_sides if reading is not None else None
    sides = own if own is not None else explained.coated_sides
    return GradeReading(explained.grades, sides, explained.words, explained.coated)


def with_column(board: Board, price: PriceColumn) -> Board:
    """The board with what the price column's own header adds: one caliper, weight, grade or sheet of a cross-tab."""
    if price.caliper is None and not price.weights and price.grade is None and not price.sheets:
        return board
    added = replace(board)
    if price.caliper is not None:
        head = price.column.head_saying(price.caliper.words)
        added.calipers = merged((price.caliper.um, *board.calipers), Decimal("0.03"))
        added.caliper_said = Said(price.caliper.um, at(head), head.text)
    if price.weights:
        head = price.column.head_saying(price.weights[0].words)
        added.weights, added.weights_differ = price.weights, bool(board.weights)
        added.weight_said = Said(price.weights[0], at(head), head.text)
    if price.sheets and (not board.sheets or board.sheets_weighed):
        head = price.column.head_saying(price.sheets[0].words)
        added.sheets, added.sheets_weighed = price.sheets, False
        added.sheet_said = Said(price.sheets[0], at(head), head.text)
    _add_grade(added, price)
    return added


def _add_grade(board: Board, price: PriceColumn) -> None:
    if price.grade is None:
        return
    sides = price.grade.coated_sides
    said = Said(price.grade, at(price.column.head_saying(price.grade_words)), price.grade_words)
    if not price.grade.grades:
        named = list(board.grades) or by_coating(board.open_kinds, sides, price.grade.coated)
        board.grades = tuple(contradicted(named, sides, price.grade.coated))
        board.grade_said, board.coated_sides = board.grade_said or said, sides
        return
    by_row = board.grade_said is not None and board.own_words
    grades = tuple(dict.fromkeys((*price.grade.grades, *(board.grades if by_row else ()))))
    # Below the head 'SBS' a row called 'Unbleached kraft' is none of it.
    board.grades = () if left_open(board.open_kinds).isdisjoint(grades) else grades
    board.grade_said = said
    board.product = board.product or price.grade_words
    board.coated_sides = sides if sides is not None else board.coated_sides
