"""The verdict on a board, and the files kept with it."""

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QFileDialog

from tests.window.samples.from_request_to_verdict.keyboard import Keys, arrived
from tracker.window.main_window import MainWindow

pytestmark = pytest.mark.gui


def test_a_verdict_stands_in_the_quotes(window: MainWindow, keys: Keys, qtbot) -> None:
    arrived(window, keys)
    keys.press(Qt.Key.Key_V)
    assert QApplication.focusWidget() is window.samples.record.kept.words
    keys.type("cracks")
    window.samples.record.kept.reject()
    keys.settle()
    window.go_quotes()
    keys.settle()
    texts = [
        str(window.quotes.model.index(0, place).data() or "") for place in range(window.quotes.model.columnCount())
    ]
    assert any(text.startswith("rejected · Fenlight") for text in texts)
    window.session.select_offer(0)
    keys.settle()
    layout = window.quotes.reasons._reasons
    said = [layout.itemAt(place).widget().text() for place in range(layout.count())]
    assert said[0].startswith("This board was rejected: cracks (")


def test_a_rejection_without_a_reason_is_refused_beside_it(window: MainWindow, keys: Keys) -> None:
    arrived(window, keys)
    window.samples.record.start_deciding()
    window.samples.record.kept.reject()
    keys.settle()
    assert "why" in window.samples.record.kept._wrong.label.text()


def test_a_photograph_is_kept_and_saved_again(
    window: MainWindow, keys: Keys, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    arrived(window, keys)
    photograph = tmp_path / "edge.jpg"
    photograph.write_bytes(b"a photograph")
    monkeypatch.setattr(QFileDialog, "getOpenFileNames", lambda *_: ([str(photograph)], ""))
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(tmp_path / "again.jpg"), ""))
    window.samples.record.start_deciding()
    kept = window.samples.record.kept
    kept._choose_files()
    keys.settle()
    (file,) = window.session.door.attachments(1)
    kept.file_saved.emit(file.id, file.name)
    keys.settle()
    assert (tmp_path / "again.jpg").read_bytes() == b"a photograph"
    kept.file_off.emit(1, "edge.jpg")
    keys.settle()
    assert window.session.door.attachments(1) == ()
