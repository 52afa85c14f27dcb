"""Whether what a text says of money is said of all prices, of some kind of them, or gives way to what is nearer."""

import re
from collections.abc import Iterator

from tracker.intake.values.prices.units_in_doubt import names_buyers_country
from tracker.intake.values.prices.units_of_parts import parts_named
from tracker.intake.words.lists import phrases, without_words
from tracker.intake.words.phrases import tokens_of

_CLOSE = 3
"""Words between 'except' and 'sheets'."""


def names_all_prices(text: str) -> bool:
    """'All prices in US dollars'; what a table's own title says of its prices is heard where that table is read."""
    return bool(phrases("all_of_them").find(text) and phrases("price_words").find(text))


def of_all_prices(words: str, unit: str) -> bool:
    """'All prices in Canadian dollars': of the prices under a head that says 'US$' too, whatever another head says. A
    list 'all per tonne' still has a line of sheets."""
    return names_all_prices(words) and of_these_prices(words) and not is_of_that_unit(words, unit)


def of_these_prices(words: str) -> bool:
    """'Invoices can be paid in CAD' and 'prices per MSF on request' speak of others."""
    return bool(phrases("price_words").find(words)) and not phrases("no_price").find(words)


def of_some_invoices(words: str, money: str) -> bool:
    """'For export we invoice in euro or dollars by agreement', 'Canadian customers are invoiced in CAD', 'invoices in
    sterling are issued in Leeds': of some buyers alone, and not 'prices and invoices in EUR' nor 'we invoice in CAD',
    which may be meant of every price, nor 'GD2 comes from Sweden and is invoiced in SEK'."""
    if phrases("price_words").find(words):
        return False
    said = phrases("invoices").find(words)
    apart = any(match.value == "goods" for match in phrases("sold_apart").find(words))
    some = apart or any(match.value == "some" for match in said) or names_buyers_country(words)
    issued = any(match.value == "issued" for match in phrases("invoices").find(words.partition(money)[2]))
    return any(match.value == "any" for match in said) and (some or issued)


def is_of_that_unit(words: str, unit: str) -> bool:
    """'All prices per short ton are rounded' tells of those per short ton what they are, and not what all are per."""
    if not phrases("price_words").find(words.partition(unit)[0]):
        return False
    behind = words.partition(unit)[2]
    return bool(phrases("tells_of_prices").at(tokens_of(behind), 0))


def excepts(text: str, parts: frozenset[str]) -> bool:
    """'All prices per short ton except sheets', 'Bogen ausgenommen': of these forms and markets, and of no others that
    the prices may be of, it says nothing at all; 'except sheets of stock sizes' leaves out some of them."""
    return bool(parts) and any(left and parts <= left for left in parts_excepted(text))


def parts_excepted(text: str) -> Iterator[frozenset[str]]:
    """The forms and markets of each exception that names nothing else."""
    for match in phrases("exceptions").find(text):
        behind = _STOP.split(text[match.end :].strip(), maxsplit=1)[0]
        if not _without_parts(behind):
            yield parts_named(behind)
    for match in phrases("excepted_behind").find(text):
        ahead = _STOP.split(text[: match.start].strip())[-1]
        if not _without_parts(ahead):
            yield parts_named(ahead)


_STOP = re.compile(r"[,;:()\[\].]|\s[–—-]\s")


def _without_parts(text: str) -> str:
    """What else is said beside forms, markets and small words."""
    return without_words(text, "forms", "list_parts", "articles", "and_words").strip()


def leaves_out(text: str, parts: frozenset[str]) -> bool:
    """'All prices per short ton except sheets' leaves the unit of sheets, and of what may be sheets, to what stands
    over it; `parts`: the forms and markets that the prices are known to be of."""
    for match in phrases("exceptions").find(text):
        behind = " ".join(text[match.end :].split()[:_CLOSE])
        left = parts_named(behind)
        if left and (not parts or left & parts):
            return True
    return False
