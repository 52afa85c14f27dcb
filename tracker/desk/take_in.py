"""Taking in a vendor's sheet: read it with what the vendor's earlier answers settle, then store it in one piece."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from tracker.desk.collecting import no_collecting
from tracker.desk.edits import writing
from tracker.desk.known_answers import Recalled, recalled, refuse_other_kinds, with_known
from tracker.desk.received import day_received
from tracker.desk.trouble import Trouble
from tracker.trade.layout import layout_from_plain, layout_to_plain
from tracker.trade.offer import LEAVE_OUT, Answers, Reading, State

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.intake.child import Flag
    from tracker.intake.grid import Workbook
    from tracker.store.changes import Pen


@dataclass(frozen=True, slots=True)
class TakenIn:
    """A file that was read and not stored yet.

    `answers` are all that took part in the reading, remembered ones included, and `recalled` tells which of those
    settled something; `imported_on` is the day this very file (by its sha256) was stored before, or None. `sheets`:
    the file as the vendor sent it, where it was asked for.
    """

    reading: Reading
    content: bytes
    answers: Answers
    imported_on: date | None = None
    sheets: Workbook | None = None
    recalled: tuple[Recalled, ...] = ()


@dataclass(frozen=True, slots=True)
class Manner:
    """How to read: `show` keeps the sheets to be shown beside what was understood; `cancelled` stops it when set;
    `meanwhile` is called while the file is read, and `progress` with how much of it is, from 0 to 1."""

    show: bool = False
    cancelled: Flag | None = None
    meanwhile: Callable[[], None] | None = None
    progress: Callable[[float], None] | None = None


@dataclass(frozen=True, slots=True)
class Stored:
    """What storing a file came to. `already`: these very bytes were stored before, so nothing was added.
    `answered`: the answer that was stored, where it was one to a kept file's question."""

    file_id: int
    offers: int
    held: int
    questions: int
    already: bool = False
    answered: Answered | None = None


@dataclass(frozen=True, slots=True)
class Answered:
    """An answer to a kept file's question, with what taking it back needs: all answers that the file was read with
    before and after, and the log's entries of what was remembered."""

    text: str
    file_id: int
    key: str
    value: str
    before: Mapping[str, str]
    after: Mapping[str, str]
    remembered: tuple[int, ...]


def read(desk: Desk | None, path: Path, answers: Answers | None = None, manner: Manner | None = None) -> TakenIn:
    """Reads one file and stores nothing. Without a desk no database is looked at. Never raises for a bad file:
    `reading.unreadable` then says why. Trouble only when it was cancelled."""
    from tracker.intake.content import content_of
    from tracker.intake.grid import Unreadable

    given = answers or Answers()
    try:
        content = content_of(path)
    except Unreadable as problem:
        return TakenIn(Reading(path.name, "", str(problem)), b"", given)
    return _understand(desk, path, content, given, manner or Manner())


def keep_ready() -> None:
    """Makes ready to read a file at once, without the half second that starting to read takes. Called while a file is
    read, it makes ready for the one after it, whatever becomes of the first."""
    from tracker.intake.children import keep_ready

    keep_ready("tracker.intake.ahead")


def stand_down() -> None:
    """Lets go of what keep_ready() made ready."""
    from tracker.intake.children import dismiss

    dismiss()


def read_again(desk: Desk | None, taken: TakenIn, answers: Answers, manner: Manner | None = None) -> TakenIn:
    """The same bytes read with other answers; what is remembered for the vendor serves where `answers` are silent.

    Trouble where an answer is not of its question's kind.
    """
    refuse_other_kinds(answers.settled)
    if taken.sheets is not None and _is_small(taken.sheets):
        sheets = taken.sheets
        reading = _read_open(sheets, answers)
        known = answers if desk is None else with_known(desk, reading, answers)
        served = recalled(reading, answers, known)
        if known != answers:
            reading = _read_open(sheets, known)
        return replace(taken, reading=reading, answers=known, recalled=served)
    wanted = manner or Manner(show=taken.sheets is not None)
    return read_bytes(desk, taken.reading.file, taken.content, answers, wanted)


def read_bytes(desk: Desk | None, name: str, content: bytes, answers: Answers, manner: Manner | None = None) -> TakenIn:
    """Reads a file that is held in memory, as if it lay on disk under `name`."""
    import tempfile

    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / Path(name).name
        path.write_bytes(content)
        return _understand(desk, path, content, answers, manner or Manner())


def store(
    desk: Desk,
    taken: TakenIn,
    remember: Mapping[str, str] | None = None,
    words: Mapping[str, str] | None = None,
    *,
    anew: bool = False,
) -> Stored:
    """Stores a file with all its accepted offers, or none of it.

    The answers in `remember` are kept for the vendor with the sheet's own `words` that they answered, and so is a
    layout that was marked in this file. The same bytes again add nothing, but with `anew`, or where the file was
    withdrawn, they take the place of what was stored of it: how a wrong answer is mended. Trouble if the file could not
    be read, an answer is not of its kind, or the database refuses.
    """
    from tracker.store import files

    reading = taken.reading
    if reading.unreadable:
        raise Trouble(reading.unreadable)
    refuse_other_kinds(remember or {})
    accepted = sum(line.state is State.ACCEPTED for line in reading.lines)
    with no_collecting(), writing(desk, f"took in {reading.file}") as pen:
        earlier = files.id_of(pen.connection, reading.sha256)
        if earlier is not None and not anew and files.imported_on(pen.connection, reading.sha256) is not None:
            return Stored(earlier, 0, 0, 0, already=True)
        received = day_received(reading, taken.answers, desk.today)
        settled = settled_to_keep(taken.answers)
        if earlier is None:
            file_id = files.add(pen, reading, taken.content, received, settled)
        else:
            file_id = earlier
            files.add_anew(pen, file_id, reading, received, settled)
        keep_answers(pen, reading, remember or {}, words)
        _keep_layouts(pen, taken)
    return Stored(file_id, accepted, len(reading.lines) - accepted, len(reading.questions))


OF_ONE_FILE = ("vendor", "holds", "price", "price-change")
"""Kinds of answers that say nothing of a vendor's next sheet."""


def keep_answers(
    pen: Pen, reading: Reading, remember: Mapping[str, str], words: Mapping[str, str] | None = None
) -> tuple[int, ...]:
    """Remembers answers for the vendor of a reading; gives the log's entries.

    Who the vendor is can't be remembered for the vendor; what was left out of one file, and which of its cells holds,
    is no rule for the next.
    """
    from tracker.store import answers as kept

    vendor = reading.vendor
    if vendor is None:
        return ()
    said = ((key, value) for key, value in remember.items() if key.partition(":")[0] not in OF_ONE_FILE)
    said = ((key, value) for key, value in said if value != LEAVE_OUT)
    return tuple(kept.remember(pen, vendor, key, value, (words or {}).get(key, "")) for key, value in said)


def _keep_layouts(pen: Pen, taken: TakenIn) -> None:
    """Remembers a layout that was marked in this file, where the vendor is known. One without a header row, by which no
    other file can be known, is offered for the vendor's next sheets and never used unasked."""
    from tracker.store import layouts

    for layout in taken.answers.layouts or ():
        if taken.reading.vendor and layout.of_file == taken.reading.sha256:
            layouts.remember(pen, taken.reading.vendor, layout)


_LAYOUTS = "layouts"
"""Beside the answers a file was read with stand the layouts, as JSON text, so that it can be read the same again."""


def settled_to_keep(answers: Answers) -> dict[str, str]:
    """All that took part in a reading, as it is kept with the file."""
    settled = dict(answers.settled)
    if answers.layouts:
        settled[_LAYOUTS] = json.dumps([layout_to_plain(layout) for layout in answers.layouts])
    return settled


def answers_kept(settled: Mapping[str, str], received: date | None) -> Answers:
    """What settled_to_keep made, as answers again."""
    plain = json.loads(settled.get(_LAYOUTS, "[]"))
    layouts = tuple(layout_from_plain(layout) for layout in plain)
    return Answers({key: value for key, value in settled.items() if key != _LAYOUTS}, received, layouts)


def workbook(content: bytes, name: str) -> Workbook:
    """The sheets of a file as cells, as the vendor sent them. Trouble if it can't be read."""
    import tempfile

    from tracker.intake.child import read_in_child
    from tracker.intake.files import open_workbook
    from tracker.intake.grid import Unreadable

    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / Path(name).name
        path.write_bytes(content)
        try:
            return read_in_child(path, open_workbook)
        except Unreadable as problem:
            raise Trouble(str(problem)) from problem


def _understand(desk: Desk | None, path: Path, content: bytes, given: Answers, manner: Manner) -> TakenIn:
    reading, sheets = _read_sheet(path, given, manner)
    reading = replace(reading, file=_in_letters(reading.file))
    if reading.unreadable is None and reading.sha256 != hashlib.sha256(content).hexdigest():
        changed = f"{path.name} changed while it was read: let the other program finish, then try again."
        reading = Reading(path.name, reading.sha256, changed)
    if desk is None or reading.unreadable:
        return TakenIn(reading, content, given, sheets=sheets)
    answers = with_known(desk, reading, given)
    served = recalled(reading, given, answers)
    if answers != given:
        if sheets is not None and _is_small(sheets):
            reading = _read_open(sheets, answers)
        else:
            reading, sheets = _read_sheet(path, answers, manner)
        reading = replace(reading, file=_in_letters(path.name))
    return TakenIn(reading, content, answers, _imported_on(desk, reading.sha256), sheets, served)


def _in_letters(name: str) -> str:
    """A file's name, its bytes that are no letters written as \\xfc: neither JSON nor a database keeps them."""
    return name.encode("utf-8", "surrogateescape").decode("utf-8", "backslashreplace")


def _read_sheet(path: Path, answers: Answers, manner: Manner) -> tuple[Reading, Workbook | None]:
    from tracker.intake.child import Cancelled
    from tracker.intake.read import Watch, read_sheet, read_with_grids

    watch = Watch(manner.cancelled, manner.meanwhile, manner.progress)
    try:
        with no_collecting():
            return read_with_grids(path, answers, watch) if manner.show else (read_sheet(path, answers, watch), None)
    except Cancelled as stop:
        raise Trouble(f"Reading {path.name} was stopped; nothing of it was stored.") from stop


def _read_open(sheets: Workbook, answers: Answers) -> Reading:
    from tracker.intake.read import read_workbook

    return read_workbook(sheets, answers)


_SMALL_CELLS = 5_000
"""A sheet of this many cells is understood again in an instant, so that no process need be started for it."""


def _is_small(sheets: Workbook) -> bool:
    return sum(len(grid.cells) for grid in sheets.grids) <= _SMALL_CELLS


def _imported_on(desk: Desk, sha256: str) -> date | None:
    from tracker.store import files

    with desk.store.reading() as connection:
        return files.imported_on(connection, sha256)
