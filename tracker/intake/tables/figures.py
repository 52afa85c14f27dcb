"""Whether a cell holds a bare number, and which: in a CSV file, and in many a workbook, numbers are kept as text."""

from collections.abc import Iterable
from decimal import Decimal

from tracker.intake.grid import Cell
from tracker.intake.values.figures.formats import format_words, unit_of_format
from tracker.intake.values.figures.numbers import number_readings

__all__ = ["figure_of", "figures_by_row", "is_figure", "sure_figure"]


def is_figure(cell: Cell) -> bool:
    """A number, or a text that is one however it is read; '18 pt' and '$845' are none."""
    return figure_of(cell) is not None


def figure_of(cell: Cell) -> Decimal | None:
    """The number that a cell holds, the least where a text may be two ('1,105'); None where it is none."""
    return next(iter(_numbers(cell)), None)


def sure_figure(cell: Cell) -> Decimal | None:
    """The number that a cell holds; None where it is none or a text that may be two."""
    numbers = _numbers(cell)
    return numbers[0] if len(numbers) == 1 else None


def figures_by_row(cells: Iterable[Cell]) -> dict[int, Decimal]:
    """The certain numbers of a column's cells."""
    return {cell.row: figure for cell in cells if (figure := sure_figure(cell)) is not None}


def _numbers(cell: Cell) -> list[Decimal]:
    if isinstance(cell.value, Decimal):
        return [cell.value]
    return [reading.value for reading in number_readings(cell.text)] if isinstance(cell.value, str) else []


def as_formatted(cell: Cell) -> str:
    """A figure with what its format alone shows: 0.035 as '3.5 %', 2.35 as '2.35 $/cwt'; any other cell's text."""
    if not isinstance(cell.value, Decimal) or cell.number_format in ("", "General"):
        return cell.text.strip()
    if "%" in cell.number_format:
        return f"{(cell.value * 100).normalize():f} %"
    unit = unit_of_format(cell.number_format)
    words = format_words(cell.number_format) if unit is not None and unit.currency is not None else ""
    return f"{cell.text.strip()} {words}" if words and words not in cell.text else cell.text.strip()


def sure_share(cell: Cell) -> Decimal | None:
    """The figure of a discount, '12 %' as 12."""
    bare = cell.text.strip().removesuffix("%").rstrip()
    told = isinstance(cell.value, str) and bare != cell.text.strip()
    return sure_figure(cell._replace(value=bare, text=bare) if told else cell)
