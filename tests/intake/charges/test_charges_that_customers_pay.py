"""Which customers pay a charge: all of them, some of them alone, or all but those who come for their board."""

import pytest

from tests.intake.sheets import lines

_ROWS = [["Board", "g/m²", "USD/t"], ["GC1", 250, 1200], ["GD2", 300, 800], []]


def _charged(*notes):
    """What each board is charged; '?' where that is open."""
    found = lines([*_ROWS, *([note] for note in notes)]).values()
    return [[str(one.price) if one.currency == "USD" else "?" for one in line.offer.charges] for line in found]


ALL_PAY = [
    "All customers pay an energy surcharge of $25/t", "Customers pay an energy surcharge of $25/t",
    "Our customers pay an energy surcharge of $25/t", "Energy surcharge of $25/t for all customers",
    "Alle Kunden zahlen einen Energiezuschlag von 25 USD/t", "Unsere Kunden zahlen einen Energiezuschlag von 25 USD/t",
    "Tous nos clients paient une surcharge énergie de 25 USD/t",
    "Todos los clientes pagan un recargo energético de 25 USD/t", "Alla kunder betalar ett energitillägg på 25 USD/t",
]  # fmt: skip
SOME_PAY = [
    "Contract customers pay an energy surcharge of $25/t", "Customers in Canada pay an energy surcharge of $25/t",
    "Vertragskunden zahlen einen Energiezuschlag von 25 USD/t",
    "Les clients sous contrat paient une surcharge énergie de 25 USD/t",
    "Los clientes bajo contrato pagan un recargo energético de 25 USD/t",
    "Avtalskunder betalar ett energitillägg på 25 USD/t",
]  # fmt: skip
SOME_DO_NOT = [
    "Energy surcharge $25/t. Contract customers pay no energy surcharge",
    "Energiezuschlag 25 USD/t, Vertragskunden zahlen keinen",
    "Energiezuschlag 25 USD/t. Stammkunden zahlen keinen Energiezuschlag",
    "Surcharge énergie 25 USD/t. Les clients sous contrat ne paient pas de surcharge énergie",
    "Recargo energético 25 USD/t. Los clientes bajo contrato no pagan recargo energético",
    "Energitillägg 25 USD/t. Avtalskunder betalar inget energitillägg",
    "Freight $42/t. Contract customers pay no freight",
]
COLLECTED = [
    "Freight $42/t. Customers who collect pay no freight", "Fracht 42 USD/t. Selbstabholer zahlen keine Fracht",
    "Fracht 42 USD/t. Kunden, die selbst abholen, zahlen keine Fracht",
    "Fret 42 USD/t. Les clients qui enlèvent ne paient pas de fret",
    "Flete 42 USD/t. Los clientes que recogen no pagan flete",
    "Frakt 42 USD/t. Kunder som hämtar själva betalar ingen frakt",
]  # fmt: skip


@pytest.mark.parametrize("note", ALL_PAY)
def test_what_all_customers_pay_is_charged(note):
    assert _charged(note) == [["25"]] * 2


@pytest.mark.parametrize("note", SOME_PAY)
def test_what_some_pay_is_open(note):
    assert _charged(note) == [["?"]] * 2


@pytest.mark.parametrize("note", SOME_DO_NOT)
def test_so_is_what_some_do_not_pay(note):
    assert _charged(note) == [["?"]] * 2


@pytest.mark.parametrize("note", COLLECTED)
def test_freight_is_known_where_those_who_come_for_their_board_pay_none(note):
    assert _charged(note) == [["42"]] * 2
