"""The lead time that a line of text names with its board and its price: '… - $1,228.00 per short ton, 4 weeks'."""

from collections.abc import Mapping

from tracker.intake.columns.column import Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.said import at
from tracker.intake.values.lead_sentences import lead_in_remark
from tracker.intake.values.roles import Role
from tracker.trade.offer import Evidence


def fill_own_lead(draft: Draft, cells: Mapping[int, Cell], columns: Columns) -> None:
    """What the board's own words say, where no head stands over them: they are all that the line says."""
    for column in columns.of(Role.PRODUCT):
        cell = cells.get(column.index)
        said = lead_in_remark(cell.text) if cell is not None and not column.heads else None
        if cell is not None and said is not None:
            draft.lead_days = said.days
            draft.evidence.append(Evidence("lead_days", at(cell), cell.text))
