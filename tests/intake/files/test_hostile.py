"""Files that are no price sheet, broken or built to do harm: one plain sentence each, or read where readable."""

import io
import zipfile
from decimal import Decimal

import pytest

from tests.intake.files.books import write, xlsx_parts, zipped
from tracker.intake.files import open_workbook, package
from tracker.intake.grid import Unreadable

ONE_CELL = '<row r="1"><c r="A1"><v>905</v></c></row>'
COMPOUND = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + bytes(504)


def name(text: str) -> bytes:
    return text.encode("utf-16-le") + b"\0\0"


WRONG = {
    "empty": (b"", "is empty"),
    "blanks": (b" \r\n\t\n ", "holds nothing but blanks"),
    "mark alone": (b"\xef\xbb\xbf", "holds nothing but blanks"),
    "zeros": (bytes(3000), "holds nothing but blanks"),
    "png": (b"\x89PNG\r\n\x1a\n" + bytes(99), "is a picture"),
    "jpeg": (b"\xff\xd8\xff\xe0" + bytes(99), "is a picture"),
    "pdf": (b"%PDF-1.7\n%\xe2\xe3", "is a PDF"),
    "html": (b"\n<!DOCTYPE html><html><table><tr><td>905</td></tr></table>", "is a web page"),
    "html as xls": (b"\xef\xbb\xbf<html xmlns:x='urn:schemas-microsoft-com:office:excel'><body>", "is a web page"),
    "html in utf-16": ("<table><tr><td>905".encode("utf-16"), "is a web page"),
    "xml spreadsheet 2003": (
        b"<?xml version='1.0'?><Workbook xmlns='urn:schemas-microsoft-com:office:spreadsheet'>",
        "is an XML spreadsheet of an old kind",
    ),
    "other xml": (b"<?xml version='1.0'?><invoice/>", "is an XML file"),
    "rtf": (b"{\\rtf1 905}", "is a text document"),
    "gzip": (b"\x1f\x8b\x08" + bytes(30), "is a packed file"),
    "noise": (bytes(range(256)) * 20, "is not a spreadsheet or is damaged"),
    "locked xlsx": (COMPOUND + name("EncryptedPackage"), "is protected by a password"),
    "old document": (COMPOUND + name("WordDocument"), "is not a spreadsheet but another program's document"),
    "compound file cut short": (COMPOUND + name("Workbook"), "is damaged or cut short"),
    "zip head alone": (b"PK\x03\x04" + bytes(60), "is damaged or cut short"),
    "empty zip": (zipped({}), "is a packed folder"),
    "other zip": (zipped({"readme.txt": "hello"}), "is a packed folder"),
    "text document": (zipped({"[Content_Types].xml": "<a/>", "word/document.xml": "<a/>"}), "is a text document"),
    "slides": (zipped({"[Content_Types].xml": "<a/>", "ppt/presentation.xml": "<a/>"}), "is a set of slides"),
    "xlsx without a workbook": (zipped({"[Content_Types].xml": "<a/>"}), "is damaged or cut short"),
}


@pytest.mark.parametrize(("content", "what"), WRONG.values(), ids=WRONG)
def test_what_is_no_price_sheet_gets_one_sentence(tmp_path, content, what):
    with pytest.raises(Unreadable) as caught:
        open_workbook(write(tmp_path, "offer.xlsx", content))
    sentence = str(caught.value)
    assert sentence.startswith(f"offer.xlsx {what}")
    assert sentence.endswith(".")
    assert "; " in sentence
    assert sentence.count(". ") == 0


def test_a_file_that_is_not_there_and_a_folder(tmp_path):
    with pytest.raises(Unreadable, match=r"^gone\.xlsx is not there; check"):
        open_workbook(tmp_path / "gone.xlsx")
    with pytest.raises(Unreadable, match="is a folder; choose"):
        open_workbook(tmp_path)


@pytest.mark.parametrize("kept", [0.2, 0.5, 0.9, 0.99])
def test_a_truncated_workbook(tmp_path, kept):
    content = zipped(xlsx_parts(ONE_CELL))
    with pytest.raises(Unreadable, match="is damaged or cut short"):
        open_workbook(write(tmp_path, "offer.xlsx", content[: int(len(content) * kept)]))


def test_a_flipped_byte_in_a_packed_part_is_noticed(tmp_path):
    rows = "".join(f'<row r="{n}"><c r="A{n}"><v>{n * 7919 % 9973}</v></c></row>' for n in range(1, 2000))
    content = bytearray(zipped(xlsx_parts(rows)))
    with zipfile.ZipFile(io.BytesIO(bytes(content))) as archive:
        part = archive.getinfo("xl/worksheets/sheet1.xml")
    content[part.header_offset + 30 + len(part.filename) + part.compress_size // 2] ^= 0x10
    with pytest.raises(Unreadable, match="is damaged or cut short"):
        open_workbook(write(tmp_path, "offer.xlsx", bytes(content)))


def test_an_encrypted_zip(tmp_path):
    content = bytearray(zipped(xlsx_parts(ONE_CELL)))
    directory = content.index(b"PK\x01\x02")
    content[directory + 8] |= 1
    with pytest.raises(Unreadable, match="is protected by a password"):
        open_workbook(write(tmp_path, "offer.xlsx", bytes(content)))


BOMB = '<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;">]>'


@pytest.mark.parametrize("part", ["xl/workbook.xml", "xl/worksheets/sheet1.xml", "xl/_rels/workbook.xml.rels"])
def test_entity_declarations_are_refused_wherever_they_stand(tmp_path, part):
    parts = xlsx_parts(ONE_CELL)
    parts[part] = BOMB + str(parts[part])
    with pytest.raises(Unreadable, match="holds XML entity declarations"):
        open_workbook(write(tmp_path, "offer.xlsx", parts))


def test_an_external_entity_is_refused(tmp_path):
    parts = xlsx_parts('<row r="1"><c r="A1" t="str"><v>&secret;</v></c></row>')
    sheet = "xl/worksheets/sheet1.xml"
    parts[sheet] = '<!DOCTYPE x [<!ENTITY secret SYSTEM "file:///etc/passwd">]>' + str(parts[sheet])
    with pytest.raises(Unreadable, match="holds XML entity declarations"):
        open_workbook(write(tmp_path, "offer.xlsx", parts))


def test_a_zip_bomb_is_refused_before_it_is_unpacked(tmp_path):
    parts = xlsx_parts(ONE_CELL)
    buffer = io.BytesIO(zipped(parts))
    with zipfile.ZipFile(buffer, "a", zipfile.ZIP_DEFLATED) as archive, archive.open("xl/media/x.bin", "w") as stream:
        for _ in range(120):
            stream.write(bytes(1 << 20))
    with pytest.raises(Unreadable, match="unpacks to 126 MB in"):
        open_workbook(write(tmp_path, "offer.xlsx", buffer.getvalue()))


def test_too_many_parts_are_refused(tmp_path, monkeypatch):
    monkeypatch.setattr(package, "_MOST_PARTS", 4)
    with pytest.raises(Unreadable, match="unpacks to"):
        open_workbook(write(tmp_path, "offer.xlsx", xlsx_parts(ONE_CELL)))


def test_a_size_that_lies_is_noticed(tmp_path):
    """A directory that claims a part is small cannot smuggle a large one: only the claimed bytes are unpacked."""
    content = bytearray(zipped(xlsx_parts(ONE_CELL)))
    place = 0
    while (place := content.find(b"PK\x01\x02", place)) >= 0:
        if content[place + 46 :].startswith(b"xl/worksheets/sheet1.xml"):
            content[place + 24 : place + 28] = (10).to_bytes(4, "little")
        place += 4
    with pytest.raises(Unreadable, match="is damaged or cut short"):
        open_workbook(write(tmp_path, "offer.xlsx", bytes(content)))


@pytest.mark.parametrize("far", ["XFD1048576", "A1048576", "XFD1"])
def test_a_lone_far_cell_costs_nothing(tmp_path, far):
    number = "".join(filter(str.isdigit, far))
    rows = ONE_CELL if number == "1" else ONE_CELL + f'<row r="{number}"><c r="{far}"><v>1</v></c></row>'
    if number == "1":
        rows = f'<row r="1"><c r="A1"><v>905</v></c><c r="{far}"><v>1</v></c></row>'
    (grid,) = open_workbook(write(tmp_path, "offer.xlsx", xlsx_parts(rows))).grids
    assert len(grid.cells) == 2
    assert grid.cells[0, 0].value == Decimal(905)


@pytest.mark.parametrize("row", ["0", "1048577", "9999999"])
def test_a_cell_beyond_the_sheet_is_damage(tmp_path, row):
    rows = f'<row r="{row}"><c r="A{row}"><v>1</v></c></row>'
    with pytest.raises(Unreadable, match="is damaged"):
        open_workbook(write(tmp_path, "offer.xlsx", xlsx_parts(rows)))


def test_a_used_range_of_a_million_formatted_rows(tmp_path):
    rows = ONE_CELL + "".join(f'<row r="{n}" s="1" customFormat="1"/>' for n in range(2, 1_000_001, 5))
    (grid,) = open_workbook(write(tmp_path, "offer.xlsx", xlsx_parts(rows))).grids
    assert (len(grid.cells), grid.height) == (1, 1)


def test_all_sixteen_thousand_columns(tmp_path):
    from tracker.intake.grid import address

    cells = "".join(f'<c r="{address(0, column)}"><v>{column}</v></c>' for column in range(16384))
    before = '<cols><col min="1" max="16384" hidden="1"/></cols>'
    (grid,) = open_workbook(write(tmp_path, "offer.xlsx", xlsx_parts(f'<row r="1">{cells}</row>', before=before))).grids
    assert grid.width == 16384
    assert grid.cells[0, 16383].value == Decimal(16383)
    assert len(grid.hidden_columns) == 16384


def test_overlapping_hidden_columns_by_the_thousand(tmp_path):
    before = "<cols>" + "".join(f'<col min="{n}" max="16384" hidden="1"/>' for n in range(1, 16_000)) + "</cols>"
    rows = '<row r="1"><c r="XFD1"><v>905</v></c></row>'
    (grid,) = open_workbook(write(tmp_path, "offer.xlsx", xlsx_parts(rows, before=before))).grids
    assert len(grid.hidden_columns) == 16_384


@pytest.mark.parametrize(
    "inner", ['<row r="2"><c r="A2"><v>2</v></c></row>', "<v><row/></v>", '<c r="B1"><v>3</v></c>']
)
def test_rows_and_cells_inside_a_cell_do_not_move_it(tmp_path, inner):
    rows = f'<row r="1"><c r="C1">{inner}<v>905</v></c></row><c r="A9"><v>1</v></c>'
    (grid,) = open_workbook(write(tmp_path, "offer.xlsx", xlsx_parts(rows))).grids
    assert all(row == 0 and column >= 0 for row, column in grid.cells)


def test_the_longest_cell(tmp_path):
    words = "µ" * 32767
    rows = f'<row r="1"><c r="A1" t="inlineStr"><is><t>{words}</t></is></c></row>'
    (grid,) = open_workbook(write(tmp_path, "offer.xlsx", xlsx_parts(rows))).grids
    assert grid.cells[0, 0].value == words


def test_a_hundred_thousand_styles(tmp_path):
    styles = "<fonts><font/></fonts><cellXfs>" + '<xf numFmtId="2" fontId="0"/>' * 100_000 + "</cellXfs>"
    rows = '<row r="1"><c r="A1" s="99999"><v>905</v></c></row>'
    (grid,) = open_workbook(write(tmp_path, "offer.xlsx", xlsx_parts(rows, styles=styles))).grids
    assert grid.cells[0, 0].number_format == "0.00"


def test_deep_nesting_does_not_exhaust_the_stack(tmp_path):
    rows = "<x>" * 50_000 + "</x>" * 50_000 + ONE_CELL
    (grid,) = open_workbook(write(tmp_path, "offer.xlsx", xlsx_parts(rows))).grids
    assert grid.cells[0, 0].value == Decimal(905)


@pytest.mark.timeout(60)
@pytest.mark.parametrize(
    "piece",
    [
        '<row r="1"' + ' a="b"' * 30_000,
        '<row r="1"><c r="A1"' + ' a="b"' * 30_000,
        '<row r="1"><c r="A1"><f ' + "x " * 60_000,
        "<row" * 40_000,
        '<row r="1"><c r="A1">' + " " * 60_000,
        '<row r="1">' + '<c r="A1"><is>' * 20_000,
        '<row r="1">' + '<c r="A1"><f>' * 20_000,
    ],
)
def test_no_text_makes_the_quick_way_slow(tmp_path, piece):
    """Patterns that backtrack take time that grows with the square of the text; these would then take minutes."""
    with pytest.raises(Unreadable, match="is damaged"):
        open_workbook(write(tmp_path, "offer.xlsx", xlsx_parts(piece)))


def test_an_ods_that_claims_billions_of_cells(tmp_path):
    cell = '<table:table-cell table:number-columns-repeated="16384" office:value-type="float" office:value="1"/>'
    body = (
        '<office:document-content xmlns:office="o" xmlns:table="t"><office:body><office:spreadsheet>'
        f'<table:table><table:table-row table:number-rows-repeated="1048576">{cell}</table:table-row></table:table>'
        "</office:spreadsheet></office:body></office:document-content>"
    )
    with pytest.raises(Unreadable, match=r"holds more than [\d,]+ cells"):
        open_workbook(write(tmp_path, "offer.ods", {"content.xml": body}))


def test_a_workbook_under_another_encoding(tmp_path):
    parts = xlsx_parts('<row r="1"><c r="A1" t="str"><v>Flächengewicht µm</v></c></row>')
    sheet = "xl/worksheets/sheet1.xml"
    text = str(parts[sheet])
    for encoding in ("utf-16", "iso-8859-1"):
        parts[sheet] = f'<?xml version="1.0" encoding="{encoding}"?>{text}'.encode(encoding)
        (grid,) = open_workbook(write(tmp_path, "offer.xlsx", parts)).grids
        assert grid.cells[0, 0].value == "Flächengewicht µm"
