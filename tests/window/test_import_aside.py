"""Qt's classes are made on the window's own thread before a module that names them is imported on another."""

import sys
from threading import current_thread, main_thread
from types import ModuleType

import pytest
from PySide6.QtWidgets import QWidget

from tracker.window import import_aside
from tracker.window.work import Work

pytestmark = pytest.mark.gui


class Lazy(ModuleType):
    """A module that makes what it is asked for, as PySide6 makes its classes, and notes on which thread."""

    def __init__(self) -> None:
        super().__init__("lazy")
        self.made: list[tuple[str, bool]] = []

    def __dir__(self) -> list[str]:
        return [f"Q{number}" for number in range(200)]

    def __getattr__(self, name: str) -> str:
        self.made.append((name, current_thread() is main_thread()))
        return name


@pytest.fixture
def qt(monkeypatch: pytest.MonkeyPatch) -> Lazy:
    qt = Lazy()
    for module in ("QtCore", "QtGui", "QtWidgets"):
        monkeypatch.setattr(import_aside, module, qt if module == "QtGui" else ModuleType(module))
    return qt


@pytest.fixture
def window(qtbot) -> QWidget:
    window = QWidget()
    qtbot.addWidget(window)
    window.show()
    return window


def test_every_class_is_made_here_before_the_import_there(qt: Lazy, window, qtbot, tmp_path, monkeypatch) -> None:
    (tmp_path / "names_them.py").write_text("from threading import current_thread\nthread = current_thread().name\n")
    monkeypatch.syspath_prepend(tmp_path)
    work, brought = Work(window), []
    import_aside.import_aside("names_them", work, window, brought.append)
    assert "names_them" not in sys.modules
    assert len(qt.made) < 200
    qtbot.waitUntil(lambda: bool(brought))
    assert qt.made == [(name, True) for name in dir(qt)]
    assert sys.modules.pop("names_them").thread != main_thread().name


def test_a_window_that_was_shut_imports_nothing(qt: Lazy, window, qtbot) -> None:
    begun = []
    import_aside.make_classes(((qt, name) for name in dir(qt)), window, lambda: begun.append(True))
    window.close()
    qtbot.wait(20)
    assert not begun
