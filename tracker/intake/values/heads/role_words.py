"""Which roles the text of a header names: by its words, else by its unit, else by a near miss of a word."""

import re
from dataclasses import replace
from functools import lru_cache

from tracker.intake.values.boards.caliper import MICRON_SIGN, caliper_unit
from tracker.intake.values.boards.weight import weight_units, without_density
from tracker.intake.values.figures.letters_of_places import letters_of_a_place
from tracker.intake.values.freight.delivery import leads_to_a_place
from tracker.intake.values.heads.last_days import heads_last_days
from tracker.intake.values.heads.limits import limit_ahead
from tracker.intake.values.heads.numbered_papers import numbers_papers
from tracker.intake.values.heads.price_moves import moves_money
from tracker.intake.values.heads.roles import MONEY, ORDER_LIMITS, Role, RoleReading
from tracker.intake.values.heads.technical_units import is_technical_unit
from tracker.intake.values.heads.weighed import weighing_units, weighs_a_package
from tracker.intake.values.heads.yields import tells_yield
from tracker.intake.values.orders.counted_orders import weighs_deliveries
from tracker.intake.values.prices.basis import basis_span, basis_text
from tracker.intake.values.prices.currency import currency_phrases
from tracker.intake.values.prices.money import find_price_unit
from tracker.intake.values.prices.payment_terms import is_when_to_pay
from tracker.intake.values.prices.shares import share_of_price
from tracker.intake.values.prices.tax import tax_included
from tracker.intake.values.times.dates import without_dates
from tracker.intake.values.times.held_apart import of_another
from tracker.intake.words.likeness import meanings_of_phrases, near_miss
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import tokens_of
from tracker.trade.basis import Basis


@lru_cache(maxsize=8192)
def header_roles(text: str) -> tuple[RoleReading, ...]:
    """The roles a header may name, the strongest first: by its words, by its unit, by a near miss of a word."""
    text = limit_ahead(text)
    if tax_included(text):
        # A calculation step beside the net price.
        return (RoleReading(Role.LIST_PRICE, 1.0, text),)
    if phrases("requests_for_offers").find(text) or is_when_to_pay(text) or weighs_deliveries(text):
        # 'Request for quotation' is what a paper is called, 'net 30' when to pay; 'tonnes per delivery' is an order.
        return ()
    if phrases("fees_of_dealings").find(text):
        # 'Restocking fee USD/ST' takes nothing off, for all its 're'.
        return (RoleReading(Role.CHARGE, 1.0, text),)
    dense = without_density(text) != text and not weight_units(text)
    if numbers_papers(text) or _holds_of_another(text) or dense or is_technical_unit(text):
        return (RoleReading(Role.PROPERTY, 1.0, text),)
    if tells_yield(text) or heads_last_days(text):
        return (RoleReading(Role.YIELD if tells_yield(text) else Role.VALIDITY, 1.0, text),)
    if _is_bulk_in_length(text):
        return (RoleReading(Role.CALIPER, 0.95, text),)
    strengths: dict[Role, RoleReading] = {}
    by_words = _by_words(text) or _indicated_for_a_year(text)
    if all(reading.role is Role.VALID_FROM for reading in by_words):
        by_words = _beside_a_day(text) or by_words
    by_unit = _by_unit(text)
    if by_words:
        # 'Delivery EUR/t' is money, whatever else delivery may mean.
        priced = not any(reading.role in MONEY for reading in by_words)
        by_unit = [reading for reading in by_unit if priced and reading.role is Role.PRICE and reading.strength > 0.8]
    for reading in (*by_words, *by_unit):
        known = strengths.get(reading.role)
        if known is None or reading.strength > known.strength:
            strengths[reading.role] = reading
    for reading in [] if by_words or share_of_price(text) is not None else _by_likeness(text):
        known = strengths.get(reading.role)
        strengths[reading.role] = replace(reading, strength=max(0.85, known.strength)) if known is not None else reading
    if weighs_a_package(text):
        kept = {role: reading for role, reading in strengths.items() if role not in _OF_BOARDS_OR_MONEY}
        strengths = {**kept, Role.PACKING: RoleReading(Role.PACKING, 1.0, text)}
    if strengths.keys() & {Role.PACKING, Role.SHEETS_WEIGHT} and not weight_units(text):
        # 'Gewicht kg/1000 Bogen' is what the sheets weigh.
        strengths.pop(Role.WEIGHT, None)
    if Role.BRACKET in strengths and Role.MINIMUM not in strengths and _begins_with_minimum(text):
        strengths[Role.MINIMUM] = replace(strengths.pop(Role.BRACKET), role=Role.MINIMUM)
    return tuple(sorted(strengths.values(), key=lambda reading: -reading.strength))


def _indicated_for_a_year(text: str) -> list[RoleReading]:
    """'2027 indication', 'Richtpreis 2027, EUR/t': what boards may cost then."""
    spans = [match.span for match in (phrases("indications").find(text) if _YEAR.search(text) else ())]
    if not spans or _unexplained(text, spans):
        return []
    return [RoleReading(Role.PRICE, 0.95, text[spans[0][0] : spans[0][1]])]


_YEAR = re.compile(r"(?<!\d)20\d\d(?!\d)")


def _is_bulk_in_length(text: str) -> bool:
    """'Main µm', 'Bulk (micron)': how thick the board is, where 'Bulk cm³/g' is a property and 'Volumen' an order's."""
    named = phrases("bulk").find(text)
    spans = [*(match.span for match in named), *(match.span() for match in MICRON_SIGN.finditer(text))]
    return bool(named) and caliper_unit(text) is not None and _unexplained(text, spans) == 0


_OF_BOARDS_OR_MONEY = frozenset(
    {Role.WEIGHT, Role.PRODUCT, Role.GRADE, Role.NET_PRICE, Role.LIST_PRICE, Role.FREIGHT, Role.BASIS, Role.ROLL_WIDTH}
)
"""What the words beside 'weight' would head by themselves: 'Carton', 'Net', 'Shipping', 'Unit', 'Roll'."""


def _begins_with_minimum(text: str) -> bool:
    """'Min. kvantitet' is a smallest order, whatever a quantity is called; 'min. 5 t' is where a size begins."""
    found = phrases("minimum").find(text)
    return bool(found) and found[0].first == 0 and not any(sign.isdigit() for sign in text)


def _by_words(text: str) -> list[RoleReading]:
    text = text[: share_of_price(text)]
    matches = [found for found in _header_phrases_among(text) if not _is_no_word(text, *found[3])]
    if tells_of_freight(text):
        matches = [found for found in matches if found[0] not in _SAID_OF_PRICES]
    if not matches:
        return []
    unexplained = _unexplained(text, [span for _, _, _, span in matches])
    if _is_a_vendors_own(text, matches):
        matches = [found for found in matches if found[0] is not Role.VENDOR]
    several = len({role for role, _, _, _ in matches}) > 1
    base = (0.95 if several else 1.0) if unexplained == 0 else max(0.3, 0.95 - 0.15 * unexplained)
    readings = []
    for role, first, after, span in matches:
        # Of several roles the one with more words, then the first, is what the header is about.
        strength = base + (0.02 * min(after - first, 2) - 0.01 * min(first, 4) if several else 0)
        readings.append(RoleReading(role, round(strength, 3), text[span[0] : span[1]]))
    return readings


def _is_no_word(text: str, start: int, end: int) -> bool:
    """The 'IN' of 'Harlow Gap, IN'; and the '#' of '60# rolls', which are pounds, where that of '# rolls' counts."""
    return letters_of_a_place(text, start, end) or (text[start] == "#" and text[:start][-1:].isdigit())


def _is_a_vendors_own(text: str, matches: list[tuple[Role, int, int, tuple[int, int]]]) -> bool:
    """'Mill grade' and "Supplier's description" are a vendor's words for the board; 'Mill / grade' heads both."""
    last, between = (0, 0), ""
    for role, _, _, span in sorted(matches, key=lambda match: match[3]):
        between = text[last[1] : span[0]].strip(" -")
        if last[1] and role in _OF_BOARD and between in _OWNING:
            return True
        last = span if role is Role.VENDOR else (0, 0)
    return False


_OF_BOARD = (Role.PRODUCT, Role.GRADE, Role.COATING, Role.CALIPER, Role.WEIGHT)
_OWNING = ("", "'s", "’s", "s'", "s’")


def _holds_of_another(text: str) -> bool:
    """'Certificate valid until' heads no last days of prices, 'Min. special sizes' no smallest orders of its lines."""
    named = {match.value for match in phrases("headers").find(text)}
    special = bool(named & {Role.LEAD_TIME, Role.MINIMUM}) and phrases("special_orders").find(text)
    return bool(special) or (Role.VALIDITY in named and of_another(text, ()))


def _beside_a_day(text: str) -> list[RoleReading]:
    """'OLD (thru 12/31/26)', 'neu (ab 1.1.2027)': what is left without the day and the words that lead to it."""
    bare = without_dates(text)
    return _by_words(bare.replace("()", " ").replace("( )", " ").strip(" ,:;-–")) if bare != text else []


_SAID_OF_PRICES = frozenset({Role.FREIGHT, Role.LEAD_TIME, Role.DELIVERY_TERMS})


@lru_cache(maxsize=4096)
def tells_of_freight(text: str) -> bool:
    """'EUR/t exkl. Fracht' says what a price has in it, and heads no column of freights as 'plus Fracht EUR/t' does."""
    unit = find_price_unit(text)
    if unit is None or unit.currency is None or unit.basis is None:
        return False
    freights = [match for match in phrases("headers").find(text) if match.value in _SAID_OF_PRICES]
    said = text.find(unit.currency.words)
    return bool(freights) and all(
        any(said < term.start < freight.start and freight.end <= term.end for term in phrases("delivery").find(text))
        for freight in freights
    )


def _header_phrases_among(text: str) -> list[tuple[Role, int, int, tuple[int, int]]]:
    alone = _standing_alone(text)
    # The sign for a millionth of a metre folds to the letters of 'unit of measure'.
    if alone is not None and not set("µμ") & set(text):
        # 'Per' asks for a unit; 'per tonne' is the unit of a price.
        meant = Role.PRICE if alone == Role.BASIS and (basis_span(text) or (1, 1))[0] == 0 else Role(alone)
        return [(meant, 0, 1, (0, len(text)))]
    found = tokens_of(text)
    unit = basis_span(text) or (0, 0)
    result = []
    for match in phrases("headers").among(found):
        of_unit = unit[0] < match.first < unit[1] or (unit[0] == match.first and match.after <= unit[1] > unit[0])
        if of_unit or text[match.start : match.end] in ("o", "O"):
            # 'sheets' in 'Price per 1,000 sheets' is the unit, and the O of 'P.O. price' no sign for a diameter.
            continue
        # A phrase may stand in two lists ('delivery' is a lead time or terms): each counts.
        phrase = tuple(token for token, _, _ in found[match.first : match.after])
        roles = meanings_of_phrases("headers").get(phrase, (match.value,))
        priced = unit[0] < match.after < unit[1]
        for role in roles:
            # 'Price per' asks for a unit; with the unit behind it, it is the price.
            meant = Role.PRICE if role in (Role.BASIS, Role.PER_QUANTITY) and priced else Role(role)
            result.append((meant, match.first, match.after, (match.start, match.end)))
    return result


def _standing_alone(text: str) -> str | None:
    """A short word that is a header only by itself or with a unit: 'from (kg)', 'net EUR/t'."""
    if any(sign.isdigit() for sign in text):
        return None
    found = tokens_of(text)
    match = phrases("headers_alone").at(found, 0) if found else None
    if match is not None and not found[0][0].isalpha() and match.after < len(found) and not moves_money(match, text):
        # '#' is an item's number by itself, a pound in '#/MSF'.
        return None
    if match is None or (match.after < len(found) and phrases("headers").at(found, 0) is not None):
        return None
    rest = [token for token, _, _ in found[match.after :] if token.isalpha()]
    told = (one.value for section in ("delivery", "lead") for one in phrases(section).find(text))
    if match.value in ORDER_LIMITS and any(value != "filler" for value in told):
        # 'ab Werk' and 'ab Lager' begin no order size.
        return None
    if match.value == Role.PRICE and leads_to_a_place(text, match.end):
        return match.value
    return match.value if not rest or _unexplained(text, [(match.start, match.end)], _UNITS) == 0 else None


_UNITS = ("basis", "weight_units", "caliper_units", "length_units", "lead", "delivery", "incoterms")


def _unexplained(
    text: str, spans: list[tuple[int, int]], sections: tuple[str, ...] = ("header_filler", *_UNITS)
) -> int:
    """How many words are neither a role's nor a unit, currency, number or little word."""
    known = _known_tokens(text, sections)
    return sum(
        token.isalpha() and place not in known and not any(begin <= start < end for begin, end in spans)
        for place, (token, start, _) in enumerate(tokens_of(text))
    )


def _known_tokens(text: str, sections: tuple[str, ...]) -> set[int]:
    """The numbers of the tokens that are a currency's or of one of these sections' words."""
    known: set[int] = set()
    for match in currency_phrases().find(text):
        known.update(range(match.first, match.after))
    for section in sections:
        for named in phrases(section).find(text):
            known.update(range(named.first, named.after))
    return known


def _by_unit(text: str) -> list[RoleReading]:
    """'EUR/t' is a price, 'lb/MSF' a basis weight, 'pt' a caliper, where no other word stands beside them."""
    readings: list[RoleReading] = []
    unit = find_price_unit(text)
    if _unexplained(text, []) > 0:
        # 'Saltwick EUR/t' is a price at a place; other units beside a strange word may measure anything ('PPS µm').
        priced = unit is not None and unit.currency is not None and unit.basis is not None
        return [RoleReading(Role.PRICE, 0.7, text)] if priced else []
    weights = weighing_units(text)
    has_currency = unit is not None and unit.currency is not None
    if unit is not None and has_currency:
        readings.append(RoleReading(Role.PRICE, 0.85 if unit.basis is not None else 0.6, text))
    elif (
        unit is not None
        and unit.basis is not None
        and unit.basis.bases - {Basis.SHEET}
        and (not weights or basis_text(text) is not None)
    ):
        readings.append(RoleReading(Role.PRICE, 0.55, text))
    if weights and not has_currency:
        certain = len(weights) == 1 and basis_text(text) is None
        readings.append(RoleReading(Role.WEIGHT, 0.85 if certain else 0.55, text))
    if caliper_unit(text) is not None and not has_currency:
        readings.append(RoleReading(Role.CALIPER, 0.6, text))
    return readings


def _by_likeness(text: str) -> list[RoleReading]:
    """A misspelt header: the words that are no units, together or one by one; a unit of the kind strengthens it."""
    if any(phrases(section).whole(text) is not None for section in ("no_price", "price_ages")):
        # 'À préciser' is a word of its own, and no slip for 'prix', nor is 'in force' one for 'form'.
        return []
    strange = _strange_words(text)
    readings = []
    for candidate in dict.fromkeys((" ".join(strange), *strange)):
        strength = 0.65 if len(strange) == 1 or " " in candidate else 0.5
        readings += [RoleReading(Role(role), strength, text) for role in near_miss(candidate, "headers")]
    return readings


def _strange_words(text: str) -> list[str]:
    # The 'from' of 'In force from 1 July' is no slip for 'form', nor is 'charge' one for 'change'.
    known = _known_tokens(text, (*_UNITS, "price_ages", "since", "costs_told"))
    return [token for place, (token, _, _) in enumerate(tokens_of(text)) if token.isalpha() and place not in known]
