"""Sheets of paper that hold prices: the 'feuille' of 'price page / feuille de prix' and the 'Blatt' of 'Preisliste /
Blatt 2' are what a list is written on, and no sheet of board that a price is for."""

from collections.abc import Sequence

from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Token


def is_of_paper(found: Sequence[Token], stroke: int, unit: int, after: int) -> bool:
    """Whether the sheet at the tokens from `unit` up to `after`, behind the stroke at `stroke`, holds prices: it is
    called so, or it is counted behind what a list or its page is called."""
    if phrases("papers_of_prices").at(found, unit) is not None:
        return True
    return found[stroke][0] == "/" and _is_numbered(found, after) and _names_a_paper(found[:stroke])


def _is_numbered(found: Sequence[Token], place: int) -> bool:
    """The 2 of 'sheet 2 of 3' and 'Blatt 2'; '2)' is the sign of a footnote and '70 x 100' a sheet of board."""
    number, *behind = [word for word, _, _ in found[place : place + 2]] or [""]
    return number.isdigit() and len(number) <= _MOST_FIGURES and (not behind or behind[0] in _GOES_ON)


_MOST_FIGURES = 2
_GOES_ON = frozenset({"of", "von", "de", "av", "sur", "/", ",", "("})


def _names_a_paper(ahead: Sequence[Token]) -> bool:
    """Whether the words before a stroke end in 'price list', 'tarif' or 'page'."""
    named = (
        phrases(section).at(ahead, place)
        for place in range(len(ahead))
        for section in ("list_names", "price_lists", "page_words")
    )
    return any(match is not None and match.after == len(ahead) for match in named)
