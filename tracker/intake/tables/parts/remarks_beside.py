"""Remarks on boards in a column of their own, with an empty one before it and no head: 'Lead time 4 weeks' beside one
board and 'Delivered' beside the next are each said of that board."""

from tracker.intake.tables.figures import is_figure
from tracker.intake.tables.view import View
from tracker.intake.values.boards.legends import LegendEntry
from tracker.intake.values.firms.company import company_name
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.notes.statements import SaysMinimum, SaysWeightBasis, statements
from tracker.intake.values.orders.minimum import LeastUnread
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.lead_unread import LeadUnread
from tracker.intake.values.times.validity import Validity
from tracker.intake.words.lists import joined

_FEWEST_FIGURES = 2
"""Of a board in its row: its size or weight, and its price."""
_LONGEST = 60
_TERMS = (Delivery, LeadTime, LeadUnread, Validity, ChargeWords, SaysMinimum, LeastUnread)
_OF_HEADS = (SaysBasis, SaysCurrency, SaysWeightBasis, LegendEntry)
"""What is said of columns, and of every row in them."""
_OF_ALL = ("all_of_them", "price_words", "price_lists", "list_names", "these_prices")


def remarks_rows(part: View, view: View) -> bool:
    """Whether a stretch of words right of a table holds such remarks: each beside a board, none said of all prices, and
    terms among them. A key of the heads ('P.U.: € / 1000 kg') and a list of terms, each behind its label, are none."""
    columns = {column for cells in part.rows.values() for column in cells}
    if len(columns) != 1:
        return False
    (column,) = columns
    texts = [part.rows[row][column].text for row in part.order]
    if not all(_is_of_a_board(view, row, column) for row in part.order):
        return False
    if any(map(_is_of_all, texts)) or _are_labelled(texts):
        return False
    return 2 * sum(any(isinstance(one, _TERMS) for one in statements(text)) for text in texts) >= len(texts)


def _is_of_all(text: str) -> bool:
    if len(text) > _LONGEST or joined(*_OF_ALL).find(text) or company_name(text):
        return True
    return any(isinstance(one, _OF_HEADS) for one in statements(text))


def _are_labelled(texts: list[str]) -> bool:
    """'Delivery: ex works' over 'Lead time: 4 weeks': each term once, behind a label of its own."""
    labels = [text.partition(":")[0].strip().casefold() for text in texts if ":" in text]
    return len(texts) > 1 and len(labels) == len(texts) == len(set(labels))


def _is_of_a_board(view: View, row: int, column: int) -> bool:
    left = [cell for at, cell in view.rows[row].items() if at < column]
    # '18 pt' measures it, too.
    told = sum(is_figure(cell) or any(map(str.isdigit, cell.text)) for cell in left)
    return told >= _FEWEST_FIGURES and any(map(is_figure, left))
