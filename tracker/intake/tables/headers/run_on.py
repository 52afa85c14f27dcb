"""Heads that run on in the row below, word by word: 'pounds' over 'per thousand' over 'square feet'."""

from collections.abc import Sequence

from tracker.intake.tables.figures import is_figure
from tracker.intake.tables.headers.heads import head_text
from tracker.intake.tables.view import View
from tracker.intake.values.heads.header import Header, header


def runs_on(view: View, main: int, row: int, column: int) -> bool:
    """Whether the words of a column down to this row, or to the next, name a unit that those above do not. The
    'Carton' of a board with its figures beside it is no unit of the 'CHF' above it."""
    above, here, next_row = (_words(view, main, row + step, column) for step in range(3))
    if not above or len(here) == len(above):
        return False
    ends = (here,) if _begins_boards(view, row + 1) else (here, next_row)
    return any(_only_together(above, words) for words in ends)


def _begins_boards(view: View, row: int) -> bool:
    return any(map(is_figure, view.rows.get(row, {}).values()))


def _words(view: View, first: int, end: int, column: int) -> list[str]:
    """The texts of a column from one row to before another; none where a figure stands among them."""
    cells = [cell for _, cell in view.down(column, range(first, end))]
    return list(map(head_text, cells)) if all(isinstance(cell.value, str) for cell in cells) else []


def _only_together(above: Sequence[str], words: Sequence[str]) -> bool:
    """'Basis weight 250 g/m²' below 'Board' names its unit by itself, and the boards below it."""
    whole = header(" ".join(words))
    return all(_names_more(header(part), whole) for part in (" ".join(above), *words))


def _names_more(above: Header, whole: Header) -> bool:
    if len(whole.weight_units) == 1 != len(above.weight_units):
        return True
    if whole.caliper_unit is not None and above.caliper_unit is None:
        return True
    if whole.currency is None:
        return False
    per = whole.basis is not None and (above.basis is None or above.basis.bases != whole.basis.bases)
    return per or (above.currency is not None and above.currency.codes != whole.currency.codes)
