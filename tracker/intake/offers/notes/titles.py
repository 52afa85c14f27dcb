"""Titles that say nothing but which board a table holds: 'II. Sheets', 'Board in rolls'."""

from collections.abc import Iterator

from tracker.intake.offers.notes.scope import Scope
from tracker.intake.offers.notes.subjects import titles_boards


def titles_of_boards(scope: Scope) -> Iterator[str]:
    """Those over a table, the nearest first; of the sheet's other texts above it only where no other table has offers:
    'Sheets' over a line of terms."""
    for level in scope.levels:
        if level.name == "title" or (level.name == "sheet" and level.board):
            yield from (words.text for words in reversed(level.texts_above) if titles_boards(words.text))
