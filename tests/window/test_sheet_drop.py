"""What is dropped on the window: a sheet, the sheets of a folder, or what can't be read, which is said."""

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import QApplication

from tests.window.conftest import settle
from tracker.window.main_window import TAKE_IN, TODAY, MainWindow

pytestmark = pytest.mark.gui


def _drop(window: MainWindow, qtbot, *paths, on=None) -> str:
    """Holds these over the window, lets go, and gives what was said meanwhile."""
    mime = QMimeData()
    mime.setUrls([QUrl.fromLocalFile(str(path)) for path in paths])
    how = (Qt.DropAction.CopyAction, mime, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier)
    QApplication.sendEvent(on or window, QDragEnterEvent(QPoint(5, 5), *how))
    said = window.message.text
    QApplication.sendEvent(on or window, QDropEvent(QPointF(5, 5), *how))
    settle(qtbot, window)
    return said


def test_of_a_folder_the_sheets_in_it_are_read(window: MainWindow, qtbot, tmp_path) -> None:
    for name in ("b.XLSX", "a.csv", "~$b.xlsx", ".hidden.csv", "letter.pdf"):
        (tmp_path / name).write_text("x", encoding="utf-8")
    (tmp_path / "deeper.csv").mkdir()
    assert _drop(window, qtbot, tmp_path).startswith("Drop it to read the price sheets in it.")
    assert window.stack.currentIndex() == TAKE_IN
    assert [file.path.name for file in window.take_in._files] == ["a.csv", "b.XLSX"]


def test_a_folder_without_sheets_is_said_to_have_none(window: MainWindow, qtbot, tmp_path) -> None:
    (tmp_path / "offers").mkdir()
    _drop(window, qtbot, tmp_path / "offers")
    assert window.message.text.startswith("“offers” is a folder in which no price sheets lie")
    assert window.stack.currentIndex() == TODAY


def test_a_folder_dropped_on_the_first_page_is_told_the_same(window: MainWindow, qtbot, tmp_path) -> None:
    (tmp_path / "offers").mkdir()
    _drop(window, qtbot, tmp_path / "offers", on=window.today.welcome)
    assert window.message.text.startswith("“offers” is a folder in which no price sheets lie")


def test_what_is_not_there_any_more_is_said_to_be_out_of_reach(window: MainWindow, qtbot, tmp_path) -> None:
    _drop(window, qtbot, tmp_path / "gone.xlsx")
    assert window.message.text.startswith("“gone.xlsx” can't be read from there")


def test_a_file_in_the_folder_and_beside_it_is_read_once(window: MainWindow, qtbot, tmp_path) -> None:
    (tmp_path / "a.csv").write_text("x", encoding="utf-8")
    assert _drop(window, qtbot, tmp_path, tmp_path / "a.csv").startswith("Drop them to read them.")
    assert len(window.take_in._files) == 1
