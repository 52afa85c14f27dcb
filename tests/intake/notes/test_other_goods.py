"""What a note says of goods that no list of board sells is said of no price here; what is only called after such goods
is."""

from datetime import date

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.orders.other_goods import of_other_goods


def read(note):
    (line,) = lines([["Grade", "g/m²", "µm", "Price EUR/t"], ["GC1", 260, 410, 1210], [note]]).values()
    assert str(line.state) == "accepted"
    return line


@pytest.mark.parametrize(
    "part",
    [
        "Prices for tissue are delivered", "Tissue prices are valid until 30 June", "Pulp is delivered by rail",
        "Orders for copy paper on request", "For tissue a surcharge of 30 EUR/t applies",
        "Newsprint: lead time 3 weeks",
        "Preise für Zeitungspapier auf Anfrage", "Zellstoff wird per Bahn geliefert",
        "Prix des papiers fins sur demande",
        "Precios de tisú a petición", "Priser för tidningspapper på begäran",
    ],
)  # fmt: skip
def test_other_goods(part):
    assert of_other_goods(part)


@pytest.mark.parametrize(
    "part",
    [
        "Pulp surcharge 3 %", "The pulp surcharge is 25 EUR/t", "Recovered fibre grades minimum order 10 t",
        "Waste paper content 90 %", "Corrugated covers included", "Prices for pulp board", "On wood pallets",
        "Corrugated and solid board delivered", "Altpapier: Zuschlag 20 EUR/t", "Pâte : majoration de 20 EUR/t",
        "Papel recuperado: recargo 20 EUR/t", "Returpapper: tillägg 200 SEK/ton", "Tissue",
    ],
)  # fmt: skip
def test_what_is_called_after_other_goods(part):
    assert not of_other_goods(part)


@pytest.mark.parametrize(
    "note",
    [
        "Recovered paper surcharge 20 EUR/t applies to all grades",
        "Altpapierzuschlag 20 EUR/t",
        "Prices for copy paper on request, energy surcharge 20 EUR/t",
    ],
)
def test_charges_called_after_other_goods_are_charged(note):
    assert [charge.price for charge in read(note).offer.charges] == [20]


@pytest.mark.parametrize(
    ("note", "kg", "days", "until", "delivered"),
    [
        ("Wood pallets returnable, minimum order 4 t", 4000, None, None, None),
        ("In Folien verpackt, Mindestmenge 4 t", 4000, None, None, None),
        ("Recovered paper grades: lead time 3 weeks", None, (21, 21), None, None),
        ("Pulp grades ship in 3 weeks", None, (21, 21), None, None),
        ("Corrugated covers included, prices valid until 30 June 2027", None, None, date(2027, 6, 30), None),
        ("Labels on every pallet, prices delivered", None, None, None, True),
    ],
)
def test_terms_behind_them(note, kg, days, until, delivered):
    offer = read(note).offer
    assert (offer.minimum_kg, offer.lead_days, offer.valid_until, offer.delivered) == (kg, days, until, delivered)


@pytest.mark.parametrize(
    ("note", "code"),
    [
        ("Prices for tissue are delivered, minimum 4 t", "bracket-unread"),
        ("Prices for tissue are delivered, lead time 3 weeks", "lead-time-unread"),
        ("Tissue is sold separately, valid until 30 June 2027", "validity-unread"),
    ],
)
def test_terms_that_are_theirs_or_those_of_board_are_told(note, code):
    line = read(note)
    told = (line.offer.minimum_kg, line.offer.lead_days, line.offer.valid_until, line.offer.delivered)
    assert told == (None, None, None, None)
    assert code in codes(line)
