"""How the width is shared while taking in: prices are never cut, the sheet takes what its columns need."""

from pathlib import Path

import pytest
from PySide6.QtGui import QFont, QFontMetrics

from tests.window.conftest import settle
from tests.window.fixtures.invented_sheet import FILE
from tracker.window.main_window import MainWindow
from tracker.window.take_in.line_columns import LINE_COLUMNS

pytestmark = pytest.mark.gui
PRICE = [column.key for column in LINE_COLUMNS].index("price")


@pytest.fixture
def take_in(window: MainWindow, qtbot):
    window.take_in_files([Path(FILE)])
    settle(qtbot, window)
    return window.take_in


def test_a_price_on_a_long_basis_is_not_cut(take_in) -> None:
    table = take_in.understood.table
    longest = "$1,408.50 /1,000 sheets, as quoted"
    font = QFont(table.font())
    font.setWeight(QFont.Weight.DemiBold)
    needed = QFontMetrics(font).horizontalAdvance(longest)
    assert table.columnWidth(PRICE) < needed
    table.make_room("price", longest)
    assert table.columnWidth(PRICE) > needed


def test_the_sheet_takes_what_its_columns_need_and_no_more(take_in, window, qtbot) -> None:
    window.resize(1800, 800)
    settle(qtbot, window)
    sheet = take_in.sheet
    assert sheet.wanted_width <= sheet.width() <= sheet.wanted_width + 4
    window.resize(1024, 700)
    settle(qtbot, window)
    assert sheet.width() < sheet.wanted_width
    assert take_in.understood.width() > sheet.width()


def test_a_wider_window_scrolls_the_sheet_back_unless_the_user_has_scrolled_it(take_in, window, qtbot) -> None:
    across = take_in.sheet.view.horizontalScrollBar()
    window.resize(1024, 700)
    settle(qtbot, window)
    narrow = across.value()
    assert narrow > 0
    window.resize(1120, 700)
    settle(qtbot, window)
    assert 0 < across.value() < narrow
    window.resize(1024, 700)
    settle(qtbot, window)
    assert across.value() == narrow
    across.triggerAction(across.SliderAction.SliderToMinimum)
    window.resize(1100, 700)
    settle(qtbot, window)
    assert across.value() == 0
