"""A window on invented answers, waited for and closed in order."""

import shutil
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication, QEvent, Qt
from PySide6.QtWidgets import QApplication

from tests.window.fixtures.invented_door import InventedDoor
from tests.window.fixtures.strange_sheet import NAMES, VENDOR, strange_sheet
from tracker.store.opening import open_database
from tracker.trade.layout import MarkedColumn
from tracker.window.application import make_application
from tracker.window.door import Door
from tracker.window.look.theme import Theme
from tracker.window.main_window import MainWindow
from tracker.window.session import Session
from tracker.window.settings import Settings
from tracker.window.take_in.marking import Marking

OpenWindow = Callable[..., MainWindow]
PATIENCE_MS = 60_000
"""How long a test waits for what must come: on a busy machine the first file a process reads takes tens of seconds."""


@pytest.fixture(scope="session")
def empty_database(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A database without rows, made once: copying it is quicker than migrating anew."""
    path = tmp_path_factory.mktemp("template") / "empty.sqlite"
    open_database(path).close()
    return path


@pytest.fixture
def database(empty_database: Path, tmp_path: Path) -> str:
    """A fresh database of one's own."""
    return str(shutil.copy(empty_database, tmp_path / "board.sqlite"))


@pytest.fixture(autouse=True)
def no_reader_ahead_of_need(monkeypatch: pytest.MonkeyPatch) -> None:
    """A reading process that waits for a file nobody drops would only take time from the tests."""
    monkeypatch.setattr(Door, "keep_ready", lambda _: None)


@pytest.fixture
def theme(qapp: QApplication) -> Theme:
    make_application()
    return Theme(qapp, "light")


@pytest.fixture
def open_window(theme: Theme, qtbot) -> Iterator[OpenWindow]:
    """Opens a window on a door and waits until everything asked for is shown."""
    opened: list[MainWindow] = []

    def open_on(door: Door, settings: Settings | None = None) -> MainWindow:
        window = MainWindow(Session(door, theme, settings or Settings()))
        window.setAttribute(Qt.WidgetAttribute.WA_DontShowOnScreen, False)
        opened.append(window)
        with qtbot.waitExposed(window, timeout=PATIENCE_MS):
            window.show()
        window.activateWindow()
        settle(qtbot, window)
        return window

    yield open_on
    for window in opened:
        window.close()
        window.deleteLater()
    # Outside a loop Qt puts it off until the next test's, and would dress this window together with that of the next.
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)


@pytest.fixture
def window(open_window: OpenWindow) -> MainWindow:
    return open_window(InventedDoor(300))


@pytest.fixture
def real_window(open_window: OpenWindow, database: str, reading_here: None) -> MainWindow:
    """A window on an empty database of its own; test_with_the_desk.py has one that reads as users' windows do."""
    return open_window(Door(database))


@pytest.fixture
def marked(real_window: MainWindow, qtbot, tmp_path: Path) -> MainWindow:
    """A window with a strange sheet read, its table marked, its vendor named, its currency answered."""
    real_window.take_in_files([strange_sheet(tmp_path)])
    settle(qtbot, real_window)
    take_in = real_window.take_in
    columns = {place: MarkedColumn(place, role, unit) for place, (role, unit) in enumerate(NAMES)}
    take_in.at_hand.given.update(vendor=VENDOR, currency="EUR")
    take_in.marking.mark(Marking("Sheet", columns, header_row=2, first_row=3), "marked")
    settle(qtbot, real_window)
    return real_window


def settle(qtbot, window: MainWindow) -> None:
    """Waits until the desk has answered all that was asked, and what that led to."""
    qtbot.wait(20)
    qtbot.waitUntil(window.session.work.is_idle, timeout=PATIENCE_MS)
    qtbot.wait(10)
    qtbot.waitUntil(window.session.work.is_idle, timeout=PATIENCE_MS)
