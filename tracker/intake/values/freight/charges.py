"""What is quoted beside the price: freight, energy, sheeting; as a column's header or inside a note."""

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field, replace
from functools import lru_cache

from tracker.intake.values.figures.numbers import NumberReading, number_readings
from tracker.intake.values.freight.additions_below import perhaps_added, told_by_its_line
from tracker.intake.values.freight.amounts_unsure import is_unsure
from tracker.intake.values.freight.bearers import bearers
from tracker.intake.values.freight.charge_amounts import amount_in, left_beside
from tracker.intake.values.freight.charge_names import ChargeKind, charges_named, label_of
from tracker.intake.values.freight.charge_parts import (
    PARTS,
    ClauseParts,
    is_condition,
    is_of_some_board,
    relieves,
    tells_another_rate,
    without_added,
)
from tracker.intake.values.freight.charged_forms import form_not_freed
from tracker.intake.values.freight.charged_measures import WidthBound
from tracker.intake.values.freight.charges_together import named_alone, named_together, parted_at_plus
from tracker.intake.values.freight.charges_told_before import of_some_customers
from tracker.intake.values.freight.costs_told import tells_costs
from tracker.intake.values.freight.freight_lanes import leads_to_several, without_lane
from tracker.intake.values.freight.included_together import may_be_included, without_included
from tracker.intake.values.freight.named_before import with_their_names
from tracker.intake.values.freight.not_included import without_denied, without_not_included
from tracker.intake.values.freight.open_shares import is_open_share
from tracker.intake.values.freight.other_dealings import is_monthly, may_be_of_other_dealings, of_other_dealings
from tracker.intake.values.freight.prices_hold import left_out_of_prices, left_out_unsaid
from tracker.intake.values.freight.relieved_charges import NoCharge, no_charges
from tracker.intake.values.freight.taken_off import signs_money, takes_off
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.denials import denied
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.orders.other_goods import without_other_goods
from tracker.intake.values.orders.small_orders import begins_with_small_orders, signs_of_small, size_of_small
from tracker.intake.values.prices.basis import BasisReading
from tracker.intake.values.prices.currency import CurrencyReading, find_currencies
from tracker.intake.values.prices.price_within import prices_within
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import pattern, phrases
from tracker.intake.words.phrases import Found, outside


@dataclass(frozen=True, slots=True)
class ChargeWords:
    """A charge as written. `amounts`: its readings in the main unit, () in a header and where a note names a charge
    and not what it comes to. `percent`: of the price.

    `basis` None without `percent`: the text does not say per what. `as_price`: the figure stands among the prices, and
    what it does not say of currency and unit is theirs. `form`: the one that alone bears it, '' for all; `bound`: the
    widths of rolls that do; `of_some`: some do, and which is not read. `clause`: what names it in a note.
    """

    kind: ChargeKind
    label: str
    amounts: tuple[NumberReading, ...] = ()
    currency: CurrencyReading | None = None
    basis: BasisReading | None = None
    percent: bool = False
    as_price: bool = False
    form: str = ""
    bound: WidthBound | None = None
    of_some: bool = False
    clause: str = field(default="", compare=False)


_PERCENT = re.compile(
    r"((?:(?<!\d)(?<!\d\s)[-+])?\d+(?:[.,]\d+)?)\s*(?:%|percent|per cent|prozent|procent|pour cent|por ciento)"
)


@lru_cache(maxsize=4096)
def find_charges(text: str) -> tuple[ChargeWords, ...]:
    """The charges that a note states: 'plus 3 % energy surcharge', 'freight $1.85/cwt extra'.

    A clause must name one kind of charge and hold one amount; a discount or a payment term is none. A surcharge that
    applies and whose amount is not given, or not understood, has no amounts: the cost with it is not known.
    """
    beside = (tells_costs, _tells_of_prices, of_other_dealings, begins_with_small_orders, told_by_its_line)
    own = map(without_other_goods, with_their_names(map(left_out_of_prices, map(without_included, clauses(text)))))
    told = (clause for clause in map(without_not_included, own) if not any(tells(clause) for tells in beside))
    bearing = form_not_freed(text)
    found = [_if_decided(one, clause) for clause in told for one in _of_form(clause, bearing)]
    found += [ChargeWords(kind, label, clause=clause) for kind, label, clause in left_out_unsaid(text)]
    # What ends or begins on a day is told once the day of the list is known.
    free = [one for one in no_charges(text) if not (one.grades or one.days or one.form) and one.delivered is None]
    # 'Energy surcharge of $18/ST does not apply to Canadian customers': the others pay it, and who buys is not known.
    others = (one for one in no_charges(text) if one.open and of_some_customers(one.words))
    named = (*found, *(ChargeWords(one.kind, one.label, clause=one.words) for one in others))
    several = leads_to_several(text)
    left = (relieved(one, free) for one in named if one and not (several and one.kind is ChargeKind.FREIGHT))
    return tuple(charge for charge in left if charge is not None)


def _of_form(clause: str, bearing: str) -> Iterator[ChargeWords | None]:
    """The charges of a clause with the form of board that it says bears them; else with the one that alone is not freed
    of them. What a size bounds is never lost, for some bear it, 'Rolls under 24 in: + $40/ST' by no name."""
    borne = bearers(clause)
    found, named = [one for one in _in_clause(without_added(borne.said)) if one], charges_named(borne.said)
    if borne.never_none and not (found or _is_beside_the_price(clause)):
        kind, label = (ChargeKind(named[0].value), label_of(borne.said, named)) if named else (ChargeKind.OTHER, clause)
        found = [ChargeWords(kind, label.strip())]
    for one in found:
        amounts = () if borne.unsure else one.amounts
        form = borne.form or bearing
        yield replace(one, form=form, bound=borne.bound, of_some=borne.unsure, amounts=amounts)


def _if_decided(charge: ChargeWords | None, clause: str) -> ChargeWords | None:
    """'Wir behalten uns vor, einen Energiezuschlag von 3 % zu erheben': whether it will be charged is open."""
    thought = phrases("only_considered").find(clause)
    if charge is None:
        return None
    ahead = bool(thought) and thought[0].start < clause.find(charge.label)
    unsure = ahead or may_be_included(clause) or perhaps_added(clause) or may_be_of_other_dealings(clause)
    return replace(charge, clause=clause, amounts=() if unsure else charge.amounts)


def _tells_of_prices(clause: str) -> bool:
    """'Prices and surcharges hold until 30 November' charges nothing."""
    priced, named = phrases("price_words").find(clause), charges_named(clause)
    joined = priced and named and _AND.fullmatch(clause[priced[0].end : named[0].start].rstrip())
    return bool(joined) and not (find_currencies(clause) or _PERCENT.search(fold(clause)))


def _in_clause(clause: str) -> Iterator[ChargeWords | None]:
    for part in ClauseParts.of(clause).charged:
        pieces = parted_at_plus(part)
        for piece in pieces:
            found = _for_all_named(_in_part(piece) or _without_amount(piece), clause)
            if found is None and piece is not pieces[0] and (kind := named_alone(piece)) is not None:
                found = ChargeWords(kind, label_of(piece, charges_named(piece)))
            # A share behind 'freight $45/ST plus' may as well be one of freight.
            behind = piece is not pieces[0] and any(map(str.isdigit, pieces[0]))
            unsure = found is not None and (is_unsure(piece, clause) or (behind and found.percent))
            yield replace(found, amounts=()) if found is not None and unsure else found


def _for_all_named(charge: ChargeWords | None, clause: str) -> ChargeWords | None:
    """An amount behind two charges is no sum for one of them; a share of the price is no freight."""
    together = named_together(clause) if charge is not None and not charge.percent else []
    both = next((one for one in together if charge is not None and one.names(charge.label)), None)
    if charge is None or both is None:
        return charge
    return replace(charge, label=both.label, amounts=charge.amounts if both.alike else ())


def relieved(charge: ChargeWords, free: Iterable[NoCharge]) -> ChargeWords | None:
    """What is left of a charge: None where it is not charged, no amounts where that is not certain yet."""
    figures = [reading.value for reading in charge.amounts]
    ends = [one.ends(figures, charge.clause) for one in free if one.is_of(charge.kind, charge.label)]
    if any(ends):
        return None
    return replace(charge, amounts=()) if None in ends else charge


_AND = re.compile(rf"\s*\b{pattern('range', 'and')}\b", re.IGNORECASE)


def beside_charges(clause: str) -> str:
    """A clause without its parts that state a charge: 'EUR/t, plus 3 % energy surcharge' -> 'EUR/t'."""
    parts = PARTS.split(clause)
    left: list[str] = []
    of_charge = False
    for part in parts:
        # 'Sauf sur le carton gris' says of the charge before it on which boards it is not.
        follows = of_charge and any(match.first == 0 for match in phrases("exceptions").find(part))
        of_charge = follows or _in_part(part.strip()) is not None or _of_small_orders(part)
        left += [] if of_charge else [part]
    return clause if len(left) == len(parts) else ", ".join(part.strip() for part in left)


def _without_amount(part: str) -> ChargeWords | None:
    """'An energy surcharge applies': it will be charged, and nothing says how much."""
    named = charges_named(part)
    if not named or _is_included(part) or _is_beside_the_price(part):
        return None
    on_top = without_denied(part)
    if not (_only_conditions(on_top) or _waived_for_some(part)):
        return None
    kind, label = ChargeKind(named[0].value), label_of(part, named)
    surcharge = kind is ChargeKind.ENERGY or bool(phrases("surcharge_words").find(label))
    surcharge = surcharge or bool(phrases("added_on_top").find(part)) or _is_paid_on_some_board(part, kind)
    told = phrases("surcharge_applies").find(part) or find_currencies(part) or _PERCENT.search(fold(part))
    if not (told or on_top != part or tells_another_rate(part.partition(label)[2])):
        return None
    return ChargeWords(kind, label) if surcharge else None


def _is_paid_on_some_board(part: str, kind: ChargeKind) -> bool:
    """'Für SBS berechnen wir einen Rohstoffzuschlag von 60 EUR/t' is charged, whether or not it is told apart on which
    boards; freight alone makes no cost look whole."""
    return kind is not ChargeKind.FREIGHT and is_of_some_board(part) and next(prices_within(part), None) is not None


def _stated_in(part: str) -> list[Found[str]]:
    """The charges that a part of a note speaks of; none where they are included, waived, hang on a condition, or are of
    small orders alone."""
    # The 'incluido' of 'no incluido' is none by itself, nor is the 'taxe' of 'taxe carbone'.
    others = [*phrases("charge_filler").find(part), *phrases("other_taxes").find(part)]
    said = outside(phrases("not_charge").find(part), others)
    said = [one for one in said if not (relieves(part, one) and denied(part, one)) and not is_monthly(part, one)]
    # What 'does not apply to FOB orders' does to others.
    of_others = any(free.delivered is not None for free in no_charges(part))
    conditional = not of_others and any(is_condition(part, match) for match in said)
    return [] if _is_included(part) or conditional or _is_beside_the_price(part) else charges_named(part)


def _of_small_orders(part: str) -> bool:
    """'Mindermengenzuschlag 60 EUR/t' is told beside the price, and no part of what a usual order costs."""
    small = signs_of_small(part) or size_of_small(part) is not None
    return bool(small) and bool(charges_named(part))


def _is_beside_the_price(part: str) -> bool:
    return _of_small_orders(part) or tells_costs(part)


def _is_included(part: str) -> bool:
    """'Freight included'; what 'applies to delivered prices' is not in them."""
    leads = [match.end for match in phrases("about_lines").find(part)]
    return any(
        len(part[: match.start].rstrip()) not in leads or bool(charges_named(part[match.start : match.end]))
        for match in phrases("delivery").find(part)
        if match.value == "delivered"
    )


def _waived_for_some(part: str) -> bool:
    """'Energy surcharge $15/ST (waived for orders over 20 ST)': others bear it."""
    waived = any(match.value == "waived" for match in phrases("relieved").find(part))
    return waived and bool(find_masses(part) or phrases("only_if").find(part))


def _only_conditions(part: str) -> bool:
    """'From 1 July' and 'if gas exceeds 4' leave open what will be charged; 'included' and 'waived' do not."""
    conditions = {match.span for match in phrases("charge_conditions").find(part)}
    said = (match for match in phrases("not_charge").find(part) if is_condition(part, match))
    return all(match.span in conditions for match in said)


def _in_part(part: str) -> ChargeWords | None:
    part = without_lane(part)
    named = _stated_in(part)
    if not named or is_of_some_board(part):
        # 'Energy surcharge 3 % SBS, 2.5 % CRB' is one rate a board, and none for all of them.
        return None
    kind, label = ChargeKind(named[0].value), label_of(part, named)
    percents = list(_PERCENT.finditer(fold(part)))
    if len(percents) == 1:
        # '-3 %' takes something off, or parts the figure from its name.
        unsure = percents[0][1].startswith("-") or is_open_share(part, percents[0].span())
        readings = () if unsure else number_readings(percents[0][1])
        return ChargeWords(kind, label, readings, percent=True) if readings else ChargeWords(kind, label)
    if percents:
        return ChargeWords(kind, label)
    return _money(part, named, ChargeWords(kind, label)) or _not_understood(part, ChargeWords(kind, label))


def _not_understood(part: str, charge: ChargeWords) -> ChargeWords | None:
    """'Packing $12/ST on all rolls' is charged, whatever it is that we do not know of it; a freight may be that of
    prices without it alone, and without one nobody takes a cost to be delivered."""
    charged = charge.kind is not ChargeKind.FREIGHT or named_together(part)
    priced = charged and next(prices_within(part), None) is not None
    return charge if priced else None


def _money(part: str, named: list[Found[str]], charge: ChargeWords) -> ChargeWords | None:
    """The one amount left when the words for the charge and for 'extra' are taken out."""
    rest = left_beside(part, named)
    if takes_off(rest):
        return charge if signs_money(rest) else None
    if (price := amount_in(part, rest)) is None:
        return None
    return without_pieces(replace(charge, amounts=price.amounts, currency=price.currency, basis=price.basis))


def without_pieces(charge: ChargeWords) -> ChargeWords:
    """A charge without its amount where that is for each of something: a piece of board is a sheet, that of 'Pallets,
    $12 each' is a pallet."""
    pieces = charge.basis is not None and charge.basis.needs_sheet
    return replace(charge, amounts=()) if pieces and charge.kind is ChargeKind.OTHER else charge
