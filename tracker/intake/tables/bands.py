"""Bands of a sheet: stretches of columns with an empty column between them, where each holds tables of its own."""

from tracker.intake.tables.heads import head_of
from tracker.intake.tables.view import View, part_of
from tracker.intake.tables.zones import is_header_row

_MOST_COLUMNS = 200


def bands_of(view: View) -> list[View]:
    """The view cut at empty columns where every part that holds figures has its own header, else the view whole."""
    stretches = _stretches(view)
    if len(stretches) < 2 or len(stretches) > _MOST_COLUMNS:
        return [view]
    parts = [part_of(view, view.order, stretch) for stretch in stretches]
    return parts if all(_has_own_table(part) for part in parts) else [view]


def _stretches(view: View) -> list[range]:
    """Runs of used columns; merged titles bridge nothing, because only the cell that holds the text counts."""
    used = sorted({column for cells in view.rows.values() for column in cells})
    stretches: list[range] = []
    for column in used:
        if stretches and column == stretches[-1].stop:
            stretches[-1] = range(stretches[-1].start, column + 1)
        else:
            stretches.append(range(column, column + 1))
    return stretches


def _has_own_table(part: View) -> bool:
    for row in part.order:
        if is_header_row(part, row):
            heads = [head for cell in part.rows[row].values() if (head := head_of(cell)) is not None]
            if any(head.board for head in heads) and any(head.price or head.across for head in heads):
                return True
    return False
