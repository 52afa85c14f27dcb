"""One thing said about an offer, by which cell and in which words."""

from dataclasses import dataclass
from functools import lru_cache
from typing import Generic, TypeVar

from tracker.intake.grid import Cell, address
from tracker.trade.offer import Evidence

T_co = TypeVar("T_co", covariant=True)


@dataclass(frozen=True, slots=True)
class Said(Generic[T_co]):
    """A value with the place it was read from: 'E1', 'Terms!A3', 'the sheet's name', 'your answer'."""

    value: T_co
    where: str
    words: str

    def evidence(self, field: str, against: str = "") -> Evidence:
        """What the window shows beside the field."""
        return evidence_of(field, self.where, self.words, against)


def at(cell: Cell) -> str:
    """The cell's address as a person sees it."""
    return address(cell.row, cell.column)


@lru_cache(maxsize=4096)
def evidence_of(field: str, where: str, words: str, against: str = "") -> Evidence:
    """One object for what a header says of thousands of rows."""
    return Evidence(field, where, words, against)
