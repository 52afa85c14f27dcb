import io
from datetime import date, datetime, time, timedelta
from decimal import Decimal

import pytest
from odf import number, style, table, text
from odf.opendocument import OpenDocumentSpreadsheet

from tests.intake.files.books import write, zipped
from tracker.intake.files import open_workbook
from tracker.intake.grid import CellFault, Grid, MergedRange

NAMES = " ".join(
    f'xmlns:{prefix}="urn:oasis:names:tc:opendocument:xmlns:{name}:1.0"'
    for prefix, name in [
        ("office", "office"),
        ("table", "table"),
        ("text", "text"),
        ("style", "style"),
        ("number", "datastyle"),
        ("draw", "drawing"),
    ]
)


def content(rows: str, styles: str = "", columns: str = "<table:table-column/>", sheet: str = "") -> str:
    return (
        f'<office:document-content {NAMES} xmlns:calcext="c">'
        f"<office:automatic-styles>{styles}</office:automatic-styles>"
        f'<office:body><office:spreadsheet><table:table table:name="Preise" {sheet}>{columns}{rows}</table:table>'
        "</office:spreadsheet></office:body></office:document-content>"
    )


def grid_of(tmp_path, rows: str, **parts) -> Grid:
    parts = {"mimetype": "application/vnd.oasis.opendocument.spreadsheet", "content.xml": content(rows, **parts)}
    book = open_workbook(write(tmp_path, "p.ods", parts))
    assert book.kind == "ods"
    return book.grids[0]


def row(*cells: str, **attributes: str) -> str:
    said = "".join(f' table:{name.replace("_", "-")}="{value}"' for name, value in attributes.items())
    return f"<table:table-row{said}>{''.join(cells)}</table:table-row>"


def said(words: str) -> str:
    return f'<table:table-cell office:value-type="string"><text:p>{words}</text:p></table:table-cell>'


def typed(kind: str, name: str, value: str, more: str = "", words: str = "") -> str:
    return (
        f'<table:table-cell office:value-type="{kind}" office:{name}="{value}" {more}><text:p>{words}</text:p>'
        "</table:table-cell>"
    )


def formula(more: str, words: str = "") -> str:
    return f'<table:table-cell table:formula="of:=[.A1]*2" {more}><text:p>{words}</text:p></table:table-cell>'


@pytest.mark.parametrize(
    ("cell", "value"),
    [
        (typed("float", "value", "905.1"), Decimal("905.1")),
        (typed("percentage", "value", "0.03"), Decimal("0.03")),
        (typed("date", "date-value", "2026-03-31"), date(2026, 3, 31)),
        (typed("date", "date-value", "2026-03-31T14:30:00"), datetime(2026, 3, 31, 14, 30)),
        (typed("time", "time-value", "PT06H30M00S"), time(6, 30)),
        (typed("time", "time-value", "PT36H00M00S"), timedelta(hours=36)),
        (typed("boolean", "boolean-value", "true"), True),
        (said('one<text:s text:c="2"/>two<text:tab/>three<text:line-break/>four'), "one  two\tthree\nfour"),
        (said("first</text:p><text:p>second"), "first\nsecond"),
    ],
)
def test_values(tmp_path, cell, value):
    assert grid_of(tmp_path, row(cell)).cells[0, 0].value == value


def test_currency_comes_from_the_cell_and_the_format(tmp_path):
    styles = (
        '<number:currency-style style:name="N1"><number:currency-symbol number:language="de">€</number:currency-symbol>'
        '<number:text> </number:text><number:number number:decimal-places="2" number:grouping="true"/>'
        "</number:currency-style>"
        '<number:currency-style style:name="N2"><number:text>-</number:text>'
        '<number:currency-symbol>kr</number:currency-symbol><number:number number:decimal-places="0"/>'
        '<style:map style:condition="value()&gt;=0" style:apply-style-name="N1"/></number:currency-style>'
        '<number:number-style style:name="N3"><number:number number:decimal-places="1"/>'
        "<number:text> pt</number:text></number:number-style>"
        '<style:style style:name="a" style:data-style-name="N1"/>'
        '<style:style style:name="b" style:data-style-name="N2"/>'
        '<style:style style:name="c" style:data-style-name="N3"/>'
        '<style:style style:name="d" style:parent-style-name="c"/>'
    )
    cells = (
        typed("currency", "value", "792.5", 'office:currency="SEK" table:style-name="a"'),
        typed("currency", "value", "1", 'table:style-name="b"'),
        typed("float", "value", "18", 'table:style-name="c"'),
        typed("float", "value", "18", 'table:style-name="d"'),
        typed("currency", "value", "3", 'office:currency="USD"'),
        typed("float", "value", "18"),
    )
    grid = grid_of(tmp_path, row(*cells), styles=styles)
    codes = [grid.cells[0, column].number_format for column in range(6)]
    assert codes == ["[$SEK] #,##0.00", "[$€] #,##0.00", '0.0" pt"', '0.0" pt"', "[$USD] 0.00", "General"]


def test_a_currency_left_to_the_place_is_the_sign_that_the_cell_shows(tmp_path):
    styles = (
        '<number:currency-style style:name="N1"><number:currency-symbol/>'
        '<number:number number:decimal-places="2" number:grouping="true"/></number:currency-style>'
        '<style:style style:name="a" style:data-style-name="N1"/>'
    )
    cells = (
        typed("currency", "value", "-1061.2", 'table:style-name="a"', words="-$1,061.20"),
        typed("currency", "value", "61.2", 'table:style-name="a"', words="kr 61.20"),
        typed("currency", "value", "61.2", 'office:currency="EUR" table:style-name="a"', words="$61.20"),
        typed("currency", "value", "61.2", 'table:style-name="a"', words="61.20"),
    )
    grid = grid_of(tmp_path, row(*cells), styles=styles)
    codes = [grid.cells[0, column].number_format for column in range(4)]
    assert codes == ["[$$]#,##0.00", "[$kr]#,##0.00", "[$EUR]#,##0.00", "[$]#,##0.00"]


def test_a_percentage_is_told_by_its_cell_where_no_style_shows_it(tmp_path):
    grid = grid_of(tmp_path, row(typed("percentage", "value", "0.025"), typed("float", "value", "0.025")))
    assert [grid.cells[0, column].number_format for column in range(2)] == ["0%", "General"]


def test_column_and_row_defaults_style_cells_without_one(tmp_path):
    styles = (
        '<number:number-style style:name="N3"><number:number number:decimal-places="1"/></number:number-style>'
        '<style:style style:name="c" style:data-style-name="N3"/>'
    )
    columns = (
        '<table:table-column table:number-columns-repeated="2"/><table:table-column table:default-cell-style-name="c"/>'
    )
    cell = typed("float", "value", "1")
    grid = grid_of(
        tmp_path, row(cell, cell, cell) + row(cell, default_cell_style_name="c"), styles=styles, columns=columns
    )
    assert [grid.cells[place].number_format for place in ((0, 0), (0, 2), (1, 0))] == ["General", "0.0", "0.0"]


def test_faults(tmp_path):
    cells = (
        formula('office:value-type="string" calcext:value-type="error"', "#N/A"),
        formula(""),
        formula('office:value-type="string" office:string-value=""'),
        formula('office:value-type="string"', "#DIV/0!"),
        said("#N/A"),
    )
    grid = grid_of(tmp_path, row(*cells))
    assert [grid.cells[0, column].fault for column in range(5)] == [
        CellFault.ERROR,
        CellFault.FORMULA_WITHOUT_VALUE,
        CellFault.FORMULA_WITHOUT_VALUE,
        CellFault.ERROR,
        None,
    ]
    assert grid.cells[0, 1].text == "=[.A1]*2"


def test_a_formula_that_came_to_nothing_is_an_empty_cell(tmp_path):
    may_be_empty = 'table:formula="of:=IF([.D6]=&quot;&quot;;&quot;&quot;;[.D6]*1.05)"'
    cells = (
        f"<table:table-cell {may_be_empty}><text:p/></table:table-cell>",
        f'<table:table-cell {may_be_empty} office:value-type="string"/>',
        f"<table:table-cell {may_be_empty}/>",
        formula(""),
    )
    grid = grid_of(tmp_path, row(*cells))
    assert {column: cell.fault for (_, column), cell in grid.cells.items()} == {
        2: CellFault.FORMULA_WITHOUT_VALUE,
        3: CellFault.FORMULA_WITHOUT_VALUE,
    }


def test_repeats_are_written_out_where_they_hold_something_only(tmp_path):
    cell = '<table:table-cell table:number-columns-repeated="3" office:value-type="float" office:value="1"/>'
    empty = '<table:table-cell table:number-columns-repeated="16381"/>'
    rows = row(cell, empty, number_rows_repeated="2") + row(empty, number_rows_repeated="1048570") + row(said("end"))
    grid = grid_of(tmp_path, rows)
    assert sorted(grid.cells) == [*((r, c) for r in range(2) for c in range(3)), (1048572, 0)]


def test_merged_covered_hidden_and_annotated(tmp_path):
    merged = (
        '<table:table-cell table:number-columns-spanned="2" table:number-rows-spanned="3" office:value-type="string">'
        '<office:annotation><dc:creator xmlns:dc="d">someone</dc:creator><text:p>per</text:p><text:p>tonne</text:p>'
        "</office:annotation><text:p>head</text:p></table:table-cell>"
    )
    cells = (
        merged,
        '<table:covered-table-cell office:value-type="string"><text:p>under</text:p></table:covered-table-cell>',
        said("after"),
    )
    columns = '<table:table-column/><table:table-column table:visibility="collapse" table:number-columns-repeated="2"/>'
    rows = row(*cells) + row(said("x"), visibility="filter") + row(said("y"), visibility="collapse") + row(said("z"))
    styles = '<style:style style:name="ta"><style:table-properties table:display="false"/></style:style>'
    grid = grid_of(tmp_path, rows, columns=columns, styles=styles, sheet='table:style-name="ta"')
    assert grid.merged == (MergedRange(0, 0, 2, 1),)
    assert (0, 1) not in grid.cells
    assert grid.cells[0, 2].value == "after"
    assert grid.cells[0, 0].comment == "per\ntonne"
    assert grid.cells[0, 0].value == "head"
    assert (grid.hidden_rows, grid.hidden_columns, grid.hidden) == ({1, 2}, {1, 2}, True)


def test_spans_of_text_and_drawings_over_cells(tmp_path):
    styles = (
        '<style:style style:name="T1"><style:text-properties style:text-position="super 58%"/></style:style>'
        '<style:style style:name="T2"><style:text-properties style:text-line-through-style="solid"/></style:style>'
    )
    drawing = "<draw:frame><draw:text-box><text:p>not in the cell</text:p></draw:text-box></draw:frame>"
    cells = (
        said('1000 ft<text:span text:style-name="T1">2</text:span>'),
        said('<text:span text:style-name="T2">905</text:span> 880'),
        f"<table:table-cell>{drawing}</table:table-cell>",
    )
    grid = grid_of(tmp_path, row(*cells), styles=styles)
    assert grid.cells[0, 0].value == "1000 ft²"
    assert (grid.cells[0, 1].value, grid.cells[0, 1].comment) == (" 880", "Struck through in the cell: 905")
    assert (0, 2) not in grid.cells


def test_a_flat_document(tmp_path):
    flat = content(row(typed("float", "value", "5"))).replace("document-content", "document")
    book = open_workbook(write(tmp_path, "p.fods", ("<?xml version='1.0'?>" + flat).encode()))
    assert book.grids[0].cells[0, 0].value == Decimal(5)


def test_a_document_of_another_writer(tmp_path):
    document = OpenDocumentSpreadsheet()
    euro = number.CurrencyStyle(name="euro")
    euro.addElement(number.CurrencySymbol(text="€"))
    euro.addElement(number.Number(decimalplaces="2", minintegerdigits="1"))
    document.automaticstyles.addElement(euro)
    priced = style.Style(name="priced", family="table-cell", datastylename="euro")
    document.automaticstyles.addElement(priced)
    sheet = table.Table(name="GC1")
    line = table.TableRow()
    word = table.TableCell(valuetype="string")
    word.addElement(text.P(text="GC1 Faltschachtelkarton"))
    line.addElement(word)
    line.addElement(table.TableCell(valuetype="currency", currency="EUR", value="1267.5", stylename="priced"))
    sheet.addElement(line)
    document.spreadsheet.addElement(sheet)
    buffer = io.BytesIO()
    document.save(buffer)
    (grid,) = open_workbook(write(tmp_path, "p.ods", buffer.getvalue())).grids
    assert grid.sheet == "GC1"
    assert grid.cells[0, 0].value == "GC1 Faltschachtelkarton"
    assert (grid.cells[0, 1].value, grid.cells[0, 1].number_format) == (Decimal("1267.5"), "[$EUR]0.00")


def test_an_encrypted_document(tmp_path):
    from tracker.intake.grid import Unreadable

    parts = {"content.xml": b"\x01\x02", "META-INF/manifest.xml": "<manifest:encryption-data/>"}
    with pytest.raises(Unreadable, match="is protected by a password"):
        open_workbook(write(tmp_path, "p.ods", zipped(parts)))
