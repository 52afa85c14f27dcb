"""Prices over time agree with their own verdicts, whatever they are shown per."""

from datetime import date

import numpy as np
import pytest

from tests.window.conftest import settle
from tracker.desk.comparison import Per
from tracker.desk.standing import Standing
from tracker.window.door import Door
from tracker.window.main_window import MainWindow

pytestmark = pytest.mark.gui
CRB = "CRB"


@pytest.fixture
def demo_window(open_window, qtbot, tmp_path, reading_here) -> MainWindow:
    from tracker.desk.demo import fresh_demo

    window = open_window(Door(fresh_demo(tmp_path)))
    window.go_quotes()
    window.quotes.rail.choose(CRB)
    window.quotes.picture.choose(3)
    settle(qtbot, window)
    return window


def test_what_is_in_line_by_the_band_lies_on_the_ribbon(demo_window, qtbot) -> None:
    _agrees_with_its_verdicts(demo_window)
    assert "per MSF every caliper has a band of its own" in demo_window.quotes.picture._caption.text()
    demo_window.session.choose_footing(per=Per.TONNE)
    settle(qtbot, demo_window)
    _agrees_with_its_verdicts(demo_window)
    assert "per MSF" not in demo_window.quotes.picture._caption.text()


def _agrees_with_its_verdicts(window: MainWindow) -> None:
    drawing = window.quotes.picture.plot.drawing
    (ribbon,) = drawing.ribbons
    low, high = (np.interp(drawing.x, ribbon.x, edge) for edge in (ribbon.low, ribbon.high))
    inside = (drawing.y >= low) & (drawing.y <= high)
    within = window.session.comparison.place[drawing.rows] == 0
    counts = window.session.comparison.current[drawing.rows] & (drawing.x > date(2026, 10, 2).toordinal())
    assert counts.sum() > 50
    assert (inside == within)[counts].all()
    assert not inside[drawing.marks == Standing.ABOVE].any()
    assert window.quotes.picture._unit.text() == "USD per tonne"
