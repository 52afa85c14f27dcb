"""One thing said about an offer, by which cell and in which words."""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Generic, Protocol, TypeVar

from tracker.intake.grid import Cell, address
from tracker.trade.offer import Evidence

T_co = TypeVar("T_co", covariant=True)


class _OfGrades(Protocol):
    """A value that is said of boards of some grades, () for all."""

    @property
    def grades(self) -> tuple[str, ...]: ...


G = TypeVar("G", bound=_OfGrades)


@dataclass(frozen=True, slots=True)
class Said(Generic[T_co]):
    """A value with the place it was read from: 'E1', 'Terms!A3', 'the sheet's name', 'your answer'."""

    value: T_co
    where: str
    words: str

    def evidence(self, field: str, against: str = "") -> Evidence:
        """What the window shows beside the field."""
        return evidence_of(field, self.where, self.words, against)


def of_grade(said: Sequence[Said[G]], grade: str | None) -> list[Said[G]]:
    """What is said of a grade by name, or of all beside others named; nothing where no grade is named."""
    if not any(one.value.grades for one in said):
        return []
    return [one for one in said if grade in one.value.grades] or [one for one in said if not one.value.grades]


def at(cell: Cell) -> str:
    """The cell's address as a person sees it."""
    return address(cell.row, cell.column)


@lru_cache(maxsize=4096)
def evidence_of(field: str, where: str, words: str, against: str = "") -> Evidence:
    """One object for what a header says of thousands of rows."""
    return Evidence(field, where, words, against)
