"""A unit in a sentence that speaks of prices, amounts or costs is what they are per only where it says nothing else."""

import pytest

from tests.intake.sheets import lines

HEADS = {"en": ("Price", "USD"), "de": ("Preis", "EUR"), "fr": ("Prix", "EUR"), "es": ("Precio", "EUR"),
         "sv": ("Pris", "SEK")}  # fmt: skip


def basis(language, note):
    price, currency = HEADS[language]
    rows = [[note], [], ["Board", "g/m²", "µm", "Size mm", f"{price} {currency}"], ["GC2", 300, 490, "720 x 1020", 963]]
    (line,) = lines(rows).values()
    return line.offer.basis


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Cost per tonne of CO2 is published."),
        ("en", "The water cost per tonne is shown in our report."),
        ("en", "Costs of slitting are per tonne of reels."),
        ("en", "Figures are lb per 1,000 sq ft."),
        ("en", "Figures are pounds per MSF."),
        ("en", "Amounts in the warehouse are per 1,000 sheets."),
        ("de", "Zahlen je Tonne siehe Umweltbericht."),
        ("de", "Kosten je Tonne CO2 werden nicht berechnet."),
        ("fr", "Montants de CO2 par tonne disponibles."),
        ("es", "Valor calorífico por tonelada: ver ficha"),
        ("es", "Valores técnicos por m2 según norma."),
        ("sv", "Siffror per ton finns i miljörapporten."),
    ],
)
def test_costs_and_figures_of_something_else_say_nothing_of_prices(language, note):
    assert basis(language, note) is None


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Prices for orders of one tonne."),
        ("en", "Prices start at one tonne."),
        ("en", "Prices for one tonne and over."),
        ("de", "Preise für eine Tonne und mehr"),
        ("es", "Precios a partir de una tonelada."),
        ("sv", "Priser avser poster om ett ton."),
        ("en", "Prices for lots of one thousand sheets."),
        ("de", "Preise bei einem Paket von 1000 Bogen."),
    ],
)
def test_one_of_a_unit_may_be_how_much_is_ordered(language, note):
    assert basis(language, note) is None


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "The price of one tonne of pulp moves this list."),
        ("de", "Der Preis für eine Tonne Altpapier bestimmt diese Liste."),
        ("es", "El precio de una tonelada de pasta se publica."),
        ("sv", "Priset på ett ton massa styr listan."),
        ("en", "Prices include one thousand sheets of overs."),
        ("de", "Der Preis enthält eine Tonne Freimenge."),
        ("es", "Los precios incluyen un separador cada mil hojas."),
        ("sv", "Priserna inkluderar mellanlägg för varje 1000 ark."),
    ],
)
def test_one_of_a_unit_may_be_of_other_goods_or_come_with_the_price(language, note):
    assert basis(language, note) is None


@pytest.mark.parametrize(
    ("language", "note", "unit"),
    [
        ("en", "Amounts per tonne.", "tonne"),
        ("en", "All amounts are per tonne, and sheets are trimmed.", "tonne"),
        ("en", "Prices are for one tonne of board.", "tonne"),
        ("en", "What you read under Price is what one thousand sheets cost in pounds.", "1000sheets"),
        ("de", "Die Summen gelten pro Tonne.", "tonne"),
        ("de", "Preise für eine Tonne", "tonne"),
        ("de", "Angegeben ist, was tausend Bogen kosten, abgeholt an unserer Rampe", "1000sheets"),
        ("fr", "Montants par tonne.", "tonne"),
        ("fr", "Le montant indiqué est celui de mille feuilles, marchandise enlevée à notre dépôt", "1000sheets"),
        ("es", "Importe por tonelada métrica (*)", "tonne"),
        ("es", "Los importes son por tonelada de 1.000 kg, puestos en destino", "tonne"),
        ("es", "El importe de cada tonelada métrica.", "tonne"),
        ("sv", "Beloppen avser per ton.", "tonne"),
        ("sv", "Alla belopp är i svenska kronor och avser 1 000 ark", "1000sheets"),
    ],
)
def test_a_sentence_that_says_nothing_else_is_heard(language, note, unit):
    assert basis(language, note) == unit
