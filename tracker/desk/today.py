"""What needs the user today: samples overdue and due for a chase, open questions, prices out of line or lapsing."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np

from tracker.desk.chasing import Chase, chases
from tracker.desk.comparison import Comparison
from tracker.desk.questions import open_questions
from tracker.desk.samples import Sample, samples

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.store.held import OpenQuestion

SOON_DAYS = 14
"""Offers that lapse within two weeks are named, so that there is time to ask for a new one."""


@dataclass(frozen=True, slots=True)
class Today:
    """What waits, the most pressing first; offers are indices into the comparison's snapshot."""

    overdue: tuple[Sample, ...]
    questions: tuple[OpenQuestion, ...]
    out_of_line: tuple[int, ...]
    lapsing: tuple[int, ...]
    chases: tuple[Chase, ...] = ()


def today(desk: Desk, comparison: Comparison) -> Today:
    """Gathers it by the comparison's day."""
    day = comparison.footing.as_of
    return Today(
        tuple(sample for sample in samples(desk, day) if sample.overdue),
        open_questions(desk),
        _out_of_line(comparison),
        _lapsing(comparison),
        chases(desk, day),
    )


def _out_of_line(comparison: Comparison) -> tuple[int, ...]:
    """Furthest from the going price first, whichever way."""
    found = np.flatnonzero(comparison.out_of_line & comparison.current)
    with np.errstate(divide="ignore", invalid="ignore"):
        away = np.abs(np.log(comparison.price[found] / comparison.expected[found]))
    return tuple(int(index) for index in found[np.argsort(-np.nan_to_num(away), kind="stable")])


def _lapsing(comparison: Comparison) -> tuple[int, ...]:
    """Soonest first."""
    until, day = comparison.snapshot.valid_at_latest, comparison.footing.as_of.toordinal()
    found = np.flatnonzero(comparison.current & (until >= day) & (until <= day + SOON_DAYS))
    return tuple(int(index) for index in found[np.argsort(until[found], kind="stable")])
