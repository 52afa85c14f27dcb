"""An e-mail pasted into a sheet: what it quotes of an earlier message offers nothing beside the offers it makes."""

import re
from collections.abc import Iterable
from dataclasses import replace

from tracker.intake.grid import Cell
from tracker.intake.tables.headerless.headless import says_price
from tracker.intake.tables.headerless.sentences import parted_offer
from tracker.intake.tables.view import View
from tracker.intake.values.changes.withdrawn import withdrawn
from tracker.intake.values.orders.brackets import bracket_text
from tracker.intake.words.lists import phrases

_QUOTED = re.compile(r"\s*>")
_RULE = re.compile(r"[-_–—=*\s]*")
_ASIDE = re.compile(r"\s\((?P<said>[^()]+)\)$")
_YEAR_OR_HOUR = re.compile(r"\b(?:19|20)\d\d\b|\d:\d\d")


def without_earlier_message(view: View) -> tuple[View, tuple[int, ...]]:
    """The view without the earlier message that it quotes, and the rows of that; nothing is taken out of a mail whose
    own lines offer no price, as that of a buyer who hands an offer on."""
    quoted = () if view.passing else _quoted(view)
    if not quoted or not _offers(view, set(view.order) - set(quoted)):
        return view, ()
    return replace(view, rows={row: view.rows[row] for row in view.order if row not in set(quoted)}), quoted


def _quoted(view: View) -> tuple[int, ...]:
    """The lines with a sign of quotation, and all below a line that says that an earlier message follows."""
    marked = tuple(row for row in view.order if len(view.rows[row]) == 1 and _is_quoted(_first(view, row)))
    for place, row in enumerate(view.order):
        cell = _first(view, row)
        if len(view.rows[row]) > 1 or not isinstance(cell.value, str) or not _announces(cell.text):
            continue
        following = view.order[place + 1 : place + 2]
        # 'On 3 May you wrote:' over quoted lines: what is not quoted below them is the answer.
        if any(other in marked for other in following) and not _is_ruled(cell.text):
            return tuple(sorted({row, *marked}))
        return tuple(sorted({*view.order[place:], *marked}))
    return marked


def _is_quoted(cell: Cell) -> bool:
    """'> 16 pt SBS - $1,165/ST'; '> 10 t' is an order size."""
    return isinstance(cell.value, str) and _QUOTED.match(cell.text) is not None and bracket_text(cell.text) is None


def _first(view: View, row: int) -> Cell:
    cells = view.rows[row]
    return cells[min(cells)]


def _announces(text: str) -> bool:
    """'-----Original Message-----', 'Le 3 mai 2026, X a écrit :'."""
    return _is_ruled(text) or _says_who_wrote(text)


def _is_ruled(text: str) -> bool:
    """'----- earlier message (withdrawn) -----' too; one that 'still holds' is not left out."""
    line = _RULE.sub("", text, count=1).rstrip(" -_–—=*")
    aside = _ASIDE.search(line)
    if aside is not None and withdrawn(aside["said"]):
        line = line[: aside.start()].rstrip()
    return phrases("earlier_message").whole(line) == "ruled"


def _says_who_wrote(text: str) -> bool:
    """A day, and last that somebody wrote."""
    stripped = text.strip()
    if not stripped.endswith(":") or not _YEAR_OR_HOUR.search(stripped):
        return False
    found = phrases("earlier_message").find(stripped)
    return any(match.value == "wrote" for match in found)


def _offers(view: View, rows: Iterable[int]) -> bool:
    """A line that is an offer, or a price in a cell of its own."""
    return any(_is_offer(cell) for row in sorted(rows) for cell in view.rows[row].values())


def _is_offer(cell: Cell) -> bool:
    return says_price(cell) or (isinstance(cell.value, str) and parted_offer(cell.text) is not None)
