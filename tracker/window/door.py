"""The window's one door to the desk. Every method is called on the desk's thread (see work.py), never while painting.

Importing the desk's tasks here, when first asked, keeps the database and statistics out of the time to first paint.
"""

from __future__ import annotations

from datetime import date
from hashlib import sha256
from pathlib import Path
from typing import TYPE_CHECKING, Any

from tracker.desk.collecting import no_collecting
from tracker.desk.comparison import ChosenFooting, Comparison
from tracker.window.reference.yardstick_door import YardstickDoor
from tracker.window.samples.sample_door import SampleDoor

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping, Sequence
    from threading import Event

    from tracker.desk.changed_answers import ChangedAnswer
    from tracker.desk.edits import Edit
    from tracker.desk.explanation import Explanation
    from tracker.desk.files import StoredFile
    from tracker.desk.layouts import KeptLayout
    from tracker.desk.opening import Desk
    from tracker.desk.questions import Remembered
    from tracker.desk.snapshot import Snapshot
    from tracker.desk.take_in import Answered, Stored, TakenIn
    from tracker.desk.today import Today
    from tracker.trade.offer import Answers


class Door(SampleDoor, YardstickDoor):
    """What the window asks the desk. Tests put a door of invented answers in its place."""

    def __init__(self, database: str | None = None) -> None:
        self._database = database
        self._desk: Desk | None = None
        self._snapshot: Snapshot | None = None

    @property
    def place(self) -> str:
        """A sign of the database that is open, which tells nothing of where it lies or how it is reached."""
        if self._database is None:
            return "own"
        name = self._database if "://" in self._database else str(Path(self._database).absolute())
        return sha256(name.encode()).hexdigest()[:16]

    @property
    def desk(self) -> Desk:
        """The open desk; opened when first asked for."""
        if self._desk is None:
            from tracker.desk.opening import open_desk

            self._desk = open_desk(self._database)
        return self._desk

    def today(self) -> date:
        return self.desk.today

    def close(self) -> None:
        from tracker.desk.take_in import stand_down

        stand_down()
        if self._desk is not None:
            self._desk.close()
            self._desk = None
        self._snapshot = None

    def open_demo(self, folder: Path) -> None:
        """Puts a fresh demo database in the place of what was open."""
        from tracker.desk.demo import fresh_demo

        database = fresh_demo(folder)
        self.close()
        self._database = database

    def latest_change(self) -> int:
        """The number of the newest edit, by whatever program."""
        from tracker.desk.edits import latest_change

        return latest_change(self.desk)

    def load(self) -> None:
        """Reads the offers anew: after anything was taken in, withdrawn or answered."""
        from tracker.desk.quotes import load_snapshot

        # The collector would walk every offer while the interface waits for it.
        with no_collecting():
            self._snapshot = load_snapshot(self.desk)

    def compare(self, footing: ChosenFooting) -> Comparison:
        """The offers on a footing."""
        from tracker.desk.quotes import compare

        if self._snapshot is None:
            self.load()
        assert self._snapshot is not None
        return compare(self.desk, self._snapshot, footing)

    def explain(self, comparison: Comparison, offer: int, metric: bool) -> Explanation:
        """Why an offer's figure is what it is; `metric` says in which units its sums are written."""
        from tracker.desk.explanation import explain

        return explain(self.desk, comparison, offer, metric)

    def currencies(self) -> tuple[str, ...]:
        from tracker.desk.rates import currencies

        return currencies(self.desk)

    def todays(self, comparison: Comparison) -> Today:
        from tracker.desk.today import today

        return today(self.desk, comparison)

    def vendors(self) -> tuple[str, ...]:
        from tracker.desk.vendors import vendors

        return vendors(self.desk)

    def read(self, path: Path, stop: Event | None = None, progress: Callable[[float], None] | None = None) -> TakenIn:
        """Reads a file with the sheets to show; `stop`, once set, ends it with Trouble, and `progress` is told how much
        of it is read."""
        from tracker.desk.take_in import Manner, read

        return read(
            self.desk, path, manner=Manner(show=True, cancelled=stop, meanwhile=self.keep_ready, progress=progress)
        )

    def keep_ready(self) -> None:
        """Makes ready for the next file, so that it is on screen sooner."""
        from tracker.desk.take_in import keep_ready

        keep_ready()

    def read_again(
        self, taken: TakenIn, answers: Answers, stop: Event | None = None,
        progress: Callable[[float], None] | None = None,
    ) -> TakenIn:  # fmt: skip
        from tracker.desk.take_in import Manner, read_again

        return read_again(self.desk, taken, answers, Manner(show=True, cancelled=stop, progress=progress))

    def read_kept(
        self, file: int | str, stop: Event | None = None, progress: Callable[[float], None] | None = None
    ) -> TakenIn:
        """A stored file, by its number or its sha256, with its sheets and all that it leaves open, to be answered
        anew; its `answers` are those that it was read with when it was stored."""
        from dataclasses import replace

        from tracker.desk.files import answers, content, find
        from tracker.desk.take_in import Manner, read_bytes
        from tracker.trade.offer import Answers

        kept = find(self.desk, file)
        known = answers(self.desk, kept.id)
        bare = Answers(received=known.received, layouts=known.layouts)
        manner = Manner(show=True, cancelled=stop, progress=progress)
        taken = read_bytes(None, kept.name, content(self.desk, kept.id), bare, manner)
        stored_on = None if kept.withdrawn else kept.imported_at.astimezone().date()
        return replace(taken, answers=known, imported_on=stored_on)

    def answers_of_kept(self, file: int | str) -> Answers:
        """What a stored file was read with."""
        from tracker.desk.files import answers, find

        return answers(self.desk, find(self.desk, file).id)

    def read_kept_anew(self, file: int, answers: Answers, remember: Mapping[str, str]) -> Answers:
        """Stores a kept file as read with these answers; gives those it was read with until now."""
        from tracker.desk.files import read_anew

        return read_anew(self.desk, file, answers, remember)

    def store(
        self, taken: TakenIn, remember: Mapping[str, str], words: Mapping[str, str] | None = None, *, anew: bool = False
    ) -> Stored:
        from tracker.desk.take_in import store

        return store(self.desk, taken, remember, words, anew=anew)

    def kept_workbook(self, file: int | str) -> Any:
        """A stored file's sheets as the vendor sent them, the file given by its number or its sha256."""
        from tracker.desk.files import content, find
        from tracker.desk.take_in import workbook

        kept = find(self.desk, file)
        return workbook(content(self.desk, kept.id), kept.name)

    def files(self) -> tuple[StoredFile, ...]:
        from tracker.desk.files import files

        return files(self.desk)

    def remembered(self) -> tuple[Remembered, ...]:
        from tracker.desk.questions import remembered

        return remembered(self.desk)

    def layouts(self) -> tuple[KeptLayout, ...]:
        from tracker.desk.layouts import layouts

        return layouts(self.desk)

    def forget_answer(self, answer_id: int) -> Edit:
        from tracker.desk.questions import forget

        return forget(self.desk, answer_id)

    def change_answer(self, answer_id: int, value: str) -> ChangedAnswer:
        from tracker.desk.changed_answers import change_answer

        return change_answer(self.desk, answer_id, value)

    def forget_layout(self, layout_id: int) -> Edit:
        from tracker.desk.layouts import forget_layout

        return forget_layout(self.desk, layout_id)

    def bring_back_file(self, file_id: int) -> Edit:
        from tracker.desk.files import bring_back

        return bring_back(self.desk, file_id)

    def name_vendor(self, file_id: int, vendor: str) -> Edit:
        from tracker.desk.files import name_vendor

        return name_vendor(self.desk, file_id, vendor)

    def withdraw_files(self, *file_ids: int) -> Edit:
        from tracker.desk.files import withdraw

        return withdraw(self.desk, *file_ids)

    def answer(self, question_id: int, value: str, *, remember: bool) -> Stored:
        from tracker.desk.questions import answer

        return answer(self.desk, question_id, value, remember)

    def take_back(self, answered: Answered) -> None:
        """Undoes an answer that was given to a kept file's question."""
        from tracker.desk.questions import take_back

        take_back(self.desk, answered)

    def answer_again(self, answered: Answered) -> Stored:
        from tracker.desk.questions import answer_again

        return answer_again(self.desk, answered)

    def save_offers(self, comparison: Comparison, rows: Sequence[int], path: Path) -> None:
        """All that is known of the offers at these indices, as save_rows()."""
        from tracker.desk.collecting import let_go
        from tracker.desk.offer_rows import offer_rows

        written = offer_rows(comparison, rows)
        self.save_rows(written, comparison.footing, path)
        let_go(written)

    def save_rows(self, rows: Sequence[Mapping[str, Any]], footing: ChosenFooting, path: Path) -> None:
        """Rows as a spreadsheet that says what its prices mean or, by the file's ending, as CSV."""
        from tracker.desk.export import write_csv, write_xlsx
        from tracker.desk.footing_words import footing_sentence

        if path.suffix.casefold() == ".csv":
            write_csv(rows, path)
        else:
            write_xlsx(rows, path, "Offers", footing_sentence(footing))

    def write_report(self, path: Path, footing: ChosenFooting) -> None:
        from tracker.desk.reporting import write_report

        write_report(self.desk, path, footing)

    def back_up(self, path: Path) -> None:
        from tracker.desk.keeping import backup

        backup(self.desk, path, replace=True)

    def restore(self, path: Path) -> Path | None:
        """Puts a backup in the database's place; gives where what stood there is kept."""
        from tracker.desk.keeping import restore
        from tracker.desk.opening import default_database

        self.close()
        return restore(self._database or default_database(), path)

    def set_aside(self, question_id: int) -> Edit:
        from tracker.desk.questions import set_aside

        return set_aside(self.desk, question_id)

    def undo(self, edit: Edit) -> Edit:
        """Reverses an edit; what comes back does it again."""
        from tracker.desk.edits import undo

        return undo(self.desk, edit)
