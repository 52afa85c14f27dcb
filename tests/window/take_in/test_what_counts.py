"""What is at hand says what the database holds: after an undo, after doing it again, after a withdrawal elsewhere."""

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from tests.window.conftest import settle
from tracker.window.main_window import MainWindow

pytestmark = pytest.mark.gui

_HEAD = "Vendor,Grade,Caliper (pt),Basis weight (g/m²),Price USD,Unit\n"
_FINE = f"{_HEAD}Vexholm Papir,SBS,16,300,1200,tonne\n"
_HELD = f"{_HEAD}Vexholm Papir,Fenlight,16,300,1300,tonne\n"
_CTRL, _SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier


@pytest.fixture
def batch(real_window: MainWindow, qtbot, tmp_path: Path) -> MainWindow:
    """Two files that are ready and one whose only line is held by a question."""
    paths = []
    for number, text in enumerate((_FINE, _FINE.replace("1200", "1250"), _HELD)):
        path = tmp_path / f"list {number}.csv"
        path.write_text(text, encoding="utf-8")
        paths.append(path)
    real_window.take_in_files(paths)
    settle(qtbot, real_window)
    return real_window


def _press(window: MainWindow, qtbot, key: Qt.Key, keys: Qt.KeyboardModifier) -> None:
    qtbot.keyClick(QApplication.focusWidget(), key, keys)
    settle(qtbot, window)


def test_after_an_undo_the_files_can_be_taken_in_again(batch: MainWindow, qtbot) -> None:
    take_in = batch.take_in
    _press(batch, qtbot, Qt.Key.Key_Return, _CTRL | _SHIFT)
    assert take_in.at_hand.path.name == "list 2.csv"
    assert batch.message.text == "Took in 2 offers from 2 files. 1 line waits for answers."
    _press(batch, qtbot, Qt.Key.Key_Z, _CTRL)
    assert take_in._choose.itemText(0) == "list 0.csv: 1 offer"
    assert take_in.agree_all.text() == "Take in all 2 files (2 offers)"
    take_in._choose.setCurrentIndex(0)
    assert take_in.understood.summary.text() == "1 offer understood."
    assert take_in.agree.text() == "Take in 1 offer"
    _press(batch, qtbot, Qt.Key.Key_Z, _CTRL | _SHIFT)
    assert take_in._choose.itemText(0) == "list 0.csv: taken in"
    assert "was taken in on" in take_in.understood.summary.text()
    assert not take_in.agree_all.isVisible()
    _press(batch, qtbot, Qt.Key.Key_Z, _CTRL)
    take_in.agree_all.click()
    settle(qtbot, batch)
    assert [file.withdrawn for file in batch.session.door.files()] == [False, False]


def test_a_file_withdrawn_in_sheets_can_be_taken_in_again(batch: MainWindow, qtbot) -> None:
    _press(batch, qtbot, Qt.Key.Key_Return, _CTRL)
    batch.go_sheets()
    settle(qtbot, batch)
    batch.sheets.table.selectRow(0)
    _press(batch, qtbot, Qt.Key.Key_Delete, Qt.KeyboardModifier.NoModifier)
    batch.at_hand.back_to_sheet()
    assert batch.take_in._choose.itemText(0) == "list 0.csv: 1 offer"


def test_doing_again_says_so_and_can_be_undone(batch: MainWindow, qtbot) -> None:
    _press(batch, qtbot, Qt.Key.Key_Return, _CTRL | _SHIFT)
    _press(batch, qtbot, Qt.Key.Key_Z, _CTRL)
    assert batch.message.text == "Undone: took in 2 offers from 2 files"
    _press(batch, qtbot, Qt.Key.Key_Z, _CTRL | _SHIFT)
    assert batch.message.text == "Done again: took in 2 offers from 2 files"
    assert batch.message._action.text() == "Undo"
    batch.message._action.click()
    settle(qtbot, batch)
    assert batch.message.text == "Undone: took in 2 offers from 2 files"
    batch.message._action.click()
    settle(qtbot, batch)
    assert batch.message.text == "Done again: took in 2 offers from 2 files"


def test_forgetting_ones_answers_is_undone_in_the_same_words(batch: MainWindow, qtbot) -> None:
    take_in = batch.take_in
    take_in._choose.setCurrentIndex(2)
    take_in.understood.questions.answered.emit("grade:fenlight", "SBS")
    settle(qtbot, batch)
    take_in.foot.start_over.click()
    settle(qtbot, batch)
    _press(batch, qtbot, Qt.Key.Key_Z, _CTRL)
    assert batch.message.text == "Undone: forgot your answers about list 2.csv"
