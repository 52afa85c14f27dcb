"""Numbers and moments come back from the database as they went in."""

from datetime import UTC, datetime, timedelta, timezone
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st
from sqlalchemy.dialects import sqlite

from tracker.store.types import Measure, Moment, NotKept, as_measure, join, split

DIALECT = sqlite.dialect()
SHORT = st.decimals(allow_nan=False, allow_infinity=False, min_value=-(10**6), max_value=10**6, places=9)


@given(SHORT)
def test_a_price_comes_back_to_the_last_zero(price: Decimal) -> None:
    back = join(*split(price))
    assert back == price
    assert str(back) == str(price)


def test_a_price_of_seventeen_digits_as_a_spreadsheet_calculates_it_is_kept() -> None:
    assert join(*split(Decimal("1234.5678901234567"))) == Decimal("1234.5678901234567")


def test_a_price_in_whole_thousands_is_kept() -> None:
    assert join(*split(Decimal("2E+7"))) == 20_000_000


@pytest.mark.parametrize("price", ["1234567890.1234567890", "1E+30", "1E-50", "NaN", "Infinity"])
def test_a_price_with_too_many_digits_is_refused_and_not_rounded(price: str) -> None:
    with pytest.raises(NotKept):
        split(Decimal(price))


@given(SHORT)
def test_a_measure_comes_back(value: Decimal) -> None:
    kept = Measure().process_bind_param(value, DIALECT)
    assert Measure().process_result_value(kept, DIALECT) == value


def test_a_measure_reads_plainly() -> None:
    assert str(as_measure(457_200_000_000)) == "457.2"
    assert str(as_measure(1_000_000_000_000)) == "1000"


def test_a_measure_too_large_for_the_database_is_refused() -> None:
    with pytest.raises(NotKept, match="larger"):
        Measure().process_bind_param(Decimal("1E+10"), DIALECT)


def test_a_moment_is_kept_in_utc() -> None:
    noon_in_berlin = datetime(2026, 6, 1, 12, tzinfo=timezone(timedelta(hours=2)))
    kept = Moment().process_bind_param(noon_in_berlin, DIALECT)
    assert kept == datetime(2026, 6, 1, 10)
    assert Moment().process_result_value(kept, DIALECT) == datetime(2026, 6, 1, 10, tzinfo=UTC)


def test_a_time_without_zone_is_refused() -> None:
    with pytest.raises(NotKept, match="zone"):
        Moment().process_bind_param(datetime(2026, 6, 1), DIALECT)
