"""Of what a sentence says that it is delivered or collected: of the goods of the list, or of a machine, a file, an
order of last year."""

import re

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import blanked


def tells_of_other_things(clause: str, said: Delivery) -> bool:
    """'The new machine will be delivered in spring', 'Your last order was delivered on 4 May', 'Empties are collected':
    what all prices include does not follow from that. 'All board is delivered' tells it."""
    if phrases("done_words").whole(said.words) is None or _speaks_of_freight(clause):
        return False
    start = clause.find(said.words)
    ahead = COMMA.split(clause[:start])[-1]
    if any(
        match.value == "anywhere" or match.end == len(ahead.rstrip()) for match in phrases("past_verbs").find(ahead)
    ):
        return True
    verb = next(iter(phrases("is_done").find(ahead)), None)
    placed = _PLACE.match(clause[start + len(said.words) :]) is not None
    return verb is not None and not placed and not _is_of_the_list(ahead[: verb.start])


_PLACE = re.compile(r"\s+(?:[^\W\d]{1,4}\s+)?[A-ZÄÖÜÅÉ][^\W\d]*[a-zà-ÿ]")
"""'Delivered Montréal', 'delivered to Sparks'."""


def _speaks_of_freight(clause: str) -> bool:
    return any(phrases(words).find(clause) for words in ("price_words", "carriage", "to_the_buyer"))


def _is_of_the_list(subject: str) -> bool:
    """'All board', 'SBS', 'orders', 'they', or nothing at all."""
    rest = blanked(subject, (match.span for match in phrases("articles").find(subject))).strip(" ,:–-•*")
    every = [
        match
        for match in phrases("all_goods").find(rest)
        if phrases("all_of_them").whole(_of(rest, match.span)) is None
    ]
    ordered = any(match.value == "any" for match in phrases("ordered").find(rest))
    named = any(phrases(section).find(rest) for section in _GOODS)
    pronoun = phrases("all_goods").whole(rest) is not None or phrases("goods_meant").whole(rest) is not None
    named = named or any(match.value == "any" for match in phrases("goods_meant").find(rest))
    return not rest or bool(every) or ordered or named or pronoun or find_grade(rest) is not None


def _of(text: str, span: tuple[int, int]) -> str:
    return text[span[0] : span[1]]


_GOODS = ("goods_delivered", "these_prices", "price_lists", "forms", "order_words", "wares", "board_goods")
