"""How long vendors take: for samples from request to arrival, for orders from order to delivery."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from tracker.market.offers import Codes, Flags
from tracker.market.robust import Floats
from tracker.market.survival import Median, chance_within, kaplan_meier, median_time

METHOD = (
    "Kaplan-Meier, outstanding ones counted as still waiting; 95 % interval by Greenwood's error on the log-log scale"
)
A_WEEK = 7.0


@dataclass(frozen=True, slots=True)
class Waits:
    """One vendor's record, or all vendors' (vendor None). Days; a median not reached is None, never invented."""

    vendor: str | None
    n: int
    arrived: int
    outstanding: int
    median: Median

    @property
    def method(self) -> str:
        return METHOD


def waits(days: Floats, arrived: Flags, vendor: Codes, vendors: Sequence[str]) -> list[Waits]:
    """All vendors together first, then each vendor with a record, by name.

    days: from asking to arrival or, where not arrived, to today. ValueError for a negative wait.
    """
    if (days < 0).any():
        raise ValueError("A wait can't be shorter than nothing: something arrived before it was asked for.")
    every = [_record(None, days, arrived)]
    present = sorted({int(code) for code in vendor if code >= 0}, key=lambda code: vendors[code].casefold())
    return every + [_record(vendors[code], days[vendor == code], arrived[vendor == code]) for code in present]


def chance_within_a_week(days: Floats, arrived: Flags, waited: NDArray[np.float64]) -> list[float | None]:
    """For each wait so far, the chance that what is awaited comes within seven more days, by a record of waits.

    None where nothing on the record lasted longer than that wait.
    """
    record = kaplan_meier(days, arrived)
    return [chance_within(record, float(so_far), A_WEEK) for so_far in waited]


def _record(vendor: str | None, days: Floats, arrived: Flags) -> Waits:
    came = int(arrived.sum())
    return Waits(vendor, days.size, came, days.size - came, median_time(kaplan_meier(days, arrived)))
