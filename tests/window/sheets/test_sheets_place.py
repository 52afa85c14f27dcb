"""Sheets: what was taken in and answered is listed, withdrawn and forgotten, and each of it undone."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QMenu, QPushButton

from tests.window.conftest import settle
from tests.window.fixtures.strange_sheet import HEADS
from tracker.window.main_window import MainWindow
from tracker.window.sheets.name_vendor_dialog import NameVendorDialog

pytestmark = pytest.mark.gui


def test_what_was_taken_in_and_answered_is_listed_and_forgotten(marked: MainWindow, qtbot) -> None:
    marked.take_in.agree.click()
    settle(qtbot, marked)
    marked.go_sheets()
    settle(qtbot, marked)
    sheets = marked.sheets
    texts = [label.text() for label in sheets.remembered.findChildren(QLabel)]
    assert "Prices are in EUR." in texts
    assert any(" · ".join(HEADS) in text for text in texts)
    forget = [each for each in sheets.remembered.findChildren(QPushButton) if each.text() == "Forget"]
    for each in forget:
        each.click()
    settle(qtbot, marked)
    assert sheets.remembered._answers == ()
    assert sheets.remembered._layouts == ()
    marked.steps.undo()
    marked.steps.undo()
    settle(qtbot, marked)
    assert len(sheets.remembered._answers) == len(sheets.remembered._layouts) == 1


def test_a_remembered_answer_is_changed_and_stored_offers_follow_it_and_back(marked: MainWindow, qtbot) -> None:
    marked.take_in.agree.click()
    settle(qtbot, marked)
    marked.go_sheets()
    settle(qtbot, marked)
    assert set(marked.session.comparison.snapshot.currencies) == {"EUR"}
    (change,) = (each for each in marked.sheets.remembered.findChildren(QPushButton) if each.text() == "Change…")
    change.setFocus()
    change.click()
    (choices,) = change.findChildren(QMenu)
    assert choices.isVisible()
    next(action for action in choices.actions() if action.text() == "SEK").trigger()
    choices.close()
    settle(qtbot, marked)
    texts = [label.text() for label in marked.sheets.remembered.findChildren(QLabel)]
    assert "Prices are in SEK." in texts
    assert marked.focusWidget().accessibleName() == "Change: Prices are in SEK."
    assert "3 stored offers follow" in marked.message.text
    assert set(marked.session.comparison.snapshot.currencies) == {"SEK"}
    marked.steps.undo()
    settle(qtbot, marked)
    assert set(marked.session.comparison.snapshot.currencies) == {"EUR"}


def test_nothing_of_a_file_lies_beyond_the_edge(marked: MainWindow, qtbot) -> None:
    marked.take_in.agree.click()
    settle(qtbot, marked)
    marked.go_sheets()
    settle(qtbot, marked)
    table = marked.sheets.table
    qtbot.keyClick(table, Qt.Key.Key_Down)
    qtbot.keyClick(table, Qt.Key.Key_Delete)
    settle(qtbot, marked)
    last = table.model().columnCount() - 1
    assert table.model().index(0, last).data() == "withdrawn"
    for size in ((1280, 800), (1024, 700)):
        marked.resize(*size)
        settle(qtbot, marked)
        assert table.horizontalScrollBar().maximum() == 0
        assert not table.isColumnHidden(last)


def test_a_file_is_withdrawn_brought_back_and_shown(marked: MainWindow, qtbot) -> None:
    marked.take_in.agree.click()
    settle(qtbot, marked)
    marked.go_sheets()
    settle(qtbot, marked)
    sheets = marked.sheets
    qtbot.keyClick(sheets.table, Qt.Key.Key_Down)
    sheets.withdraw.click()
    settle(qtbot, marked)
    assert sheets.withdraw.text() == "Bring back"
    assert not marked.session.comparison.shown.any()
    sheets.withdraw.click()
    settle(qtbot, marked)
    assert marked.session.comparison.shown.sum() == 3
    sheets.show_sheet.click()
    settle(qtbot, marked)
    assert marked.sheet.sheet.view.model().index(2, 0).data() == "Qxz"


def test_a_sheet_taken_in_without_a_vendor_is_named_later_and_that_can_be_undone(
    real_window: MainWindow, qtbot, tmp_path
) -> None:
    sheet = tmp_path / "list.csv"
    sheet.write_text(
        "Board,Grade,Caliper (pt),Basis weight (g/m²),Price USD,Unit\nFenlight 16,SBS,16,300,1216,tonne\n",
        encoding="utf-8",
    )
    real_window.take_in_files([sheet])
    settle(qtbot, real_window)
    real_window.take_in.understood.vendor.nameless.click()
    real_window.take_in.agree.click()
    settle(qtbot, real_window)
    real_window.go_sheets()
    settle(qtbot, real_window)
    sheets = real_window.sheets
    sheets.table.selectRow(0)
    assert sheets.name_vendor.isVisible()
    qtbot.keyClick(sheets.table, Qt.Key.Key_N)
    dialog = sheets.findChild(NameVendorDialog)
    qtbot.keyClicks(dialog.naming.field, "Ostrel Karton")
    qtbot.keyClick(dialog.naming.field, Qt.Key.Key_Return)
    settle(qtbot, real_window)
    assert [file.vendor for file in sheets._files] == ["Ostrel Karton"]
    assert real_window.session.comparison.snapshot.vendors == ["Ostrel Karton"]
    assert not sheets.name_vendor.isVisible()
    real_window.steps.undo()
    settle(qtbot, real_window)
    assert [file.vendor for file in sheets._files] == [None]


def test_the_latest_file_is_chosen_from_the_start_and_told_what_can_be_done(marked: MainWindow, qtbot) -> None:
    marked.take_in.agree.click()
    settle(qtbot, marked)
    marked.go_sheets()
    settle(qtbot, marked)
    sheets = marked.sheets
    assert sheets.chosen is not None
    assert sheets.show_sheet.isEnabled()
    assert "no longer count" in sheets.withdraw.toolTip()
    qtbot.keyClick(sheets.table, Qt.Key.Key_Delete)
    settle(qtbot, marked)
    assert (sheets.withdraw.text(), sheets.withdraw.toolTip()) == ("Bring back", "Delete: its offers count again")


def test_a_file_shown_from_its_row_outlines_nothing_and_is_named_once(marked: MainWindow, qtbot) -> None:
    marked.take_in.agree.click()
    settle(qtbot, marked)
    marked.go_sheets()
    settle(qtbot, marked)
    qtbot.keyClick(marked.sheets.table, Qt.Key.Key_Return)
    settle(qtbot, marked)
    assert "outlined" not in marked.sheet._told.text()
    assert marked.sheet._title.text() == ""
    assert marked.sheet.sheet._title.text()
