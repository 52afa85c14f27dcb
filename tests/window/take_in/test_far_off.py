"""Prices to doubt are counted at the head, with a way to each; the list keeps its room beside what was read."""

from pathlib import Path

import pytest

from tests.window.conftest import settle
from tracker.window.main_window import MainWindow

pytestmark = pytest.mark.gui

_LINES = 14


@pytest.fixture
def with_far_off(real_window: MainWindow, qtbot, tmp_path: Path) -> MainWindow:
    """A sheet whose third and last price can hardly be meant per tonne."""
    prices = [1210 + at for at in range(_LINES)]
    prices[2] = prices[-1] = 96
    rows = [f"Fenlight {10 + at},SBS,{10 + at},{250 + 10 * at},{price},tonne" for at, price in enumerate(prices)]
    path = tmp_path / "ostrel.csv"
    head = "Ostrel Karton Ltd,,,,,\n\nBoard,Grade,Caliper (pt),Basis weight (g/m²),Price USD,Unit\n"
    path.write_text(head + "\n".join(rows) + "\n", encoding="utf-8")
    real_window.resize(1280, 800)
    real_window.take_in_files([path])
    settle(qtbot, real_window)
    return real_window


def test_they_are_counted_and_gone_to_one_after_another(with_far_off: MainWindow) -> None:
    understood = with_far_off.take_in.understood
    assert understood.far_off.isVisible()
    assert "2 prices lie far outside" in understood.far_off.text()
    gone_to = []
    for _ in range(3):
        understood.far_off.click()
        gone_to.append(understood.table.currentIndex().row())
        assert "far outside" in understood.line.notes_text()
    assert gone_to == [2, _LINES - 1, 2]


def test_a_line_looked_at_leaves_the_list_most_of_the_room(with_far_off: MainWindow, qtbot) -> None:
    understood = with_far_off.take_in.understood
    understood.table.selectRow(4)
    settle(qtbot, with_far_off)
    assert understood.line.isVisible()
    assert understood.table.height() > understood.line.height()


def test_a_sheet_without_any_says_nothing(window: MainWindow, qtbot) -> None:
    window.take_in_files([Path("one.xlsx")])
    settle(qtbot, window)
    assert window.take_in.understood.far_off.isHidden()
