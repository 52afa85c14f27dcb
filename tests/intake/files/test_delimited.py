import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from tests.intake.files.books import write
from tracker.intake.files import open_workbook
from tracker.intake.files.delimited import read_delimited
from tracker.intake.files.delimiters import delimiter_of
from tracker.intake.files.encodings import decoded
from tracker.intake.files.sniff import Wrong
from tracker.intake.grid import Grid

GERMAN = """Tarnau Karton GmbH;;Preisliste Karton, Stand 2026/II
Preise frei Haus, gültig bis 30.09.2026, netto, in EUR

Sorte;Flächengewicht g/m²;Dicke µm;Preis EUR/t;Lieferzeit
GD2;230;305;792,50;4 Wochen
GD2;250;330;784,00;4 Wochen
GD2;300;390;775,50;4 Wochen
"""


def rows(grid: Grid) -> dict[int, list[str]]:
    found: dict[int, list[str]] = {}
    for cell in grid.cells.values():
        found.setdefault(cell.row, []).append(cell.text)
    return found


@pytest.mark.parametrize(
    "encoding", ["utf-8", "utf-8-sig", "utf-16", "utf-16-le", "utf-16-be", "cp1252", "mac_roman", "cp850"]
)
def test_every_encoding_gives_the_same_cells(encoding):
    grid = read_delimited(GERMAN.encode(encoding, "replace"))
    assert grid.sheet == ""
    assert grid.cells[3, 1].value == "Flächengewicht g/m²".replace("²", "?" if encoding == "mac_roman" else "²")
    assert grid.cells[4, 3].value == "792,50"
    assert grid.cells[3, 2].value == "Dicke µm"


def test_utf16_with_big_endian_mark():
    assert read_delimited(b"\xfe\xff" + GERMAN.encode("utf-16-be")).cells[3, 2].value == "Dicke µm"


def test_the_euro_sign_and_quotes_of_windows():
    assert decoded("Preis €/t „netto“".encode("cp1252")) == "Preis €/t „netto“"


@pytest.mark.parametrize("text", ["CARTÓN GRIS;ESPAÑA;señal", "ÉPAISSEUR;PÂTE;À L’UNITÉ", "FÄRG;GRÅKARTONG;“citat”"])
def test_capitals_with_accents_are_read_under_their_own_page(text):
    assert decoded(text.encode("cp1252")) == text


def test_the_page_of_an_old_mac_is_still_known():
    assert decoded("épaisseur;qualité;prix à la tonne".encode("mac_roman")) == "épaisseur;qualité;prix à la tonne"


def test_a_few_broken_bytes_do_not_turn_utf8_into_another_page():
    content = "é" * 20
    assert decoded(content.encode() + b"\xff rest").startswith("é" * 20 + "�")


@pytest.mark.parametrize("delimiter", [";", ",", "\t", "|"])
def test_plain_tables_of_each_delimiter(delimiter):
    text = "\n".join(
        delimiter.join(line) for line in [["Board", "pt", "lb/MSF", "Price"], ["SBS", "18", "75", "1145.50"]] * 5
    )
    assert delimiter_of(text) == delimiter


@pytest.mark.parametrize(
    ("text", "delimiter"),
    [
        (GERMAN, ";"),
        ("GD2;792,50;784,00;775,50\nGD2;791,50;783,00;774,50\nGD3;1.791,50;1.783,00;1.774,50\n", ";"),
        ("A,b,c,d\nAll prices, net, delivered\nBoard;Price\nSBS;1,5\nCRB;2,5\nCUK;3,5\n", ";"),
        ('Board,Lead,Price\nSBS,"4; 5 weeks",905\nCRB,4; 6 weeks,805\nCUK,5 weeks,705\n', ","),
        ('Board,Price\n"SBS, C1S","1,145.00"\n"CRB, C2S","905.00"\n', ","),
        ("Board\tSize, in\tPrice\nSBS\t25,5 x 38\t1.145,00\nCRB\t25 x 38\t905,00\n", "\t"),
        ("Board|Price; net|Lead\nSBS|1,145|4 wks\nCRB|905|4 wks\n", "|"),
        ("one column\nof text\n", ","),
        ("Title with a bar | here\nBoard,pt,Price\nSBS,18,905\nSBS,20,900\n", ","),
    ],
)
def test_the_delimiter_is_the_one_that_parts_evenly_and_cleanly(text, delimiter):
    assert delimiter_of(text) == delimiter


def test_every_record_counts_empty_ones_too():
    grid = read_delimited(b"Board,Price\n\nSBS,905\n\n\nCRB,805\n")
    assert {row: texts[0] for row, texts in rows(grid).items()} == {0: "Board", 2: "SBS", 5: "CRB"}


def test_a_quoted_line_break_makes_one_record():
    grid = read_delimited(b'Board,"Price\r\nUSD/ST"\r\nSBS,905\r\n')
    assert grid.cells[0, 1].value == "Price\nUSD/ST"
    assert grid.cells[1, 1].value == "905"


@pytest.mark.parametrize("first", ["sep=;", '"sep=;"', "SEP=;"])
def test_a_line_that_names_the_delimiter_counts_but_holds_nothing(first):
    grid = read_delimited(f"{first}\r\nBoard, C1S;Price\r\nSBS, white;905\r\n".encode())
    assert rows(grid) == {1: ["Board, C1S", "Price"], 2: ["SBS, white", "905"]}


@pytest.mark.parametrize("end", ["\n", "\r\n", "\r"])
def test_line_ends_of_all_systems(end):
    assert rows(read_delimited(f"Board;Price{end}SBS;905{end}".encode())) == {0: ["Board", "Price"], 1: ["SBS", "905"]}


def test_a_header_of_quoted_line_breaks_longer_than_its_list_is_one_record():
    head = 'Liste\nQualité;"Grammage\ng/m²";"Épaisseur\nµm";"Prix\n€/t";Notes\n'
    assert rows(read_delimited(f'{head}GC1;250;400;1222;\nGD2;300;395;866;"fin"\n'.encode())) == {
        0: ["Liste"],
        1: ["Qualité", "Grammage\ng/m²", "Épaisseur\nµm", "Prix\n€/t", "Notes"],
        2: ["GC1", "250", "400", "1222"],
        3: ["GD2", "300", "395", "866", "fin"],
    }


def test_ragged_and_overlong_records_keep_their_places():
    grid = read_delimited(b"Board;Price\nSBS;905;;note\nCRB\n")
    assert sorted(grid.cells) == [(0, 0), (0, 1), (1, 0), (1, 1), (1, 3), (2, 0)]


def test_inch_marks_do_not_swallow_the_file():
    lines = ["Board;Caliper;Price"] + [f'SBS;0.0{n}";9{n}' for n in range(10, 70)]
    lines[5] = '"18 pt SBS;0.018;905'
    grid = read_delimited("\n".join(lines).encode())
    assert grid.height == 61
    assert grid.cells[5, 2].value == "905"
    assert grid.cells[4, 1].value == '0.013"'


def test_formula_like_text_stays_text():
    grid = read_delimited(b"=cmd|' /C calc'!A0;@SUM(A1)\n+1;-2\n")
    assert rows(grid) == {0: ["=cmd|' /C calc'!A0", "@SUM(A1)"], 1: ["+1", "-2"]}


def test_records_that_a_program_wrote_to_one_width_have_no_parted_decimals(tmp_path):
    """Figures run on to the right of the widest row of words, in columns that a head above it names."""
    text = "Pos,Sorte,µm,Preis je t,\n,,,EUR,CHF\n" + "1,GC2,365,1268,1254\n" * 6
    grid = open_workbook(write(tmp_path, "saved.csv", text.encode())).grids[0]
    assert grid.cells[2, 4].text == "1254"


def test_decimal_commas_between_commas_are_refused_not_guessed(tmp_path):
    text = "Grade,Caliper,Price,Lead\nGD2,305,792,50,4 weeks\nGD2,330,784,00,4 weeks\nGD2,390,775,50,4 weeks\n"
    with pytest.raises(Wrong, match="commas both between its columns and as decimal signs"):
        read_delimited(text.encode())


def test_trailing_remarks_are_not_taken_for_parted_decimals():
    text = "Grade,Caliper,Price\nGD2,305,792.50,from stock\nGD2,330,784.00,new\nGD2,390,775.50,new\n"
    assert read_delimited(text.encode()).cells[1, 3].value == "from stock"


def test_the_file_says_csv_whatever_it_is_called(tmp_path):
    book = open_workbook(write(tmp_path, "list.xlsx", b"Board;Price\nSBS;905\n"))
    assert (book.kind, book.file, len(book.grids)) == ("csv", "list.xlsx", 1)
    assert book.grids[0].cells[1, 1].number_format == ""
    assert len(book.sha256) == 64


fields = st.text(st.characters(codec="utf-8", exclude_categories=("Cs", "Cc")), max_size=8)


@example(table=[["", "", ""], ["", "", "|"], ["", "", "|"]], delimiter=",")
@given(
    table=st.lists(
        st.lists(fields.filter(lambda text: '"' not in text), min_size=3, max_size=3), min_size=3, max_size=9
    ),
    delimiter=st.sampled_from(";,\t|"),
)
def test_what_a_program_writes_quoted_is_read_back(table, delimiter):
    header = ["Board", "Caliper", "Price"]
    lines = [header, *table]
    text = "\n".join(delimiter.join(f'"{field}"' for field in line) for line in lines)
    grid = read_delimited(text.encode())
    for row, line in enumerate(lines):
        for column, field in enumerate(line):
            cell = grid.cell(row, column)
            assert (cell.value if cell else "") == (field if field.strip() else "")


def test_a_single_column():
    assert rows(read_delimited(b"Price\n905\n")) == {0: ["Price"], 1: ["905"]}


def test_a_comma_in_a_quoted_head_does_not_part_its_lines() -> None:
    """Each line by itself holds as many commas as a record, and yet the two are one."""
    text = '"Gauge, points","Wt\r\n(lbs/1,000 sq. ft.)",Cost $/LB\r\n16,61,0.4666\r\n20,75,0.4590\r\n'
    found = rows(read_delimited(text.encode()))
    assert found[0] == ["Gauge, points", "Wt\n(lbs/1,000 sq. ft.)", "Cost $/LB"]
    assert found[1] == ["16", "61", "0.4666"]


def test_line_breaks_of_a_head_stay_in_it_where_every_line_below_is_quoted() -> None:
    head = '"Sorte","Gewicht\n(g/m²)","Dicke\n(µm)","Preis\nje Tonne\n(EUR)"\n'
    found = rows(read_delimited((head + '"GC1","300","470","1250"\n"GC2","250","400","1190"\n').encode()))
    assert found[0] == ["Sorte", "Gewicht\n(g/m²)", "Dicke\n(µm)", "Preis\nje Tonne\n(EUR)"]
    assert [found[row][0] for row in (1, 2)] == ["GC1", "GC2"]


def test_inch_marks_of_quoted_lines_make_no_records_of_several_lines() -> None:
    text = 'Board,Core,Price\nSBS,3",1250\nCRB,6",1190\nCUK,3",1090\n'
    assert [found[0] for found in rows(read_delimited(text.encode())).values()] == ["Board", "SBS", "CRB", "CUK"]


def test_a_list_whose_every_record_breaks_within_quotes_is_read_as_they_part_it():
    text = (
        '"Hollin Board\nPrice sheet no. 9",,,,\n"All prices delivered.\nGood until 31 January 2027.",,,,\n'
        'Item,"Caliper\n(pt)","Weight\n(lb/MSF)","Price\n(US$/ton)",Lead time\n'
        '"SBS C1S,\nrolls",14,59,"1,262.00",3 weeks\n"CUK,\nrolls",21,87,"1,071.50",5-6 weeks\n'
    )
    found = rows(read_delimited(text.encode()))
    assert found[2] == ["Item", "Caliper\n(pt)", "Weight\n(lb/MSF)", "Price\n(US$/ton)", "Lead time"]
    assert found[4] == ["CUK,\nrolls", "21", "87", "1,071.50", "5-6 weeks"]
