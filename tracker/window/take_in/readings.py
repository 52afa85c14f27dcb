"""Having files read on the desk's thread: the one in view before the rest of a batch, and stopped at once."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from functools import partial
from threading import Event
from typing import TYPE_CHECKING

from tracker.window.session import Session
from tracker.window.take_in.file_at_hand import FileAtHand, read_again, read_file
from tracker.window.take_in.findings import Findings

if TYPE_CHECKING:
    from tracker.desk.take_in import TakenIn

Result = tuple["TakenIn", Findings]


class Readings:
    """`at_hand` gives the file that is shown, `was_read` is called with each file and what reading it came to."""

    def __init__(
        self,
        session: Session,
        at_hand: Callable[[], FileAtHand | None],
        was_read: Callable[[FileAtHand, Result], None],
    ) -> None:
        self._session, self._at_hand, self._was_read = session, at_hand, was_read
        self._tickets: list[tuple[FileAtHand, int]] = []

    def begin(self, files: Iterable[FileAtHand]) -> None:
        """Reads these files one after another."""
        for file in files:
            file.stop = Event()
            self.ask(file)

    def ask(self, file: FileAtHand) -> None:
        """Reads one file, or what was read of it again with all that was said since."""
        if file.let_go:
            return
        door, taken, today = self._session.door, file.taken, self._session.footing.as_of
        reading = partial(read_file, door, file) if taken is None else partial(read_again, door, file, taken, today)
        # What was just answered of the file in view is not to wait for the rest of a batch.
        can_wait = taken is None and file is not self._at_hand()
        ticket = self._session.work.ask(reading, partial(self._was_read, file), can_wait=can_wait)
        self._tickets.append((file, ticket))

    def stop(self, files: Sequence[FileAtHand]) -> None:
        """Ends what is being read of these files, at once; its result goes nowhere."""
        for file in files:
            file.stop.set()
        for file, ticket in self._tickets:
            if file in files:
                self._session.work.drop(ticket)
        self._tickets = [each for each in self._tickets if each[0] not in files]
