"""How far the reading of a file has come, told to whoever waits for it: in rows of its tables.

A child reads one file at a time, so one count is enough; outside a child nobody hears it.
"""

from collections.abc import Iterable, Iterator
from typing import TypeVar

from tracker.intake.child_side import tell

T = TypeVar("T")

_OPENED, _HANDED_OVER = 0.2, 0.05
"""Parts of the time that opening a long list and handing its lines over take (measured on our own)."""
_AT_A_TIME = 200


class _Rows:
    def __init__(self) -> None:
        self.expected, self.done = 1, 0

    def share(self) -> float:
        return _OPENED + (1 - _OPENED - _HANDED_OVER) * min(1.0, self.done / self.expected)


_rows = _Rows()


def expect(rows: int) -> None:
    """So many rows of all tables of a file will be gone over."""
    _rows.expected, _rows.done = max(rows, 1), 0
    tell(_rows.share())


def counted(rows: Iterable[T]) -> Iterator[T]:
    """The same rows; every so many of them it is told how much is done."""
    for row in rows:
        yield row
        _rows.done += 1
        if _rows.done % _AT_A_TIME == 0:
            tell(_rows.share())
