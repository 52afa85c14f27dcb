"""Naming a vendor: known ones complete what is typed, and a name that may be a slip for one of them is asked about."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from PySide6.QtCore import QStringListModel, Qt, Signal
from PySide6.QtWidgets import QCompleter, QLineEdit, QPushButton, QVBoxLayout, QWidget

from tracker.desk.vendors import vendor_meant
from tracker.window.field_steps import empty
from tracker.window.pieces import button, clear, column, row, words


class VendorNaming(QWidget):
    """A field and what it leads to. `named` carries the name: the known vendor's where only capitals, punctuation or
    the legal form differ from what was typed."""

    named = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._known: Sequence[str] = ()
        self._names = QStringListModel(self)
        self.field = QLineEdit()
        self.field.setAccessibleName("The vendor's name")
        self.field.setPlaceholderText("the vendor's name, then Enter")
        self.field.setMinimumWidth(200)
        completer = QCompleter(self._names, self.field)
        completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        completer.setFilterMode(Qt.MatchFlag.MatchContains)
        self.field.setCompleter(completer)
        self.take = button("Name it")
        self.take.setAccessibleName("Take this as the vendor's name")
        self._doubt = QVBoxLayout()
        self._doubt.setSpacing(4)
        self.setLayout(column(row(self.field, self.take, gap=6, grow=0), self._doubt, gap=6))
        self.field.returnPressed.connect(self._name)
        self.field.textEdited.connect(lambda: clear(self._doubt))
        self.take.clicked.connect(self._name)
        self.setFocusProxy(self.field)

    def know(self, vendors: Sequence[str]) -> None:
        """The vendors that a name may mean."""
        self._known = tuple(vendors)
        self._names.setStringList(list(vendors))

    def begin(self) -> None:
        """An empty field."""
        empty(self.field)
        clear(self._doubt)

    def _name(self) -> None:
        typed = self.field.text()
        if not typed.strip():
            return
        meant = vendor_meant(typed, self._known)
        if meant.close:
            self._ask(meant.name, meant.close)
        else:
            self.named.emit(meant.name)

    def _ask(self, name: str, close: Sequence[str]) -> None:
        """A known vendor is the likelier meaning, so it is offered first and has the keys."""
        clear(self._doubt)
        self._doubt.addWidget(words("New vendor? Did you mean", "quiet", wrap=True))
        offered = [self._choice(each, each) for each in close]
        for press in offered:
            self._doubt.addLayout(row(press, None))
        self._doubt.addLayout(row(self._choice(f"No, {name} is a new vendor", name), None))
        offered[0].setFocus()

    def _choice(self, label: str, name: str) -> QPushButton:
        press = button(label)
        press.clicked.connect(partial(self._choose, name))
        return press

    def _choose(self, name: str, _checked: bool = False) -> None:
        self.field.setText(name)
        clear(self._doubt)
        self.named.emit(name)
