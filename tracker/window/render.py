"""Pictures of the window's places, drawn offscreen: for a machine without a display, and to look at every screen."""

from __future__ import annotations

import os
from collections.abc import Callable
from pathlib import Path

import numpy as np
from PySide6.QtCore import QDeadlineTimer, QEventLoop, Qt
from PySide6.QtWidgets import QApplication, QWidget

from tracker.desk.standing import Standing
from tracker.window.application import make_application
from tracker.window.door import Door
from tracker.window.look.theme import Theme
from tracker.window.main_window import MainWindow
from tracker.window.session import Session
from tracker.window.settings import Settings

_LONGEST_WAIT_MS = 120_000
_SIZE = (1280, 800)


def render_places(database: str | None, folder: Path) -> list[Path]:
    """Today, Quotes (all, one grade explained, lead time), Samples and Reference, light and dark: the files written."""
    # Before any application is made: a machine without a display has nothing else to draw on.
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    folder.mkdir(parents=True, exist_ok=True)
    written = []
    theme = Theme(make_application(), "light")
    for name in ("light", "dark"):
        theme.choose(name)
        with_window = OpenWindow(Door(database), theme)
        for title, show in PLACES.items():
            show(with_window.window)
            written.append(with_window.grab(folder / f"{title}-{name}.png"))
        with_window.close()
    return written


class OpenWindow:
    """A window on a door, never shown to anyone, that can be waited for and grabbed."""

    def __init__(self, door: Door, theme: Theme, size: tuple[int, int] = _SIZE) -> None:
        self.session = Session(door, theme, Settings())
        self.window = MainWindow(self.session)
        self.window.setAttribute(Qt.WidgetAttribute.WA_DontShowOnScreen)
        self.window.resize(*size)
        self.window.show()
        self.settle()

    def settle(self) -> None:
        """Waits until the desk has answered everything and the window has drawn it."""
        deadline = QDeadlineTimer(_LONGEST_WAIT_MS)
        calm = 0
        while calm < 3 and not deadline.hasExpired():
            QApplication.processEvents(QEventLoop.ProcessEventsFlag.AllEvents, 50)
            calm = calm + 1 if self.session.work.is_idle() else 0

    def grab(self, path: Path, widget: QWidget | None = None) -> Path:
        """Writes what is shown to a PNG file."""
        self.settle()
        (widget or self.window).grab().save(str(path))
        return path

    def close(self) -> None:
        self.window.close()
        self.window.deleteLater()
        QApplication.processEvents()


def show_today(window: MainWindow) -> None:
    window.go_today()


def show_quotes(window: MainWindow) -> None:
    window.go_quotes()
    window.quotes.rail.choose("")
    window.quotes.picture.choose(1)


def show_explained(window: MainWindow) -> None:
    """The grade with most to say: the one of the price that stands out most."""
    window.go_quotes()
    window.quotes.picture.choose(0)
    offer = _telling_offer(window)
    if offer >= 0:
        window.quotes.go_to(offer)


def show_lead(window: MainWindow) -> None:
    show_explained(window)
    window.quotes.picture.choose(2)


def show_over_time(window: MainWindow) -> None:
    show_explained(window)
    window.quotes.picture.choose(3)


def show_samples(window: MainWindow) -> None:
    window.go_samples()


def show_reference(window: MainWindow) -> None:
    window.go_reference()
    window.reference.list.setCurrentRow(5)


def show_yardsticks(window: MainWindow) -> None:
    window.go_reference()
    window.reference.show_yardsticks()


PLACES: dict[str, Callable[[MainWindow], None]] = {
    "1-today": show_today,
    "2-quotes": show_quotes,
    "3-price-explained": show_explained,
    "4-lead-time": show_lead,
    "4-over-time": show_over_time,
    "5-samples": show_samples,
    "6-reference": show_reference,
    "6-yardsticks": show_yardsticks,
}


def _telling_offer(window: MainWindow) -> int:
    session = window.session
    if session.comparison is None or not len(session.comparison.snapshot):
        return -1
    shown = np.flatnonzero(session.comparison.shown)
    if not shown.size:
        return -1
    marks = session.marks[shown]
    for mark in (Standing.ABOVE, Standing.SLIP, Standing.BELOW):
        found = shown[marks == mark]
        if found.size:
            return int(found[0])
    return int(shown[0])
