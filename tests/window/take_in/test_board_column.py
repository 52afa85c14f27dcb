"""A sheet moved sideways keeps the column of its boards in view, and what is asked about is never under it."""

from pathlib import Path

import pytest
from openpyxl import Workbook

from tests.window.conftest import settle
from tracker.window.main_window import MainWindow
from tracker.window.take_in.sheet_view import SheetView

pytestmark = pytest.mark.gui

_SIZES = ("5-10 tons", "10-20 tons", "20-40 tons", "40-60 tons", "60-80 tons", "truckload")


@pytest.fixture
def view(real_window: MainWindow, qtbot, tmp_path: Path) -> SheetView:
    """A wide sheet whose last column of prices is asked about, in a small window."""
    book = Workbook()
    sheet = book.active
    sheet.append(["Ostrel Karton Ltd"])
    sheet.append(["Board", "Grade", "Caliper (pt)", "Weight, lb/MSF", *(f"USD/cwt {size}" for size in _SIZES)])
    for number in range(60):
        sheet.append([f"Fenlight {number}", "SBS", 18, 75, *(60 - at for at in range(len(_SIZES)))])
    path = tmp_path / "ostrel.xlsx"
    book.save(path)
    real_window.resize(1000, 660)
    real_window.take_in_files([path])
    settle(qtbot, real_window)
    return real_window.take_in.sheet.view


def test_the_boards_stay_in_view_beside_what_is_asked(view: SheetView) -> None:
    assert view.horizontalScrollBar().value() > 0
    boards = view.boards
    assert boards.isVisible()
    assert boards.column == 0
    asked = view.visualRect(view.currentIndex())
    assert view.currentIndex().column() == 9
    assert asked.left() >= boards.covered
    assert asked.right() <= view.viewport().width()
    assert boards.indexAt(boards.rect().center()).column() == 0


def test_no_other_column_is_cut_in_two(view: SheetView) -> None:
    at = view.boards.covered
    assert view.columnViewportPosition(view.columnAt(at)) == at


def test_it_is_gone_once_the_column_itself_is_in_sight(view: SheetView) -> None:
    view.horizontalScrollBar().setValue(0)
    assert not view.boards.isVisible()
    view.horizontalScrollBar().setValue(200)
    assert view.boards.isVisible()


def test_it_follows_the_sheet_downwards(view: SheetView, qtbot) -> None:
    view.verticalScrollBar().setValue(30)
    qtbot.wait(20)
    for row in (35, 40):
        of_sheet, of_boards = (
            view.visualRect(view.model().index(row, 9)),
            view.boards.visualRect(view.model().index(row, 0)),
        )
        assert of_boards.top() == of_sheet.top()


def test_marking_by_hand_has_every_column_to_itself(view: SheetView, real_window: MainWindow, qtbot) -> None:
    real_window.take_in.sheet.mark_by_hand.click()
    view.horizontalScrollBar().setValue(view.horizontalScrollBar().maximum())
    assert not view.boards.isVisible()


def test_a_sheet_with_all_in_view_has_none(real_window: MainWindow, qtbot, tmp_path: Path) -> None:
    path = tmp_path / "narrow.csv"
    path.write_text("Ostrel Karton Ltd,,\nBoard,Caliper (pt),Price USD/t\nFenlight SBS,16,1216\n", encoding="utf-8")
    real_window.resize(1400, 800)
    real_window.take_in_files([path])
    settle(qtbot, real_window)
    assert not real_window.take_in.sheet.view.boards.isVisible()
