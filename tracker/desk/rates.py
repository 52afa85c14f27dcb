"""What one currency is worth in another on a day: the user's own rates first, then the published history."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import TYPE_CHECKING

from tracker.desk import published_rates
from tracker.desk.edits import Edit, writing
from tracker.desk.trouble import Trouble
from tracker.trade.currencies import no_currency
from tracker.trade.days import day_text, short_day
from tracker.trade.exact import plain_text

if TYPE_CHECKING:
    from tracker.desk.opening import Desk

EURO = "EUR"
OWN = "your own rate"
OLDEST_DAYS = 366
"""A published rate that has not been renewed for longer is no rate: the currency is gone or no longer quoted."""


@dataclass(frozen=True, slots=True)
class Rate:
    """One unit of a currency is `factor` units of the other. `on`: the day the figure is of, `source`: who says so."""

    factor: Decimal
    on: date
    source: str

    def said(self, asked: date) -> str:
        """The source and day in words, and that an earlier day had to serve where it did."""
        words = f"{self.source}, {day_text(self.on)}"
        return words if self.on == asked else f"{words}, the last before {short_day(asked)}"


@dataclass(frozen=True, slots=True)
class RatesOn:
    """Every rate on one day; `own` holds the user's rates as (day, euros for one unit) in rising order of days."""

    on: date
    own: Mapping[str, tuple[tuple[date, Decimal], ...]]

    def rate(self, code: str, into: str) -> Rate | None:
        """One unit of `code` in `into`; None where either is not known on that day."""
        if code == into:
            return Rate(Decimal(1), self.on, "the same currency")
        given, wanted = self._in_euros(code), self._in_euros(into)
        if given is None or wanted is None:
            return None
        parts = [part for part in (given, wanted) if part.source]
        sources = list(dict.fromkeys(part.source for part in parts))
        return Rate(given.factor / wanted.factor, min(part.on for part in parts), " and ".join(sources))

    def _in_euros(self, code: str) -> Rate | None:
        if code == EURO:
            return Rate(Decimal(1), self.on, "")
        own = [Rate(euros, day, OWN) for day, euros in self.own.get(code, ()) if day <= self.on]
        published = self._published(code)
        if own and (published is None or own[-1].on >= published.on):
            return own[-1]
        return published

    def _published(self, code: str) -> Rate | None:
        found = published_rates.history().per_euro(code, self.on)
        if found is None or (self.on - found[1]).days > OLDEST_DAYS:
            return None
        return Rate(1 / found[0], found[1], published_rates.SOURCE)


def rates_on(desk: Desk, on: date) -> RatesOn:
    """The rates of one day, the user's own read once."""
    from tracker.store import rates as kept

    own: dict[str, list[tuple[date, Decimal]]] = {}
    with desk.store.reading() as connection:
        for currency, day, euros in kept.listing(connection):
            own.setdefault(currency, []).append((day, euros))
    return RatesOn(on, {currency: tuple(days) for currency, days in own.items()})


def rate(desk: Desk, code: str, into: str, on: date) -> Rate | None:
    """One unit of `code` in `into` on a day; None where it is not known."""
    return rates_on(desk, on).rate(code, into)


def set_rate(desk: Desk, code: str, euros: Decimal, on: date) -> Edit:
    """The user's own rate: one unit of a currency in euro on a day. Trouble for the euro, letters that name no
    currency, or a figure not above 0."""
    from tracker.store import rates as kept

    if code == EURO:
        raise Trouble("One euro is one euro: give the rate of another currency.")
    wrong = no_currency(code)
    if wrong is not None:
        raise Trouble(wrong)
    if not euros > 0:
        raise Trouble(f"A rate must be above 0; {plain_text(euros)} {code} was given.")
    text = f"set 1 {code} to {plain_text(euros)} EUR on {day_text(on)}"
    with writing(desk, text) as pen:
        change = kept.put(pen, code, on, euros)
    return Edit(text, (change,))


_TIMES_ODD = 3
"""Further than this from the last known rate is most often a slip of the decimal point (assumed)."""


def doubt_rate(desk: Desk, code: str, euros: Decimal, on: date) -> str | None:
    """What is odd about a rate that a person typed, as a sentence; None where nothing is, or no other rate is known."""
    if on > desk.today:
        return f"{day_text(on)} is still to come, so no rate of that day can be known yet."
    known = rate(desk, code, EURO, on)
    if known is not None and _is_other_way_round(euros, known.factor):
        return (
            f"1 {code} at {plain_text(euros)} EUR is what 1 EUR is in {code}, by {known.said(on)}: the other way round "
            f"it is {1 / euros:.4f}."
        )
    if known is None or known.factor / _TIMES_ODD <= euros <= known.factor * _TIMES_ODD:
        return None
    times = euros / known.factor
    said = f"{_times(times)} times" if times > 1 else f"{_times(1 / times)} times less than"
    return f"1 {code} at {plain_text(euros)} EUR is {said} the {known.factor:.4g} EUR of {known.said(on)}."


def _is_other_way_round(euros: Decimal, known: Decimal) -> bool:
    """Within 3 % of one euro in the currency, and further than that from the currency in euro."""
    return abs(euros * known - 1) < _NEAR < abs(euros / known - 1)


_NEAR = Decimal("0.03")


def _times(factor: Decimal) -> str:
    """'2.5', '10', '1,120': a factor as one says it."""
    return f"{factor:,.1f}" if factor < 10 and factor != round(factor) else f"{factor:,.0f}"


def currencies(desk: Desk) -> tuple[str, ...]:
    """Every currency for which a rate may be known, by code."""
    from tracker.store import rates as kept

    with desk.store.reading() as connection:
        own = {currency for currency, _, _ in kept.listing(connection)}
    return tuple(sorted({EURO, *own, *published_rates.history().currencies()}))
