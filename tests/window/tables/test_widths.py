"""How a table's width goes round: words whole where there is room, and nobody keeps what another needs."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtGui import QFontMetrics

from tracker.window.tables.columns import Column, fixed
from tracker.window.tables.widths import Wanted, shared, widest

VENDOR, LEAD, VALID = Wanted(110, 150, 4), Wanted(80, 80), Wanted(98, 60)


@pytest.mark.parametrize(
    ("room", "widths"),
    [
        pytest.param(400, [222, 80, 98], id="room to spare goes to whoever takes a share"),
        pytest.param(300, [150, 80, 70], id="words come before what is only asked for"),
        pytest.param(270, [130, 80, 60], id="as whole as may be"),
        pytest.param(200, [110, 80, 60], id="nobody below the least"),
    ],
)
def test_how_a_width_is_shared(room: int, widths: list[int]) -> None:
    assert shared([VENDOR, LEAD, VALID], room) == widths


@given(
    st.lists(st.builds(Wanted, st.integers(20, 200), st.integers(20, 400), st.integers(0, 9)), min_size=1),
    st.integers(0, 3000),
)
def test_no_column_is_narrower_than_its_least_and_the_room_is_kept(columns: list[Wanted], room: int) -> None:
    widths = shared(columns, room)
    assert all(width >= column.least for width, column in zip(widths, columns, strict=True))
    assert sum(widths) <= max(room, sum(column.least for column in columns))
    if room >= sum(max(column.asked, column.needed) for column in columns):
        assert all(width >= column.needed for width, column in zip(widths, columns, strict=True))


@pytest.mark.gui
@pytest.mark.parametrize(("text", "lines"), [("SBS C1S sheets", 1), ("The sheet gives no basis weight. " * 3, 2)])
def test_only_what_is_long_is_broken(qapp, text: str, lines: int) -> None:
    column = Column("board", fixed("Board"), lambda data, row: data[row], lambda data: np.arange(len(data)), wraps=True)
    on_one_line = QFontMetrics(qapp.font()).horizontalAdvance(text)
    wanted = widest(column, [text], [0], qapp.font(), 2)
    assert on_one_line / lines < wanted < on_one_line / lines * 1.4 + 20
