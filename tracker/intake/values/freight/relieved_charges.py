"""Charges that a note names and that come on top of nothing: waived, suspended, or a part of the price already."""

import re
from collections.abc import Collection, Iterator
from dataclasses import dataclass, replace
from datetime import date
from decimal import Decimal
from enum import Enum, auto
from functools import lru_cache

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.freight.charge_names import ChargeKind, charges_named, same_charge
from tracker.intake.values.freight.charged_forms import form_freed
from tracker.intake.values.freight.charged_measures import bounds_a_size
from tracker.intake.values.freight.charges_told_before import (
    figures_beside,
    is_earlier,
    of_some_alone,
    of_some_customers,
)
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.freight.included_together import without_included
from tracker.intake.values.freight.prices_hold import held_by_prices
from tracker.intake.values.freight.relief_days import ReliefDays, relief_days
from tracker.intake.values.notes.clauses import COMMA_OF_NO_DAY, clauses
from tracker.intake.values.notes.denials import denied
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.times.dates import DateOrder, find_dates
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, blanked, tokens_of


@dataclass(frozen=True, slots=True)
class NoCharge:
    """A charge that is not charged. `label`: its name; `general`: no more than 'surcharge'. `words`: what says so.

    `grades`: of the boards of these alone, where it names any. `days`: from when to when. `open`: what it comes to is
    not known, for it is charged until a day to come, or what has ended is perhaps not the charge. `delivered`: of
    prices with freight, or of those without it, where it names terms of delivery. `itself`: it is the charge of that
    sentence alone, which says its amount and no name: 'the surcharge of 30 EUR/t for coating was suspended'.
    `figures`: what it was, where that is said. `earlier`: it is an old one, and another may have come after it. `form`:
    of rolls or sheets alone.
    """

    kind: ChargeKind
    label: str
    words: str
    general: bool = False
    grades: tuple[str, ...] = ()
    days: ReliefDays | None = None
    open: bool = False
    delivered: bool | None = None
    itself: bool = False
    figures: frozenset[Decimal] = frozenset()
    earlier: bool = False
    form: str = ""

    def is_of(self, kind: ChargeKind, label: str) -> bool:
        """Whether a charge of this kind and name is meant."""
        if self.general:
            return kind in (ChargeKind.ENERGY, ChargeKind.OTHER)
        return kind is self.kind and same_charge(kind, label, self.label)

    def ends(self, figures: Collection[Decimal], clause: str) -> bool | None:
        """Whether a charge of its kind that this clause names, and that comes to one of these, is not charged; None
        where that is open, as another figure is perhaps another charge's."""
        own = clause == self.words
        # What '$45/ST will be added from 4 January' comes to is not certain, and which charge it is all the same.
        told = bool(self.figures.intersection(figures or _figures_in(clause, self))) or (own and not figures)
        if self.earlier and not told:
            return None if own else False
        return None if self.open or (self.figures and not told) else True

    def on(self, day: date | None, order: DateOrder | None = None) -> "NoCharge | None":
        """What is left of it for a list of a day; None where it was over by then."""
        if self.days is None:
            return self
        if self.days.over(day, order):
            return None
        return replace(self, open=self.open or self.days.to_come(day, order))


_AMOUNT_NEXT = re.compile(
    r"\s*(?:[^\W\d]+\s+)?(?:[A-Z]{3}\s*|[$€£]\s*)?\d+(?:[.,]\d+)?\s*(?:%|[$€£]|[A-Z]{3}\b|\w{1,3}/)"
)
"""'To 3 %', 'med 4,5 %': an amount right behind 'dropped' or 'utgår' is what is charged."""


@lru_cache(maxsize=4096)
def no_charges(text: str) -> tuple[NoCharge, ...]:
    """What a text says is not charged: 'Energy surcharge 4.5 %, waived', 'Freight is part of the price'.

    What hangs on a condition or on the size of an order is charged to the others.
    """
    return tuple(_all(text)) if phrases("relieved").find(text) else ()


def _all(text: str) -> Iterator[NoCharge]:
    before: list[_Named] = []
    for clause in (held_by_prices(without_included(one)) for one in clauses(text)):
        hangs = bool(phrases("only_if").find(clause))
        for place, part in enumerate(COMMA_OF_NO_DAY.split(clause)):
            named = _named_in(_without_rates(part))
            if not hangs and not find_masses(part) and not phrases("small_orders").find(part):
                of_before = before if place or _goes_on(part) else []
                yield from _relieved_in(part, named, of_before, clause)
            before = named or before


def _goes_on(clause: str) -> bool:
    """'It is waived until May' is said of what was named last; 'trim loss up to 3 % is for our account' of itself."""
    said = next(iter(phrases("relieved").find(clause)), None)
    return said is None or len(clause[: said.start].split()) <= _FEW_WORDS


_FEW_WORDS = 3


@dataclass(frozen=True, slots=True)
class _Named:
    """A charge named in a part of a text, with its span there. `figures`: what it comes to; `earlier`: an old one."""

    kind: ChargeKind
    label: str
    start: int
    end: int
    figures: frozenset[Decimal] = frozenset()
    earlier: bool = False


def _without_rates(part: str) -> str:
    """The part with 'energy surcharge (2 % of freight)' without what stands in the brackets, at the same places."""
    return _RATE.sub(lambda match: " " * len(match[0]), part)


_RATE = re.compile(r"\([^()]*\d[^()]*\)")


def _named_in(part: str) -> list[_Named]:
    """The charges of a part from left to right; 'energy' and the 'surcharge' right behind it are one."""
    found: list[_Named] = []
    for match in sorted(charges_named(part), key=lambda match: match.start):
        kind, start = ChargeKind(match.value), match.start
        if found and not part[found[-1].end : start].strip(" -"):
            last = found.pop()
            start, kind = last.start, last.kind if kind is ChargeKind.OTHER else kind
        found.append(_Named(kind, " ".join(part[start : match.end].split()), start, match.end))
    return [_described(one, part, before) for before, one in zip([None, *found], found, strict=False)]


def _figures_in(clause: str, free: NoCharge) -> frozenset[Decimal]:
    """What a clause says that the charge comes to."""
    named = (one for one in _named_in(clause) if free.is_of(one.kind, one.label))
    return frozenset(figure for one in named for figure in one.figures)


def _described(charge: _Named, part: str, before: _Named | None) -> _Named:
    """The charge with what stands right around its name: 'the old energy surcharge of $25/ST'."""
    ahead, behind = part[before.end if before is not None else 0 : charge.start], part[charge.end :]
    figures = figures_beside("" if before is not None else ahead, behind)
    return replace(charge, figures=figures, earlier=is_earlier(ahead, behind))


def _relieved_in(part: str, named: list[_Named], before: list[_Named], clause: str) -> Iterator[NoCharge]:
    for match in phrases("relieved").find(part):
        if denied(part, match) or _AMOUNT_NEXT.match(part[match.end :]):
            continue
        if match.value == _EXEMPT and not (_grades(part) or of_some_customers(part)):
            # 'Stock items are not affected': nothing tells which lines those are.
            continue
        subject = _subject(part, named, match)
        if subject is _Subject.ANOTHER:
            continue
        for charge in _subjects(part, named, match) if named else before:
            if charge.kind is ChargeKind.FREIGHT and phrases("customers_who_collect").find(part):
                # They have no delivered cost, and the others' freight is known.
                continue
            general = phrases("surcharge_words").whole(charge.label) is not None
            # 'Incl. freight, delivered' says how all prices are meant.
            terms = find_delivery(part[match.end :]) if match.value == "waived" else None
            delivered = terms.delivered if terms is not None else None
            days = relief_days(part, match) if match.value in _OF_A_TIME else None
            itself = general and any(map(str.isdigit, _without_days(part[: match.start])))
            form = form_freed(clause)
            some = not form and delivered is None and (bounds_a_size(clause) or _is_open(part, charge, match, clause))
            yield NoCharge(
                charge.kind, charge.label, clause, general, _grades(part), days,
                subject is _Subject.UNKNOWN or some, delivered, itself,
                charge.figures if match.value in _OF_A_TIME else frozenset(),
                match.value in _OF_A_TIME and charge.earlier, form,
            )  # fmt: skip


_OF_A_TIME, _EXEMPT = ("waived", "ended"), "exempt"
_WITHIN = ("within", "holds", "of_which")


def _is_open(part: str, charge: _Named, said: Found[str], clause: str) -> bool:
    """'The energy surcharge for exports is gone', '…, which was suspended in 2025, applies again', '… does not apply to
    Canadian customers': of which boards, or whether it is still so, or for this buyer, is not known."""
    if said.value not in _WITHIN and of_some_customers(part):
        return True
    if said.value not in _OF_A_TIME or _grades(part):
        return False
    between = part[charge.end : said.start] if part[charge.start : charge.end] == charge.label else ""
    of_some = of_some_alone(part[said.end :]) or (not charge.figures and of_some_alone(between))
    return of_some or bool(phrases("charged_anew").find(clause))


class _Subject(Enum):
    """What is said to be waived, or to have ended."""

    CHARGE = auto()
    ANOTHER = auto()
    UNKNOWN = auto()


def _subject(part: str, named: list[_Named], said: Found[str]) -> _Subject:
    """'The energy surcharge has ended', and not 'the cap on the energy surcharge was lifted', after which it is due,
    nor 'the freight contract has expired'."""
    ahead = part[: said.start]
    if said.value not in _OF_A_TIME:
        return _Subject.CHARGE
    if phrases("reliefs").find(ahead):
        return _Subject.ANOTHER
    before = [charge for charge in named if charge.end <= said.start]
    if said.value == "waived" or (named and not before):
        return _Subject.CHARGE
    if not before:
        # 'It has ended', and not 'the season has ended'.
        return _Subject.ANOTHER if _rest(ahead) else _Subject.CHARGE
    stands_alone = not _rest(ahead[: before[0].start])
    behind = _AMOUNT.sub(" ", ahead[before[-1].end :]).strip(" :,()–-")
    led = phrases("behind_ended").at(tokens_of(behind), 0)
    alone = not behind or (led is not None and (led.value == "leads" or led.end == len(behind)))
    return _Subject.CHARGE if stands_alone and alone else _Subject.UNKNOWN


def _rest(words: str) -> str:
    """What is left of them without those that may stand ahead of a charge that is itself said to have ended."""
    # 'The £30 per tonne energy supplement'.
    found = [match for section in ("ahead_of_ended", "per", "basis") for match in phrases(section).find(words)]
    return _AMOUNT.sub(" ", _without_days(blanked(words, [match.span for match in found]))).strip(" :,()–-/")


def _without_days(words: str) -> str:
    return blanked(words, [(day.start, day.end) for day in find_dates(words)])


_AMOUNT = re.compile(r"(?:[A-Z]{3}\s?|[$€£]\s?)?\d[\d.,]*\s?(?:%|[$€£]|[A-Z]{3}\b)?\s?(?:/\s?\w+\b)?")
"""'The 4 % energy surcharge', 'the surcharge of $30/ST'."""


def _subjects(part: str, named: list[_Named], said: Found[str]) -> list[_Named]:
    """The charges right before the word, with no amount between them; else those behind it."""
    ahead = [charge for charge in named if charge.end <= said.start and said.value != "holds"]
    if not ahead:
        return [charge for charge in named if charge.start >= said.end]
    first = len(ahead) - 1
    while first and not any(map(str.isdigit, part[ahead[first - 1].end : ahead[first].start])):
        first -= 1
    return ahead[first:]


def _grades(part: str) -> tuple[str, ...]:
    grade = find_grade(part)
    return grade.grades if grade is not None else ()


@lru_cache(maxsize=1024)
def within_price(head: str) -> bool:
    """Whether the head of a column, or a row's label, says that what stands below is in the price, or not charged:
    'Freight in (included)', 'Energy (in price)', 'davon Energie', 'incl. energy', 'Surcharge % (waived)'."""
    last = phrases("freight_included").whole(_PIECES.split(head.strip(" )]"))[-1])
    return (last is not None and bool(charges_named(head))) or any(
        match.first == 0
        if match.value == "of_which"
        else not denied(head, match) and not _of_another(head[: match.start], head[match.end :])
        for match in phrases("relieved").find(head)
    )


_PIECES = re.compile(r"[,;(\[–]|\s-\s")


def _of_another(ahead: str, behind: str) -> bool:
    """'Energy incl. CO2' and 'Freight incl. VAT' tell what the figures themselves include."""
    return bool(charges_named(ahead) and charges_named(behind)) or bool(phrases("taxes").find(behind))


def names_share(text: str) -> bool:
    """'Frachtanteil', 'part transport': what may be a part of the price."""
    return bool(phrases("share_words").find(text))
