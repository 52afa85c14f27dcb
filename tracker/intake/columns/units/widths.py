"""Widths that a unit alone would make calipers: 'Bahn' over 'mm' beside 'Dicke' over 'mm'."""

from collections.abc import Mapping, Sequence
from dataclasses import replace
from decimal import Decimal

from tracker.intake.columns.column import Column
from tracker.intake.columns.roles.cells import caliper_of
from tracker.intake.grid import Cell
from tracker.intake.values.boards.caliper import possible_for_board
from tracker.intake.values.heads.roles import Role
from tracker.intake.words.lists import phrases

_NARROWEST_UM = 100_000
"""No web of board is narrower than 10 cm, and no board as thick. Common practice, no source."""


def without_widths(columns: list[Column], samples: Mapping[int, Sequence[Cell]]) -> list[Column]:
    """Of several columns of calipers those that no board can have are widths, where another's are board's."""
    calipers = [column for column in columns if column.role is Role.CALIPER and samples[column.index]]
    thick = [column for column in calipers if all(map(possible_for_board, _readings(column, samples)))]
    wide = {
        column.index
        for column in calipers
        if not _named(column) and min(_readings(column, samples), default=0) >= _NARROWEST_UM
    }
    if not thick or not wide:
        return columns
    return [replace(column, role=Role.ROLL_WIDTH) if column.index in wide else column for column in columns]


def _named(column: Column) -> bool:
    """A word for thickness stands over the column, and not a unit alone."""
    return any(
        head.strength(Role.CALIPER) >= _PLAINLY and phrases("caliper_units").whole(head.text) is None
        for head in column.said
    )


_PLAINLY = 0.9


def _readings(column: Column, samples: Mapping[int, Sequence[Cell]]) -> list[Decimal]:
    """What each cell says below the head's own unit, in µm: the first of its readings."""
    read = (caliper_of(cell, column.caliper_unit) for cell in samples[column.index])
    return [said.readings[0].um for said in read if said is not None and said.readings]
