"""Of which year a list's prices are, by whatever its texts say that dates no list by itself: 'Printed 10/15/2026',
'Price increase effective January 1, 2026', '2025 prices for reference only'."""

from collections.abc import Iterable
from dataclasses import dataclass

from tracker.intake.tables.headers.periods import YEAR
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.times.dates import find_dates, without_dates
from tracker.intake.words.lists import joined, phrases

_DATED = ("list_names", "price_words", "new_prices", "price_rises", "dated", "since", "valid", "until", "these_prices",
          "copula", "months", "quarters", "beside_years")  # fmt: skip
_AGAIN = ("price_words", "these_prices", "copula", "shown_again", "periods_told", "beside_years")


@dataclass(frozen=True, slots=True)
class YearsOfPrices:
    """`year`: the one that all such texts name. `over`: those whose prices are shown once more. `new`: a title calls
    the prices new, and says no more."""

    year: int | None = None
    over: frozenset[int] = frozenset()
    new: bool = False


def years_of_prices(texts: Iterable[str]) -> YearsOfPrices:
    """What the titles and notes of a file say, its heads left out."""
    parts = [clause for text in texts for clause in clauses(text)]
    over = {part: years for part in parts if (years := _years_over(part))}
    told = {year for part in parts if part not in over and (year := _year_told(part))}
    every = frozenset(year for years in over.values() for year in years)
    return YearsOfPrices(told.pop() if len(told) == 1 else None, every, any(map(_calls_new, parts)))


def _year_told(part: str) -> int | None:
    """The one year of a part that tells of the prices or of their list, and of nothing else."""
    days = find_dates(part)
    years = {reading.year for day in days for reading in day.readings} | set(map(int, YEAR.findall(part)))
    if len(years) != 1 or not joined(*_DATED[:7], "beside_years").find(part) or phrases("estimates").find(part):
        return None
    said = YEAR.sub(" ", without_dates(part))
    return years.pop() if not rest_of(said, (), *_DATED) else None


def _years_over(part: str) -> frozenset[int]:
    """'2025 prices shown for comparison', 'Die Preise 2025 nur zum Vergleich'."""
    past = any(match.value == "over" for match in phrases("periods_told").find(part))
    if not (past or phrases("shown_again").find(part)) or not phrases("price_words").find(part):
        return frozenset()
    return frozenset(map(int, YEAR.findall(part))) if not rest_of(YEAR.sub(" ", part), (), *_AGAIN) else frozenset()


def _calls_new(part: str) -> bool:
    """'New price list', 'Neue Preise'."""
    named = phrases("new_prices").find(part) and joined("price_words", "list_names").find(part)
    return bool(named) and not rest_of(part, (), "new_prices", "price_words", "list_names")
