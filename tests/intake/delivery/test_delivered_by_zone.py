"""'Delivered by zone' is said of the prices of zones, and of no others for certain."""

import pytest

from tests.intake.sheets import lines

_SAID = {
    "en": ("delivered to the customer's warehouse according to zone", "Zone"),
    "fr": ("rendus entrepôt client selon la zone", "Zone de destination"),
    "es": ("entregado en almacén del cliente según zona", "Zona de destino"),
    "sv": ("levererat kundens lager enligt zon", "Zon"),
}


@pytest.mark.parametrize(("words", "zone"), _SAID.values(), ids=_SAID)
def test_prices_of_zones_include_freight(words, zone):
    heads = [["Board", "g/m²", "µm", zone], [None, None, None, "Norte", "Centro", "Sur"]]
    found = lines([["EUR/t", None], [words], [], *heads, ["GC1", 250, 395, 1210, 1228, 1246]])
    assert [line.offer.delivered for line in found.values()] == [True] * 3


@pytest.mark.parametrize(("words", "zone"), _SAID.values(), ids=_SAID)
def test_without_zones_it_is_open(words, zone):
    found = lines([["EUR/t", None], [words], [], ["Board", "g/m²", "µm", "EUR/t"], ["GC1", 250, 395, 1210]])
    assert [line.offer.delivered for line in found.values()] == [None]
