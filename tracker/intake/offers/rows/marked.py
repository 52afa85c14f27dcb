"""Sheets read by a layout that was marked by hand, and lines that say so."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace

from tracker.intake.columns.roles.marked import named_columns, unmarked
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.sheet import ReadSheet, ReadTable
from tracker.intake.plain_lines import PlainLine
from tracker.intake.tables.marked import fitting, marked_here, marked_table, priced_outside
from tracker.intake.tables.view import View
from tracker.trade.layout import LAYOUT_SAID, Layout
from tracker.trade.offer import Evidence, LineEvidence


def marked_sheet(view: View, sha256: str, layouts: Sequence[Layout]) -> ReadSheet | None:
    """The sheet as a layout has it; None where none fits, and the sheet speaks for itself."""
    layout = fitting(view, sha256, layouts)
    if layout is None:
        return None
    found = marked_table(view, sha256, layout)
    table = found.tables[0]
    outside = priced_outside(view, sha256, layout)
    columns = named_columns(table, layout, here=marked_here(view, sha256, layout))
    return ReadSheet(found, (ReadTable(table, columns),), layout, outside=outside)


def lines_of(drafts: Iterable[Draft], layouts: Mapping[str, Layout]) -> Iterator[PlainLine]:
    """The finished lines; those of a sheet in `layouts` say by which layout they were read."""
    for draft in drafts:
        layout = layouts.get(draft.sheet)
        yield draft.plain() if layout is None else _by_hand(draft, layout)


def _by_hand(draft: Draft, layout: Layout) -> PlainLine:
    """The line with what only the layout says put down to the layout, and the layout named."""
    day = f"marked on {layout.marked_on.isoformat()}" if layout.marked_on else "marked by hand"
    evidence = [_owned(piece) for piece in LineEvidence(tuple(draft.evidence))]
    return (*draft.plain()[:-1], (*evidence, Evidence("layout", LAYOUT_SAID, day)))


def _owned(piece: Evidence) -> Evidence:
    words = unmarked(piece.words)
    return piece if words is None else replace(piece, said_by=LAYOUT_SAID, words=words)
