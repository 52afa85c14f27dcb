"""A last day that can be read two ways: no offer waits for it, but a person may say which it is."""

from __future__ import annotations

from tracker.trade.offer import Choice, NoteCode, Question, Reading

DATE_ORDER = "date-order"
_CHOICES = (Choice("dmy", "day first, then month"), Choice("mdy", "month first, then day"))


def open_date(reading: Reading) -> Question | None:
    """The question which of day and month comes first in the file; None where no line leaves that open."""
    noted = (
        (line.offer.source.sheet, note)
        for line in reading.lines
        for note in line.notes
        if note.code is NoteCode.DATE_AMBIGUOUS
    )
    sheet, note = next(noted, ("", None))
    if note is None:
        return None
    return Question(DATE_ORDER, note.code, note.text, "", _CHOICES, ((sheet, note.cell),))
