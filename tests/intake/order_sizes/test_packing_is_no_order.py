"""How many sheets lie on a pallet is no size of an order, whatever stands over it."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import State


@pytest.mark.parametrize("head", ["VE", "Packing", "Pkg", "Conditionnement"])
@pytest.mark.parametrize(
    "packed", ["1500 sheets/pallet", "1500 Bg./Pal.", "1500 Bogen / Palette", "1500 feuilles/palette", "1500 ark/pall"]
)
def test_sheets_of_a_pallet(head, packed):
    rows = [
        ["Board", "g/m²", "µm", "Sheet mm", head, "EUR/1000 sheets"],
        ["GC1", 250, 405, "700 x 1000", packed, 231.5],
        ["GC1", 300, 495, "720 x 1020", packed.replace("1500", "1250"), 291.5],
    ]
    found = [(line.state, line.offer.from_kg, line.offer.below_kg) for line in lines(rows).values()]
    assert found == [(State.ACCEPTED, None, None)] * 2


@pytest.mark.parametrize("sizes", [("under 5 pallets", "5 pallets and more"), ("1-2 skids", "3 skids +")])
def test_pallets_ordered_are_asked(sizes):
    rows = [["EUR/t"], ["Board", "g/m²", "µm", *sizes], ["GC1", 250, 405, 1231, 1205]]
    assert [line.state for line in lines(rows).values()] == [State.QUESTION] * 2
