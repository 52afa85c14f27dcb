"""Lists of terms by board below the boards: 'Grade | Lead time' over 'SBS | 4 weeks', 'Code | Minimum order' over
'A1 | 5 t'. Each of their rows is made the text that says the same in one cell: 'A1: Minimum order 5 t'."""

from collections.abc import Iterator
from dataclasses import replace

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import head_of
from tracker.intake.tables.parts.lists_beside import with_unit
from tracker.intake.tables.view import View
from tracker.intake.values.boards.grade import names_grade
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.heads.roles import Role
from tracker.intake.words.fold import fold

_WIDTH = 2
_FEWEST_COLUMNS = 3
"""Of a table with boards and prices."""
_SHORTEST_NUMBER = 3
"""Digits of a code; '1' and '12' count lines."""
_TERMS = (Role.LEAD_TIME, Role.MINIMUM, Role.VALIDITY, Role.DELIVERY_TERMS)


def with_terms_by_board(view: View) -> View:
    """The view with such rows in words, without what heads them."""
    if view.passing:
        return view
    rows = dict(view.rows)
    for row in view.order:
        entries = list(_entries(view, row)) if len(view.rows[row]) == _WIDTH else []
        if not entries or not _are_boards([label for label, _ in entries], view, row):
            continue
        head = view.rows[row][max(view.rows[row])]
        del rows[row]
        rows |= {label.row: {label.column: _in_words(label, head, cell)} for label, cell in entries}
    return replace(view, rows=rows) if len(rows) < len(view.rows) else view


def _entries(view: View, row: int) -> Iterator[tuple[Cell, Cell]]:
    """The rows below what may head such a list, down to one that is empty or narrower; none where one is wider."""
    columns = sorted(view.rows[row])
    head = head_of(view.rows[row][columns[1]])
    if columns[1] - columns[0] > 1 or head is None or not head.named or head.role not in _TERMS:
        return
    below: list[tuple[Cell, Cell]] = []
    while len(view.rows.get(row := row + 1, {})) >= _WIDTH:
        if sorted(view.rows[row]) != columns:
            return
        below.append((view.rows[row][columns[0]], view.rows[row][columns[1]]))
    yield from below


def _are_boards(labels: list[Cell], view: View, row: int) -> bool:
    """Whether each names a board once, by its grade or as the rows of a table above do."""
    first, second = (cell for _, cell in sorted(view.rows[row].items()))
    texts = [fold(label.text).strip() for label in labels]
    named = _named_above(view, row, _plain(first), _plain(second))
    if named is None or len(set(texts)) < len(texts):
        return False
    pairs = zip(texts, labels, strict=True)
    return all((text in named and _is_code(text)) or names_grade(label.text) for text, label in pairs)


def _plain(cell: Cell) -> str:
    return fold(cell.text).strip(" .:")


def _is_code(text: str) -> bool:
    return any(map(str.isalpha, text)) or len(text) >= _SHORTEST_NUMBER


def _named_above(view: View, end: int, first: str, second: str) -> frozenset[str] | None:
    """What stands in a column above that has the same head; None where nothing has, or a column of terms has the other
    head already."""
    for row in (row for row in view.order if row < end):
        heads = {_plain(cell): column for column, cell in view.rows[row].items()}
        if len(heads) >= _FEWEST_COLUMNS and first in heads and second not in heads:
            below = (view.rows[other] for other in view.order if row < other < end)
            return frozenset(fold(cells[heads[first]].text).strip() for cells in below if heads[first] in cells)
    return None


def _in_words(label: Cell, head: Cell, cell: Cell) -> Cell:
    """'Minimum order SBS: 5 t', and 'A1: Minimum order 5 t' of a code."""
    name, unit = with_unit(head.text.strip(), cell)
    said, called = f"{cell.text.strip()} {unit}".strip(), label.text.strip()
    if find_delivery(cell.text) is not None:
        text = f"{called}: {said}"
    else:
        text = f"{name} {called}: {said}" if names_grade(called) else f"{called}: {name} {said}"
    return label._replace(value=text, text=text, number_format="General")
