"""What a user types after an option: dates, numbers and codes, each refused with a sentence when it is not one."""

import argparse
from datetime import date
from decimal import Decimal, InvalidOperation


def day(text: str) -> date:
    """An ISO 8601 date: 2026-11-25."""
    try:
        return date.fromisoformat(text)
    except ValueError:
        raise argparse.ArgumentTypeError(f"'{text}' is not a date: write it as 2026-11-25") from None


def number(text: str) -> Decimal:
    """A finite decimal number with a point: 1240.50."""
    try:
        value = Decimal(text)
    except InvalidOperation:
        value = Decimal("NaN")
    if not value.is_finite():
        raise argparse.ArgumentTypeError(f"'{text}' is not a number: write it as 1240.50")
    return value


def positive(text: str) -> Decimal:
    """A number above 0."""
    value = number(text)
    if value <= 0:
        raise argparse.ArgumentTypeError(f"'{text}' is not above 0")
    return value


def currency(text: str) -> str:
    """A three-letter ISO 4217 code, in capitals."""
    code = text.strip().upper()
    if len(code) != 3 or not code.isascii() or not code.isalpha():
        raise argparse.ArgumentTypeError(f"'{text}' is not a currency code: write three letters such as USD or EUR")
    return code
