"""Finding the tables of a sheet: those that stand, those that lie on their side, and rows that need no header."""

from collections.abc import Sequence
from functools import lru_cache

from tracker.intake.tables.headerless.headless import describes_board_whole, priced_rows
from tracker.intake.tables.headerless.without_header import headless_tables
from tracker.intake.tables.headers.broken_heads import with_whole_order_sizes
from tracker.intake.tables.headers.own_rows import belongs_to
from tracker.intake.tables.headers.priced_columns import valued
from tracker.intake.tables.headers.unit_rows import priced_anew
from tracker.intake.tables.headers.units_at_foot import with_units_at_foot
from tracker.intake.tables.headers.zones import (
    Zone,
    measured_anew,
    repeats_axis,
    repeats_corner,
    spread_anew,
    whole_heads,
    zone_at,
)
from tracker.intake.tables.lying.ages_over import ages_over, with_ages
from tracker.intake.tables.lying.boards_beside import rows_named_beside
from tracker.intake.tables.lying.label_pairs import Pair, pairs_beside, with_pairs
from tracker.intake.tables.lying.label_units import with_label_units
from tracker.intake.tables.lying.long_forms import said_beside_all
from tracker.intake.tables.lying.turned import Labels, label_runs
from tracker.intake.tables.parts.bands import bands_of
from tracker.intake.tables.parts.remarks_beside import said_of_boards_beside, with_remarks_apart
from tracker.intake.tables.parts.segments import segments_of
from tracker.intake.tables.parts.terms_boxes import said_of_tables_beside, with_terms_apart
from tracker.intake.tables.parts.words_between import Headed, by_table, said_of_all, shared_words
from tracker.intake.tables.rows.boards_over_sizes import with_measures_below
from tracker.intake.tables.rows.body import Body, body_of
from tracker.intake.tables.rows.charge_lines import charges_apart
from tracker.intake.tables.rows.group_lines import leads_to_groups
from tracker.intake.tables.rows.keyed_lines import with_measures_written_out
from tracker.intake.tables.rows.limits_on_two_rows import with_limits_on_one_row
from tracker.intake.tables.rows.line_pairs import without_line_pairs
from tracker.intake.tables.rows.lines_below import with_lines_below
from tracker.intake.tables.rows.old_prices_below import without_old_prices_below
from tracker.intake.tables.rows.sentences_on_two_rows import with_sentences_on_one_row
from tracker.intake.tables.rows.sizes_on_two_rows import with_sizes_on_one_row
from tracker.intake.tables.rows.terms_below import with_terms_below
from tracker.intake.tables.rows.terms_by_board import with_terms_by_board
from tracker.intake.tables.rows.two_lines import with_second_lines
from tracker.intake.tables.rows.units_below import with_units_below
from tracker.intake.tables.table import HeadedColumn, SheetTables, Table
from tracker.intake.tables.view import View, part_of, turned, without_cells
from tracker.intake.tables.words import words_of

_LOOKED_AT = 60


def find_tables(view: View) -> SheetTables:
    """Every table of a sheet with its own titles and notes, and the texts that hold for the whole sheet."""
    view, box = with_terms_apart(with_sentences_on_one_row(with_terms_by_board(view)))
    lying, rest = _lying_tables(view)
    rest, remarks = with_remarks_apart(rest)
    tables = list(lying)
    bands = bands_of(rest)
    texts = list(bands.listed)
    for band in bands.beside:
        texts.extend(words_of(band, band.order))
    found = [_upright_tables(band) for band in bands.parts]
    upright = [table for part in found for table in part.tables]
    tables.extend(upright)
    texts.extend(said_of_all(found))
    texts.extend(said_of_boards_beside(upright, remarks) if remarks is not None else ())
    texts += said_of_tables_beside(tables, box)
    return SheetTables(view, tuple(tables), tuple(sorted(texts, key=lambda said: (said.row, said.cell.column))))


def _lying_tables(view: View) -> tuple[list[Table], View]:
    """Tables on their side, and the view without them."""
    tables: list[Table] = []
    taken: set[tuple[int, int]] = set()
    above = -1
    for run in label_runs(view):
        pairs = pairs_beside(view, run)
        table = _lying_table(view, run, pairs)
        if table is None:
            continue
        ages = ages_over(view, run)
        if ages:
            with_ages(table, ages)
            taken.update((run.rows[0] - 1, column) for column in view.rows[run.rows[0] - 1])
        beside = rows_named_beside(view, run)
        named = words_of(part_of(view, beside, range(run.column)), beside)
        taken.update((row, column) for row in beside for column in range(run.column))
        table.titles = (*words_of(view, _rows_right_above(view, run.rows[0] - bool(ages), above)), *named)
        tables.append(table)
        taken.update((row, column) for row in run.rows for column in range(run.column, run.right + 1))
        taken.update(place for pair in pairs for place in pair.places)
        above = run.rows[-1]
    return tables, without_cells(view, taken)


def _lying_table(view: View, run: Labels, pairs: list[Pair]) -> Table | None:
    part = part_of(view, run.rows, range(run.column, run.right + 1))
    side = turned(with_label_units(part, run.column, run.units) if run.units else part)
    side = with_pairs(side, run, [*said_beside_all(view, run), *((pair.label, pair.value) for pair in pairs)])
    zone = zone_at(side, run.column, -1)
    if zone is None:
        return None
    body = body_of(side, [row for row in side.order if row > zone.bottom], valued(zone.columns))
    if not body.rows:
        return None
    return Table(side, tuple(zone.columns), body.rows, run.rows[0], run.rows[-1])


def _rows_right_above(view: View, row: int, limit: int) -> list[int]:
    """The unbroken rows just above a row, down from `limit`."""
    rows: list[int] = []
    while row - 1 > limit and row - 1 in view.rows:
        row -= 1
        rows.insert(0, row)
    return rows


def _upright_tables(band: View) -> SheetTables:
    band = with_units_below(without_old_prices_below(band))
    band = with_whole_order_sizes(with_sizes_on_one_row(with_limits_on_one_row(band)))
    zones = _zones_with_figures(band)
    if not zones:
        return headless_tables(band)
    above = part_of(band, first := [row for row in band.order if row < zones[0].top])
    spoken = len(priced_rows(above)) >= _SEVERAL
    if spoken and describes_board_whole(band.rows[zones[0].main].values()):
        # '28 pt chipboard, 97 lb/MSF | waiting on mill' is one more row of a letter, and heads nothing.
        return headless_tables(band)
    told = headless_tables(above) if spoken else SheetTables(above, (), tuple(words_of(band, first)))
    parts: list[Headed] = []
    for place, zone in enumerate(zones):
        end = zones[place + 1].top if place + 1 < len(zones) else None
        rows = [row for row in band.order if row > zone.bottom and (end is None or row < end)]
        zone.columns, rows = with_units_at_foot(band, rows, zone.columns)
        apart = charges_apart(band, rows) if place and end is None else []
        found, after = _zone_tables(band, zone, [row for row in rows if row not in apart])
        parts.append(Headed(zone.top, found, after + apart))
    shared = shared_words(band, parts, _rows_right_above(band, zones[0].top, -1))
    tables = [*told.tables, *(table for part in parts for table in part.tables)]
    # What stands right above the first table is its title, and with all above it holds for the sheet too.
    nearest = _rows_right_above(band, zones[0].top, -1)[-1:]
    firsts = [table for table in tables if table.first_row == zones[0].top]
    for table, own in zip(firsts, by_table(firsts, words_of(band, nearest)), strict=True):
        table.titles = own
    return SheetTables(band, tuple(tables), (*told.texts, *shared))


_SEVERAL = 2
"""One board with its price above a header may be an example or an index."""


def _zone_tables(band: View, zone: Zone, rows: list[int]) -> tuple[list[Table], list[int]]:
    """The tables under one header, and the rows of words that follow the last of their figures."""
    tables: list[Table] = []
    after: set[int] = set(rows)
    segments = segments_of(_with_unheaded(band, zone, rows))
    several = len(segments) > 1
    for columns in segments:
        part = part_of(band, rows, range(columns[0].index, columns[-1].index + 1)) if several else band
        told, body = _told_whole(part, rows, columns)
        if told is not part:
            after -= part.rows.keys() - told.rows.keys()
        part = told
        after -= {row.index for row in body.rows} | body.own_lines
        if body.rows:
            after -= {row for row in rows if row < body.rows[-1].index}
            notes = tuple(words_of(part, body.notes))
            table = Table(part, tuple(columns), body.rows, zone.top, body.rows[-1].index, zone.titles, notes)
            tables.append(with_terms_below(without_line_pairs(table), band))
    return tables, sorted(after)


def _told_whole(part: View, rows: list[int], columns: Sequence[HeadedColumn]) -> tuple[View, Body]:
    """The rows below a header, each board on one line."""
    prices = valued(columns)
    part, own = with_measures_written_out(part, [row for row in rows if row in part.rows])
    part = with_measures_below(part, own, columns, prices)
    body = body_of(part, own, prices)
    joined = with_second_lines(part, own, body, prices)
    if joined is None:
        return part, with_lines_below(part, own, body, prices)
    return joined, body_of(joined, [row for row in own if row in joined.rows], prices)


def _with_unheaded(band: View, zone: Zone, rows: list[int]) -> list[HeadedColumn]:
    """The header's columns, and those that have cells below but no head, such as grades under nothing."""
    headed = {column.index for column in zone.columns}
    counts: dict[int, int] = {}
    for row in rows:
        for column in band.columns_of(row):
            if column not in headed:
                counts[column] = counts.get(column, 0) + 1
    unheaded = [HeadedColumn(column) for column, count in counts.items() if count >= max(1, len(rows) // 10)]
    return sorted([*zone.columns, *unheaded], key=lambda column: column.index)


def _zones(band: View, skipped: set[int]) -> list[Zone]:
    """Every header zone from the top; `skipped` rows have proved to head nothing."""
    zones: list[Zone] = []
    below = -1
    data_shapes: set[tuple[tuple[int, bool], ...]] = set()
    for row in band.order:
        if row <= below:
            continue
        again = _headed_anew(band, zones[-1], row) if zones else None
        if again is not None:
            zones.append(again)
            below = row
            continue
        shape = _shape(band, row)
        # A row shaped like a data row above it is another data row: long lists are not read for headers.
        if shape in data_shapes and not (zones[-1].across and spread_anew(band, zones[-1], row)):
            continue
        heads = row not in skipped and not (zones and belongs_to(band, row, zones[-1]))
        zone = zone_at(band, row, below) if heads else None
        if zone is not None and leads_to_groups(band, row, below):
            continue
        if zone is None:
            if zones and any(number for _, number in shape):
                data_shapes.add(shape)
            continue
        zones.append(zone)
        below, data_shapes = zone.bottom, set()
    return [zone for zone in zones if _leads_somewhere(band, zone)]


def _headed_anew(band: View, zone: Zone, row: int) -> Zone | None:
    """The zone that begins where one row below a header takes the place of its last."""
    if zone.across and repeats_corner(band, zone, row):
        return None
    again = repeats_axis(band, zone, row) if zone.across else None
    return again or measured_anew(band, zone, row) or priced_anew(band, zone, row)


def _zones_with_figures(band: View) -> list[Zone]:
    """The header zones that figures stand under; words that only looked like a header go back to being words."""
    skipped: set[int] = set()
    while True:
        zones = whole_heads(band, _zones(band, skipped))
        barren = {zone.main for place, zone in enumerate(zones) if not _figures_under(band, zones, place)}
        if not barren:
            return zones
        skipped |= barren


def _figures_under(band: View, zones: list[Zone], place: int) -> bool:
    zone = zones[place]
    end = zones[place + 1].top if place + 1 < len(zones) else None
    rows = [row for row in band.order if row > zone.bottom and (end is None or row < end)]
    return bool(body_of(band, rows[:_LOOKED_AT], valued(_with_unheaded(band, zone, rows[:_LOOKED_AT]))).rows)


def _shape(band: View, row: int) -> tuple[tuple[int, bool], ...]:
    """Which columns a row uses, and in which of them figures stand."""
    cells = sorted(band.rows[row].items())
    return tuple([(column, not isinstance(cell.value, str) or _reads_as_figure(cell.text)) for column, cell in cells])


@lru_cache(maxsize=16384)
def _reads_as_figure(text: str) -> bool:
    return text.lstrip("$€£-+(")[:1].isdigit() and not any(sign.isalpha() for sign in text)


def _leads_somewhere(band: View, zone: Zone) -> bool:
    """Whether any row below has something in a column of the header."""
    columns = {column.index for column in zone.columns}
    return any(columns & band.rows[row].keys() for row in band.order if zone.bottom < row <= zone.bottom + 12)
