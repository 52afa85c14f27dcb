"""The way from the cell as written to the compared figure, rung by rung, each a sum that can be checked by hand."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from tracker.desk.comparison import ChosenFooting, Per, Step
from tracker.desk.rates import Rate
from tracker.desk.sums import Part, addition_text, amount_text, figure_text, product_text, rounded
from tracker.trade.basis import (
    BY_AREA,
    BY_SHEET,
    BY_WEIGHT,
    IN_POUNDS_AND_FEET,
    Basis,
    BoardMeasure,
    area_of,
    mass_of,
    per_msf,
    per_tonne,
)
from tracker.trade.days import day_text
from tracker.trade.exact import KG_PER_LB, KG_PER_TONNE, M2_PER_MSF, M2_PER_SQUARE_FOOT, MM_PER_INCH, plain_text
from tracker.trade.footing import delivered_cost_known
from tracker.trade.offer import OPEN, Charge, GrammageFrom, Offer
from tracker.trade.quantities import CaliperUnit, WeightUnit, caliper_in, weight_in
from tracker.trade.quoted import digits_text, money_text

PER_WORDS = {Per.TONNE: "per tonne", Per.MSF: "per 1,000 ft²"}
_BASIS_WORDS = {
    Basis.SHORT_TON: "short ton",
    Basis.TONNE: "tonne",
    Basis.CWT: "cwt (100 lb)",
    Basis.LB: "lb",
    Basis.KG: "kg",
    Basis.MSF: "1,000 ft²",
    Basis.M2: "m²",
    Basis.THOUSAND_M2: "1,000 m²",
    Basis.THOUSAND_SHEETS: "1,000 sheets",
    Basis.SHEET: "sheet",
}
_SQUARE_INCHES_PER_SQUARE_FOOT = 144
_GRAMS_PER_TONNE = 1_000_000
_KNOWN_DIGITS = 6
"""A pound or a tonne in the other's units is known by this many digits: 2,204.62 lb."""


@dataclass(frozen=True, slots=True)
class Rested:
    """What a figure rests on beside the quoted price. rate: the exchange rate, where one is needed and known.
    measured: the weight was measured on samples. low, high: the compared figure at the ends of an estimated weight's
    usual range. metric: how sums are written; None follows the basis quoted."""

    rate: Rate | None = None
    measured: bool = False
    low: float | None = None
    high: float | None = None
    metric: bool | None = None


def ladder(offer: Offer, footing: ChosenFooting, rests: Rested) -> tuple[Step, ...]:
    """The rungs of one offer; the last is the compared figure. The offer has a price, a basis and a currency."""
    assert offer.price is not None
    assert offer.basis is not None
    assert offer.currency is not None
    source = offer.source
    quoted = f"{offer.currency} {digits_text(offer.price)} per {_BASIS_WORDS[offer.basis]}"
    steps = [
        Step("as written", source.as_written or plain_text(offer.price), source.cell),
        Step("read as", quoted),
        *_sheet_step(offer, _is_metric(offer.basis, rests)),
    ]
    figure, step = _on_footing(offer, footing.per, rests)
    steps.append(step)
    counted = footing.delivered and delivered_cost_known(offer)
    if figure is not None and counted and offer.charges:
        charged, more = _with_charges(offer, figure, footing.per, rests)
        figure = charged
        steps.extend(more)
    if figure is not None and offer.currency != footing.currency:
        steps.extend(_exchange(figure, offer, footing, rests.rate))
        figure = None if rests.rate is None else figure * Fraction(rests.rate.factor)
    if figure is not None and footing.at_caliper_um is not None:
        steps.append(_at_caliper(figure, offer, footing, rests))
    final = steps.pop()
    steps += [] if counted else _not_counted(offer, footing)
    text = final.text
    if rests.low is not None and rests.high is not None:
        text += f" ({amount_text(Fraction(rests.low))} to {amount_text(Fraction(rests.high))}, as the weight may be)"
    return (*steps, Step(final.label, text, final.cell, final.estimate or rests.low is not None, last=True))


def _is_metric(basis: Basis, rests: Rested) -> bool:
    return basis not in IN_POUNDS_AND_FEET if rests.metric is None else rests.metric


def _on_footing(offer: Offer, per: Per, rests: Rested) -> tuple[Fraction | None, Step]:
    """The price alone on the chosen basis, with its sum written out."""
    assert offer.price is not None
    assert offer.basis is not None
    assert offer.currency is not None
    board = offer.measure
    figure = (per_tonne if per is Per.TONNE else per_msf)(offer.price, offer.basis, board)
    label = f"{PER_WORDS[per]} in {offer.currency}"
    if figure is None:
        return None, Step(PER_WORDS[per], f"not known: {_lacking(board)} is not quoted")
    parts = _conversion(offer.price, offer.currency, offer.basis, offer, per, rests)
    if len(parts) == 1:
        return figure, Step(label, f"{parts[0].given}, as quoted")
    return figure, Step(label, product_text(parts), estimate=_through_an_estimate(offer, per, rests))


def _through_an_estimate(offer: Offer, per: Per, rests: Rested) -> bool:
    estimated = offer.grammage_from is GrammageFrom.ESTIMATED and not rests.measured
    return estimated and (offer.basis in BY_WEIGHT) != (per is Per.TONNE)


def _lacking(board: BoardMeasure) -> str:
    return "the basis weight" if not board.grammage_gsm else "the sheet size"


def _conversion(price: Decimal, currency: str, basis: Basis, offer: Offer, per: Per, rests: Rested) -> list[Part]:
    """The price times and over what brings it to the other basis; the product is exactly trade.basis's figure."""
    first = Part(Fraction(price), given=money_text(price, currency))
    metric = _is_metric(basis, rests)
    if per is Per.TONNE:
        more = _weight_to_tonne(basis, metric) if basis in BY_WEIGHT else _area_to_tonne(basis, offer, rests)
        return [first, *more]
    if basis not in BY_WEIGHT:
        return [first, *_area_to_msf(basis, offer, metric)]
    return [first, *_weight_to_msf(basis, offer, rests)]


def _weight_to_tonne(basis: Basis, metric: bool) -> list[Part]:
    if basis is Basis.TONNE:
        return []
    kg = mass_of(basis, BoardMeasure())
    assert kg is not None
    if metric or basis is Basis.KG:
        return [_kg(Fraction(KG_PER_TONNE)), *_unless_one(_kg(kg, over=True))]
    return [_lb(Fraction(KG_PER_TONNE)), *_unless_one(_lb(kg, over=True))]


def _weight_to_msf(basis: Basis, offer: Offer, rests: Rested) -> list[Part]:
    kg = mass_of(basis, BoardMeasure())
    assert kg is not None
    if _is_metric(basis, rests):
        # g/m² × 0.0929 are the kilograms of 1,000 ft².
        return [_weight(offer, rests, metric=True), Part(M2_PER_MSF / 1000), *_unless_one(_kg(kg, over=True))]
    return [_weight(offer, rests, metric=False), *_unless_one(_lb(kg, over=True))]


def _area_to_msf(basis: Basis, offer: Offer, metric: bool) -> list[Part]:
    if basis is Basis.MSF:
        return []
    area = area_of(basis, offer.measure)
    assert area is not None
    if basis in BY_SHEET and not metric:
        return [Part(Fraction(1000), "ft²", given="1,000"), _square_feet(area, over=True)]
    return [Part(M2_PER_MSF, "m²"), *_unless_one(_square_metres(area, over=True))]


def _area_to_tonne(basis: Basis, offer: Offer, rests: Rested) -> list[Part]:
    metric = _is_metric(basis, rests)
    if not metric:
        pound_parts = [_lb(Fraction(KG_PER_TONNE)), _weight(offer, rests, metric=False, over=True)]
        return [*_area_to_msf(basis, offer, metric), *pound_parts]
    area = area_of(basis, offer.measure)
    assert area is not None
    weight = _weight(offer, rests, metric=True, over=True)
    if basis in BY_AREA and (_GRAMS_PER_TONNE / area).denominator == 1:
        return [_whole(_GRAMS_PER_TONNE / area), weight]
    return [_whole(Fraction(_GRAMS_PER_TONNE)), _square_metres(area, over=True), weight]


def _weight(offer: Offer, rests: Rested, *, metric: bool, over: bool = False) -> Part:
    assert offer.grammage_gsm is not None
    estimated = offer.grammage_from is GrammageFrom.ESTIMATED
    marked = " measured" if rests.measured else " estimated" if estimated else ""
    unit = WeightUnit.GSM if metric else WeightUnit.LB_MSF
    return Part(weight_in(offer.grammage_gsm, unit), f"{'g/m²' if metric else 'lb/MSF'}{marked}", over)


def _kg(kg: Fraction, *, over: bool = False) -> Part:
    return Part(kg, "kg", over, digits=_KNOWN_DIGITS)


def _lb(kg: Fraction, *, over: bool = False) -> Part:
    return Part(kg / KG_PER_LB, "lb", over, digits=_KNOWN_DIGITS)


def _square_metres(area: Fraction, *, over: bool = False) -> Part:
    return Part(area, "m²", over)


def _square_feet(area: Fraction, *, over: bool = False) -> Part:
    return Part(area / M2_PER_SQUARE_FOOT, "ft²", over)


def _whole(value: Fraction) -> Part:
    return Part(value, given=figure_text(value))


def _unless_one(part: Part) -> list[Part]:
    return [] if part.value == 1 else [part]


def _sheet_step(offer: Offer, metric: bool) -> list[Step]:
    """How large the sheets of one unit are, where the price is by the sheet."""
    if offer.basis not in BY_SHEET or offer.sheet_mm is None:
        return []
    many = [Part(Fraction(1000), given="1,000")] if offer.basis is Basis.THOUSAND_SHEETS else []
    per_unit, unit = (Fraction(1000), "m") if metric else (MM_PER_INCH, "in")
    sides = [Part(Fraction(side) / per_unit, unit) for side in offer.sheet_mm]
    over = [] if metric else [Part(Fraction(_SQUARE_INCHES_PER_SQUARE_FOOT), over=True, given="144")]
    label = "1,000 sheets" if many else "one sheet"
    return [Step(label, f"{product_text([*many, *sides, *over])} {'m²' if metric else 'ft²'}")]


def _with_charges(offer: Offer, price: Fraction, per: Per, rests: Rested) -> tuple[Fraction | None, list[Step]]:
    """Every charge by its own basis, and price and charges together."""
    steps, terms = [], [price]
    for charge in offer.charges:
        added, text = _charge(charge, offer, price, per, rests)
        steps.append(Step(charge.label or "charge", text))
        if added is None:
            return None, steps
        terms.append(added)
    steps.append(Step(f"delivered, {PER_WORDS[per]}", addition_text(terms)))
    return sum(terms, Fraction(0)), steps


def _not_counted(offer: Offer, footing: ChosenFooting) -> list[Step]:
    """The charges that are due and not in the figure, and why: of two offers alike the one that tells of more is not
    dearer for it."""
    why = "the delivered cost is not known" if footing.delivered else "prices are compared as quoted"
    return [
        Step(charge.label or "charge", f"{_due(charge, offer)}, not in this figure: {why}") for charge in offer.charges
    ]


def _due(charge: Charge, offer: Offer) -> str:
    if charge.currency == OPEN:
        return "how much is not certain"
    if charge.basis is None:
        return f"{plain_text(charge.price)} %"
    return f"{money_text(charge.price, charge.currency or offer.currency or '')} per {_BASIS_WORDS[charge.basis]}"


def _charge(charge: Charge, offer: Offer, price: Fraction, per: Per, rests: Rested) -> tuple[Fraction | None, str]:
    if charge.basis is None:
        share = Fraction(charge.price) / 100
        return price * share, product_text([Part(price), Part(share, given=f"{plain_text(charge.price)} %")])
    assert offer.currency is not None
    figure = (per_tonne if per is Per.TONNE else per_msf)(charge.price, charge.basis, offer.measure)
    quoted = _due(charge, offer)
    if figure is None:
        return None, f"{quoted}: not convertible, {_lacking(offer.measure)} is not quoted"
    parts = _conversion(charge.price, charge.currency or offer.currency, charge.basis, offer, per, rests)
    return figure, quoted if len(parts) == 1 else product_text(parts)


def _exchange(figure: Fraction, offer: Offer, footing: ChosenFooting, rate: Rate | None) -> list[Step]:
    """The rate, who says it and of which day, then the sum with it."""
    into = footing.currency
    if rate is None:
        return [Step(f"in {into}", f"not known: there is no rate of {offer.currency} on {day_text(footing.as_of)}")]
    part = _rate_part(Fraction(rate.factor))
    one, other = (into, offer.currency) if part.over else (offer.currency, into)
    said = f"{one} 1 = {other} {part.given or plain_text(rate.factor)}, {rate.said(footing.as_of)}"
    text = product_text([Part(figure), part])
    return [Step("exchange rate", said), Step(f"{PER_WORDS[footing.per]} in {into}", text)]


def _at_caliper(figure: Fraction, offer: Offer, footing: ChosenFooting, rests: Rested) -> Step:
    """As if the board were of another caliper at its own density: the price of an area goes with the thickness."""
    if offer.caliper_um is None or footing.at_caliper_um is None or offer.basis is None:
        return Step(footing.per_words, "not known: the caliper is not quoted")
    unit, sign = (CaliperUnit.MICROMETRE, "µm") if _is_metric(offer.basis, rests) else (CaliperUnit.POINT, "pt")
    equal, own = (caliper_in(um, unit) for um in (Fraction(repr(footing.at_caliper_um)), Fraction(offer.caliper_um)))
    return Step(footing.per_words, product_text([Part(figure), Part(equal, sign), Part(own, sign, over=True)]))


def _rate_part(factor: Fraction) -> Part:
    """A published rate is units for one euro: where dividing by it is what its readers know, divide."""
    if rounded(factor, 6) == factor:
        return Part(factor, given=figure_text(factor))
    published = rounded(1 / factor, 6)
    near = abs(published * factor - 1) < Fraction(1, 10**12)
    return Part(published, over=True, given=figure_text(published)) if near else Part(factor)
