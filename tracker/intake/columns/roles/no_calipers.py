"""Columns of points and millimetres that no board is thick: an index beside the table, where another column has the
calipers."""

from collections.abc import Mapping, Sequence
from dataclasses import replace

from tracker.intake.columns.column import Column
from tracker.intake.grid import Cell
from tracker.intake.tables.figures import figure_of
from tracker.intake.values.boards.caliper import in_unit
from tracker.intake.values.heads.roles import Role

_THINNEST_UM, _THICKEST_UM = 80, 8000
"""What a board may be thick at the very most; common practice, no source."""


def without_other_points(columns: list[Column], samples: Mapping[int, Sequence[Cell]]) -> list[Column]:
    """'Index | Points' over 1,088 beside 'Caliper, pt' over 12 and 16: those are points of something else."""
    calipers = [column for column in columns if column.role is Role.CALIPER]
    others = [column for column in calipers if _is_of_no_board(column, samples[column.index])]
    if not others or len(others) == len(calipers):
        return columns
    return [replace(column, role=Role.PROPERTY) if column in others else column for column in columns]


def _is_of_no_board(column: Column, cells: Sequence[Cell]) -> bool:
    units = [head.caliper_unit for head in column.said if head.caliper_unit is not None]
    figures = [figure for cell in cells if (figure := figure_of(cell)) is not None]
    if not units or not figures:
        return False
    thick = (in_unit(figure, units[-1], "").um for figure in figures)
    return not any(_THINNEST_UM <= um <= _THICKEST_UM for um in thick)
