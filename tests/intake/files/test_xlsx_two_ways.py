"""The quick way and the thorough way must give one result, and two libraries that are not ours must agree with it."""

import io
import random
from datetime import date, datetime, timedelta
from decimal import Decimal

import openpyxl
import pytest
import xlsxwriter
from hypothesis import given, settings
from hypothesis import strategies as st
from python_calamine import CalamineWorkbook

from tests.intake.files.books import write, xlsx_parts
from tracker.intake.files import open_workbook, xlsx_sheet
from tracker.intake.files.xlsx_rows import Irregular, UsualSheet

texts = st.text(st.characters(codec="utf-8", exclude_categories=("Cs", "Cc")), min_size=1, max_size=12).filter(
    lambda text: bool(text.strip()) and "_x" not in text
)
numbers = st.floats(-1e300, 1e300) | st.integers(-(10**6), 10**6).map(float)
cells = st.none() | texts | numbers | st.booleans() | st.dates(date(1990, 1, 1), date(2100, 1, 1))
tables = st.lists(st.lists(cells, max_size=6), max_size=8)


def written(table, *, shared: bool) -> bytes:
    """A table as an xlsx with shared strings (XlsxWriter) or inline ones (openpyxl)."""
    buffer = io.BytesIO()
    if not shared:
        book = openpyxl.Workbook()
        for row, line in enumerate(table, 1):
            for column, value in enumerate(line, 1):
                if value is not None:
                    cell = book.active.cell(row, column)
                    cell.value = value
                    if isinstance(value, str):
                        cell.data_type = "s"
        book.save(buffer)
        return buffer.getvalue()
    with xlsxwriter.Workbook(buffer, {"in_memory": True}) as book:
        sheet = book.add_worksheet()
        day = book.add_format({"num_format": "yyyy-mm-dd"})
        for row, line in enumerate(table):
            for column, value in enumerate(line):
                if isinstance(value, str):
                    sheet.write_string(row, column, value)
                elif isinstance(value, date):
                    sheet.write_datetime(row, column, datetime(value.year, value.month, value.day), day)
                elif value is not None:
                    sheet.write(row, column, value)
    return buffer.getvalue()


def thorough(path, monkeypatch):
    """The same file with the quick way closed."""

    def never(self, chunks):
        raise Irregular("closed for the test")

    with monkeypatch.context() as patch:
        patch.setattr(xlsx_sheet.UsualSheet, "read", never)
        return open_workbook(path)


def alike(one, other) -> bool:
    return one.sheet == other.sheet and dict(one.cells) == dict(other.cells) and one == other


@settings(max_examples=60, deadline=None)
@given(table=tables, shared=st.booleans())
def test_both_ways_agree_and_give_what_was_written(tmp_path_factory, table, shared):
    path = write(tmp_path_factory.mktemp("w"), "t.xlsx", written(table, shared=shared))
    with pytest.MonkeyPatch.context() as monkeypatch:
        slow = thorough(path, monkeypatch).grids[0]
    quick = open_workbook(path).grids[0]
    assert dict(quick.cells) == dict(slow.cells)
    for row, line in enumerate(table):
        for column, value in enumerate(line):
            cell = quick.cell(row, column)
            if value is None:
                assert cell is None
            elif isinstance(value, float):
                assert float(cell.value) == pytest.approx(value, rel=1e-14)
            else:
                assert cell.value == value


@pytest.mark.parametrize("shared", [True, False])
def test_a_long_sheet_is_what_two_other_libraries_read(tmp_path, monkeypatch, shared):
    chance = random.Random(7)
    table = [
        [
            chance.choice(
                [None, f"SBS {chance.randint(10, 30)}pt", round(chance.uniform(1, 3000), 2), True, date(2026, 5, 4)]
            )
            for _ in range(8)
        ]
        for _ in range(600)
    ]
    path = write(tmp_path, "long.xlsx", written(table, shared=shared))
    grid = open_workbook(path).grids[0]
    assert alike(grid, thorough(path, monkeypatch).grids[0])
    ours = {place: cell.value for place, cell in grid.cells.items()}

    by_openpyxl = {
        (cell.row - 1, cell.column - 1): plain(cell.value)
        for line in openpyxl.load_workbook(path).active.iter_rows()
        for cell in line
        if cell.value is not None
    }
    assert ours == by_openpyxl

    with path.open("rb") as stream:
        lines = CalamineWorkbook.from_filelike(stream).get_sheet_by_index(0).to_python(skip_empty_area=False)
    by_calamine = {
        (row, column): plain(value)
        for row, line in enumerate(lines)
        for column, value in enumerate(line)
        if value != ""
    }
    assert ours == by_calamine


def plain(value):
    """Another library's value in the types of a Cell."""
    if isinstance(value, bool) or not isinstance(value, int | float | datetime | timedelta):
        return value
    if isinstance(value, datetime):
        return value.date()
    return Decimal(format(value, ".15g"))


IRREGULAR_ROWS = {
    "no row number": '<row><c r="A1"><v>1</v></c></row>',
    "no address": '<row r="1"><c><v>1</v></c><c><v>2</v></c></row>',
    "another prefix": '<x:row xmlns:x="http://schemas.openxmlformats.org/spreadsheetml/2006/main" r="1"><x:c r="A1">'
    "<x:v>1</x:v></x:c></x:row>",
    "a comment": '<row r="1"><!-- <c r="B1"><v>9</v></c> --><c r="A1"><v>1</v></c></row>',
    "cdata": '<row r="1"><c r="A1" t="str"><v><![CDATA[1]]></v></c></row>',
    "value before formula": '<row r="1"><c r="A1"><v>1</v><f>A2</f></c></row>',
    "columns falling": '<row r="1"><c r="B1"><v>2</v></c><c r="A1"><v>1</v></c></row>',
    "rows falling": '<row r="2"><c r="A2"><v>2</v></c></row><row r="1"><c r="A1"><v>1</v></c></row>',
    "a cell of another row": '<row r="1"><c r="A2"><v>1</v></c></row>',
    "single quotes": "<row r='1'><c r='A1'><v>1</v></c></row>",
    "an extension": '<row r="1"><c r="A1"><v>1</v><extLst><ext/></extLst></c></row>',
    "a lower-case address": '<row r="1"><c r="a1"><v>1</v></c></row>',
}


@pytest.mark.parametrize("rows", IRREGULAR_ROWS.values(), ids=IRREGULAR_ROWS)
def test_unusual_markup_is_left_to_the_thorough_way(tmp_path, monkeypatch, rows):
    path = write(tmp_path, "odd.xlsx", xlsx_parts(rows))
    grid = open_workbook(path).grids[0]
    assert alike(grid, thorough(path, monkeypatch).grids[0])
    assert grid.cells[0, 0].text == "1"
    assert (0, 1) not in grid.cells or grid.cells[0, 1].text == "2"


USUAL_ROWS = {
    "pretty printed": '\n <row r="1" spans="1:2" x14ac:dyDescent="0.25" xmlns:x14ac="x">\n'
    '  <c r="A1">\n <v>1</v>\n</c>\n</row>\n',
    "formula kinds": '<row r="1"><c r="A1"><f t="shared" ref="A1:A3" si="0">B1</f><v>1</v></c></row>'
    '<row r="2"><c r="A2"><f t="shared" si="0"/><v>2</v></c></row>',
    "references": '<row r="1"><c r="A1" t="str"><f>"&lt;"</f><v>1</v></c>'
    '<c r="B1" t="str"><v>a &#x20AC; &amp;lt; b</v></c></row>',
    "empty cells": '<row r="1"><c r="A1"><v>1</v></c><c r="B1" s="3"/><c r="C1" t="n" /><c r="D1"></c></row>'
    '<row r="2"/>',
}


@pytest.mark.parametrize("rows", USUAL_ROWS.values(), ids=USUAL_ROWS)
def test_usual_markup_takes_the_quick_way_and_agrees(tmp_path, monkeypatch, rows):
    path = write(tmp_path, "usual.xlsx", xlsx_parts(rows))
    slow = thorough(path, monkeypatch).grids[0]
    read = UsualSheet.read
    ended: list[bool] = []

    def watched(self, chunks):
        frame = read(self, chunks)
        ended.append(True)
        return frame

    monkeypatch.setattr(xlsx_sheet.UsualSheet, "read", watched)
    grid = open_workbook(path).grids[0]
    assert ended == [True]
    assert alike(grid, slow)


@pytest.mark.parametrize(
    "rows",
    [
        '<row r="1"><c r="A1" t="str"><v>a & b</v></c></row>',
        '<row r="1"><c r="A1" t="str"><v>&nbsp;</v></c></row>',
        '<row r="1"><c r="A1" t="str"><v>&#0;</v></c></row>',
        '<row r="1"><c r="A1"><v>1</v></c>',
        '<row r="1"><c r="A1"><v>1</v></row>',
    ],
)
def test_neither_way_mends_broken_markup(tmp_path, rows):
    from tracker.intake.grid import Unreadable

    with pytest.raises(Unreadable, match=r"odd\.xlsx is damaged or cut short"):
        open_workbook(write(tmp_path, "odd.xlsx", xlsx_parts(rows)))


def test_rows_cut_at_any_byte_read_the_same(tmp_path):
    """The quick way takes its bytes as they come, so a piece may end anywhere."""
    from tracker.intake.files.xlsx_cell import SheetContext

    rows = "".join(
        f'<row r="{n}"><c r="A{n}"><v>{n}.5</v></c><c r="B{n}" t="str"><v>µ{n}</v></c></row>' for n in range(1, 9)
    )
    sheet = str(xlsx_parts(rows)["xl/worksheets/sheet1.xml"]).encode()
    whole = UsualSheet(SheetContext())
    frame = whole.read([sheet])
    for size in (1, 2, 3, 7, 64):
        pieces = UsualSheet(SheetContext())
        assert pieces.read(sheet[at : at + size] for at in range(0, len(sheet), size)) == frame
        assert pieces.rows == whole.rows


@pytest.mark.parametrize("damaged", ["1e999", "-1e999"])
def test_a_number_too_large_is_no_figure(tmp_path, monkeypatch, damaged):
    """It was an infinite number in the quick way alone, and the first sum with it failed."""
    rows = f'<row r="1"><c r="A1"><v>18</v></c><c r="B1"><v>{damaged}</v></c></row>'
    path = write(tmp_path, "large.xlsx", xlsx_parts(rows))
    quick = open_workbook(path).grids[0]
    assert [quick.cell(0, column).value for column in (0, 1)] == [18, damaged]
    assert alike(quick, thorough(path, monkeypatch).grids[0])
