"""'Above prices …' between two lots of boards is said of the lot above it, not of the rows below."""

import pytest

from tests.intake.sheets import lines

VIRGIN, RECYCLED = [["SBS", 300, 1200], ["CUK", 350, 900]], [["CRB", 300, 700], ["URB", 350, 600]]


def _delivered(first, second, *, head=()):
    heads = ["Grade", "g/m²", "Price EUR/t"]
    rows = [["Tarn Board Ltd"], heads, *VIRGIN, [first], *head, *RECYCLED, [second]]
    return [line.offer.delivered for line in lines(rows).values()]


@pytest.mark.parametrize("head", [(), ([],), (["Grade", "g/m²", "Price EUR/t"],)])
@pytest.mark.parametrize(
    ("works", "free"),
    [
        ("Above prices FOB mill.", "Above prices delivered."),
        ("Obige Preise ab Werk.", "Obige Preise frei Haus."),
        ("Prix ci-dessus départ usine.", "Prix ci-dessus franco."),
        ("Precios de arriba en fábrica.", "Precios de arriba puesto en destino."),
        ("Ovanstående priser fritt fabrik.", "Ovanstående priser fritt levererat."),
    ],
)
def test_each_lot_has_what_is_said_below_it(works, free, head):
    assert _delivered(works, free, head=head) == [False, False, True, True]


def test_rows_below_have_nothing_of_it():
    assert _delivered("Above prices FOB mill.", "") == [False, False, None, None]


def test_at_the_end_of_a_list_it_is_said_of_all():
    assert _delivered("", "Above prices FOB mill.") == [False] * 4


@pytest.mark.parametrize("words", ["FOB mill, 10,000 lb and above", "FOB mill"])
def test_a_heading_of_the_rows_below_stays_one(words):
    assert _delivered(words, "")[2:] == [False, False]
