"""Papers about samples: labels to stick on the board, and what is owed as a calendar file."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING
from uuid import uuid4

from tracker.desk.chasing import board_words
from tracker.desk.edits import writing
from tracker.desk.sample_life import SampleState
from tracker.desk.sample_numbers import no_such_sample
from tracker.desk.samples import Sample, samples
from tracker.desk.trouble import Trouble
from tracker.reports.calendar import Todo, TodoState, calendar_text
from tracker.reports.labels import LABEL_SHEETS, SampleLabel
from tracker.reports.labels import write_labels as write_sheet

if TYPE_CHECKING:
    from tracker.desk.opening import Desk

_OVER = {SampleState.REFUSED, SampleState.CANCELLED, SampleState.LOST}


def label_sheets() -> dict[str, str]:
    """The sizes that labels are printed in: a key for each and its name."""
    return {key: sheet.name for key, sheet in LABEL_SHEETS.items()}


def write_labels(desk: Desk, numbers: Sequence[int], sheet: str, path: Path) -> None:
    """Writes the labels of these samples to a PDF, in the order given. Trouble for an unknown number or size."""
    if sheet not in LABEL_SHEETS:
        raise Trouble(f"There is no label size {sheet}: the sizes are {', '.join(LABEL_SHEETS)}.")
    known = {sample.number: sample for sample in samples(desk)}
    missing = [number for number in numbers if number not in known]
    if missing:
        raise no_such_sample(missing[0])
    labels = [_label(known[number]) for number in numbers]
    try:
        write_sheet(labels, LABEL_SHEETS[sheet], path)
    except ValueError as problem:
        raise Trouble(str(problem)) from problem
    except OSError as problem:
        raise _not_written(path, problem) from problem


def write_calendar(desk: Desk, path: Path) -> int:
    """Writes every sample that has a day as a to-do; gives how many. Exporting again updates what a calendar holds."""
    database, sequence = _stamp(desk)
    todos = [todo for sample in samples(desk) if (todo := _todo(sample, database, sequence)) is not None]
    text = calendar_text(todos, datetime.now(UTC))
    try:
        path.write_bytes(text.encode())
    except OSError as problem:
        raise _not_written(path, problem) from problem
    return len(todos)


def _label(sample: Sample) -> SampleLabel:
    return SampleLabel(sample.label, sample.vendor, board_words(sample), sample.for_what, sample.requested)


def _stamp(desk: Desk) -> tuple[str, int]:
    """Which database this is, and how far its log of changes has come."""
    from tracker.store import changes, settings

    with desk.store.reading() as connection:
        known = settings.get(connection, settings.IDENTITY)
        latest = changes.history(connection, 1)
    if not isinstance(known, str):
        known = uuid4().hex
        with writing(desk, "named the database for calendars") as pen:
            settings.put(pen, settings.IDENTITY, known)
    return known, latest[0].id if latest else 0


def _todo(sample: Sample, database: str, sequence: int) -> Todo | None:
    if sample.due is None and sample.arrived is None:
        return None
    what = f"Sample {sample.label} from {sample.vendor}"
    about = [board_words(sample), f"for {sample.for_what}" if sample.for_what else "", f"state: {sample.state.value}"]
    state, completed = TodoState.NEEDS_ACTION, None
    if sample.arrived is not None:
        state = TodoState.COMPLETED
        completed = datetime(sample.arrived.year, sample.arrived.month, sample.arrived.day, 12, tzinfo=UTC)
    elif sample.state in _OVER:
        state = TodoState.CANCELLED
    description = "\n".join(part for part in about if part)
    return Todo(database, sample.label, what, description, sample.due, state, sequence, completed)


def _not_written(path: Path, problem: OSError) -> Trouble:
    return Trouble(
        f"{path} can't be written ({problem.strerror}): close it if it is open elsewhere, or choose another place."
    )
