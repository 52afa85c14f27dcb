"""Lines as plain values, for the way from the child to the parent.

A long list's lines are objects of objects. The child makes none of them only to have them taken apart and made again:
it hands over what they are made of, in tuples, and the parent makes them.
"""

from typing import Any

from tracker.trade.offer import Evidence, Line, LineEvidence, Note, Offer, RowEvidence, Source, State

PlainLine = tuple[tuple[Any, ...], tuple[Any, ...], State, tuple[Note, ...], tuple[Evidence | tuple[Any, ...], ...]]
"""The fields of a Source, those of an Offer behind its source, then a Line's state, notes and parts of evidence; a
RowEvidence as its fields."""


def line_of(plain: PlainLine) -> Line:
    """The line that these are the parts of."""
    source, offer, state, notes, said = plain
    parts = tuple([part if isinstance(part, Evidence) else RowEvidence(*part) for part in said])
    return Line(Offer(Source(*source), *offer), state, notes, LineEvidence(parts))
