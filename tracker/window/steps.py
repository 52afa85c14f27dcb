"""One step back and one step forward, told in words."""

from PySide6.QtCore import QObject, Slot
from PySide6.QtGui import QUndoStack

from tracker.window.message_bar import MessageBar


class Steps(QObject):
    """Undoes and does again what the stack holds, and says what it was."""

    def __init__(self, stack: QUndoStack, message: MessageBar, parent: QObject) -> None:
        super().__init__(parent)
        self._stack = stack
        self._message = message

    @Slot()
    def undo(self) -> None:
        stack = self._stack
        if not stack.canUndo():
            self._message.say("There is nothing to undo.")
            return
        text = stack.undoText()
        stack.undo()
        self._message.say(f"Undone: {text}", "Do again", stack.redo)

    @Slot()
    def redo(self) -> None:
        stack = self._stack
        if stack.canRedo():
            stack.redo()
        else:
            self._message.say("There is nothing to do again.")
