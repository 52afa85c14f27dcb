"""The size of a row's sheets: in its own cells, in the heads over them, or told of all rows around the table."""

import re
from collections.abc import Iterator
from decimal import Decimal

from tracker.intake.columns.column import Column, Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.boards.measures import Board, Cells
from tracker.intake.offers.notes.said import Said, at
from tracker.intake.offers.notes.scope import Level, Scope
from tracker.intake.tables.table import Words
from tracker.intake.values.boards.weighed_sheets import bounds_sizes, sheets_of_all, sheets_of_row, sheets_of_thousand
from tracker.intake.values.figures.sheetsize import SheetSize, find_sheet_sizes, sheet_text
from tracker.intake.values.figures.sizes_of_codes import CODE, same_size
from tracker.intake.values.heads.roles import Role
from tracker.intake.words.lists import phrases


def take_sheet(board: Board, cells: Cells, columns: Columns, words: list[Cell], scope: Scope) -> None:
    """The sheet size from the nearest place that names one."""
    for sizes, where, text in _sheets_said(cells, columns, words, scope):
        if sizes:
            board.sheets, board.sheet_said = sizes, Said(sizes[0], where, text)
            return
    for said, level in () if comes_in_rolls(cells) else _of_levels(scope):
        sizes = sheets_of_thousand(said.text)
        if sizes:
            board.sheets, board.sheet_said = sizes, Said(sizes[0], level.place(said), said.text)
            board.sheets_weighed = True
            return


def _of_levels(scope: Scope) -> Iterator[tuple[Words, Level]]:
    return ((said, level) for level in scope.of_boards for said in level.sizes)


def _sheets_said(
    cells: Cells, columns: Columns, words: list[Cell], scope: Scope
) -> Iterator[tuple[tuple[SheetSize, ...], str, str]]:
    """Sizes, place and text of the size's column, of two columns for its sides, of the descriptions, of the price's
    unit ('EUR/1000 sheets 720 x 1020 mm'), of the heads over descriptions, then of the titles around."""
    for column in columns.of(Role.SHEET_SIZE):
        cell = cells.get(column.index)
        if cell is not None and not bounds_sizes(column.text):
            sizes = sheet_text(cell.text, column.length_unit) or find_sheet_sizes(cell.text)
            yield sizes, at(cell), cell.text.strip()
    yield from _sheets_among_widths(cells, columns)
    sides = _sides(cells, columns)
    if sides is not None:
        yield (sides.value,), sides.where, sides.words
    for cell in words:
        yield sheets_of_row(cell.text), at(cell), cell.text.strip()
    for unit in (cells[column.index] for column in columns.of(Role.BASIS) if column.index in cells):
        yield find_sheet_sizes(unit.text), at(unit), unit.text.strip()
    for column in columns.of(Role.PRODUCT, Role.GRADE):
        for cell, head in zip(column.heads, column.said, strict=True):
            yield (head.sheet_sizes if len(head.sheet_sizes) == 1 else ()), at(cell), cell.text.strip()
    if not (comes_in_rolls(cells) or _names_size_by_code(cells, columns)):
        yield from _told_around(scope)


def _told_around(scope: Scope) -> Iterator[tuple[tuple[SheetSize, ...], str, str]]:
    """What the texts around say of all sheets, the nearest first, titles before notes; nothing where those at one place
    name several sizes: 'Size A = 28 x 40 in' above 'Size B = 25 x 38 in' is not each row's."""
    for level in scope.of_boards:
        for noted in (False, True):
            told = [(sheets_of_all(said.text), said) for said in level.sizes if level.is_note(said) is noted]
            told = [(sizes, said) for sizes, said in told if sizes]
            if any(not _agree(told[0][0], sizes) for sizes, _ in told[1:]):
                return
            yield from ((sizes, level.place(said), said.text) for sizes, said in told)


def _agree(one: tuple[SheetSize, ...], other: tuple[SheetSize, ...]) -> bool:
    """'28 x 40 in' and '711 x 1016 mm' are one size."""
    return any(same_size(first, second) for first in one for second in other)


def _names_size_by_code(cells: Cells, columns: Columns) -> bool:
    """The 'B' of a row under 'Size': of the sizes told around the table it is one, and nobody knows which."""
    named = (cells[column.index].text.strip() for column in columns.of(Role.SHEET_SIZE) if column.index in cells)
    return any(re.fullmatch(CODE, text) is not None and not phrases("forms").find(text) for text in named)


def _sheets_among_widths(cells: Cells, columns: Columns) -> Iterator[tuple[tuple[SheetSize, ...], str, str]]:
    """'720 x 1020 mm' under 'Width/size' among the widths of rolls. Of a roll, it is how wide and how thick it is."""
    forms = _forms_said(cells)
    for column in columns.of(Role.WIDTH, Role.ROLL_WIDTH):
        cell = cells.get(column.index)
        if cell is not None and (forms == {"sheet"} or (_may_be_of_sheets(column) and "roll" not in forms)):
            yield sheet_text(cell.text, column.length_unit), at(cell), cell.text.strip()


def _may_be_of_sheets(column: Column) -> bool:
    """'Width', 'Reel width/format'; 'Reel width' and 'Width x dia.' are of rolls."""
    named = {match.value for head in column.said for match in phrases("headers").find(head.text)}
    return Role.SHEET_SIZE in named or Role.ROLL_WIDTH not in named


def comes_in_rolls(cells: Cells) -> bool:
    """A row that says 'rolls' and no sheets: a title's or a note's sheet size is another row's."""
    return _forms_said(cells) == {"roll"}


def _forms_said(cells: Cells) -> set[str]:
    texts = (cell.text for cell in cells.values() if isinstance(cell.value, str))
    return {match.value for text in texts for match in phrases("forms").find(text)}


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
