"""Two prices of one board stand apart in the list by the order size that each is for."""

from pathlib import Path

import pytest

from tests.window.conftest import settle
from tracker.window.main_window import MainWindow

pytestmark = pytest.mark.gui


def test_order_sizes_are_shown_where_there_are_any(real_window: MainWindow, qtbot, tmp_path: Path) -> None:
    table = real_window.take_in.understood.table
    place = [column.key for column in real_window.take_in.understood.model.columns].index("order")
    for name, sizes, shown in (("one.csv", ("", ""), False), ("two.csv", ("below 5 ST", "5-20 ST"), True)):
        path = tmp_path / name
        rows = "".join(f"Fenlight,SBS,{16 + 2 * at},66,{size},{1216 - at}\n" for at, size in enumerate(sizes))
        head = "Board,Grade,Caliper (pt),Weight (lb/MSF),Order size,Price USD/ST\n"
        path.write_text(f"Ostrel Karton Ltd\n\n{head}{rows}", encoding="utf-8")
        real_window.take_in_files([path])
        settle(qtbot, real_window)
        assert table.isColumnHidden(place) is not shown
    model = real_window.take_in.understood.model
    assert [model.index(row, place).data() for row in range(2)] == ["below 5 ST", "5–20 ST"]
