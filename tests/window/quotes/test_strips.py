"""Strips by grade and by vendor: bands that agree with their verdicts, and names that can be read."""

from dataclasses import replace

import numpy as np
import pytest
from PySide6.QtGui import QFontMetricsF, QPainter, QPixmap

from tests.window.conftest import settle
from tracker.desk.comparison import Per
from tracker.window.look.figures import Units
from tracker.window.main_window import MainWindow
from tracker.window.quotes.plot import Plot
from tracker.window.quotes.spread_picture import called, like_with_like

pytestmark = pytest.mark.gui


def test_names_are_whole_words_that_tell_vendors_apart() -> None:
    names = [
        "PELL HOLLOW PAPERBOARD CO.",
        "Kestrelby Carton Stock LLC",
        "Tresk & Co.",
        "Oak One",
        "Oak Two",
        "",
    ]
    assert called(names) == ["PELL HOLLOW", "Kestrelby", "Tresk", "Oak One", "Oak Two", ""]


def test_per_msf_the_strips_are_per_tonne_with_the_band_of_the_tonne(window: MainWindow) -> None:
    made = window.session.comparison
    assert made.footing.per is Per.MSF
    alike = like_with_like(made)
    known = np.isfinite(made.price)
    assert alike.footing.per is Per.TONNE
    np.testing.assert_allclose((alike.price / alike.expected)[known], (made.price / made.expected)[known])
    np.testing.assert_allclose((alike.band_high / alike.price)[known], (made.band_high / made.price)[known])
    at_18_pt = replace(made, footing=replace(made.footing, equal_caliper_um=457.2))
    assert like_with_like(at_18_pt) is at_18_pt


def test_calipers_below_the_picture_are_told_in_both_units(window: MainWindow, qtbot) -> None:
    window.resize(1600, 1000)
    window.go_quotes()
    picture = window.quotes.picture
    axis = picture.plot.getPlotItem().getAxis("bottom")
    for units, value, said in (
        (Units.US, 18.0, "457 µm"),
        (Units.US, 3.0, "76.2 µm"),
        (Units.METRIC, 457.2, "18.0 pt"),
    ):
        window.session.choose_units(units)
        picture.choose(0)
        settle(qtbot, window)
        assert axis.tickStrings([value], 1, 1)[0].endswith(f"\n{said}")
        picture.choose(2)
        assert axis.tickStrings([2.0], 1, 1) == ["2 wk"]


def test_vendors_names_below_the_strips_do_not_run_into_each_other(window: MainWindow, qtbot) -> None:
    window.go_quotes()
    window.quotes.rail.choose("SBS")
    window.quotes.picture.choose(1)
    for size in ((1024, 700), (1600, 1000)):
        window.resize(*size)
        settle(qtbot, window)
        _stand_apart(window.quotes.picture.plot)


def _stand_apart(plot: Plot) -> None:
    ticks = plot.getPlotItem().getAxis("bottom")._tickLevels[0]
    picture = QPixmap(plot.size())
    painter = QPainter(picture)
    _, _, drawn = plot.getPlotItem().getAxis("bottom").generateDrawSpecs(painter)
    painter.end()
    assert len(drawn) == len(ticks)
    metrics, ends = QFontMetricsF(plot.font()), {}
    across, _ = plot.pixels(np.array([at for at, _ in ticks]), np.zeros(len(ticks)))
    assert len(ticks) > 3
    for middle, (_, text) in zip(across, ticks, strict=True):
        line, wide = text.count("\n"), metrics.horizontalAdvance(text.strip())
        assert "…" not in text
        assert ends.get(line, 0.0) <= middle - wide / 2
        ends[line] = middle + wide / 2
