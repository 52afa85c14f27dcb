"""Lines below a heading that calls them corrections: 'Line 7: 1,052' under 'Corrections of May 6:'."""

from collections.abc import Iterator, Sequence
from dataclasses import replace

from tracker.intake.tables.table import Words
from tracker.intake.values.changes.line_corrections import heads_corrections
from tracker.intake.values.notes.lines_counted import every_line_named


def under_their_heads(texts: Sequence[Words]) -> Iterator[Words]:
    """The texts, each that names lines right below such a heading with the heading's words before its own."""
    head: Words | None = None
    last = 0
    for words in texts:
        if heads_corrections(words.text):
            head, last = words, words.row
        elif head is not None and (words.sheet, words.row) == (head.sheet, last + 1) and every_line_named(words.text):
            last = words.row
            yield replace(words, text=f"{head.text.rstrip(' :')}: {words.text}")
            continue
        else:
            head = None
        yield words
