"""Measures with their tolerance in columns of their own: 'Caliper µm' over 'min | aim | max', where the aim is what a
board has."""

from collections.abc import Iterator
from dataclasses import replace
from decimal import Decimal

from tracker.intake.columns.column import Column
from tracker.intake.tables.figures import sure_figure
from tracker.intake.tables.table import Table
from tracker.intake.values.heads.roles import Role
from tracker.intake.words.lists import phrases

_NAMES = 0.5
_LOOKED_AT = 200


def with_aims(columns: list[Column], table: Table) -> list[Column]:
    """Makes the aim of a caliper or weight the measure and its bounds no measures. With bounds alone, two aims, or
    figures that do not lie between their bounds, all stay what they are."""
    roles: dict[int, Role] = {}
    for measure in (Role.CALIPER, Role.WEIGHT):
        of_measure = {column.index: kind for column in columns if (kind := _kind(column, measure))}
        aims = [index for index, kind in of_measure.items() if kind == "aim"]
        bounds = {index: kind for index, kind in of_measure.items() if kind in ("least", "most")}
        others = [column for column in columns if column.role is measure and column.index not in of_measure]
        if len(aims) == 1 and bounds and not others and _lie_between(aims[0], bounds, table):
            roles |= {aims[0]: measure, **dict.fromkeys(bounds, Role.PROPERTY)}
    return [replace(column, role=roles[column.index]) if column.index in roles else column for column in columns]


def _kind(column: Column, measure: Role) -> str:
    """'least', 'aim' or 'most' of this measure; '' for a column of anything else, or of two of these."""
    if column.currencies or not any(head.strength(measure) >= _NAMES for head in column.said):
        return ""
    kinds = {match.value for head in column.said for match in phrases("aims").find(head.text)}
    return kinds.pop() if len(kinds) == 1 else ""


def _lie_between(aim: int, bounds: dict[int, str], table: Table) -> bool:
    """In every row that has the figures, which some row must."""
    rows = [
        (figure, bound, kind) for row in table.rows[:_LOOKED_AT]
        for figure in _figure(table, row.index, aim) for index, kind in bounds.items()
        for bound in _figure(table, row.index, index)
    ]  # fmt: skip
    return bool(rows) and all(bound <= figure if kind == "least" else figure <= bound for figure, bound, kind in rows)


def _figure(table: Table, row: int, index: int) -> Iterator[Decimal]:
    cell = table.view.rows[row].get(index)
    figure = sure_figure(cell) if cell is not None else None
    if figure is not None:
        yield figure
