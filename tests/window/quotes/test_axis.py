"""What stands along the edges of a picture can be read: no word over another, none cut."""

from itertools import pairwise

import numpy as np
import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter, QPixmap

from tests.window.conftest import settle
from tests.window.fixtures.invented_door import InventedDoor
from tracker.window.look.figures import Units
from tracker.window.look.theme import Theme
from tracker.window.quotes.axis import side_by_side
from tracker.window.quotes.drawing import Drawing
from tracker.window.quotes.plot import Plot

pytestmark = pytest.mark.gui


def at(left: float, text: str, width: float = 40.0) -> tuple[QRectF, int, str]:
    return (QRectF(left, 0, width, 14), 0, text)


@pytest.mark.parametrize(
    ("words", "read"),
    [
        ([at(0, "20 pt"), at(30, "21 pt"), at(60, "22 pt")], ["20 pt", "22 pt"]),
        ([at(60, "22 pt"), at(0, "20 pt")], ["20 pt", "22 pt"]),
        ([at(0, "Ostrel"), at(30, "\nTolmere"), at(60, "Varnik")], ["Ostrel", "\nTolmere", "Varnik"]),
        ([], []),
    ],
)
def test_words_that_would_meet_give_way(words, read: list[str]) -> None:
    assert [text for _, _, text in side_by_side(words, 500.0)] == read


def test_a_word_at_the_edge_is_moved_in_where_it_can_be_read() -> None:
    (place, _, text), *others = side_by_side([at(80, "Dec 2026"), at(0, "Nov 2026")], 100.0)[::-1]
    assert (place.right(), text) == (100.0, "Dec 2026")
    assert [text for _, _, text in others] == ["Nov 2026"]


def shown_words(plot: Plot) -> list[tuple[QRectF, int, str]]:
    axis = plot.getAxis("bottom")
    drawn = QPixmap(10, 10)
    painter = QPainter(drawn)
    painter.setFont(axis.style["tickFont"])
    words = axis.generateDrawSpecs(painter)[2]
    painter.end()
    return words


@pytest.mark.parametrize("width", [320, 420, 600, 1000])
def test_calipers_close_together_are_read_at_every_width(theme: Theme, qtbot, width: int) -> None:
    calipers = np.array([10.0, 19.5, 20.0, 21.0, 22.0, 40.0])
    plot = Plot(theme, lambda _: "")
    qtbot.addWidget(plot)
    plot.resize(width, 300)
    ticks = [(each, f"{each:g} pt") for each in calipers]
    marks = np.full(6, 5, np.int8)
    plot.show_drawing(Drawing(np.arange(6), calipers, np.linspace(1, 2, 6), marks, x_ticks=ticks, x_also=(25.4, " µm")))
    plot.show()
    words = shown_words(plot)
    assert len(words) >= 3
    assert all(left[0].right() < right[0].left() for left, right in pairwise(words))


def test_the_last_month_is_told_whole(open_window, qtbot) -> None:
    window = open_window(InventedDoor(300))
    window.go_quotes()
    window.quotes.rail.choose("SBS")
    window.quotes.picture.choose(3)
    settle(qtbot, window)
    plot = window.quotes.picture.plot
    words = shown_words(plot)
    axis = plot.getAxis("bottom")
    assert [text for _, _, text in words] == ["Nov 2026", "Dec 2026"]
    assert max(place.right() for place, _, _ in words) <= axis.mapRectFromParent(axis.geometry()).right()


def test_a_price_per_tonne_is_told_per_short_ton_too_in_us_units_and_only_there(window, qtbot) -> None:
    window.go_quotes()
    quotes = window.quotes
    window.resize(1600, 1000)
    quotes.picture.choose(1)
    settle(qtbot, window)
    axis = quotes.picture.plot.getAxis("left")
    assert axis.tickStrings([0.0, 1000.0], 1.0, 500.0) == ["0\n0 /ST", "1,000\n907 /ST"]
    quotes.picture.choose(0)
    assert axis.tickStrings([50.0], 1.0, 10.0) == ["50"]
    window.session.choose_units(Units.METRIC)
    settle(qtbot, window)
    quotes.picture.choose(1)
    assert axis.tickStrings([1000.0], 1.0, 500.0) == ["1,000"]
