"""Titles that say nothing but which board a table holds: 'II. Sheets', 'Board in rolls'."""

from collections.abc import Iterator

from tracker.intake.offers.notes.scope import Scope
from tracker.intake.offers.notes.subjects import LIST_MARK
from tracker.intake.values.boards.board_words import names_board_and_price
from tracker.intake.values.firms.company import company_name
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.prices.amounts_named import names_amount


def titles_of_boards(scope: Scope) -> Iterator[str]:
    """Those over a table, the nearest first; of the sheet's other texts above it only where no other table has offers:
    'Sheets' over a line of terms."""
    for level in scope.levels:
        if level.name == "title" or (level.name == "sheet" and level.board):
            yield from (words.text for words in reversed(level.texts_above) if _titles_boards(words.text))


def _titles_boards(text: str) -> bool:
    """'Board in rolls' and 'Ferrowick Board Inc - Sheets, USD per MSF'; 'Sheets on request', 'For sheets add $60/ST'
    and 'Sheet prices on page 2' over a table speak of sheets because its rows are none."""
    mark = LIST_MARK.match(text)
    words = text[mark.end() :] if mark is not None else text
    firm = company_name(words)
    words = words.replace(firm, " ") if firm else words
    return names_board_and_price(words) and not (names_amount(words) or find_masses(words))
