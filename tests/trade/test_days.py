"""A day is written one way, in any language of the machine."""

from datetime import date

from tracker.trade.days import day_text, short_day


def test_the_month_is_a_word() -> None:
    assert day_text(date(2026, 4, 3)) == "3 Apr 2026"
    assert short_day(date(2026, 12, 31)) == "31 Dec"
