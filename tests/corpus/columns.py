"""Columns of a price table, made once and then laid out down, across or side by side."""

from dataclasses import dataclass, field
from decimal import Decimal
from itertools import groupby
from typing import Any

from tests.corpus.boards import Board
from tests.corpus.kit import Kit
from tests.corpus.model import CellPlan, FilePlan, SheetPlan

FORMATS = {
    0: ("#,##0", "0", "General", "#,##0.00"),
    1: ("0.0",),
    2: ("#,##0.00", "0.00"),
    3: ("0.000",),
    4: ("0.0000",),
}


@dataclass
class Column:
    """A header and a cell a row; a cell is a value, a CellPlan or None."""

    key: str
    head: str
    cells: list[Any]


@dataclass
class Placed:
    """Where a table went: the row of each item, the column of each key, the first free row below."""

    rows: list[int]
    columns: dict[str, int]
    below: int


@dataclass
class RowFacts:
    """What a row's own columns say beside the board: keyword arguments for the intent, and notes expected."""

    over: dict[str, Any] = field(default_factory=dict)
    notes: list[Any] = field(default_factory=list)


def put(sheet: SheetPlan, row: int, column: int, content: Any) -> None:
    if isinstance(content, CellPlan):
        sheet.cells[row, column] = content
    elif content is not None:
        sheet.put(row, column, content)


def place(sheet: SheetPlan, top: int, left: int, columns: list[Column], gaps: set[int] = frozenset()) -> Placed:
    """Headers in row `top`, items below; an empty row stands before each item in `gaps`."""
    rows, row = [], top
    for index in range(len(columns[0].cells)):
        row += 2 if index in gaps else 1
        rows.append(row)
    for offset, column in enumerate(columns):
        if column.head:
            sheet.put(top, left + offset, column.head, bold=True)
        for at, content in zip(rows, column.cells, strict=True):
            put(sheet, at, left + offset, content)
    return Placed(rows, {column.key: left + offset for offset, column in enumerate(columns)}, row + 1)


def money_cell(kit: Kit, value: Decimal, fmt: str | None = None) -> CellPlan:
    places = max(0, -value.as_tuple().exponent)
    return CellPlan(value, fmt=fmt or kit.pick(FORMATS.get(places, ("General",))), places=places if places else None)


def product_column(kit: Kit, items: list[Board], once: bool = False) -> Column:
    """The boards' wording; with `once` it is written only where it changes."""
    words = [item.words for item in items]
    if once:
        words = [word if index == 0 or word != words[index - 1] else None for index, word in enumerate(words)]
    return Column("product", kit.head("product"), words)


def caliper_text(kit: Kit, item: Board) -> str:
    """A caliper with its unit in the cell."""
    value, unit = item.caliper, item.caliper_unit
    if unit == "pt":
        inches = f"{value / 1000:.3f}"
        return kit.pick(
            (f"{value} pt", f"{value}pt", f'{inches}"', f'{inches.lstrip("0")}"', f"{inches} in", f"{value} points")
        )
    shown = format(value, "f")
    if kit.lang.code != "en":
        shown = shown.replace(".", ",")
    return f"{shown} µm" if unit == "um" else f"{shown} mm"


def weight_text(kit: Kit, item: Board) -> str:
    words = {
        "lb_msf": ("{} lb/MSF", "{}#/MSF", "{} lbs/MSF", "{} lb/1000 sq ft"),
        "lb_3000": ("{} lb/3000 ft²", "{} lb/3,000 sq ft"),
        "gsm": ("{} g/m²", "{} gsm", "{} g"),
    }
    forms = words[item.weight_unit] if item.weight_unit != "gsm" else words["gsm"][:2]
    return kit.pick(forms).format(item.weight)


def caliper_column(kit: Kit, items: list[Board], textual: bool = False) -> Column:
    if textual:
        form = kit.rng.random()
        cells: list[Any] = []
        for item in items:
            kit_state = kit.rng.getstate()
            kit.rng.seed(form)
            cells.append(caliper_text(kit, item))
            kit.rng.setstate(kit_state)
        return Column("caliper", kit.head("caliper"), cells)
    return Column("caliper", kit.caliper_head(), [item.caliper for item in items])


def weight_column(kit: Kit, items: list[Board], textual: bool = False) -> Column:
    if textual:
        return Column(
            "weight", kit.head("weight" if kit.us else "grammage"), [weight_text(kit, item) for item in items]
        )
    return Column("weight", kit.weight_head(), [item.weight for item in items])


def price_column(kit: Kit, prices: list[Decimal], head: str, key: str = "price") -> Column:
    fmt = kit.pick(FORMATS[max(max(0, -price.as_tuple().exponent) for price in prices)])
    return Column(key, head, [money_cell(kit, price, fmt) for price in prices])


def extra_columns(kit: Kit, items: list[Board], facts: list[RowFacts]) -> tuple[list[Column], list[Column]]:
    """Columns that may stand before the board and after the price; `facts` learns what they say."""
    before, after = [], []
    number = kit.rng.randint(1000, 8000)
    if kit.chance(0.35):
        shape = kit.pick(("{}", "K-{}", "{}-A"))
        before.append(
            Column("item", kit.head("item"), [shape.format(number + 7 * index) for index in range(len(items))])
        )
    elif kit.chance(0.2):
        before.append(Column("item", kit.head("item"), [number + 7 * index for index in range(len(items))]))
    if kit.facts.lead is None and kit.chance(0.5):
        after.append(lead_column(kit, items, facts))
    if kit.facts.minimum_kg is None and kit.chance(0.25):
        after.append(minimum_column(kit, items, facts))
    if kit.chance(0.2):
        unit = '"' if kit.us else " mm"
        after.append(
            Column(
                "width",
                kit.head("width"),
                [f"{kit.pick((40, 36, 52)) if kit.us else kit.pick((700, 920, 1020))}{unit}" for _ in items],
            )
        )
    if kit.chance(0.15):
        after.append(
            Column(
                "stock", kit.head("stock"), [f"{kit.rng.randint(2, 40)} {'rolls' if kit.us else 'pal'}" for _ in items]
            )
        )
    return before, after


def lead_column(kit: Kit, items: list[Board], facts: list[RowFacts], unread: float = 0.08) -> Column:
    cells = []
    for fact in facts:
        words, days = kit.lead(unread=kit.chance(unread))
        cells.append(words)
        fact.over["lead"] = days
        if days is None:
            fact.notes.append("lead-time-unread")
    return Column("lead", kit.head("lead"), cells)


def minimum_column(kit: Kit, items: list[Board], facts: list[RowFacts]) -> Column:
    cells = []
    for fact in facts:
        words, kg = kit.mass()
        cells.append(words)
        fact.over["minimum_kg"] = kg
    return Column("minimum", kit.head("minimum"), cells)


def fill_down(sheet: SheetPlan, column: Column, placed: Placed, merged: bool) -> None:
    """Merge a written-once column's groups, where the table has no gaps."""
    if not merged:
        return
    starts = [index for index, cell in enumerate(column.cells) if cell is not None]
    for start, end in zip(starts, [*starts[1:], len(column.cells)], strict=True):
        rows = placed.rows[start:end]
        if rows[-1] - rows[0] == len(rows) - 1:
            sheet.merge(rows[0], placed.columns[column.key], rows[-1], placed.columns[column.key])


def groups(items: list[Board]) -> list[list[Board]]:
    """Runs of boards called the same."""
    return [list(run) for _, run in groupby(items, key=lambda item: item.words)]


def simple_table(
    kit: Kit,
    sheet: SheetPlan,
    top: int,
    left: int,
    items: list[Board],
    basis: str,
    *,
    head: str | None = None,
    once: bool = False,
    merged: bool = False,
    textual: bool | None = None,
    gaps: set[int] = frozenset(),
    extras: bool = True,
    product: bool = True,
    currency: str | None = None,
    prices: list[Decimal] | None = None,
    notes: tuple[Any, ...] = (),
) -> Placed:
    """One offer a row, all accepted: board, caliper, weight, price and perhaps more columns."""
    plan: FilePlan = kit.plan
    facts = [RowFacts() for _ in items]
    before, after = extra_columns(kit, items, facts) if extras else ([], [])
    textual = kit.chance(0.25) if textual is None else textual
    boards = [product_column(kit, items, once)] if product else []
    size = [caliper_column(kit, items, textual), weight_column(kit, items, textual and kit.chance(0.5))]
    if kit.chance(0.3):
        size.reverse()
    prices = prices or [kit.price(item, basis, currency) for item in items]
    price = price_column(kit, prices, kit.price_head(basis, currency) if head is None else head)
    placed = place(sheet, top, left, [*before, *boards, *size, price, *after], gaps)
    if boards and once:
        fill_down(sheet, boards[0], placed, merged)
    for row, item, amount, fact in zip(placed.rows, items, prices, facts, strict=True):
        intent = kit.intent(item, amount, basis, **({"currency": currency} if currency else {}), **fact.over)
        plan.accept(sheet, row, placed.columns["price"], intent, (*notes, *fact.notes))
    return placed
