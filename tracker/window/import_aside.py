"""Importing, beside the window's own thread, a module that names Qt's classes by the hundred.

PySide6 makes a class when it is first named. Where two threads do so at once the interpreter may crash (6.11.3 under
Python 3.11: once on a busy machine, and in 5 of 6 runs that provoked it; in none of 6 once all classes were made), so
the window's thread makes them all before another thread may.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from importlib import import_module
from types import ModuleType

from PySide6 import QtCore, QtGui, QtWidgets
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QWidget

from tracker.window.work import Work

_AT_ONCE = 60
"""Classes made in a turn of the loop: some ten milliseconds' worth."""


def import_aside(module: str, work: Work, window: QWidget, then: Callable[[object], object]) -> None:
    """Imports a module on `work`'s thread, then calls `then` with it on this one; neither once the window is shut."""
    names = ((qt, name) for qt in (QtCore, QtGui, QtWidgets) for name in dir(qt))
    make_classes(names, window, lambda: work.ask(lambda: import_module(module), then))


def make_classes(names: Iterator[tuple[ModuleType, str]], window: QWidget, then: Callable[[], object]) -> None:
    """Makes the classes of these names, a few a turn of the loop, and calls `then` when all are made."""
    for _ in range(_AT_ONCE):
        named = next(names, None)
        if named is None:
            then()
            return
        getattr(*named)

    def go_on() -> None:
        if window.isVisible():
            make_classes(names, window, then)

    QTimer.singleShot(0, window, go_on)
