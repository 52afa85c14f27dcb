"""A table of freight below the prices: its unit is none of theirs, and its zones are no boards."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.trade.offer import State

US = (["Board", "pt", "lb/MSF", "Base price"], ["CUK", 18, 74, 1083], ["CUK", 21, 87, 1075])
METRIC = (["Board", "µm", "g/m²", "Price"], ["GC1", 410, 255, 1083], ["GC1", 455, 305, 1075])


@pytest.mark.parametrize(
    ("title", "boards", "freight", "unit"),
    [
        ("Prices in USD per short ton, FOB mill", US, "Freight from mill (add if we ship)", "$/cwt"),
        ("Prices in USD per short ton, FOB mill", US, "Freight", "$/cwt"),
        ("Preise in EUR/t ab Werk", METRIC, "Frachtzuschlag (bei Lieferung durch uns)", "EUR/100 kg"),
        ("Prix en EUR/t départ usine", METRIC, "Transport depuis l'usine (si nous livrons)", "EUR/kg"),
        ("Precios en EUR/t franco fábrica", METRIC, "Flete desde fábrica (si entregamos)", "EUR/kg"),
        ("Priser i EUR/t fritt fabrik", METRIC, "Frakt från bruk (om vi levererar)", "EUR/kg"),
    ],
)
def test_the_unit_of_freight_is_none_of_the_prices(title, boards, freight, unit):
    zones = [["Zone 1", "to 300 km", 1.4], ["Zone 2", "301-600 km", 2.2], ["Zone 3", "beyond", 3.5]]
    found = lines([[title], [], *boards, [], [freight, None, unit], *zones])
    assert [(line.state, line.offer.price) for line in found.values()] == [
        (State.ACCEPTED, 1083), (State.ACCEPTED, 1075),
    ]  # fmt: skip


def test_two_units_that_are_said_of_prices_are_asked_about():
    rows = [["Prices in USD per short ton"], ["Prices in USD per cwt"], [], *US]
    assert all(codes(line) == {"basis-unknown"} for line in lines(rows).values())


def test_the_unit_beside_words_for_prices_is_theirs():
    rows = [["Prices, freight included", None, "USD/cwt"], [], ["Board", "pt", "lb/MSF", "Price"], ["CUK", 18, 74, 54]]
    (line,) = lines(rows).values()
    assert (line.state, str(line.offer.basis)) == (State.ACCEPTED, "cwt")
