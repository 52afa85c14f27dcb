"""What an order size is called where offers are listed: in the units of the vendor's own price."""

from decimal import Decimal

import pytest

from tests.desk.filing import file
from tests.store.making import line
from tracker.desk.footing_words import order_words
from tracker.desk.opening import Desk
from tracker.desk.quotes import load_snapshot
from tracker.trade.basis import Basis


@pytest.mark.parametrize(
    ("basis", "from_kg", "below_kg", "minimum_kg", "said"),
    [
        (Basis.TONNE, None, None, None, "any"),
        (Basis.TONNE, None, None, "9071.8474", "min. 9.07 t"),
        (Basis.TONNE, None, "5000", None, "below 5 t"),
        (Basis.M2, "20000", None, None, "from 20 t"),
        (Basis.KG, "5000", "20000", "1000", "5–20 t"),
        (Basis.SHORT_TON, None, None, "18143.6948", "min. 40,000 lb"),
        (Basis.CWT, "9071.8474", "18143.6948", None, "20,000–40,000 lb"),
        (Basis.MSF, "18143.6948", None, None, "from 40,000 lb"),
    ],
)
def test_an_order_size_in_words(desk: Desk, basis, from_kg, below_kg, minimum_kg, said) -> None:
    sizes = {"from_kg": from_kg, "below_kg": below_kg, "minimum_kg": minimum_kg}
    file(desk, line(basis=basis, **{name: None if kg is None else Decimal(kg) for name, kg in sizes.items()}))
    assert order_words(load_snapshot(desk), 0) == said
