"""Of what a sentence says that it is delivered or collected: of the goods of the list, or of a machine, a file, an
order of last year."""

import re

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.words.lists import phrases, without_words


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
    rest = without_words(subject, "articles").strip(" ,:–-•*")
    every = phrases("all_goods").find(rest)
    goods = any(phrases("all_of_them").whole(rest[match.start : match.end]) is None for match in every)
    named = any(phrases(section).find(rest) for section in _GOODS)
    meant = any(match.value == "any" for section in _MEANT for match in phrases(section).find(rest))
    pronoun = any(phrases(section).whole(rest) is not None for section in ("all_goods", "goods_meant"))
    return not rest or goods or named or meant or pronoun or find_grade(rest) is not None


_MEANT = ("ordered", "goods_meant")
_GOODS = ("goods_delivered", "these_prices", "price_lists", "forms", "order_words", "wares", "board_goods")
