"""Reading without another process, which would take most of the time of tests that are about something else.

The process has tests of its own (tests/intake/test_child.py); some tests of each face go through it.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest

if TYPE_CHECKING:
    from tracker.intake.child import Flag


@contextmanager
def reading_in_this_process() -> Iterator[None]:
    """While it lasts, the desk reads in the thread that asks, and starts no process ahead of need."""
    with pytest.MonkeyPatch.context() as patch:
        for module in ("tracker.intake.child", "tracker.intake.read"):
            patch.setattr(f"{module}.read_in_child", _read)
        patch.setattr("tracker.intake.children.keep_ready", lambda _: None)
        yield


def _read(
    path: Path,
    work: Callable[[Path], Any],
    *,
    cancelled: Flag | None = None,
    part: Callable[[Any], None] | None = None,
    meanwhile: Callable[[], None] | None = None,
    progress: Callable[[float], None] | None = None,
) -> Any:
    """What child.read_in_child does, without bounds; Cancelled only where that was wanted before it began."""
    from tracker.intake.child import Cancelled

    if meanwhile is not None:
        meanwhile()
    if cancelled is not None and cancelled.is_set():
        raise Cancelled
    with pytest.MonkeyPatch.context() as patch:
        if part is not None:
            patch.setattr("tracker.intake.read.hand_over", part)
        if progress is not None:
            patch.setattr("tracker.intake.progress.tell", progress)
        return work(path)
