"""Two boards of one list, and what a note below it charges them."""

from tests.intake.sheets import lines
from tracker.trade.offer import OPEN

ROWS = [
    ["EUR/t delivered"],
    ["Grade", "g/m²", "µm", "Price"],
    ["GC1", 250, 400, 1180],
    ["GD2", 350, 480, 760],
]


def charged(note):
    """What each of the two boards is charged; None for what is not certain."""
    found = lines([*ROWS, [note]])
    return [
        [float(charge.price) if charge.currency != OPEN else None for charge in found[cell].offer.charges]
        for cell in ("D3", "D4")
    ]
