"""Ctrl+Z in a field takes back what is being typed there; where nothing is, the last step, as everywhere else."""

from PySide6.QtCore import QEvent, QObject
from PySide6.QtGui import QKeyEvent, QKeySequence
from PySide6.QtWidgets import QApplication, QLineEdit, QPlainTextEdit, QWidget


def empty(*fields: QLineEdit) -> None:
    """Empties fields whose text was taken, or is about something else by now: no key brings it back.

    Qt's own clear() can be undone in the field, so that Ctrl+Z after a request was logged would write it there once
    more in place of taking the request back.
    """
    for field in fields:
        field.setText("")


class FieldSteps(QObject):
    """Hands the keys of undo and redo on from whichever field has the focus once it has nothing to do with them; Qt's
    fields keep them for themselves."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        application = QApplication.instance()
        assert isinstance(application, QApplication)
        application.focusChanged.connect(self._watch)

    def _watch(self, _before: QWidget | None, now: QWidget | None) -> None:
        if isinstance(now, QLineEdit | QPlainTextEdit):
            now.installEventFilter(self)

    # Qt's own names from here on

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.ShortcutOverride and isinstance(event, QKeyEvent) and _is_idle(watched, event):
            event.ignore()
            return True
        return super().eventFilter(watched, event)


def _is_idle(field: QObject, keys: QKeyEvent) -> bool:
    """Whether these keys undo or redo, and this field has nothing to undo or redo."""
    if isinstance(field, QLineEdit):
        undo, redo = field.isUndoAvailable(), field.isRedoAvailable()
    elif isinstance(field, QPlainTextEdit):
        undo, redo = field.document().isUndoAvailable(), field.document().isRedoAvailable()
    else:
        return False
    standard = QKeySequence.StandardKey
    return (keys.matches(standard.Undo) and not undo) or (keys.matches(standard.Redo) and not redo)
