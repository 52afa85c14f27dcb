"""Taking in a vendor's sheet: read it with what the vendor's earlier answers settle, then store it in one piece."""

from __future__ import annotations

import hashlib
from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from tracker.desk.collecting import no_collecting
from tracker.desk.edits import writing
from tracker.desk.trouble import Trouble
from tracker.trade.offer import Answers, Reading, State

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.intake.grid import Workbook
    from tracker.store.changes import Pen


@dataclass(frozen=True, slots=True)
class TakenIn:
    """A file that was read and not stored yet.

    `answers` are all that took part in the reading, remembered ones included; `imported_on` is the day this very
    file (by its sha256) was stored before, or None.
    """

    reading: Reading
    content: bytes
    answers: Answers
    imported_on: date | None = None


@dataclass(frozen=True, slots=True)
class Stored:
    """What storing a file came to. `already`: these very bytes were stored before, so nothing was added."""

    file_id: int
    offers: int
    held: int
    questions: int
    already: bool = False


def read(desk: Desk | None, path: Path, answers: Answers | None = None) -> TakenIn:
    """Reads one file and stores nothing. Without a desk no database is looked at. Never raises for a bad file:
    `reading.unreadable` then says why."""
    given = answers or Answers()
    try:
        content = path.read_bytes()
    except OSError as problem:
        return TakenIn(_unreadable(path, problem), b"", given)
    return _understand(desk, path, content, given)


def read_again(desk: Desk | None, taken: TakenIn, answers: Answers) -> TakenIn:
    """The same bytes read with other answers."""
    return read_bytes(desk, taken.reading.file, taken.content, answers)


def read_bytes(desk: Desk | None, name: str, content: bytes, answers: Answers) -> TakenIn:
    """Reads a file that is held in memory, as if it lay on disk under `name`."""
    import tempfile

    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / Path(name).name
        path.write_bytes(content)
        return _understand(desk, path, content, answers)


def store(desk: Desk, taken: TakenIn, remember: Mapping[str, str] | None = None) -> Stored:
    """Stores a file with all its accepted offers, or none of it; keeps the answers in `remember` for the vendor.

    The same bytes again add nothing. Trouble if the file could not be read or the database refuses.
    """
    from tracker.store import files

    reading = taken.reading
    if reading.unreadable:
        raise Trouble(reading.unreadable)
    accepted = sum(line.state is State.ACCEPTED for line in reading.lines)
    with no_collecting(), writing(desk, f"took in {reading.file}") as pen:
        earlier = files.id_of(pen.connection, reading.sha256)
        if earlier is not None:
            return Stored(earlier, 0, 0, 0, already=True)
        received = taken.answers.received or desk.today
        file_id = files.add(pen, reading, taken.content, received, taken.answers.settled)
        keep_answers(pen, reading, remember or {})
    return Stored(file_id, accepted, len(reading.lines) - accepted, len(reading.questions))


def keep_answers(
    pen: Pen, reading: Reading, remember: Mapping[str, str], words: Mapping[str, str] | None = None
) -> None:
    """Remembers answers for the vendor of a reading. Who the vendor is can't be remembered for the vendor."""
    from tracker.store import answers as kept

    if reading.vendor is None:
        return
    for key, value in remember.items():
        if key != "vendor":
            kept.remember(pen, reading.vendor, key, value, (words or {}).get(key, ""))


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


def _understand(desk: Desk | None, path: Path, content: bytes, given: Answers) -> TakenIn:
    today = date.today() if desk is None else desk.today
    reading = _read_sheet(path, given, today)
    if desk is None or reading.unreadable:
        return TakenIn(reading, content, given)
    answers = given
    # Remembered answers settle what a sheet leaves open, so a sheet without questions needs no second look.
    if reading.questions and reading.vendor:
        answers = _with_remembered(desk, reading.vendor, given)
        if answers.settled != given.settled:
            reading = _read_sheet(path, answers, today)
    return TakenIn(reading, content, answers, _imported_on(desk, reading.sha256))


def _read_sheet(path: Path, answers: Answers, today: date) -> Reading:
    from tracker.intake.read import read_sheet

    with no_collecting():
        return read_sheet(path, answers, today=today)


def _with_remembered(desk: Desk, vendor: str, given: Answers) -> Answers:
    from tracker.store import answers as kept

    with desk.store.reading() as connection:
        remembered = kept.of_vendor(connection, vendor)
    settled: dict[str, str] = {**remembered, **given.settled}
    return replace(given, settled=settled)


def _imported_on(desk: Desk, sha256: str) -> date | None:
    from tracker.store import files

    with desk.store.reading() as connection:
        return files.imported_on(connection, sha256)


def _unreadable(path: Path, problem: OSError) -> Reading:
    reason = "there is no such file" if isinstance(problem, FileNotFoundError) else (problem.strerror or str(problem))
    sentence = f"{path.name} can't be read: {reason.lower() if reason.isupper() else reason}. Check its name and place."
    return Reading(file=path.name, sha256=hashlib.sha256(b"").hexdigest(), unreadable=sentence)
