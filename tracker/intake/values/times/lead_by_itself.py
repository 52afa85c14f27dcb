"""Lead times that no word for them leads to: 'FOB mill, 4-6 weeks', 'Prices per tonne. Two weeks from order.'"""

import re
from collections.abc import Iterator
from functools import lru_cache

from tracker.intake.values.boards.caliper import find_calipers
from tracker.intake.values.boards.grade import find_grade, names_grade
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.denials import denied
from tracker.intake.values.notes.note_signs import without_sign
from tracker.intake.values.orders.bracket_pieces import VEHICLES
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.times.delivery_sentences import without_samples
from tracker.intake.values.times.goods_in_stock import listed_goods_in_stock, without_small_orders
from tracker.intake.values.times.lead import LeadTime, counts_plain_days, lead_phrases, lead_text
from tracker.intake.values.times.lead_from_order import is_from_order
from tracker.intake.values.times.lead_unread import speaks_of_time
from tracker.intake.values.times.leads_in_full import goes_without_saying
from tracker.intake.values.times.times_in_words import counts_time, times_in_figures
from tracker.intake.values.times.validity import validity
from tracker.intake.words.lists import phrases, without_words
from tracker.intake.words.phrases import Found

_PARTS = re.compile(r",(?!\d)|(?<!\d)\s[-–—/]\s|\s[-–—/]\s(?!\d)|(?<=[./]\d\d)\s[-–—]\s|(?<=20\d\d)\s[-–—]\s")
"""A comma, or a dash or stroke between words; the dash of '4 - 6 weeks' parts nothing."""


@lru_cache(maxsize=8192)
def lead_by_itself(text: str) -> LeadTime | None:
    """The lead time that stands alone between commas or stops, or that board is sold from stock.

    None for a count of days without more, which may be those of payment, where two such times differ, and beside times
    that words for lead time lead to.
    """
    text = without_small_orders(without_sign(text))
    if any(map(speaks_of_time, clauses(text))) and not _is_whole(text):
        return None
    counted = tuple(_counted(text))
    # 'From stock, 2 days after order' is there in 2 days.
    stock = () if any(is_from_order(said.words) for said in counted) else _from_stock(text)
    found = {said.days: said for said in (*counted, *stock)}
    said = next(iter(found.values())) if len(found) == 1 else None
    return None if said is not None and _may_be_of_payment(said) else said


def _is_whole(text: str) -> bool:
    """'Two weeks to ship': all of the one clause that counts a time is a lead time."""
    counting = [clause for clause in clauses(text) if counts_time(clause)]
    whole = lead_text(counting[0].strip(" :.")) if len(counting) == 1 else None
    return whole is not None and whole.high > 0 and _says_from_when(counting[0])


def _may_be_of_payment(said: LeadTime) -> bool:
    """'30 days' by itself; 'allow 30 days', 'ready 2 days', '2 days after order' and '10 to 14 days' are how long the
    board takes."""
    taken = is_from_order(said.words) or any(phrases(took).find(said.words) for took in _TAKEN)
    if counts_plain_days(said.words) is None or taken:
        return False
    return said.low == said.high or said.high >= _SOONEST_PAID


_TAKEN = ("time_to_allow", "ready_in")
_SOONEST_PAID = 30
"""Days: '30 to 60 days' may be those to pay in. Common practice, no source."""


def _counted(text: str) -> Iterator[LeadTime]:
    parted = clauses(text)
    for clause in parted:
        if any(match.start == 0 for match in phrases("confirmations").find(clause.strip())):
            continue
        whole = lead_text(clause.strip(" :."))
        if whole is not None and whole.high > 0 and (len(parted) > 1 or _says_from_when(clause)):
            yield whole
        elif _of_terms(clause):
            yield from _among_terms(clause)


def _says_from_when(clause: str) -> bool:
    """'4 weeks ARO', 'allow 2 weeks', 'ready 2 days'; '4 weeks' and no more may be anything."""
    told = lead_phrases().find(times_in_figures(clause))
    filled = any(match.value == "filler" for match in told)
    return filled or is_from_order(clause) or bool(phrases("ready_in").find(clause))


def _of_terms(clause: str) -> bool:
    """It speaks of delivery or money, and of no validity that is counted in weeks itself."""
    first, *parts = _PARTS.split(clause)
    if any(map(_ends_on_a_day, (first, *parts))):
        # 'Good thru 9/30/26 - 3 wks', 'validité : 31/12/2026 - fabrication 4 semaines'.
        return True
    held = validity(clause)
    if phrases("valid").find(clause) and (held is None or held.until is None):
        return False
    if phrases("made_in_turn").whole(first) is not None and len(parts) == 1 and phrases("time_to_allow").find(parts[0]):
        # 'We make within the cycle, please allow 3-4 weeks.'
        return True
    alone = any(phrases("delivery_alone").whole(part) is not None for part in (first, *parts))
    if lead_text(first.strip(" :.")) is not None and parts and all(map(_denies, parts)):
        # 'Two weeks, no surcharge of any kind, no minimum.'
        return True
    if any(match.start == 0 for match in phrases("shipments").find(first)) and not _of_some_shipments(first):
        # 'Shipments into the United States, two to three weeks.'
        return True
    return alone or bool(find_currencies(clause)) or find_delivery(clause) is not None


def _ends_on_a_day(part: str) -> bool:
    held = validity(part)
    return held is not None and held.until is not None


def _of_some_shipments(part: str) -> bool:
    """'Deliveries of stock sheets', 'Shipments by rail'."""
    stock = any(match.value == "stock" for match in lead_phrases().find(part))
    load = any(match.value in VEHICLES for match in phrases("bracket").find(part))
    return stock or load or bool(phrases("forms").find(part)) or find_grade(part) is not None or " by " in part


def _denies(part: str) -> bool:
    return any(match.start == 0 for match in phrases("negations").find(part.strip()))


def _among_terms(clause: str) -> Iterator[LeadTime]:
    for part in _PARTS.split(clause):
        said = lead_text(part.strip(" :."))
        # A single word such as 'stock' may be said of anything.
        if said is not None and (said.high > 0 or " " in said.words):
            yield said


def _from_stock(text: str) -> Iterator[LeadTime]:
    """'Small lots from stock, pence per sheet', 'Lagerförda ark, SEK per 1000 ark': all that a list offers is there."""
    for clause in map(without_samples, clauses(text)):
        for part in _PARTS.split(clause):
            found = [match for match in phrases("from_stock").find(part) if _says_so(part, match, clause)]
            # 'The items are in stock, sheets 3 weeks' tells of two kinds.
            listed = not counts_time(clause) and listed_goods_in_stock(part)
            if listed or (found and not _of_some(part, text)):
                yield LeadTime(0, 0, part.strip())


def _says_so(part: str, said: Found[str], clause: str) -> bool:
    """'Stock rolls.' by itself does; 'Stock sheets, delivered' is a name, 'ab Lager Kassel' says from where, and
    'Everything is on our floor plan' where it is drawn."""
    if said.value == "alone":
        return clause.strip(" .") == part.strip(" .") and phrases("from_stock").whole(part) is not None
    if said.value == "whole" and not goes_without_saying(without_words(part[said.end :], "goods_leave", "at_once")):
        return False
    return not denied(part, said) and not names_a_store(part, said)


def names_a_store(part: str, said: Found[str]) -> bool:
    """The 'ab Lager' of 'ab Lager Kassel', which says from where board comes."""
    from_a_place = phrases("delivery_places").whole(part[said.start : said.end]) is not None
    return from_a_place and part[said.end :].lstrip()[:1].isupper()


def _of_some(part: str, text: str) -> bool:
    """Said of some boards or of samples, of so many tons, or of a form of board outside the list's own title."""
    if find_calipers(part) or find_masses(part) or names_grade(part):
        return True
    if any(phrases(section).find(part) for section in ("some_of_them", "samples")):
        return True
    if phrases("all_of_them").find(part):
        return False
    if phrases("from_stock").whole(text.strip(" .")) in ("any", "whole"):
        # 'From stock.' and not another word.
        return False
    titled = find_currencies(text) or find_delivery(text) is not None or phrases("price_words").find(text)
    return not (titled or _behind_a_firm(part, text) or _behind_a_board(part, text))


def _behind_a_board(part: str, text: str) -> bool:
    """'Coated recycled – in stock': the heading of those boards, which it is said of."""
    ahead, _, behind = text.partition(part.strip())
    return names_grade(ahead) and not behind.strip(" .") and _PARTED.search(ahead) is not None


_PARTED = re.compile(r"(?:[-–—|•·,:]|\n)\s*$")


def _behind_a_firm(part: str, text: str) -> bool:
    """'Papierhandel Ellerau – Formatware ab Lager': the title of a list, by the firm whose list it is."""
    ahead = text.partition(part.strip())[0]
    return bool(ahead) and any(
        match.value in ("trade", "weak", "first", "legal") and _PARTED.search(ahead) is not None
        for match in phrases("company").find(ahead)
    )
