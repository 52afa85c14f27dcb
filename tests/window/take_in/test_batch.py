"""Several files at once, some of which can't be read or still wait: the first sheet is shown, and no failure hidden."""

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from tests.window.conftest import settle
from tracker.window.main_window import MainWindow

pytestmark = pytest.mark.gui

_HEAD = "Vendor,Grade,Caliper (pt),Basis weight (g/m²),Price USD,Unit\n"
_ROW = "Vexholm Papir,SBS,16,300,{},tonne\n"
_HELD = "Vexholm Papir,Fenlight,16,300,{},tonne\n"
_CTRL, _SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier


def _files(folder: Path, *texts: str | None) -> list[Path]:
    """Lists of these texts; None stands for a workbook that broke off."""
    paths = []
    for number, text in enumerate(texts):
        path = folder / (f"broken {number}.xlsx" if text is None else f"list {number}.csv")
        path.write_bytes(b"PK\x03\x04 broken off" if text is None else (_HEAD + text).encode())
        paths.append(path)
    return paths


@pytest.fixture
def mixed(real_window: MainWindow, qtbot, tmp_path: Path) -> MainWindow:
    """A broken file first, then two of three lines each, one of which is held."""
    texts = [
        _ROW.format(1200 + at) + _ROW.replace("16,300", "18,335").format(1190 + at) + _HELD.format(1300)
        for at in range(2)
    ]
    real_window.take_in_files(_files(tmp_path, None, *texts))
    settle(qtbot, real_window)
    return real_window


def test_the_first_sheet_that_can_be_read_is_shown(mixed: MainWindow) -> None:
    take_in = mixed.take_in
    assert take_in.at_hand.path.name == "list 1.csv"
    assert take_in._choose.itemText(0) == "broken 0.xlsx: can't be read"
    assert take_in.listed._told.text() == "3 files:"


def test_whoever_looks_at_what_could_not_be_read_stays_there(real_window: MainWindow, qtbot, tmp_path: Path) -> None:
    real_window.take_in_files(_files(tmp_path, None, None, _ROW.format(1200)))
    settle(qtbot, real_window)
    assert real_window.take_in.at_hand.path.name == "list 2.csv"
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_PageUp, _CTRL)
    real_window.take_in.readings.ask(real_window.take_in._files[2])
    settle(qtbot, real_window)
    assert real_window.take_in.at_hand.path.name == "broken 1.xlsx"


def test_the_message_tells_what_failed_and_what_waits(mixed: MainWindow, qtbot) -> None:
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Return, _CTRL | _SHIFT)
    settle(qtbot, mixed)
    assert mixed.message.text == "Took in 4 offers from 2 files. 1 file couldn't be read, 2 lines wait for answers."
    assert mixed.message._action.text() == "Undo"


def test_one_file_taken_in_tells_of_its_own_lines_only(mixed: MainWindow, qtbot) -> None:
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Return, _CTRL)
    settle(qtbot, mixed)
    assert mixed.message.text == "Took in 2 offers from list 1.csv. 1 line waits for answers."


def test_offers_without_a_vendor_are_told_to_wait(real_window: MainWindow, qtbot, tmp_path: Path) -> None:
    nobody = tmp_path / "nobody.csv"
    nobody.write_text(f"{_HEAD}{_ROW.format(1200)}".replace("Vendor,", "").replace("Vexholm Papir,", ""), "utf-8")
    real_window.take_in_files([*_files(tmp_path, _ROW.format(1200), _ROW.format(1250)), nobody])
    settle(qtbot, real_window)
    real_window.take_in.agree_all.click()
    settle(qtbot, real_window)
    assert real_window.message.text == "Took in 2 offers from 2 files. 1 offer waits for the vendor's name."


def test_one_file_is_left_and_the_others_stay(mixed: MainWindow, qtbot) -> None:
    take_in = mixed.take_in
    take_in.listed.leave_one.click()
    settle(qtbot, mixed)
    assert mixed.message.text == "Left list 1.csv; nothing of it was stored."
    assert mixed.stack.currentWidget() is take_in
    assert [file.path.name for file in take_in._files] == ["broken 0.xlsx", "list 2.csv"]
    assert take_in.at_hand.path.name == "list 2.csv"


def test_what_was_answered_of_a_file_that_is_left_waits_on_today(mixed: MainWindow, qtbot) -> None:
    take_in = mixed.take_in
    take_in.understood.questions.answered.emit("grade:fenlight", "SBS")
    settle(qtbot, mixed)
    take_in.listed.leave_one.click()
    settle(qtbot, mixed)
    assert [sheet.path.name for sheet in take_in.begun.listing()] == ["list 1.csv"]
