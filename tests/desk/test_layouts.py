"""Layouts marked by hand: remembered with the file they were marked in, used for the next, forgotten, and undone."""

from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from openpyxl import Workbook

from tracker.desk import layouts, questions, take_in
from tracker.desk.edits import undo
from tracker.desk.opening import Desk
from tracker.desk.quotes import load_snapshot
from tracker.desk.trouble import Trouble
from tracker.trade.layout import Layout, MarkedColumn
from tracker.trade.offer import Answers

pytestmark = pytest.mark.usefixtures("reading_here")
VENDOR = "Vexholm Papir AS"
HEADS = ("Qxz", "Zuv", "Pli", "Kof", "Wux")
ROWS = (("Fenlight", "SBS", 18, 330, 1240), ("Dusk", "URB", 20, 400, 630))
NAMES = (("product", ""), ("grade", ""), ("caliper", "pt"), ("weight", "g/m2"), ("price", ""))


@pytest.fixture
def sheet(tmp_path: Path):
    def make(name: str, rows=ROWS) -> Path:
        book = Workbook()
        for row in ((VENDOR,), (), HEADS, *rows):
            book.active.append(row)
        path = tmp_path / name
        book.save(path)
        return path

    return make


def layout_of(taken: take_in.TakenIn, **more: object) -> Layout:
    columns = tuple(MarkedColumn(place, role, unit) for place, (role, unit) in enumerate(NAMES))
    heads = tuple(enumerate(HEADS))
    made = Layout("Sheet", taken.reading.sha256, columns, 3, 2, None, heads, "", "EUR", None, date(2026, 11, 25))
    return replace(made, **more)


def store_marked(desk: Desk, path: Path, **settled: str) -> take_in.Stored:
    taken = take_in.read(desk, path)
    marked = Answers({"vendor": VENDOR, **settled}, None, (layout_of(taken),))
    return take_in.store(desk, take_in.read_again(desk, taken, marked), settled)


def test_a_layout_is_remembered_and_reads_the_vendors_next_sheet(desk: Desk, sheet) -> None:
    assert [asked.key for asked in take_in.read(desk, sheet("one.xlsx")).reading.questions] == ["table:Sheet"]
    assert store_marked(desk, sheet("one.xlsx"), basis="tonne").offers == 2
    (kept,) = layouts.layouts(desk)
    assert (kept.vendor, kept.name, kept.made_by) == (VENDOR, "Qxz · Zuv · Pli · Kof · Wux", "Ada")
    later = take_in.read(desk, sheet("two.xlsx", (*ROWS, ("Mist", "FBB", 16, 250, 1000))), Answers({"vendor": VENDOR}))
    assert [str(line.offer.price) for line in later.reading.lines] == ["1240", "630", "1000"]
    assert later.reading.questions == ()
    apart = take_in.read(desk, sheet("three.xlsx"), Answers({"vendor": VENDOR}, None, ()))
    assert [asked.key for asked in apart.reading.questions] == ["table:Sheet"]


def test_a_layout_marked_anew_takes_the_place_of_the_old(desk: Desk, sheet) -> None:
    store_marked(desk, sheet("one.xlsx"), basis="tonne")
    store_marked(desk, sheet("two.xlsx", ROWS[:1]), basis="tonne")
    assert len(layouts.layouts(desk, VENDOR)) == 1
    assert layouts.layouts(desk, "Nobody") == ()


def test_forgetting_a_layout_is_undone(desk: Desk, sheet) -> None:
    store_marked(desk, sheet("one.xlsx"), basis="tonne")
    (kept,) = layouts.layouts(desk)
    forgotten = layouts.forget_layout(desk, kept.id)
    assert layouts.layouts(desk) == ()
    with pytest.raises(Trouble, match="forgotten already"):
        layouts.forget_layout(desk, kept.id)
    undo(desk, forgotten)
    assert layouts.layouts(desk) == (kept,)


def test_a_kept_file_is_read_again_by_the_layout_it_was_read_by(desk: Desk, sheet) -> None:
    stored = store_marked(desk, sheet("one.xlsx"))
    assert (stored.offers, stored.held) == (0, 2)
    layouts.forget_layout(desk, layouts.layouts(desk)[0].id)
    (asked,) = questions.open_questions(desk)
    assert questions.answer(desk, asked.id, "tonne").offers == 2
    assert load_snapshot(desk).cell == ["E4", "E5"]


def test_a_layout_without_a_header_row_is_remembered_and_never_used_unasked(desk: Desk, sheet) -> None:
    taken = take_in.read(desk, sheet("one.xlsx"))
    alone = Answers({"vendor": VENDOR, "basis": "tonne"}, None, (layout_of(taken, header_row=None, heads=()),))
    assert take_in.store(desk, take_in.read_again(desk, taken, alone)).offers == 2
    (kept,) = layouts.layouts(desk)
    assert (kept.vendor, kept.layout.serves_others) == (VENDOR, False)
    later = take_in.read(desk, sheet("two.xlsx", (*ROWS, ("Mist", "FBB", 16, 250, 1000))), Answers({"vendor": VENDOR}))
    assert [asked.key for asked in later.reading.questions] == ["table:Sheet"]
    assert later.answers.layouts == (kept.layout,), "at hand, so that it can be offered"
