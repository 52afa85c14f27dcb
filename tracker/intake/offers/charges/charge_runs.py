"""Rows of charges among a table's boards: beside each board, or group of boards, its own; in one place, all boards'."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace

from tracker.intake.offers.notes.said import Said
from tracker.intake.tables.table import Headings, Words
from tracker.intake.values.freight.charge_names import same_charge
from tracker.intake.values.freight.charges import ChargeWords

_SEVERAL = 2


@dataclass(frozen=True, slots=True)
class ChargeRow:
    """What one row says, and the charge that its figures give, where that is one. `everybodys`: it says, or a line
    above it does, that it is of all boards."""

    words: Words | None
    charge: Said[ChargeWords] | None
    everybodys: bool = False


@dataclass(slots=True)
class _Run:
    """Charges that follow each other. `leads`: they stand right below a heading, above the boards that are theirs."""

    boards: list[int]
    certain: bool
    leads: bool = False
    rows: list[ChargeRow] = field(default_factory=list)


class ChargeRuns:
    """Takes a table's rows in order and tells whose charges each run of them is."""

    def __init__(self) -> None:
        self._runs: list[_Run] = []
        self._every: list[int] = []
        self._boards: list[int] = []
        self._headings: Headings | None = None
        self._leading: _Run | None = None
        self._begun = False

    def take_board(self, row: int, headings: Headings | None) -> None:
        """A row that offers a board."""
        self._go_below(headings)
        self._every.append(row)
        self._boards.append(row)
        if self._leading is not None:
            self._leading.boards.append(row)
        self._begun = False

    def take_charge(self, row: ChargeRow, headings: Headings | None) -> None:
        """A row of a charge."""
        self._go_below(headings)
        if not self._begun:
            self._begin()
        self._runs[-1].rows.append(row)

    def _go_below(self, headings: Headings | None) -> None:
        if headings is not self._headings:
            self._headings, self._boards, self._leading, self._begun = headings, [], None, False

    def _begin(self) -> None:
        if self._headings is not None and not self._boards:
            run = self._leading = _Run([], certain=True, leads=True)
        else:
            # Of several boards without a heading over them it is open for how many a charge below the last one holds.
            run = _Run(self._boards, certain=len(self._boards) == 1 or self._headings is not None)
        self._runs.append(run)
        self._boards, self._begun = [], True

    def of_all(self) -> Iterator[ChargeRow]:
        """The charges of every board: those that stand in one place only, below or above all boards.

        In the midst of the boards it is open of which: what they come to is not known of any.
        """
        everybodys = self._everybodys()
        yield from everybodys
        self._runs = [replace(run, rows=left) for run in self._runs if (left := _without(run.rows, everybodys))]
        scattered = self._are_scattered()
        for run in self._runs:
            if scattered and run.boards:
                continue
            if not run.boards or run.boards == self._every or not (run.leads or self._boards):
                yield from run.rows
            else:
                yield from (ChargeRow(None, _open(row.charge)) for row in run.rows if row.charge is not None)

    def of_boards(self) -> Mapping[int, tuple[Said[ChargeWords], ...]]:
        """The charges of single boards, by row."""
        found: dict[int, tuple[Said[ChargeWords], ...]] = {}
        for run in self._runs if self._are_scattered() else []:
            charges = [row.charge for row in run.rows if row.charge is not None]
            own = tuple(charges if run.certain else map(_open, charges))
            for board in run.boards:
                found[board] = (*found.get(board, ()), *own)
        return found

    def _everybodys(self) -> list[ChargeRow]:
        """Those that are said to be of all boards, unless each of several groups has one: 'Energy, all sizes'."""
        told = [row for run in self._runs for row in run.rows]
        return [
            row for row in told if row.everybodys and not any(_same(row, other) for other in told if other is not row)
        ]

    def _are_scattered(self) -> bool:
        return sum(bool(run.boards) for run in self._runs) >= _SEVERAL


def _without(rows: list[ChargeRow], others: list[ChargeRow]) -> list[ChargeRow]:
    return [row for row in rows if not any(row is other for other in others)]


def _same(one: ChargeRow, other: ChargeRow) -> bool:
    if one.charge is None or other.charge is None:
        return False
    charge, another = one.charge.value, other.charge.value
    return charge.kind is another.kind and same_charge(charge.kind, charge.label, another.label)


def _open(charge: Said[ChargeWords]) -> Said[ChargeWords]:
    """The charge without its amount, which may be another board's."""
    return replace(charge, value=ChargeWords(charge.value.kind, charge.value.label))
