"""'départ Lyon' and 'salida Bilbao': collected where the vendor is."""

import pytest

from tests.intake.sheets import lines
from tracker.intake.values.freight.delivery import find_delivery


@pytest.mark.parametrize(
    "text",
    [
        "Tarif en € les 1 000 m², départ Verlonge",
        "Precios en €/t, salida Montearriba",
        "Pliegos en almacén (recogida en nuestras naves, Montearriba)",
        "Prix en €/t, enlèvement dans nos dépôts",
    ],
)
def test_a_price_from_there_is_without_freight(text):
    said = find_delivery(text)
    assert said is not None
    assert said.delivered is False


@pytest.mark.parametrize(
    "text", ["Départ semaine 40", "Date de départ : lundi", "départ immédiat", "Salida prevista: enero"]
)
def test_when_a_load_leaves_says_nothing_of_freight(text):
    assert find_delivery(text) is None


@pytest.mark.parametrize(
    ("text", "delivered"),
    [
        ("Angebot gültig bis 14.12.2026. Lieferzeit sofort ab Lager.", None),
        ("Angebot vom 3. Mai. Preise in EUR/t ab Lager.", False),
        ("Angebot in EUR/t ab Lager", False),
    ],
)
def test_a_store_is_where_prices_are_from_only_in_the_sentence_about_them(text, delivered):
    rows = [[text], [], ["Sorte", "g/m²", "µm", "EUR/t"], ["GC1", 250, 400, 1240]]
    assert [line.offer.delivered for line in lines(rows).values()] == [delivered]
