"""Offers for tests: name what matters, the rest is as plain as can be."""

from collections.abc import Sequence

import numpy as np

from tracker.market.bands import Bands
from tracker.market.offers import Offers
from tracker.trade.basis import Basis

GRADES = ("SBS", "FBB")


def offers_of(per_tonne, **columns) -> Offers:
    """One offer a price: SBS of 18 pt per tonne in USD, each from a vendor of its own, all on offer."""
    n = len(per_tonne)
    codes = {"grade": 0, "basis": list(Basis).index(Basis.TONNE), "currency": 0, "received": -1}
    known = {
        "per_tonne": np.array(per_tonne, dtype=float),
        "shown": np.ones(n, bool),
        "vendor": np.arange(n),
        "board": np.arange(n),
        "caliper_um": np.full(n, 457.2),
        "grammage_gsm": np.full(n, 350.0),
        "from_kg": np.full(n, np.nan),
        "below_kg": np.full(n, np.nan),
        "delivered": np.zeros(n, int),
        "estimated": np.zeros(n, bool),
        **{name: np.full(n, code) for name, code in codes.items()},
    }
    for name, values in columns.items():
        known[name] = np.broadcast_to(np.array(values), (n,)).copy()
    for name in (*codes, "vendor", "board"):
        known[name] = known[name].astype(np.int32)
    return Offers(
        **known,
        grades=GRADES,
        vendors=[f"Vendor {letter}" for letter in range(max(n, 1))],
        bases=[str(basis) for basis in Basis],
        currencies=("USD", "EUR", "GBP", "SEK"),
    )


def bands_of(low: float, high: float) -> Bands:
    """The band of SBS; FBB has none."""
    return Bands(np.array([low, np.nan]), np.array([high, np.nan]), ("level given", ""))


def no_bands(grades: Sequence[str]) -> Bands:
    """Where neither a level is set nor one can be taken from offers."""
    return Bands(np.full(len(grades), np.nan), np.full(len(grades), np.nan), ("",) * len(grades))


NO_BANDS = no_bands(GRADES)
LIKE = [1000.0, 1040.0, 970.0, 1010.0, 1060.0, 950.0, 1020.0, 990.0]
"""Eight offers as a clean grade has them."""
