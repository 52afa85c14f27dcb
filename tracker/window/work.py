"""Long work off the interface: one thread for the desk, results back on the window's own thread.

The desk may be used by one thread at a time, so its jobs queue for a single worker; order is kept, but that what can
wait (a batch of files) lets everything else go before it: an answer must not stand behind a dozen files. The signal
that carries results belongs to Work, which outlives every job: a signal object owned by the job loses results silently.
"""

import logging
from collections.abc import Callable
from typing import Any

from PySide6.QtCore import QObject, QRunnable, QThreadPool, Signal, Slot
from shiboken6 import isValid

from tracker.desk.trouble import sentence_for

log = logging.getLogger(__name__)

_WAITS, _NEXT = -1, 0
"""Priorities. Qt gives a job that wakes its idle thread the priority 0, whatever was asked for: were the usual one
higher, the next job would go before it."""


class _Job(QRunnable):
    """Runs a function and hands back (ticket, value, error) through a signal that it was given."""

    def __init__(self, ticket: int, function: Callable[[], Any], ended: Any, dropped: set[int]) -> None:
        super().__init__()
        self._ticket = ticket
        self._function = function
        self._ended = ended
        self._dropped = dropped

    def run(self) -> None:
        value: Any = None
        error: Exception | None = None
        if self._ticket not in self._dropped:
            try:
                value = self._function()
            except Exception as caught:
                # Every error travels back as a value: the window says it in a sentence, the log keeps the rest.
                error = caught
        self._ended.emit(self._ticket, value, error)


def while_there(widget: QObject, then: Callable[[Any], object]) -> Callable[[Any], None]:
    """`then` while the widget stands: a dialog may be closed, and deleted, before the desk is done for it."""

    def heard(value: Any) -> None:
        if isValid(widget):
            then(value)

    return heard


class Work(QObject):
    """Asks functions to run elsewhere and hands their results on, in the order asked, on this object's thread.

    `busy` tells whether anything is under way; `failed` carries an exception that nobody asked to hear about.
    """

    busy = Signal(bool)
    failed = Signal(object)
    _ended = Signal(object, object, object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._pool = QThreadPool(self)
        self._pool.setMaxThreadCount(1)
        # The thread stays: to start one anew costs more than most of its jobs.
        self._pool.setExpiryTimeout(-1)
        self._next = 0
        self._waiting: dict[int, tuple[Callable[[Any], object], Callable[[Exception], None]]] = {}
        self._dropped: set[int] = set()
        self._ended.connect(self._deliver)

    def ask(
        self,
        function: Callable[[], Any],
        then: Callable[[Any], object],
        failed: Callable[[Exception], None] | None = None,
        *,
        can_wait: bool = False,
    ) -> int:
        """Runs `function` on the desk's thread, then `then(result)` here; the ticket returned can be dropped.

        What `can_wait` begins only when nothing else is asked for; among such jobs, too, order is kept.
        """
        self._next += 1
        self._waiting[self._next] = (then, failed or self.failed.emit)
        self._pool.start(_Job(self._next, function, self._ended, self._dropped), _WAITS if can_wait else _NEXT)
        if len(self._waiting) == 1:
            self.busy.emit(True)
        return self._next

    def drop(self, ticket: int) -> None:
        """Forgets a job: not begun, it never runs; under way, its result goes nowhere."""
        if ticket in self._waiting:
            self._dropped.add(ticket)

    def is_idle(self) -> bool:
        return not self._waiting

    def finish(self) -> None:
        """Waits for what is under way and drops the rest: for closing the window."""
        self._dropped.update(self._waiting)
        self._pool.waitForDone()

    @Slot(object, object, object)
    def _deliver(self, ticket: int, value: Any, error: Exception | None) -> None:
        then, failed = self._waiting.pop(ticket)
        wanted = ticket not in self._dropped
        self._dropped.discard(ticket)
        if not self._waiting:
            self.busy.emit(False)
        if not wanted:
            return
        if error is None:
            then(value)
        else:
            # A fault of ours is said to be in the log, which keeps warnings and worse; any other is told in full.
            level = logging.INFO if sentence_for(error) else logging.ERROR
            log.log(level, "a task of the desk failed", exc_info=error)
            failed(error)
