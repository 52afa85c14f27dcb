"""Files dropped anywhere on the window."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QEvent, QObject, Signal
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import QWidget


class SheetDrop(QObject):
    """Watches a widget. `hovering`: files are held over it, `gone`: no longer; `dropped` carries their paths."""

    hovering = Signal()
    gone = Signal()
    dropped = Signal(list)

    def __init__(self, watched: QWidget) -> None:
        super().__init__(watched)
        watched.setAcceptDrops(True)
        watched.installEventFilter(self)

    # Qt's own names from here on

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if isinstance(event, QDragEnterEvent):
            if any(url.isLocalFile() for url in event.mimeData().urls()):
                event.acceptProposedAction()
                self.hovering.emit()
            return True
        if event.type() is QEvent.Type.DragLeave:
            self.gone.emit()
        elif isinstance(event, QDropEvent) and event.type() is QEvent.Type.Drop:
            paths = [Path(url.toLocalFile()) for url in event.mimeData().urls() if url.isLocalFile()]
            event.acceptProposedAction()
            self.gone.emit()
            self.dropped.emit([path for path in paths if path.is_file()])
            return True
        return super().eventFilter(watched, event)
