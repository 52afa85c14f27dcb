"""Files dropped anywhere on the window; of a folder, the price sheets that lie in it."""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path

from PySide6.QtCore import QEvent, QMimeData, QObject, Signal
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import QWidget

from tracker.window.message_bar import MessageBar

ENDINGS = (".xlsx", ".xlsm", ".xls", ".xlsb", ".ods", ".csv", ".tsv", ".txt")
"""Of files that are price sheets by their names; any other that is chosen or dropped by itself is read as well."""
FILE_KINDS = f"Price sheets ({' '.join(f'*{ending}' for ending in ENDINGS)});;All files (*)"
_OPEN_ELSEWHERE = "~$"
"""How the name of the file begins that an office program lays beside the one it has open."""


class SheetDrop(QObject):
    """Watches a widget, and says in `message` what dropping would do. `dropped` carries the paths of what was."""

    dropped = Signal(list)

    def __init__(self, watched: QWidget, message: MessageBar) -> None:
        super().__init__(watched)
        self._message = message
        watched.setAcceptDrops(True)
        watched.installEventFilter(self)

    def _hover(self, paths: list[Path]) -> None:
        folder = len(paths) == 1 and paths[0].is_dir()
        what = "the price sheets in it" if folder else "it" if len(paths) == 1 else "them"
        self._message.say(
            f"Drop {'them' if len(paths) > 1 else 'it'} to read {what}. Nothing is stored until you agree."
        )

    def take(self, paths: list[Path]) -> None:
        """Hands on what was dropped, or says why there is nothing to read."""
        self._message.hide()
        sheets = list(dict.fromkeys(sheet for path in paths for sheet in _sheets(path)))
        if sheets:
            self.dropped.emit(sheets)
        else:
            self._message.warn(_no_sheets(paths))

    # Qt's own names from here on

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if isinstance(event, QDragEnterEvent):
            if paths := _local(event.mimeData()):
                event.acceptProposedAction()
                self._hover(paths)
            return True
        if event.type() is QEvent.Type.DragLeave:
            self._message.hide()
        elif isinstance(event, QDropEvent) and event.type() is QEvent.Type.Drop:
            event.acceptProposedAction()
            self.take(_local(event.mimeData()))
            return True
        return super().eventFilter(watched, event)


def _local(data: QMimeData) -> list[Path]:
    return [Path(url.toLocalFile()) for url in data.urls() if url.isLocalFile()]


def _sheets(path: Path) -> Iterable[Path]:
    """The file itself; of a folder the sheets that lie right in it, for those deeper down may be anything."""
    if not path.is_dir():
        return [path] if path.is_file() else []
    try:
        inside = sorted(path.iterdir(), key=lambda each: each.name.casefold())
    except OSError:
        return []
    return [each for each in inside if _is_sheet(each)]


def _is_sheet(path: Path) -> bool:
    hidden = path.name.startswith((".", _OPEN_ELSEWHERE))
    return not hidden and path.suffix.casefold() in ENDINGS and path.is_file()


def _no_sheets(paths: list[Path]) -> str:
    name = paths[0].name or str(paths[0]) if paths else "What was dropped"
    if paths and paths[0].is_dir():
        return f"“{name}” is a folder in which no price sheets lie: drop the sheets, or the folder that holds them."
    return f"“{name}” can't be read from there: save it in a folder of your own, then drop it from there."
