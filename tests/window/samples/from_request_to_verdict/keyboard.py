"""Keys pressed wherever the cursor is, and the steps that several tests begin with."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from tests.window.conftest import settle
from tracker.window.main_window import MainWindow

CONTROL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier
VENDORS = ("Aldermoor Board", "Brackly Mills", "Corvane Karton", "Dunholt Paper", "Estwick Board")


class Keys:
    """Presses keys wherever the cursor is, and counts them."""

    def __init__(self, qtbot, window: MainWindow) -> None:
        self._qtbot, self._window = qtbot, window
        self.pressed = 0

    def press(self, key: Qt.Key, modifiers: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> None:
        self._qtbot.keyClick(QApplication.focusWidget() or self._window, key, modifiers)
        self.pressed += 1

    def type(self, text: str) -> None:
        self._qtbot.keyClicks(QApplication.focusWidget(), text)
        self.pressed += len(text)

    def settle(self) -> None:
        settle(self._qtbot, self._window)


def asked(window: MainWindow) -> list:
    return sorted(window.session.samples, key=lambda sample: sample.number)


def requested(window: MainWindow, keys: Keys, caliper: str = "") -> None:
    """A sample of SBS is asked for."""
    window.log_sample()
    keys.type("ald")
    keys.press(Qt.Key.Key_Tab)
    keys.type("sbs")
    keys.press(Qt.Key.Key_Tab)
    keys.type(caliper)
    keys.press(Qt.Key.Key_Return)
    keys.settle()


def arrived(window: MainWindow, keys: Keys) -> None:
    """Sample 1 of 18 pt SBS is asked for and recorded as arrived."""
    requested(window, keys, "18")
    window.go_samples()
    keys.press(Qt.Key.Key_A)
    keys.press(Qt.Key.Key_Return)
    keys.settle()
