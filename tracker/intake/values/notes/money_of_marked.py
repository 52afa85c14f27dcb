"""Sentences that name the unit of marked lines within an exception: 'All prices CDN$ per short ton unless marked *
(US$)', 'Prices in CDN$ unless marked US$'."""

import re
from functools import lru_cache
from typing import NamedTuple

from tracker.intake.values.notes.note_signs import LETTER, SIGN
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.notes.unless import unless_at
from tracker.intake.values.prices.basis import find_basis
from tracker.intake.values.prices.currency import CurrencyReading, find_currencies
from tracker.intake.values.prices.money import find_price_unit
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import blanked

_MARK = re.compile(rf"\s*(?:(?P<sign>{SIGN})|[\"'“”„«]?(?P<letter>[A-Z])[\"'“”»]?)(?=[\s(,:=]|$)")
_MARKS_SAID = ("marked_with", "unless_signed")
_BESIDE = ("marked", "relative_words", "copula", "price_words", "currency_words")
_EXCEPTING = ("unless", "marked", "marked_with", "negations", "articles", "about_lines")


@lru_cache(maxsize=2048)
def money_of_marked(sentence: str) -> tuple[str, str] | None:
    """What holds but for marked lines, and the footnote on those: ('All prices CDN$ per short ton unless marked', '*
    US$').

    None where the exception says more than how lines are marked and what unit those are in.
    """
    for section in _MARKS_SAID:
        for match in phrases(section).find(sentence):
            mark = _MARK.match(sentence, match.end)
            found = _parted(sentence, mark) if mark is not None else None
            if found is not None:
                return found
    return None


def _parted(sentence: str, mark: re.Match[str]) -> tuple[str, str] | None:
    behind = sentence[mark.end() :]
    unit = find_price_unit(behind)
    if unit is None or unit.currency is None or len(find_currencies(behind)) != 1:
        return None
    said = [part.words for part in (unit.currency, unit.basis) if part is not None]
    spans = [(start, start + len(words)) for words in said if (start := behind.find(words)) >= 0]
    if len(spans) < len(said) or rest_of(behind, spans, *_BESIDE):
        return None
    verbs = phrases("marked").find(behind)
    verb = f" {behind[verbs[0].start : verbs[0].end]}" if verbs else ""
    others = f"{sentence[: mark.start()].rstrip()}{verb}"
    if unless_at(others) is None or find_price_unit(others) is None:
        return None
    sign = mark["sign"] or f"[{LETTER}{mark['letter']}]"
    return others, f"{sign} {behind[min(spans)[0] : max(spans)[1]]}"


_TICK = re.compile(r"(?<!\w)[\"'“„«]?[xX✓][\"'”“»]?(?!\w)")


class MoneyExcepted(NamedTuple):
    """The currencies of all lines and of marked ones, and the sentence without the latter. `rebased`: marked lines are
    per something else as well."""

    usual: CurrencyReading
    marked: CurrencyReading
    without: str
    rebased: bool


@lru_cache(maxsize=4096)
def money_excepted(sentence: str) -> MoneyExcepted | None:
    """'Prices in CDN$ unless marked US$', '… unless marked with an x, which are US$ per cwt': an exception that names
    another currency, the tick and the basis perhaps, and nothing more."""
    at = unless_at(sentence)
    if at is None:
        return None
    usual, marked = find_currencies(sentence[:at]), find_currencies(sentence[at:])
    if len(marked) != 1 or len({one.codes for one in usual}) != 1 or marked[0].codes == usual[0].codes:
        return None
    basis = find_basis(sentence[at:])
    said = [marked[0].words, *([basis.words] if basis is not None else [])]
    spans = [(start, start + len(words)) for words in said if (start := sentence.find(words, at)) >= 0]
    rest = _TICK.sub(" ", blanked(sentence, spans)[at:])
    if len(spans) < len(said) or rest_of(rest, (), *_EXCEPTING, *_BESIDE, "per"):
        return None
    return MoneyExcepted(usual[0], marked[0], blanked(sentence, spans), basis is not None)
