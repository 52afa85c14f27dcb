"""A note that excepts boards from one thing it says holds for them in all else; from money it is kept from them."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import State

_HEAD = ["Grade", "g/m²", "µm", "Price"]
_ROWS = [["GC1", 250, 400, 1220], ["CUK", 300, 400, 1090], ["GD2", 350, 470, 810]]


def asked(found):
    return {cell for cell, line in found.items() if line.state is State.QUESTION}


def offers(said, *below):
    found = lines([[said], _HEAD, *_ROWS, *([note] for note in below)])
    assert asked(found) == set()
    return [line.offer for line in found.values()]


@pytest.mark.parametrize(
    "said",
    [
        "EUR per tonne delivered, except CUK: ex works", "EUR per tonne delivered except CUK, ex works",
        "EUR per tonne delivered, except CUK ex works", "EUR je Tonne frei Haus, außer CUK: ab Werk",
        "EUR la tonne, franco de port sauf kraft couché (CUK) : départ usine",
        "EUR por tonelada métrica, franco destino, salvo CUK: franco fábrica",
        "EUR per 1000 kg fritt kund, utom CUK: fritt vårt bruk",
    ],
)  # fmt: skip
def test_the_excepted_board_keeps_the_unit_that_is_said_of_all(said):
    assert [(one.currency, one.basis.value) for one in offers(said)] == [("EUR", "tonne")] * 3
    assert [one.delivered for one in offers(said)] == [True, False, True]


@pytest.mark.parametrize(
    "said",
    [
        "EUR per tonne, delivered (DAP). Minimum order 2 t, except CUK: 5 t",
        "EUR je Tonne, frei Haus. Mindestmenge 2 t, außer CUK: 5 t",
        "EUR la tonne, franco destination. Commande minimum 2 t, sauf CUK : 5 t",
        "Euros por tonelada, entregado en destino (DAP). Pedido mínimo 2 t, excepto CUK: 5 t.",
        "EUR per 1000 kg, fritt kund. Minsta order 2 t, utom CUK: 5 t",
    ],
)
def test_a_sentence_before_the_exception_holds_for_all(said):
    found = offers(said)
    assert [one.minimum_kg for one in found] == [2000, 5000, 2000]
    assert [(one.currency, one.delivered) for one in found] == [("EUR", True)] * 3


@pytest.mark.parametrize(
    "said",
    [
        "Prices in CAD per tonne, except CUK, which is in US dollars (USD) per tonne",
        "Preise in CAD je Tonne, außer CUK, in US-Dollar (USD) je Tonne",
        "Prix en CAD la tonne, sauf le CUK, en dollars américains (USD) la tonne",
        "Precios en CAD por tonelada métrica, salvo el CUK, que va en dólares americanos (USD) por tonelada métrica",
        "Priser i CAD per 1000 kg, utom CUK i USD per 1000 kg",
    ],
)
def test_an_exception_from_the_currency_is_that_boards_alone(said):
    assert [(one.currency, one.basis.value) for one in offers(said)] == [
        ("CAD", "tonne"), ("USD", "tonne"), ("CAD", "tonne"),
    ]  # fmt: skip


@pytest.mark.parametrize(
    "said",
    [
        "EUR per tonne, delivered. Minimum order 2 t except CUK",
        "EUR je Tonne, frei Haus. Mindestmenge 2 t außer CUK",
        "EUR la tonne, franco destination. Commande minimum 2 t sauf CUK",
        "EUR por tonelada métrica, franco destino. Pedido mínimo 2 t salvo CUK",
        "EUR per 1000 kg, fritt kund. Minsta order 2 t utom CUK",
    ],
)
def test_a_sentence_before_holds_for_all_where_nothing_is_said_of_the_excepted(said):
    found = offers(said)
    assert [one.minimum_kg for one in found] == [2000, None, 2000]
    assert [(one.currency, one.delivered) for one in found] == [("EUR", True)] * 3


def test_an_exception_that_says_no_more_leaves_the_board_without_the_unit():
    found = lines([["Everything in EUR per tonne except CUK"], _HEAD, *_ROWS])
    assert len(asked(found)) == 1


@pytest.mark.parametrize(
    ("said", "delivered"),
    [
        ("Lead time: 3 weeks; CUK 8 weeks. Ex works.", [False] * 3),
        ("Lieferzeit 3 Wochen; CUK 8 Wochen. Ab Werk.", [False] * 3),
        ("Entrega: 3 semanas; CUK 8 semanas. Franco fábrica.", [False] * 3),
        ("Lead time: 3 weeks; CUK: ex works, 8 weeks.", [None, False, None]),
    ],
)
def test_a_sentence_on_another_subject_behind_an_aside_speaks_of_all(said, delivered):
    found = offers("EUR per tonne", said)
    assert [one.delivered for one in found] == delivered
    assert [one.lead_days for one in found] == [(21, 21), (56, 56), (21, 21)]


@pytest.mark.parametrize(
    "said",
    [
        "Lead time 4 weeks, CUK 7 weeks. Offer valid until 15 September 2026.",
        "Lieferzeit 4 Wochen, CUK 7 Wochen. Angebot bindend bis 15.09.2026.",
        "Délai 4 semaines, CUK 7 semaines. Offre valable jusqu'au 15/09/2026.",
        "Plazo 4 semanas, CUK 7 semanas. Oferta válida hasta el 15/09/2026.",
        "Leveranstid 4 veckor, CUK 7 veckor. Offerten gäller t.o.m. 2026-09-15.",
    ],
)
def test_until_when_the_offer_holds_is_said_of_all(said):
    assert [one.valid_until.isoformat() for one in offers("EUR per tonne", said)] == ["2026-09-15"] * 3


@pytest.mark.parametrize(
    "said",
    [
        "The prices below are in EUR per tonne, delivered, except for GD2, which is sold ex our warehouse.",
        "Die Preise sind in EUR je Tonne, frei Haus, außer für GD2, das ab unserem Lager verkauft wird.",
        "Les prix sont en EUR la tonne, franco, sauf pour le GD2, qui est vendu départ notre dépôt.",
        "Los precios son en EUR por tonelada, a destino, salvo el GD2, que se vende franco nuestro almacén.",
        "Priserna nedan är i EUR per 1000 kg, fritt levererat, utom för GD2 som säljs fritt vårt lager.",
    ],
)
def test_a_board_sold_on_other_terms_keeps_currency_and_unit(said):
    found = offers(said)
    assert [(one.currency, one.basis.value, one.lead_days) for one in found] == [("EUR", "tonne", None)] * 3
    assert [one.delivered for one in found] == [True, True, False]


@pytest.mark.parametrize(
    "said",
    [
        "The prices below are in EUR per tonne, delivered, except for GD2, which is quoted apart.",
        "Die Preise sind in EUR je Tonne, frei Haus, außer für GD2, das gesondert angeboten wird.",
        "Priserna nedan är i EUR per 1000 kg, fritt levererat, utom för GD2 som offereras separat.",
    ],
)
def test_a_board_excepted_from_who_knows_what_has_no_unit(said):
    assert asked(lines([[said], _HEAD, *_ROWS])) == {"D5"}
