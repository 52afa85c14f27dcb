"""The fields that samples are typed into: named, with an example, and what is wrong said in one place."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QLabel, QLineEdit, QVBoxLayout, QWidget

from tracker.window.pieces import column, restyle, row, words


def field(name: str, example: str, entered: Callable[[], None]) -> QLineEdit:
    """A line to type in; Enter does what the form does."""
    return named(QLineEdit(), name, example, entered)


def named(made: QLineEdit, name: str, example: str, entered: Callable[[], None]) -> QLineEdit:
    """The same for a line that can do more."""
    made.setAccessibleName(name)
    made.setPlaceholderText(example)
    made.returnPressed.connect(entered)
    return made


def labelled(made: QLineEdit, beside: QWidget | None = None) -> QVBoxLayout:
    """A field below its name, with a button that does what Enter does in it where there is one."""
    label = words(made.accessibleName(), "rail")
    label.setBuddy(made)
    return column(label, made if beside is None else row(made, beside, gap=8, grow=0), gap=3)


class Wrong:
    """One sentence about one field of a form, and the mark on that field."""

    def __init__(self) -> None:
        self.label: QLabel = words("", wrap=True)
        self.label.hide()
        self._marked: QLineEdit | None = None

    def say(self, why: str, marked: QLineEdit | None = None) -> None:
        """Shows the sentence and puts the cursor where it is to be mended; what was typed stays."""
        self.clear()
        self.label.setText(why)
        self.label.show()
        if marked is not None:
            self._mark(marked, "true")
            marked.setFocus()
            marked.selectAll()
            # Mended or undone, the sentence is no longer true of what stands there.
            marked.textChanged.connect(self.clear)
        self._marked = marked

    def clear(self) -> None:
        self.label.hide()
        if self._marked is not None:
            self._marked.textChanged.disconnect(self.clear)
            self._mark(self._marked, "false")
            self._marked = None

    def _mark(self, marked: QLineEdit, wrong: str) -> None:
        marked.setProperty("wrong", wrong)
        restyle(marked)
