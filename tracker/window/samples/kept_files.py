"""The files kept with one sample: photographs to look at, data sheets to save a copy of."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtGui import QIcon, QImage, QPixmap
from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

from tracker.window.pieces import button, clear, column, follow_by_tab, row, words
from tracker.window.samples.photographs import LARGE, SMALL, Photograph, decoded
from tracker.window.session import Session

if TYPE_CHECKING:
    from tracker.desk.attachments import Attachment


class KeptFiles(QWidget):
    """`taken_off` carries the number and the file's name, `saved` the file's id and name."""

    taken_off = Signal(object, str)
    saved = Signal(object, str)

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._tickets: list[int] = []
        self._rows = QVBoxLayout()
        self._rows.setSpacing(4)
        self.looks: dict[str, QPushButton] = {}
        self.setLayout(column(self._rows))

    def show_files(self, files: Sequence[Attachment]) -> None:
        """Shows each by its name; what turns out to be a photograph gets a small picture."""
        for ticket in self._tickets:
            self._session.work.drop(ticket)
        self._tickets = []
        self.looks = {}
        clear(self._rows)
        if not files:
            self._rows.addWidget(words("None yet.", "quiet"))
        follow_by_tab(self, *(made for each in files for made in self._add(each)))

    def _add(self, kept: Attachment) -> tuple[QPushButton, ...]:
        look = button("", "word")
        look.setAccessibleName(f"Look at {kept.name}")
        look.setToolTip("Look at the photograph")
        look.setIconSize(SMALL)
        look.hide()
        look.clicked.connect(lambda: self._look_at(kept))
        save, off = button("Save a copy…", "word"), button("Take off", "word")
        save.clicked.connect(lambda: self.saved.emit(kept.id, kept.name))
        off.clicked.connect(lambda: self.taken_off.emit(kept.sample, kept.name))
        name = words(kept.name, wrap=True)
        name.setToolTip(f"{kept.size / 1024:,.0f} kB, kept by {kept.added_by}")
        self.looks[kept.name] = look
        self._rows.addLayout(row(look, column(name, row(save, off, None)), gap=8, grow=1))
        door = self._session.door
        self._tickets.append(
            self._session.work.ask(
                lambda: decoded(door.attachment(kept.id), SMALL * 2), lambda image: _show_small(look, image)
            )
        )
        return look, save, off

    def _look_at(self, kept: Attachment) -> None:
        door = self._session.door
        self._session.work.ask(
            lambda: decoded(door.attachment(kept.id), LARGE), lambda image: self._show_large(kept.name, image)
        )

    def _show_large(self, name: str, image: QImage) -> None:
        Photograph(name, image, self).open()


def _show_small(look: QPushButton, image: QImage) -> None:
    if not image.isNull():
        look.setIcon(QIcon(QPixmap.fromImage(image)))
        look.show()
