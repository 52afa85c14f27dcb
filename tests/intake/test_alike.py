"""Rows that say the same are understood once: what comes out is what each row alone would have given."""

from pathlib import Path

import pytest

from tests.corpus.registry import corpus
from tracker.intake.files import open_workbook
from tracker.intake.grid import Cell, Grid, Unreadable, Workbook
from tracker.intake.offers.rows import alike
from tracker.intake.offers.rows.alike import AlikeRows, Told
from tracker.intake.offers.rows.alike_offers import AlikeOffers
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers, Reading

HEADS = ("Item", "Grade", "Caliper (pt)", "Weight (lb/MSF)", "Sheet size", "USD/short ton", "Lead time", "Vendor")
ROWS = (
    ("A1", "SBS C1S", "18", "75", "", "1100", "3 weeks", "North Board Inc."),
    ("A2", "SBS C1S", "18", "75", "", "1120", "3 weeks", "North Board Inc."),
    ("A3", "SBS C1S", "18", "", "", "1130", "soon", "North Board Inc."),
    ("A4", "SBS C1S", "18", "", "", "1140", "soon", "South Board Inc."),
    ("A5", "Fenlight", "18", "750", "", "1150", "3 weeks", "South Board Inc."),
    ("A6", "Fenlight", "18", "750", "", "1160", "3 weeks", "South Board Inc."),
)


@pytest.fixture
def one_by_one(monkeypatch):
    """Call to have every row worked out by itself from then on."""

    def switch() -> None:
        own = AlikeRows.told
        monkeypatch.setattr(AlikeRows, "told", lambda self, whole: Told(own(self, whole).cells, None))
        monkeypatch.setattr(AlikeOffers, "said", lambda _self, _whole: None)

    return switch


def read(path: Path) -> Reading | None:
    try:
        return read_workbook(open_workbook(path), Answers())
    except Unreadable:
        return None


def test_the_corpus_reads_the_same_row_by_row(tmp_path, one_by_one):
    paths = []
    for number, made in enumerate(corpus(21, "*", 1, heavy=False)):
        if number % 6 == 0:
            paths.append(tmp_path / f"{number}_{made.name}")
            paths[-1].write_bytes(made.data)
    together = [read(path) for path in paths]
    assert sum(len(reading.lines) for reading in together if reading is not None) > 200
    one_by_one()
    assert [read(path) for path in paths] == together


def sheet() -> Workbook:
    cells = {
        (row, column): Cell(row, column, text, text)
        for row, line in enumerate((HEADS, *ROWS))
        for column, text in enumerate(line)
        if text
    }
    return Workbook("list.csv", "", "csv", (Grid("", cells),))


def test_evidence_and_notes_name_the_rows_own_cells(one_by_one):
    together = read_workbook(sheet(), Answers())
    for number, line in enumerate(together.lines, start=2):
        # Behind its own cell stands the head that gives a bare figure its unit.
        said = {one.field: one.said_by for one in reversed(line.evidence)}
        assert said["caliper_um"] == f"C{number}"
        assert all(note.cell.endswith(str(number)) for note in line.notes)
    assert {note.code.value for line in together.lines for note in line.notes} >= {
        "weight-estimated",
        "lead-time-unread",
        "grade-unknown",
        "weight-implausible",
    }
    one_by_one()
    assert read_workbook(sheet(), Answers()) == together


def test_a_letters_lines_name_their_own_cell():
    lines = ("North Board Inc.", "SBS C1S 18 pt: $1,100/ST", "SBS C1S 18 pt: $1,140/ST", "SBS C1S 20 pt: $1,090/ST")
    cells = {(row, 0): Cell(row, 0, text, text) for row, text in enumerate(lines)}
    reading = read_workbook(Workbook("letter.csv", "", "csv", (Grid("", cells),)), Answers())
    assert len(reading.lines) == 3
    for number, line in enumerate(reading.lines, start=2):
        assert {one.said_by for one in line.evidence if one.field in ("grade", "caliper_um")} == {f"A{number}"}


def test_a_letters_round_price_heads_no_figures_of_other_lines():
    texts = ("GC1 365 µm 215 g/m² at GBP 1,020.00 per tonne", "GC1 375 µm 235 g/m² at GBP 1,000.00 per tonne")
    cells = {(row, 0): Cell(row, 0, text, text) for row, text in enumerate(texts)}
    reading = read_workbook(Workbook("letter.csv", "", "csv", (Grid("", cells),)), Answers())
    assert [(line.offer.caliper_um, line.offer.price) for line in reading.lines] == [(365, 1020), (375, 1000)]


def test_a_list_without_repeats_is_soon_no_longer_looked_up(monkeypatch):
    monkeypatch.setattr(alike, "_TRIED", 3)
    kept = []
    own = AlikeRows.told
    monkeypatch.setattr(AlikeRows, "told", lambda self, whole: kept.append(own(self, whole)) or kept[-1])
    cells = {(0, column): Cell(0, column, text, text) for column, text in enumerate(HEADS)}
    for row in range(1, 9):
        for column, text in enumerate(ROWS[0]):
            own_text = f"SBS board {row}" if column == 1 else text
            cells[row, column] = Cell(row, column, own_text, own_text)
    reading = read_workbook(Workbook("list.csv", "", "csv", (Grid("", cells),)), Answers())
    assert len(reading.lines) == 8
    boards = [told.contents is not None for told in kept if 1 in told.cells]
    assert boards == [True] * 3 + [False] * 5
