"""A last day that reads two ways holds nothing back and can be settled; lapsed either way, its offer counts no more."""

from pathlib import Path

import pytest
from PySide6.QtWidgets import QPushButton

from tests.window.conftest import settle
from tracker.window.main_window import MainWindow

pytestmark = pytest.mark.gui


def _read(window: MainWindow, qtbot, path: Path, day: str, price: int = 1216) -> None:
    path.write_text(
        f"Ostrel Karton Ltd,,,,,\nOffer valid until {day},,,,,\n\n"
        f"Board,Grade,Caliper (pt),Basis weight (g/m²),Price USD,Unit\nFenlight 16,SBS,16,300,{price},tonne\n",
        encoding="utf-8",
    )
    window.take_in_files([path])
    settle(qtbot, window)


def _take_in(window: MainWindow, qtbot) -> None:
    window.take_in.agree.click()
    settle(qtbot, window)


def test_it_is_asked_and_holds_nothing_back(real_window: MainWindow, qtbot, tmp_path: Path) -> None:
    _read(real_window, qtbot, tmp_path / "one.csv", "05/06/2099")
    take_in = real_window.take_in
    assert take_in.agree.isEnabled()
    (card,) = take_in.understood.questions._asked
    assert card.question.text.endswith("can be read as 5 Jun 2099 or 6 May 2099.")
    assert not any(each.text() == "Leave these lines out" for each in card.findChildren(QPushButton))
    next(each for each in card.findChildren(QPushButton) if each.accessibleName().startswith("day first")).click()
    settle(qtbot, real_window)
    assert str(take_in.at_hand.taken.reading.lines[0].offer.valid_until) == "2099-06-05"
    _take_in(real_window, qtbot)
    _read(real_window, qtbot, tmp_path / "two.csv", "07/08/2099", 1226)
    assert str(take_in.at_hand.taken.reading.lines[0].offer.valid_until) == "2099-08-07"
    (recalled,) = take_in.at_hand.taken.recalled
    assert (recalled.key, recalled.value) == ("date-order", "dmy")


@pytest.mark.parametrize(("day", "current"), [("05/06/2024", False), ("05/06/2099", True)])
def test_lapsed_by_both_readings_it_is_not_current(real_window, qtbot, tmp_path, day: str, current: bool) -> None:
    _read(real_window, qtbot, tmp_path / "one.csv", day)
    _take_in(real_window, qtbot)
    comparison = real_window.session.comparison
    assert list(comparison.snapshot.valid_until) == [-1]
    assert list(comparison.current) == [current]
