"""A price sheet as planned, before any file format: cells, looks that carry meaning, and the truth beside them."""

from dataclasses import dataclass, field
from datetime import date, datetime
from decimal import Decimal
from typing import Any

from tests.corpus.truth import Intent, fields, plain

CellContent = str | int | Decimal | date | datetime | bool | None


@dataclass
class CellPlan:
    """One cell. `formula` without `value` is one that was never calculated; `error` is an error cell such as '#N/A'.

    `places`: decimals shown, also in CSV. `struck`: struck through.
    """

    value: CellContent = None
    fmt: str = ""
    places: int | None = None
    formula: str | None = None
    error: str | None = None
    bold: bool = False
    struck: bool = False
    comment: str = ""


@dataclass
class SheetPlan:
    """One sheet; rows and columns count from 0."""

    name: str
    cells: dict[tuple[int, int], CellPlan] = field(default_factory=dict)
    merged: list[tuple[int, int, int, int]] = field(default_factory=list)
    hidden_rows: set[int] = field(default_factory=set)
    hidden_columns: set[int] = field(default_factory=set)
    hidden: bool = False

    def put(self, row: int, column: int, value: CellContent, **look: Any) -> CellPlan:
        """Write a cell and return it."""
        cell = CellPlan(value, **look)
        self.cells[row, column] = cell
        return cell

    def row(self, row: int, column: int, values: list[Any], **look: Any) -> None:
        """Write values side by side; None leaves a cell empty."""
        for offset, value in enumerate(values):
            if value is not None:
                self.put(row, column + offset, value, **look)

    def merge(self, top: int, left: int, bottom: int, right: int) -> None:
        if (top, left) != (bottom, right):
            self.merged.append((top, left, bottom, right))

    @property
    def height(self) -> int:
        return 1 + max((row for row, _ in self.cells), default=-1)

    @property
    def width(self) -> int:
        return 1 + max((column for _, column in self.cells), default=-1)


@dataclass
class Csv:
    """How a CSV is written: numbers with this decimal sign and grouping."""

    delimiter: str = ","
    encoding: str = "utf-8"
    decimal: str = "."
    thousands: str = ""
    newline: str = "\r\n"
    quote_all: bool = False


@dataclass
class FilePlan:
    """A vendor's file with its truth. `raw` replaces all rendering (broken files); `extension` fixes the format."""

    family: str = ""
    vendor: Any = None
    sheets: list[SheetPlan] = field(default_factory=list)
    lines: list[dict[str, Any]] = field(default_factory=list)
    unreadable: Any = None
    bulk: bool = False
    csv: Csv = field(default_factory=Csv)
    date1904: bool = False
    raw: bytes | None = None
    extension: str = ""
    huge_dimension: bool = False
    remarks: str = ""

    def sheet(self, name: str) -> SheetPlan:
        self.sheets.append(SheetPlan(name))
        return self.sheets[-1]

    def accept(
        self, sheet: SheetPlan, row: int, column: int, intent: Intent, notes: tuple[Any, ...] = ()
    ) -> dict[str, Any]:
        """A line that must be accepted with these fields."""
        return self._add(sheet, row, column, {"state": "accepted", **_notes(notes), **fields(intent)})

    def ask(self, sheet: SheetPlan, row: int, column: int, *notes: Any, state: str = "question") -> dict[str, Any]:
        """A line that must not be accepted; `notes` are the codes that say why."""
        return self._add(sheet, row, column, {"state": state, **_notes(notes)})

    def refuse(self, sheet: SheetPlan, row: int, column: int, code: str) -> dict[str, Any]:
        return self.ask(sheet, row, column, code, state="refused")

    def either(self, sheet: SheetPlan, row: int, column: int, intent: Intent, *notes: Any) -> dict[str, Any]:
        """Accepting it with these fields is right, and so is asking: the contract leaves room."""
        state = {"any_of": ["accepted", "question"]}
        return self._add(sheet, row, column, {"state": state, **_notes(notes), **fields(intent)})

    def either_cell(
        self, sheet: SheetPlan, row: int, column: int, intent: Intent, other_column: int, other: Intent
    ) -> dict[str, Any]:
        """One offer priced in two cells of a row on two bases: either may stand as its price cell."""
        first, second = fields(intent), fields(other)
        for name in ("per_tonne", "per_msf", "delivered_per_tonne", "delivered_per_msf"):
            values = [said[name] for said in (first, second) if said.get(name) is not None]
            if len(set(values)) == 2:
                first[name] = {"any_of": values}
        rival = {
            "cell": a1(row, other_column),
            "price": second["price"],
            "basis": second["basis"],
            "also": [a1(row, column)],
        }
        line = {"state": "accepted", **first, "also": [a1(row, other_column)], "or": [rival]}
        return self._add(sheet, row, column, line)

    def no_price(self, sheet: SheetPlan, row: int, column: int) -> dict[str, Any]:
        """A cell where a price would stand but none is offered (call, n/q, a dash): no line is needed."""
        return self._add(sheet, row, column, {"state": {"any_of": ["question", "refused"]}, "optional": True})

    def _add(self, sheet: SheetPlan, row: int, column: int, line: dict[str, Any]) -> dict[str, Any]:
        entry = {"sheet": sheet.name, "cell": a1(row, column), **line}
        self.lines.append(entry)
        return entry

    def as_truth(self, file: str, is_csv: bool) -> dict[str, Any]:
        """This file's entry in truth.json; in CSV the sheet has no name."""
        lines = [{**line, "sheet": "" if is_csv else line["sheet"]} for line in self.lines]
        entry: dict[str, Any] = {"file": file, "family": self.family, "unreadable": plain(self.unreadable)}
        entry |= {"vendor": plain(self.vendor), "lines": lines}
        if self.bulk:
            entry["bulk"] = True
        if self.remarks:
            entry["remarks"] = self.remarks
        return entry


def _notes(codes: tuple[Any, ...]) -> dict[str, Any]:
    return {"notes": [{"code": plain(code)} for code in codes]} if codes else {}


def a1(row: int, column: int) -> str:
    """The A1 address of a cell counted from 0."""
    letters, column = "", column + 1
    while column:
        column, rest = divmod(column - 1, 26)
        letters = chr(65 + rest) + letters
    return f"{letters}{row + 1}"
