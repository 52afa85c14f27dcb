"""What weights are by a sentence over a sheet, a footnote of one head, or a row among the boards."""

import pytest

from tests.intake.sheets import book, codes, grid, lines
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers

POUNDS_ON_25X38 = {140: 207.22}
REAMS = [
    ("Prices in US$ per cwt. Weights are pounds per 500 sheets of 25 x 38 in.", "Wt", "Price"),
    ("Prices in US$ per cwt. Basis weights are on 25x38-500.", "Wt", "Price"),
    ("Preise in USD je short ton. Gewichte in lb je 500 Bogen 25 x 38 Zoll.", "Gewicht", "Preis"),
    ("Prix en USD par short ton. Poids en livres par 500 feuilles de 25 x 38 pouces.", "Poids", "Prix"),
    ("Precios en USD por tonelada corta. Pesos en libras por 500 hojas de 25 x 38 pulgadas.", "Peso", "Precio"),
    ("Priser i USD per short ton. Vikter i lb per 500 ark 25 x 38 tum.", "Vikt", "Pris"),
]
PER_3000 = [
    ("Prices in USD per short ton. Weights in lb per 3,000 sq ft.", "Wt", "Price"),
    ("Preise in USD je short ton. Gewichte in lb je 3.000 sq ft.", "Gewicht", "Preis"),
    ("Prix en USD par short ton. Poids en livres par 3 000 pieds carrés.", "Poids", "Prix"),
    ("Precios en USD por tonelada corta. Pesos en libras por 3,000 pies cuadrados.", "Peso", "Precio"),
    ("Priser i USD per short ton. Vikter i lb per 3 000 sq ft.", "Vikt", "Pris"),
]


def sheet(title, weight, price, *rows, name="Cover", notes=()):
    board = {"Gewicht": "Sorte", "Poids": "Qualité", "Peso": "Calidad", "Vikt": "Kvalitet"}.get(weight, "Board")
    return grid([["Ashlock Paper Co."], [title], [board, "Pt", weight, price], *rows, *notes], sheet=name)


def by_sheet(*sheets):
    found = {}
    for line in read_workbook(book(*sheets), Answers()).lines:
        found.setdefault(line.offer.source.sheet, []).append(line)
    return found


@pytest.mark.parametrize(("title", "weight", "price"), REAMS)
def test_pounds_on_a_ream_that_the_title_names(title, weight, price):
    (line,) = by_sheet(sheet(title, weight, price, ["SBS C2S", 10, 140, 1268]))["Cover"]
    assert float(line.offer.grammage_gsm) == pytest.approx(POUNDS_ON_25X38[140], abs=0.01)
    assert line.offer.currency == "USD"


@pytest.mark.parametrize(("title", "weight", "price"), PER_3000)
def test_pounds_on_3000_square_feet_that_the_title_names(title, weight, price):
    (line,) = by_sheet(sheet(title, weight, price, ["SBS C2S", 10, 126, 1268]))["Cover"]
    assert float(line.offer.grammage_gsm) == pytest.approx(205.06, abs=0.01)
    assert codes(line) == set()


def test_a_footnote_of_a_marked_head_holds_for_that_head_alone():
    export = sheet(
        "Prices in US$ per short ton", "Wt (a)", "Price", ["SBS C1S", 10, 205, 1270], name="Export",
        notes=[["(a) grams per square meter"]],
    )  # fmt: skip
    found = by_sheet(export, sheet(*REAMS[0], ["SBS C2S", 10, 140, 68]))
    assert [float(line.offer.grammage_gsm) for line in found["Export"]] == [205]
    assert [float(line.offer.grammage_gsm) for line in found["Cover"]] == [pytest.approx(207.22, abs=0.01)]
    silent = by_sheet(export, sheet("Prices in US$ per cwt", "Wt", "Price", ["SBS C2S", 18, 75, 68]))
    assert "weight-basis-unknown" in codes(silent["Cover"][0])
    assert silent["Cover"][0].offer.grammage_gsm != 75


def test_each_sheet_has_the_weights_that_it_says_itself():
    msf = sheet("Prices in US$ per short ton. Weights are lb per 1,000 sq ft.", "Wt", "Price", ["SBS", 10, 42, 1270])
    ream = sheet(*REAMS[0], ["SBS C2S", 10, 140, 68], name="Reams")
    metric = sheet("Prices in US$ per tonne. Weights are grams per square metre.", "Wt", "Price", ["SBS", 10, 205, 900],
                   name="Metric")  # fmt: skip
    found = by_sheet(msf, ream, metric)
    weights = [round(float(found[name][0].offer.grammage_gsm)) for name in ("Cover", "Reams", "Metric")]
    assert weights == [205, 207, 205]


FROM_HERE = [
    ("Formatware: ab hier Gewicht in kg je 1.000 Bogen, Preis in EUR je 1.000 Bogen",
     ["Sorte", "µm", "Gewicht g/m²", "Preis"], "Preise in EUR je Tonne"),
    ("Sheets. From here down the weight is kg per 1,000 sheets and the price is EUR per 1,000 sheets.",
     ["Board", "µm", "Weight g/m²", "Price"], "Prices in EUR per tonne"),
    ("Feuilles : à partir d'ici, poids en kg aux 1 000 feuilles et prix en EUR les 1 000 feuilles",
     ["Qualité", "µm", "Grammage g/m²", "Prix"], "Prix en EUR par tonne"),
    ("Hojas: desde aquí, peso en kg por 1.000 hojas y precio en EUR por 1.000 hojas",
     ["Calidad", "µm", "Gramaje g/m²", "Precio"], "Precios en EUR por tonelada métrica"),
    ("Ark: härifrån vikt i kg per 1 000 ark och pris i EUR per 1 000 ark",
     ["Kvalitet", "µm", "Ytvikt g/m²", "Pris"], "Priser i EUR per ton (1000 kg)"),
]  # fmt: skip


@pytest.mark.parametrize(("line", "head", "title"), FROM_HERE)
def test_a_row_among_the_boards_says_what_the_weights_below_it_are(line, head, title):
    rows = [["Ashlock Board"], [title], head, ["GC1", 400, 250, 1200], [line], ["GC1 720 x 1020 mm", 400, 183.6, 240]]
    above, below = lines(rows).values()
    assert (above.offer.grammage_gsm, above.offer.basis) == (250, "tonne")
    assert (float(below.offer.grammage_gsm), below.offer.basis) == (pytest.approx(250, abs=0.1), "1000sheets")


def test_the_weight_s_sheets_are_not_the_price_s():
    line = "From here down the weight is lb per 1,000 sheets (M weight) and the price is $ per cwt"
    rows = [
        ["Ashlock Board"], ["US dollars per short ton"], ["Item", "Caliper (pt)", "Weight, lb/MSF", "Price"],
        ["SBS C1S", 14, 59, 1248], [line], ["SBS C1S 26 x 38 in", 14, 405, 61.4],
    ]  # fmt: skip
    _, below = lines(rows).values()
    assert (round(float(below.offer.grammage_gsm)), below.offer.basis) == (288, "cwt")


def test_the_weight_of_one_board_is_no_unit_of_the_others():
    rows = [
        ["Ashlock Board"], ["US dollars per short ton"], ["Item", "Caliper (pt)", "g/m²", "Price"],
        ["SBS, basis weight 75 lb/MSF"], ["SBS C1S", 18, 366, 1248],
    ]  # fmt: skip
    (line,) = lines(rows).values()
    assert line.offer.grammage_gsm == 366


@pytest.mark.parametrize(
    "line",
    ["Weights above are lb per 1,000 sheets", "M weight (lb per 1,000 sheets) on request", "Oben: Gewicht in g/m²"],
)
def test_a_row_that_speaks_of_others_gives_those_below_it_no_unit(line):
    rows = [
        ["Ashlock Board"], ["US dollars per short ton"], ["Item", "Caliper (pt)", "lb/MSF", "Price"],
        ["SBS C1S 26 x 38 in", 14, 59, 1248], [line], ["CRB C1S 26 x 38 in", 20, 78, 886],
    ]  # fmt: skip
    _, below = lines(rows).values()
    assert float(below.offer.grammage_gsm) == pytest.approx(380.83, abs=0.01)


def test_a_note_on_the_sheets_of_some_is_no_unit_of_the_list():
    rows = [["Ashlock Board"], ["US dollars per short ton"], ["Item", "Caliper (pt)", "Weight", "Price"],
            ["SBS C1S 26 x 38", 14, 59, 1248], [], ["M weights of other mills are lb per 1,000 sheets"]]  # fmt: skip
    (line,) = lines(rows).values()
    assert codes(line) == {"weight-basis-unknown"}


@pytest.mark.parametrize(
    ("head", "read"), [("Basis weight", False), ("Wt", True), ("Weight", True), ("M weight", True)]
)
def test_basis_weights_are_no_weights_of_sheets_whatever_the_title_says(head, read):
    heads = ["Grade", head, "Size (in)", "USD/cwt"]
    rows = [["SBS", 200, "28x40", 57], ["CUK", 210, "28x40", 45]]
    found = lines([["M weights: lb per 1,000 sheets"], heads, *rows]).values()
    assert ["weight-basis-unknown" in codes(line) for line in found] == [not read] * 2
    assert [line.offer.grammage_gsm is not None for line in found] == [read] * 2
