"""Prices with freight that are told to who asks are others than those of the list, which are as the list says."""

import pytest

from tests.intake.sheets import lines

_TERMS = {
    "en": ("EUR/t, ex works", "Delivered from 20 t", ["please ask", "on request", "call us"]),
    "de": ("Preise ab Werk, EUR/t", "Frei Haus ab 20 t", ["auf Anfrage", "bitte anfragen"]),
    "fr": ("Prix départ usine, EUR/t", "Franco de port à partir de 20 t", ["nous consulter", "sur demande"]),
    "es": ("Precios ex fábrica, EUR/t", "Portes pagados a partir de 20 t", ["consultar", "a petición"]),
    "sv": ("Priser fritt fabrik, EUR/t", "Fraktfritt från 20 ton", ["på förfrågan", "på begäran"]),
}
_CASES = [(title, f"{terms}: {asked}.") for title, terms, asks in _TERMS.values() for asked in asks]


def delivered(title, note):
    boards = [["GC1", 250, 405, 1278], ["GD2", 350, 465, 868]]
    found = lines([["Kartonwerk Quendelberg GmbH"], [title], [], ["Board", "g/m²", "µm", "Price"], *boards, [], [note]])
    assert len(found) == 2
    return {line.offer.delivered for line in found.values()}


@pytest.mark.parametrize(("title", "note"), _CASES)
def test_prices_ex_works_stay_so(title, note):
    assert delivered(title, note) == {False}


@pytest.mark.parametrize(("title", "terms"), [(title, terms) for title, terms, _ in _TERMS.values()])
def test_what_larger_orders_are_delivered_at_is_open(title, terms):
    assert delivered(title, terms) == {None}


@pytest.mark.parametrize("note", ["Delivered prices on request.", "Delivered from 20 t: please ask."])
def test_beside_delivered_prices_it_is_open_which_are_meant(note):
    assert delivered("Prices delivered, EUR/t", note) == {None}
