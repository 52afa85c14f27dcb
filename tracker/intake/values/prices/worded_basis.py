"""What prices are per, in words that are none for 'per', or are others too: '…, for a short ton of 2,000 lb', 'jeweils
für 1.000 Bogen', 'what one thousand sheets cost in pounds', 'el importe de cada mil metros cuadrados'."""

import re
from collections.abc import Iterator, Sequence
from functools import lru_cache

from tracker.intake.values.figures.sheetsize import without_sheet_sizes
from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.prices.basis import (
    BasisReading,
    after_per,
    are_goods,
    basis_in_a_word,
    basis_span,
    basis_text,
    unit_at,
)
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.prices.sold_by_unit import is_sold_by_unit
from tracker.intake.values.prices.tax import without_tax
from tracker.intake.values.prices.ton_kinds import ton_definition
from tracker.intake.words.lists import phrases, without_words
from tracker.intake.words.phrases import Found, Token, between, blanked, tokens_of
from tracker.trade.basis import BY_AREA, BY_WEIGHT


@lru_cache(maxsize=4096)
def worded_basis(clause: str) -> BasisReading | None:
    """The unit that a clause about prices gives them so; None where it names none, or several."""
    return next(filter(None, map(_of_part, _parts(clause))), None) or _of_one_unit(clause)


def _parts(clause: str) -> Iterator[str]:
    pieces = COMMA.split(clause)
    ahead = ["", *pieces]
    own = [piece for before, piece in zip(ahead, pieces, strict=False) if not _is_of_orders(before)]
    for piece in own if may_tell_a_unit(clause) else ():
        # 'Prices for one tonne and over' says how much is ordered.
        if not any(phrases("and_words").at(tokens_of(piece), more.first) for more in phrases("bracket").find(piece)):
            yield from between(piece, phrases("and_words").find(piece))


def may_tell_a_unit(clause: str) -> bool:
    """Whether a part that is nothing but a unit tells what prices are per: the clause speaks of prices, or beside it of
    goods and delivery alone; 'a minimum applies, of 1 tonne' speaks of orders, 'per tonne, minimum 1 tonne' of both.
    """
    pieces = [piece for piece in COMMA.split(clause) if piece.strip()]
    led = bool(pieces) and _of_part(pieces[0]) is not None and _is_per(pieces[0])
    others = [piece for piece in pieces if _of_part(piece) is None and not (led and phrases("minimum").find(piece))]
    about = _names_prices(clause) or _names_costs(clause) or bool(find_currencies(clause))
    return about or all(map(_may_stand_by, others))


def _is_per(part: str) -> bool:
    """'Per tonne', and not the 'of a tonne' of what goes on about something else."""
    return basis_span(part) is not None


def _is_of_orders(part: str) -> bool:
    found = (phrases(section).find(part) for section in ("minimum", "order_words", "small_orders"))
    return any(found) and not _names_prices(part)


def _may_stand_by(part: str) -> bool:
    """Beside a unit by itself: goods and how they are delivered, 'Folding boxboard, ex works, for one tonne'."""
    included = find_delivery(part) is not None or bool(phrases("freight_included").find(part))
    charged = bool(charges_named(part)) and not included
    return not charged and not any(phrases(section).find(part) for section in _OF_OTHERS)


_OF_OTHERS = ("minimum", "order_words", "packed", "lead_topic")


def _of_part(part: str) -> BasisReading | None:
    """The unit of a part that is nothing but 'per' in any of its words and a unit."""
    part = part.strip(" .:*")
    found, start = tokens_of(part), _behind_small_words(part)
    after = after_per(found, start, weak=True)
    unit = unit_at(found, after, part) if start < after < len(found) else None
    if unit is None or not unit[0].bases or are_goods(found, after, unit[0]):
        return None
    goes_on = unit[1] < len(found)
    return None if goes_on and ton_definition(part) is None else unit[0]


def _behind_small_words(part: str) -> int:
    """The number of the first token behind 'each', 'jeweils', 'are'."""
    small = {match.first: match.after for kind in _SMALL for match in phrases(kind).find(part)}
    place = 0
    while place in small:
        place = small[place]
    return place


_SMALL = ("copula", "each_time")


def _of_one_unit(clause: str) -> BasisReading | None:
    """The one unit of a sentence that says nothing besides, but that it is of prices or of what something costs: a
    thousand of something, or 'one', 'each', 'cada' of it."""
    in_a_word = phrases("unit_prices").find(clause)
    if len(in_a_word) == 1 and _says_no_more(clause, *in_a_word[0].span):
        # 'Die Preise der Tabelle sind Kilopreise in Euro'.
        return basis_in_a_word(clause)
    named = [match for match in phrases("basis").find(clause) if _is_one(clause, match)]
    if len(named) != 1 or not _says_of_prices(clause, *named[0].span):
        return None
    if not _says_no_more(clause, *named[0].span):
        return None
    found = tokens_of(clause)
    unit = unit_at(found, named[0].first, clause)
    return unit[0] if unit is not None and unit[0].bases else None


def _says_of_prices(clause: str, start: int, end: int) -> bool:
    """It names prices or what something costs; beside a charge ('…, port compris') the part with the unit does."""
    first, last = _part_around(clause, start, end)
    said = clause[first:last] if charges_named(clause) else clause
    return (_names_prices(said) or _names_costs(said)) and not charges_named(said)


def unit_named(part: str) -> BasisReading | None:
    """The one unit that a text on prices names with its number or as all that it says, in whatever words: 'one ream',
    '500 sheets', 'bezogen auf m²'; none beside what it is packed in, as in '500 sheets per pallet'."""
    found = tokens_of(part)
    units = {}
    for place in range(len(found)):
        unit = _counted_at(found, place, part)
        if unit is not None and after_per(found, unit[1], weak=False) == unit[1]:
            units[unit[0].bases, unit[0].foreign] = unit[0]
    alone = basis_text(without_words(part, *_SAYS_NO_MORE).strip(" .:")) if not units else None
    if alone is not None:
        return alone if alone.bases and alone.bases <= BY_WEIGHT | BY_AREA else None
    return next(iter(units.values())) if len(units) == 1 else None


def _counted_at(found: Sequence[Token], place: int, text: str) -> tuple[BasisReading, int] | None:
    """The unit whose number stands at this place; '1000' by itself may be anything's."""
    word = found[place][0]
    one = word == "1" or phrases("one_of").whole(word) is not None
    if not (one or word[0].isdigit() or phrases("count_words").whole(word)):
        return None
    unit = unit_at(found, place, text) or (unit_at(found, place + 1, text) if one and place + 1 < len(found) else None)
    return unit if unit is not None and any(map(str.isalpha, unit[0].words)) else None


def is_of_prices(clause: str) -> bool:
    """Whether what a clause says to be per a unit are prices: it names them, or by what goods are sold, or it names
    amounts and what they are per, and nothing else. 'Cost per tonne of CO2' and 'figures are lb per 1,000 sq ft' are of
    something else."""
    if _names_prices(clause) or is_sold_by_unit(clause):
        return True
    found, per = tokens_of(clause), basis_span(clause)
    if per is None or not _names_costs(clause):
        return False
    return _says_no_more(clause, found[per[0]][1], found[per[1] - 1][2])


def _names_prices(clause: str) -> bool:
    return bool(phrases("price_words").find(clause))


def _names_costs(clause: str) -> bool:
    """Whether a clause speaks of what something costs or of the amounts of a list; data sheets and reports do too."""
    return bool(phrases("what_it_costs").find(clause))


def _says_no_more(clause: str, start: int, end: int) -> bool:
    """Whether the part of a clause with the unit between these places holds only the unit, what has it, the money, how
    large its sheets are, how it is delivered and small words: 'orders of one ton', 'one ton of pulp' and 'include one
    thousand sheets' do more.
    """
    first, last = _part_around(clause, start, end)
    left = without_tax(without_sheet_sizes(blanked(clause, [(start, end)])[first:last]))
    for money in find_currencies(left):
        left = left.replace(money.words, " ")
    return not any(map(str.isalnum, without_words(left, *_SAYS_NO_MORE)))


def _part_around(clause: str, start: int, end: int) -> tuple[int, int]:
    """The part of a clause, between commas and brackets, that these places stand in."""
    ends = [0, *(match.end() for match in _BREAKS.finditer(clause)), len(clause)]
    return max(place for place in ends if place <= start), min(place for place in ends if place >= end)


_BREAKS = re.compile(r",(?!\d)|[();]|\.\s")
_SAYS_NO_MORE = (
    "ton_definitions",
    "delivery",
    "incoterms",
    "price_words",
    "what_it_costs",
    "all_goods",
    "one_of",
    "per",
    "copula",
    "articles",
    "and_words",
    "beside_units",
)


def _is_one(clause: str, unit: Found[str]) -> bool:
    if unit.value in _THOUSANDS:
        return True
    last = clause[: unit.start].rsplit(maxsplit=1)[-1:]
    said = " ".join(last), clause[unit.start : unit.end].split()[0]
    return any(phrases("one_of").whole(word) is not None for word in said)


_THOUSANDS = ("1000sheets", "msf", "1000m2")
