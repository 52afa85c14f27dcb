"""What files pick up on their way and what changes no meaning: stray spaces, a margin, formatted empty cells."""

import random
import re
from typing import Any

from tests.corpus.model import CellPlan, FilePlan, a1

NO_BREAK = "\u00a0"


def weather(plan: FilePlan, rng: random.Random, is_csv: bool) -> None:
    """Change looks here and there; truth moves along with its cells."""
    if plan.raw is not None or plan.bulk:
        return
    if rng.random() < 0.3:
        _stray_spaces(plan, rng, is_csv)
    if not is_csv and rng.random() < 0.25:
        _margin(plan, rng.randint(0, 4), rng.randint(0, 3))
    if not is_csv and rng.random() < 0.2:
        _formatted_empty_cells(plan, rng)


def _stray_spaces(plan: FilePlan, rng: random.Random, is_csv: bool) -> None:
    for sheet in plan.sheets:
        for cell in sheet.cells.values():
            if not isinstance(cell.value, str) or rng.random() > 0.3:
                continue
            kind = rng.choice(("after", "before", "double", "unbreakable"))
            if kind in ("after", "before"):
                cell.value = f"{cell.value} " if kind == "after" else f" {cell.value}"
            elif " " in cell.value:
                cell.value = cell.value.replace(" ", NO_BREAK if kind == "unbreakable" else "  ", 1)


def _margin(plan: FilePlan, down: int, right: int) -> None:
    for sheet in plan.sheets:
        sheet.cells = {(row + down, column + right): cell for (row, column), cell in sheet.cells.items()}
        sheet.merged = [(t + down, le + right, b + down, r + right) for t, le, b, r in sheet.merged]
        sheet.hidden_rows = {row + down for row in sheet.hidden_rows}
        sheet.hidden_columns = {column + right for column in sheet.hidden_columns}
        for cell in sheet.cells.values():
            if cell.formula:
                cell.formula = re.sub(r"[A-Z]+\d+", lambda found: _moved(found[0], down, right), cell.formula)
    for line in plan.lines:
        _move_line(line, down, right)


def _move_line(line: dict[str, Any], down: int, right: int) -> None:
    line["cell"] = _moved(line["cell"], down, right)
    if "also" in line:
        line["also"] = [_moved(cell, down, right) for cell in line["also"]]
    for other in line.get("or", []):
        _move_line(other, down, right)


def _moved(cell: str, down: int, right: int) -> str:
    letters = cell.rstrip("0123456789")
    column = 0
    for letter in letters:
        column = 26 * column + ord(letter) - 64
    return a1(int(cell[len(letters) :]) - 1 + down, column - 1 + right)


def _formatted_empty_cells(plan: FilePlan, rng: random.Random) -> None:
    """Cells below and right of the content that someone once formatted."""
    for sheet in plan.sheets:
        height, width = sheet.height, sheet.width
        for step in range(rng.randint(3, 12)):
            sheet.cells.setdefault((height + 2 + step, rng.randint(0, width + 2)), CellPlan(None, fmt="#,##0.00"))
