"""Lines that say that what follows comes on top of the prices, 'Added to every item above:', 'Hinzu kommen auf alle
Sorten:', and what stands below or behind them: there every name with an amount is a charge, whatever it is called.
"""

import re
from enum import Enum, auto
from functools import lru_cache
from itertools import chain
from typing import NamedTuple

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.freight.charge_names import ChargeKind, charges_named, whole_name
from tracker.intake.values.freight.charge_parts import PARTS
from tracker.intake.values.freight.entry_amounts import amounts_in
from tracker.intake.values.freight.freight_lanes import without_lane
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.denials import denied
from tracker.intake.values.notes.note_signs import without_sign
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.prices.money import PriceUnit, price_unit
from tracker.intake.words.lists import joined, phrases
from tracker.intake.words.phrases import blanked, outside

_LONGEST = 80
_SAYING_NO_MORE = (
    "charges",
    "charge_filler",
    "all_of_them",
    "price_words",
    "every_board",
    "adds_to_prices",
    "in_all_cases",
    "prices_above",
    "prices_below",
    "looking_back",
)
_OF_SOME = ("optional", "small_orders", "only_if", "exceptions")
_TOLD_ELSEWHERE = ("optional", "small_orders", "tax.named", "reductions", "forms")


class Adds(Enum):
    """How far a line adds to the prices what stands below it."""

    ALWAYS = auto()
    PERHAPS = auto()
    NEVER = auto()


class Entry(NamedTuple):
    """One entry below such a line: its name and its amount."""

    name: str
    amount: str
    adds: Adds

    @property
    def said(self) -> str:
        """'Maut: 4 €/t'."""
        return f"{self.name}: {self.amount}"


@lru_cache(maxsize=4096)
def leads_to_additions(line: str) -> bool:
    """Whether a line says no more than that what follows is added to the prices. 'Freight, add to all prices:' leads to
    freights, and 'Extras:' to what a buyer may do without."""
    text = without_sign(line).strip()
    if not text or len(text) > _LONGEST or any(map(str.isdigit, text)):
        return False
    adds = phrases("leads_to_additions").find(text)
    if not adds or not (text.endswith(":") or phrases("all_of_them").find(text)):
        return False
    if any(found.value != ChargeKind.OTHER for found in charges_named(text)):
        return False
    if any(phrases(section).find(text) for section in _OF_SOME):
        return False
    unit = unit_of_line(text)
    return says_no_more_than_that(text if unit is None else blanked(text, [unit.span]))


class LineUnit(NamedTuple):
    """What the amounts below such a line are in, and where it says so."""

    unit: PriceUnit
    span: tuple[int, int]


@lru_cache(maxsize=4096)
def unit_of_line(line: str) -> LineUnit | None:
    """The 'je Tonne' of 'Zuschläge je Tonne, zusätzlich berechnet:', the 'in €/t' of 'Added to all prices, in €/t:'."""
    words = [(match.start(), match.end()) for match in _WORD.finditer(line)]
    for length in range(_MOST_WORDS, 0, -1):
        for (start, _), (_, end) in zip(words, words[length - 1 :], strict=False):
            unit = price_unit(line[start:end]) if _leads_to_unit(line[start:end]) else None
            if unit is not None and unit.basis is not None:
                return LineUnit(unit, (_begins(line, start), end))
    return None


def _begins(line: str, start: int) -> int:
    """Where the words begin that lead to a unit, 'amounts in'."""
    for match in reversed(phrases("leads_to_unit").find(line[:start])):
        if line[match.end : start].strip(" ("):
            break
        start = match.start
    return start


_WORD = re.compile(r"[^\s,:;()]+")
_MOST_WORDS = 4


def _leads_to_unit(words: str) -> bool:
    """'Per tonne' and '€/t'; a 'tonne' by itself counts goods."""
    per = any(match.value == "strong" and match.start == 0 for match in phrases("per").find(words))
    return per or bool(find_currencies(words))


@lru_cache(maxsize=4096)
def additions_of(line: str) -> Adds | None:
    """How far a line adds what follows it: 'Added to all prices from 2027:' perhaps, for more is said than is read, and
    'Not added to the prices:' never. None for a line that leads to something else."""
    if leads_to_additions(line):
        return Adds.ALWAYS
    text = without_sign(line).strip()
    if leads_to_included(text):
        return Adds.NEVER
    found = phrases("leads_to_additions").find(text) if text.endswith(":") and len(text) <= _LONGEST else []
    if not found or joined(*_TOLD_ELSEWHERE).find(text) or find_grade(text) is not None:
        return None
    if any(named.value != ChargeKind.OTHER for named in charges_named(text)) or len(clauses(text)) > 1:
        return None
    if outside(phrases("negations").find(text), found) or _is_within(text):
        return Adds.NEVER
    return Adds.PERHAPS


@lru_cache(maxsize=4096)
def leads_to_included(text: str) -> bool:
    """Whether a line says no more than that prices hold what follows: 'The prices include:', 'Already in price:'."""
    text = text.strip()
    found = [match for match in phrases("relieved").find(text) if match.value in ("within", "holds")]
    if not found or not text.endswith(":") or len(text) > _LONGEST or phrases("negations").find(text):
        return False
    return not rest_of(text, (match.span for match in found), *_SAYING_NO_MORE, "articles", "copula")


def _is_within(text: str) -> bool:
    """'Added (already in the prices)'."""
    return any(match.value == "within" and not denied(text, match) for match in phrases("relieved").find(text))


def says_no_more_than_that(title: str) -> bool:
    """Whether every word of a title is of charges, of all boards, of prices, or one that adds to them."""
    sections = (*_SAYING_NO_MORE, "leads_to_additions")
    spans = (found.span for found in chain.from_iterable(phrases(section).find(title) for section in sections))
    return not any(map(str.isalpha, blanked(title, spans)))


def adds_to_one_side(line: str) -> bool:
    """Whether a line that adds says to which prices: 'Added to the prices above:'."""
    return bool(joined("prices_above", "prices_below").find(line))


def additions_behind(text: str) -> tuple[str, list[str]]:
    """Such a line and the entries behind its colon: 'Hinzu kommen: Energie 6 %, Maut 4 €/t'; none for other texts."""
    line, colon, rest = text.partition(":")
    adds = additions_of(f"{line}{colon}") if rest.strip() else None
    if adds is None or not (adds is Adds.ALWAYS or amounts_in(rest)):
        return "", []
    parts = (part.strip(" .;-–•") for one in re.split(r"[\n;]", rest) for part in PARTS.split(one))
    entries: list[str] = []
    for part in filter(None, parts):
        if entries and not (amounts_in(part) or charges_named(part)):
            # The 'waived in June' behind 'energy 3 %, toll $4/ST' may be said of both.
            entries = [f"{entry}, {part}" for entry in entries]
        else:
            entries.append(part)
    return line, entries


def said_as_added(clause: str) -> Entry | None:
    """The entry that stands before such a line: that of 'Maut: 4 €/t, Hinzu kommen:'. '$15/ST, Added to all prices:',
    said of a board, has no name of its own."""
    said, comma, line = clause.rpartition(", ")
    adds = additions_of(line) if comma else None
    if adds is None:
        return None
    name, colon, amount = said.partition(":")
    named, alone = (name.strip(), amount.strip()), (line.strip(" :"), said.strip())
    return Entry(*(named if colon else alone), adds) if colon or amounts_in(said) else None


def told_by_its_line(clause: str) -> bool:
    """Whether the line before or behind it says what becomes of a charge: 'Not added to the prices: energy 3 %'."""
    return said_as_added(clause) is not None or _added_behind(clause) is Adds.NEVER


def never_added(text: str) -> bool:
    """'Not added to the prices: energy 3 %', and what stands below 'Included in the prices:'."""
    entries = (said_as_added(clause) for clause in clauses(text))
    below = any(entry is not None and entry.adds is Adds.NEVER for entry in entries)
    return below or any(_added_behind(clause) is Adds.NEVER for clause in clauses(text))


def perhaps_added(clause: str) -> bool:
    """'Last year added to all prices: energy 3 %'."""
    return _added_behind(clause) is Adds.PERHAPS


def _added_behind(clause: str) -> Adds | None:
    line, colon, _ = clause.partition(":")
    return additions_of(f"{line}{colon}") if colon else None


def words_unread(said: str) -> str:
    """What is left of an entry, or of its amount, without figures, units, what is known to be charged and the words
    that change nothing of it: the place of 'Freight Ohio: $45/ST', the times of 'Winter months: $15/ST'."""
    # One freight to a place is that to the buyer; of several, none is certain.
    said = without_lane(said)
    named = charges_named(said)
    spans = [*amounts_in(said), *(whole_name(said, one) for one in named)]
    if any(one.value == ChargeKind.FREIGHT for one in named):
        # Where freight leads: 'Frachtzuschlag frei Haus'.
        spans += [found.span for found in phrases("delivery").find(said) if found.value == "delivered"]
    spans += [found.span for section in _READ for found in phrases(section).find(said)]
    spans += [found.span for found in joined("range.and").find(said)]
    return "".join(filter(str.isalnum, blanked(said, spans)))


_READ = (
    *_SAYING_NO_MORE,
    "share_of",
    "added_things",
    "surcharge_words",
    "articles",
    "per",
    "basis",
    "currency",
    "whole_price",
    "to_the_buyer",
)


def is_added_for_certain(entry: Entry) -> bool:
    """Whether the amount of an entry is charged on every order. A name that nobody knows may be that of a place, a
    mill, a month or a kind of order: 'Ohio $45/ST' beside 'Texas $60/ST', 'Ausland 60 €/t'."""
    certain = entry.adds is Adds.ALWAYS and not words_unread(entry.said)
    return certain and not phrases("when_it_happens").find(entry.said) and not _ends_in_direction(entry.name)


def _ends_in_direction(name: str) -> bool:
    """The 'sur' of 'Portes sur', which is 'on' elsewhere."""
    return any(match.end == len(name) for match in phrases("directions").find(name))
