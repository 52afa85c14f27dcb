"""Offers in a letter: one line of text that names a board and ends with its price.

Such a line is laid out as two cells, the board and the price, that both keep the line's own address.
"""

import re
from functools import lru_cache

from tracker.intake.grid import Cell
from tracker.intake.tables.view import View
from tracker.intake.values.caliper import find_calipers
from tracker.intake.values.grade import find_grade
from tracker.intake.values.money import price_text
from tracker.intake.values.weight import find_weights

_BREAK = re.compile(
    r"[,;:]\s+|\s+[-–—@=]\s+|\s+(?=[^\w\s])|\s+(?=[A-Z]{3}\b)|\s+(?=[A-Z]{2}\$)|\s+(?:at|à|zu|a|till)\s+|\s+"
)


def spoken_offers(view: View) -> View | None:
    """The lines of a sheet that are offers, as rows of two cells; None where there are none."""
    rows: dict[int, dict[int, Cell]] = {}
    for row in view.order:
        cells = [cell for cell in view.rows[row].values() if isinstance(cell.value, str)]
        parted = parted_offer(cells[0].text) if len(cells) == 1 and len(view.rows[row]) == 1 else None
        if parted is not None:
            board, price = parted
            cell = cells[0]
            rows[row] = {0: cell._replace(value=board, text=board), 1: cell._replace(value=price, text=price)}
    if not rows:
        return None
    return View(view.sheet, rows, (), view.hidden_rows, frozenset(), view.hidden)


@lru_cache(maxsize=8192)
def parted_offer(text: str) -> tuple[str, str] | None:
    """A line parted into the board and the price: 'SBS C1S 18 pt – $1,145/ST'. None unless it names both in full."""
    for match in _BREAK.finditer(text):
        board, price = text[: match.start()], text[match.end() :]
        if _is_price(price) and _is_board(board):
            return board.strip(" -–—•*"), price.strip().rstrip(".")
    return None


def _is_price(text: str) -> bool:
    said = price_text(text.strip().rstrip("."))
    return said is not None and bool(said.amounts) and not said.rest and said.currency is not None


def _is_board(text: str) -> bool:
    grade = find_grade(text)
    measured = bool(find_calipers(text)) or bool(find_weights(text))
    return grade is not None and bool(grade.grades or grade.words) and measured
