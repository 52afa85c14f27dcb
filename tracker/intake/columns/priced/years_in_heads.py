"""Prices whose heads name years: 'Price 2025' beside 'Price 2026', 'Tarif 2025 (rappel)' beside this year's."""

from collections.abc import Iterable, Mapping

from tracker.intake.columns.column import Column, Kind, basis_in_head
from tracker.intake.columns.priced.in_force import ages_in, plainly
from tracker.intake.columns.sizes.order_sizes import without_unit
from tracker.intake.tables.headers.periods import YEAR, is_realised, says_estimate
from tracker.intake.values.times.dates import find_dates
from tracker.intake.values.times.validity import until_in_head
from tracker.intake.words.lists import phrases, without_words


def of_earlier_years(kinds: Mapping[Column, Kind]) -> list[Column]:
    """'Price 2025' beside 'Price 2026': columns whose heads tell nothing but their years, for all but the latest.

    What is shown once more, 'Tarif 2025 (rappel)', is past beside any price of a later year or of none, whatever else
    the heads say.
    """
    offers = [column for column, kind in kinds.items() if kind is Kind.OFFER]
    again = _shown_again(offers)
    years: dict[str, dict[int, list[Column]]] = {}
    for column in offers:
        year = year_in_head(column)
        if year and column not in again:
            years.setdefault(words_but_year(column), {}).setdefault(year, []).append(column)
    earlier = [
        column
        for group in years.values() if _may_be_told_by_year(group)
        for year, columns in group.items() if year < max(group)
        for column in columns
    ]  # fmt: skip
    return again + earlier


def of_several_years(offers: Iterable[Column]) -> bool:
    """'Price 2025' beside 'Price 2026 delivered': each head names a year, not the same, and more that tells them apart.

    A price that says until when it holds is one to pay, and so is one of an order size.
    """
    offers = [*offers]
    years = {year_in_head(column) for column in offers}
    return len(years) > 1 and 0 not in years and not any(until_in_head(column.text) for column in offers)


def year_in_head(column: Column) -> int:
    """The one year that a head names; 0 for none or several, beside a day or an order size, and for a width in mm."""
    found = YEAR.findall(column.text)
    if len(found) != 1 or find_dates(column.text):
        return 0
    sized = any(head.bracket or head.sheet_sizes or head.length_unit for head in column.said)
    return 0 if sized else int(found[0])


def words_but_year(column: Column) -> str:
    """A head's words but for its year, its unit, its words for price and what says how old the price is."""
    said = " ".join(without_unit(head, basis_in_head(head)) for head in column.said)
    words = plainly(without_words(YEAR.sub(" ", said), "price_words", "price_ages"))
    return " ".join(word for word in words.split() if any(map(str.isalnum, word)))


def is_shown_again(head: str) -> bool:
    """'Tarif 2025 (rappel)', 'Price 2025 (ref.)', 'Preis 2025 (zum Vergleich)': a price that is no longer to be paid.

    What is expected of a year to come is shown for information as well.
    """
    over = any(match.value == "over" for match in phrases("periods_told").find(head))
    return (over or is_realised(head) or bool(phrases("shown_again").find(head))) and not says_estimate(head)


def is_over(column: Column) -> bool:
    """Whether a head calls its price old, or says that it is shown once more."""
    return bool(_marks_of(column) & {"old", "again"})


def _shown_again(offers: Iterable[Column]) -> list[Column]:
    """The prices of a year that are shown once more, where another of a later year or of none is there to be paid."""
    offers = [*offers]
    again = [column for column in offers if year_in_head(column) and is_shown_again(column.text)]
    paid = [column for column in offers if column not in again and not is_shown_again(column.text)]
    last = max(map(year_in_head, again), default=0)
    later = [all(int(year) > last for year in YEAR.findall(column.text)) for column in paid]
    return again if paid and all(later) else []


def _may_be_told_by_year(group: Mapping[int, Iterable[Column]]) -> bool:
    """Not where the latest is called old, or shown for information, and an earlier one in force: 'Price 2026 (current)'
    beside that of 2027."""
    marks = {year: {mark for column in columns for mark in _marks_of(column)} for year, columns in group.items()}
    latest = max(group)
    return not marks[latest] - {"in_force"} and not any(
        "in_force" in found for year, found in marks.items() if year < latest
    )


def _marks_of(column: Column) -> set[str]:
    return ({"again"} if is_shown_again(column.text) else set()) | ages_in(column.text)
