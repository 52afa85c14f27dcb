"""Lines of measures under a key of their units: 'g/m² / µm / Format in cm' below the header, and '250 / 400 / 72 x 102'
below each board."""

import re
from collections.abc import Sequence
from dataclasses import replace

from tracker.intake.grid import Cell
from tracker.intake.tables.view import View
from tracker.intake.values.boards.caliper import caliper_unit
from tracker.intake.values.boards.weight import weight_units
from tracker.intake.values.figures.sheetsize import length_unit, sheet_text
from tracker.intake.words.lists import phrases

_BETWEEN_UNITS = re.compile(r"\s+[/|·–-]\s+|\s*[|;]\s*")
_BETWEEN_FIGURES = re.compile(r"\s*[/|;·]\s*|\s+[–-]\s+")
_FIGURE = re.compile(r"\d+(?:[.,]\d+)?")
_FEWEST = 2
_SECTIONS = ("weight_units", "caliper_units", "length_units")


def with_measures_written_out(view: View, rows: Sequence[int]) -> tuple[View, list[int]]:
    """The view with each figure of such lines behind its unit, without the key, and the rows that are left."""
    if view.passing or not rows:
        return view, list(rows)
    key = rows[0]
    cells = list(view.rows[key].values())
    units = _units(cells[0].text) if len(cells) == 1 else ()
    if not units:
        return view, list(rows)
    written, below = {}, list(view.down(cells[0].column, rows[1:]))
    for row, cell in below:
        text = _written_out(cell, units)
        if text is not None:
            written[row] = {**view.rows[row], cell.column: cell._replace(value=text, text=text)}
    # One line is enough where no other stands below the key.
    if not written or len(written) < min(_FEWEST, len(below)):
        return view, list(rows)
    left = {row: written.get(row, said) for row, said in view.rows.items() if row != key}
    return replace(view, rows=left), [row for row in rows if row != key]


def _units(text: str) -> tuple[str, ...]:
    """The unit of each part of a key; () where a part has a figure or names none."""
    parts = _BETWEEN_UNITS.split(text.strip())
    units = tuple(map(_unit, parts)) if len(parts) >= _FEWEST and not any(map(str.isdecimal, text)) else ()
    return units if all(units) else ()


def _unit(part: str) -> str:
    if not (len(weight_units(part)) == 1 or caliper_unit(part) is not None or length_unit(part) is not None):
        return ""
    found = [match for section in _SECTIONS for match in phrases(section).find(part)]
    # The 'in' of 'Format in cm' is no inch.
    last = max(found, key=lambda match: (match.end, match.end - match.start), default=None)
    return part[last.start : last.end] if last is not None else part.split()[-1]


def _written_out(cell: Cell, units: Sequence[str]) -> str | None:
    """'250 g/m², 400 µm, 72 x 102 cm'; None for a cell that does not say one figure or sheet for each of the units."""
    parts = _BETWEEN_FIGURES.split(cell.text.strip()) if isinstance(cell.value, str) else []
    if len(parts) != len(units) or not all(_FIGURE.fullmatch(part) or sheet_text(part) for part in parts):
        return None
    return ", ".join(f"{part} {unit}" for part, unit in zip(parts, units, strict=True))
