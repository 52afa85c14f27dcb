"""A long note makes its own row tall and no other; boards' names stand in two lines where one does not hold them."""

from pathlib import Path

import pytest
from PySide6.QtCore import Qt

from tests.window.conftest import settle
from tracker.window.main_window import MainWindow
from tracker.window.take_in.line_columns import LINE_COLUMNS

pytestmark = pytest.mark.gui

_KEYS = [column.key for column in LINE_COLUMNS]


def _read(window: MainWindow, qtbot, path: Path, *rows: str):
    head = "Ostrel Karton Ltd,,,,\n\nBoard,Grade,Caliper (pt),Basis weight (g/m²),Price USD/t\n"
    path.write_text(head + "".join(f"{row}\n" for row in rows), encoding="utf-8")
    window.resize(1280, 800)
    window.take_in_files([path])
    settle(qtbot, window)
    return window.take_in.understood.table


def test_one_long_note_makes_one_row_tall(real_window: MainWindow, qtbot, tmp_path: Path) -> None:
    rows = [f"Fen {at},SBS,16,300,{'=E3*1.04' if at == 7 else 1200 + at}" for at in range(20)]
    table = _read(real_window, qtbot, tmp_path / "a.csv", *rows)
    heights = [table.rowHeight(row) for row in range(20)]
    assert [row for row, height in enumerate(heights) if height > min(heights)] == [0], "what can't be used is first"
    table.sortByColumn(_KEYS.index("price"), Qt.SortOrder.DescendingOrder)
    place = real_window.take_in.understood.model.row_of(7)
    heights = [table.rowHeight(row) for row in range(20)]
    assert [row for row, height in enumerate(heights) if height > min(heights)] == [place]


def test_another_file_begins_with_rows_of_one_height(real_window: MainWindow, qtbot, tmp_path: Path) -> None:
    _read(real_window, qtbot, tmp_path / "a.csv", "Fen,SBS,16,300,=E3*1.04", "Fen,SBS,18,330,1216")
    table = _read(real_window, qtbot, tmp_path / "b.csv", "Fen,SBS,16,300,1204", "Fen,SBS,18,330,1216")
    assert table.rowHeight(0) == table.rowHeight(1) < 32


def test_long_names_of_boards_stand_in_two_lines(real_window: MainWindow, qtbot, tmp_path: Path) -> None:
    names = [f"A folding boxboard of many words with a {side} reverse" for side in ("white", "cream")]
    table = _read(real_window, qtbot, tmp_path / "a.csv", *(f"{name},FBB,16,250,1216" for name in names))
    assert table.rowHeight(0) == table.rowHeight(1) > 36
