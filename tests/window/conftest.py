"""A window on invented answers, waited for and closed in order."""

from collections.abc import Callable, Iterator

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from tests.window.fixtures.invented_door import InventedDoor
from tracker.window.application import make_application
from tracker.window.look.theme import Theme
from tracker.window.main_window import MainWindow
from tracker.window.session import Session
from tracker.window.settings import Settings

OpenWindow = Callable[[InventedDoor], MainWindow]


@pytest.fixture
def theme(qapp: QApplication) -> Theme:
    make_application()
    return Theme(qapp, "light")


@pytest.fixture
def open_window(theme: Theme, qtbot) -> Iterator[OpenWindow]:
    """Opens a window on a door and waits until everything asked for is shown."""
    opened: list[MainWindow] = []

    def open_on(door: InventedDoor) -> MainWindow:
        window = MainWindow(Session(door, theme, Settings()))
        window.setAttribute(Qt.WidgetAttribute.WA_DontShowOnScreen, False)
        opened.append(window)
        with qtbot.waitExposed(window):
            window.show()
        window.activateWindow()
        settle(qtbot, window)
        return window

    yield open_on
    for window in opened:
        window.close()
        window.deleteLater()


@pytest.fixture
def window(open_window: OpenWindow) -> MainWindow:
    return open_window(InventedDoor(300))


def settle(qtbot, window: MainWindow) -> None:
    """Waits until the desk has answered all that was asked, and what that led to."""
    qtbot.wait(20)
    qtbot.waitUntil(window.session.work.is_idle, timeout=10_000)
    qtbot.wait(10)
    qtbot.waitUntil(window.session.work.is_idle, timeout=10_000)
