"""Order-size brackets in kg, and those of one table joined without gaps."""

from dataclasses import dataclass, replace
from decimal import Decimal
from itertools import pairwise

from tracker.intake.values.figures.numbers import NumberReading
from tracker.intake.values.orders.brackets import Bracket
from tracker.intake.values.orders.masses import Mass
from tracker.trade.quantities import MassUnit


@dataclass(frozen=True, slots=True)
class KgBracket:
    """A bracket in kg, start inclusive, end exclusive, None open. `unread`: it can't be put in weight (yet).

    `of_sheets`: it counts sheets, to be weighed with the board's own. `stated`: the one quantity that its price was
    asked for, which bounds no order. `of_ton`: unread for no other reason than that its ton may be either. `beside`: it
    may be of a list of its own, and bounds no order of the board in its row.
    """

    from_kg: Decimal | None = None
    below_kg: Decimal | None = None
    unread: bool = False
    of_sheets: bool = False
    stated: bool = False
    of_ton: bool = False
    beside: bool = False

    def weighed(self, sheet_kg: Decimal) -> "KgBracket":
        """A count of sheets in kg, where one of them weighs so much."""
        start = None if self.from_kg is None else self.from_kg * sheet_kg
        return KgBracket(start, None if self.below_kg is None else self.below_kg * sheet_kg)


def in_kg(bracket: Bracket, ton: MassUnit | None = None, sign: str | None = None) -> KgBracket:
    """One bracket in kg by itself; unread where it is no weight, names no limit at all, or its ton or number is not
    settled: what a sheet says of order sizes never holds for every order."""
    start = None if bracket.start is None else bracket.start.kg(ton, sign)
    end = None if bracket.end is None else bracket.end.kg(ton, sign)
    open_start, open_end = bracket.start is None, bracket.end is None
    unlimited = open_start and open_end
    if bracket.not_weight or unlimited or (not open_start and start is None) or (not open_end and end is None):
        return KgBracket(unread=True)
    if start is not None and end is not None and start >= end:
        return KgBracket(unread=True)
    if any(bound is not None and bound > LARGEST_ORDER_KG for bound in (start, end)):
        return KgBracket(unread=True)
    # '0–5 t' begins where every order does.
    return KgBracket(start or None, end if end is None else end + _short_of_the_round(bracket, end, ton))


def _short_of_the_round(bracket: Bracket, end_kg: Decimal, ton: MassUnit | None) -> Decimal:
    """What '39,999 lb' lacks of the 40,000 at which it ends, in kg, so that it ends so in every list of the vendor."""
    assert bracket.end is not None
    unit_kg = Mass((NumberReading(Decimal(1)),), bracket.end.units).kg(ton)
    if not bracket.end_included or not unit_kg:
        return Decimal(0)
    return unit_kg if (end_kg / unit_kg + 1) % _ROUND == 0 else Decimal(0)


_ROUND = 100

LARGEST_ORDER_KG = Decimal(10) ** 9
"""A million tonnes: more than any mill makes in a year, so a larger figure is a slip."""


def joined(
    brackets: tuple[Bracket, ...], ton: MassUnit | None = None, sign: str | None = None
) -> tuple[KgBracket, ...]:
    """The brackets of one table in kg, in the order given, each ending where the next begins.

    'ab 5 t' ends at the next start; '5,000–9,999 lb' before '10,000+' ends at 10,000; a row of 'up to' begins each
    where the last one ended. Repeated brackets are one. What can't be put in weight stays unread, and so does a bare
    weight beside it that no other ends: '10,000 lb' before 'TL' ends where a truckload begins.
    """
    alone = {bracket: in_kg(bracket, ton, sign) for bracket in brackets}
    readable = sorted((one for one in alone if not alone[one].unread), key=lambda one: _order(alone[one]))
    for one, following in pairwise(readable):
        alone[one], alone[following] = _meeting(one, alone[one], alone[following])
    if any(alone[one].unread and _may_begin_above(one) for one in alone):
        open_ = (one for one in readable if one.alone and alone[one].below_kg is None)
        alone |= dict.fromkeys(open_, KgBracket(unread=True))
    return tuple(alone[bracket] for bracket in brackets)


def _may_begin_above(bracket: Bracket) -> bool:
    """A truckload, or a weight in a ton that is not settled: the other sizes may end where it begins."""
    return bracket.not_weight in ("truckload", "railcar") or (not bracket.not_weight and bracket.start is not None)


def _order(bracket: KgBracket) -> tuple[Decimal, Decimal]:
    start = bracket.from_kg or Decimal(0)
    return start, bracket.below_kg if bracket.below_kg is not None else Decimal("Infinity")


def _meeting(one: Bracket, a: KgBracket, b: KgBracket) -> tuple[KgBracket, KgBracket]:
    if b.from_kg is None:
        # 'up to 5 t', 'up to 10 t': the second begins where the first ends.
        if a.below_kg is not None and b.below_kg is not None and a.below_kg < b.below_kg:
            return a, replace(b, from_kg=a.below_kg)
        return a, b
    if a.below_kg is None:
        return (replace(a, below_kg=b.from_kg), b) if (a.from_kg or 0) < b.from_kg else (a, b)
    if one.end_included and a.below_kg < b.from_kg <= a.below_kg + _step(one):
        return replace(a, below_kg=b.from_kg), b
    return a, b


def _step(bracket: Bracket) -> Decimal:
    """One unit of the last figure written for the end: '9,999 lb' 1 lb, '4.9 t' 100 kg.

    In kg, with room for rounding.
    """
    if bracket.step is not None:
        return (bracket.step.kg(MassUnit.TONNE) or Decimal(0)) * Decimal("1.01")
    end = bracket.end
    if end is None:
        return Decimal(0)
    exponent = max(int(amount.value.as_tuple().exponent) for amount in end.amounts)
    smallest = Mass((replace(end.amounts[0], value=Decimal(1).scaleb(min(exponent, 0))),), end.units[:1])
    step = smallest.kg() or Decimal(0)
    return step * (Decimal("1.2") if end.ambiguous_ton else Decimal("1.01"))
