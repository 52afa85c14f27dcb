"""From a vendor's file to a Reading: opened in a bounded child process, understood there, handed back whole."""

import gc
from dataclasses import replace
from datetime import date
from functools import partial
from hashlib import sha256
from pathlib import Path

from tracker.intake.child import Flag, read_in_child
from tracker.intake.child_side import allow
from tracker.intake.content import content_of
from tracker.intake.grid import Unreadable, Workbook
from tracker.trade.offer import Answers, PassedOver, Reading


def read_sheet(path: Path, answers: Answers, *, today: date | None = None, cancelled: Flag | None = None) -> Reading:
    """Reads one file. Never raises for a bad file: `unreadable` then holds the sentence that says why.

    `today` stands for the day the file was received where neither the file nor the answers tell. Cancelled when
    `cancelled` is set meanwhile.
    """
    known = answers if answers.received is not None else replace(answers, received=today)
    try:
        return read_in_child(path, partial(_read, answers=known), cancelled=cancelled)
    except Unreadable as problem:
        return _unreadable(path, str(problem))


def read_with_grids(
    path: Path, answers: Answers, *, today: date | None = None, cancelled: Flag | None = None
) -> tuple[Reading, Workbook | None]:
    """The reading and the sheets it was made from, for showing the one beside the other; else as read_sheet."""
    known = answers if answers.received is not None else replace(answers, received=today)
    try:
        return read_in_child(path, partial(_read_both, answers=known), cancelled=cancelled)
    except Unreadable as problem:
        return _unreadable(path, str(problem)), None


def read_workbook(workbook: Workbook, answers: Answers) -> Reading:
    """Understands a workbook that is already open. Pure: the same workbook and answers give the same reading."""
    from tracker.intake.offers.left_out import leave_out, to_read_with
    from tracker.intake.offers.marked import lines_of
    from tracker.intake.offers.workbook import read_offers
    from tracker.intake.questions import questions_of

    found = read_offers(workbook, to_read_with(answers))
    leave_out(found.drafts, answers)
    passed = tuple(found.passed) or _nothing(workbook, bool(found.drafts))
    return Reading(
        workbook.file,
        workbook.sha256,
        None,
        found.vendor,
        tuple(lines_of(found.drafts, found.layouts)),
        passed,
        questions_of(found.drafts),
    )


def _nothing(workbook: Workbook, offers: bool) -> tuple[PassedOver, ...]:
    if offers:
        return ()
    return tuple(PassedOver(grid.sheet, f"1-{grid.height}", "no prices") for grid in workbook.grids)


def _read(path: Path, answers: Answers) -> Reading:
    """The work of the child: it ends with its result, so garbage is left to lie."""
    gc.disable()
    return read_workbook(_opened(path), answers)


def _read_both(path: Path, answers: Answers) -> tuple[Reading, Workbook]:
    workbook = _opened(path)
    return read_workbook(workbook, answers), workbook


def _opened(path: Path) -> Workbook:
    """Opens the file and asks for the time that understanding its cells may take: many times what it should."""
    from tracker.intake.files import open_workbook

    workbook = open_workbook(path)
    allow(4.0 + 0.0005 * sum(len(grid.cells) for grid in workbook.grids))
    return workbook


def _unreadable(path: Path, why: str) -> Reading:
    return replace(Reading(path.name, _digest(path)), unreadable=why)


def _digest(path: Path) -> str:
    """'' for what is no file, or too large to be a price sheet: nobody waits for the hash of that."""
    try:
        return sha256(content_of(path)).hexdigest()
    except Unreadable:
        return ""
