"""Columns of points that no board is thick, as of an index beside the table, where another column has the calipers."""

from collections.abc import Mapping, Sequence
from dataclasses import replace

from tracker.intake.columns.column import Column
from tracker.intake.grid import Cell
from tracker.intake.tables.figures import figure_of
from tracker.intake.values.boards.caliper import in_unit
from tracker.intake.values.heads.roles import Role
from tracker.trade.quantities import CaliperUnit

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
    in_points = any(head.caliper_unit is CaliperUnit.POINT for head in column.said)
    figures = [figure for cell in cells if (figure := figure_of(cell)) is not None]
    thick = (in_unit(figure, CaliperUnit.POINT, "").um for figure in figures)
    return in_points and bool(figures) and not any(_THINNEST_UM <= um <= _THICKEST_UM for um in thick)
