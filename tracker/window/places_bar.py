"""The bar at the top: the places as words, and the two things done most."""

from collections.abc import Sequence

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import QButtonGroup, QToolButton, QWidget

from tracker.window.pieces import button, row, words

_PATIENCE_MS = 400
_LONGEST_NAME = 28


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
        self._busy = words("working…", "quiet")
        self._busy.hide()
        self._patience = QTimer(self)
        self._patience.setSingleShot(True)
        self._patience.setInterval(_PATIENCE_MS)
        self._patience.timeout.connect(self._busy.show)
        layout.addStretch(1)
        layout.addWidget(self._busy)
        layout.addSpacing(12)
        for part in (self.back, self.take_in, self.log_sample, self.do):
            layout.addWidget(part)
        self.setLayout(layout)
        self.setFixedHeight(48)
        self._group.idClicked.connect(self.chosen)

    def lead_back_to(self, file: str) -> None:
        """Offers the way back to a sheet that is not settled yet; '' where none waits."""
        name = file if len(file) <= _LONGEST_NAME else f"{file[: _LONGEST_NAME - 1]}…"
        self.back.setText(f"Back to {name}")
        self.back.setToolTip(f"{file} is not settled yet. Ctrl+6")
        self.back.setVisible(bool(file))

    def show_busy(self, busy: bool) -> None:
        """Says that something is under way, once it takes long enough to be noticed."""
        if busy:
            self._patience.start()
        else:
            self._patience.stop()
            self._busy.hide()

    def stand_at(self, place: int) -> None:
        """Marks where the user is; -1 for a page that is none of the places."""
        self._group.setExclusive(place >= 0)
        for tab in self._group.buttons():
            tab.setChecked(self._group.id(tab) == place)
