"""Offers in a letter: one line of text that names a board and ends with its price, or with the figure beside it.

Such a line is laid out as two cells, the board and the price, that keep the address they have in the sheet.
"""

import re
from dataclasses import dataclass
from decimal import Decimal
from functools import lru_cache

from tracker.intake.grid import Cell
from tracker.intake.tables.headerless.item_marks import item_marks
from tracker.intake.tables.view import View
from tracker.intake.values.boards.caliper import find_calipers
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.boards.weight import find_weights
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.prices.money import price_text
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency, price_says
from tracker.intake.values.prices.price_within import BREAK, LONGEST_PRICE, plain_price, prices_within
from tracker.intake.words.lists import phrases

MARK = 2
"""The column of what numbers the lines."""
_FIGURE_AT_END = re.compile(r"(?::|\s[-–—=])\s+(\d[\d.,' ]*)\s*\.?$")


@dataclass(frozen=True, slots=True)
class Spoken:
    """The lines of a sheet that are offers, as rows of two cells; `head`: the sentence that says what bare figures at
    their ends are, where one does."""

    rows: View
    head: Cell | None


def spoken_offers(view: View) -> Spoken | None:
    """The lines of a sheet that are offers; None where there are none."""
    marks = item_marks(view)
    alone = [
        cell for row in view.order if len(view.rows[row]) == 1 or row in marks
        for cell in view.rows[row].values() if isinstance(cell.value, str) and cell != marks.get(row)
    ]  # fmt: skip
    # A line that is an offer itself ('… at GBP 1,000.00 per tonne') says nothing of the figures in others.
    heads = (cell for cell in alone if _says_what_figures_are(cell.text) and parted_offer(cell.text) is None)
    head = next(heads, None)
    rows = _figures_below(view, head) if head is not None else {}
    for cell in alone:
        below = head is not None and cell.row > head.row
        parted = parted_offer(cell.text) or (_bare(cell.text) if below else None)
        if parted is not None:
            board, price = parted
            rows[cell.row] = {0: cell._replace(value=board, text=board), 1: cell._replace(value=price, text=price)}
            if cell.row in marks:
                rows[cell.row][MARK] = marks[cell.row]
    if not rows:
        return None
    return Spoken(View(view.sheet, rows, (), view.hidden_rows, frozenset(), view.hidden), head)


def _figures_below(view: View, head: Cell) -> dict[int, dict[int, Cell]]:
    """Rows of a board in words and one bare figure, below the sentence that says what the figures are."""
    pairs = {row: sorted(view.rows[row].items()) for row in view.order if row > head.row and len(view.rows[row]) == 2}
    return {
        row: {0: board, 1: figure}
        for row, ((_, board), (_, figure)) in pairs.items()
        if isinstance(board.value, str) and _is_board(board.text) and _is_figure(figure)
    }


def _is_figure(cell: Cell) -> bool:
    """A number, also one kept as text ('845,00')."""
    if isinstance(cell.value, Decimal):
        return True
    said = price_text(cell.text) if isinstance(cell.value, str) else None
    return said is not None and bool(said.amounts) and not said.rest


@lru_cache(maxsize=8192)
def parted_offer(text: str) -> tuple[str, str] | None:
    """A line parted into the board and the price: 'SBS C1S 18 pt – $1,145/ST'. None unless it names both in full.

    What a price goes up by, and what comes on top of it, is no price: 'SBS 18 pt: add $20/ton'.
    """
    if phrases("price_moves").find(text) or phrases("additions").find(text):
        return None
    for match in BREAK.finditer(text, max(0, len(text) - LONGEST_PRICE)):
        board, price = text[: match.start()], text[match.end() :]
        if plain_price(price) is not None and _is_board(board):
            # 'Reels $1,190, sheets $1,260/ST' names two prices, and neither is the one.
            if next(prices_within(board, unit=False), None) is not None:
                return None
            return board.strip(" -–—•*"), price.strip().rstrip(".")
    return _priced_within(text) or _priced_by(text)


def _priced_by(text: str) -> tuple[str, str] | None:
    """'GD2 450 g/m² 590 µm  £860 - £895 depending on reel width': a range, or a price with its condition, which is
    asked about and not left out."""
    for match in phrases("goes_by").find(text):
        parted = parted_offer(text[: match.start].rstrip(" ,(–-"))
        if parted is not None:
            board, price = parted
            said = price_text(price)
            return board, price if said is not None and said.is_range else text[text.rfind(price) :]
    return None


_FEW_WORDS = 6
"""More words behind a price tell a story, and no board."""


def _priced_within(text: str) -> tuple[str, str] | None:
    """'SBS C1S 16 pt 68# $1,190/ton 40" rolls': the one price in a line, and the board that is told around it."""
    if len(find_currencies(text)) != 1:
        return None
    for before, start, end, after in prices_within(text):
        comma = "," if "," in text[end:after] else ""
        board = f"{text[:before]}{comma} {text[after:]}"
        if len(text[after:].split()) <= _FEW_WORDS and _is_board(board):
            return board.strip(" -–—•*"), text[start:end].strip()
    return None


def _says_what_figures_are(text: str) -> bool:
    """'Our prices, in US dollars per short ton, are:' names both money and unit."""
    said = tuple(price_says(text))
    return any(isinstance(one, SaysCurrency) for one in said) and any(isinstance(one, SaysBasis) for one in said)


def _bare(text: str) -> tuple[str, str] | None:
    """'14 pt SBS C1S, 58 lb/MSF: 1225': the board and a figure behind a colon or dash."""
    found = _FIGURE_AT_END.search(text)
    if found is None or not _is_board(text[: found.start()]):
        return None
    said = price_text(found[1])
    return (text[: found.start()].strip(" -–—•*"), found[1]) if said is not None and said.amounts else None


def _is_board(text: str) -> bool:
    """A grade and a measure; both measures beside a name that nobody knows, which is asked about."""
    grade = find_grade(text)
    thick, heavy = bool(find_calipers(text)), bool(find_weights(text))
    named = grade is not None and bool(grade.grades or grade.words)
    return thick and heavy if not named else thick or heavy
