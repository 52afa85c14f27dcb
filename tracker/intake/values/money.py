"""A cell that holds a price in words and figures: '$1,145/ST', 'EUR 0,0425/Stk.', '34.75¢/lb', 'n/q'.

The text is walked once, from left to right. Whatever the grammar does not know stays in `rest`, so that a caller can
refuse a price with something unexplained beside it instead of trusting half of it.
"""

import re
from dataclasses import dataclass, field, replace
from decimal import Decimal
from functools import cache, lru_cache

from tracker.intake.values import basis as units
from tracker.intake.values import currency as currencies
from tracker.intake.values.basis import BasisReading, after_per, find_basis
from tracker.intake.values.currency import CurrencyReading, currency_phrases, find_currencies
from tracker.intake.values.numbers import SPACED_NUMBER, NumberReading, number_readings
from tracker.intake.words.fold import fold, tokens
from tracker.intake.words.lists import phrases, words
from tracker.intake.words.phrases import Phrases, Token


@dataclass(frozen=True, slots=True)
class PriceText:
    """What a price cell says.

    `amounts`: every reading, in the main unit (cents are divided by 100); () when the cell says there is no price.
    `upper`: readings of the second number where the cell holds a range. `open_ended`: 'from 1,145', 'up to 1,200'.
    `no_price`: the words that say so ('call', 'n/q', '-'), else ''. `marks`: '*', '¹', 'ca.' … `rest`: not understood.
    """

    words: str
    amounts: tuple[NumberReading, ...] = ()
    upper: tuple[NumberReading, ...] = ()
    currency: CurrencyReading | None = None
    basis: BasisReading | None = None
    no_price: str = ""
    open_ended: bool = False
    indicative: bool = False
    delivered: bool | None = None
    marks: tuple[str, ...] = ()
    rest: str = ""

    @property
    def is_range(self) -> bool:
        return bool(self.upper) or self.open_ended


@dataclass(frozen=True, slots=True)
class PriceUnit:
    """A currency, a basis, or both, without a number."""

    currency: CurrencyReading | None
    basis: BasisReading | None
    words: str


@lru_cache(maxsize=65536)
def price_text(text: str) -> PriceText | None:
    """A price cell read in full, or None where it holds neither a number nor words for 'no price'."""
    stripped = text.strip()
    if not stripped:
        return None
    # A plain number, by far the commonest text.
    readings = number_readings(stripped)
    if readings:
        return PriceText(stripped, readings)
    if _says_no_price(stripped):
        return PriceText(stripped, no_price=stripped)
    walk = _Walk(stripped)
    walk.run()
    return walk.result()


@lru_cache(maxsize=16384)
def price_unit(text: str) -> PriceUnit | None:
    """A text that is a currency and/or what a price is per, and nothing else: 'USD/ST', '¢/LB', '€ je 1.000 Bogen'."""
    stripped = text.strip().strip("()[]:;")
    if not stripped:
        return None
    walk = _Walk(stripped)
    walk.bare = True
    walk.run()
    if walk.rest or walk.numbers or walk.marks or (walk.currency is None and walk.basis is None):
        return None
    currency = None if walk.currency is None else _cents_by_unit(walk.currency, walk.basis)
    return PriceUnit(currency, _no_piece(currency, walk.basis), text.strip())


@lru_cache(maxsize=16384)
def find_price_unit(text: str) -> PriceUnit | None:
    """The currency and the basis that a header, title or sentence names: 'Price\\n(US$/ST)', 'Preise in Euro je Tonne'."""
    whole = price_unit(text)
    if whole is not None:
        return whole
    named = find_currencies(text)
    beside = _beside_currency(text)
    currency = beside.currency if beside is not None else (_combined_all(named) if named else None)
    basis = (beside.basis if beside is not None else None) or find_basis(text)
    return None if currency is None and basis is None else PriceUnit(currency, basis, text.strip())


def _combined_all(named: tuple[CurrencyReading, ...]) -> CurrencyReading:
    currency = named[0]
    for other in named[1:]:
        currency = combined(currency, other)
    return currency


def _beside_currency(text: str) -> PriceUnit | None:
    """'c/lb', 'USD ST', 'euros la tonelada': a unit straight after a currency, where weak words count too."""
    found = tokens(fold(text))
    for match in currency_phrases().among(found):
        place = after_per(found, match.after, weak=True)
        unit = units.unit_at(found, place, text) if place < len(found) else None
        # 'US$ 100' is money, 'US$/100 lb' a unit; 'in USD a box' is neither more nor less than it says.
        if unit is not None and (place > match.after or not found[place][0].isdigit()):
            words_ = text[match.start : found[unit[1] - 1][2]]
            reading = currencies.reading_of(*match.value, text[match.start : match.end])
            return PriceUnit(_cents_by_unit(reading, unit[0]), _no_piece(reading, unit[0]), words_)
    return None


def combined(one: CurrencyReading, other: CurrencyReading) -> CurrencyReading:
    """Two namings of one currency: '$' and 'USD' are USD; two that exclude each other leave both open."""
    both = tuple(code for code in one.codes if code in other.codes)
    joined = both or (*one.codes, *(code for code in other.codes if code not in one.codes))
    bare = one.bare_dollar and other.bare_dollar
    return CurrencyReading(joined, f"{one.words} {other.words}".strip(), one.cents or other.cents, bare)


def _no_piece(currency: CurrencyReading | None, unit: BasisReading | None) -> BasisReading | None:
    """'$/st' is a short ton: pieces are priced in 'kr/st' and 'EUR/St'."""
    if unit is not None and unit.foreign == "piece" and currency is not None and "USD" in currency.codes:
        return replace(unit, foreign=None)
    return unit


def _cents_by_unit(currency: CurrencyReading, unit: BasisReading | None) -> CurrencyReading:
    """Cents per pound or hundredweight are cents of a dollar: nobody prices euro board by the pound."""
    pounds = unit is not None and unit.words.strip().lower().rstrip(".") in _POUND_WORDS
    if currency.cents and len(currency.codes) > 1 and pounds:
        return replace(currency, codes=currencies.DOLLARS, bare_dollar=True)
    return currency


_POUND_WORDS = frozenset({"lb", "lbs", "pound", "pounds", "#", "cwt"})


@cache
def _no_price_texts() -> frozenset[str]:
    found = {fold(word) for group in words("no_price").values() for word in group}
    return frozenset(
        found | {word.replace(" ", "") for word in found} | {"-", "--", "---", ".", "..", "...", "/", "_", "*"}
    )


def _says_no_price(text: str) -> bool:
    folded = fold(text).strip().strip("()[]!*").strip()
    return folded.rstrip(".:") in _no_price_texts() or folded in _no_price_texts()


@cache
def _words() -> Phrases[tuple[str, str]]:
    """Everything but numbers and units that may stand in a price cell -> (kind, which)."""
    meanings: dict[tuple[str, str], tuple[str, ...]] = {}
    for section in ("indicative", "about", "marks", "delivery", "incoterms", "no_price"):
        for key, found in words(section).items():
            meanings[(section, key)] = found
    return Phrases(meanings)


_NUMBER = re.compile(rf"(?:{SPACED_NUMBER})(?:[.,:]-{{1,2}}(?![\d-]))?")
_FOOTNOTE = re.compile(r"\*+|[†‡§¹²³⁴⁵⁶⁷⁸⁹]+\)?|\(\d\)|\[\d\]|(?<=[\d\s])\d\)")
_DASH = re.compile(r"-{1,2}|\.{2,3}|…")


@dataclass
class _Walk:
    """One pass over a price cell. Positions are characters; tokens are looked up by where they begin."""

    text: str
    bare: bool = False
    numbers: list[tuple[NumberReading, ...]] = field(default_factory=list)
    currency: CurrencyReading | None = None
    basis: BasisReading | None = None
    marks: list[str] = field(default_factory=list)
    rest: list[str] = field(default_factory=list)
    range_open: bool = False
    is_range: bool = False
    open_ended: bool = False
    indicative: bool = False
    no_price: str = ""
    negative: bool = False
    brackets: int = 0
    delivered: bool | None = None

    def run(self) -> None:
        self.folded = fold(self.text)
        self.tokens: list[Token] = tokens(self.folded)
        self.place_at = {start: place for place, (_, start, _) in enumerate(self.tokens)}
        position = 0
        while position < len(self.folded):
            position = self.step(position)

    def step(self, position: int) -> int:
        """Reads what begins here and gives the position after it."""
        if self.folded[position] == " ":
            return position + 1
        for read in (self._unit, self._number, self._currency, self._mark, self._range_sign, self._word):
            after = read(position)
            if after is not None:
                return after
        return self._unknown(position)

    def _unit(self, position: int) -> int | None:
        """A unit after '/', 'per' …, or straight after the amount or the currency."""
        place = self.place_at.get(position)
        if place is None or self.basis is not None:
            return None
        after = after_per(self.tokens, place, weak=True)
        if after >= len(self.tokens):
            return None
        preceded = after > place
        if not preceded and (self.tokens[place][0].isdigit() or not (self.numbers or self.bare or self.currency)):
            return None
        unit = units.unit_at(self.tokens, after, self.text)
        if unit is None or (not preceded and self._rather_a_currency(place)):
            return None
        # 'Unit' and 'M' are units only behind a currency or a number.
        if not preceded and unit[0].needs_sheet and not (self.numbers or self.currency):
            return None
        self.basis = unit[0]
        return self.tokens[unit[1] - 1][2]

    def _rather_a_currency(self, place: int) -> bool:
        return currency_phrases().at(self.tokens, place) is not None

    def _number(self, position: int) -> int | None:
        if position and self.folded[position - 1].isalpha() and self.folded[position - 1] not in "€$£":
            joined = self.place_at.get(position)
            # 'SBS18' is a name; 'EUR1145' a price: the letters before were a currency when they left no rest.
            if joined is None or self.rest:
                return None
        footnote = _FOOTNOTE.match(self.folded, position)
        if footnote and self.numbers and not self.range_open:
            self.marks.append(self.text[position : footnote.end()])
            return footnote.end()
        match = _NUMBER.match(self.folded, position)
        if match is None:
            return None
        readings = number_readings(match.group())
        if not readings:
            return None
        after = match.end()
        if self.folded[after : after + 1] == "-" and not self.folded[after + 1 : after + 2].strip():
            self.negative, after = True, after + 1
        return self._take_number(readings, position, after)

    def _take_number(self, readings: tuple[NumberReading, ...], position: int, after: int) -> int:
        if not self.numbers:
            self.numbers.append(readings)
        elif self.range_open and len(self.numbers) == 1:
            self.numbers.append(readings)
            self.is_range, self.range_open = True, False
        else:
            self.rest.append(self.text[position:after])
        return after

    def _currency(self, position: int) -> int | None:
        place = self.place_at.get(position)
        match = currency_phrases().at(self.tokens, place) if place is not None else None
        if match is None:
            return None
        reading = currencies.reading_of(*match.value, self.text[match.start : match.end])
        self.currency = reading if self.currency is None else combined(self.currency, reading)
        return match.end

    def _mark(self, position: int) -> int | None:
        footnote = _FOOTNOTE.match(self.folded, position)
        if footnote is None:
            return None
        self.marks.append(self.text[position : footnote.end()])
        return footnote.end()

    def _range_sign(self, position: int) -> int | None:
        dash = _DASH.match(self.folded, position)
        if dash is not None:
            if not self.numbers:
                self.negative = True
            elif _NUMBER.search(self.folded, dash.end()):
                self.range_open = True
            elif self.folded[dash.end() :].strip():
                # A dash before words only parts them.
                return dash.end()
            return dash.end()
        place = self.place_at.get(position)
        between = phrases("range").at(self.tokens, place) if place is not None and len(self.numbers) == 1 else None
        if between is None or not _NUMBER.search(self.folded, between.end):
            return None
        self.range_open = True
        return between.end

    def _word(self, position: int) -> int | None:
        place = self.place_at.get(position)
        match = _words().at(self.tokens, place) if place is not None else None
        if match is None:
            return None
        self._take_word(*match.value, self.text[match.start : match.end])
        return match.end

    def _take_word(self, kind: str, which: str, written: str) -> None:
        if kind == "indicative":
            self.indicative = True
        elif kind == "about":
            self.marks.append(written)
        elif kind == "marks":
            self.open_ended = self.open_ended or which in ("upper", "lower")
        elif kind in ("delivery", "incoterms"):
            self.delivered = {"delivered": True, "collected": False}.get(which, self.delivered)
        else:
            self.no_price = written

    def _unknown(self, position: int) -> int:
        sign = self.folded[position]
        place = self.place_at.get(position)
        end = self.tokens[place][2] if place is not None else position + 1
        if sign == "(" and not self.numbers:
            self.brackets += 1
        elif sign == ")" and self.brackets and self.numbers and self.basis is None and not self.rest:
            self.negative = True
        elif sign not in ".,;:()=+'\"[]/":
            self.rest.append(self.text[position:end])
        return end

    def result(self) -> PriceText | None:
        rest = " ".join(self.rest)
        if not self.numbers:
            return PriceText(self.text, no_price=self.no_price) if self.no_price and not rest else None
        currency = None if self.currency is None else _cents_by_unit(self.currency, self.basis)
        cents = currency is not None and currency.cents
        amounts, upper = self._amounts(cents, 0), self._amounts(cents, 1) if self.is_range else ()
        if self.no_price:
            rest = f"{rest} {self.no_price}".strip()
        return PriceText(
            self.text, amounts, upper, currency, _no_piece(currency, self.basis), "", self.open_ended, self.indicative, self.delivered,
            tuple(self.marks), rest,
        )  # fmt: skip

    def _amounts(self, cents: bool, which: int) -> tuple[NumberReading, ...]:
        sign = -1 if self.negative and not self.is_range else 1
        share = Decimal("0.01") if cents else Decimal(1)
        return tuple(
            NumberReading(sign * reading.value * share, reading.decimal_sign) for reading in self.numbers[which]
        )
