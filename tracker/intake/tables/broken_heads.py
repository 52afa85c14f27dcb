"""Order sizes that a head breaks over two rows: 'Under | 10,000 - | 40,000' over '10,000 lb | 39,999 lb | lb & up'."""

from collections.abc import Iterator
from dataclasses import replace
from itertools import pairwise

from tracker.intake.grid import Cell
from tracker.intake.tables.view import View
from tracker.intake.values.brackets import bracket_text
from tracker.intake.values.grade import find_grade
from tracker.intake.values.numbers import number_readings

_LOOKED_AT = 60
_FEWEST = 2
_LONGEST_PIECE = 20


def with_whole_order_sizes(view: View) -> View:
    """The view with both pieces of each such order size in the lower row, and gone from the upper one."""
    if view.passing:
        return view
    joined: dict[int, dict[int, Cell]] = {}
    for upper, lower in pairwise(view.order[:_LOOKED_AT]):
        if lower != upper + 1 or upper in joined:
            continue
        whole = dict(_whole(view.rows[upper], view.rows[lower]))
        if len(whole) >= _FEWEST:
            joined[upper] = {column: cell for column, cell in view.rows[upper].items() if column not in whole}
            joined[lower] = {**view.rows[lower], **whole}
    if not joined:
        return view
    return replace(view, rows={row: cells for row in view.order if (cells := joined.get(row, view.rows[row]))})


def _whole(upper: dict[int, Cell], lower: dict[int, Cell]) -> Iterator[tuple[int, Cell]]:
    """The columns where a row and the one below it make an order size that neither row tells whole."""
    for column, piece in upper.items():
        rest = lower.get(column)
        if rest is None or len(piece.text) > _LONGEST_PIECE or len(rest.text) > _LONGEST_PIECE:
            continue
        if number_readings(piece.text) and any(map(str.isdigit, rest.text)):
            # A price above the head of the next table.
            continue
        if find_grade(piece.text) is not None:
            # 'GC1' over '< 5 t' heads a group of order sizes.
            continue
        text = f"{piece.text.strip()} {rest.text.strip()}"
        size = bracket_text(text) if bracket_text(piece.text) is None else None
        if size is not None and not size.alone and not size.not_weight:
            yield column, rest._replace(value=text, text=text)
