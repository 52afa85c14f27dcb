"""A row of one word that says what the figures down the first column are: 'g/m²' right below a header that spreads
grades and order sizes over the columns beside it."""

from tracker.intake.tables.figures import is_figure
from tracker.intake.tables.headers.heads import head_of
from tracker.intake.tables.view import View
from tracker.intake.values.heads.roles import MEASURES


def heads_the_rows(view: View, main: int, row: int) -> bool:
    """Whether a row is such; under a head that names a measure itself it is another unit, which nobody can place."""
    cells, above, below = view.rows[row], view.rows[main], view.rows.get(row + 1, {})
    first = min(above)
    if len(cells) > 1 or first not in cells or len(above) < _FEWEST or first not in below:
        return False
    head, over = head_of(cells[first]), head_of(above[first])
    measures = head is not None and not head.across and head.number is None and head.role in MEASURES
    figures = is_figure(below[first]) and 2 * sum(map(is_figure, below.values())) > len(below) > 1
    return measures and figures and (over is None or over.role not in MEASURES)


_FEWEST = 2
