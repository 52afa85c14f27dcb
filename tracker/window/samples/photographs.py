"""Kept photographs to look at: small ones beside their names, and one of them large."""

from __future__ import annotations

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QSize, Qt
from PySide6.QtGui import QImage, QImageReader, QPixmap, QResizeEvent
from PySide6.QtWidgets import QDialog, QLabel, QSizePolicy, QWidget

from tracker.window.pieces import button, column, row, words

SMALL, LARGE = QSize(72, 72), QSize(1600, 1600)


def decoded(content: bytes, bounds: QSize) -> QImage:
    """A photograph upright and no larger than these bounds; a null image for what is none, or a kind Qt can't read.

    Called on the desk's thread: a large photograph takes longer to decode than the window may stand still.
    """
    buffer = QBuffer()
    buffer.setData(QByteArray(content))
    buffer.open(QIODevice.OpenModeFlag.ReadOnly)
    reader = QImageReader(buffer)
    # What the camera wrote about which side is up counts, and what the bytes are counts before the file's name.
    reader.setAutoTransform(True)
    reader.setDecideFormatFromContent(True)
    size = reader.size()
    if size.isValid() and (size.width() > bounds.width() or size.height() > bounds.height()):
        reader.setScaledSize(size.scaled(bounds, Qt.AspectRatioMode.KeepAspectRatio))
    return reader.read()


class Photograph(QDialog):
    """One photograph as large as the dialog; Escape closes it."""

    def __init__(self, name: str, image: QImage, parent: QWidget) -> None:
        super().__init__(parent)
        self.setObjectName("window")
        self.setWindowTitle(name)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._whole = QPixmap.fromImage(image)
        self.picture = QLabel()
        self.picture.setAccessibleName(f"Photograph {name}")
        self.picture.setAlignment(Qt.AlignmentFlag.AlignCenter)
        # The picture follows the dialog: its own size must not keep the dialog from becoming smaller.
        self.picture.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Ignored)
        close = button("Close")
        close.clicked.connect(self.reject)
        self.setLayout(
            column(self.picture, row(words(name, "quiet"), None, close, gap=8), margins=12, gap=8, grow=0)
        )  # fmt: skip
        self.resize(image.size().scaled(QSize(760, 560), Qt.AspectRatioMode.KeepAspectRatio) + QSize(24, 64))
        close.setFocus()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        ratio = self.devicePixelRatioF()
        room = self.picture.size() * ratio
        shown = self._whole.scaled(
            room.boundedTo(self._whole.size()),
            Qt.AspectRatioMode.KeepAspectRatio,
            Qt.TransformationMode.SmoothTransformation,
        )
        shown.setDevicePixelRatio(ratio)
        self.picture.setPixmap(shown)
