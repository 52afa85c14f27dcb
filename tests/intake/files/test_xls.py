import io
import struct
from datetime import date, datetime
from decimal import Decimal

import pytest
import xlwt

from tests.intake.files.books import write
from tracker.intake.files import open_workbook
from tracker.intake.grid import CellFault, Grid, MergedRange, Unreadable


def saved(tmp_path, book: xlwt.Workbook, name: str = "old.xls") -> tuple[Grid, ...]:
    buffer = io.BytesIO()
    book.save(buffer)
    read = open_workbook(write(tmp_path, name, buffer.getvalue()))
    assert read.kind == "xls"
    return read.grids


def test_values_formats_and_layout(tmp_path):
    book = xlwt.Workbook()
    sheet = book.add_sheet("Offer")
    sheet.write(0, 0, "Board µm")
    sheet.write(1, 0, 905.1, xlwt.easyxf(num_format_str="[$€-407] #,##0.00"))
    sheet.write(1, 1, datetime(2026, 3, 31), xlwt.easyxf(num_format_str="dd.mm.yyyy"))
    sheet.write(1, 2, True)
    sheet.write(1, 3, "void", xlwt.easyxf("font: struck_out on"))
    sheet.write(1, 4, 5, xlwt.easyxf(num_format_str='"$"#,##0_);("$"#,##0)'))
    sheet.write_merge(3, 4, 0, 2, "2026 prices")
    sheet.row(1).hidden = True
    sheet.col(1).hidden = True
    book.add_sheet("Cost").visibility = 2
    grid, cost = saved(tmp_path, book)
    assert grid.cells[0, 0].value == "Board µm"
    assert (grid.cells[1, 0].value, grid.cells[1, 0].number_format) == (Decimal("905.1"), "[$€-407] #,##0.00")
    assert grid.cells[1, 1].value == date(2026, 3, 31)
    assert grid.cells[1, 2].value is True
    assert grid.cells[1, 3].struck
    assert grid.cells[1, 4].number_format.startswith("$#,##0")
    assert grid.merged == (MergedRange(3, 0, 4, 2),)
    assert grid.hidden_rows == {1}
    assert grid.hidden_columns == {1}
    assert (grid.hidden, cost.hidden) == (False, True)


def test_rich_text_drops_what_is_struck_and_raises_what_is_raised(tmp_path):
    book = xlwt.Workbook()
    sheet = book.add_sheet("Offer")
    struck, raised = xlwt.easyfont("struck_out on"), xlwt.easyfont("escapement superscript")
    sheet.write_rich_text(0, 0, [("905", struck), (" 880", xlwt.easyfont(""))])
    sheet.write_rich_text(0, 1, ["MSF (ft", ("2", raised), (")", xlwt.easyfont(""))])
    (grid,) = saved(tmp_path, book)
    assert (grid.cells[0, 0].value, grid.cells[0, 0].comment) == (" 880", "Struck through in the cell: 905")
    assert grid.cells[0, 1].value == "MSF (ft²)"


def test_the_1904_calendar(tmp_path):
    book = xlwt.Workbook()
    book.dates_1904 = True
    book.add_sheet("Offer").write(0, 0, 44538, xlwt.easyxf(num_format_str="yyyy-mm-dd"))
    (grid,) = saved(tmp_path, book)
    assert grid.cells[0, 0].value == date(2025, 12, 9)


def test_error_and_blank_formula_results(tmp_path):
    """xlwt stores an empty text for every formula; two results are put in its place ([MS-XLS] 2.5.133)."""
    book = xlwt.Workbook()
    sheet = book.add_sheet("Offer")
    for row in range(3):
        sheet.write(row, 0, xlwt.Formula(f"B{row + 1}*{row + 2}"))
    buffer = io.BytesIO()
    book.save(buffer)
    content = bytearray(buffer.getvalue())
    for row, result in ((0, bytes([2, 0, 0x2A, 0, 0, 0, 0xFF, 0xFF])), (1, struct.pack("<d", 905.1))):
        found = next(
            at
            for at in range(512, len(content) - 20)
            if content[at : at + 2] == b"\x06\x00" and content[at + 4 : at + 8] == bytes([row, 0, 0, 0])
        )
        content[found + 10 : found + 18] = result
    grid = open_workbook(write(tmp_path, "old.xls", bytes(content))).grids[0]
    assert (grid.cells[0, 0].text, grid.cells[0, 0].fault) == ("#N/A", CellFault.ERROR)
    assert grid.cells[1, 0].value == Decimal("905.1")
    assert grid.cells[2, 0].fault is CellFault.FORMULA_WITHOUT_VALUE


def test_an_empty_text_is_an_empty_cell_whether_written_or_calculated(tmp_path):
    """LibreOffice writes empty texts where a sheet came from another format; xlwt does so when told to."""
    book = xlwt.Workbook()
    for name in ("Cover", "Offer"):
        sheet = book.add_sheet(name)
        sheet.row(0).insert_cell(0, xlwt.Cell.StrCell(0, 0, 17, book.add_str("")))
        sheet.write(1, 0, xlwt.Formula('IF(D1="","",D1*1.05)'))
        sheet.write(1, 1, xlwt.Formula("D1*1.05"))
        sheet.write(2, 0, "Board")
    cells = [{place: cell.fault for place, cell in grid.cells.items()} for grid in saved(tmp_path, book)]
    assert cells == [{(1, 1): CellFault.FORMULA_WITHOUT_VALUE, (2, 0): None}] * 2


def test_a_workbook_under_a_password(tmp_path):
    """A FILEPASS record ([MS-XLS] 2.4.117) after the first BOF is how an encrypted .xls begins."""
    book = xlwt.Workbook()
    book.add_sheet("Offer").write(0, 0, 1)
    stream = book.get_biff_data()
    bof = 4 + int.from_bytes(stream[2:4], "little")
    locked = stream[:bof] + b"\x2f\x00\x06\x00\x00\x00\x01\x02\x03\x04" + stream[bof:]
    with pytest.raises(Unreadable, match=r"^old\.xls is protected by a password; save a copy"):
        open_workbook(write(tmp_path, "old.xls", locked))
