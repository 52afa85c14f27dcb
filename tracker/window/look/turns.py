"""Work on the window that can wait: one piece a turn of the loop, so that it never stands still for all of them."""

from collections.abc import Callable
from typing import Any, TypeVar

from PySide6.QtCore import QObject, QTimer
from PySide6.QtWidgets import QWidget
from shiboken6 import isValid

Part = TypeVar("Part", bound=QWidget)


class Turns(QObject):
    """Pieces of work, each a function of a part of the window. What is asked for twice is done once."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._waiting: dict[tuple[QWidget, Callable[[Any], None]], None] = {}
        self._next = QTimer(self)
        self._next.setSingleShot(True)
        self._next.timeout.connect(self._take_next)

    def do(self, part: Part, work: Callable[[Part], None]) -> None:
        """At once on a part that is in view; on another when its turn comes, or when it has come into view."""
        if part.isVisible():
            self._waiting.pop((part, work), None)
            work(part)
        else:
            self.put_off(part, work)

    def put_off(self, part: Part, work: Callable[[Part], None]) -> None:
        """When its turn comes, whether in view or not."""
        self._waiting[part, work] = None
        self._next.start(0)

    def catch_up(self) -> None:
        """Does now what waits on parts that are in view."""
        for part, work in [piece for piece in self._waiting if isValid(piece[0]) and piece[0].isVisible()]:
            self._waiting.pop((part, work), None)
            work(part)

    def _take_next(self) -> None:
        if not self._waiting:
            return
        part, work = piece = next(iter(self._waiting))
        del self._waiting[piece]
        self._next.start(0)
        if isValid(part):
            work(part)
