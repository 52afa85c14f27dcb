"""One price far off squashes no picture: it stands at the edge, with an arrow and its figure."""

import numpy as np
import pytest

from tests.window.conftest import settle
from tracker.window.quotes.drawing import Drawing
from tracker.window.quotes.frame import far_off_words, frame_of, held_in, limits_of

NOTHING = np.empty(0)
CROWD = np.linspace(95.0, 105.0, 40)


def drawing_of(y: np.ndarray) -> Drawing:
    places = np.arange(len(y))
    return Drawing(places, places.astype(float), y, np.full(len(y), 5, np.int8), labels=[(3, "Tolmere 18 pt")])


@pytest.mark.parametrize(
    ("y", "held"),
    [
        (CROWD, False),
        (np.append(CROWD, 118.0), False),
        (np.append(CROWD, 180.0), True),
        (np.append(CROWD, -300.0), True),
        (np.array([1.0, 2.0, 90.0]), False),
        (np.append(CROWD, np.full(10, 400.0)), False),
        (np.full(20, 7.0), False),
        (NOTHING, False),
    ],
    ids=["crowd", "near", "far above", "far below", "too few to tell", "too many to hold", "all alike", "none"],
)
def test_only_what_would_squash_the_rest_is_held_at_the_edge(y, held: bool) -> None:
    assert (limits_of(y, NOTHING) is not None) is held


def test_what_lies_behind_the_points_is_always_shown() -> None:
    low, high = limits_of(np.append(CROWD, 900.0), np.array([60.0, 140.0]))
    assert low == 60.0
    assert 140.0 < high < 200.0


def test_a_far_point_is_drawn_at_the_edge_and_told_first_with_its_figure() -> None:
    held = held_in(drawing_of(np.append(CROWD, 400.0)), lambda place: f"offer {place}", lambda y: f"{y:.0f}")
    assert held.labels == [(40, "offer 40 400"), (3, "Tolmere 18 pt")]
    assert held.beyond.tolist() == [0] * 40 + [1]
    assert 105.0 < held.y_shown[40] < 120.0
    assert held.y[40] == 400.0
    assert frame_of(held, 400.0)[3] < 125.0
    assert "1 price further off: at the edge" in far_off_words(held)


@pytest.mark.parametrize("height", [90.0, 150.0, 400.0, 900.0])
def test_however_low_the_picture_the_arrow_has_room(height: float) -> None:
    held = held_in(drawing_of(np.append(CROWD, 400.0)), str, str)
    _, _, bottom, top = frame_of(held, height)
    assert (top - held.y_shown[40]) / (top - bottom) * height >= 18


def test_figures_already_told_are_not_told_twice() -> None:
    far = drawing_of(np.append(CROWD, 400.0))
    assert held_in(far, lambda _: "Varnik +280 %", lambda _: "+280 %").labels[0] == (40, "Varnik +280 %")
    near = drawing_of(CROWD)
    assert held_in(near, str, str) is near
    assert far_off_words(near) == ""


@pytest.mark.gui
def test_lead_times_can_be_read_beside_an_outlier_and_the_best_choices_are_named(window, qtbot) -> None:
    window.go_quotes()
    quotes = window.quotes
    quotes.rail.choose("")
    quotes.picture.choose(2)
    settle(qtbot, window)
    plot = quotes.picture.plot
    drawing = plot.drawing
    assert drawing.beyond.any()
    _, (low, high) = plot.getViewBox().viewRange()
    in_line = drawing.y[drawing.marks > 2]
    assert (in_line.max() - in_line.min()) > (high - low) / 4
    assert "with an arrow" in quotes.picture._caption.text()
    told = dict(drawing.labels)
    for place in drawing.front:
        vendor = quotes._offers.name("vendor", int(drawing.rows[place])).split()[0]
        assert told[int(place)].startswith(vendor)
    boxes = [box for box, _, _ in plot._overlay._boxes]
    assert any(text == told[int(place)] for place in drawing.front for _, text, _ in plot._overlay._boxes)
    assert not any(box.meets(other) for number, box in enumerate(boxes) for other in boxes[number + 1 :])
    row = quotes.picture.data()[int(np.flatnonzero(drawing.y > high)[0])]
    assert row["price"] > row["expected"]


@pytest.mark.gui
def test_all_stays_in_view_when_the_window_grows_until_the_picture_is_moved(window, qtbot) -> None:
    window.go_quotes()
    plot = window.quotes.picture.plot

    def bottom_px() -> float:
        return plot.plot_area().bottom() - float(plot.pixels(plot.drawing.x, plot.drawing.y_shown)[1].max())

    window.resize(1024, 700)
    settle(qtbot, window)
    window.resize(1600, 1000)
    settle(qtbot, window)
    assert bottom_px() > 0
    for kind in range(4):
        window.quotes.picture.choose(kind)
        settle(qtbot, window)
        inside = plot.plot_area()
        assert all(inside.contains(box.x, box.y + box.height) for box, _, _ in plot._overlay._boxes)
    plot.getViewBox().scaleBy((0.5, 0.5))
    plot.getViewBox().sigRangeChangedManually.emit([True, True])
    moved = plot.getViewBox().viewRange()
    window.resize(1500, 900)
    settle(qtbot, window)
    assert np.allclose(plot.getViewBox().viewRange(), moved)
