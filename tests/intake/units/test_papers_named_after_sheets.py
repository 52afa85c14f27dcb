"""A price sheet is a paper; what is priced per sheet is said otherwise."""

import pytest

from tests.intake.sheets import codes, lines

HEADS = ["Grade", "Caliper (pt)", "Price US cents per lb"]


def _read(title):
    return next(iter(lines([["Tarn Board Inc."], [title], HEADS, ["SBS", 18, 59.5]]).values()))


@pytest.mark.parametrize(
    "title",
    [
        "Price sheet, FOB mill",
        "Mill price sheet, FOB",
        "Preisblatt, ab Werk",
        "Feuille de prix, départ usine",
        "Hoja de precios, en fábrica",
        "Prisblad, fritt fabrik",
    ],
)
def test_the_name_of_the_paper_is_no_unit(title):
    line = _read(title)
    assert (str(line.state), str(line.offer.basis), line.offer.delivered) == ("accepted", "lb", False)


def test_a_price_per_sheet_is_asked_about_beside_another_unit():
    assert "basis-unknown" in codes(_read("Price per sheet, FOB mill"))
