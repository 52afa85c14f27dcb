"""Answers before a sheet is read with them: those kept for its vendor, and none that is not of its question's kind."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from tracker.desk.open_dates import open_date
from tracker.desk.trouble import Trouble
from tracker.desk.vendors import vendor_meant, vendors
from tracker.trade.answers import objection
from tracker.trade.offer import Answers, Question, Reading

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.store.answers import Remembered


@dataclass(frozen=True, slots=True)
class Recalled:
    """An answer remembered for the vendor that settled a question of this sheet; `words`: what of the sheet it did."""

    key: str
    value: str
    words: str


def refuse_other_kinds(settled: Mapping[str, str]) -> None:
    """Trouble where an answer is not of its question's kind, such as a currency that is none."""
    for key, value in settled.items():
        wrong = objection(key, value)
        if wrong is not None:
            raise Trouble(wrong)


def with_known(desk: Desk, reading: Reading, given: Answers) -> Answers:
    """What was given, with the vendor's layouts, and its remembered answers where the sheet leaves something open.

    A sheet that nothing marks as a vendor's is a known vendor's where one of its titles is just that name.
    """
    from tracker.store import answers as kept
    from tracker.store import layouts

    vendor = reading.vendor or _known_by_name(desk, reading)
    if vendor is None or reading.unreadable:
        return given
    with desk.store.reading() as connection:
        marked = layouts.of_vendor(connection, vendor) if given.layouts is None else ()
        # Remembered answers settle what a sheet leaves open, so a sheet without questions needs none.
        listed = kept.listing(connection, vendor) if marked or asked_of(reading) else ()
    remembered = {_asked_about(each): each.value for each in listed if _asked_about(each) not in given.anew}
    named = {} if reading.vendor is not None else {"vendor": vendor}
    return replace(given, settled={**remembered, **named, **given.settled}, layouts=marked or given.layouts)


def _known_by_name(desk: Desk, reading: Reading) -> str | None:
    """The one known vendor whose name stands in the sheet by itself; None for none, and for two."""
    known = vendors(desk) if reading.letterhead and _names_nobody(reading) else ()
    meant = {found.name for text in reading.letterhead if (found := vendor_meant(text, known)).known}
    return meant.pop() if len(meant) == 1 else None


def _names_nobody(reading: Reading) -> bool:
    return all(line.offer.vendor is None for line in reading.lines)


def recalled(reading: Reading, given: Answers, known: Answers) -> tuple[Recalled, ...]:
    """What with_known() added for the questions that a sheet leaves open, in the order they are asked."""
    added = {key: value for key, value in known.settled.items() if key not in given.settled}
    return tuple(
        Recalled(asked.key, added[asked.key], asked.words) for asked in asked_of(reading) if asked.key in added
    )


def asked_of(reading: Reading) -> tuple[Question, ...]:
    """All that a person can settle about a sheet: its questions, then what no offer waits for."""
    date = open_date(reading)
    return reading.questions if date is None else (*reading.questions, date)


def _asked_about(answer: Remembered) -> str:
    """The key of a remembered answer; older databases keep one about some words as if it held for the whole file."""
    from tracker.intake.offers.answered import key_about

    whole = answer.key in ("currency", "basis")
    return key_about(answer.key, answer.words) if whole and answer.words else answer.key
