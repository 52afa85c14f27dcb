"""What the record of all requests tells of one that is still awaited: the usual time, and the chance of next week."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from functools import cached_property
from typing import TYPE_CHECKING

import numpy as np

from tracker.desk.sample_life import EventKind, day_of, ended
from tracker.desk.snapshot import Codes, Flags, Floats
from tracker.market import waits as market_waits

if TYPE_CHECKING:
    from tracker.store.samples import Request

FEWEST_FOR_USUAL = 3
"""Arrivals from which a vendor's own record counts; with fewer all vendors' together does. Common practice, no
source."""


@dataclass(frozen=True, slots=True)
class UsualTime:
    """Half of the samples came within `days`, 95 % interval low to high (None: not known); vendor None: of all."""

    days: float
    low: float | None
    high: float | None
    arrived: int
    vendor: str | None

    def __str__(self) -> str:
        whose = "this vendor's" if self.vendor else "all vendors', as too few of this one's came"
        came = "1 arrival" if self.arrived == 1 else f"{self.arrived} arrivals"
        return f"{usual_words(self.days, self.low, self.high)} ({came}, {whose})"


def usual_words(days: float, low: float | None, high: float | None) -> str:
    """'usually 29 days; at least 15, upper end not known yet': a median with its interval, in whole days."""
    said = f"usually {_whole_days(days)}"
    if low is None and high is None:
        return f"{said}; too few to say how surely"
    if high is None:
        return f"{said}; at least {low:.0f}, upper end not known yet"
    return f"{said}; at most {high:.0f}" if low is None else f"{said}; {low:.0f} to {high:.0f}"


def _whole_days(days: float) -> str:
    whole = round(days)
    return "1 day" if whole == 1 else f"{whole} days"


@dataclass(frozen=True)
class WaitingRecord:
    """Every request up to a day, arrays aligned: days waited, whether it came, whether it is still owed, its vendor."""

    days: Floats
    arrived: Flags
    outstanding: Flags
    vendor: Codes
    vendors: Sequence[str]

    @cached_property
    def waits(self) -> list[market_waits.Waits]:
        """All vendors together, then each."""
        return market_waits.waits(self.days, self.arrived, self.vendor, self.vendors)

    def usual(self, vendor: str) -> UsualTime | None:
        """The vendor's usual time from its own record, else from all vendors'; None where neither tells."""
        return next(
            (
                UsualTime(wait.median.time, wait.median.low, wait.median.high, wait.arrived, wait.vendor)
                for wait in self._records(vendor)
                if wait.median.time is not None
            ),
            None,
        )

    def chance_within_a_week(self, vendor: str, waited: int) -> tuple[float, str | None] | None:
        """The chance that what was awaited for so long comes within seven days, and whose record says so.

        From the vendor's own record, else all vendors' (None); None altogether where neither reaches that far.
        """
        for wait in self._records(vendor):
            of = np.ones_like(self.arrived) if wait.vendor is None else self.vendor == self.vendors.index(wait.vendor)
            (chance,) = market_waits.chance_within_a_week(
                self.days[of], self.arrived[of], np.array([waited], np.float64)
            )
            if chance is not None:
                return chance, wait.vendor
        return None

    def _records(self, vendor: str) -> list[market_waits.Waits]:
        """The records to ask, in turn: the vendor's own where it has enough, then all vendors'."""
        pooled, *own = self.waits
        return [wait for wait in own if wait.vendor == vendor and wait.arrived >= FEWEST_FOR_USUAL] + [pooled]


def record_of(requests: Iterable[Request], as_of: date) -> WaitingRecord:
    """The record as it stood on a day. What was refused, cancelled or lost counts as waiting until that happened."""
    known = [request for request in requests if request.requested <= as_of]
    vendors = sorted({request.vendor for request in known}, key=str.casefold)
    waited = [_waited(request, as_of) for request in known]
    return WaitingRecord(
        np.array([days for days, _, _ in waited], np.float64),
        np.array([came for _, came, _ in waited], np.bool_),
        np.array([owed for _, _, owed in waited], np.bool_),
        np.array([vendors.index(request.vendor) for request in known], np.int32),
        vendors,
    )


def _waited(request: Request, as_of: date) -> tuple[int, bool, bool]:
    """Days waited, whether it arrived, whether it is still owed."""
    events = [event for event in request.events if event.on <= as_of]
    end = ended(events)
    days = ((as_of if end is None else end.on) - request.requested).days
    return days, day_of(events, EventKind.ARRIVED) is not None, end is None
