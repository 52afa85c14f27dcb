"""Samples that are owed as a calendar file: RFC 5545, one to-do a sample, the same UID at every export.

Lines end in CRLF and fold at 75 octets, never inside a character.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime
from enum import StrEnum
from uuid import NAMESPACE_URL, uuid5

_FOLD_AT = 75
_NAMESPACE = uuid5(NAMESPACE_URL, "urn:paperboard-tracker:sample")


class TodoState(StrEnum):
    """RFC 5545, 3.8.1.11, for a to-do."""

    NEEDS_ACTION = "NEEDS-ACTION"
    COMPLETED = "COMPLETED"
    CANCELLED = "CANCELLED"


@dataclass(frozen=True, slots=True)
class Todo:
    """One sample. `database` tells two teams' samples of the same number apart; `sequence` grows with each change."""

    database: str
    number: str
    summary: str
    description: str
    due: date | None
    state: TodoState
    sequence: int
    completed: datetime | None = None


def calendar_text(todos: Iterable[Todo], stamp: datetime) -> str:
    """The whole .ics file. `stamp` (aware) is when it was made. ValueError for a moment without a time zone."""
    lines = ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Paperboard Tracker//Samples//EN", "CALSCALE:GREGORIAN"]
    for todo in todos:
        lines += _todo_lines(todo, _utc(stamp))
    lines.append("END:VCALENDAR")
    return "".join(f"{_folded(line)}\r\n" for line in lines)


def _todo_lines(todo: Todo, stamp: str) -> list[str]:
    lines = [
        "BEGIN:VTODO",
        f"UID:{uuid5(_NAMESPACE, f'{todo.database}/{todo.number}')}",
        f"DTSTAMP:{stamp}",
        f"SEQUENCE:{todo.sequence}",
        f"SUMMARY:{_escaped(todo.summary)}",
        f"DESCRIPTION:{_escaped(todo.description)}",
        f"STATUS:{todo.state.value}",
    ]
    if todo.due is not None:
        lines.append(f"DUE;VALUE=DATE:{todo.due:%Y%m%d}")
    if todo.completed is not None:
        lines += [f"COMPLETED:{_utc(todo.completed)}", "PERCENT-COMPLETE:100"]
    if todo.due is not None and todo.state is TodoState.NEEDS_ACTION:
        lines += _alarm_lines(todo)
    return [*lines, "END:VTODO"]


def _alarm_lines(todo: Todo) -> Sequence[str]:
    # Nine in the morning of the day it is due; a date counts from midnight.
    return (
        "BEGIN:VALARM",
        "ACTION:DISPLAY",
        f"DESCRIPTION:{_escaped(todo.summary)}",
        "TRIGGER;RELATED=END:PT9H",
        "END:VALARM",
    )


def _escaped(text: str) -> str:
    text = text.replace("\\", "\\\\").replace(";", "\\;").replace(",", "\\,")
    return text.replace("\r\n", "\\n").replace("\n", "\\n").replace("\r", "\\n")


def _utc(moment: datetime) -> str:
    if moment.tzinfo is None:
        raise ValueError("a moment needs its time zone")
    return f"{moment.astimezone(UTC):%Y%m%dT%H%M%SZ}"


def _folded(line: str) -> str:
    pieces: list[str] = []
    piece, room = "", _FOLD_AT
    for character in line:
        size = len(character.encode())
        if size > room:
            pieces.append(piece)
            piece, room = "", _FOLD_AT - 1  # the space that begins a continuation counts
        piece += character
        room -= size
    return "\r\n ".join([*pieces, piece])
