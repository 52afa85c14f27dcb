"""How far a place is, in a row among the prices for it."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import State


@pytest.mark.parametrize("label", ["km", "Miles from mill", "Entfernung (km)", "distance", "distancia", "avstånd km"])
def test_distances_are_no_prices(label):
    rows = [
        ["EUR/t"], ["Board", "g/m²", "µm", "EXW", "DAP Lindmoor", "DAP Hallen"],
        [label, None, None, 0, 310, 720], ["GC1", 250, 405, 1248, 1286, 1319], ["GD2", 300, 400, 796, 834, 867],
    ]  # fmt: skip
    found = lines(rows)
    assert set(found) == {"D4", "E4", "F4", "D5", "E5", "F5"}
    assert {line.state for line in found.values()} == {State.ACCEPTED}
