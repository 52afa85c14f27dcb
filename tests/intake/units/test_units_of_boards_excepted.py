"""Currencies and units that a sentence gives some boards of a list, and from which it excepts them."""

import pytest

from tests.intake.sheets import lines

BOARDS = [["GC1", 240, 390, 1266], ["GD2", 300, 385, 9890], ["GT2", 320, 420, 10360], ["Graupappe", 500, 760, 690]]


def money(note, boards=BOARDS):
    """What each board is priced in: '?' where it is asked."""
    found = lines([["Ostwerk Karton AB"], [note], [], ["Board", "g/m²", "µm", "Price"], *boards])
    return [f"{one.offer.currency}" if str(one.state) == "accepted" else "?" for one in found.values()]


@pytest.mark.parametrize(
    "note",
    [
        "Prices are in euro per tonne, except for the recycled board, which we price in pounds sterling per tonne.",
        "Die Preise sind in Euro je Tonne, außer für den Recyclingkarton, den wir in GBP je Tonne berechnen.",
        "Nos prix sont en euros la tonne, sauf pour le carton recyclé, que nous facturons en livres sterling la tonne.",
        "Los precios son en euros por tonelada, salvo para el cartón reciclado, que facturamos en GBP por tonelada.",
        "Priserna är i euro per ton (1 000 kg), utom för returkartongen som vi prissätter i GBP per ton.",
    ],
)
def test_boards_excepted_have_the_other_currency(note):
    # Grey board is recycled too: whether it is meant is asked.
    assert money(note) == ["EUR", "GBP", "GBP", "?"]


@pytest.mark.parametrize(
    "note",
    [
        "Prices are in euro per tonne, except for our Kvist boards, which are priced in pounds sterling.",
        "Die Preise sind in Euro je Tonne, außer für unsere Kvist-Sorten, die wir in Pfund Sterling berechnen.",
        "Nos prix sont en euros la tonne, sauf pour la gamme Kvist, que nous facturons en livres sterling.",
        "Los precios son en euros por tonelada, salvo para la gama Kvist, que facturamos en libras esterlinas.",
        "Priserna är i euro per ton (1 000 kg), utom för Kvistserien som vi prissätter i brittiska pund.",
    ],
)
def test_an_exception_for_boards_that_cannot_be_told_is_asked(note):
    assert money(note) == ["?"] * 4


@pytest.mark.parametrize(
    "note",
    [
        "Prices are in euro per tonne, except freight, which is in pounds sterling.",
        "Die Preise sind in Euro je Tonne, außer der Fracht, die in Pfund Sterling berechnet wird.",
        "Nos prix sont en euros la tonne, sauf le transport, facturé en livres sterling.",
        "Los precios son en euros por tonelada, salvo el flete, que se factura en libras esterlinas.",
        "Priserna är i euro per ton (1 000 kg), utom frakten som faktureras i brittiska pund.",
    ],
)
def test_what_is_no_board_excepts_none(note):
    assert money(note) == ["EUR"] * 4


@pytest.mark.parametrize(
    "note",
    [
        "Prices are in euro per tonne. The two kraft items, which we buy in, are in US dollars (USD).",
        "Die Preise sind in Euro je Tonne. Kraftkarton kaufen wir ein und fakturieren ihn in US-Dollar (USD).",
        "Nos prix sont en euros la tonne. Le carton kraft est facturé en dollars américains (USD).",
        "Los precios son en euros por tonelada métrica. El cartón kraft se factura en dólares (USD).",
        "Priserna är i euro per ton (1 000 kg). Kraftkartongen fakturerar vi i US-dollar (USD).",
    ],
)
def test_a_sentence_of_its_own_tells_some_boards_apart(note):
    boards = [["GC1", 240, 390, 1266], ["CUK", 300, 385, 1180], ["GD2", 320, 420, 890]]
    assert money(note, boards) == ["EUR", "USD", "EUR"]


def test_a_code_is_of_no_other_board_of_its_grade():
    note = "Prices are in Swiss francs per tonne. Grade GT2 is bought in and invoiced in euro."
    assert money(note) == ["CHF", "CHF", "EUR", "CHF"]


@pytest.mark.parametrize(
    "note",
    [
        "Prices are in euro per tonne, except for our Kvist boards, which are priced per 1,000 sheets.",
        "Die Preise sind in Euro je Tonne, außer für unsere Kvist-Sorten, die je 1.000 Bogen kosten.",
        "Nos prix sont en euros la tonne, sauf pour la gamme Kvist, vendue aux 1 000 feuilles.",
    ],
)
def test_an_exception_from_the_unit_is_asked_likewise(note):
    assert money(note) == ["?"] * 4
