"""Groups of figures that an index heads, beside the prices that are offered."""

import pytest

from tests.intake.sheets import lines

_ROWS = [
    ["SBS C1S", 1310, 1300, 1262, 1251],
    ["CUK", 1110, 1100, 1071, 1060],
    ["CRB C1S", 945, 935, 903, 892],
]


def _of(left, right, low=("16 pt", "18 pt")):
    heads = [[None, left, None, right, None], ["Grade", *low, *low]]
    return lines([["Quernmoor Board, Inc."], ["US$ per short ton"], *heads, *_ROWS])


@pytest.mark.parametrize(
    ("index", "ours"),
    [
        ("Published index, May (for information only)", "Our delivered prices"),
        ("Index (2020 = 100)", "Our prices"),
        ("Market index – June 2026", "Offer"),
        ("Indexwert", "Unsere Preise"),
        ("Veröffentlichter Index Mai 2026", "Unsere Preise"),
        ("Indice publié, mai", "Nos prix"),
        ("Índice publicado, mayo", "Nuestros precios"),
        ("Publicerat index, maj", "Våra priser"),
    ],
)
def test_an_index_is_offered_by_nobody(index, ours):
    found = _of(index, ours)
    assert {cell[0] for cell in found} == {"D", "E"}
    assert {str(line.state) for line in found.values()} == {"accepted"}
    assert [f"{line.offer.caliper_um:f}" for line in found.values()][:2] == ["406.4", "457.2"]


def test_the_grades_of_an_index_are_no_offers_either():
    heads = [[None, "Published index, May", None, "Our prices", None], ["pt", "SBS C1S", "CUK", "SBS C1S", "CUK"]]
    rows = [[16, 1310, 1110, 1262, 1071], [18, 1300, 1100, 1251, 1060]]
    found = lines([["Quernmoor Board, Inc."], ["US$ per short ton"], *heads, *rows])
    assert {cell[0] for cell in found} == {"D", "E"}


@pytest.mark.parametrize("ours", ["Index-linked contract", "Price by index", "Preis nach Index", "Prix selon indice"])
def test_a_price_that_follows_an_index_is_asked_about(ours):
    found = _of(ours, "Fixed")
    assert {str(found[cell].state) for cell in found if cell[0] in "BC"} == {"question"}
    assert {cell[0] for cell in found} == set("BCDE")


def test_figures_that_are_an_index_throughout_are_no_offers():
    assert not _of("Index May", "Index June")
