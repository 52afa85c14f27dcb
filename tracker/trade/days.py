"""The one way a day is written for a reader: the month as a word, because 03/04 is read two ways."""

from datetime import date

# Of its own and not by strftime, whose months follow the language of the machine.
_MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")


def day_text(day: date) -> str:
    """'1 Oct 2026'."""
    return f"{short_day(day)} {day.year}"


def short_day(day: date) -> str:
    """'1 Oct', beside a day that says the year."""
    return f"{day.day} {_MONTHS[day.month - 1]}"
