"""Cells that name what stands beside them: the labels of forms and of tables on their side."""

from functools import lru_cache

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import Head, head_of, head_of_words, may_name, without_footnote
from tracker.intake.values.changes.totals import is_total
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.prices.basis import basis_text
from tracker.intake.values.prices.tax import tax_included
from tracker.intake.words.lists import phrases

LONGEST_LABEL = 40


def is_label(cell: Cell | None) -> bool:
    """Whether a cell names what stands beside it."""
    return cell is not None and isinstance(cell.value, str) and cell.fault is None and _labels(cell.text)


@lru_cache(maxsize=16384)
def _labels(text: str) -> bool:
    words = without_footnote(text)
    if len(text) >= 60 or not may_name(words):
        return False
    head = head_of_words(words)
    # 'kg', 'tonelada' and 'mil m²' down a list are its prices' units.
    return head is not None and head.named and not head.answers_itself and basis_text(words) is None


@lru_cache(maxsize=16384)
def _names_a_form(text: str) -> bool:
    words = without_footnote(text)
    # Asked first because it is sooner told than the whole head, and nearly no text passes.
    if len(text) > LONGEST_LABEL or phrases("basis").whole(words) not in ("roll", "sheet"):
        return False
    head = head_of_words(words)
    return head is not None and head.across == "form"


def is_form(cell: Cell | None) -> bool:
    """'Reels' or 'Sheets' and no more."""
    return cell is not None and isinstance(cell.value, str) and _names_a_form(cell.text)


def heads_prices(head: Head) -> bool:
    """A word for a price, or the form of board that one is for."""
    return head.price or head.across == "form"


def names_a_price(label: Cell) -> bool:
    """'Total TTC' and 'Net total' at the foot of a list sum it up, and price no board."""
    head = head_of(label)
    sums = tax_included(label.text) or (head is not None and head.role is Role.NET_PRICE and is_total(label.text))
    return head is not None and heads_prices(head) and not sums
