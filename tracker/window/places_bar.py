"""The bar at the top: the places as words, and the two things done most."""

from collections.abc import Sequence

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QButtonGroup, QToolButton, QWidget

from tracker.window.pieces import button, row, words

_PATIENCE_MS = 400
_WIDEST_NAME = 220
"""Of the sheet that waits, in pixels: a longer name is cut in its middle, as its ends tell most."""
_FEWEST_LETTERS = 5
"""Fewer tell nothing of a name; its hint tells it whole."""


class PlacesBar(QWidget):
    """Says where one is and goes elsewhere. `chosen` carries the place's number."""

    chosen = Signal(int)

    def __init__(self, titles: Sequence[str], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("places")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._group = QButtonGroup(self)
        layout = row(margins=(8, 0, 16, 0), gap=0)
        for place, title in enumerate(titles):
            tab = QToolButton()
            tab.setText(title)
            tab.setCheckable(True)
            tab.setProperty("kind", "tab")
            tab.setCursor(Qt.CursorShape.PointingHandCursor)
            tab.setAccessibleName(f"Go to {title}")
            tab.setToolTip(f"Ctrl+{place + 1}")
            tab.setFocusPolicy(Qt.FocusPolicy.TabFocus)
            self._group.addButton(tab, place)
            layout.addWidget(tab)
        self.take_in = button("Take in a sheet…", "word")
        self.take_in.setToolTip("Ctrl+O, or drop files on the window")
        self.log_sample = button("Log a sample…", "word")
        self.log_sample.setToolTip("Ctrl+N")
        self.do = button("All commands", "word")
        self.do.setToolTip("Ctrl+K: everything that can be done, found by its words")
        self.back = button("Back to the sheet", "word")
        self.back.setAccessibleName("Back to the sheet that is not settled yet")
        self.back.hide()
        self._waiting = ""
        self._busy = words("working…", "quiet")
        self._busy.hide()
        self._patience = QTimer(self)
        self._patience.setSingleShot(True)
        self._patience.setInterval(_PATIENCE_MS)
        self._patience.timeout.connect(self._tell_busy)
        layout.addStretch(1)
        layout.addWidget(self._busy)
        layout.addSpacing(12)
        for part in (self.back, self.take_in, self.log_sample, self.do):
            layout.addWidget(part)
        self.setLayout(layout)
        self.setFixedHeight(48)
        self._group.idClicked.connect(self.chosen)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._name_back()

    def lead_back_to(self, file: str) -> None:
        """Offers the way back to a sheet that is not settled yet; '' where none waits."""
        self._waiting = file
        self.back.setToolTip(f"{file} is not settled yet. Ctrl+6")
        self.back.setVisible(bool(file))
        self._name_back()

    def _name_back(self) -> None:
        """Names the sheet as far as there is room, so that no other word of the bar is cut for it."""
        self.back.setText("Back to ")
        room = min(_WIDEST_NAME, max(0, self.width() - self.sizeHint().width()))
        name = self.back.fontMetrics().elidedText(self._waiting, Qt.TextElideMode.ElideMiddle, room)
        self.back.setText(f"Back to {name}" if len(name) > _FEWEST_LETTERS else "Back")

    def show_busy(self, busy: bool) -> None:
        """Says that something is under way, once it takes long enough to be noticed."""
        if busy:
            self._patience.start()
        else:
            self._patience.stop()
            self._busy.hide()
            self._name_back()

    def _tell_busy(self) -> None:
        self._busy.show()
        self._name_back()

    def stand_at(self, place: int) -> None:
        """Marks where the user is; -1 for a page that is none of the places."""
        self._group.setExclusive(place >= 0)
        for tab in self._group.buttons():
            tab.setChecked(self._group.id(tab) == place)
