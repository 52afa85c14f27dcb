from datetime import date, datetime, time, timedelta
from decimal import Decimal

import openpyxl
import pytest
import xlsxwriter
from openpyxl.comments import Comment
from openpyxl.styles import Font

from tests.intake.files.books import OFFICE, relations, write, xlsx_parts
from tracker.intake.files import open_workbook
from tracker.intake.grid import Cell, CellFault, Grid, MergedRange


def only_grid(tmp_path, **parts) -> Grid:
    book = open_workbook(write(tmp_path, "sheet.xlsx", xlsx_parts(**parts)))
    assert book.kind == "xlsx"
    return book.grids[0]


def value_of(tmp_path, cell: str, **parts):
    found = only_grid(tmp_path, rows=f'<row r="1">{cell}</row>', **parts).cell(0, 0)
    assert found is not None
    return found


STYLES = (
    '<numFmts count="2"><numFmt numFmtId="164" formatCode="[$€-407] #,##0.00"/>'
    '<numFmt numFmtId="165" formatCode="0.0&quot; pt&quot;"/></numFmts>'
    '<fonts><font/><font><strike/></font><font><strike val="0"/></font></fonts>'
    '<cellStyleXfs><xf numFmtId="9"/></cellStyleXfs>'
    '<cellXfs><xf numFmtId="0" fontId="0"/><xf numFmtId="164" fontId="0"/><xf numFmtId="165" fontId="1"/>'
    '<xf numFmtId="14" fontId="2"/><xf numFmtId="44" fontId="0"/><xf numFmtId="22" fontId="0"/>'
    '<xf numFmtId="20" fontId="0"/><xf numFmtId="46" fontId="0"/></cellXfs>'
    '<dxfs><dxf><numFmt numFmtId="164" formatCode="0"/></dxf></dxfs>'
)


class TestValues:
    def test_number_is_the_decimal_the_vendor_typed(self, tmp_path):
        cell = value_of(tmp_path, '<c r="A1"><v>945.02</v></c>')
        assert cell == Cell(0, 0, Decimal("945.02"), "945.02", "General")

    @pytest.mark.parametrize(
        ("stored", "seen"),
        [
            ("0.30000000000000004", "0.3"),
            ("1267.4999999999998", "1267.5"),
            ("1E-3", "0.001"),
            ("5.0000000000000001E-2", "0.05"),
            ("1.5E+20", "150000000000000000000"),
            ("1234567890123456", "1234567890123460"),
            ("-0", "0"),
        ],
    )
    def test_binary_noise_beyond_fifteen_digits_is_not_read(self, tmp_path, stored, seen):
        cell = value_of(tmp_path, f'<c r="A1"><v>{stored}</v></c>')
        assert cell.text == seen
        assert cell.value == Decimal(seen)

    def test_format_codes_come_with_the_cell(self, tmp_path):
        rows = (
            '<row r="1"><c r="A1" s="1"><v>905</v></c><c r="B1" s="2"><v>18</v></c><c r="C1" s="4"><v>7</v></c></row>'
        )
        grid = only_grid(tmp_path, rows=rows, styles=STYLES)
        assert grid.cells[0, 0].number_format == "[$€-407] #,##0.00"
        assert grid.cells[0, 1].number_format == '0.0" pt"'
        assert grid.cells[0, 2].number_format.startswith('_("$"* #,##0.00_)')

    def test_struck_font_is_told_and_an_unset_strike_is_not(self, tmp_path):
        rows = '<row r="1"><c r="A1" s="2"><v>905</v></c><c r="B1" s="3"><v>46000</v></c></row>'
        grid = only_grid(tmp_path, rows=rows, styles=STYLES)
        assert grid.cells[0, 0].struck
        assert not grid.cells[0, 1].struck

    @pytest.mark.parametrize(
        ("style", "serial", "value"),
        [
            (3, "46000", date(2025, 12, 9)),
            (3, "46000.75", date(2025, 12, 9)),
            (5, "46000.75", datetime(2025, 12, 9, 18)),
            (5, "46000", date(2025, 12, 9)),
            (6, "0.5", time(12)),
            (7, "1.5", timedelta(hours=36)),
            (3, "61", date(1900, 3, 1)),
            (3, "59", date(1900, 2, 28)),
            (3, "0", Decimal(0)),
            (3, "-4", Decimal(-4)),
            (3, "3000000", Decimal(3000000)),
        ],
    )
    def test_dates_by_their_format(self, tmp_path, style, serial, value):
        assert value_of(tmp_path, f'<c r="A1" s="{style}"><v>{serial}</v></c>', styles=STYLES).value == value

    def test_the_1904_calendar_is_honoured(self, tmp_path):
        cell = value_of(tmp_path, '<c r="A1" s="3"><v>44538</v></c>', styles=STYLES, book='<workbookPr date1904="1"/>')
        assert cell.value == date(2025, 12, 9)
        assert cell.text == "2025-12-09"

    def test_truth_values_and_written_dates(self, tmp_path):
        assert value_of(tmp_path, '<c r="A1" t="b"><v>1</v></c>').text == "TRUE"
        assert value_of(tmp_path, '<c r="A1" t="d"><v>2026-03-31T00:00:00</v></c>').value == date(2026, 3, 31)

    @pytest.mark.parametrize("stored", ["NaN", "INF", "1_000", "n/a"])
    def test_what_is_no_number_stays_text(self, tmp_path, stored):
        assert value_of(tmp_path, f'<c r="A1"><v>{stored}</v></c>').value == stored

    def test_a_shared_string_out_of_range_is_nothing(self, tmp_path):
        grid = only_grid(tmp_path, rows='<row r="1"><c r="A1" t="s"><v>-1</v></c></row>', strings="<si><t>a</t></si>")
        assert len(grid.cells) == 0


class TestFaults:
    def test_error_cell(self, tmp_path):
        cell = value_of(tmp_path, '<c r="A1" t="e"><f>B1</f><v>#N/A</v></c>')
        assert (cell.value, cell.text, cell.fault) == (None, "#N/A", CellFault.ERROR)

    def test_text_that_reads_like_an_error_is_text(self, tmp_path):
        cell = value_of(tmp_path, '<c r="A1" t="inlineStr"><is><t>#N/A</t></is></c>')
        assert (cell.value, cell.fault) == ("#N/A", None)

    @pytest.mark.parametrize(
        "cell",
        [
            '<c r="A1"><f>D5-E5</f></c>',
            '<c r="A1"><f>D5-E5</f><v/></c>',
            '<c r="A1"><f>D5-E5</f><v></v></c>',
            '<c r="A1" t="str"><f>D5-E5</f><v></v></c>',
        ],
    )
    def test_formula_without_a_stored_value(self, tmp_path, cell):
        found = value_of(tmp_path, cell)
        assert (found.value, found.text, found.fault) == (None, "=D5-E5", CellFault.FORMULA_WITHOUT_VALUE)

    def test_shared_formula_without_a_stored_value(self, tmp_path):
        found = value_of(tmp_path, '<c r="A1"><f t="shared" si="0"/></c>')
        assert found.fault is CellFault.FORMULA_WITHOUT_VALUE

    @pytest.mark.parametrize(
        ("cell", "is_empty"),
        [
            ('<c r="A1" t="str"><f>IF(D6=&quot;&quot;,&quot;&quot;,D6*1.05)</f><v></v></c>', True),
            ('<c r="A1" t="str"><f t="shared" si="0"/><v></v></c>', True),
            ('<c r="A1"><f>IF(D6=&quot;&quot;,&quot;&quot;,D6*1.05)</f></c>', False),
            ('<c r="A1"><f>IF(D6=&quot;&quot;,&quot;&quot;,D6*1.05)</f><v></v></c>', False),
        ],
    )
    def test_a_formula_that_came_to_nothing_is_an_empty_cell(self, tmp_path, cell, is_empty):
        grid = only_grid(tmp_path, rows=f'<row r="1">{cell}</row>')
        assert ((0, 0) not in grid.cells) is is_empty

    def test_formula_with_its_value_is_the_value(self, tmp_path):
        assert value_of(tmp_path, '<c r="A1"><f>1+1</f><v>2</v></c>').value == Decimal(2)


class TestText:
    def test_rich_text_with_raised_digits(self, tmp_path):
        strings = (
            '<si><r><t>$/MSF (1000 ft</t></r><r><rPr><vertAlign val="superscript"/></rPr><t>2</t></r>'
            '<r><t>)</t></r><rPh sb="0" eb="1"><t>hint</t></rPh></si>'
        )
        assert value_of(tmp_path, '<c r="A1" t="s"><v>0</v></c>', strings=strings).value == "$/MSF (1000 ft²)"

    def test_a_struck_run_is_void_and_told(self, tmp_path):
        inline = '<is><r><rPr><strike/></rPr><t>$905</t></r><r><t xml:space="preserve"> $880</t></r></is>'
        cell = value_of(tmp_path, f'<c r="A1" t="inlineStr">{inline}</c>')
        assert cell.value == " $880"
        assert cell.comment == "Struck through in the cell: $905"
        assert not cell.struck

    def test_a_text_struck_as_a_whole_keeps_its_words(self, tmp_path):
        cell = value_of(tmp_path, '<c r="A1" t="inlineStr"><is><r><rPr><strike/></rPr><t>$905</t></r></is></c>')
        assert (cell.value, cell.struck) == ("$905", True)

    def test_escapes_line_ends_and_control_characters(self, tmp_path):
        cell = value_of(
            tmp_path, '<c r="A1" t="inlineStr"><is><t>a_x000D_\nb_x0007_c_x005F_x0041_ &amp; &#8364;</t></is></c>'
        )
        assert cell.value == "a\nbc_x0041_ & €"

    def test_right_to_left_text_is_kept_as_it_is(self, tmp_path):
        assert value_of(tmp_path, '<c r="A1" t="inlineStr"><is><t>מחיר 905</t></is></c>').value == "מחיר 905"

    def test_formula_like_text_stays_text(self, tmp_path):
        cell = value_of(tmp_path, '<c r="A1" t="inlineStr"><is><t>=1+1</t></is></c>')
        assert (cell.value, cell.fault) == ("=1+1", None)

    def test_blank_text_is_no_content(self, tmp_path):
        grid = only_grid(tmp_path, rows='<row r="1"><c r="A1" t="inlineStr"><is><t>  </t></is></c></row>')
        assert (len(grid.cells), grid.height, grid.width) == (0, 0, 0)


class TestSheet:
    def test_hidden_rows_and_columns(self, tmp_path):
        rows = (
            '<row r="1"><c r="D1"><v>1</v></c></row><row r="2" hidden="1"><c r="A2"><v>1</v></c></row>'
            '<row r="4" ht="0" customHeight="1"><c r="A4"><v>1</v></c></row><row r="5" ht="10"/>'
        )
        columns = '<col min="2" max="2" hidden="1"/><col min="3" max="3" width="0"/><col min="4" max="9" width="10"/>'
        before = f"<cols>{columns}</cols>"
        grid = only_grid(tmp_path, rows=rows, before=before)
        assert grid.hidden_rows == {1, 3}
        assert grid.hidden_columns == {1, 2}

    def test_merged_ranges(self, tmp_path):
        after = '<mergeCells><mergeCell ref="A1:C2"/><mergeCell ref="E5:E5"/><mergeCell ref="nonsense"/></mergeCells>'
        grid = only_grid(tmp_path, rows='<row r="1"><c r="A1"><v>1</v></c></row>', after=after)
        assert grid.merged == (MergedRange(0, 0, 1, 2),)

    @pytest.mark.parametrize("claimed", ["A1", "A1:XFD1048576"])
    def test_the_dimension_tag_is_not_believed(self, tmp_path, claimed):
        rows = '<row r="1"><c r="A1"><v>1</v></c></row><row r="7"><c r="C7"><v>2</v></c></row>'
        grid = only_grid(tmp_path, rows=rows, before=f'<dimension ref="{claimed}"/>')
        assert (grid.height, grid.width, len(grid.cells)) == (7, 3, 2)

    def test_sheet_states_comments_and_order(self, tmp_path):
        book = openpyxl.Workbook()
        sheet = book.active
        sheet.title = "Offer"
        sheet["B2"] = 905.5
        sheet["B2"].comment = Comment("per short ton", "someone")
        sheet["B3"] = "void"
        sheet["B3"].font = Font(strike=True)
        sheet.merge_cells("A5:B6")
        book.create_sheet("Old").sheet_state = "hidden"
        book.create_sheet("Cost").sheet_state = "veryHidden"
        book.create_chartsheet("Chart")
        path = tmp_path / "book.xlsx"
        book.save(path)
        grids = open_workbook(path).grids
        assert [(grid.sheet, grid.hidden) for grid in grids] == [("Offer", False), ("Old", True), ("Cost", True)]
        assert grids[0].cells[1, 1].comment == "per short ton"
        assert grids[0].cells[2, 1].struck
        assert grids[0].merged == (MergedRange(4, 0, 5, 1),)

    def test_the_workbook_may_stand_anywhere_in_the_package(self, tmp_path):
        parts = xlsx_parts('<row r="1"><c r="A1"><v>5</v></c></row>')
        parts["_rels/.rels"] = relations(("rId1", "officeDocument", "/book/main.xml"))
        parts["book/main.xml"] = parts.pop("xl/workbook.xml")
        parts["book/_rels/main.xml.rels"] = relations(("rId1", "worksheet", "..\\xl\\WORKSHEETS\\sheet1.xml"))
        assert open_workbook(write(tmp_path, "b.xlsx", parts)).grids[0].cells[0, 0].value == Decimal(5)

    def test_external_links_are_never_followed(self, tmp_path):
        parts = xlsx_parts('<row r="1"><c r="A1"><f>[1]Sheet!A1</f><v>5</v></c></row>')
        parts["xl/externalLinks/externalLink1.xml"] = "<externalLink/>"
        parts["xl/_rels/workbook.xml.rels"] = str(parts["xl/_rels/workbook.xml.rels"]).replace(
            "</Relationships>",
            f'<Relationship Id="x" Type="{OFFICE}/externalLink" TargetMode="External" Target="file:///etc/passwd"/></Relationships>',
        )
        assert open_workbook(write(tmp_path, "b.xlsx", parts)).grids[0].cells[0, 0].value == Decimal(5)

    def test_macros_are_carried_past(self, tmp_path):
        parts = xlsx_parts('<row r="1"><c r="A1"><v>5</v></c></row>')
        parts["xl/vbaProject.bin"] = b"\xd0\xcf\x11\xe0 not even a project"
        assert open_workbook(write(tmp_path, "b.xlsm", parts)).grids[0].cells[0, 0].value == Decimal(5)


def test_a_workbook_of_another_writer_reads_the_same(tmp_path):
    path = tmp_path / "writer.xlsx"
    with xlsxwriter.Workbook(path) as book:
        sheet = book.add_worksheet("Preise")
        euro = book.add_format({"num_format": "[$€-407] #,##0.00"})
        raised = book.add_format({"font_script": 1})
        sheet.write(0, 0, "Sorte")
        sheet.write_rich_string(0, 1, "€/1000 m", raised, "2", " netto")
        sheet.write(1, 0, "GC1")
        sheet.write_number(1, 1, 1267.5, euro)
        sheet.write_datetime(1, 2, datetime(2026, 3, 31), book.add_format({"num_format": "dd.mm.yyyy"}))
        sheet.write_formula(1, 3, "=B2*2", None, 2535)
        sheet.set_column(2, 2, None, None, {"hidden": True})
    (grid,) = open_workbook(path).grids
    assert grid.cells[0, 1].value == "€/1000 m² netto"
    assert (grid.cells[1, 1].value, grid.cells[1, 1].number_format) == (Decimal("1267.5"), "[$€-407] #,##0.00")
    assert grid.cells[1, 2].value == date(2026, 3, 31)
    assert grid.cells[1, 3].value == Decimal(2535)
    assert grid.hidden_columns == {2}
