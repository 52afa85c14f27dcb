import numpy as np
import pytest
from PySide6.QtCore import QModelIndex, QPersistentModelIndex, Qt

from tests.window.fixtures.invented_offers import comparison
from tracker.desk.standing import standings
from tracker.window.look.figures import Units
from tracker.window.quotes.offer_columns import OFFER_COLUMNS, offers
from tracker.window.tables.columns import Column, fixed, order_by, text_keys
from tracker.window.tables.model import ColumnTable

NUMBERS = (
    Column("n", fixed("Number"), lambda data, row: f"{data[row]:g}", lambda data: np.array(data, dtype=float)),
    Column(
        "t",
        fixed("Text"),
        lambda data, row: f"row {row} of {len(data)}",
        lambda data: text_keys([f"{v}" for v in data]),
    ),
)


@pytest.fixture
def table(qapp) -> ColumnTable:
    model = ColumnTable(NUMBERS)
    model.show([3.0, float("nan"), 10.0, 2.0], np.arange(4))
    return model


def shown(model: ColumnTable, column: int = 0) -> list[str]:
    return [model.index(row, column).data() for row in range(model.rowCount())]


def test_the_model_keeps_qts_promises(table: ColumnTable, qtmodeltester) -> None:
    qtmodeltester.check(table)


def test_the_table_of_offers_keeps_qts_promises(qapp, qtmodeltester) -> None:
    market = comparison(60)
    model = ColumnTable(OFFER_COLUMNS)
    model.show(offers(market, standings(market), Units.US), np.arange(60))
    qtmodeltester.check(model)


def test_unknown_figures_come_last_in_either_direction(table: ColumnTable) -> None:
    table.sort(0, Qt.SortOrder.AscendingOrder)
    assert shown(table) == ["2", "3", "10", "nan"]
    table.sort(0, Qt.SortOrder.DescendingOrder)
    assert shown(table) == ["10", "3", "2", "nan"]


def test_other_rows_stay_sorted(table: ColumnTable) -> None:
    table.sort(0, Qt.SortOrder.DescendingOrder)
    table.choose_rows(np.array([0, 3]))
    assert shown(table) == ["3", "2"]


def test_a_row_is_followed_through_a_sort(table: ColumnTable) -> None:
    followed = QPersistentModelIndex(table.index(2, 0))
    table.sort(0, Qt.SortOrder.DescendingOrder)
    assert followed.row() == 0
    assert followed.data() == "10"


def test_where_a_row_stands_or_that_it_is_filtered_out(table: ColumnTable) -> None:
    table.choose_rows(np.array([2, 0]))
    assert table.row_of(0) == 1
    assert table.row_of(1) is None


def test_no_rows_below_a_row(table: ColumnTable) -> None:
    assert table.rowCount(table.index(0, 0)) == 0
    assert table.rowCount(QModelIndex()) == 4


def test_capitals_do_not_part_names_and_empty_ones_come_last() -> None:
    keys = text_keys(["beta", "Alpha", "", "ALPHA"])
    assert keys[1] == keys[3] < keys[0] < keys[2]


def test_a_sort_is_stable() -> None:
    rows = order_by(np.array([1.0, 0.0, 1.0, 0.0]), np.array([2, 3, 0, 1]), descending=False)
    assert rows.tolist() == [3, 1, 2, 0]


def test_every_cell_of_every_offer_column_has_words(qapp) -> None:
    market = comparison(40)
    table = offers(market, standings(market), Units.METRIC)
    for column in OFFER_COLUMNS:
        assert len(column.keys(table)) == 40
        # Few boards were decided on; the column stands only where one was, and is empty for the others.
        assert column.key == "decided" or all(column.text(table, row) for row in range(40))
