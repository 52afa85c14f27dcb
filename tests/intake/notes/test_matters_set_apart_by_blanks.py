"""A line on which wide gaps set one matter apart from the next says each of them by itself."""

from datetime import date

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import State


@pytest.mark.parametrize(
    "said",
    [
        "Quoted 30 April 2026     Prices good through 30 June 2026     U.S. funds (USD)",
        "Angebot vom 30.04.2026      Preise gültig bis 30.06.2026      USD",
        "Offre du 30 avril 2026     Prix valables jusqu'au 30 juin 2026     Dollars américains (USD)",
        "Oferta del 30 de abril de 2026     Precios válidos hasta el 30 de junio de 2026     USD",
        "Offert 30 april 2026     Priserna gäller t.o.m. 30 juni 2026     USD",
    ],
)
def test_each_matter_is_read(said):
    found = lines(
        [["Birchmount Board"], [said], ["Grade", "pt", "lb/MSF", "Price per short ton"], ["SBS", 18, 75, 1218]]
    )
    line = found["D4"]
    assert line.state is State.ACCEPTED
    assert (line.offer.currency, line.offer.valid_until) == ("USD", date(2026, 6, 30))


@pytest.mark.parametrize("head", ["Price      USD/ST", "Price\n(USD/ST)", "Price     per short ton, in US$"])
def test_a_head_is_read_as_it_is_without_its_blanks(head):
    found = lines([["Birchmount Board"], ["Grade", "pt", "lb/MSF", head], ["SBS", 18, 75, 1218]])
    assert (found["D3"].offer.currency, found["D3"].offer.basis) == ("USD", "short_ton")


@pytest.mark.parametrize(
    "said",
    [
        "Energy surcharge: $25 per short ton (2,000 lb)          SBS only",
        "Lead time four to six weeks after receipt of order          SBS only",
        "Minimum order 5 short tons per item and shipment          SBS grades",
    ],
)
def test_what_bounds_a_matter_stays_with_it(said):
    heads = ["Grade", "Caliper (pt)", "Price USD/short ton"]
    found = lines([["Fairhaven Board Co."], heads, ["SBS", 18, 1200], ["CUK", 20, 900], [], [said]])
    told = [(line.charges, line.lead_days, line.minimum_kg) for line in (found[cell].offer for cell in ("C3", "C4"))]
    assert told[0] != told[1] == ((), None, None)


def test_nouns_of_one_sentence_are_not_parted():
    said = "Alle genannten Preise verstehen sich ohne den      Energiezuschlag von 25 EUR/t"
    found = lines([["Moosbrunner Karton GmbH"], ["Sorte", "g/m²", "Preis EUR/t"], ["GC1", 250, 1200], [], [said]])
    assert [str(charge.price) for charge in found["C3"].offer.charges] == ["25"]
