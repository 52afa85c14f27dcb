"""Several files at once: left in one step that can be taken back, and the chooser names each in full."""

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QFontMetrics
from PySide6.QtWidgets import QApplication

from tests.window.conftest import settle
from tracker.desk.edits import history
from tracker.window.main_window import MainWindow

pytestmark = pytest.mark.gui

_SHEET = "Vendor,Grade,Caliper (pt),Basis weight (g/m²),Price USD,Unit\nVexholm Papir,SBS,16,300,{},tonne\n"


@pytest.fixture
def three(real_window: MainWindow, qtbot, tmp_path: Path) -> MainWindow:
    """A window with three files of one offer each being taken in."""
    paths = []
    for number in range(3):
        path = tmp_path / f"a rather long name of a price list, number {number}.csv"
        path.write_text(_SHEET.format(1200 + number), encoding="utf-8")
        paths.append(path)
    real_window.take_in_files(paths)
    settle(qtbot, real_window)
    return real_window


def test_leaving_several_files_says_how_many_and_can_be_undone(three: MainWindow, qtbot) -> None:
    take_in = three.take_in
    assert take_in.leave.text() == "Cancel all 3 files"
    take_in.leave.click()
    settle(qtbot, three)
    assert three.stack.currentWidget() is not take_in
    assert three.message.text == "Left 3 files without taking them in."
    three.steps.undo()
    settle(qtbot, three)
    assert three.stack.currentWidget() is take_in
    assert take_in.agree_all.text() == "Take in all 3 files (3 offers)"
    three.steps.redo()
    settle(qtbot, three)
    assert three.stack.currentWidget() is not take_in


def test_the_chooser_is_wide_enough_for_what_it_says_of_a_file(three: MainWindow) -> None:
    choose = three.take_in._choose
    assert choose.width() >= QFontMetrics(choose.font()).horizontalAdvance(choose.currentText())


def test_keys_turn_to_the_next_file_and_to_what_it_asks(three: MainWindow, qtbot, tmp_path: Path) -> None:
    take_in, control = three.take_in, Qt.KeyboardModifier.ControlModifier
    second = take_in._files[1].path
    second.write_text(second.read_text(encoding="utf-8").replace(",SBS,", ",Fenlight,"), encoding="utf-8")
    three.take_in_files([each.path for each in take_in._files])
    settle(qtbot, three)
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_PageDown, control)
    assert take_in.at_hand.path == second
    assert QApplication.focusWidget().question.key == "grade:fenlight"
    for _ in range(2):
        qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_PageUp, control)
    assert take_in.at_hand is take_in._files[0], "before the first there is none"
    assert QApplication.focusWidget() is take_in.understood.table


def test_one_file_is_left_without_a_word(three: MainWindow, qtbot) -> None:
    three.take_in.agree.click()
    settle(qtbot, three)
    three.take_in.agree.click()
    settle(qtbot, three)
    assert three.take_in.leave.text() == "Cancel"
    three.take_in.leave.click()
    settle(qtbot, three)
    assert not three.session.undo_stack.undoText().startswith("left")


def test_a_question_is_set_aside_in_a_sentence_with_one_end(three: MainWindow) -> None:
    three.session.said.emit("set aside: Which one holds?")
    assert three.message.text == "Set aside: Which one holds?"


def test_what_is_stored_stands_in_quotes_while_other_files_still_wait(three: MainWindow, qtbot) -> None:
    three.take_in.agree.click()
    settle(qtbot, three)
    assert three.stack.currentWidget() is three.take_in
    three.go_quotes()
    settle(qtbot, three)
    assert three.quotes.model.rowCount() == 1


def test_one_undo_takes_all_of_them_back_or_none(three: MainWindow, qtbot) -> None:
    door = three.session.door
    both = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Return, both)
    settle(qtbot, three)
    three.steps.undo()
    settle(qtbot, three)
    assert [each.withdrawn for each in door.files()] == [True] * 3
    assert [each.text for each in history(door.desk, 3)] == ["withdrew 3 files"] * 3
    three.steps.redo()
    settle(qtbot, three)
    assert [each.withdrawn for each in door.files()] == [False] * 3
