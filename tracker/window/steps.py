"""Each step told in words as it is taken, one step back and one step forward."""

from PySide6.QtCore import QObject, Slot
from PySide6.QtGui import QUndoStack

from tracker.window.field_steps import FieldSteps
from tracker.window.message_bar import MessageBar


class Steps(QObject):
    """Says what was done, undoes and does again what the stack holds, and says what that was."""

    def __init__(self, stack: QUndoStack, message: MessageBar, parent: QObject) -> None:
        super().__init__(parent)
        self._stack = stack
        self._message = message
        FieldSteps(self)

    @Slot(str)
    def say_done(self, text: str) -> None:
        """Says what was done; where it begins with the step that undo would take back, with a way to do so."""
        step = self._stack.undoText()
        can_undo = self._stack.canUndo() and (text == step or text.startswith(f"{step}. "))
        end = "" if text.endswith(("?", ".")) else "."
        sentence = f"{text[:1].upper()}{text[1:]}{end}"
        self._message.say(sentence, "Undo" if can_undo else "", self.undo if can_undo else None)

    @Slot()
    def undo(self) -> None:
        stack = self._stack
        self._drop_spent()
        if not stack.canUndo():
            self._message.say("There is nothing to undo.")
            return
        text = stack.undoText()
        stack.undo()
        self._message.say(f"Undone: {text}", "Do again", self.redo)

    def _drop_spent(self) -> None:
        """Lets go of the latest steps as far as they are spent: whoever undoes one looks for what it changed."""
        stack = self._stack
        while stack.canUndo() and getattr(latest := stack.command(stack.index() - 1), "spent", False):
            latest.setObsolete(True)
            stack.undo()

    @Slot()
    def redo(self) -> None:
        stack = self._stack
        if not stack.canRedo():
            self._message.say("There is nothing to do again.")
            return
        text = stack.redoText()
        stack.redo()
        self._message.say(f"Done again: {text}", "Undo", self.undo)
