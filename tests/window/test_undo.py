"""What can't be turned round is said, and never done by another key later."""

import threading

import pytest

from tests.window.conftest import settle
from tests.window.fixtures.invented_door import InventedDoor
from tracker.desk.edits import Edit
from tracker.desk.trouble import Trouble
from tracker.window.main_window import MainWindow
from tracker.window.undo import push

pytestmark = pytest.mark.gui


class Reluctant(InventedDoor):
    """Undoes nothing, and takes its time to say so."""

    def __init__(self) -> None:
        super().__init__(20)
        self.may_answer = threading.Event()

    def undo(self, edit: Edit) -> Edit:
        self.may_answer.wait(5)
        self.asked.append(f"undo {edit.text}")
        raise Trouble(f"“{edit.text}” can't be undone: it was changed again since then.")


@pytest.fixture
def window(open_window) -> MainWindow:
    return open_window(Reluctant())


def _push(window: MainWindow, text: str) -> None:
    push(window.session, Edit(text, (1,)), lambda: None)


def test_an_edit_that_a_newer_one_replaced_meanwhile_still_says_why_it_stays(window: MainWindow, qtbot) -> None:
    """The stack deletes what can no longer be done again, also while the desk is at work on it."""
    _push(window, "a level")
    window.steps.undo()
    _push(window, "a rate")
    window.session.door.may_answer.set()
    settle(qtbot, window)
    assert window.message.text == "“a level” can't be undone: it was changed again since then."
    assert window.session.undo_stack.undoText() == "a rate"


def test_doing_again_what_could_not_be_undone_does_nothing(window: MainWindow, qtbot) -> None:
    _push(window, "a level")
    window.session.door.may_answer.set()
    window.steps.undo()
    settle(qtbot, window)
    window.steps.redo()
    settle(qtbot, window)
    assert window.session.door.asked.count("undo a level") == 1
    assert window.session.undo_stack.count() == 0
