"""An exception that a sentence names by itself, 'The exception is greyboard, which is sold ex works', and what is said
of all prices behind a sentence about some."""

import pytest

from tests.intake.sheets import lines

HEAD = ["Grade", "µm", "g/m²", "Price"]
SBS, GREY = ["SBS C1S", 400, 300, 1290], ["Greyboard", 900, 600, 640]


def both(note, *, above=False):
    table = [HEAD, SBS, GREY]
    return list(lines([[note], [], *table] if above else [*table, [], [note]]).values())


@pytest.mark.parametrize("above", [False, True])
@pytest.mark.parametrize(
    "note",
    ["We quote in EUR per tonne, delivered. The exception is greyboard, which is sold ex works.",
     "We quote in EUR per tonne, delivered, except greyboard, which is understood ex works.",
     "Wir bieten in EUR je Tonne an, frei Haus geliefert. Ausnahme ist Graukarton, der ab Werk verkauft wird.",
     "Alle Preise in EUR je Tonne, frei Haus. Eine Ausnahme bildet der Graukarton, der sich ab Werk versteht.",
     "Nos prix sont en EUR la tonne, franco. Seule exception : le carton gris, vendu départ usine.",
     "Prix en EUR la tonne, franco de port, sauf le carton gris, qui s'entend départ usine.",
     "Precios en euros por tonelada, puestos en su almacén, salvo el cartón gris, que se entiende en fábrica.",
     "Precios en EUR por tonelada, puestos en destino. Excepción: el cartón gris, en fábrica.",
     "Vi offererar i EUR per ton, fritt levererat. Undantag är gråpapp, som säljs ab fabrik."],
)  # fmt: skip
def test_what_is_excepted_from_the_freight_keeps_the_unit_of_all(note, above):
    found = both(note, above=above)
    assert [line.offer.delivered for line in found] == [True, False]
    assert {(line.offer.currency, str(line.offer.basis)) for line in found} == {("EUR", "tonne")}


@pytest.mark.parametrize(
    ("note", "currency"),
    [("We quote in EUR per tonne, delivered. The exception is greyboard, which is quoted in USD.", "USD"),
     ("Precios en euros por tonelada, salvo el cartón gris, que se entiende en dólares.", "USD"),
     ("Vi offererar i EUR per ton, fritt levererat. Undantag är gråpapp, som säljs i SEK.", "SEK")],
)  # fmt: skip
def test_what_is_excepted_from_the_money_has_its_own(note, currency):
    assert [line.offer.currency for line in both(note)] == ["EUR", currency]


@pytest.mark.parametrize(
    "note", ["Vi offererar i EUR per ton, fritt levererat. Undantag är gråpapp.",
             "We quote in EUR per tonne, delivered. The exception is greyboard."]
)  # fmt: skip
def test_an_exception_of_which_nothing_is_told_is_asked(note):
    sbs, grey = both(note)
    assert (sbs.offer.currency, sbs.offer.delivered) == ("EUR", True)
    assert (grey.offer.currency, grey.offer.delivered) == (None, None)


@pytest.mark.parametrize("above", [False, True])
@pytest.mark.parametrize(
    "note",
    ["The minimum is 5 t per item, for greyboard 2 t will do. All prices are in EUR per tonne, delivered.",
     "Die Mindestmenge liegt bei 5 t je Sorte, bei Graukarton genügen 2 t. Alle Preise in EUR je t, frei Haus.",
     "Le minimum est de 5 t par qualité, pour le carton gris 2 t suffisent. Tous les prix en EUR la tonne, franco.",
     "Pedido mínimo 5 t por calidad, para el cartón gris bastan 2 t. Precios en EUR por tonelada, puestos en destino.",
     "Minsta order är 5 ton per kvalitet, för gråpapp räcker 2 ton. Alla priser i EUR per ton, fritt levererat."],
)  # fmt: skip
def test_all_prices_behind_a_sentence_about_a_board(note, above):
    for line, least in zip(both(note, above=above), (5000, 2000), strict=True):
        offer = line.offer
        assert (offer.currency, str(offer.basis), offer.delivered) == ("EUR", "tonne", True)
        assert offer.minimum_kg == least


def test_what_goes_on_about_the_board_is_not_of_all():
    sbs, grey = both("Greyboard comes from a second mill. It is sold ex works.")
    assert sbs.offer.delivered is None
    assert grey.offer.delivered is not True


@pytest.mark.parametrize(
    "note",
    ["Prices in EUR per tonne, delivered, except greyboard, which is ex works. Lead time 4 weeks.",
     "Alle Preise in EUR je Tonne frei Haus, außer Graukarton, der ab Werk gilt. Lieferzeit 4 Wochen.",
     "Prix en EUR la tonne, franco, sauf le carton gris, qui s'entend départ usine. Délai 4 semaines.",
     "Precios en EUR por t, puestos en destino, salvo cartón gris, que se entiende en fábrica. Plazo 4 semanas.",
     "Precios en EUR por t, puestos en destino, salvo cartón gris, en fábrica. IVA no incluido. Plazo 4 semanas.",
     "Vi offererar i EUR per ton, fritt levererat. Undantag är gråpapp, som säljs ab fabrik. Leveranstid 4 veckor."],
)  # fmt: skip
def test_what_stands_behind_an_exception_is_of_all_again(note):
    found = both(note)
    assert [line.offer.delivered for line in found] == [True, False]
    assert {(line.offer.currency, line.offer.lead_days) for line in found} == {("EUR", (28, 28))}


def test_the_same_subject_behind_an_exception_may_be_of_the_boards_excepted():
    note = "Prices in EUR per tonne, delivered, except greyboard, which is ex works. FOB our mill in the north."
    assert both(note)[0].offer.delivered is not False
