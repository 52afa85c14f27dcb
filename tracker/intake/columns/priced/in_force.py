"""Which of the prices beside each other is the one to pay: not last year's, not the one before, not the base of it."""

import re
from collections.abc import Mapping, Sequence

from tracker.intake.columns.column import Column, Columns, Kind, basis_in_head, vendor_in_head
from tracker.intake.columns.sizes.order_sizes import beside_unit, without_unit
from tracker.intake.grid import Cell
from tracker.intake.tables.headers.periods import is_later, is_realised, without_periods
from tracker.intake.tables.table import Words
from tracker.intake.values.figures.halves import halves_of
from tracker.intake.values.heads.roles import CHARGES, Role
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.times.dates import find_dates, without_dates
from tracker.intake.values.times.validity import until_in_head
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import without


def marked_as_old(kinds: Mapping[Column, Kind]) -> list[Column]:
    """'Price Apr (old)' beside 'Price Jul (current)': heads that differ in a time and in which of them is in force.

    'Price (old) until 30 June' beside 'Price (new) from 1 July' both say so; of 'Price now' beside 'Price from 1 July'
    it is asked.
    """
    alike: dict[str, list[Column]] = {}
    for column, kind in kinds.items():
        if kind is Kind.OFFER:
            alike.setdefault(_without_ages(without_dates(column.text)), []).append(column)
    return [column for group in alike.values() if len(group) > 1 for column in _no_longer_in_force(group)]


def _no_longer_in_force(group: list[Column]) -> list[Column]:
    """Those marked as old; all but the one that is marked as in force. Beside one to come it is asked from when on."""
    marks = {column: ages_in(column.text) for column in group}
    if any(find_dates(column.text) for column in group) and not all(marks.values()):
        return []
    if any("coming" in found for found in marks.values()):
        return []
    in_force = [column for column in group if marks[column] == {"in_force"}]
    if len(in_force) == 1:
        return [column for column in group if column is not in_force[0]]
    old = [column for column in group if marks[column] == {"old"}]
    return old if len(old) < len(group) else []


def ages_in(head: str) -> set[str]:
    """Whether a head calls its price old, in force or coming; the 'actual' of '2025 actual price' is not the Spanish
    word for the second."""
    return set() if is_realised(head) else {match.value for match in phrases("price_ages").find(head)}


def still_to_come(kinds: Mapping[Column, Kind]) -> list[Column]:
    """'Announced price for January 2027' beside 'Price': what board will cost then. Beside no other it is the price."""
    offers = [column for column, kind in kinds.items() if kind is Kind.OFFER]
    announced = [column for column in offers if _is_announced_for_a_time(column)]
    return announced if len(announced) < len(offers) else []


def _is_announced_for_a_time(column: Column) -> bool:
    dated = without_periods(column.text) != column.text or bool(find_dates(column.text))
    return dated and bool(phrases("rises_to_come").find(column.text))


def before_the_announced(kinds: Mapping[Column, Kind], said: Sequence[Words]) -> list[Column]:
    """'Current price | New price' in a letter of new prices from a day on: what is paid until then.

    Without the day it is asked which of the two holds.
    """
    offers = [column for column, kind in kinds.items() if kind is Kind.OFFER]
    if len(offers) != 2 or not any(_announces(words.text) for words in said):
        return []
    marks = [{match.value for match in phrases("price_ages").find(column.text)} for column in offers]
    alike = len({_without_ages(without_days(column.text)) for column in offers}) == 1
    new = [column for column in offers if phrases("new_prices").find(column.text)]
    if marks != [{"in_force"}] * 2 or not alike or len(new) != 1:
        return []
    old = [column for column in offers if column is not new[0]]
    # The new price may say its first day once more.
    return old if not (_says_more(old[0]) or _says_more(new[0], but_days=True)) else []


def without_days(text: str) -> str:
    """A head's words without days, also those of no year: 'New price from 01/10'."""
    text = _DAY.sub(" ", without_dates(text))
    return " ".join(without(text, phrases("since").find(text)).split())


_DAY = re.compile(r"(?<![\d./])\d{1,2}[./]\d{1,2}\.?(?![\d./])")


def _announces(text: str) -> bool:
    """'Prices from 1 November 2026', 'Price change effective 1 July': a first day of prices."""
    for clause in clauses(text):
        days = find_dates(clause)
        begins = [one for one in phrases("since").find(clause) if any(one.end <= day.start for day in days)]
        if begins and any(phrases(section).find(clause) for section in ("price_words", "price_rises", "price_moves")):
            return True
    return False


def said_to_be_over(head: str) -> bool:
    """'Q1/26 (alt)', 'Old': a time, that its price is old, and nothing else."""
    ages = {match.value for match in phrases("price_ages").find(head)}
    return ages == {"old"} and not any(map(str.isalpha, _without_ages(head)))


def _without_ages(text: str) -> str:
    """A head's words but for times and for what says that its price is old or in force."""
    for match in reversed(phrases("price_ages").find(text)):
        text = text[: match.start] + text[match.end :]
    return plainly(without_periods(text))


def plainly(text: str) -> str:
    """A head's words without brackets, stops and commas, which come and go with what they set apart."""
    return " ".join(re.sub(r"[()\[\],.;:]", " ", text).split()).casefold()


SEVERAL_TIMES = "prices of several periods stand beside each other"
"""The doubt that such prices leave."""


def old_and_new(column: Column) -> bool:
    """'alt / neu' over '1.210 / 1.245': two prices in one cell, and nothing else in the head."""
    found = phrases("price_ages").find(column.text)
    said = {match.value for match in found}
    return "old" in said and len(said) > 1 and not any(map(str.isalnum, _without_ages(column.text)))


def place_in_force(column: Column, cells: Sequence[Cell]) -> int | None:
    """Which of the two figures in each cell is to be paid, where the head names an old and a new price in their order:
    1 for 'alt / neu €/t' over '1.210 / 1.245'."""
    found = phrases("price_ages").find(column.text)
    ages = [match.value for match in found]
    figures = [cell for cell in cells if any(map(str.isdigit, cell.text))]
    if sorted(ages) != ["in_force", "old"] or not _mostly_two(figures):
        return None
    between = column.text[found[0].end : found[1].start]
    for match in reversed(phrases("price_words").find(between)):
        between = between[: match.start] + between[match.end :]
    beside = not any(map(str.isalnum, between)) and bool(between.strip())
    return ages.index("in_force") if beside else None


def _mostly_two(cells: Sequence[Cell]) -> bool:
    return bool(cells) and 2 * sum(halves_of(cell.text) is not None for cell in cells) >= len(cells)


def told_apart_by_time(heads: Sequence[str]) -> bool:
    """'Q2 2026 price' beside 'Q3 2026 price', 'Price at 1 May' beside 'Price at 1 July': two prices of one board, and
    the heads do not say which is in force, as 'Price until 30 June' does."""
    if len(set(map(plainly, heads))) < 2 or any(until_in_head(head) for head in heads):
        return False
    aged = any(phrases("price_ages").find(head) for head in heads)
    alike: dict[str, set[str]] = {}
    for head in heads:
        alike.setdefault(_without_ages(without_days(head) if aged else without_dates(head)), set()).add(plainly(head))
    # 'Price' beside 'Price from 1 July' holds until then; what stands beside 'Price 2026' is told elsewhere.
    dated = any(find_dates(head) or (aged and _DAY.search(head)) for head in heads)
    if len(alike) == 1:
        return dated or not alike.keys() & set(map(plainly, heads))
    # 'East Q1 | East Q2 | West Q2': of one of two places it is asked as well.
    now = any(
        not words and {match.value for head in group for match in phrases("price_ages").find(head)} == {"in_force"}
        for words, group in alike.items()
    )
    return not now and any(len(group) > 1 and words not in group for words, group in alike.items())


def before_the_new(kinds: Mapping[Column, Kind], columns: Columns) -> list[Column]:
    """'Current price | increase | new price': with the change beside them, the last price is the one offered.

    The last in time, where the heads name months or quarters: 'Dec price | change | Nov price'.
    """
    offers = sorted((column for column, kind in kinds.items() if kind is Kind.OFFER), key=lambda column: column.index)
    changes = [column.index for column in columns.of(Role.CHANGE)]
    if len(offers) != 2 or not changes or any(_says_more(column) or names_another(column) for column in offers):
        return []
    if _two_bases(*offers) or not_told_apart_by_time(offers, columns):
        return []
    return offers[1:] if is_later(offers[0].text, offers[1].text) else offers[:1]


def names_another(column: Column) -> bool:
    """The head names who quotes, or where board goes: of two of those neither price comes before the other."""
    if column.vendor:
        return True
    return any(vendor_in_head(head) or head.role in (Role.VENDOR, Role.DESTINATION) for head in column.said)


def not_told_apart_by_time(offers: Sequence[Column], columns: Columns) -> bool:
    """'Ostmark | Verrin | Difference': two prices by words that name no time. They may be of two vendors, and the first
    may as well be the old one; an 'increase' is of the same vendor's."""
    if len(offers) != 2 or any(_names_a_time(column) or names_another(column) for column in offers):
        return False
    apart = any(phrases("differences").find(column.text) for column in columns.of(Role.CHANGE))
    one, other = (own_words(column) for column in offers)
    return apart and one != other and bool(one) and bool(other)


def of_the_next_time(kinds: Mapping[Column, Kind]) -> list[Column]:
    """'Next quarter' beside 'This quarter' and 'Current': what board will cost is not offered today for certain."""
    offers = [column for column, kind in kinds.items() if kind is Kind.OFFER]
    later = [column for column in offers if _is_next(column) and not find_dates(column.text)]
    return later if len(later) < len(offers) else []


def _is_next(column: Column) -> bool:
    return any(match.value == "next" for match in phrases("relative_periods").find(column.text))


def _names_a_time(column: Column) -> bool:
    """'Aktuell', 'Q4', 'ab 1.1.'"""
    aged = any(phrases(section).find(column.text) for section in ("price_ages", "new_prices", "since"))
    return aged or any(without_periods(head.text) != head.text for head in column.said) or bool(find_dates(column.text))


def own_words(column: Column) -> str:
    """A column's words but for its unit, 'price' and figures."""
    said = " ".join(without_unit(head, basis_in_head(head)) for head in column.said)
    for match in reversed(phrases("price_words").find(said)):
        said = f"{said[: match.start]} {said[match.end :]}"
    return " ".join(word for word in plainly(said).split() if any(map(str.isalpha, word)))


DIFFERENCE = (
    "two prices and what they differ by stand beside each other, and their heads do not say which is to be paid"
)
"""The doubt that such a pair leaves."""


def _two_bases(first: Column, second: Column) -> bool:
    """'$/ST | $/MSF' is one price on two bases, whatever else the heads say."""
    bases = [{basis.bases for basis in column.bases} for column in (first, second)]
    return all(bases) and bases[0] != bases[1]


def _says_more(column: Column, *, but_days: bool = False) -> bool:
    """The head tells more than that it is a price: an order size, a delivery, a day, a board."""
    return any(
        head.bracket
        or beside_unit(head)
        or head.delivery
        or (find_dates(head.text) and not but_days)
        or head.calipers
        or head.weights
        or head.sheet_sizes
        or (head.grade is not None and head.grade.tells_board)
        for head in column.said
    )


def listed_after_the_old(kinds: Mapping[Column, Kind]) -> list[Column]:
    """'Price until 31 August | Our best list': beside nothing but prices that are over, what else is listed may be the
    one to pay."""
    listed = [column for column, kind in kinds.items() if kind is Kind.LIST]
    return listed if set(kinds.values()) == {Kind.PREVIOUS, Kind.LIST} else []


def leads_to_another(column: Column, columns: Columns) -> bool:
    """'Base | Price', 'Cost €/t | Price €/t': a base, or what the vendor pays himself, beside a price, without a charge
    that would lead from the one to the other."""
    if not _is_base(column) or columns.of(*CHARGES):
        return False
    others = [other for other in columns.of(Role.PRICE, Role.NET_PRICE) if other is not column]
    if len(others) != 1 or _says_more(others[0]) or _two_bases(column, others[0]):
        return False
    return not phrases("base_prices").find(others[0].text)


def starts_an_index(offers: Sequence[Column], columns: Columns) -> bool:
    """'Base price (Jan) | Index | Price': the base is where the other starts from, and the figures show no way."""
    bases = [column for column in offers if _is_base(column)]
    return 0 < len(bases) < len(offers) and bool(columns.of(Role.INDEX))


def _is_base(column: Column) -> bool:
    named = without_unit(column.said[-1], basis_in_head(column.said[-1])) if column.said else ""
    undated = without_periods(named).strip(" ()-,/")
    return any(phrases("base_prices").whole(text) is not None for text in (column.text, named, undated))
