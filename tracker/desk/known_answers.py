"""Answers before a sheet is read with them: those kept for its vendor, and none that is not of its question's kind."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from tracker.desk.open_dates import open_date
from tracker.desk.trouble import Trouble
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
    """What was given, with the vendor's layouts, and its remembered answers where the sheet leaves something open."""
    from tracker.store import answers as kept
    from tracker.store import layouts

    if reading.vendor is None or reading.unreadable:
        return given
    with desk.store.reading() as connection:
        marked = layouts.of_vendor(connection, reading.vendor) if given.layouts is None else ()
        # Remembered answers settle what a sheet leaves open, so a sheet without questions needs none.
        listed = kept.listing(connection, reading.vendor) if marked or asked_of(reading) else ()
    remembered = {_asked_about(each): each.value for each in listed if _asked_about(each) not in given.anew}
    return replace(given, settled={**remembered, **given.settled}, layouts=marked or given.layouts)


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
