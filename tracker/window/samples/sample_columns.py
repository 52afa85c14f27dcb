"""The columns of the table of sample requests."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING, Any

import numpy as np
from numpy.typing import NDArray

from tracker.window.look import figures
from tracker.window.look.figures import NONE, Units, counted
from tracker.window.tables.columns import Column, Stand, fixed, text_keys

if TYPE_CHECKING:
    from tracker.desk.samples import Sample


@dataclass(frozen=True, slots=True)
class Samples:
    """Requests, outstanding first, and the units to show."""

    samples: tuple[Sample, ...]
    units: Units


def is_outstanding(sample: Sample) -> bool:
    """Still to come."""
    return sample.state.outstanding


def overdue_words(sample: Sample) -> str:
    """'6 days overdue', 'due in 3 days', 'due today'; a dash where nothing is owed or no day is known."""
    if not is_outstanding(sample):
        return NONE
    if sample.overdue:
        return f"{counted(sample.overdue_days or 0, 'day')} overdue"
    if sample.due is None:
        return NONE
    return f"due {figures.date_text(sample.due)}"


def too_late(sample: Sample) -> str:
    """'⚠ due 23 days after you need it', where what is owed is due too late; '' where it is not."""
    if not is_outstanding(sample) or sample.due is None or sample.needed is None or sample.due <= sample.needed:
        return ""
    return f"⚠ due {counted((sample.due - sample.needed).days, 'day')} after you need it"


def chance_said(sample: Sample) -> str:
    """'35 % likely within a week (all vendors' record)'; '' where nothing is owed or the record does not tell."""
    if not is_outstanding(sample) or sample.chance_of_a_week is None:
        return ""
    whose = "this vendor's" if sample.chance_by == "this vendor" else "all vendors'"
    if not sample.chance_tells:
        return "too few arrivals to say when it comes"
    return f"{figures.percent(sample.chance_of_a_week)} likely within a week ({whose} record)"


def _chance(sample: Sample) -> float:
    known = is_outstanding(sample) and sample.chance_tells
    return float(sample.chance_of_a_week or 0.0) if known else float("nan")


def _chance_text(sample: Sample) -> str:
    if is_outstanding(sample) and not sample.chance_tells:
        return "too few to say"
    return figures.percent(_chance(sample))


def _days(samples: Samples, field: str) -> NDArray[np.float64]:
    values: list[date | None] = [getattr(sample, field) for sample in samples.samples]
    return np.array([np.nan if value is None else float(value.toordinal()) for value in values])


def _numbers(samples: Samples, field: str) -> NDArray[np.float64]:
    values: list[Any] = [getattr(sample, field) for sample in samples.samples]
    return np.array([np.nan if value is None else float(value) for value in values])


def _words(samples: Samples, field: str) -> NDArray[np.int64]:
    return text_keys([str(getattr(sample, field) or "") for sample in samples.samples])


def _overdue_keys(samples: Samples) -> NDArray[np.float64]:
    """Most overdue first, then those due soonest, then the rest."""
    keys = []
    for sample in samples.samples:
        if not is_outstanding(sample):
            keys.append(np.nan)
        elif sample.overdue:
            keys.append(-float(sample.overdue_days or 0))
        else:
            keys.append(1e9 if sample.due is None else float(sample.due.toordinal()))
    return np.array(keys)


def _text(field: str) -> Any:
    return lambda data, row: str(getattr(data.samples[row], field) or "") or NONE


SAMPLE_COLUMNS: tuple[Column, ...] = (
    Column("number", fixed("No."), _text("number"), lambda d: _numbers(d, "number"), Stand.RIGHT, width=42),
    Column(
        "overdue",
        fixed("Owed"),
        text=lambda d, row: overdue_words(d.samples[row]),
        keys=_overdue_keys,
        width=138,
        strong=True,
    ),
    Column(
        "chance",
        fixed("Comes within a week"),
        text=lambda d, row: _chance_text(d.samples[row]),
        keys=lambda d: -np.array([_chance(sample) for sample in d.samples]),
        stand=Stand.RIGHT,
        width=144,
    ),
    Column("vendor", fixed("Vendor"), _text("vendor"), lambda d: _words(d, "vendor"), width=92, share=3),
    Column(
        "grade",
        fixed("Grade"),
        text=_text("grade"),
        keys=lambda d: _words(d, "grade"),
        width=68,
        paint="grade",
        paints=lambda d, row: d.samples[row].grade,
    ),
    Column(
        "caliper",
        fixed("Caliper"),
        text=lambda d, row: figures.caliper(d.samples[row].caliper_um, d.units),
        keys=lambda d: _numbers(d, "caliper_um"),
        stand=Stand.RIGHT,
        width=60,
    ),
    Column("for", fixed("For"), _text("for_what"), lambda d: _words(d, "for_what"), width=110, share=4),
    Column("state", fixed("State"), _text("state"), lambda d: _words(d, "state"), width=78),
    Column(
        "requested",
        fixed("Asked for"),
        text=lambda d, row: figures.date_text(d.samples[row].requested),
        keys=lambda d: _days(d, "requested"),
        stand=Stand.RIGHT,
        width=92,
    ),
)
