"""'All tabs: lead time 4 weeks' on one sheet is said of every sheet of the file, its own too."""

import pytest

from tests.intake.sheets import Answers, book, grid, read_workbook


def _offers(note):
    heads = ["Grade", "g/m²", "Price EUR/t"]
    first = grid([heads, ["GC1", 250, 1200], [], [note]], sheet="First")
    second = grid([heads, ["GD2", 300, 900]], sheet="Second")
    return [line.offer for line in read_workbook(book(first, second), Answers({})).lines]


@pytest.mark.parametrize(
    "note",
    [
        "All tabs: lead time 4 weeks",
        "Alle Blätter: Lieferzeit 4 Wochen",
        "Tous les onglets : délai 4 semaines",
        "Todas las pestañas: plazo de entrega 4 semanas",
        "Alla flikar: leveranstid 4 veckor",
    ],
)
def test_what_stands_behind_the_words_for_it_is_read(note):
    assert [offer.lead_days for offer in _offers(note)] == [(28, 28)] * 2


@pytest.mark.parametrize(
    "note",
    [
        "All prices in this workbook are delivered.",
        "Alle Preise in dieser Datei frei Haus",
        "Tous les prix de ce classeur s'entendent franco",
        "Todos los precios de este archivo son entregados",
        "Alla priser i denna fil fritt levererat",
    ],
)
def test_so_is_what_stands_around_them(note):
    assert [offer.delivered for offer in _offers(note)] == [True, True]


@pytest.mark.parametrize("note", ["Every tab: energy surcharge 25 EUR/t", "Alle Blätter: Energiezuschlag 25 EUR/t"])
def test_a_charge_is_borne_on_every_sheet(note):
    assert [[str(one.price) for one in offer.charges] for offer in _offers(note)] == [["25"], ["25"]]


def test_what_is_said_of_one_tab_is_not():
    assert [offer.lead_days for offer in _offers("This tab: lead time 4 weeks")][1] is None
