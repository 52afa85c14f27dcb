"""What one cell element of an xlsx sheet stores (ECMA-376 Part 1, 18.3.1.4 and 18.18.11)."""

import math
from dataclasses import dataclass, field
from datetime import datetime

from tracker.intake.files.cell_values import clean, unescaped
from tracker.intake.files.cells import (
    GENERAL,
    Stored,
    Style,
    calculates_to_nothing,
    error_cell,
    formula_without_value,
    written_date,
)


@dataclass(slots=True)
class SheetContext:
    """What the sheets of one workbook share."""

    strings: list[Stored] = field(default_factory=list)
    styles: list[Style] = field(default_factory=list)
    epoch_1904: bool = False

    def style(self, index: str | None) -> Style:
        """The style that a cell refers to; without one the workbook's first, the default of ECMA-376."""
        number = int(index) if index is not None and index.isascii() and index.isdigit() else 0
        return self.styles[number] if number < len(self.styles) else GENERAL


def stored_value(
    kind: str, raw: str, formula: str | None, inline: Stored | None, context: SheetContext
) -> Stored | None:
    """One cell's content from its type, its `v` and `f` texts and its inline string; None for an empty cell.

    `formula` is None where the cell has none. A formula whose result is missing was never calculated, and so was one
    whose result is an empty text that it cannot come to. ValueError for a shared string that is not a number.
    """
    if kind == "e":
        return error_cell(raw or "#VALUE!")
    value = _plain_value(kind, raw, inline, context)
    if formula is not None and (value is None or (isinstance(value, str) and not value.strip())):
        return None if kind == "str" and calculates_to_nothing(formula) else formula_without_value(clean(formula))
    return value


def _plain_value(kind: str, raw: str, inline: Stored | None, context: SheetContext) -> Stored | None:
    if kind == "inlineStr":
        return inline
    if kind == "str":
        return clean(unescaped(raw))
    if not raw:
        return inline
    if kind == "s":
        index = int(raw)
        return context.strings[index] if 0 <= index < len(context.strings) else None
    if kind == "b":
        return raw.strip() in ("1", "true")
    return _date(raw) if kind == "d" else number_or_text(raw)


def number_or_text(raw: str) -> Stored:
    """A stored number; what is none (a damaged file, 'INF') stays text so that nobody reads a figure into it."""
    try:
        number = float(raw)
    except ValueError:
        return clean(raw)
    return number if math.isfinite(number) and "_" not in raw else clean(raw)


def _date(raw: str) -> Stored:
    try:
        return written_date(datetime.fromisoformat(raw.strip()).replace(tzinfo=None))
    except ValueError:
        return clean(raw)
