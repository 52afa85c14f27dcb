"""A sheet named only to say what weights are of is no offer's size: 'weight in lb per 500 sheets of 25 x 38 in'."""

from decimal import Decimal

import pytest

from tests.intake.sheets import lines

_TITLE = ["Dorfield Board, Inc."]


def _line(unit, said, weight, caliper, *more):
    heads = ["Grade", caliper, "Weight", "Price"]
    (line,) = lines(
        [_TITLE, [unit], [said], heads, ["SBS", 18 if "pt" in caliper else 450, weight, 612], *more]
    ).values()
    return line


@pytest.mark.parametrize(
    "said",
    [
        "Weight in lb per 500 sheets of 25 x 38 in",
        "SBS, C1S – weight in lb per 500 sheets 25 x 38 in",
        "Weights: pounds per ream of 500 sheets, 25 x 38 inches",
        "Gewicht in lb je 500 Bogen 25 x 38 Zoll",
        "Poids en lb par 500 feuilles de 25 x 38 po",
        "Peso en lb por 500 hojas de 25 x 38 pulg",
        "Vikt i lb per 500 ark 25 x 38 tum",
    ],
)
def test_a_ream_is_no_size_of_the_sheets_sold(said):
    offer = _line("USD per short ton, inches", said, 254, "Caliper (pt)").offer
    assert offer.sheet_mm is None
    assert round(offer.grammage_gsm) == 376


@pytest.mark.parametrize(
    "said",
    [
        "Weight: kg per 1,000 sheets of 70 x 100 cm",
        "Gewicht: kg je 1.000 Bogen 70 x 100 cm",
        "Poids : kg par 1 000 feuilles de 70 x 100 cm",
        "Pesos en kg por 1.000 hojas de 70 x 100 cm",
        "Vikt: kg per 1000 ark 70 x 100 cm",
    ],
)
def test_what_a_thousand_sheets_weigh_is_told_of_their_size(said):
    offer = _line("EUR per tonne", said, 250, "Caliper (µm)").offer
    assert offer.sheet_mm is None
    assert round(offer.grammage_gsm) == 357


def test_by_the_sheet_it_is_the_size_of_those_that_are_weighed():
    offer = _line("USD per 1,000 sheets, inches", "M weight of 28 x 40 in", 595, "Caliper (pt)").offer
    assert offer.sheet_mm == (Decimal("711.2"), Decimal("1016.0"))


def test_by_the_sheet_a_ream_leaves_the_size_open():
    line = _line("USD per 1,000 sheets, inches", "Weight in lb per 500 sheets of 25 x 38 in", 254, "Caliper (pt)")
    assert line.state == "question"


@pytest.mark.parametrize(
    ("said", "weight"),
    [
        ("Sheets 28 x 40 in. Weight in lb per 500 sheets 25 x 38 in", 254),
        ("Weight in lb per 3,000 sq ft; sheets 28 x 40 in", 231),
        ("Weight in lb per 1,000 sq ft, sheets 28 x 40 in", 77),
    ],
)
def test_sheets_sold_beside_the_words_of_weights_keep_their_size(said, weight):
    offer = _line("USD per short ton, inches", said, weight, "Caliper (pt)").offer
    assert offer.sheet_mm == (Decimal("711.2"), Decimal("1016.0"))
