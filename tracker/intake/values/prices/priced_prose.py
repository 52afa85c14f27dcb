"""A price told within running text: 'We can offer GC1, 400 µm, 250 g/m² at EUR 1,085 per tonne until May'."""

from dataclasses import dataclass
from functools import lru_cache

from tracker.intake.values.boards.boards_named import names_measure
from tracker.intake.values.boards.grade import find_grade, names_grade
from tracker.intake.values.changes.price_changes import price_changes
from tracker.intake.values.freight.charge_parts import optional_charges
from tracker.intake.values.freight.charges import find_charges
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.statements import Remark, says
from tracker.intake.values.orders.small_orders import dearer_if_small
from tracker.intake.values.prices.money import PriceText, price_text
from tracker.intake.values.prices.price_within import prices_within
from tracker.intake.words.lists import phrases


@dataclass(frozen=True, slots=True)
class PricedProse:
    """The sentence, and the price in it; None for an amount that says not what it is per."""

    sentence: str
    price: PriceText | None


@lru_cache(maxsize=8192)
def priced_prose(text: str, *, alone: bool = False) -> PricedProse | None:
    """The sentence with a price where a text names a board by grade and measure and what it costs; else None.

    What a charge, a change of prices, an index or an earlier list comes to is no offer. `alone`: nothing else in the
    file offers anything, so that a price without a board may be an offer, and an amount beside a grade.
    """
    if not any(map(str.isdigit, text)) or not (alone or _names_board(text)):
        return None
    said = [clause for clause in clauses(text) if _of_a_price(clause)]
    priced = next((told for clause in said if (told := _priced(clause)) is not None), None)
    if priced is not None or not alone or find_grade(text) is None:
        return priced
    amounts = (clause for clause in said if next(prices_within(clause, unit=False), None) is not None)
    return next((PricedProse(clause, None) for clause in amounts), None)


def _names_board(text: str) -> bool:
    return names_grade(text) and names_measure(text)


def _of_a_price(clause: str) -> bool:
    if find_charges(clause) or optional_charges(clause) or price_changes(clause):
        return False
    if phrases("additions").find(clause) or phrases("price_moves").find(clause):
        return False
    return dearer_if_small(clause) is None and not says(clause) & {Remark.SUPERSEDED, Remark.INDEX, Remark.TOTAL}


def _priced(clause: str) -> PricedProse | None:
    found = (price_text(clause[start:end].strip().rstrip(".")) for _, start, end, _ in prices_within(clause))
    return next((PricedProse(clause, price) for price in found if price is not None), None)
