"""A unit said again half-way down, in the price columns alone: 'EUR je 1000 m²' where 'EUR/t' stood above."""

from collections.abc import Mapping

from tracker.intake.grid import Cell
from tracker.intake.tables.figures import is_figure
from tracker.intake.tables.headers.header_rows import names_board_and_unit
from tracker.intake.tables.headers.heads import head_of_words, head_text, looks_priced
from tracker.intake.tables.headers.zones import Zone
from tracker.intake.tables.table import HeadedColumn, Words
from tracker.intake.tables.view import View
from tracker.intake.values.boards.grade import names_grade
from tracker.intake.values.heads.header import header
from tracker.intake.values.prices.money import price_unit
from tracker.intake.words.fold import fold


def priced_anew(view: View, zone: Zone, row: int) -> Zone | None:
    """The zone that begins with a row of such units: every column keeps its heads, but for what its price was per.

    Words at the row's beginning ('Sheets | | | EUR/1000 m²') are the title of what follows; other heads may stand in it
    once more.
    """
    cells = view.rows[row]
    # Every row of a long list is asked, and nearly all have a figure: no row of units has.
    for cell in cells.values():
        if not isinstance(cell.value, str):
            return None
    if not any(map(_is_unit, cells.values())):
        return None
    priced = {column.index for column in zone.columns if _is_price(column)}
    units = {index: cell for index, cell in cells.items() if index in priced and _is_unit(cell)}
    if not units or not _prices_under(view, row, units) or names_board_and_unit(view, row):
        return None
    others = [cell for index, cell in cells.items() if index not in units]
    words = [cell for cell in others if not _says_again(cell, zone)]
    if words and (len(words) > 1 or words[0].column != min(cells) or not isinstance(words[0].value, str)):
        return None
    if words != others and (not _leaves_out_heads(view, zone, row) or any(names_grade(cell.text) for cell in words)):
        # 'CUK | lb/MSF | $/ST' below 'SBS | lb/MSF | $/ST' heads calipers of another board.
        return None
    anew = [_per(column, units[column.index]) if column.index in units else column for column in zone.columns]
    titles = tuple(Words(view.sheet, row, cell, cell.text.strip()) for cell in words)
    return Zone(row, row, row, [row], columns=anew, titles=titles)


def _says_again(cell: Cell, zone: Zone) -> bool:
    """The 'Delivery' of 'By area | | | EUR/1000 m² | Delivery' below 'Board | g/m² | µm | EUR/t | Delivery'."""
    heads = next((column.heads for column in zone.columns if column.index == cell.column), ())
    return bool(heads) and fold(heads[-1].text).strip() == fold(cell.text).strip()


def _leaves_out_heads(view: View, zone: Zone, row: int) -> bool:
    """Figures stand below it where it has no head and the header above has one; a header of all columns is its own."""
    bare = {column.index for column in zone.columns if column.heads} - view.rows[row].keys()
    return any(is_figure(cell) for index, cell in view.rows.get(row + 1, {}).items() if index in bare)


def _is_unit(cell: Cell) -> bool:
    unit = price_unit(cell.text) if isinstance(cell.value, str) else None
    return unit is not None and unit.basis is not None


def _is_price(column: HeadedColumn) -> bool:
    head = head_of_words(column.text) if column.heads else None
    return head is not None and head.price


def _prices_under(view: View, row: int, cells: Mapping[int, Cell]) -> bool:
    under = view.rows.get(row + 1, {})
    return all(index in under and looks_priced(under[index]) for index in cells)


def _per(column: HeadedColumn, unit: Cell) -> HeadedColumn:
    """The column without the heads that said its unit; one that says more besides is left to contradict."""
    kept = (cell for cell in column.heads if not _only_a_price_s_unit(cell))
    return HeadedColumn(column.index, (*kept, unit))


def _only_a_price_s_unit(cell: Cell) -> bool:
    said = header(head_text(cell))
    if said.basis is None:
        return False
    return not (said.delivery or said.bracket or said.calipers or said.weights or said.grade or said.sheet_sizes)
