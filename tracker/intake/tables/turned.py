"""Tables that lie on their side: attributes down a column of labels, one board in each column beside it.

A block of labels with one column of values (a board written as a form) is the same thing with one board.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

from tracker.intake.grid import Cell
from tracker.intake.tables.heads import Head, head_of, head_of_words, looks_priced, may_name, without_footnote
from tracker.intake.tables.label_units import unit_column
from tracker.intake.tables.view import View
from tracker.intake.values.basis import basis_text
from tracker.intake.values.grade import find_grade

_FEWEST_LABELS = 3
_WIDEST_GAP = 1
_WIDEST_GAP_BESIDE = 3
_LONGEST_LABEL = 40


@dataclass(frozen=True, slots=True)
class Labels:
    """A run of label cells in one column: its rows, from `top` to `bottom`, and the last column of values beside it.

    `units`: the column that says what each label's values are in, as in 'Basis weight | 250 | g/m²'.
    """

    column: int
    rows: tuple[int, ...]
    right: int
    units: int | None = None


def label_runs(view: View) -> list[Labels]:
    """Every run of labels with a price and a board among them and values beside them, from the top."""
    runs: list[Labels] = []
    for column in _label_columns(view):
        for rows in _runs(view, column):
            # A label above may yet join them. Most runs of a long list are single words that name something.
            if len(rows) + 1 < _FEWEST_LABELS:
                continue
            units = unit_column(view, column, rows)
            rows = _with_unknown(view, column, _without_letterhead(view, column, rows))
            rows = _with_forms(view, column, rows)
            run = _checked(view, column, rows, units)
            if run is not None:
                runs.append(run)
    return sorted(_without_overlap(runs), key=lambda run: (run.rows[0], run.column))


def _label_columns(view: View) -> list[int]:
    """Columns with at least the fewest labels; a long table's columns are ruled out by a look at their first cells."""
    counts: dict[int, int] = {}
    for row in view.order[:400]:
        for column, cell in view.rows[row].items():
            if _is_label(cell) or _is_form(cell):
                counts[column] = counts.get(column, 0) + 1
    return sorted(column for column, count in counts.items() if count >= _FEWEST_LABELS)


def _is_label(cell: Cell | None) -> bool:
    return cell is not None and isinstance(cell.value, str) and cell.fault is None and _labels(cell.text)


@lru_cache(maxsize=16384)
def _labels(text: str) -> bool:
    words = without_footnote(text)
    if len(text) >= 60 or not may_name(words):
        return False
    head = head_of_words(words)
    # 'kg', 'tonelada' and 'mil m²' down a list are its prices' units.
    return head is not None and head.named and not head.answers_itself and basis_text(words) is None


def _runs(view: View, column: int) -> Iterator[list[int]]:
    """Stretches of rows whose cells in the column are labels; what a label has said already begins the next stretch."""
    run: dict[int, Cell] = {}
    for row, cell in view.down(column, view.order):
        labels = _is_label(cell) and max(view.columns_of(row)) > column
        if run and not (labels and _continues(run, row, cell)):
            yield list(run)
            run = {}
        if labels and (run or not _is_title(view, column, row, cell.text)):
            run[row] = cell
    if run:
        yield list(run)


def _is_title(view: View, column: int, row: int, text: str) -> bool:
    """'Boxboard GC2, GBP per tonne | 2026' above rows of more values names a board beside the money."""
    head = head_of_words(text)
    if head is None or not head.price or find_grade(text) is None:
        return False
    return _values(view, row, column) < _values(view, row + 1, column)


def _values(view: View, row: int, column: int) -> int:
    """How many cells of a row stand beside a label in this column."""
    return sum(at > column for at in view.rows.get(row, ()))


def _without_letterhead(view: View, column: int, rows: list[int]) -> list[int]:
    """The run without lines of one value above a gap, where several values stand beside each label below it.

    'Minimum: | 20000 kg per grade' is said of every board, not of the one in its column.
    """
    values = [_values(view, row, column) for row in rows]
    for place in range(1, len(rows)):
        if rows[place] - rows[place - 1] > 1 and max(values[:place]) == 1 and min(values[place:]) > 1:
            return rows[place:]
    return rows


def _with_unknown(view: View, column: int, rows: list[int]) -> list[int]:
    """The run with a label right above it that is no known word, where as many values stand beside it as below.

    'Marlow Mills plc | Boxboard GC2 | GBP per tonne' above rows of five values is a title.
    """
    above = view.rows.get(rows[0] - 1, {})
    cell = above.get(column)
    if cell is None or not isinstance(cell.value, str) or len(cell.text) > _LONGEST_LABEL:
        return rows
    fewest = min(_values(view, row, column) for row in rows)
    known = head_of(cell)
    if (
        _values(view, rows[0] - 1, column) < max(1, fewest)
        or (known is not None and known.number)
        or looks_priced(cell)
    ):
        return rows
    return [rows[0] - 1, *rows]


def _with_forms(view: View, column: int, rows: list[int]) -> list[int]:
    """The run with 'Reels' and 'Sheets' right below it over figures: prices of the board in the forms it comes in."""
    below = rows[-1] + 1
    while _is_form(view.rows.get(below, {}).get(column)) and _values(view, below, column):
        rows = [*rows, below]
        below += 1
    return rows


@lru_cache(maxsize=16384)
def _names_a_form(text: str) -> bool:
    head = head_of_words(without_footnote(text)) if len(text) <= _LONGEST_LABEL else None
    return head is not None and head.across == "form"


def _is_form(cell: Cell | None) -> bool:
    return cell is not None and isinstance(cell.value, str) and _names_a_form(cell.text)


def _continues(run: dict[int, Cell], row: int, cell: Cell) -> bool:
    """A label goes on a run unless it says again what the first label said, or a gap parts it from a price."""
    heads = [head_of(label) for label in run.values()]
    gap = row - max(run)
    if gap > _WIDEST_GAP + 1 or (gap > 1 and any(head is not None and head.price for head in heads)):
        return False
    head = head_of(cell)
    words = {label.text.strip().casefold() for label in run.values()}
    again = head is not None and heads[0] is not None and heads[0].role is head.role
    return not again and cell.text.strip().casefold() not in words


def _checked(view: View, column: int, rows: list[int], units: int | None) -> Labels | None:
    heads = [head for row in rows if (head := head_of(view.rows[row][column])) is not None]
    roles = {head.role for head in heads}
    if len(roles) < _FEWEST_LABELS or not any(map(_heads_prices, heads)) or not any(head.board for head in heads):
        return None
    right = _last_value_column(view, column, rows, units)
    beside = [cell for row in rows for at, cell in view.rows[row].items() if column < at <= right and at != units]
    labels_beside = sum(_is_label(cell) for cell in beside)
    if right == column or len(beside) < len(rows) - 1 or 3 * labels_beside > len(beside):
        return None
    if not any(_has_price_beside(view, row, column, right) for row in rows):
        return None
    return Labels(column, tuple(rows), right, units)


def _has_price_beside(view: View, row: int, column: int, right: int) -> bool:
    head = head_of(view.rows[row][column])
    beside = [cell for at, cell in view.rows[row].items() if column < at <= right]
    return head is not None and _heads_prices(head) and any(looks_priced(cell) for cell in beside)


def _heads_prices(head: Head) -> bool:
    return head.price or head.across == "form"


def _last_value_column(view: View, column: int, rows: list[int], units: int | None) -> int:
    """The last column before the next column of labels, or before an empty one; the first may stand behind a gap."""
    right = column
    following = {min((at for at in view.rows[row] if at > column and at != units), default=column) for row in rows}
    if len(following) == 1 and 0 < (first := following.pop()) - column - 1 <= _WIDEST_GAP_BESIDE:
        right = first - 1
    while any(right + 1 in view.rows[row] for row in rows):
        labels = 0 if right + 1 == units else sum(_is_label(view.rows[row].get(right + 1)) for row in rows)
        if labels >= max(2, len(rows) // 2):
            break
        right += 1
    return right


def _without_overlap(runs: list[Labels]) -> list[Labels]:
    kept: list[Labels] = []
    for run in sorted(runs, key=lambda run: -len(run.rows)):
        if not any(_share(run, other) for other in kept):
            kept.append(run)
    return kept


def _share(one: Labels, other: Labels) -> bool:
    beside = one.column <= other.right and other.column <= one.right
    return beside and bool(set(one.rows) & set(other.rows))
