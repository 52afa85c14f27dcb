"""The file's name is read in full: where the tabs' chooser leaves it no room, on a line of its own."""

from pathlib import Path

import pytest
from openpyxl import Workbook

from tests.window.conftest import settle
from tracker.window.main_window import MainWindow

pytestmark = pytest.mark.gui


@pytest.mark.parametrize(("name", "tabs"), [("Marrowdale price list.xlsx", 2), ("list.xlsx", 1), ("list.xlsx", 2)])
def test_the_name_is_whole(real_window: MainWindow, qtbot, tmp_path: Path, name: str, tabs: int) -> None:
    book = Workbook()
    sheets = [book.active, *(book.create_sheet(f"Prices of mill {number}") for number in range(1, tabs))]
    for sheet in sheets:
        sheet.append(["Board", "Grade", "Caliper (pt)", "Basis weight (g/m²)", "Price USD/t"])
        sheet.append(["Fenlight", "Tessel", 16, 300, 1216])
    path = tmp_path / name
    book.save(path)
    for width in (1000, 1280):
        real_window.resize(width, 700)
        real_window.take_in_files([path])
        settle(qtbot, real_window)
        panel = real_window.take_in.sheet
        assert panel._title.text() == name
        assert panel._title.width() >= panel._title.fontMetrics().horizontalAdvance(name)
        beside = panel._sheets.y() < panel._title.geometry().bottom()
        assert beside or name.startswith("Marrowdale")


def test_a_very_long_name_keeps_its_two_ends(real_window: MainWindow, qtbot, tmp_path: Path) -> None:
    path = tmp_path / f"offer {'of many words ' * 12}2026.csv"
    path.write_text("Board,Grade,Caliper (pt),Price USD/t\nFenlight,Tessel,16,1216\n", encoding="utf-8")
    real_window.resize(1000, 700)
    real_window.take_in_files([path])
    settle(qtbot, real_window)
    text = real_window.take_in.sheet._title.text()
    assert text.startswith("offer of")
    assert text.endswith("2026.csv")
    assert len(text) > 20
