"""Which points are one board at several order sizes."""

import numpy as np

from tests.window.fixtures.invented_offers import comparison
from tracker.window.quotes.joins import MOST_JOINED, boards_of, first_ids, joined


def test_neighbours_within_a_board_are_joined_by_order_size() -> None:
    groups = np.array([1, 0, 1, 0, 2, 1])
    from_kg = np.array([5000.0, 20000.0, np.nan, 5000.0, 1000.0, 20000.0])
    assert joined(groups, from_kg).reshape(-1, 2).tolist() == [[3, 1], [2, 0], [0, 5]]


def test_two_prices_for_any_order_are_not_order_sizes() -> None:
    any_size = np.array([np.nan, np.nan, 5000.0, 5000.0])
    assert joined(np.array([0, 0, 1, 1]), any_size).size == 0
    assert joined(np.zeros(4, np.intp), any_size).reshape(-1, 2).tolist() == [[1, 2]]


def test_a_thicket_is_not_drawn() -> None:
    groups = np.zeros(MOST_JOINED + 2, np.intp)
    assert not joined(groups, np.arange(MOST_JOINED + 2.0)).size
    assert joined(groups[1:], np.arange(MOST_JOINED + 1.0)).size == 2 * MOST_JOINED


def test_a_board_is_one_vendor_s_product_of_one_caliper_in_one_file() -> None:
    snapshot = comparison(300).snapshot
    rows = np.arange(300)
    groups = boards_of(snapshot, rows)
    for group in np.unique(groups):
        members = rows[groups == group]
        assert len({(snapshot.vendor[row], snapshot.product[row], snapshot.caliper_um[row]) for row in members}) == 1
    ids = first_ids(groups, snapshot.id)
    assert all(ids[groups == group].max() == snapshot.id[groups == group].min() for group in np.unique(groups))
