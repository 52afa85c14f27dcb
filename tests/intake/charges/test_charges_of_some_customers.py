"""A charge that some customers do not pay: whether this buyer is one of them is not known, so that it stays open."""

import pytest

from tests.intake.sheets import lines

ROWS = [["EUR per tonne"], ["Grade", "g/m²", "µm", "Price"], ["GC2", 250, 405, 1200], ["GD2", 300, 400, 800]]


def charges(note):
    """What is charged beside each price; '?' for what is open."""
    found = [line.offer.charges for line in lines([*ROWS, [], [note]]).values()]
    assert found[0] == found[1]
    return [str(one.price) if one.currency == "EUR" else "?" for one in found[0]]


@pytest.mark.parametrize(
    "note",
    [
        "Energy surcharge of 18 EUR/t does not apply to Canadian customers under this quote.",
        "Energy surcharge 18 EUR/t. The energy surcharge does not apply to Canadian customers under this quote.",
        "Energy surcharge 18 EUR/t. Canadian customers are exempt from the energy surcharge.",
        "Energy surcharge 18 EUR/t, waived for customers in Canada.",
        "Der Energiezuschlag von 18 EUR/t gilt nicht für Schweizer Kunden dieses Angebots.",
        "La surcharge énergie de 18 EUR/t ne s'applique pas aux clients suisses.",
        "El recargo energético de 18 EUR/t no se aplica a clientes canadienses.",
        "Energitillägget på 18 EUR/t gäller inte norska kunder.",
    ],
)
def test_a_charge_that_some_customers_do_not_pay_is_open(note):
    assert charges(note) == ["?"]


@pytest.mark.parametrize(
    "note",
    [
        "Energy surcharge of 18 EUR/t does not apply under this quote.",
        "The energy surcharge of 18 EUR/t does not apply to our customers.",
        "The energy surcharge is waived for all customers.", "Der Energiezuschlag gilt nicht für unsere Kunden.",
        "La surcharge énergie ne s'applique pas à nos clients.", "El recargo energético no se aplica a sus pedidos.",
        "Energitillägget gäller inte våra kunder.",
    ],
)  # fmt: skip
def test_what_no_customer_pays_is_not_charged(note):
    assert charges(note) == []
