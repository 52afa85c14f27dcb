"""Names and codes that a key, a legend or a note explains, on the same sheet or on another."""

import pytest

from tests.intake.sheets import book, codes, grid, lines
from tracker.intake.read import read_workbook
from tracker.intake.values.boards.legends import legend
from tracker.trade.offer import Answers


def _book(explanation):
    rows = [["Snowmere", 14, 60, 37.9], ["Greyford", 20, 78, 35.35]]
    key = [["Key to brands"], ["Snowmere", "solid bleached sulfate, coated one side"], ["Greyford", explanation]]
    return lines([["U.S. dollars per MSF"], [], ["Brand", "Caliper, pt", "lb/MSF", "Price per MSF"], *rows, [], *key])


def test_all_of_an_explanation_is_about_the_name_beside_it():
    found = _book("100% recycled, clay coated one side (CRB)")
    assert [(line.offer.grade, line.offer.coated_sides) for line in found.values()] == [("SBS", 1), ("CRB", 1)]


def test_an_explanation_by_two_grades_explains_nothing():
    found = _book("recycled, coated (CRB) or uncoated (URB)")
    assert codes(found["D5"]) == {"grade-unknown"}


def test_a_legend_in_two_columns_explains_the_codes_of_the_table():
    rows = [
        ["EUR per t"],
        ["Code", "g/m²", "µm", "Preis"],
        ["PK1", 250, 405, 1290],
        ["PK3", 500, 740, 640],
        [],
        ["Legende:"],
        ["PK1", "Faltschachtelkarton GC2"],
        ["PK3", "Graukarton"],
    ]
    assert {cell: line.offer.grade for cell, line in lines(rows).items()} == {"D3": "FBB", "D4": "URB"}


def test_a_column_of_brands_that_a_note_explains():
    rows = [["EUR/t"], ["Marke", "g/m²", "µm", "EUR/t"], ["Brunnalux", 240, 385, 1290],
            ["Brunnaduo", 350, 460, 890], [],
            ["Brunnalux = GC1 Faltschachtelkarton; Brunnaduo = GD2 Duplexkarton"]]  # fmt: skip
    assert [line.offer.grade for line in lines(rows).values()] == ["FBB", "CRB"]


_CARD = [["Stock", "Thk", "Bs.Wt", "LTL", "TL"], ["S1", 14, 60, 1268, 1224], ["G2", 20, 79, 903, 868]]
_KEY = [
    ["S1", "solid bleached sulfate, coated one side"], ["G2", "clay coated newsback"], [],
    ["Thk", "thickness in points"], ["Bs.Wt", "pounds per 1,000 sq ft"],
    ["LTL", "orders under 40,000 lb"], ["TL", "orders of 40,000 lb and up"], ["All prices US dollars per short ton."],
]  # fmt: skip


def card(*key):
    reading = read_workbook(book(grid(_CARD, "Card"), grid(list(key), "Key")), Answers())
    return {line.offer.source.cell: line for line in reading.lines}


def test_a_key_sheet_explains_names_units_and_order_sizes():
    found = card(*_KEY)
    assert {str(line.state) for line in found.values()} == {"accepted"}
    offers = [found[cell].offer for cell in ("D2", "E2", "D3")]
    assert [offer.grade for offer in offers] == ["SBS", "SBS", "CRB"]
    assert [round(float(offer.caliper_um), 1) for offer in offers] == [355.6, 355.6, 508.0]
    assert [(offer.from_kg is None, offer.below_kg is None) for offer in offers] == [
        (True, False), (False, True), (True, False),
    ]  # fmt: skip


def test_without_the_key_the_order_sizes_are_asked():
    found = card(*(row for row in _KEY if row and row[0] not in ("LTL", "TL")))
    assert {str(line.state) for line in found.values()} == {"question"}


def test_the_label_of_a_legend_is_no_part_of_its_first_name():
    found = legend("Förkortningar: VK = folding boxboard (FBB); RK = white-lined chipboard (WLC)")
    assert [(entry.name, entry.grade.grade) for entry in found] == [("VK", "FBB"), ("RK", "CRB")]


def test_a_legend_may_be_called_one():
    rows = [
        ["USD/t"], ["Leyenda: S1 = SBS estucado una cara (C1S); K = CUK"], [], ["Código", "g/m²", "µm", "Precio"],
        ["S1", 280, 345, 1290], ["K", 300, 400, 1120],
    ]  # fmt: skip
    assert [line.offer.grade for line in lines(rows).values()] == ["SBS", "CUK"]


@pytest.mark.parametrize(
    "note",
    [
        ["Bright = GC1 folding boxboard"],
        ["Bright is a GC1 folding boxboard."],
        ["Our Bright is a folding boxboard, Dim a greyboard."],
        ["Bright (GC1)"],
        ["Bright", "GC1 folding boxboard"],
    ],
)
def test_what_one_name_is_explained_to_be_is_no_grade_of_another_name(note):
    found = lines(
        [["Brand", "g/m²", "µm", "Price GBP/t"], ["Bright", 250, 405, 1105], ["Nova", 260, 420, 1120], [], note]
    )
    assert (found["D2"].state, found["D2"].offer.grade) == ("accepted", "FBB")
    assert (found["D3"].state, codes(found["D3"])) == ("question", {"grade-unknown"})


@pytest.mark.parametrize(
    ("plain", "grade"),
    [
        (["Nova Grey", "Uncoated recycled board"], "URB"),
        (["Nova Grey", "for partitions"], None),
        (["Nova Grey = greyboard; Nova Grey = CUK"], None),
        (["Nova White", "GC1 folding boxboard"], "CRB"),
    ],
)
def test_of_two_names_that_begin_alike_the_longer_is_meant(plain, grade):
    rows = [["Brand", "g/m²", "µm", "Price GBP/t"], ["Nova", 350, 455, 742], ["Nova Grey", 500, 762, 590], []]
    found = lines([*rows, ["Nova", "GD2 grey back"], plain])
    assert (found["D2"].offer.grade, found["D3"].offer.grade) == ("CRB", grade)
    assert (found["D3"].state == "question") is (grade is None)


def test_a_note_about_another_board_is_no_grade_of_a_name_but_one_about_all_is():
    rows = [["Brand", "g/m²", "µm", "Price GBP/t"], ["Nova", 260, 420, 1120], []]
    assert lines([*rows, ["GC1 on request."]])["D2"].offer.grade is None
    assert lines([*rows, ["All boards are GC1."]])["D2"].offer.grade == "FBB"


def test_a_title_over_boards_of_several_grades_is_no_grade_of_a_name_among_them():
    rows = [["Brand", "g/m²", "µm", "Price GBP/t"], ["Nova", 260, 420, 1120]]
    assert lines([["Folding boxboard"], [], *rows])["D4"].offer.grade == "FBB"
    mixed = lines([["Folding boxboard"], [], *rows, ["GD2 grey back", 350, 455, 742]])
    assert (mixed["D4"].state, codes(mixed["D4"])) == ("question", {"grade-unknown"})
    assert (mixed["D5"].state, mixed["D5"].offer.grade) == ("accepted", "CRB")


@pytest.mark.parametrize("code", ["G", "K", "GX"])
def test_a_code_of_one_letter_is_explained_in_two_cells(code):
    rows = [
        ["Code", "Grammage", "Thickness", "EUR/t"],
        [code, "340 g/m²", "460 µm", 828],
        ["Z", "240 g/m²", "390 µm", 1214],
    ]
    legend = [["Codes"], [code, "white-lined chipboard GD2"], ["Z", "folding boxboard GC2"]]
    assert [one.offer.grade for one in lines([["Harrow Carton Mill"], [], *rows, [], *legend]).values()] == [
        "CRB",
        "FBB",
    ]


@pytest.mark.parametrize("label", ["Markenschlüssel", "Brand guide", "Nos marques", "Nuestras marcas", "Varumärken"])
def test_what_a_list_of_names_is_called_is_no_part_of_its_first_name(label):
    entries = legend(f"{label}: Alba weiß = GC1; Norda = GZ (SBB), C1S; Grisa = Graukarton.")
    named = [(entry.name, entry.grade.grade, entry.grade.coated_sides) for entry in entries]
    assert named == [("Alba weiß", "FBB", None), ("Norda", "SBS", 1), ("Grisa", "URB", None)]


@pytest.mark.parametrize("text", ["Alba (GC1), Norda (GZ)", "Alba = GC1, Norda = GZ", "Alba = GC1; Norda = GZ, Brisa"])
def test_a_comma_ends_what_a_name_is_where_the_next_name_follows(text):
    assert [(entry.name, entry.grade.grade) for entry in legend(text)] == [("Alba", "FBB"), ("Norda", "SBS")]


def test_a_name_explained_behind_a_colon_is_no_label():
    assert [entry.name for entry in legend("Alba weiß: GC1 = Faltschachtelkarton")] == []


CODES = ["H1", "H2", "N1", "P0"]


def of_codes(*key, called=CODES):
    rows = [[code, 18, 75, 55 - place] for place, code in enumerate(called)]
    found = lines([["Cd", "Pt", "lb/MSF", "Net USD/cwt"], *rows, [], *([line] for line in key)])
    return [(str(line.state), line.offer.grade, line.offer.coated_sides) for line in found.values()]


@pytest.mark.parametrize(
    "figure",
    [
        "figure = sides coated", "the last digit is the number of coated sides", "Ziffer = gestrichene Seiten",
        "chiffre = nombre de faces couchées", "cifra = caras estucadas", "siffran betyder antal bestrukna sidor",
    ],
)  # fmt: skip
def test_codes_of_a_letter_and_a_figure_that_are_both_explained(figure):
    told = of_codes(f"H = SBS, N = CUK, P = URB; {figure}")
    assert told == [("accepted", "SBS", 1), ("accepted", "SBS", 2), ("accepted", "CUK", 1), ("accepted", "URB", 0)]


@pytest.mark.parametrize(
    "key", ["H = SBS, N = CUK, P = URB", "figure = sides coated", "H = SBS, N = CUK; figure = sides coated or plies"]
)
def test_codes_of_which_one_part_is_not_explained_are_asked(key):
    assert {state for state, *_ in of_codes(key)} == {"question"}


def test_codes_that_no_board_has_are_asked():
    told = of_codes("H = SBS, N = CUK, H = CRB, P = URB; figure = sides coated", called=["N1", "N0", "P3", "X1", "H1"])
    assert told == [("accepted", "CUK", 1), *[("question", None, None)] * 4]


@pytest.mark.parametrize("article", ["A", "Ein", "Un", "En"])
def test_a_code_that_is_also_an_article_is_explained(article):
    rows = [("Board", "g/m²", "EUR/t"), (article, 250, 1100), ("B", 300, 800), (f"{article} = GC1, B = GD2",)]
    assert [line.offer.grade for line in lines(rows).values()] == ["FBB", "CRB"]
