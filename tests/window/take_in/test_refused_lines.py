"""Lines that can't be used: why stands in full above the list, and a press goes to each of them."""

from pathlib import Path

import pytest
from openpyxl import Workbook
from PySide6.QtCore import Qt

from tests.window.conftest import settle
from tracker.window.main_window import MainWindow

pytestmark = pytest.mark.gui


@pytest.fixture
def window(real_window: MainWindow, qtbot, tmp_path: Path) -> MainWindow:
    book = Workbook()
    sheet = book.active
    sheet.append(["Ostrel Karton Ltd"])
    sheet.append(["Board", "Grade", "Caliper (pt)", "Basis weight (g/m²)", "Price USD/t"])
    for number in range(30):
        price = {7: "=E4*1.035", 21: 0}.get(number, 1200 + number)
        sheet.append([f"Fenlight {number}", "SBS", 16, 300, price])
    path = tmp_path / "ostrel.xlsx"
    book.save(path)
    real_window.take_in_files([path])
    settle(qtbot, real_window)
    return real_window


def test_why_is_said_in_full_and_each_line_gone_to(window: MainWindow, qtbot) -> None:
    understood = window.take_in.understood
    told = understood.refused.told.text()
    assert told.startswith("✕ E10 can't be used: The formula =E4*1.035 was never calculated")
    assert told.endswith("And 1 more line can't be used.")
    understood.refused.show_next.setFocus()
    cells = []
    for _ in range(3):
        qtbot.keyClick(understood.refused.show_next, Qt.Key.Key_Return)
        index = window.take_in.sheet.view.currentIndex()
        cells.append((index.row() + 1, index.column()))
        understood.refused.show_next.setFocus()
    assert cells == [(10, 4), (24, 4), (10, 4)]


def test_lines_left_out_by_choice_are_none_of_them(window: MainWindow, qtbot, tmp_path: Path) -> None:
    path = tmp_path / "held.csv"
    path.write_text(
        "Ostrel Karton Ltd,,,,\n\nBoard,Grade,Caliper (pt),Basis weight (g/m²),Price USD/t\n"
        "Fenlight,Tessel,16,300,1216\nDusk,SBS,16,300,1216\n",
        encoding="utf-8",
    )
    window.take_in_files([path])
    settle(qtbot, window)
    (question,) = window.take_in.at_hand.found.asked
    window.take_in.understood.questions.answered.emit(question.key, "leave-out")
    settle(qtbot, window)
    assert window.take_in.at_hand.found.left_out == 1
    assert not window.take_in.understood.refused.isVisible()
