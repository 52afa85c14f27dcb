"""A sheet that nothing understands, marked by hand and remembered; on a real database with the real reader."""

from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QPushButton

from tests.window.conftest import settle
from tests.window.fixtures.strange_sheet import VENDOR, mark, strange_sheet
from tracker.trade.layout import Layout, MarkedColumn
from tracker.window.main_window import MainWindow
from tracker.window.take_in.earlier_marks import earlier_marks
from tracker.window.take_in.marking import Marking
from tracker.window.take_in.vendor_words_dialog import VendorWordsDialog

pytestmark = pytest.mark.gui


def read(window: MainWindow, qtbot, path: Path) -> None:
    window.take_in_files([path])
    settle(qtbot, window)


def test_what_is_marked_is_read_at_once(real_window: MainWindow, qtbot, tmp_path) -> None:
    window = real_window
    read(window, qtbot, strange_sheet(tmp_path))
    (asked,) = window.take_in.at_hand.taken.reading.questions
    assert "mark its table by hand" in asked.text
    mark(window)
    settle(qtbot, window)
    lines = window.take_in.at_hand.taken.reading.lines
    assert [str(line.offer.price) for line in lines] == ["1240", "1230", "630"]
    view = window.take_in.sheet.view
    assert view.model().headerData(4, Qt.Orientation.Horizontal) == "E\nPrice,\nper tonne"
    window.steps.undo()
    settle(qtbot, window)
    assert window.take_in.at_hand.taken.reading.questions == (asked,)
    window.steps.redo()
    settle(qtbot, window)
    assert len(window.take_in.at_hand.taken.reading.lines) == 3


def test_keys_mark_where_one_stands(real_window: MainWindow, qtbot, tmp_path) -> None:
    window = real_window
    read(window, qtbot, strange_sheet(tmp_path))
    view = window.take_in.sheet.view
    window.take_in.sheet.mark_by_hand.click()
    view.setCurrentIndex(view.model().index(2, 0))
    qtbot.keyClick(view, Qt.Key.Key_H)
    view.setCurrentIndex(view.model().index(5, 0))
    qtbot.keyClick(view, Qt.Key.Key_L)
    settle(qtbot, window)
    marking = window.take_in.at_hand.marking
    assert (marking.header_row, marking.first_row, marking.last_row) == (2, 3, 5)


def test_the_next_sheet_of_the_vendor_is_read_by_the_marks(marked: MainWindow, qtbot, tmp_path) -> None:
    assert "remembered for Vexholm Papir" in marked.take_in.foot.told.text()
    marked.take_in.agree.click()
    settle(qtbot, marked)
    later = strange_sheet(tmp_path, "vexholm 2.xlsx", (("Mist", "FBB", 16, 250, 1000),))
    read(marked, qtbot, later)
    take_in = marked.take_in
    # Nothing marks the title as a firm's name but that the vendor is known by now.
    assert take_in.at_hand.taken.reading.vendor == VENDOR
    assert take_in.understood.layout_said.text().startswith("Read by the layout you marked on ")
    assert take_in.agree.text() == "Take in 4 offers"
    take_in.understood._refuse.click()
    settle(qtbot, marked)
    assert take_in.at_hand.accepted == 0


def test_a_line_shows_what_said_each_of_its_fields(marked: MainWindow, qtbot) -> None:
    understood, sheet = marked.take_in.understood, marked.take_in.sheet
    understood.table.selectRow(1)
    buttons = {each.text(): each for each in understood.line.findChildren(QPushButton)}
    assert set(buttons) == {"A5", "B5", "C5", "D5", "E5"}
    assert sheet._points == {"Sheet": {(4, 0), (4, 1), (4, 2), (4, 3), (4, 4)}}
    buttons["C5"].click()
    assert (sheet.view.currentIndex().row(), sheet.view.currentIndex().column()) == (4, 2)


def test_a_question_can_be_put_to_the_vendor_or_its_lines_left_out(real_window: MainWindow, qtbot, tmp_path) -> None:
    window = real_window
    read(window, qtbot, strange_sheet(tmp_path))
    mark(window)
    settle(qtbot, window)
    take_in = window.take_in
    take_in.understood.questions.vendor_asked.emit("currency:")
    draft = take_in.findChild(VendorWordsDialog)
    assert "Cells Sheet!E4, Sheet!E5, Sheet!E6" in draft.text.toPlainText()
    draft.copy_words.click()
    assert "vexholm.xlsx" in QGuiApplication.clipboard().text()
    press(take_in, "Leave these lines out")
    settle(qtbot, window)
    assert "3 left out" in take_in.understood.summary.text()
    assert "can't be used" not in take_in.understood.summary.text()
    assert not take_in.agree.isEnabled()
    press(take_in, "Change")
    settle(qtbot, window)
    assert "3 held by 1 question" in take_in.understood.summary.text()


def press(take_in, words: str) -> None:
    next(each for each in take_in.understood.questions.findChildren(QPushButton) if each.text() == words).click()


def test_two_files_of_one_name_are_told_apart(marked: MainWindow, qtbot, tmp_path) -> None:
    marked.take_in.agree.click()
    settle(qtbot, marked)
    again = tmp_path / "again"
    again.mkdir()
    read(marked, qtbot, strange_sheet(again, more=(("Mist", "FBB", 16, 250, 1000),)))
    marked.take_in.understood.vendor.named.emit(VENDOR)
    settle(qtbot, marked)
    marked.take_in.agree.click()
    settle(qtbot, marked)
    cells = marked.session.comparison.snapshot.cell
    marked._show_sheet_of(cells.index("E7"))
    settle(qtbot, marked)
    assert marked.sheet.sheet.view.currentIndex().data() == "1000"
    marked._show_sheet_of(cells.index("E6"))
    settle(qtbot, marked)
    assert marked.sheet.sheet.view.model().index(6, 4).data() is None


def test_marks_that_contradict_each_other_give_way_to_the_later() -> None:
    marking = Marking("P").headed_by(2)
    assert marking.first_row == 3
    assert marking.beginning_at(1).header_row is None
    assert marking.beginning_at(6).header_row == 2
    assert marking.ending_at(1).first_row is None
    assert marking.beginning_at(6).headed_by(4).first_row == 6
    assert marking.named(MarkedColumn(1, "price")).unnamed(1) == marking


def test_the_price_stays_in_view_in_a_small_window_while_a_table_is_marked(marked: MainWindow, qtbot) -> None:
    marked.resize(1024, 700)
    settle(qtbot, marked)
    table = marked.take_in.understood.table
    keys = [column.key for column in table.model().columns]
    price = keys.index("price")
    assert not table.isColumnHidden(price)
    assert table.columnViewportPosition(price) + table.columnWidth(price) <= table.viewport().width()
    assert table.horizontalScrollBar().maximum() == 0


PLAIN = "Board,Grade,Caliper (pt),Weight (g/m²),Price USD/t,Lead time,Extra\nFenlight,SBS,16,300,1216,3 weeks,5\n"


def test_marking_starts_from_what_was_understood_so_that_one_column_can_be_named(
    real_window: MainWindow, qtbot, tmp_path
) -> None:
    sheet = tmp_path / "plain.csv"
    sheet.write_text(PLAIN, encoding="utf-8")
    read(real_window, qtbot, sheet)
    take_in = real_window.take_in
    before = [line.offer for line in take_in.at_hand.taken.reading.lines]
    take_in.marking.begin()
    strip = take_in.sheet.strip
    roles = {at: column.role for at, column in strip._marking.columns.items()}
    assert roles == {0: "product", 1: "grade", 2: "caliper", 3: "weight", 4: "price", 5: "lead_time"}
    assert (strip._marking.header_row, strip._marking.first_row) == (0, 1)
    # Looking is no mark: nothing was said about the file yet.
    assert not take_in.at_hand.begun
    strip.stand_at(1, 6)
    strip.name_column("remarks")
    settle(qtbot, real_window)
    after = [line.offer for line in take_in.at_hand.taken.reading.lines]
    assert [(each.price, each.grade, each.lead_days) for each in after] == [
        (each.price, each.grade, each.lead_days) for each in before
    ]
    assert take_in.at_hand.marking.columns[6].role == "remarks"
    strip.start_over()
    settle(qtbot, real_window)
    assert take_in.sheet.strip._marking.columns == {}
    real_window.steps.undo()
    real_window.steps.undo()
    settle(qtbot, real_window)
    assert not take_in.at_hand.begun
    assert 4 in take_in.sheet.strip._marking.columns


def test_a_table_that_runs_across_gives_no_marks_to_start_from(real_window: MainWindow, qtbot, tmp_path) -> None:
    sheet = tmp_path / "across.csv"
    sheet.write_text(
        "SBS USD/t,16 pt,18 pt,20 pt\n300 g/m²,1216,1226,1236\n350 g/m²,1200,1210,1220\n", encoding="utf-8"
    )
    read(real_window, qtbot, sheet)
    real_window.take_in.marking.begin()
    assert real_window.take_in.sheet.strip._marking.columns == {}


def test_the_tools_act_on_the_cell_that_is_outlined(real_window: MainWindow, qtbot, tmp_path) -> None:
    """Also where a question or a line led there, and never on a cell of the sheet looked at before."""
    window, take_in = real_window, real_window.take_in
    read(window, qtbot, strange_sheet(tmp_path, "earlier.xlsx"))
    view, strip = take_in.sheet.view, take_in.sheet.strip
    view.setCurrentIndex(view.model().index(7, 3))
    read(window, qtbot, strange_sheet(tmp_path, more=(("Mist", "FBB", 16, 250, 1000),)))
    take_in.sheet.go_to("Sheet", "E4")
    take_in.sheet.mark_by_hand.click()
    assert (view.currentIndex().row(), view.currentIndex().column()) == (3, 4)
    assert (strip._row.text(), strip._column.text()) == ("Row 4", "Column E")
    strip.first.click()
    settle(qtbot, window)
    assert take_in.at_hand.marking.first_row == 3


def test_in_a_sheet_where_nobody_stood_yet_marking_begins_at_its_first_cell(
    real_window: MainWindow, qtbot, tmp_path
) -> None:
    window, take_in = real_window, real_window.take_in
    read(window, qtbot, strange_sheet(tmp_path))
    view, strip = take_in.sheet.view, take_in.sheet.strip
    view.setCurrentIndex(view.model().index(7, 3))
    take_in.sheet.view.show_grid(take_in.sheet.grid, {})
    take_in.sheet.mark_by_hand.click()
    assert (strip._row.text(), strip._column.text()) == ("Row 1", "Column A")
    assert (view.currentIndex().row(), view.currentIndex().column()) == (0, 0)


def test_naming_a_column_moves_nothing_under_the_pointer(real_window: MainWindow, qtbot, tmp_path) -> None:
    window, take_in = real_window, real_window.take_in
    read(window, qtbot, strange_sheet(tmp_path))
    take_in.sheet.mark_by_hand.click()
    settle(qtbot, window)
    strip, heads = take_in.sheet.strip, take_in.sheet.view.horizontalHeader()
    before = strip.name.y(), heads.height()
    strip.stand_at(3, 4)
    strip.mark_first()
    strip.name_column("price", "tonne")
    settle(qtbot, window)
    assert (strip.name.y(), heads.height()) == before


BARE = ("zz13,Snowdrift,cold,18,76,1133", "zz14,Snowdrift,cold,20,84,1118", "zz17,Mudlark,warm,22,92,903")


def bare_sheet(folder: Path, name: str, *rows: str) -> Path:
    path = folder / name
    path.write_text("\n".join(("Quorvane Leaf,,,,,", "zur Kenntnis,,,,,", *rows)) + "\n", encoding="utf-8")
    return path


def test_marks_without_a_header_row_are_offered_for_the_vendors_next_sheet(
    real_window: MainWindow, qtbot, tmp_path
) -> None:
    window, take_in = real_window, real_window.take_in
    read(window, qtbot, bare_sheet(tmp_path, "one.csv", *BARE))
    take_in.at_hand.given.update(
        {"vendor": "Quorvane", "currency": "EUR", "grade:snowdrift": "SBS", "grade:mudlark": "CRB"}
    )
    columns = {
        1: MarkedColumn(1, "product"),
        3: MarkedColumn(3, "caliper", "pt"),
        4: MarkedColumn(4, "weight", "lb/MSF"),
        5: MarkedColumn(5, "price", "tonne"),
    }
    take_in.marking.mark(Marking(take_in.sheet.grid.sheet, columns, first_row=2), "marked")
    settle(qtbot, window)
    assert "offered for the next sheet, not used unasked" in take_in.foot.told.text()
    assert take_in.agree.text() == "Take in 3 offers"
    take_in.agree.click()
    settle(qtbot, window)
    read(window, qtbot, bare_sheet(tmp_path, "two.csv", "", *BARE, "zz20,Mudlark,warm,24,99,890"))
    # Nothing in it says whose it is, so that nothing is known of it before it is named.
    assert take_in.understood._earlier.isHidden()
    take_in.understood.vendor.named.emit("Quorvane")
    settle(qtbot, window)
    assert not take_in.understood._earlier.isHidden()
    assert "4 columns fit here, from row 4 on" in take_in.understood.earlier_said.text()
    assert take_in.at_hand.accepted == 0, "offered, not used"
    take_in.understood.use_marks.click()
    settle(qtbot, window)
    assert take_in.understood._earlier.isHidden()
    assert not take_in.sheet.strip.isHidden(), "what was marked is there to be seen and changed"
    assert [str(line.offer.price) for line in take_in.at_hand.taken.reading.lines] == ["1133", "1118", "903", "890"]
    assert take_in.agree.text() == "Take in 4 offers"
    window.steps.undo()
    settle(qtbot, window)
    assert not take_in.understood._earlier.isHidden()


def test_marks_are_not_offered_where_the_columns_hold_something_else(real_window: MainWindow, qtbot, tmp_path) -> None:
    layout = Layout("", "other", (MarkedColumn(1, "product"), MarkedColumn(5, "price", "tonne")), 2)
    read(real_window, qtbot, bare_sheet(tmp_path, "one.csv", *BARE))
    grids = real_window.take_in.at_hand.taken.sheets.grids
    assert earlier_marks(grids, "here", (layout,)).marking.first_row == 2
    assert earlier_marks(grids, "other", (layout,)) is None, "this very file has marks of its own"
    moved = replace(layout, columns=(MarkedColumn(1, "product"), MarkedColumn(2, "price", "tonne")))
    assert earlier_marks(grids, "here", (moved,)) is None
    headed = replace(layout, header_row=1, heads=((0, "a"), (1, "b")))
    assert earlier_marks(grids, "here", (headed,)) is None, "known by its header row, which this sheet has not"
