"""Heads that are told apart by a number that counts them: 'Price 1 | Price 2', each beside its own order size."""

import re
from collections.abc import Sequence

from tracker.intake.grid import Cell
from tracker.intake.tables.heads import PRICE_ROLES, Head, head_of_words
from tracker.intake.values.role_words import header_roles

_COUNTED = re.compile(r"([^\W\d][^\d]*?)\s+([1-9])(?=\s|$|\()([^\d]*)")


def counted_prices(cells: Sequence[Cell]) -> dict[Cell, Head]:
    """The cells of one row that say price and count 1, 2, 3 …, as heads without their number.

    One alone is none: the 5 of 'Price 5 $/kg' is a price.
    """
    found = [(cell, said) for cell in cells if (said := _counted(cell)) is not None]
    numbers = [number for _, (number, _) in found]
    if len(found) < 2 or numbers != list(range(1, len(found) + 1)) or len({words for _, (_, words) in found}) > 1:
        return {}
    head = head_of_words(found[0][1][1])
    return {cell: head for cell, _ in found} if head is not None and head.price else {}


def _counted(cell: Cell) -> tuple[int, str] | None:
    """The number that counts a price's head, and the head's words without it."""
    match = _COUNTED.fullmatch(cell.text.strip()) if isinstance(cell.value, str) else None
    if match is None:
        return None
    roles = header_roles(match.group(1))
    if not roles or roles[0].role not in PRICE_ROLES or roles[0].strength < _OUTRIGHT:
        return None
    return int(match.group(2)), f"{match.group(1)} {match.group(3).strip()}".strip()


_OUTRIGHT = 0.9
