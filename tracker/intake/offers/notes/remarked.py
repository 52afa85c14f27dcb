"""What a row's own remarks say of its price: 'price per tonne', 'Preis in CHF', 'MT'."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace
from functools import lru_cache

from tracker.intake.grid import Cell
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.notes.said import at
from tracker.intake.offers.prices.money import bases_of, basis_claim, currency_claim
from tracker.intake.offers.prices.settle import Claim
from tracker.intake.values.figures.sheetsize import find_sheet_sizes, without_sheet_sizes
from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.notes.statements import Statement, statements
from tracker.intake.values.prices.basis import BasisReading, basis_in_a_word, basis_span, basis_text
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.prices.money import unit_of_text
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.values.prices.units_denied import units_denied
from tracker.intake.values.prices.worded_basis import unit_named
from tracker.intake.values.times.lead_remarked import without_this_line
from tracker.intake.words.lists import phrases
from tracker.trade.basis import BY_AREA, BY_SHEET, BY_WEIGHT
from tracker.trade.offer import Evidence


def denied_by_remarks(remarks: Sequence[Cell], facts: FileFacts) -> frozenset[str]:
    """The currencies and bases that the row's own remarks say its price is not in: 'per MSF, not per cwt'."""
    if not remarks:
        return frozenset()
    denied = (unit for cell in remarks for unit in units_denied(cell.text)[1])
    return frozenset(
        name
        for unit in denied
        for name in (
            *(unit.currency.codes if unit.currency is not None else ()),
            *(bases_of(unit.basis, facts) if unit.basis is not None else ()),
        )
    )


def remarked(remarks: Sequence[Cell]) -> list[tuple[Cell, Statement]]:
    """What the row's own remarks say of its prices: 'price per tonne', 'Preis in CHF', or a unit of price alone."""
    return [(cell, said) for cell in remarks for said in _of_prices(units_denied(cell.text)[0])]


def take_sheet_remarked(draft: Draft, said_beside: list[tuple[Cell, Statement]]) -> None:
    """The size of the sheets that a remark says the price to be for: 'price for 1,000 sheets 28 x 40 in'."""
    for cell, said in said_beside if draft.sheet_mm is None else ():
        sizes = find_sheet_sizes(cell.text) if isinstance(said, SaysBasis) and said.basis.bases & BY_SHEET else ()
        if len(sizes) == 1:
            draft.sheet_mm = sizes[0].mm
            draft.evidence.append(Evidence("sheet_mm", at(cell), cell.text.strip()))


@lru_cache(maxsize=4096)
def _of_prices(text: str) -> tuple[Statement, ...]:
    in_a_word = basis_in_a_word(text)
    if in_a_word is not None and not phrases("no_price").find(text):
        return (*statements(text), SaysBasis(in_a_word, text))
    if _speaks_of_prices(text):
        return statements(text) + tuple(_in_doubt(text))
    if _is_invoiced(text):
        return tuple(one for one in statements(text) if isinstance(one, SaysCurrency))
    units = (_unit(without_sheet_sizes(without_this_line(part))) for part in _PARTS.split(text))
    return tuple(SaysBasis(unit, text) for unit in units if unit is not None)


def _in_doubt(text: str) -> Iterator[SaysBasis]:
    """The unit in a remark on the price that is not read as what this is per, but may be meant so: 'the price refers to
    one ream'. 'Price from 5 t' and 'price incl. pallets' speak of other things."""
    if any(isinstance(one, SaysBasis) for one in statements(text)):
        return
    for part in map(without_sheet_sizes, _PARTS.split(text)):
        if phrases("price_words").find(part) and not _of_sizes_or_charges(part):
            unit = unit_named(part)
            if unit is not None:
                yield SaysBasis(replace(unit, foreign=unit.foreign or "quantity"), text)


def _of_sizes_or_charges(part: str) -> bool:
    # The 'to' of 'the price refers to 100 kg' is no end of a span.
    said = phrases("bracket").find(part)
    limits = [each for each in said if phrases("refers").whole(part[each.start : each.end]) is None]
    return any(part[limit.end :].strip()[:1].isdigit() for limit in limits) or bool(charges_named(part))


def _speaks_of_prices(text: str) -> bool:
    """'Preis in CHF', and 'in CHF' by itself; 'Rolle' and 't' may be said of anything."""
    if phrases("price_words").find(text):
        return True
    first, _, rest = text.strip().partition(" ")
    unit = unit_of_text(rest if rest and phrases("header_filler").whole(first) is not None else text)
    return unit is not None and unit.currency is not None


def _is_invoiced(text: str) -> bool:
    """'This board is invoiced in US dollars'; what some buyers are sent on request is none of this price."""
    said = {match.value for match in phrases("invoices").find(text)}
    return said == {"any"} and len(find_currencies(text)) == 1


_PARTS = re.compile(r",(?!\d)|[;()\n]|\s[-–—]\s")


def _unit(part: str) -> BasisReading | None:
    """'per tonne', 'MT', 'sold by the cwt': the unit that a part of a remark is, and no more.

    Without a word for it only a weight or an area is one: 'rolls' and 'pallet' say how board comes, and '1000 kg' may
    as well be how much of it.
    """
    bare = part
    for said in reversed(phrases("unit_words").find(part)):
        bare = f"{bare[: said.start]} {bare[said.end :]}"
    unit = basis_text(bare)
    if unit is None or bare != part or basis_span(part) is not None:
        return unit
    if unit.needs_sheet or unit.foreign is not None or not unit.bases <= BY_WEIGHT | BY_AREA:
        return None
    return replace(unit, foreign="quantity") if part.strip()[:1].isdigit() else unit


def currencies_in(said_beside: list[tuple[Cell, Statement]]) -> tuple[Claim[str], ...]:
    """The currencies among what remarks say."""
    said = ((cell, one) for cell, one in said_beside if isinstance(one, SaysCurrency))
    return tuple(currency_claim(one.currency, at(cell), cell.text.strip()) for cell, one in said)


def bases_in(said_beside: list[tuple[Cell, Statement]], facts: FileFacts) -> tuple[Claim[str], ...]:
    """What prices are per, among what remarks say."""
    said = ((cell, one) for cell, one in said_beside if isinstance(one, SaysBasis))
    claims = (basis_claim(one.basis, at(cell), cell.text.strip(), facts) for cell, one in said)
    return tuple(replace(claim, of_rows=True) for claim in claims)
