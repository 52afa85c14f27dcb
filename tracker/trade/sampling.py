"""How many units of a lot to take samples from, so that they stand for the lot."""

import math

SOURCE = "ISO 186 and TAPPI T 400, not checked against their text"
CAUTION = (
    "A few sheets that a vendor chose stand for themselves and not for a lot (TAPPI T 400): agree lot, method and "
    "tolerance with the vendor before a purchase."
)


def units_to_take(units: int) -> int:
    """Units (reels, pallets, reams) to take from a lot of so many. ValueError for a lot of none.

    All of up to 5, (n + 99) / 20 of up to 399, 25 of more; a part of a unit counts as one. Source: SOURCE.
    """
    if units < 1:
        raise ValueError("A lot has at least one unit.")
    if units <= 5:
        return units
    return 25 if units >= 400 else math.ceil((units + 99) / 20)
