"""Header zones: the one to four rows that head a table, with merged groups above and unit or bracket rows below. A zone
is only a candidate until data stand below it, which is checked where the tables are put together."""

from bisect import bisect_right
from dataclasses import dataclass, field

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.header_columns import headed_columns
from tracker.intake.tables.headers.header_rows import (
    are_numbers,
    asked_and_answered,
    axes_named,
    heads_of,
    is_header_row,
    names_board_and_unit,
    under_axis,
)
from tracker.intake.tables.headers.heads import Head, head_of, is_bare_number
from tracker.intake.tables.headers.heads_of_rows import heads_the_rows
from tracker.intake.tables.headers.letterheads import is_letterhead, is_stamped
from tracker.intake.tables.headers.run_on import runs_on
from tracker.intake.tables.headers.under_groups import beside_units, under_group
from tracker.intake.tables.rows.charge_lines import states_charge
from tracker.intake.tables.rows.group_lines import group_lines
from tracker.intake.tables.rows.measure_rows import measures_across
from tracker.intake.tables.table import HeadedColumn, Words
from tracker.intake.tables.view import View
from tracker.intake.values.changes.list_age import Age, age_of_name, tells_age
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.heads.roles import MEASURES, Role
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases

_MOST_ROWS_ABOVE = 2
_MOST_ROWS_BELOW = 2
_LONGEST_GROUP = 60


@dataclass(slots=True)
class Zone:
    """Rows `top` to `bottom` of a header; `main` is the row whose words were recognised. `rows`: all that head the
    columns, which may stand further up. `measured`: the last of them tells each column's weight or caliper."""

    top: int
    main: int
    bottom: int
    rows: list[int] = field(default_factory=list)
    measured: bool = False
    columns: list[HeadedColumn] = field(default_factory=list)
    titles: tuple[Words, ...] = ()
    across: bool = field(init=False)
    """Bare figures head some of its columns, as in a cross-tab."""

    def __post_init__(self) -> None:
        self.across = any(is_bare_number(cell) for column in self.columns for cell in column.heads)


def zone_at(view: View, row: int, below: int) -> Zone | None:
    """The header zone whose main row this is, or None. Rows up to `below` belong to what stands above."""
    if not is_header_row(view, row):
        return None
    bottom = _last_row(view, row)
    labelled = group_lines(view, row, row, below)
    top = row if labelled is not None and labelled.labelled else _first_row(view, row, below)
    rows = [each for each in range(top, bottom + 1) if each in view.rows]
    zone = Zone(top, row, bottom, rows, bottom > row and _measures(view, row, bottom), headed_columns(view, rows))
    lines = group_lines(view, row, top, below) if zone.columns else None
    if lines is not None:
        zone.top, zone.columns = lines.top, [lines.over(column) for column in zone.columns]
    return zone if zone.columns else None


def whole_heads(view: View, zones: list[Zone]) -> list[Zone]:
    """'Sort | g/m² | µm | Price/t', an empty row and '£ | €': one header, of whose lower part no row names a board."""
    whole: list[Zone] = []
    for zone in zones:
        upper = whole[-1] if whole else None
        if upper is None or not _goes_on_below(view, upper, zone):
            whole.append(zone)
            continue
        rows = [*upper.rows, *zone.rows]
        joined = Zone(upper.top, upper.main, zone.bottom, rows, zone.measured, headed_columns(view, rows), upper.titles)
        whole[-1] = joined
    return whole


def _goes_on_below(view: View, upper: Zone, zone: Zone) -> bool:
    """Nothing but empty rows stands between them, and what heads boards stands in the upper one alone."""
    following = view.order[bisect_right(view.order, upper.bottom)]
    return following == zone.top > upper.bottom + 1 and _names_board(upper) and not _names_board(zone)


def _names_board(zone: Zone) -> bool:
    heads = (head_of(cell) for column in zone.columns for cell in column.heads)
    return any(head is not None and head.board for head in heads)


def measured_anew(view: View, zone: Zone, row: int) -> Zone | None:
    """The zone that begins with a further row of measures under the same header: 'SBS, lb/MSF' above, 'CRB, lb/MSF'
    here."""
    if not zone.measured or not _measures(view, zone.main, row):
        return None
    rows = [*zone.rows[:-1], row]
    return Zone(row, zone.main, row, rows, measured=True, columns=headed_columns(view, rows))


def spread_anew(view: View, zone: Zone, row: int) -> bool:
    """Whether a row spreads a measure across anew below a cross-tab: 'g/m² | 235 | 275' below 'g/m² | 250 | 300' and
    its prices. It is made of figures as the rows of prices are, and told from them by its corner."""
    if repeats_corner(view, zone, row):
        return True
    corner = _corner_over_figures(view, row)
    first = _corner_over_figures(view, zone.main)
    return corner is not None and first is not None and bool(axes_named(corner) & MEASURES)


def repeats_axis(view: View, zone: Zone, row: int) -> Zone | None:
    """The zone that begins where a row says the bare figures of the header's lowest row again, each in its column:
    'Grade | 250 | 300 | 350' over calipers, below the prices by weight. Its title says what it holds."""
    cells = view.rows[row]
    lowest = {
        column.index: column.heads[-1] for column in zone.columns if column.heads and is_bare_number(column.heads[-1])
    }
    again = [column for column, head in lowest.items() if column in cells and cells[column].text == head.text]
    if len(again) < _FEWEST_AGAIN or len(again) < len(lowest) or len(cells) > len(again) + 1:
        return None
    rows = [*zone.rows[:-1], row]
    return Zone(row, zone.main, row, rows, columns=headed_columns(view, rows))


_FEWEST_AGAIN = 2


def repeats_corner(view: View, zone: Zone, row: int) -> bool:
    """Whether such a row begins as the header above did, so that nothing of that one heads what stands below."""
    corner, first = _corner_over_figures(view, row), _corner_over_figures(view, zone.main)
    return corner is not None and first is not None and fold(corner.text) == fold(first.text)


def _corner_over_figures(view: View, row: int) -> Cell | None:
    """The words that a row of bare figures begins with."""
    (_, corner), *others = sorted(view.rows[row].items())
    figures = len(others) > 1 and all(is_bare_number(cell) for _, cell in others)
    return corner if figures and isinstance(corner.value, str) else None


def _measures(view: View, main: int, row: int) -> bool:
    heads = heads_of(view, row)
    return heads is not None and measures_across(view, main, row, heads)


def _last_row(view: View, main: int) -> int:
    bottom = main
    for row in range(main + 1, main + 1 + _MOST_ROWS_BELOW):
        # The lower half of heads merged over two rows holds nothing of its own.
        halved = row not in view.rows and any((row, column) in view.spread for column in view.rows[main])
        if not halved and (row not in view.rows or not _continues_header(view, main, row)):
            break
        bottom = bottom if halved else row
    return bottom


def _continues_header(view: View, main: int, row: int) -> bool:
    """A row of units, brackets, calipers or places right below a header row."""
    heads = heads_of(view, row)
    if heads is None or _states_terms(list(view.rows[row].values()), heads) or states_charge(view.rows[row]):
        return False
    columns = list(view.rows[row])
    if names_board_and_unit(view, row) and all(view.cell(main, column) is not None for column in columns):
        return False
    if any(head.number is not None for head in heads):
        return (
            (are_numbers(view, row) and any(under_axis(view, above, row) for above in {main, row - 1}))
            or _second_axis(view, main, row, heads)
            or measures_across(view, main, row, heads)
        )
    if under_group(view, main, columns) or beside_units(view, main, row, heads):
        return True
    # 'Board | US$ per cwt' over 'Caliper, points' over 14 | 16 | 18.
    axis = len(heads) == 1 and heads[0].axis_word and row + 1 in view.rows and under_axis(view, row, row + 1)
    if axis or heads_the_rows(view, main, row):
        return True
    # A row of units stands under heads of its own; a lone grade in the first column is a sub-heading.
    if len(heads) == 1 and heads[0].unit and not heads[0].across:
        over = view.cell(main, columns[0])
        return over is not None and (head := head_of(over)) is not None and head.price
    known = [
        head.named or head.unit or tells_age(cell.text) or runs_on(view, main, row, column)
        for head, (column, cell) in zip(heads, view.rows[row].items(), strict=True)
    ]
    alone = len(known) == 1 and runs_on(view, main, row, columns[0])
    return all(known) and (len(known) > 1 or alone) and all(head.across != "grade" for head in heads)


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
    heads = heads_of(view, row)
    if heads is None or _is_labelled(list(cells.values()), heads):
        return False
    if any(head.answers_itself for head in heads) and not _old_and_new(list(cells.values()), heads):
        return False
    if asked_and_answered(view, row, heads) or is_letterhead(view, row) or is_stamped(view, row):
        return False
    if _names_the_report(view, lower, row, heads):
        return False
    if any(head.number is not None for head in heads):
        return _second_axis(view, lower, row, heads) or _spread_by_the_row_above(view, lower, row, heads)
    first, last = min(view.rows[lower]), max(view.rows[lower])
    spans = [_reach(view, row, column) for column in cells]
    if len(cells) == 1:
        (left, right), column = spans[0], next(iter(cells))
        whole = left <= first and right >= last
        merged = view.span(cells[column])[1] > column
        return not whole and (merged or column > first) and (heads[0].named or bool(heads[0].across) or merged)
    return all(len(cell.text) <= _LONGEST_GROUP for cell in cells.values())


def _old_and_new(cells: list[Cell], heads: list[Head]) -> bool:
    """'Superseded | | Valid from 1 July 2026': a group of earlier prices, and from when on the others hold."""
    days = [head.role is Role.VALID_FROM for head in heads if head.answers_itself]
    others = [cell for cell, head in zip(cells, heads, strict=True) if not head.answers_itself]
    ages = (age_of_name(cell.text) is Age.SUPERSEDED or phrases("price_ages").find(cell.text) for cell in others)
    return all(days) and any(ages)


def _names_the_report(view: View, lower: int, row: int, heads: list[Head]) -> bool:
    """'PRCLST_V4 | 010 | NAME' over columns that all have heads of their own: words for none of them, and of no group,
    which would leave the first columns free or be merged over them."""
    cells, below = view.rows[row], view.rows[lower]
    first = min(cells)
    over_first = first == min(below) and len(cells) > 1 and view.span(cells[first])[1] == first
    own = head_of(below[first]) if over_first else None
    return own is not None and own.named and not any(head.named or head.across or head.unit for head in heads)


def _is_labelled(cells: list[Cell], heads: list[Head]) -> bool:
    """'Minimum order: | 5000 kg per item' is a line of the letterhead, though it stands right above a header row."""
    if any(cell.text.rstrip().endswith(":") for cell in cells):
        return True
    # 'FCA mill | DAP' groups prices by delivery, though 'mill' also labels a vendor.
    by_delivery = find_delivery(cells[0].text) is not None
    return len(cells) == 2 and heads[0].role in _TERMS and not heads[1].named and not by_delivery


def _states_terms(cells: list[Cell], heads: list[Head]) -> bool:
    """'Lead time | 15 days | 4 weeks' below a header tells the terms of each column."""
    figures = [any(map(str.isdigit, cell.text)) for cell in cells]
    return len(cells) > 1 and heads[0].role in _TERMS and not figures[0] and all(figures[1:])


_TERMS = frozenset({Role.MINIMUM, Role.LEAD_TIME, Role.VALIDITY, Role.VALID_FROM, Role.RECEIVED, Role.VENDOR})


def _spread_by_the_row_above(view: View, lower: int, row: int, heads: list[Head]) -> bool:
    """'Caliper (µm)' over '350 | 400' over 'Basis weight | 260 | 300': figures above figures, each a board's."""
    bare = all(head.number is not None for head in heads)
    inside = view.rows[row].keys() <= view.rows[lower].keys()
    return bare and inside and row - 1 in view.rows and under_axis(view, row - 1, row)


def _second_axis(view: View, lower: int, row: int, heads: list[Head]) -> bool:
    """Two rows of bare numbers across, each behind the words for what it is: calipers over basis weights. What else is
    priced beside them, as 'New core', may be headed in one of the two alone."""
    below = heads_of(view, lower) or []
    numbers, others = _numbered(view, row, heads), _numbered(view, lower, below)
    several = len(numbers) >= _FEWEST_AGAIN and _begin_alike(view, lower, row, numbers[0])
    if not several and list(view.rows[row]) != list(view.rows[lower]):
        return False
    whole = set(numbers) <= set(others) if row < lower else numbers == others
    return whole and any(head.axis_word for head in heads)


def _begin_alike(view: View, lower: int, row: int, first: int) -> bool:
    """The same columns stand before the numbers, which only more words follow in one of the rows."""
    before = [[column for column in view.rows[each] if column < first] for each in (row, lower)]
    return before[0] == before[1]


def _numbered(view: View, row: int, heads: list[Head]) -> list[int]:
    """The columns whose heads are bare numbers."""
    return [column for column, head in zip(view.rows[row], heads, strict=False) if head.number is not None]


def _reach(view: View, row: int, column: int) -> tuple[int, int]:
    """First and last column that a header cell covers: its merged block, else until the next cell of its row."""
    left, right = view.span(view.rows[row][column])
    if right > left:
        return left, right
    following = [other for other in view.rows[row] if other > column]
    return column, (min(following) - 1 if following else column)
