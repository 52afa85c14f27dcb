"""Taking in a sheet: see it, answer its question, agree; nothing is stored before."""

from pathlib import Path
from types import SimpleNamespace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QPushButton

from tests.window.conftest import PATIENCE_MS, settle
from tests.window.fixtures.invented_door import InventedDoor
from tests.window.fixtures.invented_sheet import FILE
from tracker.desk.trouble import Trouble
from tracker.window.main_window import QUOTES, TAKE_IN, TODAY, MainWindow
from tracker.window.take_in.file_at_hand import FileAtHand

pytestmark = pytest.mark.gui


@pytest.fixture
def take_in(window: MainWindow, qtbot):
    window.take_in_files([Path(FILE)])
    settle(qtbot, window)
    assert window.stack.currentIndex() == TAKE_IN
    return window.take_in


def choose(qtbot, take_in, words: str) -> None:
    buttons = take_in.understood.questions.findChildren(QPushButton)
    button = next(each for each in buttons if each.accessibleName().startswith(words) or each.text().startswith(words))
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)


def test_an_answer_lets_the_held_offers_through_and_is_remembered(take_in, window, qtbot) -> None:
    assert not take_in.agree.isEnabled()
    assert "7 held by 1 question" in take_in.understood.summary.text()
    choose(qtbot, take_in, "Short ton")
    settle(qtbot, window)
    assert take_in.agree.text() == "Take in 7 offers"
    assert window.session.door.stored == []
    qtbot.mouseClick(take_in.agree, Qt.MouseButton.LeftButton)
    settle(qtbot, window)
    assert window.session.door.stored == [(FILE, 7, {"ton": "short"})]
    assert window.stack.currentIndex() == QUOTES
    assert "ook in 7 offers" in window.message.text


def test_an_answer_can_be_taken_back(take_in, window, qtbot) -> None:
    choose(qtbot, take_in, "Tonne")
    settle(qtbot, window)
    assert take_in.agree.isEnabled()
    window.steps.undo()
    settle(qtbot, window)
    assert not take_in.agree.isEnabled()
    qtbot.waitUntil(lambda: not QApplication.focusWidget()._too_soon)
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_1)
    settle(qtbot, window)
    assert take_in.agree.isEnabled(), "the question that is open again has the keys"
    window.steps.undo()
    settle(qtbot, window)
    window.steps.redo()
    settle(qtbot, window)
    choose(qtbot, take_in, "Change")
    settle(qtbot, window)
    assert not take_in.agree.isEnabled()


def test_leaving_stores_nothing(take_in, window, qtbot) -> None:
    qtbot.mouseClick(take_in.leave, Qt.MouseButton.LeftButton)
    assert window.session.door.stored == []
    assert window.stack.currentIndex() == TODAY


def test_what_was_taken_in_can_be_undone_and_done_again(take_in, window, qtbot) -> None:
    choose(qtbot, take_in, "Short ton")
    settle(qtbot, window)
    take_in.agree.click()
    settle(qtbot, window)
    window.steps.undo()
    settle(qtbot, window)
    window.steps.redo()
    settle(qtbot, window)
    asked = [each for each in window.session.door.asked if each.startswith(("withdraw", "bring"))]
    assert asked == ["withdraw 1", "bring back 1"]


@pytest.mark.parametrize("done_with", ["stored and taken back", "left"])
def test_what_was_said_of_a_sheet_that_is_done_with_is_no_step_to_take_back(
    take_in, window, qtbot, done_with: str
) -> None:
    choose(qtbot, take_in, "Short ton")
    settle(qtbot, window)
    if done_with == "left":
        take_in.leave.click()
    else:
        take_in.agree.click()
        settle(qtbot, window)
        window.steps.undo()
    settle(qtbot, window)
    window.steps.undo()
    settle(qtbot, window)
    assert window.message.text == "There is nothing to undo."


def test_line_and_cell_find_each_other(take_in, qtbot) -> None:
    take_in.understood.table.setFocus()
    assert [each.row() for each in take_in.understood.table.selectionModel().selectedRows()] == [0]
    qtbot.keyClick(take_in.understood.table, Qt.Key.Key_Down)
    qtbot.keyClick(take_in.understood.table, Qt.Key.Key_Down)
    line = take_in.understood.table.currentIndex().row()
    cell = take_in.sheet.view.currentIndex()
    assert (cell.row(), cell.column()) == (5 + line, 3)
    take_in.sheet.view.pointed.emit(9, 3)
    assert take_in.understood.table.currentIndex().row() == 4


def test_the_sheet_is_shown_as_it_was_sent(take_in) -> None:
    model = take_in.sheet.view.model()
    assert model.index(0, 0).data() == "Tolmere Board — price list"
    assert model.index(12, 3).data() == "#REF!"
    assert model.headerData(3, Qt.Orientation.Horizontal) == "D"


def test_the_sheets_model_keeps_qts_promises(take_in, qtmodeltester) -> None:
    qtmodeltester.check(take_in.sheet.view.model())


def test_a_line_that_cant_be_used_says_what_to_do(take_in) -> None:
    take_in.understood.table.picked.emit(7)
    assert "ask the vendor" in take_in.understood.line.notes_text()


def test_several_files_are_taken_in_at_once(window, qtbot) -> None:
    window.take_in_files([Path("one.xlsx"), Path("two.xlsx")])
    settle(qtbot, window)
    take_in = window.take_in
    choose(qtbot, take_in, "Short ton")
    settle(qtbot, window)
    assert take_in.agree_all.isHidden()
    take_in._choose.setCurrentIndex(1)
    choose(qtbot, take_in, "Tonne")
    settle(qtbot, window)
    assert take_in.agree_all.text() == "Take in all 2 files (14 offers)"
    take_in.agree_all.click()
    settle(qtbot, window)
    assert [given for _, _, given in window.session.door.stored] == [{"ton": "short"}, {"ton": "metric"}]
    assert window.message.text == "Took in 14 offers from 2 files."
    window.steps.undo()
    settle(qtbot, window)
    assert [each for each in window.session.door.asked if each.startswith("withdraw")] == ["withdraw 1", "withdraw 1"]


class SlowDoor(InventedDoor):
    """Reads for as long as it is let."""

    def __init__(self) -> None:
        super().__init__(0)
        self.ended = []

    def read(self, path, stop=None, progress=None):
        self.ended.append(stop.wait(20))
        raise Trouble("stopped")


@pytest.mark.parametrize("how", ["leave", "close", "read another"])
def test_a_reading_ends_at_once(open_window, qtbot, how: str) -> None:
    door = SlowDoor()
    window = open_window(door)
    window.take_in_files([Path("long.xlsx"), Path("longer.xlsx")])
    qtbot.wait(30)
    assert window.take_in.leave.text() == "Stop reading"
    if how == "leave":
        window.take_in.leave.click()
    elif how == "close":
        window.close()
    else:
        window.take_in_files([Path("short.xlsx")])
        qtbot.waitUntil(lambda: len(door.ended) == 1, timeout=PATIENCE_MS)
        window.take_in.leave.click()
    qtbot.waitUntil(window.session.work.is_idle, timeout=PATIENCE_MS)
    assert all(door.ended)
    stopped = "Stopped reading short.xlsx; nothing of it was stored."
    said = {"leave": "Left 2 files without taking them in.", "close": "", "read another": stopped}
    assert window.message.text == said[how]


def test_a_long_sheet_is_not_walked_to_its_end_for_its_first_line() -> None:
    class Long(dict):
        """Cells whose end takes too long to come to."""

        def items(self):
            for (row, column), cell in super().items():
                assert row < 8, "walked on below the first filled row"
                yield (row, column), cell

    def told(*first: str) -> str:
        cells = {(2, at): SimpleNamespace(text=text) for at, text in enumerate(first)}
        grid = SimpleNamespace(cells=Long(cells | {(row, 0): SimpleNamespace(text="18 pt") for row in range(7, 99)}))
        reading = SimpleNamespace(letterhead=("Varnik 2", "Varnik"))
        taken = SimpleNamespace(sheets=SimpleNamespace(grids=(grid,)), reading=reading)
        return FileAtHand(Path("list.xlsx"), taken=taken).first_line

    assert told("  Tolmere   Board ", " ") == "Tolmere Board"
    assert told("Board", "Price") == "Varnik"
