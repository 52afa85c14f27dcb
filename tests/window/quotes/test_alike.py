"""Points that look alike: each at its place on a screen, and in a file of shapes each is there."""

import re
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QImage, QPainter
from PySide6.QtSvg import QSvgRenderer

from tests.window.conftest import settle
from tests.window.fixtures.invented_door import InventedDoor
from tracker.desk.standing import Standing
from tracker.window.look.marks import pen_and_fill, shape_of
from tracker.window.quotes import alike
from tracker.window.quotes.alike import AlikePoints
from tracker.window.quotes.copies import Copies, with_copies
from tracker.window.quotes.drawing import Drawing
from tracker.window.quotes.overlay import apart
from tracker.window.quotes.plot import Plot
from tracker.window.quotes.save_picture import to_save

pytestmark = pytest.mark.gui
X, Y = np.array([1.0, 2.0, 3.0, np.nan, 2.5]), np.array([10.0, 30.0, 20.0, 15.0, np.nan])


def drawing(marks: Standing = Standing.ABOVE, **changes: object) -> Drawing:
    return Drawing(np.arange(len(X)), X, Y, np.full(len(X), marks, dtype=np.int8), **changes)


@pytest.fixture
def plot(theme, qtbot) -> Plot:
    plot = Plot(theme, str)
    qtbot.addWidget(plot)
    plot.resize(600, 400)
    with qtbot.waitExposed(plot):
        plot.show()
    plot.show_drawing(drawing())
    qtbot.wait(20)
    return plot


def coloured(image: QImage, at: tuple[float, float], colour: str) -> bool:
    """Whether a colour is at a place, in pixels of the picture's own measure."""
    fine = image.devicePixelRatio()
    wanted, found = QColor(colour), image.pixelColor(round(at[0] * fine), round(at[1] * fine))
    return all(abs(a - b) < 12 for a, b in zip(wanted.getRgb()[:3], found.getRgb()[:3], strict=True))


def test_every_known_point_has_its_mark(plot) -> None:
    image, above = plot.grab().toImage(), plot.theme.palette.above
    across, down = plot.pixels(X[:3], Y[:3])
    assert all(coloured(image, at, above) for at in zip(across, down, strict=True))
    between = plot.pixels(np.array([1.5]), np.array([28.0]))
    assert not coloured(image, (between[0][0], between[1][0]), above)


def test_a_mark_keeps_its_shape_at_any_fineness(theme) -> None:
    pen, fill = pen_and_fill(Standing.ABOVE, theme.palette)
    points = AlikePoints(X, Y, symbol=shape_of(Standing.ABOVE), size=14, pen=pen, fill=fill)
    coarse, fine = (points._picture(ratio).toImage() for ratio in (1.0, 2.0))
    assert fine.width() == 2 * coarse.width()
    # A triangle: wide below, nothing in its upper corners.
    for image in (coarse, fine):
        low = image.pixelColor(round(0.3 * image.width()), round(0.75 * image.height()))
        high = image.pixelColor(round(0.2 * image.width()), round(0.2 * image.height()))
        assert low.alpha() > 200
        assert high.alpha() == 0


def test_points_out_of_view_are_not_drawn(plot) -> None:
    (points,) = (item for item in plot._items if isinstance(item, AlikePoints))
    assert len(points.x) == 3
    plot.setRange(xRange=(0.5, 1.5), yRange=(5, 15), padding=0)
    plot.grab()
    across, down = points._in_view(points.sceneTransform())
    assert len(across) == len(down) == 1


@pytest.mark.parametrize("most", [2, 1_000])
def test_a_file_of_shapes_has_every_point_at_its_place(open_window, qtbot, tmp_path: Path, monkeypatch, most) -> None:
    monkeypatch.setattr(alike, "_MOST_SHAPES", most)
    window = open_window(InventedDoor(300))
    window.go_quotes()
    settle(qtbot, window)
    picture = window.quotes.picture
    to_save(picture, tmp_path / "prices.svg")()
    to_save(picture, tmp_path / "prices.png")()
    text = (tmp_path / "prices.svg").read_text(encoding="utf-8")
    marks = picture.plot.drawing.marks
    copied = sum(int((marks == mark).sum()) - 1 for mark in set(marks.tolist()) if (marks == mark).sum() > most)
    assert text.count("<use ") == copied
    assert (copied > 0) is (most == 2)
    assert "M-7000" not in text
    pixels = QImage(str(tmp_path / "prices.png"))
    shapes = QImage(pixels.size(), QImage.Format.Format_RGB32)
    painter = QPainter(shapes)
    QSvgRenderer(str(tmp_path / "prices.svg")).render(painter, QRectF(shapes.rect()))
    painter.end()
    # Letters are set a little otherwise; the points are most of the rest, and all in one place.
    differing = np.abs(_grey(shapes) - _grey(pixels)) > 60
    inside = picture.plot.plot_area().translated(QPointF(picture.plot.pos()) + QPointF(16, 16))
    part = differing[
        round(2 * inside.top()) : round(2 * inside.bottom()), round(2 * inside.left()) : round(2 * inside.right())
    ]
    assert part.mean() < 0.02


def _grey(image: QImage) -> np.ndarray:
    plain = image.convertToFormat(QImage.Format.Format_Grayscale8)
    rows = np.frombuffer(plain.constBits(), np.uint8).reshape(plain.height(), plain.bytesPerLine())
    return rows[:, : plain.width()].astype(int)


def test_only_a_signed_shape_is_copied() -> None:
    one = Copies(np.array([1.0, 2.5]), np.array([0.0, -3.0]))
    plain = '<path fill="a" d="M0,0 L1,1"/>\n'
    sign = f'<path d="M-7000,-{one.number} L-7001,-{one.number} "/>\n'
    assert with_copies(plain * 2, [one]) == plain * 2
    written = with_copies(plain + sign + plain + plain, [one])
    assert re.findall(r'<use [^>]*x="([^"]*)" y="([^"]*)"', written) == [("1.00", "0.00"), ("2.50", "-3.00")]
    assert written.count("<path") == 3
    assert written.index("<use") > written.index("id=")


def test_an_offer_of_the_front_is_ringed_and_no_other(plot) -> None:
    plot.show_drawing(drawing(Standing.IN_LINE, front=np.array([1])))
    image, ink = plot.grab().toImage(), plot.theme.palette.ink
    across, down = plot.pixels(X[:3], Y[:3])

    def ringed(place: int) -> bool:
        around = [(across[place] + 7.5 * c, down[place] + 7.5 * s) for c, s in ((1, 0), (-1, 0), (0, 1), (0, -1))]
        near = [(x + dx, y + dy) for x, y in around for dx in (-1, 0, 1) for dy in (-1, 0, 1)]
        return sum(image.pixelColor(round(x), round(y)).lightness() < 140 for x, y in near) >= 4

    assert QColor(ink).lightness() < 100
    assert [ringed(place) for place in range(3)] == [False, True, False]


def test_of_many_rings_at_one_pixel_one_is_drawn() -> None:
    few = np.array([5.0, 5.1, 9.0])
    assert len(apart(few, few)[0]) == 3
    many = np.repeat(few, 100)
    across, down = apart(many, many)
    assert across.tolist() == down.tolist() == [5.0, 9.0]
