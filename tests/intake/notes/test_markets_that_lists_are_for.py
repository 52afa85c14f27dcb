"""'Mercado nacional - EUR/t, portes incluidos' heads a list for that market, and tells nothing of what this asks."""

import pytest

from tests.intake.sheets import lines


def offers(title):
    rows = [["Grupo Torrebriza"], [], [title], ["Board", "g/m²", "Price"], ["GC1", 240, 1254]]
    return list(lines(rows).values())


@pytest.mark.parametrize(
    "title",
    ["MERCADO NACIONAL - EUR/t, portes incluidos hasta su almacén, entrega en 2 semanas",
     "Mercado interior (EUR/t, portes incluidos), entrega en 2 semanas",
     "Mercado España: EUR/t, portes incluidos, entrega en 2 semanas",
     "Marché intérieur - EUR/t, franco domicile, délai 2 semaines",
     "Le marché français : EUR/t, franco, délai 2 semaines",
     "Inlandsmarkt - EUR/t, frei Haus, Lieferzeit 2 Wochen",
     "Markt Deutschland - EUR/t, frei Haus, Lieferzeit 2 Wochen",
     "Domestic market - EUR/t, delivered, lead time 2 weeks",
     "Marknaden Sverige - EUR/t, fritt levererat, leveranstid 2 veckor",
     "Hemmamarknaden - EUR/t, fritt levererat, leveranstid 2 veckor"],
)  # fmt: skip
def test_a_list_for_a_market_has_the_terms_of_its_title(title):
    (line,) = offers(title)
    offer = line.offer
    assert (str(line.state), offer.currency, offer.delivered, offer.lead_days) == ("accepted", "EUR", True, (14, 14))


@pytest.mark.parametrize(
    "title",
    ["Mercado exterior - USD/t, FCA fábrica", "Marché export - USD/t, FCA usine", "Exportmarkt - USD/t, FCA Werk",
     "Export market - USD/t, FCA mill", "Exportmarknaden - USD/t, FCA bruket"],
)  # fmt: skip
def test_a_list_for_other_markets_has_its_own(title):
    (line,) = offers(title)
    assert (str(line.state), line.offer.currency, line.offer.delivered) == ("accepted", "USD", False)


@pytest.mark.parametrize(
    "title",
    ["Precio de mercado España - EUR/t, portes incluidos", "Prix du marché France - EUR/t, franco domicile",
     "Marktpreis Deutschland - EUR/t, frei Haus", "Market price Europe - EUR/t, delivered",
     "Marknadspris Sverige - EUR/t, fritt levererat", "Le marché intérieur est ferme - EUR/t, franco",
     "El mercado nacional está a 850 EUR/t, portes incluidos", "Mercado nacional - 850 EUR/t, portes incluidos"],
)  # fmt: skip
def test_what_the_market_asks_is_said_of_no_price(title):
    (line,) = offers(title)
    assert (line.offer.currency, line.offer.delivered) == (None, None)
