"""A cell that holds a price in words and figures: '$1,145/ST', 'EUR 0,0425/Stk.', '34.75¢/lb', 'n/q'.

The text is walked once, from left to right. Whatever the grammar does not know stays in `rest`, so that a caller can
refuse a price with something unexplained beside it instead of trusting half of it.
"""

import re
from dataclasses import dataclass, replace
from functools import cache, lru_cache

from tracker.intake.values.figures.numbers import number_readings
from tracker.intake.values.figures.sheetsize import find_sheet_sizes
from tracker.intake.values.prices import basis as units
from tracker.intake.values.prices import currency as currencies
from tracker.intake.values.prices.basis import BasisReading, after_per, basis_text, find_basis
from tracker.intake.values.prices.currency import (
    CurrencyReading,
    combined,
    currency_phrases,
    currency_text,
    find_currencies,
    with_country,
)
from tracker.intake.values.prices.pricewalk import PriceText, PriceWalk, cents_by_unit, no_piece
from tracker.intake.values.prices.was_now import parted_by_age
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases, words
from tracker.intake.words.phrases import tokens_of
from tracker.trade.basis import Basis

__all__ = ["PriceText", "PriceUnit", "find_price_unit", "price_text", "price_unit"]


# 'GBP p. tonne' is per tonne; 'GBP p/kg' and '12p per kg' are pence.
_P_DOT = re.compile(r"(?<![\w.])p\.\s?(?=[^\W\d])(?!per\b)")


@dataclass(frozen=True, slots=True)
class PriceUnit:
    """A currency, a basis, or both, without a number."""

    currency: CurrencyReading | None
    basis: BasisReading | None
    words: str


_FRACTIONS = {"½": "5", "¼": "25", "¾": "75", "⅛": "125", "⅜": "375", "⅝": "625", "⅞": "875"}
_MIXED = re.compile(rf"(?<![\d.,])(\d+)\s?([{''.join(_FRACTIONS)}])")


def with_plain_fractions(text: str) -> str:
    """'54 ½ cents' as '54.5 cents'."""
    return _MIXED.sub(lambda match: f"{match[1]}.{_FRACTIONS[match[2]]}", text)


@lru_cache(maxsize=65536)
def price_text(text: str) -> PriceText | None:
    """A price cell read in full, or None where it holds neither a number nor words for 'no price'."""
    stripped = with_plain_fractions(_P_DOT.sub("per ", " ".join(text.split())))
    if not stripped:
        return None
    # A plain number, by far the commonest text.
    readings = number_readings(stripped)
    if readings:
        return PriceText(stripped, readings)
    if _says_no_price(stripped):
        return PriceText(stripped, no_price=stripped)
    walk = PriceWalk(stripped)
    walk.run()
    said = _of_country(walk.result())
    return (_in_force(stripped) or said) if said is None or said.rest or said.is_range else said


def _of_country(said: PriceText | None) -> PriceText | None:
    """'54.25 cents per pound, US' with nothing left unexplained."""
    currency = with_country(said.currency, said.rest) if said is not None and said.currency and said.rest else None
    return said if said is None or currency is None else replace(said, currency=currency, rest="")


def _in_force(text: str) -> PriceText | None:
    """The later price of 'was $1,240 – now $1,085'."""
    parts = parted_by_age(text)
    if parts is None:
        return None
    return one_of_two(parts.in_force, parts.earlier, text) if parts.earlier else _plain(parts.in_force)


def one_of_two(chosen: str, other: str, text: str) -> PriceText | None:
    """The price of one of two texts, which may leave its currency and unit to the other; None where either is no price,
    or both are not of a size. `text`: all that the cell says."""
    one, beside = _plain(chosen), _plain(other)
    if one is None or beside is None or not _of_a_size(one, beside):
        return None
    if one.currency is None and beside.currency is not None and beside.currency.cents:
        return None
    if one.currency is not None and beside.currency is not None and one.currency.codes != beside.currency.codes:
        return None
    return replace(one, words=text, currency=one.currency or beside.currency, basis=one.basis or beside.basis)


def _plain(text: str) -> PriceText | None:
    said = price_text(text)
    return said if said is not None and said.amounts and not said.rest and not said.is_range else None


_MOST_TIMES = 2
"""How many times an earlier price the later one may be, or the other way round; other figures are days and sizes."""


def _of_a_size(one: PriceText, other: PriceText) -> bool:
    return any(
        0 < first.value <= _MOST_TIMES * second.value <= _MOST_TIMES**2 * first.value
        for first in one.amounts
        for second in other.amounts
    )


@lru_cache(maxsize=16384)
def price_unit(text: str) -> PriceUnit | None:
    """A text that is a currency and/or what a price is per, and nothing else: 'USD/ST', '¢/LB', '€ je 1.000 Bogen'."""
    stripped = _P_DOT.sub("per ", text.strip().strip("()[]:;"))
    if not stripped:
        return None
    sized = _of_sized_sheets(stripped)
    if sized is not None:
        return replace(sized, words=text.strip())
    walk = PriceWalk(stripped)
    walk.bare = True
    walk.run()
    if walk.rest or walk.numbers or walk.marks or (walk.currency is None and walk.basis is None):
        return None
    if walk.basis is None:
        # The 'each' of '$ each' leads to no unit, and is one.
        walk.basis = basis_text(stripped.split()[-1])
    currency = None if walk.currency is None else cents_by_unit(walk.currency, walk.basis)
    if currency is not None and walk.basis is not None and find_basis(text) is None and _names_form(walk.basis.words):
        return PriceUnit(currency, None, text.strip())
    return PriceUnit(currency, no_piece(currency, walk.basis), text.strip())


def _of_sized_sheets(text: str) -> PriceUnit | None:
    """'EUR/1000 ark 720x1020 mm': a number of sheets, with the size that they have."""
    sizes = find_sheet_sizes(text)
    if len(sizes) != 1 or not sizes[0].words or sizes[0].words not in text:
        return None
    unit = price_unit(text.replace(sizes[0].words, " ").strip(" ,()"))
    sheets = unit is not None and unit.basis is not None and unit.basis.bases <= _SHEETS and bool(unit.basis.bases)
    return unit if sheets else None


_SHEETS = frozenset({Basis.THOUSAND_SHEETS, Basis.SHEET})


def _names_form(unit: str) -> bool:
    """'Rolls, USD' says in what form the board comes; 'USD/roll' is a unit."""
    return phrases("forms").whole(unit) is not None


@lru_cache(maxsize=4096)
def unit_of_text(text: str) -> PriceUnit | None:
    """A unit cell: 'ST', 'USD/cwt', '¢/LB', 'M SHEETS'; None where it is none."""
    unit = price_unit(text)
    if unit is not None:
        return unit
    basis = basis_text(text)
    if basis is not None:
        return PriceUnit(None, basis, text)
    currency = currency_text(text)
    return PriceUnit(currency, None, text) if currency is not None else None


@lru_cache(maxsize=16384)
def find_price_unit(text: str) -> PriceUnit | None:
    """The currency and the basis that a header, title or sentence names.

    'Price\\n(US$/ST)', 'Preise in Euro je Tonne'.
    """
    text = _P_DOT.sub("per ", text)
    whole = price_unit(text)
    if whole is not None:
        return whole
    named = find_currencies(text)
    beside = _beside_currency(text)
    currency = _combined_all(named) if named else None
    if beside is not None and beside.currency is not None:
        # 'Cent je Bogen (EUR)': the rest of the text may say which cent.
        currency = beside.currency if currency is None else combined(beside.currency, currency)
    basis = (beside.basis if beside is not None else None) or find_basis(text)
    return None if currency is None and basis is None else PriceUnit(currency, basis, text.strip())


def _combined_all(named: tuple[CurrencyReading, ...]) -> CurrencyReading:
    currency = named[0]
    for other in named[1:]:
        currency = combined(currency, other)
    return currency


def _beside_currency(text: str) -> PriceUnit | None:
    """'c/lb', 'USD ST', 'euros la tonelada': a unit straight after a currency, where weak words count too."""
    found = tokens_of(text)
    for match in currency_phrases().among(found):
        place = after_per(found, match.after, weak=True)
        unit = units.unit_at(found, place, text) if place < len(found) else None
        if place == match.after and match.end - match.start == 1 and text[match.start].isalpha():
            # 'Appendix C to the list': a letter is cents before a stroke or a word for 'per' alone.
            continue
        # 'US$ 100' is money, 'US$/100 lb' a unit; 'in USD a box' is neither more nor less than it says.
        if unit is not None and (place > match.after or not found[place][0].isdigit()):
            words_ = text[match.start : found[unit[1] - 1][2]]
            reading = currencies.reading_of(*match.value, currencies.without_ton(text, match))
            return PriceUnit(cents_by_unit(reading, unit[0]), no_piece(reading, unit[0]), words_)
    return None


@cache
def _no_price_texts() -> frozenset[str]:
    found = {fold(word) for group in words("no_price").values() for word in group}
    return frozenset(
        found | {word.replace(" ", "") for word in found} | {"-", "--", "---", ".", "..", "...", "/", "_", "*"}
    )


def _says_no_price(text: str) -> bool:
    folded = fold(text).strip().strip("()[]!*").strip()
    if counts_pages(folded) or _TELEPHONE.fullmatch(folded) or _sold_on_a_day(folded):
        return True
    return folded.rstrip(".:") in _no_price_texts() or folded in _no_price_texts()


def _sold_on_a_day(folded: str) -> bool:
    """'Sold Aug 3', 'verkauft am 03.08.': the figure is a day's. 'Sold 350' may be what it went for."""
    sold = next((one for one in phrases("gone_boards").find(folded) if one.value == "sold" and one.start == 0), None)
    if sold is None:
        return False
    behind = folded[sold.end :].strip(" ,:(-")
    words = re.findall(r"[^\W\d_]+", behind)
    # A short word may lead to the day: 'on', 'am', 'le', 'den'.
    named = [phrases("months").whole(word) is not None for word in words if len(word) > 2]
    return all(named) and (bool(named) or _DAY.fullmatch(behind) is not None)


_DAY = re.compile(r"(?:[^\W\d_]{2,3} )?(?:\d{1,2}[./-]\d{1,2}(?:[./-](?:\d{2}|\d{4}))?\.?|\d{4}-\d\d-\d\d)")


# Eight digits and more behind a nought, and nothing of a price about them: '0171 4417218', '+46 8 441 72 18'.
_TELEPHONE = re.compile(r"(?=(?:\D*\d){8})(?:\+|0(?=[\d /]))[\d /()-]+")
_PAGE = re.compile(r"(?P<word>[^\W\d_]+)\.? *\d{1,3}(?: *(?:/|\(|[^\W\d_]+) *\d{1,3}\)?)?")


def counts_pages(folded: str) -> bool:
    """'Seite 2 von 3' on a printed list stands in any column, and is no price in it."""
    match = _PAGE.fullmatch(folded)
    return match is not None and phrases("page_words").whole(match["word"]) is not None
