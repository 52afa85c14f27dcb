"""Notes that change what the prices come to: 'All prices less 3 %', 'Add 25 for C2S', '24 pt: +$20/ST'."""

import re
from dataclasses import dataclass
from functools import lru_cache

from tracker.intake.values.caliper import CaliperReading, find_calipers
from tracker.intake.values.clauses import clauses
from tracker.intake.values.currency import currency_text, find_currencies
from tracker.intake.values.dates import find_dates
from tracker.intake.values.discounts import discount_to_come
from tracker.intake.values.grade import GradeReading, find_grade
from tracker.intake.values.masses import find_masses
from tracker.intake.values.multiples import multiplied
from tracker.intake.values.tax import tax_included
from tracker.intake.values.withdrawn import withdrawn
from tracker.intake.words.lists import phrases

_PERCENT = re.compile(r"\d\s*%")
_FIGURE = re.compile(r"\s*[:=]?\s*([^\W\d]{0,3}[$€£]?)\s*\d+(?:[.,]\d+)*\s*")
_PLUS = re.compile(r"\+(?=\s*[^\W\d]{0,3}[$€£]?\s*\d)")


@dataclass(frozen=True, slots=True)
class ChangesPrice:
    """Prices are to be reduced, or for some boards to be raised. `grade` and `calipers`: which; None and () for all.

    `of_gross`: it is said of prices that are not called net. `tax`: the prices have value added tax in them.
    """

    words: str
    grade: GradeReading | None = None
    calipers: tuple[CaliperReading, ...] = ()
    of_gross: bool = False
    tax: bool = False


@lru_cache(maxsize=8192)
def price_changes(text: str) -> tuple[ChangesPrice, ...]:
    """What a note's part sentences take off all prices, add to them or to boards that they name, or call off."""
    found = (_change(clause) for clause in clauses(text))
    return tuple(change for change in found if change is not None)


def _change(clause: str) -> ChangesPrice | None:
    change = _taxed(clause) or _reduction(clause) or _open_discount(clause) or _addition(clause) or _on_all(clause)
    return change or (ChangesPrice(clause) if multiplied(clause) else _end(clause))


_FEW_WORDS = 5


def _taxed(clause: str) -> ChangesPrice | None:
    """'Prices incl. 19 % VAT' and 'TVA comprise' alone; 'statutory VAT will be included in our invoices' and 'Total
    TTC' say nothing of the list."""
    if not tax_included(clause) or _names_a_charge(clause) or phrases("total").find(clause):
        return None
    of_prices = phrases("price_words").find(clause) or find_currencies(clause) or len(clause.split()) <= _FEW_WORDS
    return ChangesPrice(clause, tax=True) if of_prices else None


def _open_discount(clause: str) -> ChangesPrice | None:
    return ChangesPrice(clause, of_gross=True) if discount_to_come(clause) else None


def _reduction(clause: str) -> ChangesPrice | None:
    """A rate or amount off the prices; cash discounts, those of larger orders and those taken off already are none."""
    if not phrases("reductions").find(clause) or not (_PERCENT.search(clause) or find_currencies(clause)):
        return None
    conditional = phrases("discount_conditions").find(clause) or find_dates(clause) or find_masses(clause)
    grade = find_grade(clause)
    named = grade if grade is not None and grade.tells_board else None
    of_prices = phrases("price_words").find(clause) or phrases("for_this_buyer").find(clause)
    return ChangesPrice(clause, named) if not conditional and (of_prices or named) else None


def _addition(clause: str) -> ChangesPrice | None:
    """An amount on top for a coating, a grade or a caliper; a charge of its own, a later day or an order size is
    told elsewhere."""
    grade, calipers = find_grade(clause), find_calipers(clause)
    named = grade is not None and grade.tells_board
    tolerance = phrases("not_charge").find(clause)
    if not (named or calipers) or tolerance or find_dates(clause) or find_masses(clause) or _names_a_charge(clause):
        return None
    signs = [match.end() for match in _PLUS.finditer(clause)]
    words = [match.end for match in phrases("additions").find(clause)]
    if not any(_amount_follows(clause[end:]) for end in (*signs, *words)):
        return None
    return ChangesPrice(clause, grade if named else None, calipers)


def _on_all(clause: str) -> ChangesPrice | None:
    """'Add $40/ST to all prices': an amount that is no charge by name; taxes and conditions are told elsewhere."""
    named = phrases("charges").find(clause) or phrases("not_charge").find(clause)
    if named or find_dates(clause) or find_masses(clause) or not phrases("price_words").find(clause):
        return None
    words = phrases("additions").find(clause)
    return ChangesPrice(clause) if any(_amount_follows(clause[match.end :]) for match in words) else None


def _end(clause: str) -> ChangesPrice | None:
    """'These prices are withdrawn': what the sheet offers is not offered any more."""
    named = phrases("these_prices").find(clause)
    old = named and phrases("superseded").find(clause) and not phrases("replaces").find(clause)
    every = named or (phrases("all_of_them").find(clause) and phrases("price_words").find(clause))
    return ChangesPrice(clause) if old or (every and withdrawn(clause)) else None


def _names_a_charge(clause: str) -> bool:
    return any(match.value in ("freight", "energy", "sheeting") for match in phrases("charges").find(clause))


def _amount_follows(text: str) -> bool:
    """'25 for C2S' and '$20/ST' are amounts of money; '1 week' and '18 pt' are none."""
    figure = _FIGURE.match(text)
    if figure is None:
        return False
    rest = text[figure.end() :]
    if figure.group(1) and currency_text(figure.group(1)) is not None:
        return True
    word = re.match(r"[^\W\d]+", rest)
    return word is None or bool(phrases("addition_links").find(word.group()) or find_currencies(word.group()))
