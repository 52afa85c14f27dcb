"""Undo from inside a field: first what is typed there, then the step before it."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QPlainTextEdit, QWidget

from tracker.desk.edits import Edit
from tracker.window.field_steps import empty
from tracker.window.main_window import MainWindow
from tracker.window.undo import push

pytestmark = pytest.mark.gui
CONTROL = Qt.KeyboardModifier.ControlModifier


@pytest.mark.parametrize("kind", [QLineEdit, QPlainTextEdit])
def test_what_is_typed_is_taken_back_before_the_step(window: MainWindow, qtbot, kind: type[QWidget]) -> None:
    field = kind()
    window.go_samples()
    window.samples.layout().addWidget(field)
    field.show()
    field.setFocus()
    push(window.session, Edit("a level", (1,)), lambda: None)
    qtbot.keyClicks(field, "ab")
    qtbot.keyClick(field, Qt.Key.Key_Z, CONTROL)
    assert window.session.undo_stack.canUndo(), "the field had something of its own to take back"
    qtbot.keyClick(field, Qt.Key.Key_Z, CONTROL)
    assert not window.session.undo_stack.canUndo()


def test_text_that_was_taken_does_not_come_back_in_its_field(qtbot) -> None:
    field = QLineEdit()
    qtbot.addWidget(field)
    qtbot.keyClicks(field, "Tolmere")
    empty(field)
    field.undo()
    assert field.text() == ""
