"""Sentences that end with the prices below them: 'Add freight at $46 per ton on every item below'. Over all prices that
says no more than 'on every item', while 'on orders below 10 t' is a limit."""

import re
from collections.abc import Iterator

from tracker.intake.words.lists import joined, phrases
from tracker.intake.words.phrases import Found, blanked, tokens_of

_END = re.compile(r"\s*(?:[.;!)]|$)")


def ends_below(text: str) -> list[Found[str]]:
    """The words for the prices below that end a sentence, behind or with one of all of them."""
    found = phrases("prices_below").find(text)
    return [match for match in found if _END.match(text, match.end) and _of_all(text[: match.end])]


def without_below(text: str) -> str:
    """A text with blanks for the words of place at the end of a sentence."""
    spans = [span for match in ends_below(text) for span in _place(text, match)]
    return blanked(text, spans) if spans else text


def _place(text: str, match: Found[str]) -> Iterator[tuple[int, int]]:
    """The 'listed below' of 'prices listed below', the 'untenstehenden' of 'untenstehenden Positionen'."""
    for _, start, end in tokens_of(text[match.start : match.end]):
        word = text[match.start + start : match.start + end]
        if all(phrases(section).whole(word) is None for section in _THINGS):
            yield match.start + start, match.start + end


_THINGS = ("price_words", "every_board", "board_nouns", "articles")
"""What a list holds, and words before it."""


def _of_all(ahead: str) -> bool:
    """'Sur tous les articles ci-dessous', 'on every item below', 'på alla artiklar nedan'."""
    every = joined("all_of_them", "made_up.each").find(ahead)
    return bool(every) and len(ahead[every[-1].end :].split()) <= _FURTHEST


_FURTHEST = 4
"""Words from 'all' to the end of 'items listed below'."""
