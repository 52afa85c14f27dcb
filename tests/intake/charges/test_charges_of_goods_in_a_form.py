"""Charges on goods that are supplied in one form, and charges that are said not to concern this offer."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import OPEN


def _charges(*notes):
    rows = (["GC1", 230, 375, "Rolls", 1310], ["GC2", 250, 405, "Sheets 70 x 100 cm", 1235])
    found = lines([["EUR/t, DAP"], ["Grade", "g/m²", "µm", "Form", "Price"], *rows, *([note] for note in notes)])
    priced = (line.offer.charges for line in found.values())
    return [[None if one.currency == OPEN else float(one.price) for one in charges] for charges in priced]


@pytest.mark.parametrize(
    "note",
    [
        "Sheeting: add EUR 38/t on items supplied in sheets.",
        "Surcharge of EUR 38/t for goods ordered in sheets.",
        "Supplément de 38 €/t pour les articles livrés en feuilles.",
        "Recargo de 38 €/t para artículos suministrados en hojas.",
        "Tillägg 38 EUR/t för artiklar levererade i ark.",
    ],
)
def test_goods_supplied_in_sheets_bear_it_and_rolls_do_not(note):
    assert _charges(note) == [[], [38]]


@pytest.mark.parametrize(
    "note",
    [
        "Zuschlag von 38 EUR/t für in Bogen gelieferte Ware.",
        "Zuschlag von 38 EUR/t auf Positionen, die in Bogen geliefert werden.",
        "Surcharge of EUR 38/t on items ordered in sheets of special sizes.",
    ],
)
def test_where_it_is_not_read_for_certain_no_cost_looks_whole(note):
    assert _charges(note)[1] == [None]


@pytest.mark.parametrize(
    "note",
    [
        (
            "An energy surcharge of EUR 45/t will be added to shipments made on or after 4 January 2027."
            " It does not apply to shipments under this quote."
        ),
        (
            "Ab 4. Januar 2027 wird ein Energiezuschlag von 45 EUR/t berechnet."
            " Er gilt nicht für Lieferungen aus diesem Angebot."
        ),
        (
            "Une surtaxe énergie de 45 €/t sera ajoutée à partir du 4 janvier 2027."
            " Elle ne s'applique pas aux livraisons de la présente offre."
        ),
        (
            "A partir del 4 de enero de 2027 se añadirá un recargo energético de 45 €/t."
            " No se aplica a los envíos de esta oferta."
        ),
        "Ett energitillägg på 45 EUR/t tas ut från 4 januari 2027. Det gäller inte leveranser enligt denna offert.",
    ],
)
def test_what_does_not_apply_to_this_offer_is_not_charged(note):
    assert _charges(note) == [[], []]


@pytest.mark.parametrize("whom", ["shipments by rail", "Canadian customers", "existing contracts"])
def test_what_does_not_apply_to_some_is_left_open(whom):
    note = f"An energy surcharge of EUR 45/t is added. It does not apply to {whom}."
    assert _charges(note) == [[None], [None]]
