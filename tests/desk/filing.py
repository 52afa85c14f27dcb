"""Storing made-up readings, for tests that begin after a file was understood."""

from dataclasses import replace

from tests.store.making import DAY, reading
from tracker.desk.edits import writing
from tracker.desk.opening import Desk
from tracker.store import files
from tracker.trade.offer import Line


def file(desk: Desk, *lines: Line, content: bytes = b"a sheet", name: str = "list.xlsx", **more: object) -> int:
    """Stores these lines as one vendor's file; gives the file's id."""
    made = replace(reading(*lines, content=content, **more), file=name)
    with writing(desk, f"took in {name}") as pen:
        return files.add(pen, made, content, DAY, {})
