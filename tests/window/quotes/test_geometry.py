import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from tracker.window.quotes.geometry import Box, place_labels, ribbon, spread, thinned

pixels = st.tuples(st.integers(0, 400), st.integers(0, 300))


@given(st.lists(pixels, min_size=1, max_size=20))
def test_labels_never_overlap_nor_leave_the_picture(points: list[tuple[float, float]]) -> None:
    area = Box(0, 0, 400, 300)
    placed = [box for box in place_labels(points, [(90.0, 16.0)] * len(points), area) if box is not None]
    for number, box in enumerate(placed):
        assert box.inside(area)
        assert not any(box.meets(other) for other in placed[number + 1 :])


def test_a_lone_label_stands_at_the_right_and_keeps_off_the_crowd() -> None:
    area = Box(0, 0, 400, 300)
    assert place_labels([(100, 100)], [(80, 16)], area)[0] == Box(113, 92, 80, 16)
    crowd = (120.0 + np.arange(0.0, 60.0, 10.0), np.full(6, 100.0))
    moved = place_labels([(100, 100)], [(80, 16)], area, crowd)[0]
    assert moved is not None
    assert moved.covered(*crowd) == 0


@pytest.mark.parametrize(("y", "top"), [(296, 284), (5, 0), (150, 142)])
def test_a_label_at_the_edge_moves_in_beside_its_point(y: float, top: float) -> None:
    assert place_labels([(100, y)], [(80, 16)], Box(0, 0, 400, 300))[0] == Box(113, top, 80, 16)


def test_a_ribbon_runs_through_the_medians_of_each_caliper() -> None:
    x = np.array([10.0, 10.0, 10.1, 20.0, np.nan])
    low = np.array([1.0, 2.0, 3.0, 5.0, 9.0])
    band = ribbon(x, low, low + 10, bucket=0.5)
    assert band is not None
    assert band.x.tolist() == [10.0, 20.0]
    assert band.low.tolist() == [2.0, 5.0]
    assert band.high.tolist() == [12.0, 15.0]


def test_no_band_no_ribbon() -> None:
    nothing = np.full(3, np.nan)
    assert ribbon(np.arange(3.0), nothing, nothing, bucket=1.0) is None


def test_spreading_is_the_same_every_time_and_stays_within_its_width() -> None:
    ids = np.arange(1, 5_000)
    first = spread(ids, 0.2)
    assert (first == spread(ids, 0.2)).all()
    assert np.abs(first).max() <= 0.2 + 1e-9
    assert first.std() > 0.08


def test_thinning_keeps_all_that_stands_out() -> None:
    rows = np.arange(10_000)
    keep = rows % 100 == 0
    kept = thinned(rows, keep, 1_000)
    assert len(kept) <= 1_001
    assert np.isin(rows[keep], kept).all()
    assert thinned(rows[:10], keep[:10], 1_000).tolist() == list(range(10))
