import struct
from datetime import date
from decimal import Decimal

import pytest
from python_calamine import CalamineWorkbook

from tests.intake.files.books import at, biff12, relations, row_head, wide, write
from tracker.intake.files import open_workbook
from tracker.intake.grid import CellFault, MergedRange, Unreadable

STYLES = b"".join(
    (
        biff12(278),
        biff12(615, struct.pack("<I", 1)),
        biff12(44, struct.pack("<H", 164) + wide("[$€-407] #,##0.00")),
        biff12(616),
        biff12(611, struct.pack("<I", 3)),
        biff12(43, struct.pack("<HHHH", 220, 0, 400, 0)),
        biff12(43, struct.pack("<HHHH", 220, 8, 400, 0)),
        biff12(43, struct.pack("<HHHH", 220, 0, 400, 1)),
        biff12(612),
        biff12(626, struct.pack("<I", 1)),
        biff12(47, struct.pack("<HHHHHHHH", 0xFFFF, 9, 0, 0, 0, 0, 0, 0)),
        biff12(627),
        biff12(617, struct.pack("<I", 3)),
        biff12(47, struct.pack("<HHHHHHHH", 0, 0, 0, 0, 0, 0, 0, 0)),
        biff12(47, struct.pack("<HHHHHHHH", 0, 164, 0, 0, 0, 0, 0, 0)),
        biff12(47, struct.pack("<HHHHHHHH", 0, 14, 1, 0, 0, 0, 0, 0)),
        biff12(618),
        biff12(279),
    )
)
STRINGS = b"".join(
    (
        biff12(159, struct.pack("<II", 2, 2)),
        biff12(19, b"\0" + wide("GC1 Faltschachtelkarton")),
        biff12(19, b"\1" + wide("1000 ft2") + struct.pack("<IHH", 1, 7, 2)),
        biff12(160),
    )
)
SHEET = b"".join(
    (
        biff12(129),
        biff12(148, struct.pack("<IIII", 0, 3, 0, 7)),
        biff12(60, struct.pack("<IIIIH", 2, 2, 2560, 0, 1)),
        biff12(145),
        row_head(0),
        biff12(7, at(0) + struct.pack("<I", 0)),
        biff12(7, at(1) + struct.pack("<I", 1)),
        biff12(6, at(2) + wide("inline")),
        row_head(1),
        biff12(2, at(0, 1) + struct.pack("<I", (90510 << 2) & 0xFFFFFFFF | 3)),
        biff12(2, at(1) + struct.pack("<i", (-5 << 2) | 2)),
        biff12(5, at(2, 2) + struct.pack("<d", 46000)),
        biff12(3, at(3) + b"\x2a"),
        biff12(4, at(4) + b"\1"),
        biff12(9, at(5) + struct.pack("<d", 2.5) + b"\0\0"),
        biff12(8, at(6) + wide("") + b"\0\0"),
        biff12(1, at(7)),
        row_head(3, hidden=True),
        biff12(5, at(0) + struct.pack("<d", 0.1)),
        biff12(146),
        biff12(176, struct.pack("<IIII", 0, 0, 0, 1)),
        biff12(130),
    )
)


def parts(**changed: bytes) -> dict[str, bytes | str]:
    book = b"".join(
        (
            biff12(131),
            biff12(153, struct.pack("<II", changed.pop("epoch", 0), 0) + wide("")),
            biff12(143),
            biff12(156, struct.pack("<II", 0, 1) + wide("rId1") + wide("Preise")),
            biff12(156, struct.pack("<II", 2, 2) + wide("rId9") + wide("Chart")),
            biff12(144),
            biff12(132),
        )
    )
    return {
        "[Content_Types].xml": "<Types/>",
        "_rels/.rels": relations(("rId1", "officeDocument", "xl/workbook.bin")),
        "xl/workbook.bin": book,
        "xl/_rels/workbook.bin.rels": relations(
            ("rId1", "worksheet", "worksheets/sheet1.bin"),
            ("rId2", "styles", "styles.bin"),
            ("rId3", "sharedStrings", "sharedStrings.bin"),
            ("rId9", "chartsheet", "chartsheets/sheet1.bin"),
        ),
        "xl/styles.bin": STYLES,
        "xl/sharedStrings.bin": STRINGS,
        "xl/worksheets/sheet1.bin": SHEET,
    } | changed


def test_values_formats_and_layout(tmp_path):
    book = open_workbook(write(tmp_path, "p.xlsb", parts()))
    (grid,) = book.grids
    assert (book.kind, grid.sheet, grid.hidden) == ("xlsb", "Preise", False)
    cells = grid.cells
    assert cells[0, 0].value == "GC1 Faltschachtelkarton"
    assert cells[0, 1].value == "1000 ft²"
    assert (cells[1, 0].value, cells[1, 0].number_format) == (Decimal("905.1"), "[$€-407] #,##0.00")
    assert cells[1, 1].value == Decimal(-5)
    assert (cells[1, 2].value, cells[1, 2].struck) == (date(2025, 12, 9), True)
    assert (cells[1, 3].text, cells[1, 3].fault) == ("#N/A", CellFault.ERROR)
    assert cells[1, 4].value is True
    assert cells[1, 5].value == Decimal("2.5")
    assert cells[1, 6].fault is CellFault.FORMULA_WITHOUT_VALUE
    assert (1, 7) not in cells
    assert grid.hidden_rows == {3}
    assert grid.hidden_columns == {2}
    assert grid.merged == (MergedRange(0, 0, 0, 1),)


def test_another_library_reads_the_same_values(tmp_path):
    path = write(tmp_path, "p.xlsb", parts())
    with path.open("rb") as stream:
        lines = CalamineWorkbook.from_filelike(stream).get_sheet_by_name("Preise").to_python(skip_empty_area=False)
    assert lines[0][:3] == ["GC1 Faltschachtelkarton", "1000 ft2", "inline"]
    assert lines[1][:3] == [905.1, -5, date(2025, 12, 9)]
    assert lines[1][4:6] == [True, 2.5]


def test_the_1904_calendar(tmp_path):
    (grid,) = open_workbook(write(tmp_path, "p.xlsb", parts(epoch=1))).grids
    assert grid.cells[1, 2].value == date(2029, 12, 10)


def test_comments(tmp_path):
    found = parts()
    found["xl/worksheets/_rels/sheet1.bin.rels"] = relations(("rId1", "comments", "../comments1.bin"))
    where = struct.pack("<IIIII", 0, 1, 1, 0, 0)
    found["xl/comments1.bin"] = (
        biff12(635, where + bytes(16)) + biff12(637, b"\0" + wide("per short ton")) + biff12(636)
    )
    (grid,) = open_workbook(write(tmp_path, "p.xlsb", found)).grids
    assert grid.cells[1, 0].comment == "per short ton"


@pytest.mark.parametrize("size", [1, 40, len(SHEET) - 1])
def test_a_cut_part_is_damage(tmp_path, size):
    found = parts()
    found["xl/worksheets/sheet1.bin"] = biff12(145) + row_head(0) + SHEET[20 : 20 + size] + b"\xff\xff\xff\xff\x7f"
    with pytest.raises(Unreadable, match="is damaged or cut short"):
        open_workbook(write(tmp_path, "p.xlsb", found))
