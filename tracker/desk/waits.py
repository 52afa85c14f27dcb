"""How long vendors take: samples from request to arrival, and the lead times they quote."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import asdict, dataclass
from datetime import date
from typing import TYPE_CHECKING, Any

import numpy as np

from tracker.desk.comparison import ChosenFooting
from tracker.desk.quotes import is_current, load_snapshot
from tracker.desk.waiting import FEWEST_FOR_USUAL, WaitingRecord, record_of

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.store.samples import Request

_QUOTED = "median of the middles of the lead times quoted in current offers; low and high are the shortest and longest"


@dataclass(frozen=True, slots=True)
class WaitRow:
    """One vendor's record, or all vendors' together (vendor None), in days; None is not known, never invented.

    n: all on record. low_days, high_days: bounds of the median for samples, shortest and longest for lead times.
    """

    vendor: str | None
    n: int
    arrived: int
    outstanding: int
    median_days: float | None
    low_days: float | None
    high_days: float | None
    method: str

    @property
    def usual_days(self) -> float | None:
        """The median where it may be called usual, by the rule by which samples fall due: of a vendor of whom too few
        came, all vendors' time holds."""
        return self.median_days if self.vendor is None or self.arrived >= FEWEST_FOR_USUAL else None


def turn_round(desk: Desk, as_of: date | None = None) -> list[WaitRow]:
    """Request to arrival of samples, all vendors first; those not arrived count as waiting for as long as they did."""
    from tracker.store import samples

    with desk.store.reading() as connection:
        return turn_round_of(samples.listing(connection), as_of or desk.today)


def turn_round_of(requests: Iterable[Request], as_of: date) -> list[WaitRow]:
    """The same from requests that are at hand."""
    record = record_of(requests, as_of)
    return [
        WaitRow(
            wait.vendor,
            wait.n,
            wait.arrived,
            _owed(record, wait.vendor),
            wait.median.time,
            wait.median.low,
            wait.median.high,
            wait.method,
        )
        for wait in record.waits
    ]


def _owed(record: WaitingRecord, vendor: str | None) -> int:
    of = record.outstanding if vendor is None else record.outstanding[record.vendor == record.vendors.index(vendor)]
    return int(of.sum())


def lead_times(desk: Desk, as_of: date | None = None) -> list[WaitRow]:
    """Lead times as quoted in the offers current on the day, all vendors first."""
    snapshot = load_snapshot(desk)
    known = is_current(snapshot, ChosenFooting(as_of or desk.today)) & np.isfinite(
        snapshot.lead_low + snapshot.lead_high
    )
    rows = [_quoted(None, snapshot.lead_low[known], snapshot.lead_high[known])]
    for code in sorted(set(snapshot.vendor[known].tolist()) - {-1}, key=lambda code: snapshot.vendors[code].casefold()):
        own = known & (snapshot.vendor == code)
        rows.append(_quoted(snapshot.vendors[code], snapshot.lead_low[own], snapshot.lead_high[own]))
    return rows


def _quoted(vendor: str | None, low: np.ndarray, high: np.ndarray) -> WaitRow:
    if not low.size:
        return WaitRow(vendor, 0, 0, 0, None, None, None, _QUOTED)
    middle = float(np.median((low + high) / 2))
    return WaitRow(vendor, int(low.size), 0, 0, middle, float(low.min()), float(high.max()), _QUOTED)


def wait_objects(rows: Sequence[WaitRow]) -> dict[str, Any]:
    """Rows as `waits --json` prints them: all vendors, then each."""
    whole: Callable[[WaitRow], dict[str, Any]] = asdict
    every, *each = (whole(row) for row in rows)
    return {"all": {key: value for key, value in every.items() if key != "vendor"}, "vendors": each}
