"""Whether a note says that its prices include freight: of all of them, of some orders, boards or places, or of none."""

import re
from collections.abc import Iterator
from dataclasses import replace
from decimal import Decimal
from functools import lru_cache

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.figures.numbers_in_words import says_unread_number
from tracker.intake.values.freight.billed_on import billed_beside
from tracker.intake.values.freight.carriage_included import costs_elsewhere, without_amount_included
from tracker.intake.values.freight.delivered_otherwise import freight_of_orders_in, goes_on_unread, told_of_unknown
from tracker.intake.values.freight.delivery import Delivery, find_delivery, priced_at_its_store, terms_in
from tracker.intake.values.freight.delivery_charged import costs_extra
from tracker.intake.values.freight.freight_bounds import (
    bounded_beside,
    included_somewhere,
    of_full_loads,
    within_a_reach,
)
from tracker.intake.values.freight.freight_of_orders import of_some_orders
from tracker.intake.values.freight.prices_hold import freight_held
from tracker.intake.values.freight.relieved_charges import no_charges
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.orders.masses import Mass, find_mass_units, find_masses
from tracker.intake.values.orders.minimum import tells_a_least
from tracker.intake.values.orders.small_orders import begins_with_small_orders
from tracker.intake.values.prices.ton_kinds import ton_definition
from tracker.intake.values.times.lead_sentences import times_deliveries
from tracker.intake.words.lists import pattern, phrases
from tracker.intake.words.phrases import blanked, tokens_of


@lru_cache(maxsize=8192)
def freight_of_prices(text: str) -> Delivery | None:
    """'Free delivery from 10 t' holds for some orders, 'delivered, except CUK' for some boards, and 'we delivered
    48,000 tons' for none: whether these prices include freight is left open."""
    elsewhere = costs_elsewhere(text)
    text = without_amount_included(freight_held(text))
    said = _of_prices(text)
    if said is not None and any(_of_some_boards(clause) for clause in clauses(text)):
        return Delivery(None, said.words)
    of_freight = [clause for clause in clauses(text) if find_delivery(clause) is not None]
    if said is not None and all(map(begins_with_small_orders, of_freight)):
        return Delivery(None, said.words, said.of_lead_time, conditional=True)
    if said is None or said.delivered is False:
        return said
    told = (_of_an_order, _on_a_condition, bounded_beside, goes_on_unread, billed_beside)
    open_ = elsewhere or any(tells(clause) for clause in clauses(text) for tells in told)
    if not open_:
        return said
    asked = bool(of_freight) and all(map(_is_on_request, of_freight))
    whole = _without_places(text)
    by_place = whole != text and (said_whole := freight_of_prices(whole)) is not None and bool(said_whole.delivered)
    return Delivery(None, said.words, said.of_lead_time, True, asked, by_place)


def _without_places(text: str) -> str:
    """'Entregado según zona', 'franco selon la zone' without what tells that each place has its price."""
    places = [match for match in phrases("headers").find(text) if match.value == Role.DESTINATION]
    leads = phrases("goes_by").find(text)
    spans = [(lead.start, place.end) for lead in leads for place in places if 0 <= place.first - lead.after <= 1]
    return blanked(text, spans).strip(" ,")


def _is_on_request(clause: str) -> bool:
    """'Delivered prices on request', 'franco à partir de 20 t : nous consulter', with no more behind; 'freight at cost'
    has its price."""
    return any(match.end == len(clause.rstrip(" .!)")) for match in phrases("no_price").find(clause))


def _on_a_condition(clause: str) -> bool:
    """'Delivered at cost', 'free delivery within 50 km', 'delivered prices on request': not every price includes it."""
    parts = [part for part in re.split(r",(?!\d)", clause) if find_delivery(part) or phrases("charges").find(part)]
    told = (_charged, _at_an_extra, within_a_reach, included_somewhere, of_full_loads, of_some_orders)
    return any(tells(part) for part in parts for tells in told)


def _charged(part: str) -> bool:
    """Of delivery or freight; 'fuel at cost' and 'at no cost' leave the freight where it is."""
    leads = _what_is_offered(part)
    conditions = [one for one in phrases("freight_conditions").find(part) if one.start >= leads]
    # The 'frais' of 'aux frais du client' are no charge of another kind, nor is the 'duty' of 'delivered duty paid'.
    spans = [one.span for one in (*conditions, *terms_in(part))]
    named = {
        match.value
        for match in phrases("charges").find(part)
        if not any(start <= match.start < end for start, end in spans)
    }
    return bool(conditions) and (not named or "freight" in named)


def _what_is_offered(part: str) -> int:
    """Where the 'Wir bieten Ihnen an' before '(DAP Ihr Werk)' ends, which is said of all prices of a letter, else 0:
    'frei Haus bieten Ihnen an: unsere Verkäufer' and 'frei Haus auf Anfrage' leave the freight to who asks."""
    first = next(iter(terms_in(part)), None)
    return 0 if first is None or rest_of(part[: first.start], (), "offering") else first.start


def _at_an_extra(part: str) -> bool:
    """'Lieferung frei Haus gegen 20 EUR/t': the prices without it are not delivered."""
    delivered = [term for term in terms_in(part) if term.value == "delivered"]
    return bool(delivered) and costs_extra(part, delivered)


def _of_some_boards(clause: str) -> bool:
    grade = find_grade(clause)
    if find_delivery(clause) is None:
        return False
    if grade is None or not grade.grades:
        return any(map(_is_of_boards, _excepted_in(clause)))
    some = phrases("exceptions").find(clause) or phrases("only_these").find(clause)
    return bool(some) or _goes_on_about_others(clause)


def _goes_on_about_others(clause: str) -> bool:
    """'SBS delivered in 3 weeks, CRB in 4 weeks' says of SBS alone that it is delivered."""
    named = [(part, grade.grades) for part in re.split(r",(?!\d)", clause) if (grade := find_grade(part)) is not None]
    delivered = {grades for part, grades in named if grades and find_delivery(part) is not None}
    return len(delivered) == 1 and any(grades and grades not in delivered for _, grades in named)


def _excepted_in(clause: str) -> Iterator[str]:
    """What stands behind 'except'."""
    for section in ("exceptions", "excepted"):
        yield from (clause[match.end :] for match in phrases(section).find(clause))


def _is_of_boards(excepted: str) -> bool:
    """'Our Kvist boards', 'die Kvist-Sorten': boards that are named, and not by a grade."""
    first = re.split(r",(?!\d)", excepted.strip(" ,:"))[0]
    roles = (header_roles(word)[:1] for word in re.findall(r"[^\W\d_]+", first))
    return any(found and found[0].role in (Role.PRODUCT, Role.GRADE) for found in roles)


def _of_prices(text: str) -> Delivery | None:
    """What is said without a lead time; 'ready in 3 weeks ex works' says from where the weeks count."""
    if any(said.delivered is not None for said in no_charges(text)):
        # 'No fuel surcharge on FOB orders' does not say which orders these are.
        return None
    parted = clauses(text)
    told = [of_orders for clause in parted if (of_orders := freight_of_orders_in(clause))]
    if parted and not told:
        return None
    own = [part for clause in told if (part := _before_lead(clause))]
    said = find_delivery("; ".join(own)) if own else None
    if said is not None and any(told_of_unknown(clause) - {said.delivered} for clause in parted):
        return replace(said, delivered=None)
    if said is not None or told != parted:
        return said
    said = find_delivery(text)
    return replace(said, of_lead_time=True) if said is not None and times_deliveries(text) else said


def _before_lead(clause: str) -> str:
    """The clause, of one with a lead time the parts before it and those of prices: 'FCA mill, USD/t' of 'FCA mill,
    USD/t, lead time 7 weeks', and the last of 'Lead time 3 weeks ex mill, prices delivered'."""
    if not times_deliveries(clause) or priced_at_its_store(clause) is not None:
        return clause
    parts = re.split(r",(?!\d)|\s-\s(?!\d)", clause)
    timed = next((place for place, part in enumerate(parts) if times_deliveries(part)), 0)
    behind = (part for part in parts[timed:] if phrases("price_words").find(part) and not times_deliveries(part))
    return ", ".join((*parts[:timed], *behind))


def _of_an_order(clause: str) -> bool:
    """A weight of order stands close to the word for delivery; 'per 1000 kg delivered' and a minimum are none."""
    for part in re.split(r",(?!\d)", clause):
        said = find_delivery(part)
        if said is None or tells_a_least(part) or ton_definition(part) is not None:
            continue
        if (says_unread_number(part) and find_mass_units(part)) or _counts_hundreds(part):
            # 'From one hundred twenty tonnes' is some order, though its size is not read.
            return True
        weights = [mass for mass in find_masses(part) if not _is_a_unit(mass)]
        if any(len(tokens_of(_between(part, said.words, mass.words))) <= _CLOSE for mass in weights):
            return True
    return False


_CLOSE = 5


def _counts_hundreds(part: str) -> bool:
    """'Franco à partir de cent tonnes', 'ab hundert Tonnen'."""
    return any(find_mass_units(match["unit"]) for match in _HUNDRED_OF.finditer(part))


_HUNDRED_OF = re.compile(rf"\b{pattern('large_numbers', 'hundred')}\s+(?P<unit>[^\W\d_]+)", re.IGNORECASE)


def _is_a_unit(mass: Mass) -> bool:
    """'1000 kg' and '2,000 lb' are what prices are per."""
    return mass.kg() in (Decimal(1000), Decimal("907.18474"), Decimal("45.359237"))


def _between(text: str, one: str, other: str) -> str:
    first, second = sorted((text.find(one), text.find(other)))
    ends = first + len(one if text.find(one) == first else other)
    return text[ends:second]
