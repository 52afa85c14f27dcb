"""The table on screen, whatever room it has."""

import numpy as np
import pytest

from tests.window.tables.test_model import NUMBERS
from tracker.window.look.theme import Theme
from tracker.window.tables.model import ColumnTable
from tracker.window.tables.view import RowsView

pytestmark = pytest.mark.gui


def test_the_row_chosen_stays_in_view_where_room_is_taken_below(qtbot, theme: Theme) -> None:
    model = ColumnTable(NUMBERS)
    table = RowsView(model, theme)
    qtbot.addWidget(table)
    model.show([float(number) for number in range(40)], np.arange(40))
    table.resize(300, 400)
    table.show()
    last = table.rowAt(table.viewport().height() - 5)
    table.selectRow(last - 1)
    table.resize(300, 200)
    chosen = table.visualRect(model.index(last - 1, 0))
    assert 0 <= chosen.top() <= chosen.bottom() < table.viewport().height()
    table.verticalScrollBar().setValue(0)
    table.resize(300, 190)
    assert table.verticalScrollBar().value() == 0, "a row out of view already is not brought back"
