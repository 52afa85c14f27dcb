"""Chasing: which vendors are due for a word today, and the draft that lists all that one of them owes."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime
from email.message import EmailMessage
from pathlib import Path
from typing import TYPE_CHECKING

from tracker.desk.chase_templates import ChaseTemplate, template_in
from tracker.desk.contacts import contact
from tracker.desk.edits import Edit, writing
from tracker.desk.sample_life import EventKind, refuse_impossible
from tracker.desk.sample_numbers import no_such_sample
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
class ChaseMessage:
    """What one vendor is written: to whom ('' where no address is known), for which samples, and the words as shown."""

    vendor: str
    to: str
    numbers: tuple[int, ...]
    text: str


@dataclass(frozen=True, slots=True)
class Drafted:
    """A message that was written to a file for the user's mail program."""

    path: Path
    message: ChaseMessage


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
    """Writes one message to one vendor that lists all it owes; sends nothing and records nothing.

    buyer: who signs, the name kept for it if not said. Trouble where nobody is named, the vendor owes nothing, a
    template can't be used, or the file can't be written.
    """
    message, mail = _written(desk, vendor, buyer, templates)
    path = _free(folder / f"chase {_plain(message.vendor)} {desk.today.isoformat()}.eml")
    try:
        folder.mkdir(parents=True, exist_ok=True)
        path.write_bytes(bytes(mail))
    except OSError as problem:
        raise Trouble(f"{path} can't be written ({problem.strerror}): choose another folder.") from problem
    return Drafted(path, message)


def preview(desk: Desk, vendor: str, buyer: str = "", templates: Path | None = None) -> ChaseMessage:
    """What a draft to this vendor would say; nothing is written. Trouble as draft()."""
    return _written(desk, vendor, buyer, templates)[0]


def mark_chased(desk: Desk, numbers: Sequence[int]) -> Edit:
    """Records that the vendor was asked today for each of these samples, in one step that can be undone."""
    from tracker.store import samples as kept

    text = f"{len(numbers)} sample{'s' * (len(numbers) != 1)} marked as chased"
    changes = []
    with writing(desk, text) as pen:
        for number in numbers:
            try:
                request = kept.get(pen.connection, number)
            except KeyError:
                raise no_such_sample(number) from None
            refuse_impossible(request, EventKind.CHASED, desk.today, None, desk.today)
            changes.append(kept.add_event(pen, number, EventKind.CHASED.value, desk.today, None, "by message"))
    return Edit(text, tuple(changes))


def signature(desk: Desk) -> str:
    """The name that chases are signed with, '' where none was given yet."""
    from tracker.store import settings

    with desk.store.reading() as connection:
        return str(settings.get(connection, settings.SIGNATURE) or "")


def sign_as(desk: Desk, name: str) -> Edit:
    """Keeps the name that chases are signed with. Trouble for an empty one."""
    from tracker.store import settings

    kept = " ".join(name.split())
    if not kept:
        raise Trouble("Write the name that chases are signed with.")
    with writing(desk, f"chases are signed {kept}") as pen:
        change = settings.put(pen, settings.SIGNATURE, kept)
    return Edit(f"chases are signed {kept}", (change,))


def _written(desk: Desk, vendor: str, buyer: str, templates: Path | None) -> tuple[ChaseMessage, EmailMessage]:
    wanted = " ".join(vendor.split()).casefold()
    owed = [each for each in samples(desk) if each.vendor.casefold() == wanted and each.state.outstanding]
    if not owed:
        raise Trouble(f"{vendor} owes no sample, so there is nothing to chase.")
    signed = " ".join(buyer.split()) or signature(desk)
    if not signed:
        raise Trouble("Nobody is named to sign the message: give the name that messages to vendors are signed with.")
    mail = _message(desk, owed, signed, templates)
    numbers = tuple(each.number for each in owed)
    return ChaseMessage(owed[0].vendor, str(mail["To"] or ""), numbers, _shown(mail)), mail


def _shown(mail: EmailMessage) -> str:
    to = mail["To"] or "(no address is known)"
    body = mail.get_body()
    return f"To: {to}\nSubject: {mail['Subject']}\n\n{body.get_content().strip() if body is not None else ''}"


def _message(desk: Desk, owed: Sequence[Sample], buyer: str, templates: Path | None) -> EmailMessage:
    whom = contact(desk, owed[0].vendor)
    template = template_in(whom.language, templates)
    listed = [
        Owed(
            each.label,
            board_words(each, template),
            each.requested,
            each.promised,
            each.needed,
            max(0, each.overdue_days or 0),
        )
        for each in owed
    ]
    made = datetime.combine(desk.today, datetime.now().time()).astimezone()
    names = {each.contact for each in owed if each.contact}
    # One person is greeted by name; where several were asked, nobody is.
    name = whom.name or (names.pop() if len(names) == 1 else "")
    try:
        return chase_message(
            listed, template, buyer=buyer, contact=name, to=whom.mail, made=made.replace(microsecond=0)
        )
    except ValueError as problem:
        raise Trouble(str(problem)) from problem


def board_words(sample: Sample, template: ChaseTemplate | None = None) -> str:
    """'Fenlight White, SBS 18 pt (457 µm), 20 sheets 28 x 40 in': what a vendor needs to find it, and nothing else;
    the sheets in the words of a `template`."""
    caliper = ""
    if sample.caliper_um is not None:
        points = f"{float(sample.caliper_um) / float(UM_PER_POINT):.1f}".removesuffix(".0")
        caliper = f" {points} pt ({round(sample.caliper_um)} µm)"
    parts = (
        sample.board,
        f"{sample.grade}{caliper}",
        sample.quantity if template is None else template.quantity(sample.quantity),
    )
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
