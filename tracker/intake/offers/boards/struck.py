"""Boards whose own cells are struck through beside a price that is not: whether it is still offered is asked."""

from collections.abc import Mapping

from tracker.intake.columns.column import Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.notes.said import at
from tracker.intake.offers.prices.price_changes import ask_whether_it_stands
from tracker.intake.values.heads.roles import MEASURES, Role

_NAMES = (Role.PRODUCT, Role.GRADE, *MEASURES)


def ask_of_struck_board(draft: Draft, cells: Mapping[int, Cell], columns: Columns, facts: FileFacts) -> None:
    """Holds back the price of a board that is struck through in any of the cells that describe it."""
    for column in columns.of(*_NAMES):
        cell = cells.get(column.index)
        if cell is not None and cell.struck:
            ask_whether_it_stands(draft, cell.text.strip(), f"in {at(cell)} is struck through", facts)
            return
