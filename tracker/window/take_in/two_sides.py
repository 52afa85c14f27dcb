"""The sheet beside what was understood of it: how the width is shared."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QSplitter

from tracker.window.take_in.sheet_panel import SheetPanel
from tracker.window.take_in.understood import Understood

_SHEET_WIDTH, _SHEET_SHARE, _MARKING_SHARE, _MOST_FOR_SHEET = 350, 0.28, 0.4, 0.55


class TwoSides(QSplitter):
    """The sheet takes the width its columns need where the offers leave it. In a narrow window it gives way first: it
    can be scrolled, words cut short can't be read. While a table is marked by hand more of it is in view."""

    def __init__(self, sheet: SheetPanel, understood: Understood) -> None:
        super().__init__(Qt.Orientation.Horizontal)
        self._sheet = sheet
        self._understood = understood
        self._shared_for: tuple[Any, bool, int] = (None, False, 0)
        self.addWidget(sheet)
        self.addWidget(understood)
        self.setHandleWidth(20)
        self.setChildrenCollapsible(False)
        self.setStretchFactor(1, 1)

    def look_again(self) -> None:
        """Another sheet may be shown, marking begun or ended, a column's name need more room; else the widths stay as
        the user drew them."""
        if self._shared_for != self._at_hand():
            self._share(self.width())

    def _at_hand(self) -> tuple[Any, bool, int]:
        marking = not self._sheet.strip.isHidden()
        return self._sheet.grid, marking, self._sheet.wanted_width if marking else 0

    def _share(self, wide: int) -> None:
        self._shared_for = self._at_hand()
        sheet = self._for_marking(wide) if self._shared_for[1] else self._for_reading(wide)
        self.setSizes([sheet, wide - sheet])
        self._sheet.view.show_prices()

    def _for_marking(self, wide: int) -> int:
        return max(int(_MARKING_SHARE * wide), self._for_reading(wide))

    def _for_reading(self, wide: int) -> int:
        least = min(_SHEET_WIDTH, int(_SHEET_SHARE * wide))
        most = min(wide - self.handleWidth() - self._understood.wanted_width, int(_MOST_FOR_SHEET * wide))
        return max(least, min(self._sheet.wanted_width, most))

    # Qt's own names from here on

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        wide = event.size().width()
        if event.oldSize().width() != wide:
            self._share(wide)
