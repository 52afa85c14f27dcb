"""Calipers and weights spread across over the prices: what bare numbers are, and rows of weights below them."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines
from tracker.trade.quantities import WeightUnit, grammage


def test_weights_across_with_their_calipers_below_them():
    rows = [["SEK/ton"], ["g/m²", 230, 250], ["µm", 375, 405], ["GC1", 13200, 13140], ["GC2", 12700, 12640]]
    offers = [line.offer for line in lines(rows).values()]
    assert [(offer.grammage_gsm, offer.caliper_um) for offer in offers] == [(230, 375), (250, 405)] * 2


def test_a_unit_in_the_corner_names_the_numbers_across():
    rows = [["SEK per 1000 kg"], ["Kvalitet / µm", 300, 350], ["GC1", 14100, 13950], ["GD2", 9200, 9050]]
    found = lines(rows)
    assert {str(line.state) for line in found.values()} == {"accepted"}
    assert [int(found[cell].offer.caliper_um) for cell in ("B3", "C3")] == [300, 350]


def test_a_range_of_weights_is_asked():
    rows = [["EUR/t"], ["Sorte", "Grammatur", "Preis"], ["GD2", "250 g/m²", 845], ["GD2", "280-330 g/m²", 815]]
    assert {cell: str(line.state) for cell, line in lines(rows).items()} == {"C3": "accepted", "C4": "question"}


@pytest.mark.parametrize(
    "spans", [("200-249 g/m²", "250-300 g/m²"), ("ab 200 g/m²", "ab 250 g/m²"), ("12-16 pt", "18-24 pt")]
)
def test_spans_across_are_prices_that_are_asked(spans):
    found = lines([["EUR/t"], ["Sorte", *spans], ["GC1", 1350, 1330], ["GC2", 1300, 1280]])
    assert {cell: str(line.state) for cell, line in found.items()} == dict.fromkeys(
        ("B3", "C3", "B4", "C4"), "question"
    )


@pytest.mark.parametrize("corner", ["Sorte / Gewicht in g/m²", "Grade / basis weight g/m²", "Qualité / poids en g/m²"])
def test_a_corner_with_a_square_metre_in_it_names_what_is_spread(corner):
    found = lines([["EUR/t ab Werk"], [corner, 230, 250, 280], ["GC1", 1342, 1336, 1328], ["GC2", None, 1254, 1246]])
    assert {cell: line.offer.grammage_gsm for cell, line in found.items()} == {
        "B3": 230, "C3": 250, "D3": 280, "C4": 250, "D4": 280,
    }  # fmt: skip


def in_gsm(*pounds_per_msf):
    return [pytest.approx(float(grammage(Decimal(each), WeightUnit.LB_MSF))) for each in pounds_per_msf]


def weights_of(rows):
    return [float(line.offer.grammage_gsm) for line in lines(rows).values()]


@pytest.mark.parametrize(
    "title",
    ["US$ per short ton by basis weight, lb per 1,000 sq ft", "US$/ST, across: basis weight (lb/MSF)"],
)
def test_a_title_names_what_bare_numbers_across_are(title):
    assert weights_of([[title], [], ["Grade", 60, 68], ["SBS C1S", 1240, 1231]]) == in_gsm(60, 68)


def test_a_row_of_weights_under_calipers_weighs_the_rows_below_it():
    rows = [
        ["US$ per cwt"], [], ["Caliper (pt)", 14, 18], ["SBS, lb/MSF", 60, 76], ["SBS C1S", "61.2", "60.3"],
        ["CRB, lb/MSF", 56, 70], ["CRB C1S", "41.2", "40.3"],
    ]  # fmt: skip
    assert list(lines(rows)) == ["B5", "C5", "B7", "C7"]
    assert weights_of(rows) == in_gsm(60, 76, 56, 70)


def test_a_row_of_weights_under_grades_weighs_the_columns():
    rows = [
        ["Prix €/t"], [], ["Qualité", "GC1", "GD2"], ["Grammage g/m²", 250, 350], ["< 5 t", 1351, 961],
        ["> 5 t", 1278, 888],
    ]  # fmt: skip
    found = lines(rows)
    assert [(cell, line.offer.grammage_gsm) for cell, line in found.items()] == [
        ("B5", 250), ("C5", 350), ("B6", 250), ("C6", 350),
    ]  # fmt: skip
    assert [line.offer.below_kg for line in found.values()][:2] == [5000, 5000]


def test_weights_across_keep_their_prices_above_a_row_of_units():
    rows = [["SEK per metriskt ton"], ["Kvalitet", "230 g", "270 g"], [None, "g/m²", "g/m²"], ["GC2", 13250, 13160]]
    assert [line.offer.grammage_gsm for line in lines(rows).values()] == [230, 270]


def test_a_corner_may_say_what_all_prices_of_a_cross_tab_are_in():
    rows = [["SEK/1000 kg", "220 g/m²", "250 g/m²"], ["GC2", 13480, 13350], ["GT2", "-", 9420]]
    found = {cell: (str(line.state), line.offer.grade, line.offer.currency) for cell, line in lines(rows).items()}
    assert found == {
        "B2": ("accepted", "FBB", "SEK"),
        "C2": ("accepted", "FBB", "SEK"),
        "C3": ("accepted", "CRB", "SEK"),
    }
    calipers = [["EUR/1000 kg", "Dicke in mm"], [None, 0.5, 1], ["Graupappe ungestrichen", 640, 632]]
    assert {str(line.state) for line in lines(calipers).values()} == {"accepted"}


def test_pounds_below_calipers_are_what_the_boards_weigh_and_no_orders():
    rows = [
        ["SBS C1S - $/ST"],
        ["Caliper", "12pt", "16pt"],
        ["BW", "51#", "68#"],
        ["TL", 1210, 1190],
        ["LTL", 1260, 1240],
    ]
    found = lines(rows)
    assert [round(line.offer.grammage_gsm) for line in found.values()] == [249, 332, 249, 332]
    assert {str(line.state) for line in found.values()} == {"question"}
    assert all("bracket-unread" in codes(line) for line in found.values())


@pytest.mark.parametrize("unit", ["USD/ST", "USD"])
def test_calipers_across_over_a_row_of_price_units(unit):
    found = lines(
        [
            ["Prices per short ton"],
            ["Board", "18 pt", "20 pt"],
            ["", unit, unit],
            ["SBS", 1240, 1230],
            ["CRB", 952, 940],
        ]
    )
    assert {cell: (str(line.state), line.offer.caliper_um) for cell, line in found.items()} == {
        "B4": ("accepted", Decimal("457.2")),
        "C4": ("accepted", Decimal("508")),
        "B5": ("accepted", Decimal("457.2")),
        "C5": ("accepted", Decimal("508")),
    }


@pytest.mark.parametrize("corner", ["Caliper (µm)", "Grade"])
def test_weights_in_a_line_of_their_own_go_with_the_prices_below_them(corner):
    calipers = [350, 400] if corner != "Grade" else ["350 µm", "400 µm"]
    heads = [corner, None, *calipers]
    gc = [["GC1", "g/m²", 215, 245], [None, "£/t", 1115, 1105]]
    gd = [["GD2", "g/m²", 265, 300], [None, "£/t", 745, 735]]
    found = lines([["£ per tonne"], heads, *gc, *gd])
    told = {cell: (line.offer.grade, line.offer.caliper_um, line.offer.grammage_gsm) for cell, line in found.items()}
    assert told == {
        "C4": ("FBB", 350, 215),
        "D4": ("FBB", 400, 245),
        "C6": ("CRB", 350, 265),
        "D6": ("CRB", 400, 300),
    }
    assert {str(line.state) for line in found.values()} == {"accepted"}


def test_bare_numbers_across_are_what_the_title_says_they_are():
    title = "EUR per tonne DAP – price by grammage (g/m²)"
    found = lines([[title], [], ["Grade", 200, 225, 250], ["GC1", 1320, 1300, 1285]])
    assert [line.offer.grammage_gsm for line in found.values()] == [200, 225, 250]


def test_a_sheet_size_across_is_in_the_units_of_the_file():
    heads = ["Board", "Caliper", "lb/MSF", "25 x 38", "30 x 42"]
    found = lines([["US$ per 1,000 sheets"], heads, ["SBS C1S", "14 pt", 60, 249.38, 330.75]])
    assert [str(line.offer.sheet_mm[0]) for line in found.values()] == ["635.0", "762.0"]


@pytest.mark.parametrize(
    ("over", "corner"),
    [
        ("Épaisseur (µm)", "Grammage (g/m²)"), ("Caliper (µm)", "Basis weight (g/m²)"), ("Dicke µm", "Gewicht g/m²"),
        ("Espesor (µm)", "Gramaje (g/m²)"), ("Tjocklek µm", "Ytvikt g/m²"),
    ],
)  # fmt: skip
def test_a_second_row_of_figures_is_what_its_own_corner_says(over, corner):
    rows = [["EUR/t"], ["Sorte", over], [None, 350, 400], [corner, 260, 300], ["GD2", 821, 812], ["GT2", 868, 859]]
    told = {(line.offer.caliper_um, line.offer.grammage_gsm) for line in lines(rows).values()}
    assert told == {(350, 260), (400, 300)}


def test_one_row_of_figures_takes_the_words_above_it():
    rows = [["EUR/t"], ["Sorte", "Dicke µm"], [None, 350, 400], ["GD2", 821, 812], ["GT2", 868, 859]]
    assert {line.offer.caliper_um for line in lines(rows).values()} == {350, 400}


@pytest.mark.parametrize("rolls", ["Rolls 20 in. to 84 in., cores 3 in.", "Rouleaux 500 à 2100 mm, mandrins 76 mm"])
def test_lengths_of_rolls_in_the_title_measure_no_numbers_across(rolls):
    rows = [["USD per cwt", rolls], [], ["Stock", "Basis weight, lb/MSF", None], [None, 60, 76], ["SBS", 62.5, 61.3]]
    assert [(line.state, line.offer.caliper_um) for line in lines(rows).values()] == [("accepted", None)] * 2


@pytest.mark.parametrize("title", ["Prices by caliper, in µm", "Prices by caliper (µm)"])
def test_a_caliper_named_in_the_title_measures_the_numbers_across(title):
    rows = [["USD per cwt"], [title], [], ["Stock", 300, 350], ["SBS", 62.5, 61.3]]
    assert [int(line.offer.caliper_um) for line in lines(rows).values()] == [300, 350]
