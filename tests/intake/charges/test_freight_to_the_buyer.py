"""Freight that a row or a note names with where it leads, and what it costs."""

import pytest

from tests.intake.sheets import lines


def offer(title, *below):
    rows = [[title], ["Grade", "g/m²", "µm", "Price"], ["GC1", 250, 400, 1180], ["GC2", 250, 400, 1100], [], *below]
    return lines(rows)["D3"].offer


@pytest.mark.parametrize(
    ("title", "label", "amount", "price"),
    [
        ("Preise ab Werk, EUR/t", "Fracht frei Empfänger", "61,50 €/t", "61.50"),
        ("Prices ex works, EUR/t", "Freight delivered UK", "48 EUR/t", "48"),
        ("Prix départ usine, EUR/t", "Transport franco destination", "52 €/t", "52"),
        ("Precios en fábrica, EUR/t", "Flete franco destino", "39 €/t", "39"),
    ],
)
def test_a_row_of_freight_to_the_buyer_is_a_charge(title, label, amount, price):
    found = offer(title, ["Surcharge", None, None, "30 €/t"], [label, None, None, amount])
    assert found.delivered is False
    assert [str(charge.price) for charge in found.charges] == ["30", price]


def test_without_money_it_is_a_term():
    found = offer("Preise in EUR/t", ["Fracht frei Empfänger", None, None, "ab 5 t"])
    assert (found.delivered, found.charges) == (None, ())
    assert offer("Preise in EUR/t", ["Fracht frei Empfänger"]).delivered is True


@pytest.mark.parametrize(
    ("note", "price"),
    [
        ("Le transport jusqu'à votre site est facturé en sus à raison de 52 € la tonne.", "52"),
        ("El transporte hasta su planta supone 39 € más por tonelada, que cargaremos en factura.", "39"),
        ("Frakten till er kostar 42 EUR per ton och läggs på fakturan.", "42"),
        ("An energy supplement of €28 per tonne applies to all deliveries since 1 November 2025.", "28"),
        ("Une surcharge énergie de 18 € la tonne est due sur toutes les qualités, sauf sur le carton gris.", "18"),
    ],
)
def test_whole_sentences(note, price):
    assert [str(charge.price) for charge in offer("EUR/t", [note]).charges] == [price]


@pytest.mark.parametrize(
    "note",
    [
        "We reserve the right to charge an energy surcharge of 3 %.",
        "Wir behalten uns vor, einen Energiezuschlag von 3 % zu erheben.",
        "We are considering a freight surcharge of 3 % in the new year.",
        "From 1 November 2030 an energy supplement of €28 per tonne applies.",
    ],
)
def test_what_may_be_charged_has_no_amount(note):
    (charge,) = offer("EUR/t", [note]).charges
    assert not charge.price


def test_what_is_charged_keeps_it():
    (charge,) = offer("EUR/t", ["Energy surcharge 3 %, we reserve the right to adjust it."]).charges
    assert str(charge.price) == "3"


@pytest.mark.parametrize(
    "note", ["Vårt FSC-certifikat gäller till och med 2028-05-31.", "For tissue a surcharge of 30 EUR/t applies."]
)
def test_no_charge_of_board(note):
    assert offer("EUR/t", [note]).charges == ()
