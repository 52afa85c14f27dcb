"""From a vendor's file to a Reading: opened in a bounded child process, understood there, handed back whole."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from functools import partial
from hashlib import sha256
from itertools import islice
from pathlib import Path
from typing import TYPE_CHECKING, TypeVar

from tracker.intake.child import Flag, read_in_child
from tracker.intake.child_side import allow, hand_over
from tracker.intake.content import content_of
from tracker.intake.grid import Unreadable, Workbook
from tracker.intake.plain_lines import PlainLine, line_of
from tracker.trade.offer import Answers, Line, PassedOver, Reading

if TYPE_CHECKING:
    from tracker.intake.offers.draft import Draft

R = TypeVar("R")


@dataclass(frozen=True, slots=True)
class Watch:
    """Who watches a reading: it ends with Cancelled once `cancelled` is set, `meanwhile` is called beside it, and
    `progress` with how much of it is done, from 0 to 1."""

    cancelled: Flag | None = None
    meanwhile: Callable[[], None] | None = None
    progress: Callable[[float], None] | None = None


def read_sheet(path: Path, answers: Answers, watch: Watch = Watch()) -> Reading:
    """Reads one file. Never raises for a bad file: `unreadable` then holds the sentence that says why. Cancelled when
    the `watch` says so."""
    lines: list[Line] = []
    try:
        work = partial(_read, answers=answers)
        rest = _in_child(path, work, lines, watch)
        return replace(rest, lines=tuple(lines))
    except Unreadable as problem:
        return _unreadable(path, str(problem))


def read_with_grids(path: Path, answers: Answers, watch: Watch = Watch()) -> tuple[Reading, Workbook | None]:
    """The reading and the sheets it was made from, for showing the one beside the other; else as read_sheet."""
    lines: list[Line] = []
    try:
        work = partial(_read_both, answers=answers)
        rest, workbook = _in_child(path, work, lines, watch)
        return replace(rest, lines=tuple(lines)), workbook
    except Unreadable as problem:
        return _unreadable(path, str(problem)), None


def read_workbook(workbook: Workbook, answers: Answers) -> Reading:
    """Understands a workbook that is already open. Pure: the same workbook and answers give the same reading."""
    rest, lines = _understood(workbook, answers)
    return replace(rest, lines=tuple(map(line_of, lines)))


def _in_child(path: Path, work: Callable[[Path], R], lines: list[Line], watch: Watch) -> R:
    """What `work` comes to in a child; the lines that it hands over go into `lines`."""
    return read_in_child(
        path, work, cancelled=watch.cancelled, part=_into(lines), meanwhile=watch.meanwhile, progress=watch.progress
    )


def _into(lines: list[Line]) -> Callable[[list[PlainLine]], None]:
    """What makes a piece that is handed over into lines, and puts them behind these."""
    return lambda piece: lines.extend(map(line_of, piece))


def _understood(workbook: Workbook, answers: Answers) -> tuple[Reading, Iterator[PlainLine]]:
    """The reading without its lines, and the lines, each made when asked for and its draft let go."""
    from tracker.intake.offers.prices.rivals import decided
    from tracker.intake.offers.rows.left_out import leave_out, to_read_with
    from tracker.intake.offers.rows.marked import lines_of
    from tracker.intake.offers.workbook import read_offers
    from tracker.intake.questions import questions_of

    found = read_offers(workbook, to_read_with(answers))
    found.drafts = list(decided(found.drafts, answers))
    leave_out(found.drafts, answers)
    passed = tuple(found.passed) or _nothing(workbook, bool(found.drafts))
    questions = questions_of(found.drafts)
    rest = Reading(
        workbook.file, workbook.sha256, None, found.vendor, (), passed, questions, found.letterhead, found.dated
    )
    return rest, lines_of(_let_go(found.drafts), found.layouts)


def _let_go(drafts: "list[Draft]") -> "Iterator[Draft]":
    drafts.reverse()
    while drafts:
        yield drafts.pop()


def _nothing(workbook: Workbook, offers: bool) -> tuple[PassedOver, ...]:
    if offers:
        return ()
    return tuple(PassedOver(grid.sheet, f"1-{grid.height}", "no prices") for grid in workbook.grids)


def _read(path: Path, answers: Answers) -> Reading:
    """The work of the child: the lines are handed over piece by piece, the rest is the result."""
    return _handed_over(*_understood(_opened(path), answers))


def _read_both(path: Path, answers: Answers) -> tuple[Reading, Workbook]:
    workbook = _opened(path)
    return _handed_over(*_understood(workbook, answers)), workbook


_AT_ONCE = 2000
"""Lines to a piece: the parent unpacks one while the next is made, and neither holds much twice."""


def _handed_over(rest: Reading, lines: Iterator[PlainLine]) -> Reading:
    while piece := list(islice(lines, _AT_ONCE)):
        hand_over(piece)
    return rest


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
