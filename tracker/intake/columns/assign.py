"""From a table's headed columns to columns with roles: words first, then cells, then formats, each weighed."""

from collections.abc import Mapping, Sequence
from dataclasses import replace

from tracker.intake.columns.column import Column, Columns
from tracker.intake.columns.groups.block_titles import tells_of_others, titles_of_blocks
from tracker.intake.columns.groups.days import holding, told_from_payment, waiting
from tracker.intake.columns.groups.places import as_a_place, towns_of_states, with_places
from tracker.intake.columns.groups.widths_across import with_widths, without_widths_roles
from tracker.intake.columns.priced.amounts import with_units_of_the_list, without_quantities
from tracker.intake.columns.priced.own_costs import built_up
from tracker.intake.columns.priced.package_prices import without_package_prices
from tracker.intake.columns.priced.prices import price_columns
from tracker.intake.columns.priced.without_surcharge import without_parts
from tracker.intake.columns.roles.beside import (
    beside_charges,
    beside_prices,
    like_its_group,
    lots_beside_sizes,
    no_charge_as_high,
    no_making,
    small_beside_a_price,
    starts_a_discount,
    unheaded_remarks,
    weighed,
    without_axis_words,
)
from tracker.intake.columns.roles.candidates import candidates_of
from tracker.intake.columns.roles.fits import fit
from tracker.intake.columns.roles.former_names import without_former_names
from tracker.intake.columns.roles.guess import role_by_cells, sizes_orders
from tracker.intake.columns.roles.headed_figures import (
    NEVER_PRICES,
    by_words,
    defines_tons,
    heads_prices_of_a_kind,
    letters_alone,
    mostly_priced,
    named_with_money,
    spreads_values,
)
from tracker.intake.columns.roles.heads_said import said_by_heads, without_roles_of_firms
from tracker.intake.columns.roles.item_numbers import boards_in_items, item_numbers, number_lots
from tracker.intake.columns.roles.lookalikes import marks_money, without_lookalikes
from tracker.intake.columns.roles.lots_weighed import weighs_the_lot
from tracker.intake.columns.roles.no_calipers import without_other_points
from tracker.intake.columns.roles.stock_counts import counts_stock
from tracker.intake.columns.sizes.breaks import amounts_ordered, breaks_of_boards, lots_on_offer, sizes_among_quantities
from tracker.intake.columns.sizes.counted_sizes import counted_sizes
from tracker.intake.columns.sizes.forms import told_apart_by_form, told_apart_by_load
from tracker.intake.columns.sizes.packs import with_packs
from tracker.intake.columns.units.aims import with_aims
from tracker.intake.columns.units.corner_units import with_corner_unit
from tracker.intake.columns.units.sides import with_sides
from tracker.intake.columns.units.units_beside import (
    counts_of_units,
    prices_by_strange_units,
    units_of_quantities,
    with_units_beside,
)
from tracker.intake.columns.units.unread_weights import weighed_by_figures
from tracker.intake.columns.units.widths import without_widths
from tracker.intake.grid import Cell
from tracker.intake.tables.figures import is_figure
from tracker.intake.tables.headerless.headless import says_price
from tracker.intake.tables.headers.heads import PRICE_ROLES
from tracker.intake.tables.headers.periods import of_shipment, without_periods
from tracker.intake.tables.rows.charge_lines import cell_of_board
from tracker.intake.tables.table import HeadedColumn, Table, Words
from tracker.intake.values.boards.grade import names_grade
from tracker.intake.values.changes.totals import is_total
from tracker.intake.values.heads.roles import MEASURES, ON_TOP, Role
from tracker.intake.values.orders.masses import mass_text
from tracker.intake.values.prices.basis import find_basis
from tracker.intake.values.times.dates import find_dates
from tracker.intake.words.lists import phrases

_SAMPLE = 60
_LEAST_FIT, _ORDERS = 0.3, 0.6
_MOSTLY = _PLAINLY = 0.8


def columns_of(table: Table, texts: Sequence[Words] = ()) -> Columns:
    """The columns of a table with their roles, the prices among them picked out; `texts`: all that its sheet says
    beside its tables."""
    above = [words for words in texts if words.row < table.first_row]
    samples = {headed.index: _sample(table, headed.index) for headed in table.columns}
    blocks, towns = titles_of_blocks(table.columns), towns_of_states(table.columns)
    columns = [
        _column(headed, samples[headed.index], blocks, towns)
        for headed in with_corner_unit(with_units_beside(with_widths(with_places(table.columns)), samples), samples)
    ]
    columns = [weighed(column, columns) for column in _names_beside_numbers(columns, samples)]
    columns = [beside_prices(no_making(column, columns), columns) for column in columns]
    columns = [weighs_the_lot(column, columns, samples) for column in columns]
    columns = [counts_stock(column, columns, samples) for column in columns]
    columns = with_packs(columns, samples)
    columns = with_sides(without_widths(with_aims(columns, table), samples), samples, table)
    columns = [told_from_payment(column, columns, samples[column.index]) for column in columns]
    columns = [waiting(holding(column, samples[column.index]), columns, samples[column.index]) for column in columns]
    columns = [like_its_group(column, columns, samples[column.index]) for column in columns]
    columns = [lots_beside_sizes(column, columns, samples) for column in columns]
    columns = [without_axis_words(column, columns, samples[column.index]) for column in columns]
    columns = boards_in_items(item_numbers(columns, samples), samples)
    columns = unheaded_remarks(_with_a_product(without_former_names(columns), samples), samples)
    columns = weighed_by_figures(columns, samples)
    columns = prices_by_strange_units(units_of_quantities(counts_of_units(columns, samples), samples), samples)
    columns = without_package_prices(with_units_of_the_list(without_quantities(columns, samples), samples), table)
    columns = counted_sizes(columns, samples, table)
    columns = sizes_among_quantities(breaks_of_boards(without_parts(columns, table, texts), table), table)
    columns = lots_on_offer(amounts_ordered(columns, table), table, (*table.titles, *above))
    columns = [no_charge_as_high(starts_a_discount(column, columns), columns, samples) for column in columns]
    columns = built_up(columns)
    columns = [small_beside_a_price(column, columns, samples) for column in columns]
    columns = [beside_charges(column, columns, samples[column.index]) for column in columns]
    columns = without_other_points(columns, samples)
    columns = told_apart_by_form(columns, samples, (*table.titles, *texts, *table.notes))
    return price_columns(told_apart_by_load(columns, samples), samples, table.titles, above, (*texts, *table.notes))


def _names_beside_numbers(columns: list[Column], samples: Mapping[int, Sequence[Cell]]) -> list[Column]:
    """'Lieferant | Name' over a number and a firm: the name belongs to what stands left of it."""
    numbered = {
        column.index + 1
        for column in columns
        if column.role is None and any(head.strength(Role.VENDOR) >= _PLAINLY for head in column.said)
    }
    return [
        replace(column, role=Role.VENDOR)
        if column.index in numbered
        and phrases("headers_alone").whole(column.text) == Role.PRODUCT
        and fit(Role.VENDOR, column, samples[column.index]) >= _MOSTLY
        else column
        for column in columns
    ]


def _with_a_product(columns: list[Column], samples: Mapping[int, Sequence[Cell]]) -> list[Column]:
    """Where no column is known to name the board, the first one of words without a role does."""
    if any(column.role in (Role.PRODUCT, Role.GRADE) for column in columns):
        return columns
    for place, column in enumerate(columns):
        # 'Item' heads a number to some and the board itself to others.
        cells = samples[column.index]
        items = column.role is Role.ITEM and any(names_grade(cell.text) for cell in cells)
        # 'Fiber' is a property to some, and to others the word over SBS and CRB; 'Was' is 'what' in German.
        fibres = column.role in (Role.PROPERTY, Role.PREVIOUS_PRICE) and _all_boards(cells)
        if items or fibres:
            return [*columns[:place], replace(column, role=Role.PRODUCT), *columns[place + 1 :]]
    for place, column in enumerate(columns):
        cells = samples[column.index]
        if column.role is None and cells and fit(Role.PRODUCT, column, cells) >= _MOSTLY:
            return [*columns[:place], replace(column, role=Role.PRODUCT, sure=False), *columns[place + 1 :]]
    for place, column in enumerate(columns):
        # Where nothing else does, the vendor's own code names the board, and a legend may say which it is.
        if column.role is Role.ITEM and any(sign.isalpha() for cell in samples[column.index] for sign in cell.text):
            return [*columns[:place], replace(column, role=Role.PRODUCT, sure=False), *columns[place + 1 :]]
    return columns


def _all_boards(cells: Sequence[Cell]) -> bool:
    """Each names a grade, but for the word before what the column below it adds up to."""
    texts = [cell.text for cell in cells if not is_total(cell.text)]
    return bool(texts) and all(map(names_grade, texts))


def _sample(table: Table, index: int) -> list[Cell]:
    """Filled cells of a column, spread over its whole length, one for each distinct text."""
    step = max(1, len(table.rows) // (4 * _SAMPLE))
    seen: dict[str, Cell] = {}
    for row in table.rows[::step]:
        cell = cell_of_board(table.view.rows[row.index], index)
        if cell is not None:
            seen.setdefault(cell.text, cell)
            if len(seen) >= _SAMPLE:
                break
    return list(seen.values())


def _column(headed: HeadedColumn, cells: Sequence[Cell], blocks: frozenset[Cell], towns: frozenset[Cell]) -> Column:
    own = [
        replace(head, roles=()) if cell in blocks and tells_of_others(head) else head
        for cell, head in zip(headed.heads, said_by_heads(headed), strict=True)
    ]
    own = [as_a_place(head) if cell in towns else head for cell, head in zip(headed.heads, own, strict=True)]
    priced = mostly_priced(cells)
    said = without_roles_of_firms(without_widths_roles(own, priced=priced), priced)
    bare = Column(headed.index, None, headed.heads, said)
    role, sure = (Role.PRICE, True) if headed.priced else _role(bare, cells)
    return Column(headed.index, role, headed.heads, said, sure, headed.lines, headed.vendor)


def _role(column: Column, cells: Sequence[Cell]) -> tuple[Role | None, bool]:
    if column.said and column.said[-1].role is Role.LEAD_TIME and fit(Role.LEAD_TIME, column, cells) == 1:
        # 'LT' is a long ton too, and its times are figures under 'USD per MSF'.
        return Role.LEAD_TIME, True
    if of_shipment(column.text) and mostly_priced(cells):
        # 'Ship Jul 26' over 1,180: a lead time would be a number of days.
        return None, False
    if (spreads_values(column) or heads_prices_of_a_kind(column)) and mostly_priced(cells):
        # 'OLD (thru 12/31/26)' names a last day as well.
        old = any(head.strength(Role.PREVIOUS_PRICE) >= _PLAINLY for head in column.said)
        return Role.PREVIOUS_PRICE if old else Role.PRICE, True
    if defines_tons(column, cells):
        return Role.BASIS, True
    candidates = without_lookalikes(candidates_of(column.said), column.said)
    if not candidates or marks_money(column, candidates, cells):
        return role_by_cells(column, cells), False
    best = _best(column, candidates, cells)
    if best is Role.PRICE and letters_alone(cells):
        return None, False
    if best in MEASURES and not cells:
        # 'g/m² →' in line with 230, 260 and 300, over nothing: it is their unit.
        return None, False
    return (Role.PRICE if named_with_money(best, column) and mostly_priced(cells) else best), True


_NAMED_BY_WORDS = frozenset({Role.VENDOR, Role.DELIVERY_TERMS, Role.WEIGHT, Role.BASIS, Role.VALIDITY})
"""What figures cannot be, whatever stands above them: firms, terms, a board of 20,000 lb, a unit ('A'), a day."""


def _begins_its_prices(column: Column, cells: Sequence[Cell]) -> bool:
    """'Gültig ab 1. Juli 2026' over figures heads what is paid from that day on, and no days."""
    dated = any(find_dates(head.text) or without_periods(head.text) != head.text for head in column.said)
    return dated and mostly_priced(cells)


_FIRST_DAYS = (Role.VALID_FROM, Role.RECEIVED)


_NEVER_MONEY = frozenset({Role.ITEM, Role.DESTINATION, Role.PRODUCT, Role.FORM})


def _mostly_money(cells: Sequence[Cell]) -> bool:
    """Two in three say money; 'on request' and a range are what the others may say."""
    return len(cells) > 1 and 3 * sum(map(_says_money, cells)) >= 2 * len(cells)


def _says_money(cell: Cell) -> bool:
    """A figure with its currency and what it is per, in words of its own."""
    return isinstance(cell.value, str) and says_price(cell) and find_basis(cell.text) is not None


_NAMES_A_BOARD = frozenset({Role.PRODUCT, Role.GRADE, Role.ITEM, Role.FORM, Role.PROPERTY})


def _is_money(role: Role) -> bool:
    return role in PRICE_ROLES or role in NEVER_PRICES


def _best(column: Column, candidates: dict[Role, float], cells: Sequence[Cell]) -> Role | None:
    fits = {role: fit(role, column, cells) for role in candidates}
    best = max(candidates, key=lambda role: candidates[role] + fits[role])
    if best in _FIRST_DAYS and _begins_its_prices(column, cells):
        return None
    if best is Role.ITEM and fit(Role.BRACKET, column, cells) >= _ORDERS and not number_lots(column, cells):
        # 'Lot' over 'Small lot', 'LTL' and 'TL' sizes orders.
        return Role.BRACKET
    if best in _NEVER_MONEY and _mostly_money(cells):
        # '€1,265.00/t' in nearly every row, whatever its head is called: 'Nous proposons'.
        return Role.PRICE
    if best in _NAMES_A_BOARD and sizes_orders(column, cells):
        # 'Band', and 'Board' over 'Caliper' in the corner of a table whose rows are order sizes.
        return Role.BRACKET
    by_unit = best is Role.PRICE and not column.currencies and not any(by_words(head) for head in column.said)
    if by_unit and role_by_cells(column, cells) is Role.BRACKET:
        # 'Tons' over '1-4' and '5-19': the unit of order sizes, and not what something is priced by.
        return Role.BRACKET
    # A single figure below a charge is charged, whatever words stand in the other rows ('inkl.', 'on request').
    charged = best in ON_TOP and any(map(is_figure, cells))
    if cells and fits[best] < _LEAST_FIT and not charged:
        # The words say one thing and the cells another: what the cells are beats a word that fits nothing.
        other = role_by_cells(column, cells)
        if other is None and column.currencies and not _is_money(best) and mostly_priced(cells):
            # 'Sheets' over '€/t' over figures: the word for a sheet size says in what form the board comes.
            other = Role.PRICE
        if best is Role.TOTAL and other is Role.BRACKET and all(mass_text(cell.text) for cell in cells):
            # 'Annual volume' over '500 ST' is what is bought in a year.
            return best
        if best is Role.MINIMUM and other is Role.BASIS and candidates[best] >= _PLAINLY:
            # '1 pack' under 'Min. qty' is an order, and not what something is priced by.
            return best
        if best is Role.BRACKET and other is Role.PRODUCT and not any(names_grade(cell.text) for cell in cells):
            # 'Order size' over words that nobody understands: they are asked about, and name no boards.
            return best
        # 'CT' over 'in stock' and '3 wks' is no head of prices in cents.
        by_a_code = best is Role.PRICE and fits[best] == 0 and not any(map(by_words, column.said))
        worded = by_a_code or other in (Role.BASIS, Role.DELIVERY_TERMS)
        if other is not None and (best not in PRICE_ROLES or worded):
            return other
        if best is Role.DISCOUNT and not any(map(str.isdigit, "".join(cell.text for cell in cells))):
            # 'Disc. class' over 'A' and 'B' takes nothing off.
            return None
        if best in MEASURES and not any(any(map(str.isdigit, cell.text)) for cell in cells):
            # 'GR-IV' over 'X' weighs nothing, and 'Basis' over 'A' and 'C' is what those stand for.
            return Role.BASIS if phrases("unit_words").whole(column.text) else None
        if best in _NAMED_BY_WORDS and fits[best] == 0 and (best is Role.VENDOR or mostly_priced(cells)):
            return None
    return best
