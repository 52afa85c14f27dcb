"""All that a title, a note or a footnote says, in one call: what the reader of title blocks and footnotes works on."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from functools import lru_cache

from tracker.intake.values.boards.affixed_codes import affixes_named
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.boards.legends import LegendEntry, legend
from tracker.intake.values.boards.weights_by_board import weights_told
from tracker.intake.values.boards.weights_told import WeightBasis
from tracker.intake.values.changes.competitors import without_competitors
from tracker.intake.values.changes.discounts import DiscountTaken, discounts_taken
from tracker.intake.values.changes.no_offers import shows_how_to_read
from tracker.intake.values.changes.old_prices import of_old_prices
from tracker.intake.values.changes.price_changes import ChangesPrice, price_changes
from tracker.intake.values.figures.web_widths import without_diameters
from tracker.intake.values.freight.added_on_top import added_on_top
from tracker.intake.values.freight.additions_below import said_as_added
from tracker.intake.values.freight.charge_parts import OptionalCharge, optional_charges
from tracker.intake.values.freight.charges import (
    ChargeWords,
    beside_charges,
    find_charges,
)
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.freight.freight_of_prices import freight_of_prices
from tracker.intake.values.freight.relieved_charges import NoCharge, no_charges
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.dated import SaysDate, dates_of_the_list
from tracker.intake.values.notes.left_open import left_open
from tracker.intake.values.notes.note_signs import without_sign
from tracker.intake.values.notes.of_this_file import without_the_file
from tracker.intake.values.notes.relatives import without_relatives
from tracker.intake.values.notes.told_of_below import without_below
from tracker.intake.values.orders.brackets import Bracket
from tracker.intake.values.orders.loads_charged import LoadCharge, load_charges
from tracker.intake.values.orders.loads_priced import is_load, loads_priced
from tracker.intake.values.orders.masses import Mass
from tracker.intake.values.orders.minimum import LeastUnread, minimums
from tracker.intake.values.orders.orders_priced import orders_priced
from tracker.intake.values.orders.small_orders import DearerIfSmall, charged_below, dearer_if_small
from tracker.intake.values.orders.terms_by_size import DeliveredFrom, SmallOrderCharge, terms_by_size
from tracker.intake.values.orders.usual_orders import of_usual_orders
from tracker.intake.values.prices.multiples import converts
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency, price_says
from tracker.intake.values.prices.ton_kinds import names_plain_ton, ton_definition
from tracker.intake.values.prices.units_of_parts import units_of_parts
from tracker.intake.values.times.dates import find_dates
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.lead_by_itself import lead_by_itself
from tracker.intake.values.times.lead_sentences import find_lead, leads_by_grade
from tracker.intake.values.times.lead_unread import LeadUnread, lead_unread
from tracker.intake.values.times.validity import Validity, validity
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, outside
from tracker.trade.quantities import MassUnit


class Remark(StrEnum):
    """What kind of text this is, beside what it states. Values are sections of the word lists."""

    INDICATIVE = "indicative"
    SUPERSEDED = "superseded"
    TOTAL = "total"
    INDEX = "index"
    CONTACT = "contact"


@dataclass(frozen=True, slots=True)
class SaysTon:
    """Which ton 'ton' is in this file."""

    ton: MassUnit
    words: str


@dataclass(frozen=True, slots=True)
class SaysWeightBasis:
    """On what area or sheets weights are, or in what unit; those of `grades`, where any are named."""

    basis: WeightBasis
    words: str
    grades: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class SaysMinimum:
    """The smallest order, of boards of some grades where `grades` names any; `part`: the words that name them."""

    mass: Mass
    words: str
    grades: tuple[str, ...] = ()
    part: str = ""


@dataclass(frozen=True, slots=True)
class SaysOrders:
    """For orders of which size the prices hold. `bare`: nothing but the kind of load is said."""

    bracket: Bracket
    words: str
    bare: bool = False


Statement = (
    SaysCurrency
    | SaysBasis
    | SaysTon
    | SaysWeightBasis
    | SaysMinimum
    | LeastUnread
    | SaysOrders
    | SaysDate
    | ChangesPrice
    | DearerIfSmall
    | Delivery
    | Validity
    | LeadTime
    | LeadUnread
    | ChargeWords
    | LoadCharge
    | SmallOrderCharge
    | DeliveredFrom
    | OptionalCharge
    | NoCharge
    | DiscountTaken
    | LegendEntry
)


@lru_cache(maxsize=8192)
def statements(text: str) -> tuple[Statement, ...]:
    """Everything that a title, note or footnote states of the prices, in no particular order.

    () where it states nothing of them; the terms over an example ('How to read our prices: …') are none of theirs.
    """
    if shows_how_to_read(text):
        return ()
    if not any(sign.isalpha() or sign in "$€£¥" for sign in text) and not find_dates(text):
        return ()
    return tuple(_all(without_below(without_competitors(without_sign(without_the_file(text))))))


def _all(text: str) -> Iterator[Statement]:
    # A charge's own currency and basis are not the price's.
    of_loads = load_charges(text)
    yield from of_loads
    by_size = terms_by_size(text)
    yield from by_size
    theirs = [charge for one in of_loads for charge in find_charges(one.words)]
    theirs += [one.freight for one in by_size if isinstance(one, DeliveredFrom) and one.freight is not None]
    yield from (charge for charge in find_charges(text) if charge not in theirs)
    yield from optional_charges(text)
    yield from no_charges(text)
    yield from discounts_taken(text)
    of_parts = units_of_parts(text)
    yield from of_parts
    for clause in clauses(text):
        if not (of_parts or converts(clause) or _names_an_index(clause)):
            yield from units_of_parts(clause) or price_says(beside_charges(clause))
        yield from _ton_said(clause)
    yield from (SaysWeightBasis(one.basis, one.words, one.grades) for one in weights_told(text))
    usual = of_usual_orders(text)
    for said in (_freight_said(usual, by_size), _held_until(text)):
        # Of 'toll: 4 €/t bei Lieferung frei Haus, Hinzu kommen:' that is the toll's.
        if said is not None and said_as_added(text) is None:
            yield said
    timed = without_diameters(usual)
    leads = tuple(_leads(timed))
    yield from leads
    unread = lead_unread(timed) if not leads else None
    if unread is not None:
        yield unread
    for least in minimums(usual):
        yield SaysMinimum(least.mass, text, least.grades, least.part)
    yield from left_open(text, usual)
    orders = orders_priced(text) or loads_priced(text)
    if orders is not None:
        yield SaysOrders(orders, text, is_load(text))
    # 'Certifikat: 4 €/t, Tillkommer på alla priser:' adds a charge, and makes no price dearer.
    entries = tuple(added_on_top(text)) if said_as_added(text) is not None else ()
    changes = () if entries else price_changes(text)
    yield from changes
    yield from entries or (() if changes else added_on_top(text))
    dearer = dearer_if_small(text) or (DearerIfSmall(of_loads[0].words) if of_loads else None)
    dearer = dearer or (charged_below(text) if not by_size else None)
    if dearer is not None:
        yield dearer
    yield from legend(text)
    yield from dates_of_the_list(text)


def _names_an_index(clause: str) -> bool:
    """'Old corrugated index, US$/ST' says what its own figures are in; 'prices by the index of May, US$/ST' those of
    board."""
    named = phrases("index").find(clause)
    if not named or find_grade(clause) is not None:
        return False
    return not phrases("price_words").find(f"{clause[: named[0].start]} {clause[named[-1].end :]}")


def _leads(text: str) -> Iterable[LeadTime]:
    """The lead times of some grades each, else the one of all."""
    general = find_lead(text) or lead_by_itself(text)
    return leads_by_grade(text) or (() if general is None else (general,))


def _freight_said(text: str, by_size: Sequence[DeliveredFrom | SmallOrderCharge]) -> Delivery | None:
    """What a note says of freight; where the size of an order decides it, not of every price."""
    said = freight_of_prices(text)
    sized = any(isinstance(one, DeliveredFrom) for one in by_size)
    return replace(said, delivered=None, conditional=True) if said is not None and sized else said


def _held_until(text: str) -> Validity | None:
    """Until when these prices hold; what is said of an earlier list says nothing of them."""
    said = validity(text)
    parts = clauses(text) if said is not None else []
    if said is None or (Remark.SUPERSEDED not in says(text) and not any(map(of_old_prices, parts))):
        return said
    own = [clause for clause in parts if not _of_an_earlier_list(clause) and not of_old_prices(clause)]
    return validity("; ".join(own)) if own else None


def _of_an_earlier_list(clause: str) -> bool:
    """'The previous list was valid until 31 March': the words that say so are none of validity."""
    if Remark.SUPERSEDED not in says(clause):
        return False
    of_validity = [*phrases("valid").find(clause), *phrases("until").find(clause)]
    return any(
        not any(match.start < other.end and other.start < match.end for other in of_validity)
        for match in phrases(Remark.SUPERSEDED.value).find(clause)
    )


def _ton_said(clause: str) -> Iterator[Statement]:
    # What a ton is for some codes is none of all prices.
    ton = None if affixes_named(clause) else ton_definition(clause)
    if ton is not None and names_plain_ton(clause):
        yield SaysTon(ton, clause)


def _of_earlier_lists(before: str) -> bool:
    """'All previous prices are', before 'void': it is said of other lists than this one."""
    ends = [match.end for match in phrases("earlier").find(before)]
    return bool(ends) and any(match.start >= ends[0] for match in phrases("copula").find(before))


@lru_cache(maxsize=8192)
def says(text: str) -> frozenset[Remark]:
    """What kind of text this is: indicative, superseded, a total, an index, a contact line. Empty for most.

    A total or an index is one by its first words; a list that replaces an earlier one is not itself superseded.
    """
    found = set()
    for remark in Remark:
        matches: Sequence[Found[str]] = phrases(remark.value).find(text)
        if remark in (Remark.TOTAL, Remark.INDEX):
            matches = [match for match in matches if match.first <= (1 if remark is Remark.INDEX else 0)]
        elif remark is Remark.SUPERSEDED:
            # The 'utgången' of 'till utgången av juni' is the end of June; what a list once was, it is no more.
            matches = [match for match in matches if without_relatives(text)[slice(*match.span)].strip()]
            matches = outside(matches, phrases("end_of").find(text))
            ends = {match.start: match.end for match in matches}
            # 'Ersetzt Liste 4' replaces another; 'Liste 4, ersetzt' and 'Ersetzt durch Liste 5' are replaced.
            replaced = [
                match.start
                for match in phrases("replaces").find(text)
                if text[match.end :].strip(" .)")
                and ends.get(match.start, 0) <= match.end
                # 'Annulé' is what has been done to this list, and 'annule' what it does to another.
                and text[match.end - 1] not in "éÉ"
            ]
            matches = [match for match in matches if not any(start <= match.start for start in replaced)]
            # 'Prices struck through are no longer valid' says so of those figures alone.
            elsewhere = phrases("struck").find(text) or phrases("only_if").find(text)
            matches = [] if elsewhere or any(_of_earlier_lists(text[: match.start]) for match in matches) else matches
        if matches:
            found.add(remark)
    return frozenset(found)
