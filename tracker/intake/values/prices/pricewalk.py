"""One pass over a price cell, from left to right: numbers, currency, unit, marks, and what none of them explains."""

import re
from dataclasses import dataclass, field, replace
from decimal import Decimal
from functools import cache

from tracker.intake.values.figures.inch_marks import is_in_inches
from tracker.intake.values.figures.numbers import (
    FRACTION,
    SPACED_NUMBER,
    NumberReading,
    crowns_and_ore,
    number_readings,
)
from tracker.intake.values.freight.place_behind import end_of_place, ends_a_word_for_places
from tracker.intake.values.prices import basis as units
from tracker.intake.values.prices import currency as currencies
from tracker.intake.values.prices.basis import BasisReading, after_per
from tracker.intake.values.prices.currency import CurrencyReading, currency_phrases
from tracker.intake.words.fold import fold, tokens
from tracker.intake.words.lists import phrases, words
from tracker.intake.words.phrases import Found, Phrases, Token


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


def no_piece(currency: CurrencyReading | None, unit: BasisReading | None) -> BasisReading | None:
    """'$/st' is a short ton: pieces are priced in 'kr/st' and 'EUR/St'."""
    if unit is not None and unit.foreign == "piece" and currency is not None and "USD" in currency.codes:
        return replace(unit, foreign=None)
    return unit


def cents_by_unit(currency: CurrencyReading, unit: BasisReading | None) -> CurrencyReading:
    """Cents per pound or hundredweight are cents of a dollar: nobody prices euro board by the pound."""
    pounds = unit is not None and unit.words.strip().lower().rstrip(".") in _POUND_WORDS
    if currency.cents and len(currency.codes) > 1 and pounds:
        return replace(currency, codes=currencies.DOLLARS, bare_dollar=True)
    return currency


_POUND_WORDS = frozenset({"lb", "lbs", "pound", "pounds", "#", "cwt"})


@cache
def _words() -> Phrases[tuple[str, str]]:
    """Everything but numbers and units that may stand in a price cell -> (kind, which)."""
    meanings: dict[tuple[str, str], tuple[str, ...]] = {}
    for section in ("indicative", "about", "marks", "delivery", "incoterms", "no_price"):
        for key, found in words(section).items():
            meanings[(section, key)] = found
    return Phrases(meanings)


_BROKEN = re.compile(rf"\d{{1,3}}{FRACTION}")
_NUMBER = re.compile(rf"(?:{SPACED_NUMBER})(?:[.,:]-{{1,2}}(?![\d-])|:\d\d(?![\d:]))?")
_CROWN_CURRENCIES = frozenset({"krona", *currencies.SHARED["krona"]})
_FOOTNOTE = re.compile(r"\*+|[†‡§°¹²³⁴⁵⁶⁷⁸⁹]+\)?|\(\d\)|\[[\da-e]\]|\[letter [a-z]\]|(?<=[\d\s])\d\)|(?<=\s)[a-e]\)$")
_DASH = re.compile(r"-{1,2}|\.{2,3}|…")


@dataclass
class PriceWalk:
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
        if after >= len(self.tokens) or units.unit_at(self.tokens, after, self.text) is None:
            # The 'each' of '0.59 each' leads to no other unit, and is one.
            after = place
        preceded = after > place
        if not preceded and (self.tokens[place][0].isdigit() or not (self.numbers or self.bare or self.currency)):
            return None
        unit = units.unit_at(self.tokens, after, self.text)
        if unit is None or (preceded and units.are_goods(self.tokens, after, unit[0])):
            return None
        needs_more = unit[0].needs_sheet and not (self.numbers or self.currency)  # As 'unit' and 'M' do.
        if not preceded and (needs_more or self._rather_something_else(place)):
            return None
        self.basis = unit[0]
        return self.tokens[unit[1] - 1][2]

    def _rather_something_else(self, place: int) -> bool:
        """'to' is a tonne in German, but '1200 to 1240' is a range, and 'delivered to' heads places."""
        money, between = currency_phrases().at(self.tokens, place), phrases("range").at(self.tokens, place)
        if between is not None and _NUMBER.match(self.folded[between.end :].lstrip()) is not None:
            return True
        is_money = money is not None and not currencies.counts_a_hundred(self.text, money)
        return is_money or ends_a_word_for_places(self.tokens, place)

    def _number(self, position: int) -> int | None:
        if position and self.folded[position - 1].isalpha() and self.folded[position - 1] not in "€$£":
            joined = self.place_at.get(position)
            # 'SBS18' is a name; 'EUR1145' a price: the letters before were a currency when they left no rest.
            if joined is None or self.rest:
                return None
        footnote = _FOOTNOTE.match(self.folded, position)
        # '1.262,00 a)' has a footnote, '(52.5 c)' cents.
        cents = footnote is not None and footnote[0][0].isalpha() and "(" in self.folded[:position]
        if footnote and self.numbers and not (self.range_open or cents):
            self.marks.append(self.text[position : footnote.end()])
            return footnote.end()
        match = _BROKEN.match(self.folded, position) or _NUMBER.match(self.folded, position)
        if match is None or is_in_inches(self.folded, *match.span()):
            return None
        readings = number_readings(match.group()) or self._crowns(match.group())
        if not readings:
            return None
        after = match.end()
        if self.folded[after : after + 1] == "-" and not self.folded[after + 1 : after + 2].strip():
            self.negative, after = True, after + 1
        return self._take_number(readings, position, after)

    def _crowns(self, figure: str) -> tuple[NumberReading, ...]:
        """'9:75' beside 'kr' or 'SEK' is no time of day."""
        crowns = crowns_and_ore(figure)
        if crowns is None:
            return ()
        named = {found.value[0] for found in currency_phrases().among(self.tokens)}
        return (NumberReading(crowns),) if named & _CROWN_CURRENCIES else ()

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
        if match is None or self._only_a_letter(match) or currencies.is_no_money(self.text, match):
            return None
        reading = currencies.reading_of(*match.value, self.text[match.start : match.end])
        self.currency = reading if self.currency is None else currencies.combined(self.currency, reading)
        return match.end

    def _only_a_letter(self, match: Found[tuple[str, bool]]) -> bool:
        """'c' and 'p' are hundredths right behind a number or before a unit ('84p', 'c/lb', 'c per lb'), not in
        'P. net EUR/t' and 'Appendix C to the list'."""
        if match.end - match.start > 1 or not self.folded[match.start].isalpha():
            return False
        behind_a_number = bool(self.numbers) and self.basis is None and self.currency is None
        small = self.text[match.start].islower() or self.text[match.end : match.end + 1] == "/"
        return not behind_a_number and not (small and after_per(self.tokens, match.after, weak=False) > match.after)

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
            return dash.end()
        place = self.place_at.get(position)
        between = phrases("range").at(self.tokens, place) if place is not None and len(self.numbers) == 1 else None
        if between is None or self.folded[position - 1].isdigit() or not _NUMBER.search(self.folded, between.end):
            return None
        self.range_open = True
        return between.end

    def _word(self, position: int) -> int | None:
        place = self.place_at.get(position)
        match = _words().at(self.tokens, place) if place is not None else None
        if match is None:
            return None if place is None else self._leading_to_a_place(place)
        self._take_word(*match.value, self.text[match.start : match.end])
        # '1 285 € la tonne, franco Dijon': where to changes nothing of what the price is.
        delivers = self.numbers and match.value[0] in ("delivery", "incoterms")
        return end_of_place(self.text, match.end) if delivers else match.end

    def _leading_to_a_place(self, place: int) -> int | None:
        """'1.285 € je Tonne frei Kassel': a word that says it only with the place behind it; 'départ' at the end."""
        last = self.text[self.tokens[place][1] :] if len(self.tokens) - place < 6 else ""
        if self.numbers and (alone := phrases("delivery_alone").whole(last)):
            self._take_word("delivery", alone, "")
            return len(self.text)
        match = phrases("delivery_places").at(self.tokens, place) if self.numbers else None
        after = end_of_place(self.text, match.end) if match is not None else 0
        if match is None or after == match.end:
            return None
        self._take_word("delivery", match.value, "")
        return after

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
        elif sign == "+" and self.numbers and not self.folded[position + 1 :].strip():
            self.marks.append(sign)
        elif sign not in ".,;:()=+'\"[]/":
            self.rest.append(self.text[position:end])
        return end

    def result(self) -> PriceText | None:
        if not self.numbers:
            return PriceText(self.text, no_price=self.no_price) if self.no_price and not self.rest else None
        currency = None if self.currency is None else cents_by_unit(self.currency, self.basis)
        cents = currency is not None and currency.cents
        amounts, upper = self._amounts(cents, 0), self._amounts(cents, 1) if self.is_range else ()
        rest = " ".join([*self.rest, self.no_price] if self.no_price else self.rest)
        basis, marks = no_piece(currency, self.basis), tuple(self.marks)
        said = (self.open_ended, self.indicative, self.delivered, marks, rest)
        return PriceText(self.text, amounts, upper, currency, basis, "", *said)

    def _amounts(self, cents: bool, which: int) -> tuple[NumberReading, ...]:
        sign = -1 if self.negative and not self.is_range else 1
        share = Decimal("0.01") if cents else Decimal(1)
        return tuple(
            NumberReading(sign * reading.value * share, reading.decimal_sign) for reading in self.numbers[which]
        )
