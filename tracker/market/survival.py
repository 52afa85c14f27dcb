"""How long things take when some have not come yet: the product-limit estimate of Kaplan and Meier.

Leaving out what is still awaited would make every vendor look quicker than it is, so it counts as 'longer than
the wait so far' (right-censored). An arrival and a wait that end on the same day: the arrival comes first.
"""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from tracker.market.robust import Floats

NORMAL_975 = 1.959963984540054
"""The 97.5 % point of the normal distribution, for intervals at 95 %."""


@dataclass(frozen=True, slots=True)
class Survival:
    """The share still awaited after each time at which something arrived; steps, right-continuous.

    time: increasing, in the unit given. at_risk and arrived: counts. still_waiting: S(t). error: Greenwood's
    standard error. low, high: 95 % interval on the log-log scale, NaN where S is 0.
    last_seen: the longest time on record, arrived or not; beyond it nothing is known.
    """

    time: Floats
    at_risk: NDArray[np.int64]
    arrived: NDArray[np.int64]
    still_waiting: Floats
    error: Floats
    low: Floats
    high: Floats
    last_seen: float

    def share_waiting(self, time: float) -> float:
        """S(t): the share not yet arrived at `time`."""
        steps = int(np.searchsorted(self.time, time, side="right"))
        return 1.0 if steps == 0 else float(self.still_waiting[steps - 1])


@dataclass(frozen=True, slots=True)
class Median:
    """The time by which half has arrived, with its 95 % interval. None: not reached, so not known."""

    time: float | None
    low: float | None
    high: float | None


def kaplan_meier(times: Floats, arrived: NDArray[np.bool_]) -> Survival:
    """The share still waiting over time. `times`: durations of at least 0; `arrived`: False where still waiting.

    Sources: Kaplan and Meier 1958, J. Am. Stat. Assoc. 53, 457-481; the error is Greenwood's (1926); the interval
    on the log(−log S) scale is that of Kalbfleisch and Prentice (1980).
    """
    steps, events = np.unique(times[arrived], return_counts=True)
    at_risk = times.size - np.searchsorted(np.sort(times), steps, side="left")
    share: Floats = np.cumprod(1 - events / at_risk, dtype=np.float64)
    with np.errstate(divide="ignore", invalid="ignore"):
        greenwood = np.cumsum(events / (at_risk * (at_risk - events)))
        error = np.where(share > 0, share * np.sqrt(greenwood), np.nan)
        width = NORMAL_975 * np.sqrt(greenwood) / np.abs(np.log(share))
        low, high = share ** np.exp(width), share ** np.exp(-width)
    open_ended = share > 0
    return Survival(
        steps,
        at_risk.astype(np.int64),
        events.astype(np.int64),
        share,
        error,
        np.where(open_ended, low, np.nan),
        np.where(open_ended, high, np.nan),
        float(times.max()) if times.size else 0.0,
    )


def median_time(survival: Survival) -> Median:
    """The first time at which no more than half is still waiting; the interval by where the bounds cross a half.

    Source: Brookmeyer and Crowley 1982, Biometrics 38, 29-41 (the bounds here are the log-log ones).
    """
    return Median(
        _first_at_half(survival.time, survival.still_waiting),
        _first_at_half(survival.time, np.where(np.isnan(survival.low), 0.0, survival.low)),
        _first_at_half(survival.time, np.where(np.isnan(survival.high), np.inf, survival.high)),
    )


def chance_within(survival: Survival, waited: float, further: float) -> float | None:
    """The chance that something awaited for `waited` arrives within `further` more.

    That is 1 − S(waited + further) / S(waited). None where the record does not tell: it ends before
    that time with some still waiting, or nothing on it lasted past `waited`.
    """
    still = survival.share_waiting(waited)
    until = waited + further
    ends_open = until > survival.last_seen and survival.share_waiting(until) > 0
    if still <= 0 or ends_open:
        return None
    return 1 - survival.share_waiting(waited + further) / still


def _first_at_half(time: Floats, share: Floats) -> float | None:
    reached = np.flatnonzero(share <= 0.5 + 1e-12)
    return float(time[reached[0]]) if reached.size else None
