"""Rows of charges among a table's boards: beside each board, or group of boards, its own; in one place, all boards'."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace

from tracker.intake.offers.notes.said import Said
from tracker.intake.offers.rows.runs import Runs
from tracker.intake.tables.table import Headings, Words
from tracker.intake.values.freight.charge_names import same_charge
from tracker.intake.values.freight.charges import ChargeWords


@dataclass(frozen=True, slots=True)
class ChargeRow:
    """What one row says, and the charge that its figures give, where that is one. `everybodys`: it says, or a line
    above it does, that it is of all boards."""

    words: Words | None
    charge: Said[ChargeWords] | None
    everybodys: bool = False


class ChargeRuns:
    """Takes a table's rows in order and tells whose charges each run of them is."""

    def __init__(self) -> None:
        self._runs = Runs[ChargeRow]()

    def take_board(self, row: int, headings: Headings | None) -> None:
        """A row that offers a board."""
        self._runs.take_board(row, headings)

    def take_charge(self, row: ChargeRow, headings: Headings | None) -> None:
        """A row of a charge."""
        self._runs.take(row, headings)

    def of_all(self) -> Iterator[ChargeRow]:
        """The charges of every board: those that stand in one place only, below or above all boards.

        In the midst of the boards it is open of which: what they come to is not known of any.
        """
        everybodys = self._everybodys()
        yield from everybodys
        runs = self._runs
        runs.found = [replace(run, rows=left) for run in runs.found if (left := _without(run.rows, everybodys))]
        scattered = runs.are_scattered()
        for run in runs.found:
            if scattered and run.boards:
                continue
            if runs.is_of_all(run):
                yield from run.rows
            else:
                yield from (ChargeRow(None, _open(row.charge)) for row in run.rows if row.charge is not None)

    def of_boards(self) -> Mapping[int, tuple[Said[ChargeWords], ...]]:
        """The charges of single boards, by row."""
        found: dict[int, tuple[Said[ChargeWords], ...]] = {}
        for run in self._runs.found if self._runs.are_scattered() else []:
            charges = [row.charge for row in run.rows if row.charge is not None]
            own = tuple(charges if run.certain else map(_open, charges))
            for board in run.boards:
                found[board] = (*found.get(board, ()), *own)
        return found

    def _everybodys(self) -> list[ChargeRow]:
        """Those that are said to be of all boards, unless each of several groups has one: 'Energy, all sizes'."""
        told = [row for run in self._runs.found for row in run.rows]
        return [
            row for row in told if row.everybodys and not any(_same(row, other) for other in told if other is not row)
        ]


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
