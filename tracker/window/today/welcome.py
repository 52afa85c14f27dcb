"""What a first start shows: a place to drop a price sheet, and the demo."""

from pathlib import Path

from PySide6.QtCore import QRectF, Qt, Signal
from PySide6.QtGui import QColor, QDragEnterEvent, QDropEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QWidget

from tracker.trade.grades import grades
from tracker.window.look.plies import draw_plies
from tracker.window.look.theme import Theme
from tracker.window.pieces import button, column, row, words


class _Stack(QWidget):
    """The six boards on top of each other: what this is all about, at a glance."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFixedSize(260, 132)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        for place, grade in enumerate(grades()):
            draw_plies(painter, grade, QRectF(8 + 14 * (place % 2), 4 + 21 * place, 230, 18))


class Welcome(QWidget):
    """Nothing is here yet: what to do first. `sheets_wanted`, `demo_wanted`, `dropped` say what the user chose."""

    sheets_wanted = Signal()
    demo_wanted = Signal()
    dropped = Signal(list)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._over = False
        self.setAcceptDrops(True)
        choose = button("Choose a price sheet…", "main")
        choose.clicked.connect(self.sheets_wanted)
        demo = button("Open the demo")
        demo.clicked.connect(self.demo_wanted)
        told = words(
            "A spreadsheet or a CSV file as the vendor sent it. You see what was understood, and nothing is stored "
            "until you agree.",
            "quiet",
            wrap=True,
        )
        told.setFixedWidth(420)
        told.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        title = words("Drop a vendor's price sheet here", "title")
        title.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        buttons = row(None, choose, demo, None, gap=12)
        other = words("The demo has invented vendors, offers and samples; nothing of yours is touched.", "small")
        other.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        self.setLayout(
            column(
                None, row(None, _Stack(), None), 20, title, 8, row(None, told, None), 20, buttons, 14, other, None,
                margins=40,
            )
        )  # fmt: skip

    # Qt's own names from here on

    def paintEvent(self, event: QPaintEvent) -> None:
        palette = self._theme.palette
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(palette.accent if self._over else palette.edge), 1.6, Qt.PenStyle.DashLine))
        painter.setBrush(QColor(palette.selected if self._over else palette.raised))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(24, 20, -24, -24), 10, 10)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if any(url.isLocalFile() for url in event.mimeData().urls()):
            self._over = True
            self.update()
            event.acceptProposedAction()

    def dragLeaveEvent(self, event: object) -> None:
        self._over = False
        self.update()

    def dropEvent(self, event: QDropEvent) -> None:
        self._over = False
        self.update()
        event.acceptProposedAction()
        self.dropped.emit([Path(url.toLocalFile()) for url in event.mimeData().urls() if url.isLocalFile()])
