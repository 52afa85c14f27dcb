"""Tables that lie on their side: attributes down a column of labels, one board in each column beside it.

A block of labels with one column of values (a board written as a form) is the same thing with one board.
"""

from collections.abc import Hashable, Iterator, Sequence
from dataclasses import dataclass

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import head_of, head_of_words, looks_priced
from tracker.intake.tables.lying.label_units import Place, is_unit, units_beside
from tracker.intake.tables.lying.labels import LONGEST_LABEL, heads_prices, is_form, is_label, names_a_price
from tracker.intake.tables.view import View
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.prices.money import price_text

_FEWEST_LABELS = 3
_WIDEST_GAP = 1
_WIDEST_GAP_BESIDE = 3
_FEW_LABELS = 6
"""Of more, a third may have no value: fields left empty."""
_MOST_UNKNOWN = 3
"""Labels under each other whose words are not known."""
_LOOKED_AT = 200
"""Rows from the top."""
_FARTHEST_UNITS = 8
"""Columns to the right of the labels; a table on its side with more boards than that names its units beside them."""


@dataclass(frozen=True, slots=True)
class Labels:
    """A run of label cells in one column: its rows, from `top` to `bottom`, and the last column of values beside it.

    `units`: the cells that say what a label's values are in, as in 'Basis weight | 250 | g/m²'.
    """

    column: int
    rows: tuple[int, ...]
    right: int
    units: frozenset[Place] = frozenset()


def label_runs(view: View) -> list[Labels]:
    """Every run of labels with a price and a board among them and values beside them, from the top."""
    runs: list[Labels] = []
    for column in _label_columns(view):
        before: list[int] = []
        for rows in _runs(view, column):
            above, before = before, rows
            # A label above may yet join them. Most runs of a long list are single words that name something.
            if len(rows) + 1 < _FEWEST_LABELS:
                continue
            units = units_beside(view, column, rows, _before_next_labels(view, column, rows))
            if _heads_upright(view, column, rows[0]):
                continue
            rows = _without_letterhead(view, column, rows)
            rows = rows if rows[0] - 1 in above else _with_unknown(view, column, rows)
            rows = _with_forms(view, column, rows)
            run = _checked(view, column, rows, units)
            if run is not None:
                runs.append(run)
    return sorted(_without_overlap(runs), key=lambda run: (run.rows[0], run.column))


def _label_columns(view: View) -> list[int]:
    """Columns with at least the fewest labels; a long table's columns are ruled out by a look at their first cells.

    There "stock" or "no" in every other row is a single label, not many.
    """
    long = len(view.order) > _LOOKED_AT
    labels: dict[int, set[Hashable]] = {}
    for row in view.order[:_LOOKED_AT]:
        for column, cell in view.rows[row].items():
            found = labels.setdefault(column, set())
            if len(found) < _FEWEST_LABELS and (is_label(cell) or is_form(cell)):
                found.add(cell.text if long else row)
    return sorted(column for column, found in labels.items() if len(found) >= _FEWEST_LABELS)


def _runs(view: View, column: int) -> Iterator[list[int]]:
    """Stretches of rows whose cells in the column are labels; what a label has said already begins the next stretch.

    'Annual lbs | 820,000' among them is a label as well, though its words are not known.
    """
    run: dict[int, Cell] = {}
    unknown: dict[int, Cell] = {}
    last = -1
    for row, cell in view.down(column, view.order):
        labels = is_label(cell) and max(view.columns_of(row)) > column
        if run and not labels and row == last + 1 and _may_be_unknown(view, column, row):
            unknown[row], last = cell, row
            continue
        if run and labels and len(unknown) <= _MOST_UNKNOWN and _continues(run | unknown, row, cell):
            run |= unknown
        elif run:
            yield list(run)
            run = {}
        unknown = {}
        if labels and (run or not _is_title(view, column, row, cell.text)):
            run[row], last = cell, row
    if run:
        yield list(run)


def _may_be_unknown(view: View, column: int, row: int) -> bool:
    """A few words with one value beside them, which say nothing by themselves."""
    cells = view.rows[row]
    label = cells[column]
    if not isinstance(label.value, str) or len(label.text) > LONGEST_LABEL or looks_priced(label):
        return False
    head = head_of(label)
    return head is not None and not head.across and not head.answers_itself and max(cells) > column


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
    """The run without lines of one value above a gap, where several values stand beside each label below it, or where
    they name terms alone.

    'Minimum: | 20000 kg per grade' and 'Good until | 11 December' are said of every board, not of one.
    """
    values = [_values(view, row, column) for row in rows]
    for place in range(1, len(rows)):
        if rows[place] - rows[place - 1] == 1 or max(values[:place]) > 1:
            continue
        heads = [head_of(view.rows[row][column]) for row in rows[:place]]
        if min(values[place:]) > 1 or all(head is not None and head.role in _OF_ALL for head in heads):
            return rows[place:]
    return rows


_OF_ALL = (Role.VALIDITY, Role.VENDOR, Role.CURRENCY, Role.DELIVERY_TERMS, Role.RECEIVED, Role.PAYMENT)


def _with_unknown(view: View, column: int, rows: list[int]) -> list[int]:
    """The run with a label right above it that is no known word, where as many values stand beside it as below.

    'Marlow Mills plc | Boxboard GC2 | GBP per tonne' above rows of five values is a title.
    """
    above = view.rows.get(rows[0] - 1, {})
    cell = above.get(column)
    if cell is None or not isinstance(cell.value, str) or len(cell.text) > LONGEST_LABEL:
        return rows
    fewest = min(_values(view, row, column) for row in rows)
    known = head_of(cell)
    if (
        _values(view, rows[0] - 1, column) < max(1, fewest)
        or (known is not None and known.number)
        or looks_priced(cell)
        or any(is_label(beside) for at, beside in above.items() if at > column)
    ):
        # 'Field | Value | Unit' heads the form.
        return rows
    return [rows[0] - 1, *rows]


def _with_forms(view: View, column: int, rows: list[int]) -> list[int]:
    """The run with 'Reels' and 'Sheets' right below it over figures: prices of the board in the forms it comes in."""
    below = rows[-1] + 1
    while is_form(view.rows.get(below, {}).get(column)) and _values(view, below, column):
        rows = [*rows, below]
        below += 1
    return rows


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


def _heads_upright(view: View, column: int, row: int) -> bool:
    """'Vendor | Grade | Caliper | Price' over 'Nordwald Karton' and 'Last year': all beside the first label are heads
    of different columns, and what stands below is a table of its own, whatever words its firms' names have in them; so
    it is below 'Board | Caliper | Weight | Code | Price', though codes like 'T' and 'A' may be words."""
    cells = view.rows[row]
    beside = [cell for at, cell in cells.items() if at > column]
    return _are_heads(beside, _FEWEST_LABELS) or _are_heads(list(cells.values()), _FEWEST_LABELS + 1)


def _are_heads(cells: Sequence[Cell], fewest: int) -> bool:
    """Whether each is the head of another kind of column, and one of prices."""
    heads = [head_of(cell) if is_label(cell) else None for cell in cells]
    roles = {head.role for head in heads if head is not None and head.named}
    priced = any(head is not None and head.price for head in heads)
    return None not in heads and len(roles) == len(heads) >= fewest and priced


def _checked(view: View, column: int, rows: list[int], units: frozenset[Place]) -> Labels | None:
    labels = [view.rows[row][column] for row in rows]
    heads = [head for label in labels if (head := head_of(label)) is not None]
    roles = {head.role for head in heads}
    if len(roles) < _FEWEST_LABELS or not any(map(names_a_price, labels)) or not any(head.board for head in heads):
        return None
    right = _last_value_column(view, column, rows, units)
    values = [(row, at) for row in rows for at in view.rows[row] if column < at <= right and (row, at) not in units]
    beside = [view.rows[row][at] for row, at in values]
    labels_beside = sum(is_label(cell) for cell in beside)
    fewest = len(rows) - 1 if len(rows) <= _FEW_LABELS else 2 * len(rows) // 3
    if right == column or len(beside) < fewest or 3 * labels_beside > len(beside):
        return None
    if not any(_has_price_beside(view, row, column, right) for row in rows):
        return None
    return Labels(column, tuple(rows), right, units)


def _has_price_beside(view: View, row: int, column: int, right: int, label: int | None = None) -> bool:
    head = head_of(view.rows[row][column if label is None else label])
    beside = [cell for at, cell in view.rows[row].items() if column < at <= right]
    return head is not None and heads_prices(head) and any(looks_priced(cell) or _withheld(cell) for cell in beside)


def _withheld(cell: Cell) -> bool:
    """'no bid' in the place of a price."""
    price = price_text(cell.text)
    return price is not None and bool(price.no_price)


def _before_next_labels(view: View, column: int, rows: list[int]) -> int:
    """The column before the next one of labels, or the last that is looked at."""
    last = column
    while last < column + _FARTHEST_UNITS:
        beside = last + 1
        units = {(row, beside) for row, cell in view.down(beside, rows) if is_unit(view.rows[row][column], cell)}
        if _are_labels(view, beside, rows, frozenset(units)):
            break
        last = beside
    return last


def _are_labels(view: View, column: int, rows: list[int], units: frozenset[Place]) -> bool:
    labels = sum(is_label(view.rows[row].get(column)) for row in rows if (row, column) not in units)
    return labels >= max(2, len(rows) // 2)


def _last_value_column(view: View, column: int, rows: list[int], units: frozenset[Place]) -> int:
    """The last column before the next column of labels, or before an empty one; the first may stand behind a gap.

    Units may stand behind one more gap.
    """
    right = column
    first_columns = {
        min((at for at in view.rows[row] if at > column and (row, at) not in units), default=column) for row in rows
    }
    if len(first_columns) == 1 and 0 < (first := first_columns.pop()) - column - 1 <= _WIDEST_GAP_BESIDE:
        right = first - 1
    while (after := _next_values(view, column, right, rows)) is not None and not _are_labels(view, after, rows, units):
        if right > column and _says_one_thing(view, after, rows):
            break
        right = after
    behind = {at for _, at in units if at == right + _WIDEST_GAP + 1}
    return max({right} | behind)


def _next_values(view: View, column: int, right: int, rows: list[int]) -> int | None:
    """The next column with values, which may stand behind an empty one where it has a price: 'Position | 1 | | 2'."""
    if any(right + 1 in view.rows[row] for row in rows):
        return right + 1
    behind = [row for row in rows if right + 2 in view.rows[row]]
    priced = any(_has_price_beside(view, row, right + 1, right + 2, label=column) for row in behind)
    return right + 2 if right > column and priced and 2 * len(behind) > len(rows) else None


def _says_one_thing(view: View, column: int, rows: list[int]) -> bool:
    """When an answer was given, or by whom, beside each of them: no board's price, grade and caliper are one."""
    said = {cell.text for _, cell in view.down(column, rows)}
    return len(said) == 1 and len(list(view.down(column, rows))) > _FEWEST_LABELS


def _without_overlap(runs: list[Labels]) -> list[Labels]:
    kept: list[Labels] = []
    for run in sorted(runs, key=lambda run: -len(run.rows)):
        if not any(_share(run, other) for other in kept):
            kept.append(run)
    return kept


def _share(one: Labels, other: Labels) -> bool:
    beside = one.column <= other.right and other.column <= one.right
    return beside and bool(set(one.rows) & set(other.rows))
