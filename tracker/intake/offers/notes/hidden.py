"""A note on what stands in a hidden row, column or sheet: it is read, and a person should know."""

import re

from tracker.intake.grid import letters
from tracker.intake.offers.draft import Draft
from tracker.intake.tables.view import View
from tracker.trade.offer import Evidence, NoteCode

_PRICE = "This price stands in a hidden row, column or sheet."
_OTHER = "{} is hidden in the sheet, and what it says was used."


def fill_hidden(draft: Draft, view: View, row: int, column: int) -> None:
    """A note where the price stands in a hidden row, column or sheet, or something that was used for it does."""
    if view.is_hidden(row, column):
        draft.note(NoteCode.HIDDEN, draft.where, _PRICE)
    elif view.hidden_rows or view.hidden_columns:
        for place in _hidden_places(draft, view):
            draft.note(NoteCode.HIDDEN, draft.where, _OTHER.format(place))


def _hidden_places(draft: Draft, view: View) -> list[str]:
    """'Column C' and 'Row 3', each once, in the order in which they were used."""
    across, down = (view.hidden_rows, view.hidden_columns) if view.turned else (view.hidden_columns, view.hidden_rows)
    names = {letters(index): f"Column {letters(index)}" for index in across}
    names |= {str(index + 1): f"Row {index + 1}" for index in down}
    pieces = (piece for part in draft.evidence for piece in ((part,) if isinstance(part, Evidence) else part.pieces()))
    cells = (found for piece in pieces if (found := _CELL.fullmatch(piece.said_by)) is not None)
    return list(dict.fromkeys(names[part] for found in cells for part in found.groups() if part in names))


_CELL = re.compile(r"([A-Z]{1,3})(\d+)")
"""An address in the price's own sheet."""
