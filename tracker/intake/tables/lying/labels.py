"""Cells that name what stands beside them: the labels of forms and of tables on their side."""

from functools import lru_cache

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import head_of_words, may_name, without_footnote
from tracker.intake.values.prices.basis import basis_text
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
