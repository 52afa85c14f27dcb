"""Item numbers that say what the board is, and a key of their parts: 'CRB-018-070-40' below 'Reading an item number:
grade - caliper in thousandths of an inch - basis weight in lb per MSF - width in inches'."""

import re
from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import head_of_words
from tracker.intake.tables.table import HeadedColumn, SheetTables, Table
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.heads.header import header
from tracker.intake.values.heads.roles import Role
from tracker.intake.words.fold import fold

_KEY = re.compile(r"(?P<label>[^:=]{3,60})[:=](?P<said>.+)", re.DOTALL)
_JOINTS = re.compile(r"\s+[-–/]\s+|,\s+")
_SIGNS = re.compile(r"[-–/_]")
_FIGURE = re.compile(r"0*(\d+(?:\.\d+)?)")
_MEASURED = (Role.CALIPER, Role.WEIGHT)
_FEWEST_PARTS, _FEWEST_ROWS = 3, 2
_BEYOND = 20_000
"""Where the columns of parts stand: right of all that a sheet has."""


def with_code_parts(found: SheetTables) -> SheetTables:
    """The tables with a column for each measure that the key gives to a part of their item numbers, and the grade."""
    if found.view.passing:
        return found
    return replace(found, tables=tuple(_with_parts(table, found) for table in found.tables))


def _with_parts(table: Table, found: SheetTables) -> Table:
    if table.view.turned:
        return table
    said = [words.text for words in (*table.titles, *found.texts)]
    for column in table.columns:
        key = next((parts for text in said if (parts := _parts_said(text, column))), ())
        codes = _codes(table, column, len(key)) if key else {}
        if codes and not _measured_elsewhere(table):
            return _told(table, column, key, codes)
    return table


def _parts_said(text: str, column: HeadedColumn) -> tuple[str, ...]:
    """What the key says of each part; () where it does not speak of this column, or not of measures with units."""
    key = _KEY.fullmatch(text.strip())
    head = fold(column.heads[-1].text).strip() if column.heads else ""
    if key is None or not head or head not in fold(key["label"]):
        return ()
    parts = tuple(part.strip(" .") for part in _JOINTS.split(key["said"].strip()))
    heads = [head_of_words(part) for part in parts]
    roles = [head.role for head in heads if head is not None and head.role in _MEASURED]
    one_each = bool(roles) and len(set(roles)) == len(roles)
    units = all(_has_unit(part) for part, head in zip(parts, heads, strict=True) if head and head.role in _MEASURED)
    return parts if len(parts) >= _FEWEST_PARTS and one_each and units else ()


def _has_unit(part: str) -> bool:
    said = header(part)
    return said.caliper_unit is not None or len(said.weight_units) == 1


def _codes(table: Table, column: HeadedColumn, count: int) -> dict[int, tuple[Cell, Sequence[str]]]:
    """Each row's item number in its parts; none where one has more or fewer than the key. A total has none at all."""
    codes: dict[int, tuple[Cell, Sequence[str]]] = {}
    for row in table.rows:
        cell = table.view.cell(row.index, column.index)
        pieces = _SIGNS.split(cell.text.strip()) if cell is not None else []
        if cell is None or (len(pieces) == 1 and not any(map(str.isdigit, cell.text))):
            continue
        if len(pieces) != count:
            return {}
        codes[row.index] = cell, pieces
    return codes if len(codes) >= _FEWEST_ROWS else {}


def _measured_elsewhere(table: Table) -> bool:
    """A column of its own says what the boards measure: the item numbers need not."""
    heads = (head_of_words(column.text) for column in table.columns if column.heads)
    return any(head is not None and head.role in _MEASURED for head in heads)


def _told(
    table: Table, column: HeadedColumn, key: Sequence[str], codes: dict[int, tuple[Cell, Sequence[str]]]
) -> Table:
    places = [place for place, part in enumerate(key) if _tells_board(part)]
    rows = dict(table.view.rows)
    for row, (cell, pieces) in codes.items():
        told = {_BEYOND + place: piece for place in places if (piece := _piece(cell, pieces[place])) is not None}
        if len(told) != len(places):
            return table
        rows[row] = rows[row] | told
    head = column.heads[-1]
    columns = [HeadedColumn(_BEYOND + place, (head._replace(value=key[place], text=key[place]),)) for place in places]
    return replace(table, view=replace(table.view, rows=rows), columns=(*table.columns, *columns))


def _tells_board(part: str) -> bool:
    head = head_of_words(part)
    return head is not None and head.role in (Role.GRADE, *_MEASURED)


def _piece(code: Cell, piece: str) -> Cell | None:
    """A part as a cell at its item number's address; None where it is neither a figure nor a grade."""
    figure = _FIGURE.fullmatch(piece.strip())
    if figure is not None:
        return code._replace(value=Decimal(figure[1]), text=figure[1])
    return code._replace(value=piece, text=piece) if find_grade(piece) is not None else None
