"""Notes that change what the prices come to: 'All prices less 3 %', 'Add 25 for C2S', '20 pt and up: +$20/ST'."""

import re
from dataclasses import dataclass, replace
from decimal import Decimal
from functools import lru_cache
from itertools import pairwise

from tracker.intake.values.boards.boards_meant import ALL_BOARDS, BoardsMeant, boards_meant
from tracker.intake.values.changes.called_outdated import calls_outdated, ends_outdated
from tracker.intake.values.changes.corrections import labelled_as_corrected, misprinted, says_misprinted
from tracker.intake.values.changes.discounts import discount_to_come
from tracker.intake.values.changes.line_corrections import lines_corrected
from tracker.intake.values.changes.measure_corrections import printed_wrongly
from tracker.intake.values.changes.price_rises import adjusts, all_dearer, is_dearer, left_out, names_a_charge, rises
from tracker.intake.values.changes.reductions import reduces, takes_off
from tracker.intake.values.changes.withdrawn import no_longer_made, withdrawn
from tracker.intake.values.figures.rates import in_signs, is_added, states_amount
from tracker.intake.values.freight.charges import find_charges
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.lettered_lines import letters_as_numbers
from tracker.intake.values.notes.unseen_marks import of_unseen_marks
from tracker.intake.values.prices.basis import find_basis
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.prices.multiples import multiplied
from tracker.intake.values.prices.tax import tax_included
from tracker.intake.words.lists import pattern, phrases


@dataclass(frozen=True, slots=True)
class ChangesPrice:
    """Prices are to be reduced, or to be raised: those of `boards`. `of_gross`: it only names a discount, which prices
    that are called net bear. `tax`: the prices have value added tax in them. `unless_in_stock`: no more of the board is
    made, and what is left of it is sold."""

    words: str
    boards: BoardsMeant = ALL_BOARDS
    of_gross: bool = False
    tax: bool = False
    figures: frozenset[Decimal] = frozenset()
    unless_in_stock: bool = False


@lru_cache(maxsize=8192)
def price_changes(text: str) -> tuple[ChangesPrice, ...]:
    """What a note's part sentences take off all prices, add to them or to boards that they name, or call off."""
    found = (_change(clause) for clause in (*clauses(text), *_behind_a_dash(text)))
    return tuple(change for change in (*found, _of_board_before(text)) if change is not None)


def _of_board_before(text: str) -> ChangesPrice | None:
    """'GC2 300 gsm: an oversight of ours. It should read 1,118.00': the sentence before says of which board."""
    for before, clause in pairwise(clauses(text)):
        boards = boards_meant(before)
        if boards.some and not boards_meant(clause).some and len(misprinted(clause)) == 1:
            return ChangesPrice(f"{before}. {clause}", boards)
    return None


@lru_cache(maxsize=8192)
def changes_of_row(text: str) -> tuple[ChangesPrice, ...]:
    """What a remark says of the price in its own row, which it need not name: 'less 3 %', 'plus 25 USD for C2S'."""
    found = (_change(clause) or _of_this_price(clause) for clause in clauses(text))
    return tuple(change for change in found if change is not None)


def _of_this_price(clause: str) -> ChangesPrice | None:
    if takes_off(in_signs(clause)):
        return ChangesPrice(clause, of_gross=True)
    # '-1+2' and '+25' may be anything.
    money = states_amount(in_signs(clause)) or find_basis(clause) is not None
    return ChangesPrice(clause) if money and not find_charges(clause) and is_dearer(in_signs(clause)) else None


_DASH = re.compile(r"(?P<said>[^\n.;!–—]*)\s[–—]\s*(?P<rate>\d+(?:[.,]\d+)?\s*%[^\n.;!]*)")


def _behind_a_dash(text: str) -> list[str]:
    """'All prices – 2 %': the dash is a minus, where prices end right before it."""
    match = _DASH.search(in_signs(text))
    if match is None:
        return []
    named = [found for section in ("price_words", "these_prices") for found in phrases(section).find(match["said"])]
    ends = any(not match["said"][found.end :].strip(" :") for found in named)
    return [f"{match['said']} - {match['rate']}"] if ends else []


def _change(clause: str) -> ChangesPrice | None:
    if lines_corrected(clause) is not None:
        return ChangesPrice(clause)
    of_lines = _behind_lines(clause)
    told = _of_this_price(of_lines) if of_lines else None
    if told is not None:
        return replace(told, words=clause)
    boards, of_prices = boards_meant(clause), speaks_of_prices(clause)
    said = in_signs(boards.rest)
    if _taxed(clause):
        return ChangesPrice(clause, tax=True)
    figures = misprinted(boards.rest) or misprinted(clause)
    if figures:
        # 'GD2 300 g/m² should read 912' does not say what is printed: any price of that board may be meant.
        of_all = boards.some and len(figures) == 1
        named = boards if boards.some else ALL_BOARDS
        return ChangesPrice(clause, named, figures=frozenset() if of_all else figures[0].union(*figures))
    misdescribed = printed_wrongly(clause)
    if misdescribed is not None:
        # What is paid for is another board than the list says.
        return ChangesPrice(clause, misdescribed)
    if boards.some and (says_misprinted(boards.rest) or labelled_as_corrected(clause)):
        return ChangesPrice(clause, boards)
    if boards.some and ends_outdated(clause):
        return ChangesPrice(clause, boards)
    if boards.some and withdrawn(clause):
        return ChangesPrice(clause, boards, unless_in_stock=no_longer_made(clause))
    if (withdrawn(clause) or calls_outdated(clause)) and of_unseen_marks(clause):
        # 'Prices in red are no longer valid': any of them may be red.
        return ChangesPrice(clause)
    if takes_off(said) if of_prices or boards.some else reduces(said):
        return ChangesPrice(clause, boards, of_gross=not (of_prices or boards.some))
    if discount_to_come(clause):
        return ChangesPrice(clause, of_gross=True)
    if boards.some and is_dearer(said):
        return ChangesPrice(clause, boards)
    if (of_prices and (all_dearer(said) or rises(said))) or left_out(said):
        return ChangesPrice(clause, boards)
    return ChangesPrice(clause) if adjusts(said) or multiplied(clause) or _ends(clause) else None


_LINES = re.compile(
    rf"[.:]?\s*\d{{1,3}}(?:\s*(?:,|&|[-–]|{pattern('range', 'and', 'any')})\s*\d{{1,3}})*(?![\d.,]*\d)\s*[:,–-]?\s+"
)


def _behind_lines(clause: str) -> str:
    """'Less 3 %' of 'Item 2: less 3 %' and 'Items (b) and (c) less 3 %': a change of some prices is asked about for
    all, of which they are some."""
    text = letters_as_numbers(clause)
    led = next((found for found in phrases("line_numbers").find(text) if found.start == 0), None)
    counted = _LINES.match(text, led.end) if led is not None else None
    return text[counted.end() :] if counted is not None else ""


_FEW_WORDS = 5


def _taxed(clause: str) -> bool:
    """'Prices incl. 19 % VAT' and 'TVA comprise' alone; 'statutory VAT will be included in our invoices' and 'Total
    TTC' say nothing of the list."""
    if not tax_included(clause) or names_a_charge(clause) or phrases("total").find(clause):
        return False
    of_prices = phrases("price_words").find(clause) or find_currencies(clause) or len(clause.split()) <= _FEW_WORDS
    return bool(of_prices)


def speaks_of_prices(clause: str) -> bool:
    """'All prices', 'these', 'your discount'; an amount on 'all items' is one on their prices."""
    sections = ("price_words", "these_prices", "for_this_buyer")
    compound = any(match.value == "of_prices" for match in phrases("price_rises").find(clause))
    if compound or any(phrases(section).find(clause) for section in sections):
        return True
    return bool(phrases("all_of_them").find(clause)) and is_added(in_signs(clause))


def _ends(clause: str) -> bool:
    """'These prices are withdrawn', 'The above grades are sold out': what the sheet offers is not offered any more."""
    named = phrases("these_prices").find(clause)
    old = named and calls_outdated(clause) and not phrases("replaces").find(clause)
    above = any(not clause[: match.start].strip() for match in phrases("prices_above").find(clause))
    every = named or above or (phrases("all_of_them").find(clause) and phrases("price_words").find(clause))
    return bool(old or (every and withdrawn(clause)))
