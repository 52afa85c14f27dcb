"""Sentences about others who sell board: 'A competitor advertises GC2 at 1,199 euros, ex works' says nothing of the
prices of the list that it stands in, neither of their currency nor of freight or times."""

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import lru_cache

from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.prices.amounts_named import names_amount
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.prices.money import find_price_unit
from tracker.intake.words.lists import joined, phrases
from tracker.intake.words.phrases import Found, tokens_of

_AHEAD, _OURS = "ahead", "ours"
"""Keys of the word list: words before the name of such others, and for the vendor himself."""
_SOME, _MARKET = "any", "market"
"""Others who sell, with terms of their own; and the market, which has prices at most."""
_PRICE, _LINKS = "price", "links"
_LEADING = (_AHEAD, _LINKS, _OURS)
_FEWEST = 5
"""Words of a sentence; what has less is a title or a label."""


@lru_cache(maxsize=8192)
def without_competitors(text: str) -> str:
    """A text without what it says of competitors, of other mills and of the market; '' where it says no more.

    A part between commas is about them where they are its subject, and so are those behind it that have none of their
    own: 'The competition sells ex works, delivered in two weeks, we deliver free' leaves 'we deliver free', and 'The
    market is firm, prices are in Canadian dollars' leaves the prices. 'Unlike our competitors we deliver free' is about
    the vendor himself.
    """
    if not any(match.value in (_SOME, _MARKET) for match in phrases("competitors").find(text)):
        return text
    told = clauses(text)
    left = [clause if _is_short(clause) or _heads_a_list(clause) else _own_parts(clause) for clause in told]
    return text if left == told else ". ".join(filter(None, left))


def _is_short(clause: str) -> bool:
    return len(clause.split()) < _FEWEST


def _heads_a_list(clause: str) -> bool:
    """'Mercado nacional - EUR/t, portes incluidos': the market that a list is for, and behind a stop what its prices
    are in. 'Le marché intérieur est ferme, franco' and 'Market price - EUR/t, delivered' are about the market."""
    market, stop, behind = _behind_market(clause)
    unit = find_price_unit(COMMA.split(behind)[0]) if stop else None
    whole = unit is not None and unit.currency is not None and unit.basis is not None
    called = bool(joined(*_MARKETS).find(market)) and not phrases("price_words").find(market)
    return whole and called and not rest_of(market, (), *_OF_MARKETS, *_MARKETS) and not names_amount(clause)


_MARKETS = ("list_parts.export", "list_parts.home", "whole_markets")
_OF_MARKETS = ("competitors.market", "competitors.ahead")


def _behind_market(clause: str) -> tuple[str, str, str]:
    """What stands before the first dash, colon or bracket, that sign, and what stands behind."""
    stop = _STOP.search(clause)
    return (clause, "", "") if stop is None else (clause[: stop.start()], stop[0], clause[stop.end() :])


_STOP = re.compile(r"\s[-–—]\s|:\s|\s\(")


@dataclass(frozen=True, slots=True)
class _Theirs:
    """A part about others: who they are, its words, whether it names an amount of money, and whether what stands
    behind it went on about them."""

    who: str
    words: str
    priced: bool
    goes_on: bool = False


def _own_parts(clause: str) -> str:
    kept: list[str] = []
    theirs: _Theirs | None = None
    for part in _parts(clause):
        who = _begins_with(part)
        if who in (_SOME, _MARKET):
            theirs = _Theirs(who, part, names_amount(part))
        elif theirs is None or who == _OURS or _is_ours(part):
            theirs = None
            kept.append(part)
        else:
            left = list(_of_whom(part, theirs))
            theirs = theirs if left else replace(theirs, goes_on=True)
            kept += left
    return clause if len(kept) == len(_parts(clause)) else ",".join(kept).strip(" ,")


def _of_whom(part: str, before: _Theirs) -> Iterator[str]:
    """What a part behind one about others leaves for these prices.

    Whoever tells what others ask may go on with their terms: only what has prices for its subject is the vendor's then.
    The market alone has none to go on with, but for what has no subject either: 'Market price for CUK is up, freight
    included'. Behind 'Other mills are sold out' a lead time is the vendor's or theirs, and is left one sentence with
    it, which gives none for certain.
    """
    topic = _topic(part)
    if _is_freight_of(part, before) and not (topic == _PRICE and before.who == _SOME):
        topic = None
    if topic == _PRICE or (before.who == _MARKET and not before.priced and topic is not None):
        yield part
    elif not before.priced and topic is not None:
        yield f"{part} … {before.words.strip()}"
    elif not (before.priced or before.goes_on) and _is_only_a_unit(part):
        yield part


def _is_freight_of(part: str, before: _Theirs) -> bool:
    """The 'freight included' of 'Market price for CUK is up, freight included' and of 'competitors ship in 6 weeks,
    freight included'; a charge of some amount is the vendor's."""
    theirs = before.who == _SOME or bool(phrases("price_words").find(before.words))
    return theirs and find_delivery(part) is not None and not names_amount(part)


def _is_only_a_unit(part: str) -> bool:
    """'USD per short ton' behind a comma is what a title ends in."""
    return bool(find_currencies(part)) and not rest_of(part, (), "currency", "basis", "per")


def _parts(clause: str) -> list[str]:
    """The parts between commas, and those that 'and' or 'so' links to them where they have a topic of their own."""
    return [piece for part in COMMA.split(clause) for piece in _unlinked(part)]


def _unlinked(part: str) -> list[str]:
    pieces, start = [], 0
    for match in phrases("own_subjects").find(part):
        if match.value == _LINKS and match.start > start and _topic(part[match.start :]) is not None:
            pieces.append(part[start : match.start])
            start = match.start
    return [*pieces, part[start:]]


def _is_ours(part: str) -> bool:
    """'Our lead time is 8 weeks' says whose it is."""
    first = [match.value for match in _subjects(part)]
    return _OURS in first and first[-1] not in _LEADING


def _topic(part: str) -> str | None:
    """What of the vendor's own terms a part begins with, behind articles and the like; None for anything else."""
    last = next(reversed(list(_subjects(part))), None)
    return None if last is None or last.value in _LEADING else last.value


def _subjects(part: str) -> Iterator[Found[str]]:
    """The words that a part begins with, up to its subject."""
    found = tokens_of(part)
    match = phrases("own_subjects").at(found, 0)
    while match is not None:
        yield match
        match = phrases("own_subjects").at(found, match.after) if match.value in _LEADING else None


def _begins_with(part: str) -> str | None:
    """Whom the part is about by its first words, behind articles and the like."""
    ends = 0
    for match in phrases("competitors").find(part):
        if _WORD.search(part[ends : match.start]) is not None:
            return None
        if match.value != _AHEAD:
            # 'Am Markt 12' is where somebody lives.
            return None if part[match.end :].lstrip()[:1].isdigit() else match.value
        ends = match.end
    return None


_WORD = re.compile(r"[^\W_]")
