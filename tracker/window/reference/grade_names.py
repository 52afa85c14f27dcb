"""A grade by glyph, letters and name in a list, and its cross-section, large."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import (
    QFrame,
    QListWidget,
    QListWidgetItem,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from tracker.trade.grades import grades
from tracker.window.look.plies import draw_plies, plies_of
from tracker.window.look.theme import Theme

_STUFF_WORDS = {
    "coat": "pigment coat", "bleached": "bleached chemical pulp", "kraft": "unbleached kraft",
    "grey": "recovered fibre", "mechanical": "mechanical pulp",
}  # fmt: skip


class Section(QWidget):
    """A grade's cross-section, large, its plies named."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._grade = ""
        self.setFixedHeight(150)
        self.setMinimumWidth(420)

    def show_grade(self, grade: str) -> None:
        self._grade = grade
        plies = ", ".join(_STUFF_WORDS[stuff.value] for stuff, _ in plies_of(grade))
        self.setAccessibleName(f"Cross-section of {grade}, print side first: {plies}")
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        board = QRectF(2, 8, 200, 132)
        draw_plies(painter, self._grade, board)
        painter.setPen(QColor(self._theme.palette.quiet))
        top = board.top()
        said = ""
        for stuff, share in plies_of(self._grade):
            height = board.height() * share
            name = _STUFF_WORDS[stuff.value]
            if name != said:
                painter.drawText(
                    QRectF(board.right() + 14, top, 300, max(height, 16)), Qt.AlignmentFlag.AlignVCenter, name
                )
            said = name
            top += height


class GradeNames(QListWidget):
    """Glyph, letters and full name of every grade."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "rail")
        self.setAccessibleName("Grade")
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setItemDelegate(_NameDelegate(theme, self))
        for code, grade in grades().items():
            item = QListWidgetItem(f"{code} {grade.name.says}", self)
            item.setData(Qt.ItemDataRole.UserRole, (code, grade.name.says))
            item.setSizeHint(QSize(200, 50))


class _NameDelegate(QStyledItemDelegate):
    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme = theme

    def paint(
        self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        palette = self._theme.palette
        code, name = index.data(Qt.ItemDataRole.UserRole)
        box = QRectF(option.rect).adjusted(1, 2, -1, -2)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if option.state & QStyle.StateFlag.State_Selected:
            painter.setBrush(QColor(palette.selected))
            painter.setPen(QPen(QColor(palette.accent), 1.2))
            painter.drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), 5, 5)
        draw_plies(painter, code, QRectF(box.left() + 10, box.center().y() - 9, 32, 18))
        font = QFont(option.font)
        font.setWeight(QFont.Weight.DemiBold)
        painter.setFont(font)
        painter.setPen(QColor(palette.ink))
        painter.drawText(QRectF(box.left() + 54, box.top() + 5, 180, 18), Qt.AlignmentFlag.AlignVCenter, code)
        font.setWeight(QFont.Weight.Normal)
        painter.setFont(font)
        painter.setPen(QColor(palette.quiet))
        room = QRectF(box.left() + 54, box.top() + 23, box.width() - 60, 18)
        shown = painter.fontMetrics().elidedText(name, Qt.TextElideMode.ElideRight, int(room.width()))
        painter.drawText(room, Qt.AlignmentFlag.AlignVCenter, shown)
        painter.restore()
