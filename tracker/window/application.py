"""Starting the window."""

from __future__ import annotations

import sys
from collections.abc import Sequence

from PySide6.QtCore import QLocale, QSize
from PySide6.QtGui import QFontDatabase, QIcon
from PySide6.QtWidgets import QApplication

from tracker.trade.resources import resource
from tracker.window.door import Door
from tracker.window.errors import Mishaps, keep_log, log_file
from tracker.window.look.theme import Theme, has_fonts
from tracker.window.main_window import MainWindow
from tracker.window.session import Session
from tracker.window.settings import Settings

_FRAME = QSize(16, 48)
"""What a desktop's frame and title bar take at most; it is told only once the window stands (assumed)."""


def open_window(database: str | None, demo: bool = False) -> int:
    """Opens the window on a database (None: the user's own) and runs until it is closed; the exit status."""
    application = make_application(sys.argv)
    mishaps = Mishaps(application)
    mishaps.install()
    keep_log(log_file())
    settings = Settings.of_user()
    theme = Theme(application, settings.theme)
    window = MainWindow(Session(Door(database), theme, settings))
    mishaps.happened.connect(window.message.warn)
    application.aboutToQuit.connect(window.session.work.finish)
    window.resize(fitting(window.size(), window.screen().availableSize()))
    window.show()
    if demo:
        window.databases.open_demo()
    return application.exec()


def fitting(wanted: QSize, available: QSize) -> QSize:
    """A window's size, no larger than what the screen has for it besides its frame."""
    return wanted.boundedTo(available - _FRAME)


def make_application(arguments: Sequence[str] = ()) -> QApplication:
    """The Qt application (the one there is, or a new one) with letters to write with and its icon."""
    existing = QApplication.instance()
    application = existing if isinstance(existing, QApplication) else QApplication(list(arguments)[:1])
    if QLocale.system().language() is QLocale.Language.C:
        # The plain C locale groups no thousands; a desktop that names no language is shown English.
        QLocale.setDefault(QLocale(QLocale.Language.English, QLocale.Country.UnitedStates))
    application.setApplicationName("paperboard-tracker")
    application.setApplicationDisplayName("Paperboard tracker")
    application.setWindowIcon(QIcon(str(resource("icons", "application.svg"))))
    if not has_fonts():
        # A bare machine has none, and Qt brings none: without this every word would be blank.
        for font in sorted(resource("fonts").glob("*.ttf")):
            QFontDatabase.addApplicationFont(str(font))
    return application
