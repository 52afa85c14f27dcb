"""A sheet whose rows are made when asked for reads as one whose rows are kept."""

from collections.abc import Mapping

import pytest

from tests.corpus.registry import corpus
from tracker.intake.files import open_workbook
from tracker.intake.files.cells import GENERAL, Row, SheetCells
from tracker.intake.grid import Grid, Unreadable
from tracker.intake.read import read_workbook
from tracker.intake.tables import view as views
from tracker.intake.tables.view import View, part_of, view_of, views_of
from tracker.trade.offer import Answers


def sheet(rows: Mapping[int, Mapping[int, str | float]]) -> Grid:
    cells = {number: Row(tuple(row), tuple(GENERAL for _ in row), tuple(row.values())) for number, row in rows.items()}
    return Grid("List", SheetCells(cells))


@pytest.fixture
def passing(monkeypatch) -> None:
    monkeypatch.setattr(views, "_KEPT_CELLS", 0)


ROWS = {0: {0: " Grade ", 2: "Price  USD"}, 3: {0: "SBS", 1: 18.0, 2: 1100.0}, 4: {2: 1200.0}}


def kept(view: View) -> dict[int, dict[int, str]]:
    return {row: {column: cell.text for column, cell in view.rows[row].items()} for row in view.order}


def test_rows_and_single_cells_are_tidied_alike(passing):
    view = view_of(sheet(ROWS))
    assert view.passing
    assert kept(view) == {0: {0: "Grade", 2: "Price USD"}, 3: {0: "SBS", 1: "18", 2: "1100"}, 4: {2: "1200"}}
    assert [view.cell(0, column) for column in range(4)] == [view.rows[0].get(column) for column in range(4)]
    assert view.cell(1, 0) is None
    assert 1 not in view.rows


def test_what_is_kept_is_bounded_for_all_sheets_of_a_workbook_together(monkeypatch):
    monkeypatch.setattr(views, "_KEPT_CELLS", sum(map(len, ROWS.values())))
    assert [view.passing for view in views_of([sheet(ROWS)])] == [False]
    assert [view.passing for view in views_of([sheet(ROWS), sheet({0: {0: "Terms"}})])] == [True, True]


@pytest.mark.parametrize("columns", [None, range(2), range(1, 2), range(5, 9)])
def test_a_part_holds_what_a_part_of_kept_rows_holds(monkeypatch, columns):
    plain = part_of(view_of(sheet(ROWS)), [0, 1, 3], columns)
    monkeypatch.setattr(views, "_KEPT_CELLS", 0)
    part = part_of(view_of(sheet(ROWS)), [0, 1, 3], columns)
    assert kept(part) == kept(plain)
    assert [list(part.columns_of(row)) for row in part.order] == [list(plain.columns_of(row)) for row in plain.order]
    narrower = range(1, 3)
    assert kept(part_of(part, [0, 3], narrower)) == kept(part_of(plain, [0, 3], narrower))


def test_the_corpus_reads_the_same(tmp_path, monkeypatch):
    books = []
    for number, made in enumerate(corpus(22, "*", 1, heavy=False)):
        if number % 6 == 0:
            path = tmp_path / f"{number}_{made.name}"
            path.write_bytes(made.data)
            try:
                books.append(open_workbook(path))
            except Unreadable:
                continue
    plain = [read_workbook(book, Answers()) for book in books]
    assert sum(len(reading.lines) for reading in plain) > 200
    monkeypatch.setattr(views, "_KEPT_CELLS", 0)
    assert [read_workbook(book, Answers()) for book in books] == plain
