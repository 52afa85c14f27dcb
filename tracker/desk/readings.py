"""Readings taken on samples: kept in each property's own unit, refused whole when one can't be right."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from decimal import Decimal
from difflib import get_close_matches
from statistics import median
from typing import TYPE_CHECKING

from tracker.desk.edits import Edit, writing
from tracker.desk.sample_life import EventKind, day_of
from tracker.desk.sample_numbers import no_such_sample
from tracker.desk.trouble import Trouble
from tracker.trade.exact import plain_text
from tracker.trade.methods import Property, measured, properties
from tracker.trade.readings import OTHER_UNIT, pasted, unit_meant

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.store.measurements import Measured as Measured
    from tracker.store.samples import Request


def add(
    desk: Desk,
    number: int,
    property_name: str,
    values: Sequence[str],
    unit: str = "",
    on: date | None = None,
    conditioned: bool | None = None,
    method: str = "",
) -> Edit:
    """Stores readings as typed, converted to the property's own unit. Trouble, and none is stored, for a property that
    is not measured, a unit it is not measured in, something that is no number, or a sample that has not arrived.

    conditioned: taken in the standard air (23 °C, 50 % relative humidity), not so, or nobody said.
    """
    from tracker.store import measurements
    from tracker.store import samples as kept

    found = property_said(property_name)
    read = pasted("\n".join(values), found, unit or _unit_meant(values, found))
    if read.problems:
        raise Trouble(f"No reading was stored. {' '.join(read.problems)}")
    if not read.values:
        raise Trouble("No reading was stored: type one figure or paste a column of them.")
    _refuse_impossible(read.values, found)
    _refuse_far(read.values, [each.value for each in readings(desk, number) if each.property == found.key], found)
    taken = measurements.Taken(found.key, found.unit, on or desk.today, conditioned, method.strip())
    text = f"{_counted(len(read.values))} of {found.name.lower()} on sample {number}"
    with writing(desk, text) as pen:
        try:
            _refuse_day(kept.get(pen.connection, number), taken.on, desk.today)
        except KeyError:
            raise no_such_sample(number) from None
        changes = [measurements.add_reading(pen, number, value, taken) for value in read.values]
    return Edit(text, tuple(changes))


def remove(desk: Desk, reading_id: int, number: int) -> Edit:
    """Takes one reading off a sample: it was mistyped. Trouble where that sample has no such reading."""
    from tracker.store import measurements

    found = next((each for each in readings(desk, number) if each.id == reading_id), None)
    if found is None:
        raise Trouble(f"Sample {number} has no such reading any more: look at it again.")
    text = f"took off the reading {plain_text(found.value)} {found.unit} of sample {number}"
    with writing(desk, text) as pen:
        change = measurements.remove_reading(pen, reading_id)
    return Edit(text, (change,))


def take_back(desk: Desk, number: int, property_name: str, values: Sequence[str] = (), unit: str = "") -> Edit:
    """Takes readings of one property off a sample: those of these values, typed as they were recorded, else all.

    Trouble, and none is taken off, where the sample has no such reading.
    """
    from tracker.store import measurements

    found = property_said(property_name)
    there = [each for each in readings(desk, number) if each.property == found.key]
    if not there:
        raise Trouble(f"Sample {number} has no readings of {found.name.lower()}, so there is nothing to take back.")
    off = _of_values(there, values, unit, found) if values else there
    shown = ", ".join(plain_text(each.value) for each in off)
    text = f"took {_counted(len(off))} of {found.name.lower()} off sample {number}: {shown} {found.unit}"
    with writing(desk, text) as pen:
        changes = [measurements.remove_reading(pen, each.id) for each in off]
    return Edit(text, tuple(changes))


def _of_values(there: Sequence[Measured], values: Sequence[str], unit: str, found: Property) -> list[Measured]:
    """One reading for each value; of several equal ones the one entered last."""
    read = pasted("\n".join(values), found, unit or _unit_meant(values, found))
    if read.problems:
        raise Trouble(f"No reading was taken back. {' '.join(read.problems)}")
    left, off = list(there), []
    for value in read.values:
        same = next((each for each in reversed(left) if each.value == value), None)
        if same is None:
            kept = ", ".join(plain_text(each.value) for each in there)
            raise Trouble(
                f"No reading was taken back: {plain_text(value)} {found.unit} is none of this sample's "
                f"({kept} {found.unit})."
            )
        left.remove(same)
        off.append(same)
    return off


def readings(desk: Desk, number: int) -> tuple[Measured, ...]:
    """The readings taken on one sample, as entered."""
    from tracker.store import measurements

    with desk.store.reading() as connection:
        return measurements.readings_of(connection, number)


def property_said(name: str) -> Property:
    """The property of a key or name. Trouble for one that is not measured."""
    found = measured(name)
    if found is None:
        raise Trouble(f"{name} is not a property that is measured{_perhaps(name)}")
    return found


def _perhaps(name: str) -> str:
    """The properties that were most likely meant by a name that is none; else all there are."""
    spellings = {
        spelt.casefold(): each.name.lower() for each in properties().values() for spelt in (each.key, each.name)
    }
    wanted = name.strip().casefold()
    near = [spelt for spelt in spellings if wanted and wanted in spelt] or get_close_matches(wanted, spellings)
    if near:
        return f": did you mean {' or '.join(f'“{meant}”' for meant in dict.fromkeys(map(spellings.get, near)))}?"
    return f": use one of {'; '.join(dict.fromkeys(spellings.values()))}."


def _unit_meant(values: Sequence[str], found: Property) -> str:
    """The unit of bare figures: 15.5 as a caliper can only be points. Trouble where nothing tells."""
    bare = pasted("\n".join(values), found)
    if bare.problems:
        return ""  # figures with a unit of their own, or none at all: told by the reading itself
    meant = unit_meant(bare.values, found)
    if meant is None:
        raise Trouble(
            f"No reading was stored. {', '.join(map(plain_text, bare.values))} {found.unit} is no board's "
            f"{found.name.lower()}: say the unit; it is measured in {', '.join((found.unit, *found.units))}."
        )
    return meant


def _counted(count: int) -> str:
    return "1 reading" if count == 1 else f"{count} readings"


def _refuse_impossible(values: Sequence[Decimal], found: Property) -> None:
    """A unit that was said, or left standing in a list, can be the wrong one: 17.2 µm is no board's caliper."""
    if found.possible is None:
        return
    low, high = found.possible
    wrong = next((value for value in values if not low <= value <= high), None)
    if wrong is not None:
        raise Trouble(
            f"No reading was stored. {plain_text(wrong)} {found.unit} is no board's {found.name.lower()} (they lie "
            f"between {plain_text(low)} and {plain_text(high)} {found.unit}): choose the unit the figures are in."
        )


def _refuse_far(values: Sequence[Decimal], earlier: Sequence[Decimal], found: Property) -> None:
    """A single reading has no others beside it in what was typed, but it has those that were taken before."""
    if not earlier:
        return
    middle = median(earlier)
    for value in values:
        if not middle / OTHER_UNIT <= value <= middle * OTHER_UNIT:
            raise Trouble(
                f"No reading was stored. {plain_text(value)} {found.unit} is far from the earlier readings of this "
                f"sample ({plain_text(middle)}): is it in another unit?"
            )


def _refuse_day(request: Request, day: date, today: date) -> None:
    """Nothing is measured before it arrived, nor on a day that is still to come."""
    if day > today:
        raise Trouble(f"Sample {request.number}: {day.isoformat()} is still to come; give the day it was measured on.")
    arrived = day_of(request.events, EventKind.ARRIVED)
    if arrived is None:
        raise Trouble(f"Sample {request.number} has not arrived: record its arrival before its readings.")
    if day < arrived:
        raise Trouble(
            f"Sample {request.number} arrived on {arrived.isoformat()}, so it can't have been measured on "
            f"{day.isoformat()}."
        )
