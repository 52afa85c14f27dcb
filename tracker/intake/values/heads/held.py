"""Heads that say how many pieces one load or package holds: 'Rolls per truck', 'Bogen/Paket', 'Palés/camión'."""

import re

from tracker.intake.values.orders.bracket_pieces import VEHICLES
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.words.lists import phrases

_PIECES = frozenset({"roll", "pallet", "sheets", "sheet"})
_PACKAGES = frozenset({"pallet", "carton", "ream"})
_LOADS = frozenset(VEHICLES) | {"truckload"}


def pieces_held(text: str) -> tuple[str, str] | None:
    """The piece, and what holds so many of it: a package by its name, or 'load'. None for any other head, also for one
    with a figure or money in it."""
    if any(map(str.isdigit, text)) or find_currencies(text):
        return None
    for part in _PER.finditer(text):
        piece = _named(text[: part.start()]) if part.group() == "/" else _before_per(text[: part.end()])
        holder = _named(text[part.end() :])
        held = piece in _PIECES and holder != piece
        if held and holder in _LOADS | _PACKAGES:
            return piece, "load" if holder in _LOADS else holder
    return None


_PER = re.compile(r"/|\s")


def _before_per(text: str) -> str:
    """'roll' of 'Rolls per ', 'Rolls to the '."""
    ends = [match for match in phrases("per").find(text) if not text[match.end :].strip()]
    return _named(text[: ends[-1].start]) if ends else ""


def _named(text: str) -> str:
    """The one kind of thing that a part of a head is all about; '' for none."""
    rest = text.strip()
    return phrases("bracket").whole(rest) or phrases("basis").whole(rest) or ""
