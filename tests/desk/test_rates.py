"""Exchange rates: the user's own on its day, the published ones else, and never one too old to be true."""

from datetime import date
from decimal import Decimal

import pytest

from tracker.desk.edits import undo
from tracker.desk.opening import Desk
from tracker.desk.rates import OWN, Rate, currencies, rate, rates_on, set_rate
from tracker.desk.trouble import Trouble

FRIDAY, SATURDAY, MONDAY = date(2024, 3, 15), date(2024, 3, 16), date(2024, 3, 18)


def known(desk: Desk, code: str, into: str, on: date) -> Rate:
    found = rate(desk, code, into, on)
    assert found is not None
    return found


def test_there_and_back_is_one(desk: Desk) -> None:
    there, back = known(desk, "USD", "SEK", FRIDAY), known(desk, "SEK", "USD", FRIDAY)
    assert float(there.factor * back.factor) == pytest.approx(1, rel=1e-20)


def test_a_way_through_the_euro_is_the_same_as_straight(desk: Desk) -> None:
    straight = known(desk, "USD", "GBP", FRIDAY).factor
    through = known(desk, "USD", "EUR", FRIDAY).factor * known(desk, "EUR", "GBP", FRIDAY).factor
    assert float(straight) == pytest.approx(float(through), rel=1e-20)


def test_a_day_without_a_rate_takes_the_last_before_it_and_says_so(desk: Desk) -> None:
    found = known(desk, "USD", "EUR", SATURDAY)
    assert found.on == FRIDAY
    assert found.factor == known(desk, "USD", "EUR", FRIDAY).factor
    assert found.said(SATURDAY).endswith(", 15 Mar 2024, the last before 16 Mar")
    assert "the last" not in known(desk, "USD", "EUR", FRIDAY).said(FRIDAY)


def test_the_user_s_own_rate_comes_first_on_its_day(desk: Desk) -> None:
    published = known(desk, "USD", "EUR", FRIDAY)
    set_rate(desk, "USD", Decimal("0.5"), FRIDAY)
    own = known(desk, "USD", "EUR", FRIDAY)
    assert (own.factor, own.on, own.source) == (Decimal("0.5"), FRIDAY, OWN)
    assert known(desk, "USD", "EUR", SATURDAY).source == OWN
    assert known(desk, "USD", "EUR", MONDAY).source == published.source


def test_an_own_rate_makes_a_currency_known_that_nobody_publishes(desk: Desk) -> None:
    assert rate(desk, "XTS", "EUR", FRIDAY) is None
    set_rate(desk, "XTS", Decimal("0.25"), FRIDAY)
    assert known(desk, "XTS", "EUR", MONDAY).factor == Decimal("0.25")
    assert rate(desk, "XTS", "EUR", date(2024, 3, 14)) is None
    assert "XTS" in currencies(desk)


def test_a_currency_that_is_gone_has_no_rate(desk: Desk) -> None:
    """The rouble has not been published since March 2022."""
    assert rate(desk, "RUB", "EUR", date(2022, 2, 1)) is not None
    assert rate(desk, "RUB", "EUR", date(2026, 1, 2)) is None


def test_before_the_euro_there_is_none(desk: Desk) -> None:
    assert rate(desk, "USD", "EUR", date(1998, 12, 31)) is None


def test_one_currency_in_itself_is_one_without_any_source(desk: Desk) -> None:
    assert known(desk, "XTS", "XTS", FRIDAY).factor == 1


def test_a_rate_is_undone(desk: Desk) -> None:
    edit = set_rate(desk, "XTS", Decimal("0.25"), FRIDAY)
    undo(desk, edit)
    assert rates_on(desk, FRIDAY).rate("XTS", "EUR") is None


@pytest.mark.parametrize(("code", "euros"), [("EUR", "1"), ("USD", "0"), ("USD", "-1"), ("UDS", "0.9")])
def test_what_can_be_no_rate_is_refused(desk: Desk, code: str, euros: str) -> None:
    with pytest.raises(Trouble):
        set_rate(desk, code, Decimal(euros), FRIDAY)
