"""A wrong answer is mended after its sheet was stored: asked again, read anew, and the new reading counts."""

from pathlib import Path

import pytest
from PySide6.QtWidgets import QPushButton

from tests.window.conftest import settle
from tracker.window.main_window import QUOTES, TAKE_IN, MainWindow

pytestmark = pytest.mark.gui

_SHEET = (
    "Ostrel Karton Ltd,,,,\n\nBoard,Grade,Caliper (pt),Basis weight (g/m²),Price USD,Unit\n"
    "Fenlight 16,SBS,16,300,1216,ton\nFenlight 18,SBS,18,335,1218,ton\n"
)


@pytest.fixture
def stored(real_window: MainWindow, qtbot, tmp_path: Path) -> MainWindow:
    """A sheet whose ton was answered as the short one, and taken in so."""
    path = tmp_path / "ostrel.csv"
    path.write_text(_SHEET, encoding="utf-8")
    real_window.take_in_files([path])
    settle(qtbot, real_window)
    _choose(qtbot, real_window, "short ton")
    real_window.take_in.agree.click()
    settle(qtbot, real_window)
    assert _bases(real_window) == ["short_ton", "short_ton"]
    return real_window


def _choose(qtbot, window: MainWindow, words: str) -> None:
    buttons = window.take_in.understood.questions.findChildren(QPushButton)
    next(each for each in buttons if words in each.text() or words in each.accessibleName()).click()
    settle(qtbot, window)


def _bases(window: MainWindow) -> list[str]:
    snapshot = window.session.comparison.snapshot
    return ["short_ton" if "/ST" in said or "short ton" in said else "tonne" for said in snapshot.as_quoted]


def _mend(qtbot, window: MainWindow) -> None:
    assert window.stack.currentIndex() == TAKE_IN
    assert window.take_in.at_hand.given == {"ton": "short"}
    _choose(qtbot, window, "Change:")
    _choose(qtbot, window, "tonne")
    assert "replaces what was stored" in window.take_in.foot.told.text()
    window.take_in.agree.click()
    settle(qtbot, window)
    assert window.stack.currentIndex() == QUOTES
    assert _bases(window) == ["tonne", "tonne"]
    assert [(each.key, each.value) for each in window.session.door.remembered()] == [("ton", "metric")]
    for step, basis, remembered in ((window.steps.undo, "short_ton", "short"), (window.steps.redo, "tonne", "metric")):
        step()
        settle(qtbot, window)
        assert _bases(window) == [basis, basis]
        assert [each.value for each in window.session.door.remembered()] == [remembered]


def test_from_sheets_without_the_file(stored: MainWindow, qtbot, tmp_path: Path) -> None:
    (tmp_path / "ostrel.csv").unlink()
    stored.go_sheets()
    settle(qtbot, stored)
    stored.sheets.table.selectRow(0)
    stored.sheets.anew.click()
    settle(qtbot, stored)
    _mend(qtbot, stored)


def test_from_the_very_file_opened_again(stored: MainWindow, qtbot, tmp_path: Path) -> None:
    stored.take_in_files([tmp_path / "ostrel.csv"])
    settle(qtbot, stored)
    assert not stored.take_in.agree.isEnabled()
    stored.take_in.foot.anew.click()
    settle(qtbot, stored)
    _mend(qtbot, stored)


def test_an_answer_that_was_remembered_is_told_and_can_be_changed(stored: MainWindow, qtbot, tmp_path: Path) -> None:
    path = tmp_path / "next.csv"
    path.write_text(_SHEET.replace("1216", "1246"), encoding="utf-8")
    stored.take_in_files([path])
    settle(qtbot, stored)
    questions = stored.take_in.understood.questions
    assert questions.isVisible()
    assert stored.take_in.at_hand.given == {}
    _choose(qtbot, stored, "Change:")
    assert not stored.take_in.agree.isEnabled()
    stored.steps.undo()
    settle(qtbot, stored)
    assert stored.take_in.agree.isEnabled()
    stored.steps.redo()
    settle(qtbot, stored)
    _choose(qtbot, stored, "tonne")
    stored.take_in.agree.click()
    settle(qtbot, stored)
    assert [(each.key, each.value) for each in stored.session.door.remembered()] == [("ton", "metric")]


def test_left_unfinished_what_was_stored_counts_on(stored: MainWindow, qtbot, tmp_path: Path) -> None:
    stored.go_sheets()
    settle(qtbot, stored)
    stored.sheets.table.selectRow(0)
    stored.sheets.anew.click()
    settle(qtbot, stored)
    stored.take_in.leave.click()
    settle(qtbot, stored)
    assert _bases(stored) == ["short_ton", "short_ton"]
    assert stored.take_in.begun.listing() == ()
