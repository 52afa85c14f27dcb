"""How a row is drawn: text as it stands, marks and ply glyphs painted, nothing looked up."""

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from tracker.desk.standing import Standing
from tracker.trade.offer import State
from tracker.window.look.figures import NONE
from tracker.window.look.marks import draw_mark
from tracker.window.look.palette import colour
from tracker.window.look.plies import draw_plies
from tracker.window.look.states import draw_state
from tracker.window.look.theme import Theme
from tracker.window.tables.model import FAINT, PAINTED, STRONG, WRAPS
from tracker.window.tables.set_texts import SetTexts

GLYPH_WIDTH, GLYPH_HEIGHT = 26, 15
_MARK_SIZE = 12
_ROOM_AROUND = 8


class RowDelegate(QStyledItemDelegate):
    """Draws one cell over the row's ground."""

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme = theme
        self._texts = SetTexts()

    def paint(
        self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        palette = self._theme.palette
        box = QRectF(option.rect)
        selected = bool(option.state & QStyle.StateFlag.State_Selected)
        painter.save()
        painter.fillRect(box, colour(palette.selected if selected else palette.raised))
        painted = index.data(PAINTED)
        if painted is not None:
            self._paint_sign(painter, box, *painted)
        else:
            self._paint_text(painter, option, box, index)
        painter.restore()

    def _paint_sign(self, painter: QPainter, box: QRectF, kind: str, value: object) -> None:
        if kind == "mark" and value is not None:
            sign = QRectF(0, 0, _MARK_SIZE, _MARK_SIZE)
            sign.moveCenter(box.center())
            draw_mark(painter, Standing(value), sign, self._theme.palette)  # type: ignore[arg-type]
        elif kind == "state":
            draw_state(painter, State(str(value)), box, self._theme.palette)
        elif kind == "grade":
            code = str(value)
            glyph = QRectF(box.left() + 6, 0, GLYPH_WIDTH, GLYPH_HEIGHT)
            glyph.moveCenter(glyph.center())
            glyph.moveTop(box.center().y() - GLYPH_HEIGHT / 2)
            draw_plies(painter, code, glyph)
            painter.setPen(colour(self._theme.palette.ink))
            painter.drawText(
                box.adjusted(GLYPH_WIDTH + 14, 0, 0, 0),
                Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter,
                code,
            )

    def _paint_text(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        box: QRectF,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        text = index.data(Qt.ItemDataRole.DisplayRole)
        if not text:
            return
        palette = self._theme.palette
        painter.setPen(colour(palette.quiet if text == NONE or index.data(FAINT) else palette.ink))
        room = box.adjusted(7, 0, -7, 0)
        lines = 1
        if index.data(WRAPS):
            lines = max(1, int((room.height() - _ROOM_AROUND) // QFontMetricsF(option.font).lineSpacing()))
        align = index.data(Qt.ItemDataRole.TextAlignmentRole)
        self._texts.draw(painter, text, option.font, room, align, strong=bool(index.data(STRONG)), lines=lines)
