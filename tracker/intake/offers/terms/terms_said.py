"""What a row's prices come with, and the row's own cells and remarks that say so."""

from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal
from typing import TypeVar

from tracker.intake.columns.column import Columns
from tracker.intake.grid import Cell
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.statements import statements
from tracker.trade.offer import Evidence, Note

Cells = dict[int, Cell]
S = TypeVar("S")


@dataclass(slots=True)
class Terms:
    """What a row's prices come with; `notes` say what was written but could not be read.

    `own_delivery`: the row itself says whether prices include freight. `maker`: whose mill the board comes from, who
    quotes only where nobody else does. `by_place`: what says that the prices of places include freight.
    """

    lead_days: tuple[int, int] | None = None
    valid_until: date | None = None
    valid_at_latest: date | None = None
    minimum_kg: Decimal | None = None
    delivered: bool | None = None
    own_delivery: bool = False
    by_place: Evidence | None = None
    received: date | None = None
    vendor: str | None = None
    maker: str | None = None
    notes: list[Note] = field(default_factory=list)
    evidence: list[Evidence] = field(default_factory=list)


def cell_of(cells: Cells, columns: Columns, role: Role) -> Cell | None:
    return next((cells[column.index] for column in columns.of(role) if column.index in cells), None)


def remarked(cells: Cells, columns: Columns, kind: type[S]) -> Iterator[tuple[Cell, S]]:
    """What the row's own remarks state of one kind: 'ab Werk', 'gültig bis 31.10.2026'."""
    for column in columns.of(Role.REMARKS):
        cell = cells.get(column.index)
        if cell is not None and isinstance(cell.value, str):
            yield from ((cell, said) for said in statements(cell.text) if isinstance(said, kind))
