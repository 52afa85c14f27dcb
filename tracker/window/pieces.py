"""Small parts that every place is made of: words, lines, panels, pills."""

from collections.abc import Sequence
from functools import partial
from itertools import pairwise
from typing import TypeVar

from PySide6.QtCore import QSize, Qt, QTimer
from PySide6.QtGui import QFont, QFontMetrics, QKeyEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QButtonGroup,
    QFrame,
    QHBoxLayout,
    QLabel,
    QLayout,
    QPushButton,
    QScrollArea,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

_Part = QWidget | QLayout | int | None
_Margins = int | tuple[int, int, int, int]
_Box = TypeVar("_Box", bound=QBoxLayout)
_GAP_AFTER_CHOICE = 16
"""As the style sheet has it."""


def words(text: str, kind: str = "", *, wrap: bool = False, selectable: bool = False) -> QLabel:
    """A label. `kind` is one of the style sheet's: quiet, small, title, heading, rail."""
    label = QLabel(text)
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setWordWrap(wrap)
    if kind:
        label.setProperty("kind", kind)
    if selectable:
        label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
    return label


def hairline() -> QFrame:
    line = QFrame()
    line.setProperty("kind", "line")
    return line


def column(*parts: _Part, margins: _Margins = 0, gap: int = 0, grow: int = -1) -> QVBoxLayout:
    """Parts below each other; a number is a gap, None takes what room is left, `grow` is the part that does."""
    layout = QVBoxLayout()
    return _fill(layout, parts, margins, gap, grow)


def row(*parts: _Part, margins: _Margins = 0, gap: int = 0, grow: int = -1) -> QHBoxLayout:
    """Parts side by side; a number is a gap, None takes what room is left, `grow` is the part that does."""
    layout = QHBoxLayout()
    return _fill(layout, parts, margins, gap, grow)


def _fill(layout: _Box, parts: Sequence[_Part], margins: _Margins, gap: int, grow: int) -> _Box:
    around = (margins,) * 4 if isinstance(margins, int) else margins
    layout.setContentsMargins(*around)
    layout.setSpacing(gap)
    for part in parts:
        if part is None:
            layout.addStretch(1)
        elif isinstance(part, int):
            layout.addSpacing(part)
        elif isinstance(part, QLayout):
            layout.addLayout(part)
        else:
            layout.addWidget(part)
    if grow >= 0:
        layout.setStretch(grow, 1)
    return layout


def holder(layout: QLayout, kind: str = "") -> QWidget:
    """A plain widget around a layout."""
    widget = QWidget()
    if kind:
        widget.setProperty("kind", kind)
        widget.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
    widget.setLayout(layout)
    return widget


def scrolled(inside: QWidget, *, sideways: bool = False) -> QScrollArea:
    """A widget that is scrolled where it has no room, on the ground of what is round it; `sideways` too."""
    scroll = QScrollArea()
    scroll.setWidgetResizable(True)
    scroll.setFrameShape(QFrame.Shape.NoFrame)
    if not sideways:
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    scroll.setWidget(inside)
    scroll.viewport().setAutoFillBackground(False)
    inside.setAutoFillBackground(False)
    return scroll


def bring_in_view(told: QWidget) -> None:
    """Scrolls to what is told now, once it has its place; nothing where it stands in nothing that scrolls."""
    around = told.parentWidget()
    while around is not None and not isinstance(around, QScrollArea):
        around = around.parentWidget()
    if isinstance(around, QScrollArea):
        QTimer.singleShot(0, told, partial(around.ensureWidgetVisible, told))


def panel(layout: QLayout) -> QFrame:
    """A raised sheet with a hairline round it."""
    frame = QFrame()
    frame.setProperty("kind", "panel")
    frame.setLayout(layout)
    return frame


class _Button(QPushButton):
    """A button that Enter presses as Space does, once one stands on it."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        plain = event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier == Qt.KeyboardModifier.NoModifier
        if plain and event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            # Held down it would press whatever has the focus next.
            if not event.isAutoRepeat():
                self.click()
        else:
            super().keyPressEvent(event)


def button(text: str, kind: str = "") -> QPushButton:
    """A button that says what happens. kind: '' plain, 'main' the one to press, 'word' without an outline,
    'cell' a cell's address in small letters."""
    # Qt reads & as the mark of a key: a vendor's name must keep its own.
    made = _Button(text.replace("&", "&&"))
    made.setAutoDefault(False)
    if kind:
        made.setProperty("kind", kind)
    made.setCursor(Qt.CursorShape.PointingHandCursor)
    return made


class _Choice(QToolButton):
    """A word with room for itself in bold, which it is once it is chosen: Qt measures it as it stands."""

    def sizeHint(self) -> QSize:
        hint = super().sizeHint()
        bold = QFont(self.font())
        bold.setWeight(QFont.Weight.DemiBold)
        chosen = QFontMetrics(bold).horizontalAdvance(self.text()) + _GAP_AFTER_CHOICE + 2
        return QSize(max(hint.width(), chosen), hint.height())


def one_of(titles: Sequence[str], parent: QWidget) -> tuple[QButtonGroup, QHBoxLayout]:
    """Words side by side of which one holds; the group's ids are their places."""
    group = QButtonGroup(parent)
    layout = row()
    for place, title in enumerate(titles):
        choice = _Choice()
        choice.setText(title)
        choice.setCheckable(True)
        choice.setProperty("kind", "one-of")
        choice.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        group.addButton(choice, place)
        layout.addWidget(choice)
    group.button(0).setChecked(True)
    return group, layout


def follow_by_tab(first: QWidget, *then: QWidget) -> None:
    """Tab goes from one to the next; what is made anew would else come after all that was there before."""
    for before, after in pairwise((first, *then)):
        QWidget.setTabOrder(before, after)


def restyle(widget: QWidget) -> None:
    """Makes the style sheet look again at a widget whose properties changed."""
    widget.style().unpolish(widget)
    widget.style().polish(widget)


def clear(layout: QLayout) -> None:
    """Takes everything out of a layout."""
    while (item := layout.takeAt(0)) is not None:
        if (inner := item.layout()) is not None:
            clear(inner)
        if (widget := item.widget()) is not None:
            widget.hide()
            widget.deleteLater()
