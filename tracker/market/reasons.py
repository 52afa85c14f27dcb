"""Why an offer is judged as it is, in sentences a buyer can repeat to the vendor.

Built for one offer when somebody asks, never for all. In order of weight: the slip that would explain everything,
the going price, the expected band, the vendor's own last price, and what makes the comparison less certain.

Two words, kept apart: the 'going price' is what other vendors' offers come to; the 'expected band' is what the market
level and the grade's ratio allow.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import date

import numpy as np

from tracker.market.bands import ABOVE, BELOW, NO_BAND, WITHIN, Bands
from tracker.market.history import History, history_of
from tracker.market.offers import Flags, Offers
from tracker.market.peers import ESD_LEVEL
from tracker.market.slips import Slip, SlipKind
from tracker.market.verdicts import Verdicts
from tracker.trade.days import day_text
from tracker.trade.exact import half_up

_PER = {
    "short_ton": "short ton",
    "tonne": "tonne",
    "cwt": "hundredweight (100 lb)",
    "lb": "pound",
    "kg": "kilogram",
    "msf": "1,000 ft²",
    "m2": "m²",
    "1000m2": "1,000 m²",
    "1000sheets": "1,000 sheets",
    "sheet": "sheet",
    "3000ft2": "3,000 ft²",
}
_FREIGHT = {
    1: ("is delivered", "are delivered"),
    0: ("is without freight", "are without freight"),
    -1: ("says nothing of freight", "say nothing of freight"),
}
_OWN_FREIGHT = {
    1: "This price is delivered",
    0: "This price is without freight",
    -1: "The sheet says nothing of freight for this price",
}
_NAMED = 3  # vendors whom one sentence can name and still be said in one breath
_AS_GOOD_AS_EVEN = 0.005
_A_LEVEL = 3  # offers off the same way from which one may speak of a vendor's level


@dataclass(frozen=True, slots=True)
class Wording:
    """How the reader wants figures said. amount: a price per tonne in words with its unit, for example
    'USD 1,240 per tonne' (a caller who shows per 1,000 ft² converts in it). between: two such prices, 'USD 850 to
    1,150 per tonne'. bare: a price beside one that told the unit, 'USD 1,240'."""

    amount: Callable[[float], str]
    between: Callable[[float, float], str]
    bare: Callable[[float], str]


def reasons(offer: int, offers: Offers, bands: Bands, verdicts: Verdicts, wording: Wording) -> list[str]:
    """The sentences for one offer, weightiest first. Empty where the offer is not judged."""
    if not offers.judged[offer]:
        return []
    said: list[str] = []
    slip = verdicts.slips.get(offer)
    if slip is not None:
        said.append(_of_slip(slip, float(offers.per_tonne[offer]), wording))
    said.extend(_of_peers(offer, offers, verdicts, wording))
    said.extend(_of_the_vendors_level(offer, offers, verdicts))
    said.extend(_of_band(offer, offers, bands, verdicts, wording))
    history = history_of(offers, offer)
    if history is not None:
        said.append(_of_history(history, offer, offers, wording))
    said.extend(_of_delivery(offer, offers, verdicts))
    return said


def _of_slip(slip: Slip, per_tonne: float, wording: Wording) -> str:
    way = "low" if slip.per_tonne_if_so > per_tonne else "high"
    fact = f"Read as written this is {wording.amount(per_tonne)}, {slip.factor:,.3g} times too {way}"
    so = f"it would be {wording.amount(slip.per_tonne_if_so)}, as the market is"
    if slip.kind is SlipKind.CURRENCY:
        return f"{fact}; if the figure was meant in {slip.likely_currency}, {so}. Which currency is it?"
    if slip.kind is SlipKind.DECIMAL:
        return f"{fact}; with the decimal sign {_places(slip.factor)} over, {so}. Is the figure as meant?"
    if slip.kind is SlipKind.BASIS_WEIGHT:
        return f"{fact}; if the price or the basis weight belongs to 3,000 ft² instead of 1,000 ft², {so}. Which is it?"
    quoted, likely = _PER[slip.quoted_basis], _PER[slip.likely_basis]
    return f"{fact}; if the figure was meant per {likely} and not per {quoted}, {so}. Which is it?"


def _places(factor: float) -> str:
    return {1: "one place", 2: "two places", 3: "three places"}[round(np.log10(factor))]


def _of_peers(offer: int, offers: Offers, verdicts: Verdicts, wording: Wording) -> Iterator[str]:
    if np.isnan(verdicts.score[offer]):
        yield _too_few(offer, offers, verdicts, wording)
    else:
        yield _scored(offer, offers, verdicts, wording)
    price = float(offers.per_tonne[offer])
    if not verdicts.out_of_line[offer] or _beyond(price, offer, verdicts):
        return
    peers = verdicts.evidence
    if abs(peers.own_gap[offer]) > verdicts.cut_off * peers.own_spread[offer]:
        own = float(np.exp(peers.own_expected[offer]))
        yield (
            f"With this vendor's other offers counted in, the going price is {wording.bare(own)}; this is "
            f"{_beside(price / own - 1)} it, and that is out of line."
        )
    if peers.extreme[offer]:
        yield (
            f"It is near the edge of that, and a second test, Rosner's for several outliers at once, parts it from the "
            f"other offers for {offers.grades[offers.grade[offer]]} ({_percent(ESD_LEVEL)} level)."
        )
    if verdicts.jumped[offer]:
        yield (
            "It is near the edge of that, and it moved there from this vendor's own last price while the grade did not."
        )


def _beyond(price: float, offer: int, verdicts: Verdicts) -> bool:
    return not float(verdicts.low[offer]) <= price <= float(verdicts.high[offer])


def _too_few(offer: int, offers: Offers, verdicts: Verdicts, wording: Wording) -> str:
    grade, count, price = offers.grades[offers.grade[offer]], int(verdicts.peers[offer]), float(offers.per_tonne[offer])
    few = f"No other vendor offers {grade}"
    if count:
        few = f"Only {_count(count, 'offer')} of other vendors for {grade}, too few to go by alone"
    if np.isnan(verdicts.expected[offer]):
        return f"{few}, and no market level is set: there is nothing to compare with."
    lean = _leaning(count > 0, verdicts.place[offer] != NO_BAND)
    between = wording.between(float(verdicts.low[offer]), float(verdicts.high[offer]))
    where = "outside" if _beyond(price, offer, verdicts) else "inside"
    return f"{few}: {lean}, {between} is in line, and {wording.bare(price)} lies {where}."


def _leaning(others: bool, band: bool) -> str:
    """What the going price rests on where other vendors' offers are too few to show it alone."""
    if band:
        return f"the going price rests {'largely on' if others else 'on'} the expected band"
    return "the going price is uncertain" if others else "it is held against what this vendor itself asks for the grade"


def _scored(offer: int, offers: Offers, verdicts: Verdicts, wording: Wording) -> str:
    grade, price = offers.grades[offers.grade[offer]], float(offers.per_tonne[offer])
    going, count = float(verdicts.expected[offer]), int(verdicts.peers[offer])
    between = wording.between(float(verdicts.low[offer]), float(verdicts.high[offer]))
    alike = "at this order size" if np.isnan(offers.caliper_um[offer]) else "at this caliper and order size"
    return (
        f"{wording.amount(price)} is {_beside(price / going - 1)} the going price of {wording.bare(going)}, which "
        f"{count} offers of other vendors for {grade} show {alike}; {between} is in line."
    )


def _of_the_vendors_level(offer: int, offers: Offers, verdicts: Verdicts) -> Iterator[str]:
    """One odd price is a mistake to ask about; a whole list that is off the same way is a price to negotiate."""
    vendor, grade, gap = offers.vendor[offer], offers.grade[offer], verdicts.evidence.gap
    if vendor < 0 or not verdicts.out_of_line[offer]:
        return
    own = offers.judged & (offers.vendor == vendor) & (offers.grade == grade)
    alike = own & verdicts.out_of_line & ~verdicts.slip & (np.sign(gap) == np.sign(gap[offer]))
    if alike.sum() >= _A_LEVEL and 2 * alike.sum() > own.sum():
        way = "dearer" if gap[offer] > 0 else "cheaper"
        yield (
            f"{alike.sum()} of the {own.sum()} offers of {offers.vendors[vendor]} for {offers.grades[grade]} are out "
            f"of line, all {way}: this vendor's level, not this one price."
        )


def _of_band(offer: int, offers: Offers, bands: Bands, verdicts: Verdicts, wording: Wording) -> Iterator[str]:
    price, where = float(offers.per_tonne[offer]), int(verdicts.place[offer])
    low, high = float(verdicts.band_low[offer]), float(verdicts.band_high[offer])
    grade = offers.grade[offer]
    if where not in (BELOW, WITHIN, ABOVE):
        yield f"There is no expected band for {offers.grades[grade]}: no market level is set."
        return
    band = f"the expected band of {offers.grades[grade]}, {wording.between(low, high)}"
    if where == WITHIN:
        yield f"It lies within {band}: {bands.sources[grade]}."
    else:
        yield f"It lies {_outside(price, low, high)} {band}: {bands.sources[grade]}."


def _of_history(history: History, offer: int, offers: Offers, wording: Wording) -> str:
    before = float(offers.per_tonne[history.before])
    own = (
        f"{_moved(history.change)} since this vendor's last price for the board, {wording.amount(before)} "
        f"on {day_text(date.fromordinal(int(offers.received[history.before])))}"
    )
    grade = offers.grades[offers.grade[offer]]
    if history.grade_change is None:
        return f"{own}; too few other boards of {grade} have prices from both days to say how the grade moved."
    move = f"{_moved(history.grade_change).lower()} ({history.boards} boards)"
    return f"{own}; over the same time {grade} of other vendors is {move}."


def _of_delivery(offer: int, offers: Offers, verdicts: Verdicts) -> Iterator[str]:
    """Prices with and without freight were compared: told where one is called out of line, or most are unlike it."""
    same = offers.judged & (offers.grade == offers.grade[offer])
    own, count = int(offers.delivered[offer]), int(same.sum())
    unlike = int((same & (offers.delivered != own)).sum())
    if not unlike or not (verdicts.out_of_line[offer] or unlike * 2 > count):
        return
    kinds = [
        _of_freight(same & (offers.delivered == kind), kind, offers)
        for kind in _FREIGHT
        if kind != own and (same & (offers.delivered == kind)).any()
    ]
    yield (
        f"{_OWN_FREIGHT[own]}, while of the {count} offers for {offers.grades[offers.grade[offer]]} "
        f"{' and '.join(kinds)}; the comparison makes no allowance for it."
    )


def _of_freight(alike: Flags, kind: int, offers: Offers) -> str:
    """'1 is without freight (Vendor 3)'; many vendors are counted only."""
    count, vendors = int(alike.sum()), sorted({int(code) for code in offers.vendor[alike]})
    said = f"{count} {_FREIGHT[kind][count > 1]}"
    if len(vendors) > _NAMED or vendors[0] < 0:
        return said
    return f"{said} ({', '.join(offers.vendors[code] for code in vendors)})"


def _outside(price: float, low: float, high: float) -> str:
    """How far beyond its nearer edge a price lies; a hair's breadth is no per cent."""
    beyond = price / (high if price > high else low) - 1
    if abs(beyond) < _AS_GOOD_AS_EVEN:
        return f"at the {'top' if price > high else 'bottom'} of"
    return _beside(beyond)


def _beside(share: float) -> str:
    if abs(share) < _AS_GOOD_AS_EVEN:
        return "level with"
    return f"{_percent(share)} {'above' if share > 0 else 'below'}"


def _moved(share: float) -> str:
    if abs(share) < _AS_GOOD_AS_EVEN:
        return "Unchanged"
    return f"{'Up' if share > 0 else 'Down'} {_percent(share)}"


def _percent(share: float) -> str:
    return f"{half_up(100 * abs(share), 0)} %"


def _count(number: int, noun: str) -> str:
    return f"{number} {noun}" if number == 1 else f"{number or 'no'} {noun}s"
