"""Order sizes of which two texts, one above the other, tell a part each: 'from 5,000 lb' over 'to less than 20,000'."""

from functools import lru_cache

from tracker.intake.values.figures.numbers import number_readings
from tracker.intake.values.orders.bracket_pieces import PIECES_OR_TONS
from tracker.intake.values.orders.brackets import (
    Bracket,
    bracket_text,
    is_bare_order_size,
    is_no_limit,
    is_open_figure,
)
from tracker.intake.values.orders.broken_sizes import breaks_off, goes_on
from tracker.intake.values.orders.worded_brackets import begins_or_ends
from tracker.trade.quantities import MassUnit


@lru_cache(maxsize=8192)
def one_size(piece: str, rest: str) -> str | None:
    """What both say together, None where they are two sizes, as 'under 5 t' over 'up to 10 t', or none.

    One that is broken off is made one text even where nobody can tell its size, to be asked about.
    """
    text = f"{piece.strip()} {rest.strip()}"
    if breaks_off(piece):
        return text
    if rest.strip() and is_no_limit(rest.strip()) and _begins(bracket_text(piece)) and _is_whole(piece):
        # 'Min 20 t' over 'no max'.
        return piece.strip()
    if ends_with_dash(piece):
        return text if _is_bare(rest) and _ends_above_its_start(text) else None
    if goes_on(rest) and _begins(bracket_text(piece)):
        # 'From 10 t' over 'up to 10 t' only touch.
        return text if _ends_above_its_start(text) else None
    halves = any(map(str.isdigit, piece)) != any(map(str.isdigit, rest))
    return text if halves and _is_told(text) and not _is_whole(piece) else None


def leads_on(piece: str, rest: str) -> bool:
    """Whether a part of a size can't stand alone: '10,000 lb to', '5,000 lb –', or 'to less than 20,000 lb' below."""
    return breaks_off(piece) or ends_with_dash(piece) or goes_on(rest, only_to=True)


def ends_with_dash(piece: str) -> bool:
    """'5,000 lb –' and '5,000 -', which are open above only where nothing follows."""
    said = piece.rstrip()
    size = bracket_text(said)
    return is_open_figure(said) or (said[-1:] in ("-", "–", "—") and _begins(size))


def _is_bare(rest: str) -> bool:
    """'19,999 lb' or '19,999' and no more, so no size by itself."""
    size = bracket_text(rest)
    return bool(number_readings(rest.strip())) or (size is not None and size.alone)


def _ends_above_its_start(text: str) -> bool:
    size = bracket_text(text) or bracket_text(text, (MassUnit.KG,))
    if size is None or size.start is None or size.end is None or size.not_weight not in _WEIGHTS:
        return False
    start, end = (mass.kg(MassUnit.TONNE) for mass in (size.start, size.end))
    return start is None or end is None or start < end


_WEIGHTS = ("", PIECES_OR_TONS)
"""Sizes in weight: '5 ST' may be in pieces as well, which other words of the file settle."""


def _is_told(text: str) -> bool:
    size = bracket_text(text)
    return (size is not None and (not size.not_weight or begins_or_ends(size))) or is_bare_order_size(text)


def _begins(size: Bracket | None) -> bool:
    return size is not None and size.not_weight in _WEIGHTS and size.start is not None and size.end is None


def _is_whole(piece: str) -> bool:
    """'20,000 lb +' ends by itself; a bare '20,000 lb' may go on."""
    size = bracket_text(piece)
    return size is not None and begins_or_ends(size)
