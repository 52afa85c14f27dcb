"""The sheet beside what was understood of it: how the width is shared."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QSplitter

from tracker.window.take_in.sheet_panel import SheetPanel
from tracker.window.take_in.understood import Understood

_SHEET_WIDTH, _SHEET_SHARE, _MARKING_SHARE = 350, 0.28, 0.4


class TwoSides(QSplitter):
    """In a narrow window the sheet gives way first: it can be scrolled, words cut short can't be read. While a table is
    marked by hand more of it is in view."""

    def __init__(self, sheet: SheetPanel, understood: Understood) -> None:
        super().__init__(Qt.Orientation.Horizontal)
        self._sheet = sheet
        self._for_marking = False
        self.addWidget(sheet)
        self.addWidget(understood)
        self.setHandleWidth(20)
        self.setChildrenCollapsible(False)
        self.setStretchFactor(1, 1)

    def look_again(self) -> None:
        """Marking may have begun or ended; where it did not, the widths stay as the user drew them."""
        if self._for_marking == self._sheet.strip.isHidden():
            self._share(self.width())

    def _share(self, wide: int) -> None:
        self._for_marking = not self._sheet.strip.isHidden()
        sheet = int(_MARKING_SHARE * wide) if self._for_marking else min(_SHEET_WIDTH, int(_SHEET_SHARE * wide))
        self.setSizes([sheet, wide - sheet])

    # Qt's own names from here on

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        wide = event.size().width()
        if event.oldSize().width() != wide:
            self._share(wide)
