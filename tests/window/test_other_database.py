"""A backup put back from the window: only when agreed, with a copy of what was there, and everything shown anew."""

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog

from tests.window.conftest import settle
from tracker.window.main_window import MainWindow
from tracker.window.other_database import OtherDatabase

pytestmark = pytest.mark.gui

_SHEET = (
    "Ostrel Karton Ltd,,,,,\n\nBoard,Grade,Caliper (pt),Basis weight (g/m²),Price USD,Unit\n"
    "Fenlight 16,SBS,16,300,1216,tonne\n"
)


@pytest.fixture
def backed_up(real_window: MainWindow, qtbot, tmp_path: Path, monkeypatch) -> Path:
    """A backup of the empty database, after which a sheet was taken in; the file dialog names the backup."""
    backup = tmp_path / "backup.sqlite"
    real_window.session.work.ask(lambda: real_window.session.door.back_up(backup), lambda _: None)
    sheet = tmp_path / "ostrel.csv"
    sheet.write_text(_SHEET, encoding="utf-8")
    real_window.take_in_files([sheet])
    settle(qtbot, real_window)
    real_window.take_in.agree.click()
    settle(qtbot, real_window)
    assert len(real_window.session.comparison.snapshot) == 1
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_: (str(backup), ""))
    return backup


def test_what_was_there_is_kept_beside_it(real_window: MainWindow, qtbot, backed_up, database, monkeypatch) -> None:
    monkeypatch.setattr(OtherDatabase, "_agreed", lambda *_: True)
    real_window.actions_by_key["restore"].trigger()
    qtbot.keyClick(real_window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert real_window.session.undo_stack.canUndo(), "what was done to the one is not undone in the other"
    settle(qtbot, real_window)
    assert real_window.isEnabled()
    assert len(real_window.session.comparison.snapshot) == 0
    kept = Path(f"{database}.before-restore")
    assert kept.is_file()
    assert str(kept) in real_window.message.text
    assert not real_window.session.undo_stack.canUndo()


def test_nothing_is_restored_unless_agreed(real_window: MainWindow, qtbot, backed_up, database, monkeypatch) -> None:
    monkeypatch.setattr(OtherDatabase, "_agreed", lambda *_: False)
    real_window.actions_by_key["restore"].trigger()
    settle(qtbot, real_window)
    assert len(real_window.session.comparison.snapshot) == 1


def test_a_file_that_is_no_backup_changes_nothing(real_window: MainWindow, qtbot, backed_up, monkeypatch) -> None:
    backed_up.write_bytes(b"no database at all")
    monkeypatch.setattr(OtherDatabase, "_agreed", lambda *_: True)
    real_window.actions_by_key["restore"].trigger()
    settle(qtbot, real_window)
    assert "is not a backup" in real_window.message.text
    assert real_window.isEnabled()
    real_window.session.reload()
    settle(qtbot, real_window)
    assert len(real_window.session.comparison.snapshot) == 1


def test_a_vendor_whose_only_sheet_was_taken_back_is_no_longer_to_choose(
    real_window: MainWindow, qtbot, backed_up
) -> None:
    assert real_window.quotes.filters._of_vendors == 1
    real_window.steps.undo()
    settle(qtbot, real_window)
    assert real_window.quotes.filters._of_vendors == 0
