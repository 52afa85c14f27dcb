"""Getting about while taking in, by keys alone: on to the decision, and out again."""

from pathlib import Path

import pytest
from openpyxl import Workbook
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel, QPushButton

from tests.window.conftest import settle
from tests.window.fixtures.invented_sheet import FILE
from tracker.window.keys_dialog import KeysDialog
from tracker.window.main_window import SHEETS, TAKE_IN, TODAY, MainWindow

pytestmark = pytest.mark.gui

_SHEET = (
    "Ostrel Karton Ltd,,,,,\n\nBoard,Grade,Caliper (pt),Basis weight (g/m²),Price USD,Unit\n"
    "Fenlight 16,SBS,16,300,1216,ton\nQuill,Tessel,16,300,1216,USD/t\n"
)


def _read(window: MainWindow, qtbot, tmp_path: Path, text: str = _SHEET) -> None:
    path = tmp_path / "ostrel.csv"
    path.write_text(text, encoding="utf-8")
    window.take_in_files([path])
    settle(qtbot, window)


def _press_tab(qtbot, times: int) -> list[QPushButton]:
    met = []
    for _ in range(times):
        qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
        met.append(QApplication.focusWidget())
    return met


def test_tab_goes_on_from_the_lines_to_taking_them_in(real_window: MainWindow, qtbot, tmp_path) -> None:
    _read(real_window, qtbot, tmp_path, _SHEET.replace(",ton", ",USD/t").replace("Tessel", "CUK"))
    take_in = real_window.take_in
    take_in.understood.table.setFocus()
    take_in.understood.table.selectRow(0)
    met = _press_tab(qtbot, 30)
    cells = [part for part in met if part in take_in.understood.line._cells]
    assert take_in.agree.isEnabled()
    assert take_in.agree in met
    assert cells
    # The cells of the line first, then what is done with it, before anything of the window above.
    assert met.index(cells[-1]) < met.index(take_in.leave) < met.index(take_in.agree)
    assert met.index(take_in.agree) < met.index(real_window.bar.take_in)


def test_esc_ends_marking_then_leaves_the_review(real_window: MainWindow, qtbot, tmp_path) -> None:
    _read(real_window, qtbot, tmp_path)
    take_in = real_window.take_in
    take_in.sheet.mark_by_hand.click()
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Escape)
    assert take_in.sheet.strip.isHidden()
    assert real_window.stack.currentIndex() == TAKE_IN
    qtbot.keyClick(take_in.sheet.view, Qt.Key.Key_Escape)
    settle(qtbot, real_window)
    assert real_window.stack.currentIndex() == TODAY


def test_esc_stops_a_long_read_and_says_so(window: MainWindow, qtbot) -> None:
    window.take_in_files([Path(FILE)])
    assert window.take_in.at_hand.taken is None
    assert window.take_in.leave.text() == "Stop reading"
    qtbot.keyClick(window.take_in, Qt.Key.Key_Escape)
    assert window.stack.currentIndex() == TODAY
    assert window.message.text == f"Stopped reading {Path(FILE).name}; nothing of it was stored."
    settle(qtbot, window)


def test_esc_gives_up_no_more_than_one_file(window: MainWindow, qtbot) -> None:
    window.take_in_files([Path(FILE), Path("other.xlsx")])
    settle(qtbot, window)
    qtbot.keyClick(window.take_in, Qt.Key.Key_Escape)
    assert window.stack.currentIndex() == TAKE_IN
    assert "leaves them all" in window.message.text


def test_the_keys_tell_of_esc(window: MainWindow, qtbot) -> None:
    dialog = KeysDialog(window)
    qtbot.addWidget(dialog)
    assert "Esc" in [label.text() for label in dialog.findChildren(QLabel)]


def test_a_blank_sheet_asks_for_nothing(real_window: MainWindow, qtbot, tmp_path) -> None:
    path = tmp_path / "blank.xlsx"
    Workbook().save(path)
    real_window.take_in_files([path])
    settle(qtbot, real_window)
    understood = real_window.take_in.understood
    assert understood.vendor.isHidden()
    assert understood.summary.text().startswith(
        "Nothing stands in this file. If the program it comes from shows prices"
    )


def test_a_file_without_prices_asks_for_no_vendor_but_lets_it_be_named(
    real_window: MainWindow, qtbot, tmp_path
) -> None:
    _read(real_window, qtbot, tmp_path, "Name,Telephone\nA. Quill,555 0101\n")
    take_in = real_window.take_in
    understood = take_in.understood
    assert understood.vendor.isHidden()
    assert QApplication.focusWidget() is take_in.sheet.view, "it may be marked by hand"
    assert understood.summary.text() == "No prices were found. If it has some, mark its table by hand."
    assert understood.whose.change.text() == "Name the vendor"
    # Marks of a vendor's earlier sheet may serve it.
    understood.whose.change.setFocus()
    qtbot.keyClick(understood.whose.change, Qt.Key.Key_Return)
    assert understood.vendor.isAncestorOf(QApplication.focusWidget())
    QApplication.focusWidget().setText("Ostrel Karton Ltd")
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Return)
    settle(qtbot, real_window)
    assert take_in.at_hand.given == {"vendor": "Ostrel Karton Ltd"}


def test_what_was_answered_stands_above_what_is_asked(real_window: MainWindow, qtbot, tmp_path) -> None:
    _read(real_window, qtbot, tmp_path)
    pane = real_window.take_in.understood.questions
    assert len(pane._asked) == 2
    pane.answered.emit("ton", "short")
    settle(qtbot, real_window)
    (card,) = pane._asked
    (change,) = pane._changes
    assert change.mapTo(pane, change.rect().topLeft()).y() < card.mapTo(pane, card.rect().topLeft()).y()


def test_the_files_name_stands_at_the_top_while_it_is_read(window: MainWindow, qtbot) -> None:
    window.take_in_files([Path(FILE)])
    qtbot.wait(30)
    sheet = window.take_in.sheet
    sheet.show_nothing("long.xlsx", "The sheet is being read.")
    qtbot.wait(30)
    assert sheet._title.mapTo(sheet, sheet._title.rect().topLeft()).y() < 40
    settle(qtbot, window)


def test_what_is_remembered_has_room_to_be_read(real_window: MainWindow, qtbot) -> None:
    real_window.resize(1440, 900)
    real_window.go_sheets()
    settle(qtbot, real_window)
    assert real_window.sheets.remembered.width() > 0.33 * real_window.sheets.width()


def test_leaving_leads_back_to_the_row_one_came_from(real_window: MainWindow, qtbot, tmp_path) -> None:
    for name in ("first", "second"):
        path = tmp_path / f"{name}.csv"
        path.write_text(_SHEET.replace("1216", str(len(name) + 1200)).replace(",ton", ",USD/t"), encoding="utf-8")
        real_window.take_in_files([path])
        settle(qtbot, real_window)
        real_window.take_in.agree.click()
        settle(qtbot, real_window)
    real_window.go_sheets()
    settle(qtbot, real_window)
    table = real_window.sheets.table
    table.selectRow(1)
    chosen = real_window.sheets.chosen.id
    for leave in (
        lambda: qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Escape),
        real_window.take_in.leave.click,
    ):
        qtbot.keyClick(table, Qt.Key.Key_A)
        settle(qtbot, real_window)
        assert real_window.stack.currentIndex() == TAKE_IN
        leave()
        settle(qtbot, real_window)
        assert real_window.stack.currentIndex() == SHEETS
        assert real_window.sheets.chosen.id == chosen
        assert QApplication.focusWidget() is table
