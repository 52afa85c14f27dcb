"""Clauses with money or a unit in them that speak of something else than prices: of what board weighs, of a charge, of
another list."""

import re

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.boards.weight import weight_units
from tracker.intake.values.boards.weights_told import span_of_weights, weight_basis
from tracker.intake.values.freight.charge_heads import charge_header
from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.orders.other_goods import of_other_goods
from tracker.intake.values.prices.basis import basis_span, find_basis
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.words.lists import phrases, without_words
from tracker.intake.words.phrases import blanked, tokens_of, without

_ASIDES = re.compile(r",(?!\d)|[()]|\s[-–—]\s")


def is_of_others(clause: str) -> bool:
    """Whether a clause says neither in which currency prices are nor what they are per, for all its money and units."""
    kinds = (
        _is_of_other_goods,
        _is_sold_apart,
        _is_of_another_list,
        _is_of_pallets,
        _names_what_is_included,
        _is_of_payment,
        is_of_board,
        _is_on_request,
        _is_of_a_charge,
    )
    return any(is_of_that(clause) for is_of_that in kinds)


def _is_of_other_goods(clause: str) -> bool:
    """'The corrugated you saw is sold by the pallet', and not the title 'Offcuts of reels, euro cents per kg'."""
    return of_other_goods(clause) and not _has_whole_unit(clause)


def _is_sold_apart(clause: str) -> bool:
    """'Orders for export are quoted separately, in dollars per metric ton', and not 'USD per short ton, freight quoted
    separately' nor the title 'Export orders, USD per metric ton'."""
    first = COMMA.split(clause)[0]
    named = {match.value for match in phrases("sold_apart").find(first)}
    return named == {"goods", "apart"}


def _is_of_another_list(clause: str) -> bool:
    """'In Sweden we invoice in kronor by a list of its own' tells of that list alone; 'This is a separate list in USD
    per short ton' and 'Prices in USD per short ton as per separate list' tell of this one."""
    named = phrases("other_lists").find(clause)
    if not named:
        return False
    before = clause[: named[0].start]
    return phrases("this_list_is").whole(before) is None and not (_has_whole_unit(before) and _tells_prices(before))


def without_other_lists(clause: str) -> str:
    """'Prices per short ton, sheets on separate price list' up to the comma or bracket before the part that names the
    other list."""
    named = phrases("other_lists").find(clause)
    stops = [stop.start() for stop in _ASIDES.finditer(clause, 0, named[0].start)] if named else []
    before = clause[: stops[-1]] if stops else ""
    return before if _tells_prices(before) else clause


def _tells_prices(text: str) -> bool:
    """'Prices are in USD per short ton', 'USD/ST': the unit of all prices, with nothing before it that tells which; of
    'Prices for Sweden in SEK' and 'Exports in USD per tonne' another list may tell more."""
    places = [one.start for one in (*phrases("currency").find(text), *phrases("basis").find(text))]
    if not places or phrases("list_parts").find(text) or phrases("sold_apart").find(text):
        return False
    ahead = text[: min(places)]
    ahead = without_words(ahead, "price_words", "copula", "all_goods")
    left = re.findall(r"[^\W\d_]+", ahead)
    return all(len(word) <= _SMALL_WORD and not word.isupper() for word in left)


_SMALL_WORD = 3
"""Letters of 'in', 'per', 'je', 'par', 'pro'."""


def _is_of_pallets(clause: str) -> bool:
    """'Tauschpaletten bereithalten, sonst 12 EUR je Stück' tells what one of those costs."""
    basis = find_basis(clause)
    pallets = any(match.value == "pallet" for match in phrases("basis").find(clause))
    return pallets and basis is not None and basis.needs_sheet and any(map(str.isdigit, clause))


def _names_what_is_included(clause: str) -> bool:
    """'La palette est comprise dans le prix', 'el precio incluye el palet': an article before a thing, and no 'per'."""
    span, basis = basis_span(clause), find_basis(clause)
    if span is None or basis is None or basis.bases or find_currencies(clause):
        return False
    found = tokens_of(clause)
    start, end = found[span[0]][1], found[span[1] - 1][2]
    led = phrases("articles").whole(clause[start : found[span[0]][2]]) is not None
    said = phrases("relieved").find(COMMA.split(clause[end:])[0])
    held = any(match.value == "holds" for match in phrases("relieved").find(clause[:start]))
    included = any(match.value == "within" for match in said) and not phrases("price_words").find(clause[:start])
    return led and (held or included)


_PAYMENT = re.compile(r"\bpmt\b", re.IGNORECASE)


def _is_of_payment(clause: str) -> bool:
    """'Sterling cheques are not taken'; 'USD pmt 30 days' and 'Terms: USD pmt' say when to pay, where 'USD 635 PMT' is
    per tonne and 'USD per short ton, wire transfer, 30 days' says what prices are in."""
    if _names_means(clause) and not _has_whole_unit(clause):
        # 'Payment by wire transfer in US dollars' is in the currency of the prices.
        return bool(phrases("negations").find(clause)) or any(map(str.isdigit, clause))
    told = phrases("not_lead").find(clause) or any(match.value == "day" for match in phrases("lead").find(clause))
    return bool(told) and _PAYMENT.search(clause) is not None


def _names_means(text: str) -> bool:
    return bool(phrases("payment_means").find(text)) and not phrases("price_words").find(text)


def _has_whole_unit(text: str) -> bool:
    """A currency and what prices are per: 'USD per short ton'."""
    return bool(find_currencies(text)) and find_basis(text) is not None


def without_other_money(clause: str) -> str:
    """'Bought in USD, prices in CHF' without its part about other money than that of the prices; 'SBS in USD, CRB and
    CUK prices in CAD', 'USD/ST, prices in EUR/t' and 'prices in EUR, except our thin boards, sold in CHF' say both of
    prices."""
    if any(phrases(section).find(clause) for section in ("excepted", "exceptions")):
        return clause
    parts = COMMA.split(clause)
    in_money = [part for part in parts if find_currencies(part)]
    of_prices = [part for part in in_money if phrases("price_words").find(part)]
    others = [part for part in in_money if part not in of_prices]
    kept = (_may_be_of_prices(part) or _is_of_a_board(part, parts) for part in others)
    if len(of_prices) != 1 or any(kept):
        return clause
    return ",".join(part for part in parts if part not in others)


def _may_be_of_prices(part: str) -> bool:
    return find_grade(part) is not None or find_basis(part) is not None or bool(phrases("forms").find(part))


def _is_of_a_board(money: str, parts: list[str]) -> bool:
    """The 'in CAD' of 'prices in USD, CRB, made in Canada, in CAD', with nothing else said in it."""
    ahead = parts[: parts.index(money)]
    named = [part for part in ahead if find_grade(part) is not None and not find_currencies(part)]
    spans = [match.span for match in phrases("currency").find(money)]
    return bool(named) and not rest_of(money, spans, "copula", "invoices", "units_in_doubt", "relative_words", "per")


def without_payment(clause: str) -> str:
    """'EUR/t, cheques in sterling, 30 days' without its part about means of payment, where the others have a currency
    and a unit of their own."""
    parts = COMMA.split(clause)
    left = ",".join(part for part in parts if _has_whole_unit(part) or not _names_means(part))
    return left if _has_whole_unit(left) else clause


def without_weights(clause: str) -> str:
    """'US dollars, weights per MSF' without its part about what board weighs, which is no unit of prices, and 'Basis
    weights per 1,000 sq ft. Rolls are priced per short ton' without the unit right behind the weights."""
    parts = COMMA.split(clause)
    of_prices = [part for part in parts if not is_of_board(part)]
    left = ",".join(of_prices) if of_prices and len(of_prices) < len(parts) else clause
    told = weight_basis(left)
    if told is not None and (told.of_sheets or told.ream is not None):
        # 'The weight is lb per 1,000 sheets and the price is $ per cwt'.
        return blanked(left, [span_of_weights(left)])
    weighed = next(iter(phrases("weight_words").find(left)), None)
    units = [] if weighed is None else [one for one in phrases("weight_units").find(left) if one.end >= weighed.end]
    if weighed is None or not units or _tells_of_money(left[weighed.end : units[0].start]):
        return left
    as_money = bool(find_currencies(left[weighed.start : weighed.end]))
    return blanked(left, [(weighed.start if as_money else weighed.end, units[0].end)])


def _tells_of_money(words: str) -> bool:
    return bool(phrases("price_words").find(words) or find_currencies(words))


def is_of_board(clause: str) -> bool:
    """'Weight in lb per 3000 sq ft ream' tells what board weighs, and neither a currency nor what prices are per."""
    weighed = phrases("weight_words").find(clause) and weight_units(clause)
    money = find_currencies(without(clause, phrases("weight_words").find(clause)))
    return bool(weighed) and not phrases("price_words").find(clause) and not money


_MARKS = " -–—•*¹²³)"


def _is_of_a_charge(clause: str) -> bool:
    """'Sheeting charges, US$/cwt (if sheets are ordered)' tells in what a charge is, and nothing of the prices.

    The word right behind the charge belongs to it ('freight rates'); farther on, 'prices' are the board's.
    """
    said = clause.lstrip(_MARKS)
    if _is_quoted_itself(said):
        return True
    named = charge_header(clause)
    if named is None or not said.startswith(named.label):
        return False
    _, _, behind = said.removeprefix(named.label).strip().partition(" ")
    return not phrases("price_words").find(_without_denial(behind))


def _without_denial(text: str) -> str:
    """The words behind a charge but for '(not included in prices)', which only says that the prices bear none of it."""
    parts = [part for part in _ASIDES.split(text) if part]
    told = [part for part in parts if not (phrases("negations").find(part) and phrases("freight_included").find(part))]
    return " ".join(told)


def _is_quoted_itself(said: str) -> bool:
    """'Freight to your dock is quoted beside each item, in US$/cwt', and not 'Freight included, prices in USD/t'."""
    first, *others = COMMA.split(said)
    quoted = phrases("price_words").find(first) and find_delivery(first) is None
    begins = any(found.first == 0 for found in charges_named(said))
    return begins and bool(quoted) and not any(phrases("price_words").find(part) for part in others)


def _is_on_request(clause: str) -> bool:
    """'Canadian customers: C$ list on request' is about another list, where '$/ST, other grades on request' is not."""
    named = find_currencies(clause)
    parts = [part for part in COMMA.split(clause) if find_currencies(part)]
    # A single word ('open', 'call') may be said of anything.
    return bool(named) and all(
        any(one.after - one.first > 1 for one in phrases("no_price").find(part)) for part in parts
    )
