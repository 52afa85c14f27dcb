"""What may be said of other boards only is told in these words, and not as if it gave no time, day or weight."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import NoteCode


@pytest.mark.parametrize(
    ("term", "code"),
    [
        ("Lead time 4 weeks", NoteCode.LEAD_TIME_UNREAD),
        ("Valid until 12/31/2026", NoteCode.VALIDITY_UNREAD),
        ("Min. order 5 t", NoteCode.BRACKET_UNREAD),
        ("Lieferzeit 4 Wochen", NoteCode.LEAD_TIME_UNREAD),
        ("Gültig bis 31.12.2026", NoteCode.VALIDITY_UNREAD),
        ("Délai 4 semaines", NoteCode.LEAD_TIME_UNREAD),
        ("Plazo de entrega 4 semanas", NoteCode.LEAD_TIME_UNREAD),
        ("Leveranstid 4 veckor", NoteCode.LEAD_TIME_UNREAD),
    ],
)
def test_the_note_says_whose_it_may_be(term, code):
    heads = ["Grade", "Weight g/m²", "Price EUR/t"]
    rows = [heads, ["GC1", 250, 1200, None, term], ["GD2", 300, 900, None, "FSC"], ["GZ", 280, 1300]]
    found = [line.notes for line in lines(rows).values()]
    told = [note.text for notes in found[1:] for note in notes if note.code is code]
    assert len(told) == 2
    assert all("of others only" in text for text in told)


def test_what_gives_no_time_is_still_told_so():
    rows = [["Grade", "Weight g/m²", "Price EUR/t"], ["GC1", 250, 1200], [], ["Lead time on request"]]
    (line,) = lines(rows).values()
    assert any("gives no lead time" in note.text for note in line.notes)
