"""What a user types after an option: dates, numbers and codes, each refused with a sentence when it is not one."""

import argparse
from datetime import date
from decimal import Decimal, InvalidOperation

from tracker.trade.currencies import is_currency
from tracker.trade.grades import grade_named, grades

_MOST_DIGITS_BEFORE_THE_POINT = 15


def day(text: str) -> date:
    """An ISO 8601 date: 2026-11-25."""
    try:
        return date.fromisoformat(text)
    except ValueError:
        raise argparse.ArgumentTypeError(f"'{text}' is not a date: write it as 2026-11-25") from None


def number(text: str) -> Decimal:
    """A finite decimal number with a point, of a size that means something: 1240.50."""
    try:
        value = Decimal(text)
    except InvalidOperation:
        value = Decimal("NaN")
    # Converted exactly, 1e999999999 would fill the memory with its zeros.
    if not value.is_finite() or abs(value.adjusted()) > _MOST_DIGITS_BEFORE_THE_POINT:
        raise argparse.ArgumentTypeError(f"'{text}' is not a number: write it as 1240.50")
    return value


def positive(text: str) -> Decimal:
    """A number above 0."""
    value = number(text)
    if value <= 0:
        raise argparse.ArgumentTypeError(f"'{text}' is not above 0")
    return value


def currency(text: str) -> str:
    """An ISO 4217 code, in capitals."""
    code = text.strip().upper()
    if not is_currency(code):
        raise argparse.ArgumentTypeError(f"'{text}' is not a currency code: write three letters such as USD or EUR")
    return code


def grade(text: str) -> str:
    """A grade's code, in capitals; a name that the trade has for one grade alone, such as GC1, will do."""
    code = grade_named(text)
    if code is None:
        raise argparse.ArgumentTypeError(f"'{text}' is not a grade: use one of {', '.join(grades())}")
    return code


def database(text: str) -> str:
    """A path or an address; an empty one is most often a variable that a script forgot to set."""
    if not text.strip():
        raise argparse.ArgumentTypeError("no database is named: leave --database out to use your own")
    return text
