"""A line that adds what stands below it may say what the amounts are in; freight there leads to the buyer."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.basis import Basis
from tracker.trade.offer import OPEN

_LINES = {
    "en": (
        "Surcharges per tonne, charged in addition for all items above:",
        "Energy surcharge",
        "Freight surcharge, delivered",
    ),
    "de": (
        "Zuschläge je Tonne, für alle vorstehenden Positionen zusätzlich berechnet:",
        "Energiezuschlag",
        "Frachtzuschlag frei Haus",
    ),
    "fr": (
        "Suppléments par tonne, facturés en sus pour toutes les références ci-dessus :",
        "Supplément énergie",
        "Transport franco",
    ),
    "es": (
        "Recargos por tonelada, se añaden a todas las referencias anteriores:",
        "Recargo energético",
        "Transporte entregado",
    ),
    "sv": ("Tillägg per ton, tillkommer på alla ovanstående artiklar:", "Energitillägg", "Frakt fritt kund"),
}
_WITHIN = {
    "en": ("Included in the prices:", "Energy surcharge"),
    "de": ("In den Preisen enthalten:", "Energiezuschlag"),
    "fr": ("Compris dans les prix :", "Supplément énergie"),
    "es": ("Incluido en los precios:", "Recargo energético"),
    "sv": ("Ingår i priserna:", "Energitillägg"),
}


def offers(unit, *rows, title="ex works"):
    found = lines([[title], ["Board", "g/m²", "µm", unit], ["GC1", 250, 405, 1278], ["GD2", 350, 465, 868], [], *rows])
    assert list(found) == ["D3", "D4"]
    return [line.offer for line in found.values()]


# A Swedish 'ton' beside prices per short ton may be either.
@pytest.mark.parametrize(
    ("language", "unit"),
    [(one, unit) for one in _LINES for unit in ("EUR/t", "EUR/short ton") if (one, unit) != ("sv", "EUR/short ton")],
)
def test_its_unit_is_that_of_the_amounts(language, unit):
    line, energy, freight = _LINES[language]
    for offer in offers(unit, [line], [energy, None, None, 42], [freight, None, None, 37.5]):
        assert [(f"{one.price:f}", one.basis, one.freight) for one in offer.charges] == [
            ("42", Basis.TONNE, False),
            ("37.5", Basis.TONNE, True),
        ]
        assert offer.delivered is False


def test_of_another_ton_the_amounts_are_not_known():
    line = "Tillägg per ton, tillkommer på alla ovanstående artiklar:"
    for offer in offers("USD/cwt", [line], ["Energitillägg", None, None, 42]):
        assert [one.currency for one in offer.charges] == [OPEN]


@pytest.mark.parametrize("freight", ["Fracht frei Haus", "Transport franco", "Freight prepaid"])
def test_without_such_a_line_prices_may_bear_such_a_freight(freight):
    for title in ("ex works", "Prices delivered"):
        for offer in offers("EUR/t", [freight, None, None, 42], title=title):
            assert [one.currency for one in offer.charges] == [OPEN]


@pytest.mark.parametrize(("line", "energy"), _WITHIN.values(), ids=_WITHIN)
def test_what_stands_below_a_line_that_includes_it_is_not_charged(line, energy):
    for row in ([energy, None, None, 42], [f"{energy}: 42 €/t"]):
        assert all(offer.charges == () for offer in offers("EUR/t", [line], row, title="Prices delivered"))
