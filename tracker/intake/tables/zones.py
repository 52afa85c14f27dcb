"""Header zones: the one to four rows that head a table, with merged groups above and unit or bracket rows below.

A zone is only a candidate until data stand below it; that is checked where the tables are put together.
"""

from dataclasses import dataclass, field
from decimal import Decimal
from itertools import pairwise

from tracker.intake.grid import Cell
from tracker.intake.tables.heads import AXIS_ROLES, Head, head_of, looks_priced
from tracker.intake.tables.numbered import counted_prices
from tracker.intake.tables.table import HeadedColumn, Words
from tracker.intake.tables.view import View
from tracker.intake.values.caliper import bare_caliper
from tracker.intake.values.delivery import find_delivery
from tracker.intake.values.header import Role, header_roles

_MOST_ROWS_ABOVE = 2
_MOST_ROWS_BELOW = 2
_LONGEST_HEAD = 90
_LONGEST_GROUP = 60
_OUTRIGHT = 0.9


@dataclass(slots=True)
class Zone:
    """Rows `top` to `bottom` of a header; `main` is the row whose words were recognised."""

    top: int
    main: int
    bottom: int
    columns: list[HeadedColumn] = field(default_factory=list)
    titles: tuple[Words, ...] = ()


def zone_at(view: View, row: int, below: int) -> Zone | None:
    """The header zone whose main row this is, or None. Rows up to `below` belong to what stands above."""
    if not is_header_row(view, row):
        return None
    bottom = _last_row(view, row)
    top = _first_row(view, row, below)
    zone = Zone(top, row, bottom)
    zone.columns = _headed_columns(view, zone)
    return zone if zone.columns else None


def is_header_row(view: View, row: int) -> bool:
    """Whether most of a row's cells name what stands below them, or spread one property of board across."""
    heads = _heads(view, row)
    if heads is None:
        return False
    named = sum(head.named for head in heads)
    across = _most_across(heads)
    # A bare number is a head only among others like it, under or beside words.
    bare = sum(head.number is not None for head in heads)
    if bare and not _bare_numbers_head(view, row, heads):
        return False
    if any(head.answers_itself for head in heads) and named < 3:
        return False
    if named < 3 and next(iter(view.rows[row].values())).text.rstrip().endswith(":"):
        return False
    if named + across >= 2 or (bare >= 2 and named >= 1):
        known = sum(head.named or bool(head.across) or head.number is not None for head in heads)
        if 2 * known >= len(heads) and (named > 0 or across >= 2):
            return True
    if named >= 1 and bare == 0 and (_figures_under_words(view, row) or _axis_below(view, row)):
        return True
    return named == 1 and len(heads) == 1 and heads[0].price and _prices_under(view, row)


def _most_across(heads: list[Head]) -> int:
    """How many cells are values of one and the same property, the commonest in the row."""
    kinds = [head.across for head in heads if head.across and not head.named]
    return max((kinds.count(kind) for kind in set(kinds)), default=0)


def _heads(view: View, row: int) -> list[Head] | None:
    heads = []
    counted = counted_prices(tuple(view.rows[row].values()))
    for cell in view.rows[row].values():
        head = counted.get(cell) or head_of(cell)
        if head is None or len(cell.text) > _LONGEST_HEAD:
            return None
        heads.append(head)
    return heads


def _bare_numbers_head(view: View, row: int, heads: list[Head]) -> bool:
    """Numbers across (12 | 14 | 16) head columns when the corner says of what, or they rise and a word above does."""
    numbers = [head.number for head in heads if head.number is not None]
    if len(numbers) < 2 or any(head.across for head in heads):
        return False
    corner = view.rows[row][min(view.rows[row])]
    axes = _axes_named(corner)
    if axes & _MEASURES:
        return True
    if not all(a < b for a, b in pairwise(numbers)):
        return False
    if axes and len({reading.unit for number in numbers if (reading := bare_caliper(number)) is not None}) == 1:
        return True
    columns = [column for column, cell in view.rows[row].items() if head_of(cell) in heads and _is_number(cell)]
    above = [view.rows[row - 1][column] for column in columns if column in view.rows.get(row - 1, {})]
    return len(above) == 1 and (found := head_of(above[0])) is not None and found.axis_word


def _figures_under_words(view: View, row: int) -> bool:
    """Words only, with figures right below most of them: heads, though not all are known words (places, months)."""
    cells, under = view.rows[row], view.rows.get(row + 1, {})
    if len(cells) < 3 or any(looks_priced(cell) for cell in cells.values()):
        return False
    figures = sum(column in under and isinstance(under[column].value, Decimal) for column in cells)
    above = view.rows.get(row - 1, {})
    return (
        figures >= 2
        and 2 * figures >= len(cells)
        and not any(isinstance(cell.value, Decimal) for cell in above.values())
    )


_MEASURES = frozenset({Role.CALIPER, Role.WEIGHT})


def _axes_named(corner: Cell) -> frozenset[Role]:
    """The properties of board that a corner names outright; 'carton premium' is a board, though it says carton."""
    if any(sign.isdigit() for sign in corner.text):
        return frozenset()
    return frozenset(r.role for r in header_roles(corner.text) if r.role in AXIS_ROLES and r.strength >= _OUTRIGHT)


def _is_number(cell: Cell) -> bool:
    head = head_of(cell)
    return head is not None and head.number is not None


def _prices_under(view: View, row: int) -> bool:
    column = next(iter(view.rows[row]))
    under = view.rows.get(row + 1, {})
    return column in under and looks_priced(under[column]) and any(left < column for left in under)


def _last_row(view: View, main: int) -> int:
    bottom = main
    for row in range(main + 1, main + 1 + _MOST_ROWS_BELOW):
        if row not in view.rows or not _continues_header(view, main, row):
            break
        bottom = row
    return bottom


def _continues_header(view: View, main: int, row: int) -> bool:
    """A row of units, brackets, calipers or places right below a header row."""
    heads = _heads(view, row)
    if heads is None:
        return False
    columns = list(view.rows[row])
    if any(head.number is not None for head in heads):
        bare = all(head.number is not None for head in heads)
        return (bare and _under_axis(view, main, row)) or _second_axis(view, main, row, heads)
    if _under_group(view, main, columns):
        return True
    # A row of units stands under heads of its own; a lone grade in the first column is a sub-heading.
    if len(heads) == 1 and heads[0].unit and not heads[0].across:
        over = view.cell(main, columns[0])
        return over is not None and (head := head_of(over)) is not None and head.price
    known = sum(head.named or head.unit for head in heads)
    return known == len(heads) and all(head.across != "grade" for head in heads) and len(heads) >= 2


def _axis_below(view: View, row: int) -> bool:
    """The row below is bare numbers that one of this row's words names."""
    below = _heads(view, row + 1) if row + 1 in view.rows else None
    return bool(below) and all(head.number is not None for head in below or ()) and _under_axis(view, row, row + 1)


def _under_axis(view: View, main: int, row: int) -> bool:
    """Bare numbers spread what one header cell above all of them names: 'Caliper (pt)' over 12 | 14 | 16."""
    cells = view.rows[row]
    over = {_covering(view, main, column) for column in cells}
    if len(over) != 1 or len(cells) < 2:
        return False
    (word,) = over
    numbers = [
        head.number for cell in cells.values() if (head := head_of(cell)) is not None and head.number is not None
    ]
    said = {reading.role for reading in header_roles(word.text)} if word is not None else set()
    return bool(said & AXIS_ROLES) and all(a < b for a, b in pairwise(numbers))


def _covering(view: View, row: int, column: int) -> Cell | None:
    """The header cell over a column: its own, the merged one, or the nearest to the left over blanks."""
    own = view.spread_cell(row, column)
    if own is not None:
        return own
    before = [left for left in view.rows.get(row, {}) if left < column]
    return view.rows[row][max(before)] if before else None


def _under_group(view: View, main: int, columns: list[int]) -> bool:
    """Whether all these columns stand under header cells that are merged or run to the right over blanks."""
    for column in columns:
        cell = view.cell(main, column)
        if cell is not None:
            left, right = view.span(cell)
            runs_on = view.spread_cell(main, column + 1) is None
            if right == left and not runs_on:
                return False
        elif not _runs_over(view, main, column):
            return False
    return len(columns) >= 2 or view.cell(main, columns[0]) is None


def _runs_over(view: View, row: int, column: int) -> bool:
    """Whether a header cell further left covers this column: merged over it, or with only blanks between."""
    covering = view.spread.get((row, column))
    if covering is not None:
        return True
    return any(left < column for left in view.rows.get(row, {}))


def _first_row(view: View, main: int, below: int) -> int:
    top = main
    for row in range(main - 1, main - 1 - _MOST_ROWS_ABOVE, -1):
        if row <= below or row not in view.rows or not _groups_above(view, top, row):
            break
        top = row
    return top


def _groups_above(view: View, lower: int, row: int) -> bool:
    """A row right above a header row whose cells group the columns below: merged over several, or set over some."""
    cells = view.rows[row]
    heads = _heads(view, row)
    if heads is None or any(head.answers_itself for head in heads) or _is_labelled(list(cells.values()), heads):
        return False
    if any(head.number is not None for head in heads):
        return _second_axis(view, lower, row, heads)
    first, last = min(view.rows[lower]), max(view.rows[lower])
    spans = [_reach(view, row, column) for column in cells]
    if len(cells) == 1:
        (left, right), column = spans[0], next(iter(cells))
        whole = left <= first and right >= last
        merged = view.span(cells[column])[1] > column
        return not whole and (merged or column > first) and (heads[0].named or bool(heads[0].across) or merged)
    return all(len(cell.text) <= _LONGEST_GROUP for cell in cells.values())


def _is_labelled(cells: list[Cell], heads: list[Head]) -> bool:
    """'Minimum order: | 5000 kg per item' is a line of the letterhead, though it stands right above a header row."""
    if any(cell.text.rstrip().endswith(":") for cell in cells):
        return True
    # 'FCA mill | DAP' groups prices by delivery, though 'mill' also labels a vendor.
    by_delivery = find_delivery(cells[0].text) is not None
    return len(cells) == 2 and heads[0].role in _TERMS and not heads[1].named and not by_delivery


_TERMS = frozenset({Role.MINIMUM, Role.LEAD_TIME, Role.VALIDITY, Role.VALID_FROM, Role.RECEIVED, Role.VENDOR})


def _second_axis(view: View, lower: int, row: int, heads: list[Head]) -> bool:
    """Two rows of bare numbers across, each behind the words for what it is: calipers over basis weights."""
    same_columns = list(view.rows[row]) == list(view.rows[lower])
    below = _heads(view, lower) or []
    numbers = [head.number is not None for head in heads]
    return (
        same_columns
        and numbers == [head.number is not None for head in below]
        and any(head.axis_word for head in heads)
    )


def _reach(view: View, row: int, column: int) -> tuple[int, int]:
    """First and last column that a header cell covers: its merged block, else until the next cell of its row."""
    left, right = view.span(view.rows[row][column])
    if right > left:
        return left, right
    following = [other for other in view.rows[row] if other > column]
    return column, (min(following) - 1 if following else column)


def _headed_columns(view: View, zone: Zone) -> list[HeadedColumn]:
    """Every column of the zone with the texts above it; upper cells run right over blanks as far as lower heads go."""
    rows = [row for row in range(zone.top, zone.bottom + 1) if row in view.rows]
    indices = sorted({column for row in rows for column in view.rows[row]})
    columns = []
    for index in _with_merged(view, rows, indices):
        heads: list[Cell] = []
        for level in range(len(rows)):
            cell = _head_over(view, rows, level, index)
            if cell is not None and cell not in heads:
                heads.append(cell)
        columns.append(HeadedColumn(index, tuple(heads)))
    return columns


def _with_merged(view: View, rows: list[int], indices: list[int]) -> list[int]:
    """Columns covered by a header's merged block count, so that a blank column inside a group keeps its place."""
    lowest = rows[-1]
    covered = {column for column in range(indices[0], indices[-1] + 1) if (lowest, column) in view.spread}
    return sorted(covered.union(indices))


def _head_over(view: View, rows: list[int], level: int, index: int) -> Cell | None:
    row = rows[level]
    cell = view.spread_cell(row, index)
    if cell is not None or level == len(rows) - 1:
        return cell
    # A group's word set over its first column only: it runs right while lower rows have words of their own.
    if not any(view.cell(lower, index) is not None for lower in rows[level + 1 :]):
        return None
    before = [column for column in view.rows[row] if column < index]
    if not before:
        return None
    nearest = view.rows[row][max(before)]
    if view.span(nearest)[1] > view.span(nearest)[0]:
        return None
    return nearest if _is_group(view, rows, level, max(before), index) else None


def _is_group(view: View, rows: list[int], level: int, start: int, index: int) -> bool:
    """Whether the cell at `start` heads a group that reaches `index`: lower rows have words in every column between."""
    below = rows[level + 1 :]
    return all(any(view.spread_cell(row, column) is not None for row in below) for column in range(start, index + 1))
