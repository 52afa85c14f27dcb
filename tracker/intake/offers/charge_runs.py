"""Rows of charges among a table's boards: below each board, or group of boards, its own; in one place, those of all."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace

from tracker.intake.offers.said import Said
from tracker.intake.tables.table import Headings, Words
from tracker.intake.values.charges import ChargeWords

_SEVERAL = 2


@dataclass(frozen=True, slots=True)
class ChargeRow:
    """What one row says, and the charge that its figures give, where that is one."""

    words: Words | None
    charge: Said[ChargeWords] | None


@dataclass(slots=True)
class _Run:
    boards: list[int]
    certain: bool
    rows: list[ChargeRow] = field(default_factory=list)


class ChargeRuns:
    """Takes a table's rows in order and tells whose charges each run of them is."""

    def __init__(self) -> None:
        self._runs: list[_Run] = []
        self._boards: list[int] = []
        self._headings: Headings | None = None
        self._begun = False

    def take_board(self, row: int, headings: Headings | None) -> None:
        """A row that offers a board."""
        if headings is not self._headings:
            self._headings, self._boards = headings, []
        self._boards.append(row)
        self._begun = False

    def take_charge(self, row: ChargeRow) -> None:
        """A row of a charge."""
        if not self._begun:
            # Of several boards without a heading over them it is open for how many a charge below the last one holds.
            certain = len(self._boards) == 1 or self._headings is not None
            self._runs.append(_Run(self._boards, certain))
            self._boards, self._begun = [], True
        self._runs[-1].rows.append(row)

    def of_all(self) -> Iterator[ChargeRow]:
        """The charges of every board: those that stand in one place only, or above all boards.

        In the midst of the boards it is open of which: what they come to is not known of any.
        """
        scattered = self._are_scattered()
        for run in self._runs:
            if not run.boards or (not scattered and not self._boards):
                yield from run.rows
            elif not scattered:
                yield from (ChargeRow(None, _open(row.charge, certain=False)) for row in run.rows if row.charge)

    def of_boards(self) -> Mapping[int, tuple[Said[ChargeWords], ...]]:
        """The charges of single boards, by row."""
        runs = self._runs if self._are_scattered() else []
        return {
            board: tuple(_open(row.charge, certain=run.certain) for row in run.rows if row.charge is not None)
            for run in runs
            for board in run.boards
        }

    def _are_scattered(self) -> bool:
        return sum(bool(run.boards) for run in self._runs) >= _SEVERAL


def _open(charge: Said[ChargeWords], *, certain: bool) -> Said[ChargeWords]:
    """The charge, without its amount where it may be another board's."""
    return charge if certain else replace(charge, value=ChargeWords(charge.value.kind, charge.value.label))
