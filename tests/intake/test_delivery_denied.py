"""A delivery that a note denies is none: 'Prices do not include delivery', 'Leverans ingår ej'."""

import pytest

from tests.intake.sheets import lines

ROWS = [["EUR/t"], ["Grade", "g/m²", "µm", "Price"], ["GC1", 250, 400, 1180]]


@pytest.mark.parametrize(
    ("note", "delivered"),
    [
        ("Prices do not include delivery.", False),
        ("Prices don't include freight.", False),
        ("Freight included: no", False),
        ("Keine Lieferung frei Haus", False),
        ("Die Preise verstehen sich nicht frei Haus", False),
        ("Les prix ne sont pas franco", False),
        ("Los precios no son franco destino", False),
        ("Leverans ingår ej", False),
        ("Frakten ingår inte i priset", False),
        ("Prices include delivery.", True),
        ("Delivered, no surcharge", True),
        ("No fuel surcharge, delivered prices", True),
        ("Keine Zuschläge, Lieferung frei Haus", True),
        ("Sans surcharge, franco", True),
        ("Sin recargos, franco destino", True),
        ("Leverans ingår, ej energitillägg", True),
        ("Leverans ingår ej energitillägg", True),
    ],
)
def test_a_denied_delivery_is_none(note, delivered):
    assert lines([*ROWS, [note]])["D3"].offer.delivered is delivered
