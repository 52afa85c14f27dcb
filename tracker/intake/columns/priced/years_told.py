"""Prices of several years beside each other, and a title that says for which year the list is: '2024 | 2025 | 2026 |
2027 est.' under 'Contract pricing 2026'."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace

from tracker.intake.columns.column import Column, Columns, Kind, PriceColumn
from tracker.intake.columns.priced.in_force import SEVERAL_TIMES
from tracker.intake.columns.priced.unnamed import UNNAMED
from tracker.intake.columns.roles.headed_figures import mostly_priced
from tracker.intake.grid import Cell
from tracker.intake.tables.headers.periods import YEAR, is_period, says_estimate, without_estimates
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.statements import Remark, says
from tracker.intake.values.prices.indicative import speaks_of_prices
from tracker.intake.values.times.dates import find_dates, without_dates
from tracker.intake.words.lists import phrases


def set_other_years_aside(columns: Columns, titles: Iterable[str], notes: Iterable[str]) -> None:
    """Makes the price of the year that the titles name the one offered, and those before it previous ones.

    A later year's is set aside as well where its head or a note calls it an estimate or not offered; of any other it is
    asked which of the two holds.
    """
    years = {price.index: year for price in columns.prices if (year := _year_of(price))}
    alike = {_without_year(price) for price in columns.prices if price.index in years}
    named = {year for title in titles for year in _years_named(title)} & set(years.values())
    if len(years) < _SEVERAL or len(set(years.values())) < len(years) or len(alike) != 1 or len(named) != 1:
        return
    year = named.pop()
    over = {each for note in notes for each in _years_over(note)}
    unsure = {price.index for price in columns.prices if without_estimates(price.column.text) != price.column.text}
    aside = {index for index, of in years.items() if of < year or (of > year and (of in over or index in unsure))}
    other = {index: Kind.PREVIOUS if of < year else Kind.LATER for index, of in years.items()}
    kinds = {index: other[index] if index in aside else Kind.OFFER for index in years}
    left = [index for index, kind in kinds.items() if kind is Kind.OFFER]
    columns.prices = tuple(
        replace(price, kind=kinds[price.index], unexplained=False) if price.index in kinds else price
        for price in columns.prices
    )
    if len(left) > 1:
        columns.doubt = SEVERAL_TIMES
    elif columns.doubt in ("", SEVERAL_TIMES):
        columns.doubt = UNNAMED if any(is_period(p.column.text) for p in columns.prices if p.index in left) else ""


_SEVERAL = 2


def stand_beside_years(priced: Sequence[Column], columns: Iterable[Column]) -> bool:
    """'2027 (proposal)' beside '2025' and '2026': whether it is the one to pay its head does not say."""
    dated = any(YEAR.search(column.text) for column in priced)
    return dated and any(YEAR.fullmatch(column.text) for column in columns if column not in priced)


def years_beside(
    priced: Iterable[Column], columns: Iterable[Column], samples: Mapping[int, Sequence[Cell]]
) -> list[Column]:
    """The '2027 est.' beside '2025' and '2026' that head prices."""
    priced = [*priced]
    if not any(YEAR.fullmatch(column.text) for column in priced):
        return []
    years = [column for column in columns if column.role is None and YEAR.fullmatch(without_estimates(column.text))]
    return [column for column in years if column not in priced and mostly_priced(samples[column.index])]


def heads_indicative(column: Column) -> bool:
    """'Budget price', '2027 est.': nobody is held to what stands below."""
    return any(Remark.INDICATIVE in says(head.text) or says_estimate(head.text) for head in column.said)


def _year_of(price: PriceColumn) -> int:
    """The one year that a head names; 0 for none or several, and beside a day."""
    found = YEAR.findall(price.column.text)
    offered = price.kind in (Kind.OFFER, Kind.PREVIOUS)
    return int(found[0]) if offered and len(found) == 1 and not find_dates(price.column.text) else 0


def _without_year(price: PriceColumn) -> str:
    return " ".join(YEAR.sub(" ", without_estimates(price.column.text)).split()).casefold()


def _years_named(title: str) -> Iterator[int]:
    """'Contract pricing 2026', and no day: a list of 3 December 2026 may be for the next year."""
    for clause in clauses(without_dates(title)):
        if not _is_over(clause):
            yield from map(int, YEAR.findall(clause))


def _years_over(note: str) -> Iterator[int]:
    for clause in clauses(note):
        if _is_over(clause):
            yield from map(int, YEAR.findall(clause))


def _is_over(clause: str) -> bool:
    over = any(match.value == "over" for match in phrases("periods_told").find(clause))
    said = any(phrases(section).find(clause) for section in ("estimates", "indicative"))
    return over or (said and speaks_of_prices(clause))
