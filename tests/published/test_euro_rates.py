"""The carried history of euro rates against figures printed elsewhere.

Dollars for one euro, the lowest and highest reference rate of each year, as printed with the source "Euro exchange
rates in USD, ECB" (an encyclopedia’s table as copied on a public page of March 2009).
"""

from datetime import date
from decimal import Decimal

import pytest

from tracker.desk.published_rates import history

PRINTED = [
    ("1999-12-03", "1.0015"),
    ("1999-01-05", "1.1790"),
    ("2000-10-26", "0.8252"),
    ("2000-01-06", "1.0388"),
    ("2001-07-06", "0.8384"),
    ("2001-01-05", "0.9545"),
    ("2002-01-28", "0.8578"),
    ("2002-12-31", "1.0487"),
    ("2003-01-08", "1.0377"),
    ("2003-12-31", "1.2630"),
    ("2004-05-14", "1.1802"),
    ("2004-12-28", "1.3633"),
    ("2005-11-15", "1.1667"),
    ("2005-01-03", "1.3507"),
    ("2006-01-02", "1.1826"),
    ("2006-12-05", "1.3331"),
    ("2007-01-12", "1.2893"),
    ("2007-11-27", "1.4874"),
    ("2008-10-27", "1.2460"),
    ("2008-07-15", "1.5990"),
    ("2009-03-05", "1.2555"),
]


@pytest.mark.parametrize(("day", "dollars"), PRINTED)
def test_dollars_for_one_euro_on_named_days(day: str, dollars: str) -> None:
    assert history().per_euro("USD", date.fromisoformat(day)) == (Decimal(dollars), date.fromisoformat(day))


@pytest.mark.parametrize(("lowest", "highest"), list(zip(PRINTED[0:20:2], PRINTED[1:20:2], strict=True)))
def test_no_other_day_of_the_year_lies_beyond_them(lowest: tuple[str, str], highest: tuple[str, str]) -> None:
    year = int(lowest[0][:4])
    days = [date.fromisoformat(day) for day in history().days if day.startswith(str(year))]
    figures = [found[0] for day in days if (found := history().per_euro("USD", day))]
    assert (min(figures), max(figures)) == (Decimal(lowest[1]), Decimal(highest[1]))
