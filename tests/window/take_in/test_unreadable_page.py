"""A file that can't be read: why stands in the middle, and it can be read again or another be chosen."""

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog

from tests.window.conftest import settle
from tracker.window.main_window import MainWindow

pytestmark = pytest.mark.gui

_FINE = "Vendor,Grade,Caliper (pt),Basis weight (g/m²),Price USD,Unit\nVexholm Papir,SBS,16,300,1200,tonne\n"


@pytest.fixture
def broken(real_window: MainWindow, qtbot, tmp_path: Path) -> Path:
    path = tmp_path / "prices.xlsx"
    path.write_bytes(b"\x00\x01nothing of a workbook" * 20)
    real_window.take_in_files([path])
    settle(qtbot, real_window)
    return path


def test_why_stands_in_the_middle_of_the_page(real_window: MainWindow, qtbot, broken: Path) -> None:
    take_in = real_window.take_in
    why = take_in.unreadable.why
    middle = why.mapTo(take_in, why.rect().center())
    assert abs(middle.x() - take_in.width() / 2) < 5
    assert abs(middle.y() - take_in.height() / 2) < take_in.height() / 4
    assert "prices.xlsx" in why.text()


def test_a_file_that_was_saved_anew_is_read_again(real_window: MainWindow, qtbot, broken: Path) -> None:
    take_in = real_window.take_in
    take_in.unreadable.again.setFocus()
    qtbot.keyClick(take_in.unreadable.again, Qt.Key.Key_Return)
    settle(qtbot, real_window)
    assert take_in.unreadable.isVisible(), "nothing has changed yet"
    broken.write_text(_FINE, encoding="utf-8")
    take_in.unreadable.again.click()
    settle(qtbot, real_window)
    assert not take_in.unreadable.isVisible()
    assert take_in.agree.text() == "Take in 1 offer"
    assert take_in.sheet.isVisible()


def test_another_file_is_chosen_in_its_place(
    real_window: MainWindow, qtbot, broken: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    other = broken.with_name("other.csv")
    other.write_text(_FINE, encoding="utf-8")
    monkeypatch.setattr(QFileDialog, "getOpenFileNames", lambda *_: ([str(other)], ""))
    real_window.take_in.unreadable.another.click()
    settle(qtbot, real_window)
    assert [file.path.name for file in real_window.take_in._files] == ["other.csv"]
    assert not real_window.take_in.unreadable.isVisible()
