"""A surcharge that the invoice shows apart is charged all the same."""

from decimal import Decimal

import pytest

from tracker.intake.values.freight.charges import find_charges


@pytest.mark.parametrize(
    ("text", "amount"),
    [
        ("An energy surcharge of $12.00 per ton will appear as its own line on the invoice.", "12.00"),
        ("Zuzüglich Energiezuschlag 18,00 €/t (wird gesondert ausgewiesen).", "18.00"),
        ("Supplément énergie 15 €/t, facturé séparément.", "15"),
        ("El recargo energético de 18 €/t se factura por separado.", "18"),
        ("Energitillägg 150 SEK/ton redovisas separat på fakturan.", "150"),
    ],
)
def test_what_a_surcharge_comes_to_is_read(text, amount):
    (charge,) = find_charges(text)
    assert [reading.value for reading in charge.amounts] == [Decimal(amount)]


def test_one_that_is_in_the_price_is_none():
    assert find_charges("The energy surcharge of $12.00 per ton is included and shown separately on the invoice.") == ()
