"""Readings taken on samples: kept in each property's own unit, refused whole when one can't be right."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from decimal import Decimal
from statistics import median
from typing import TYPE_CHECKING

from tracker.desk.edits import Edit, writing
from tracker.desk.sample_life import EventKind, day_of
from tracker.desk.trouble import Trouble
from tracker.trade.exact import plain_text
from tracker.trade.methods import Property, measured, properties
from tracker.trade.readings import pasted

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.store.samples import Measured as Measured
    from tracker.store.samples import Request

_OTHER_UNIT = 5
"""A board's readings never lie five times apart; another unit does (µm and points are 25 apart)."""


def add(
    desk: Desk, number: int, property_name: str, values: Sequence[str], unit: str = "", on: date | None = None
) -> Edit:
    """Stores readings as typed, converted to the property's own unit. Trouble, and none is stored, for a property that
    is not measured, a unit it is not measured in, something that is no number, or a sample that has not arrived."""
    from tracker.store import samples as kept

    found = measured(property_name)
    if found is None:
        raise Trouble(f"{property_name} is not a property that is measured: use one of {', '.join(properties())}.")
    read = pasted("\n".join(values), found, unit)
    if read.problems:
        raise Trouble(f"No reading was stored. {' '.join(read.problems)}")
    _refuse_far(read.values, [each.value for each in readings(desk, number) if each.property == found.key], found)
    day = on or desk.today
    text = f"{len(read.values)} readings of {found.name.lower()} on sample {number}"
    with writing(desk, text) as pen:
        try:
            _refuse_early(kept.get(pen.connection, number), day)
        except KeyError:
            raise Trouble(f"There is no sample {number}: look at the list of samples for its number.") from None
        changes = [kept.add_reading(pen, number, found.key, value, found.unit, day) for value in read.values]
    return Edit(text, tuple(changes))


def readings(desk: Desk, number: int) -> tuple[Measured, ...]:
    """The readings taken on one sample, as entered."""
    from tracker.store import samples as kept

    with desk.store.reading() as connection:
        return kept.readings_of(connection, number)


def _refuse_far(values: Sequence[Decimal], earlier: Sequence[Decimal], found: Property) -> None:
    """A single reading has no others beside it in what was typed, but it has those that were taken before."""
    if not earlier:
        return
    middle = median(earlier)
    for value in values:
        if not middle / _OTHER_UNIT <= value <= middle * _OTHER_UNIT:
            raise Trouble(
                f"No reading was stored. {plain_text(value)} {found.unit} is far from the earlier readings of this "
                f"sample ({plain_text(middle)}): is it in another unit?"
            )


def _refuse_early(request: Request, day: date) -> None:
    arrived = day_of(request.events, EventKind.ARRIVED)
    if arrived is None:
        raise Trouble(f"Sample {request.number} has not arrived: record its arrival before its readings.")
    if day < arrived:
        raise Trouble(
            f"Sample {request.number} arrived on {arrived.isoformat()}, so it can't have been measured on "
            f"{day.isoformat()}."
        )
