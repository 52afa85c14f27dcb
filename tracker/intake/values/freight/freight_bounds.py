"""What bounds a freight that prices include: an order size, a full load, a region or an exception beside it.

A discount, a lead time or a bonus that hangs on an order size bounds itself: 'Frei Haus, ab 10 t 2 % Rabatt'.
"""

import re
from collections.abc import Iterable

from tracker.intake.values.changes.discounts import names_discount
from tracker.intake.values.figures.rates import in_signs, is_added
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.freight.delivery_charged import sums_in
from tracker.intake.values.freight.freight_of_orders import of_some_orders
from tracker.intake.values.freight.place_behind import end_of_place
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.orders.orders_priced import orders_priced
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.prices.money import find_price_unit
from tracker.intake.values.times.lead_sentences import times_deliveries
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import joined, phrases, without_words
from tracker.intake.words.phrases import tokens_of


def bounded_beside(clause: str) -> bool:
    """'Ab 10 t, frei Haus', 'full truckloads, delivered', 'franco, à partir de 5 t', 'frei Haus, Inseln ausgenommen': a
    part of its own bounds the freight."""
    parts = COMMA.split(clause)
    told = next((place for place, part in enumerate(parts) if find_delivery(part) is not None), None)
    if told is None:
        return False
    before, behind = parts[max(told - 1, 0) : told], parts[told + 1 :]
    if any(map(_tells_of_elsewhere, behind)) or _excepts_some(behind):
        return True
    if find_currencies(clause) or find_price_unit(clause) is not None:
        # An order size ahead is that of the prices: 'EUR/t, ab 5 t, frei Haus'.
        return orders_priced(clause) is None and any(map(_bounds, behind[:1]))
    return any(map(_bounds, (*before, *behind[:1])))


def _tells_of_elsewhere(part: str) -> bool:
    """'Delivered in Ohio, freight $40/ST elsewhere', 'freight $40/ST to Alaska': to somewhere freight costs money, or
    another term holds; and so in 'delivered east coast, west coast add $30/ST'."""
    if phrases("regions_reached").at(tokens_of(part.strip()), 0) is not None and is_added(in_signs(part)):
        return True
    carried = bool(phrases("carriage").find(part)) and sums_in(part)
    led = carried and any(_PLACE.match(part[one.end :]) for one in phrases("to_a_place").find(part))
    return led or (bool(phrases("other_places").find(part)) and (carried or find_delivery(part) is not None))


def _bounds(part: str) -> bool:
    if _has_its_own_term(part):
        return False
    # What is bought in a year is no order size, but a load of it is one.
    sized = _bounds_orders(part) and not phrases("yearly").find(part)
    return sized or within_a_reach(part) or of_full_loads(part)


def _has_its_own_term(part: str) -> bool:
    """'Ab 10 t 2 % Rabatt', 'truckloads ship in 2 weeks', 'shipped in full truckloads'."""
    sent = phrases("dispatch").at(tokens_of(part.strip()), 0)
    return (
        (sent is not None and sent.value == "sent")
        or times_deliveries(part)
        or names_discount(part)
        or any(phrases(section).find(part) for section in ("reductions", "own_terms"))
    )


def _bounds_orders(part: str) -> bool:
    """'Ab 10 t', 'orders over 5 t': a size of order and what it begins with; 'minimum order 5 t' is another."""
    found = tokens_of(part.strip())
    named = phrases("order_words").at(found, 0)
    led = phrases("bracket").at(found, named.after if named is not None else 0)
    sized = led is not None and led.value in ("from", "above", "below") and bool(find_masses(part))
    return (sized and not phrases("minimum").find(part)) or _of_named_orders(part)


def _of_named_orders(part: str) -> bool:
    """'For orders over 10 t'; 'prices are firm for orders entered by 18 December' tells of prices first."""
    return phrases("on_orders").at(tokens_of(part.strip()), 0) is not None and of_some_orders(part)


def _excepts_some(behind: Iterable[str]) -> bool:
    """'Inseln ausgenommen' of the freight right before it; 'Samstage ausgenommen' excepts no order, and behind a lead
    time it is said of that."""
    for part in behind:
        if _has_its_own_term(part):
            return False
        if phrases("excepted_behind").find(part):
            return not _names_days_alone(part)
    return False


def _names_days_alone(part: str) -> bool:
    """'Saturdays and holidays excepted', and not 'holidays and Alaska excepted'."""
    if not phrases("days_off").find(part):
        return False
    return not any(map(str.isalpha, without_words(part, "days_off", "excepted_behind", "and_words", "articles")))


def of_full_loads(part: str) -> bool:
    """'Full freight allowed on truckloads': on no smaller order."""
    return any(match.value == "truckload" for match in phrases("loads_priced").find(part))


_DISTANCE = re.compile(r"\s*(?:a |of |de |von |av )?\d+\s?(?:km|kilomet\w+|miles?|mi)\b")


def within_a_reach(part: str) -> bool:
    """'Delivered within 100 miles', 'innerhalb Bayerns frei Haus', and not 'delivered to Dayton (45 miles from our
    mill)', 'innerhalb Deutschlands frei Haus' nor 'prices delivered within Ontario', which is where the list is for."""
    folded = fold(part)
    return any(
        _DISTANCE.match(folded[match.end :]) or (match.first == 0 and _in_a_region(part[match.end :]))
        for match in phrases("reach").find(part)
    )


def included_somewhere(part: str) -> bool:
    """'Freight is included within Ohio', 'transporte incluido en Galicia': to another place it may not be."""
    carried = phrases("carriage").find(part)
    within = [one for one in phrases("freight_included").find(part) if one.value == "in_price"]
    return any(
        _leads_inside(part, one.end)
        for one in within
        if carried and not rest_of(part[carried[0].end : one.start], (), "copula", "beside_included", "negations")
    )


def _leads_inside(part: str, start: int) -> bool:
    lead = joined("reach", "inside_a_place").at(tokens_of(part[start:]), 0)
    behind = part[start + lead.end :] if lead is not None else ""
    region = phrases("regions_reached").at(tokens_of(behind), 0) is not None
    return region or (_in_a_region(behind) and end_of_place(behind, 0) > 0)


def _in_a_region(behind: str) -> bool:
    return _PLACE.match(behind) is not None and phrases("whole_markets").at(tokens_of(behind), 0) is None


_PLACE = re.compile(r"\s+[^\W\d_a-zà-öø-ÿ][^\W\d_]*[a-zà-öø-ÿ]")
