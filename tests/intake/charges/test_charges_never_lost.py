"""A charge that a note names is not lost where it is not certain whether, or by whom, it is borne."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import OPEN

ROWS = [["EUR/t delivered"], ["Grade", "g/m²", "µm", "Price"], ["GC1", 250, 400, 1180]]


def charged(*notes):
    charges = lines([*ROWS, *([note] for note in notes)])["D3"].offer.charges
    return [float(charge.price) if charge.currency != OPEN else None for charge in charges]


@pytest.mark.parametrize(
    "note",
    [
        "Sheeting 60 EUR/t and freight 45 EUR/t included",
        "Formatzuschlag 60 EUR/t und Fracht 45 EUR/t enthalten",
        "Supplément format 60 EUR/t et transport 45 EUR/t compris",
        "Corte en hojas 60 EUR/t y flete 45 EUR/t incluido",
        "Arktillägg 60 EUR/t och frakt 45 EUR/t ingår",
        "Energy surcharge 15 EUR/t (waived for orders over 20 t)",
        "Packaging surcharge 15 EUR/t on all sheets",
        "Fuel surcharge of 12 EUR/t applies to delivered prices only",
        "Energy surcharge of 12 EUR/t is included; fuel surcharge of 9 EUR/t is not.",
    ],
)
def test_what_is_not_certain_stays_open(note):
    assert charged(note) == [None]


@pytest.mark.parametrize(
    "note",
    [
        "Energy surcharge 15 EUR/t; fuel surcharge 10 EUR/t included",
        "Energiezuschlag 15 EUR/t; Dieselzuschlag 10 EUR/t enthalten",
        "Surcharge énergie 15 EUR/t ; surcharge carburant 10 EUR/t comprise",
        "Recargo energético 15 EUR/t; recargo combustible 10 EUR/t incluido",
        "Energitillägg 15 EUR/t; drivmedelstillägg 10 EUR/t ingår",
        "Energy surcharge 15 EUR/t is added and freight is included",
    ],
)
def test_another_charge_that_is_included_frees_this_one_not(note):
    assert charged(note) == [15]


@pytest.mark.parametrize(
    "note",
    [
        "Energy surcharge 15 EUR/t, included",
        "Energy surcharge 15 EUR/t waived",
        "Energiezuschlag 15 EUR/t enthalten",
        "Surcharge énergie 15 EUR/t comprise",
        "Recargo energético 15 EUR/t incluido",
        "Energitillägg 15 EUR/t ingår",
    ],
)
def test_what_is_included_is_not_charged(note):
    assert charged(note) == []


@pytest.mark.parametrize("head", ["Customs", "Einfuhrzoll", "Droits de douane", "Aranceles", "Tull"])
def test_customs_are_charged(head):
    found = lines([ROWS[0], [*ROWS[1], head], [*ROWS[2], 65]])
    assert [float(charge.price) for charge in found["D3"].offer.charges] == [65]


@pytest.mark.parametrize(
    ("sentence", "own"),
    [
        ("18 pt SBS C1S at $1,190/ST. Freight $45/ST extra.", True),
        ("18 pt SBS C1S at $1,190/ST, freight $45/ST extra.", True),
        ("GZ 450 µm 300 g/m² zu 1.190 €/t. Fracht 45 €/t zusätzlich.", True),
        ("GZ 450 µm 300 g/m² à 1 190 €/t. Transport 45 €/t en sus.", True),
        ("GZ 450 µm 300 g/m² a 1.190 €/t. Flete 45 €/t aparte.", True),
        ("GZ 450 µm 300 g/m² till 1 190 €/t. Frakt 45 €/t tillkommer.", True),
        ("Thank you for your inquiry. Freight $45/ST extra.", False),
    ],
)
def test_a_charge_told_with_one_boards_price_may_not_be_anothers(sentence, own):
    other = "20 pt CRB at $874/ST" if "$" in sentence else "GD2 450 µm 300 g/m² 874 EUR/t"
    found = lines([["Good morning,"], [sentence], [other]])["A3"].offer
    assert [charge.currency == OPEN for charge in found.charges] == [own]


def test_customers_are_no_customs():
    found = lines([["Prices"], [*ROWS[1][:3], "EUR/t delivered", "U.S. customers US$/ST FOB mill"], [*ROWS[2], 1165]])
    assert set(found) == {"D3", "E3"}
