"""'Delivery is free' that holds for all of a list: 'Allt levereras fritt.', 'Prices in EUR/t, delivery free'.

Said of some orders, places or goods ('For orders of 5 t or more, delivery is free', 'In Bayern Lieferung frei', 'sample
delivery is free') it says nothing of all prices.
"""

import re

from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.prices.money import price_unit
from tracker.intake.words.lists import phrases, without_words
from tracker.intake.words.phrases import Found

_SENTENCE = re.compile(r"[.;](?=\s|$)")


def free_for_all(text: str) -> Found[str] | None:
    """The words that say so of all that a list sells, or None."""
    return next((said for said in phrases("delivered_free").find(text) if _of_all(text, said)), None)


def _of_all(text: str, said: Found[str]) -> bool:
    starts = [stop.end() for stop in _SENTENCE.finditer(text, 0, said.start)]
    stop = _SENTENCE.search(text, said.end)
    ahead = COMMA.split(text[starts[-1] if starts else 0 : said.start])
    behind = COMMA.split(text[said.end : stop.start() if stop is not None else len(text)])
    beside = (*ahead[:-1], *behind[1:])
    excepted = any(phrases(words).find(text[said.end :]) for words in ("exceptions", "excepted_behind"))
    return (
        not excepted
        and _tells_no_other_goods(ahead[-1])
        and not behind[0].strip(" )")
        and all(_tells_no_other_goods(part) or _of_something_else(part) for part in beside)
    )


def _tells_no_other_goods(part: str) -> bool:
    """'Wir', 'all our prices are with', 'EUR/t': nothing in it says that some orders, places or boards are meant."""
    rest = without_words(part, *_OF_ALL).strip(" ,:()–-")
    return not rest or price_unit(rest) is not None


_OF_ALL = (
    "these_prices", "all_prices", "all_goods", "goods_delivered", "from_stock", "price_words", "tells_of_prices",
    "all_of_them", "copula", "articles", "and_words", "ahead_of_free",
)  # fmt: skip


def _of_something_else(part: str) -> bool:
    """'Net 30 days', 'Lieferzeit 3 Wochen': a term of its own, which bounds no freight."""
    told = any(phrases(section).find(part) for section in ("not_lead", "lead_topic", "taxes"))
    return told and not find_masses(part)
