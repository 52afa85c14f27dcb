"""'Old name | Current name', 'Grade | Replaces': what a board was called before says nothing of the board offered."""

from dataclasses import replace

from tracker.intake.columns.column import Column
from tracker.intake.values.heads.roles import PRICES, Role
from tracker.intake.words.lists import joined, phrases
from tracker.intake.words.phrases import blanked

_NAMES = (Role.PRODUCT, Role.GRADE)


def without_former_names(columns: list[Column]) -> list[Column]:
    """The columns, those of former names as a property of the board; unchanged where nothing else names it."""
    former = [column for column in columns if column.role not in PRICES and _heads_former_names(column)]
    if not any(column.role in _NAMES and column not in former for column in columns):
        return columns
    return [replace(column, role=Role.PROPERTY) if column in former else column for column in columns]


def _heads_former_names(column: Column) -> bool:
    """By its lowest head: 'Formerly', and 'Old' beside a word for what is named there."""
    text = column.said[-1].text.strip(" ()[].:") if column.said else ""
    if phrases("former_names").whole(text) is not None:
        return True
    aged = phrases("price_ages").find(text)
    named = blanked(text, (match.span for match in aged)).strip(" ().:-–")
    old = bool(aged) and all(match.value == "old" for match in aged)
    return old and joined("headers.product", "headers.grade", "named_boards").whole(named) is not None
