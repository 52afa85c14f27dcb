"""Chasing: which vendors are due for a word today, and the draft that lists all that one of them owes."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime
from pathlib import Path
from typing import TYPE_CHECKING

from tracker.desk.chase_templates import template_in
from tracker.desk.contacts import contact
from tracker.desk.edits import Edit, writing
from tracker.desk.sample_life import EventKind
from tracker.desk.samples import Sample, samples
from tracker.desk.trouble import Trouble
from tracker.reports.message import Owed, chase_message
from tracker.trade.exact import UM_PER_POINT

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.store.contacts import Contact

CHASE_AGAIN_DAYS = 5
"""A vendor that was asked gets five days to answer before it is asked again. Common practice, no source."""


@dataclass(frozen=True, slots=True)
class Chase:
    """One vendor to be chased: what is due for it, and everything it owes (what the message lists)."""

    vendor: str
    due: tuple[Sample, ...]
    owed: tuple[Sample, ...]
    contact: Contact


@dataclass(frozen=True, slots=True)
class Drafted:
    """A draft that was written for the user's mail program, and the edit that recorded the samples as chased."""

    path: Path
    numbers: tuple[int, ...]
    edit: Edit


def due_for_chase(sample: Sample, day: date) -> bool:
    """Overdue, and not chased within the last days."""
    return sample.overdue and (sample.last_chased is None or (day - sample.last_chased).days >= CHASE_AGAIN_DAYS)


def chases(desk: Desk, as_of: date | None = None) -> tuple[Chase, ...]:
    """The vendors due for a chase on a day, the most overdue first."""
    day = as_of or desk.today
    owed: dict[str, list[Sample]] = {}
    for sample in samples(desk, day):
        if sample.state.outstanding:
            owed.setdefault(sample.vendor, []).append(sample)
    return tuple(
        Chase(vendor, due, tuple(every), contact(desk, vendor))
        for vendor, every in owed.items()
        if (due := tuple(sample for sample in every if due_for_chase(sample, day)))
    )


def draft(desk: Desk, vendor: str, folder: Path, buyer: str = "", templates: Path | None = None) -> Drafted:
    """Writes one message to one vendor that lists all it owes, and records each as chased today; sends nothing.

    The file and the record come together or not at all. buyer: who signs, the user if not said. Trouble where the
    vendor owes nothing, a template can't be used, or the file can't be written.
    """
    from tracker.store import samples as kept

    wanted = " ".join(vendor.split()).casefold()
    owed = [each for each in samples(desk) if each.vendor.casefold() == wanted and each.state.outstanding]
    if not owed:
        raise Trouble(f"{vendor} owes no sample, so there is nothing to chase.")
    message = _message(desk, owed, buyer, templates)
    path = _free(folder / f"chase {_plain(owed[0].vendor)} {desk.today.isoformat()}.eml")
    text = f"chased {owed[0].vendor} for {len(owed)} sample{'s' * (len(owed) > 1)}"
    with writing(desk, text) as pen:
        changes = [
            kept.add_event(pen, each.number, EventKind.CHASED.value, desk.today, None, f"draft {path.name}")
            for each in owed
        ]
        try:
            folder.mkdir(parents=True, exist_ok=True)
            path.write_bytes(message)
        except OSError as problem:
            raise Trouble(f"{path} can't be written ({problem.strerror}): choose another folder.") from problem
    return Drafted(path, tuple(each.number for each in owed), Edit(text, tuple(changes)))


def _message(desk: Desk, owed: Sequence[Sample], buyer: str, templates: Path | None) -> bytes:
    whom = contact(desk, owed[0].vendor)
    template = template_in(whom.language, templates)
    listed = [Owed(each.label, board_words(each), each.requested, each.promised) for each in owed]
    made = datetime.combine(desk.today, datetime.now().time()).astimezone()
    names = {each.contact for each in owed if each.contact}
    # One person is greeted by name; where several were asked, nobody is.
    name = whom.name or (names.pop() if len(names) == 1 else "")
    try:
        message = chase_message(
            listed, template, buyer=buyer or desk.who, contact=name, to=whom.mail, made=made.replace(microsecond=0)
        )
    except ValueError as problem:
        raise Trouble(str(problem)) from problem
    return bytes(message)


def board_words(sample: Sample) -> str:
    """'Fenlight White, SBS 18 pt (457 µm), 20 sheets 28 x 40 in': what a vendor needs to find it, and nothing else."""
    caliper = ""
    if sample.caliper_um is not None:
        points = f"{float(sample.caliper_um) / float(UM_PER_POINT):.1f}".removesuffix(".0")
        caliper = f" {points} pt ({round(sample.caliper_um)} µm)"
    parts = (sample.board, f"{sample.grade}{caliper}", sample.quantity)
    return ", ".join(part for part in parts if part)


def _plain(name: str) -> str:
    """A vendor's name as part of a file's name on any system."""
    return re.sub(r"[^\w&.-]+", " ", name).strip(" .")[:60] or "vendor"


def _free(path: Path) -> Path:
    """The path, or with a number behind it where a file lies there: a draft may have been changed by hand."""
    tried, number = path, 2
    while tried.exists():
        tried = path.with_name(f"{path.stem} ({number}){path.suffix}")
        number += 1
    return tried
