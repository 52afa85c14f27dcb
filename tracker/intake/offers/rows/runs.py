"""Rows that are no boards among those that are: which boards each run of them stands by."""

from dataclasses import dataclass, field
from typing import Generic, TypeVar

from tracker.intake.tables.table import Headings

R = TypeVar("R")
_SEVERAL = 2


@dataclass(slots=True)
class Run(Generic[R]):
    """Rows that follow each other, and the boards right above them. `leads`: they stand right below a heading, above
    the boards that are theirs; `certain`: it is not open of how many boards they are."""

    boards: list[int]
    certain: bool
    leads: bool = False
    rows: list[R] = field(default_factory=list)


class Runs(Generic[R]):
    """Takes a table's rows in order. `every`: its boards; `trailing`: those below the last run."""

    def __init__(self) -> None:
        self.found: list[Run[R]] = []
        self.every: list[int] = []
        self.trailing: list[int] = []
        self._headings: Headings | None = None
        self._leading: Run[R] | None = None
        self._begun = False

    def take_board(self, row: int, headings: Headings | None) -> None:
        """A row that offers a board."""
        self._go_below(headings)
        self.every.append(row)
        self.trailing.append(row)
        if self._leading is not None:
            self._leading.boards.append(row)
        self._begun = False

    def take(self, row: R, headings: Headings | None) -> None:
        """A row that is none."""
        self._go_below(headings)
        if not self._begun:
            self._begin()
        self.found[-1].rows.append(row)

    def _go_below(self, headings: Headings | None) -> None:
        if headings is not self._headings:
            self._headings, self.trailing, self._leading, self._begun = headings, [], None, False

    def _begin(self) -> None:
        if self._headings is not None and not self.trailing:
            run = self._leading = Run([], certain=True, leads=True)
        else:
            # Of several boards without a heading over them it is open for how many a row below the last one holds.
            run = Run(self.trailing, certain=len(self.trailing) == 1 or self._headings is not None)
        self.found.append(run)
        self.trailing, self._begun = [], True

    def are_scattered(self) -> bool:
        """Whether several runs have boards of their own."""
        return sum(bool(run.boards) for run in self.found) >= _SEVERAL

    def is_of_all(self, run: Run[R]) -> bool:
        """Whether a run stands below or above all boards, and not in the midst of them."""
        return not run.boards or run.boards == self.every or not (run.leads or self.trailing)
