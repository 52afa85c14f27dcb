"""A reader's notes in the user's units: the reader writes g/m², whichever units the screen is in."""

from __future__ import annotations

import re

from tracker.trade.offer import Line, Note, NoteCode, Offer, State
from tracker.window.look.figures import Units, weight, weight_unit

ESTIMATED = "No basis weight given: * is an estimate."
"""In a list the figure stands in its own column, marked with that star."""

_GRAMMAGE = re.compile(r"\b\d+ g/m²")


def note_text(note: Note, offer: Offer, units: Units) -> str:
    """The whole note; a weight that the reader estimated in the units the user has chosen."""
    if note.code is not NoteCode.WEIGHT_ESTIMATED or units is Units.METRIC or offer.grammage_gsm is None:
        return note.text
    return _GRAMMAGE.sub(f"{weight(float(offer.grammage_gsm), units)} {weight_unit(units)}", note.text, count=1)


def note_in_list(note: Note) -> str:
    """The note where the line's figures stand beside it."""
    return ESTIMATED if note.code is NoteCode.WEIGHT_ESTIMATED else note.text


def is_left_out(line: Line) -> bool:
    """Whether the user decided to do without the line, which is another thing than that it can't be used."""
    return line.state is State.REFUSED and any(note.text.startswith("Left out") for note in line.notes)
