"""From a table's headed columns to columns with roles: words first, then cells, then formats, each weighed."""

from collections.abc import Mapping, Sequence
from dataclasses import replace
from decimal import Decimal

from tracker.intake.columns.amounts import with_units_of_the_list, without_quantities
from tracker.intake.columns.beside import (
    beside_charges,
    beside_prices,
    like_its_group,
    no_charge_as_high,
    small_beside_a_price,
    starts_a_discount,
    unheaded_remarks,
    weighed,
    weighs_the_lot,
    without_axis_words,
)
from tracker.intake.columns.breaks import breaks_of_boards
from tracker.intake.columns.column import Column, Columns
from tracker.intake.columns.corner_units import with_corner_unit
from tracker.intake.columns.days import told_from_payment, waiting
from tracker.intake.columns.fits import fit
from tracker.intake.columns.forms import told_apart_by_form, told_apart_by_load
from tracker.intake.columns.guess import role_by_cells
from tracker.intake.columns.headed_figures import (
    NEVER_PRICES,
    by_words,
    heads_prices_of_a_kind,
    mostly_priced,
    named_with_money,
    says_delivery,
    spreads_values,
)
from tracker.intake.columns.lookalikes import without_lookalikes
from tracker.intake.columns.prices import price_columns
from tracker.intake.columns.steps import without_steps
from tracker.intake.columns.units_beside import counts_of_units, units_of_quantities, with_units_beside
from tracker.intake.columns.unread_weights import weighed_by_figures
from tracker.intake.columns.widths import without_widths
from tracker.intake.grid import Cell
from tracker.intake.tables.heads import PRICE_ROLES, head_text
from tracker.intake.tables.table import HeadedColumn, Table, Words
from tracker.intake.values.grade import find_grade
from tracker.intake.values.header import Header, header, without_unit
from tracker.intake.values.role_words import tells_of_freight
from tracker.intake.values.roles import MEASURES, ON_TOP, Role, RoleReading
from tracker.intake.values.ton_kinds import ton_under
from tracker.intake.words.lists import phrases

_SAMPLE = 60
_LEAST_FIT = 0.3
_ORDERS = 0.6
_MOSTLY = 0.8
_LONGEST_CODE = 16


def columns_of(table: Table, above: Sequence[Words] = ()) -> Columns:
    """The columns of a table with their roles, the prices among them picked out; `above`: what its sheet says first."""
    samples = {headed.index: _sample(table, headed.index) for headed in table.columns}
    columns = [
        _column(headed, samples[headed.index])
        for headed in with_corner_unit(with_units_beside(table.columns, samples), samples)
    ]
    columns = [weighed(column, columns) for column in columns]
    columns = [beside_prices(column, columns) for column in columns]
    columns = [weighs_the_lot(column, columns, samples) for column in columns]
    columns = without_widths(columns, samples)
    columns = [told_from_payment(column, columns, samples[column.index]) for column in columns]
    columns = [waiting(column, columns, samples[column.index]) for column in columns]
    columns = [like_its_group(column, columns, samples[column.index]) for column in columns]
    columns = [without_axis_words(column, columns, samples[column.index]) for column in columns]
    columns = unheaded_remarks(_with_a_product(_item_numbers(columns, samples), samples))
    columns = weighed_by_figures(columns, samples)
    columns = units_of_quantities(counts_of_units(columns, samples))
    columns = with_units_of_the_list(without_quantities(columns, samples), samples)
    columns = breaks_of_boards(without_steps(columns, table), table)
    columns = [no_charge_as_high(starts_a_discount(column, columns), columns, samples) for column in columns]
    columns = [small_beside_a_price(column, columns, samples) for column in columns]
    columns = [beside_charges(column, columns, samples[column.index]) for column in columns]
    columns = told_apart_by_load(told_apart_by_form(columns, samples), samples)
    return price_columns(columns, samples, table.titles, above)


def _item_numbers(columns: list[Column], samples: Mapping[int, Sequence[Cell]]) -> list[Column]:
    """An 'article' column of codes beside one that names the board holds item numbers."""
    products = [column for column in columns if column.role in (Role.PRODUCT, Role.GRADE)]
    if len(products) < 2:
        return columns
    codes = {column.index for column in products if _are_codes(samples[column.index])}
    if len(codes) == len(products):
        return columns
    return [replace(column, role=Role.ITEM) if column.index in codes else column for column in columns]


def _are_codes(cells: Sequence[Cell]) -> bool:
    """Short words with a digit and no space in them, none of which is a grade."""
    return bool(cells) and all(
        len(cell.text) <= _LONGEST_CODE
        and " " not in cell.text
        and any(sign.isdigit() for sign in cell.text)
        and not _names_grade(cell.text)
        for cell in cells
    )


def _names_grade(text: str) -> bool:
    grade = find_grade(text)
    return grade is not None and bool(grade.grades)


def _with_a_product(columns: list[Column], samples: Mapping[int, Sequence[Cell]]) -> list[Column]:
    """Where no column is known to name the board, the first one of words without a role does."""
    if any(column.role in (Role.PRODUCT, Role.GRADE) for column in columns):
        return columns
    for place, column in enumerate(columns):
        # 'Item' heads a number to some and the board itself to others.
        cells = samples[column.index]
        items = column.role is Role.ITEM and any(_names_grade(cell.text) for cell in cells)
        # 'Fiber' is a property to some, and to others the word over SBS and CRB.
        fibres = column.role is Role.PROPERTY and cells and all(_names_grade(cell.text) for cell in cells)
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


def _sample(table: Table, index: int) -> list[Cell]:
    """Filled cells of a column, spread over its whole length, one for each distinct text."""
    step = max(1, len(table.rows) // (4 * _SAMPLE))
    seen: dict[str, Cell] = {}
    for row in table.rows[::step]:
        cell = table.view.rows[row.index].get(index)
        if cell is not None:
            seen.setdefault(cell.text, cell)
            if len(seen) >= _SAMPLE:
                break
    return list(seen.values())


def _column(headed: HeadedColumn, cells: Sequence[Cell]) -> Column:
    said = tuple(header(head_text(cell)) for cell in headed.heads)
    bare = Column(headed.index, None, headed.heads, said)
    role, sure = _role(bare, cells)
    return Column(headed.index, role, headed.heads, said, sure, headed.lines, headed.vendor)


def _role(column: Column, cells: Sequence[Cell]) -> tuple[Role | None, bool]:
    if (spreads_values(column) or heads_prices_of_a_kind(column)) and mostly_priced(cells):
        # 'OLD (thru 12/31/26)' names a last day as well.
        old = any(head.strength(Role.PREVIOUS_PRICE) >= _PLAINLY for head in column.said)
        return Role.PREVIOUS_PRICE if old else Role.PRICE, True
    if _defines_tons(column, cells):
        return Role.BASIS, True
    candidates = without_lookalikes(_candidates(column.said), column.said)
    if not candidates:
        return role_by_cells(column, cells), False
    best = _best(column, candidates, cells)
    return (Role.PRICE if named_with_money(best, column) and mostly_priced(cells) else best), True


def _defines_tons(column: Column, cells: Sequence[Cell]) -> bool:
    """'Ton' over 'long ton', '2000 lb' and '1000 kg' says row by row what prices are per."""
    tons = sum(isinstance(cell.value, str) and ton_under(column.text, cell.text) is not None for cell in cells)
    return 2 * tons > len(cells)


_NAMED_BY_WORDS = frozenset({Role.VENDOR, Role.DELIVERY_TERMS, Role.WEIGHT, Role.BASIS, Role.VALIDITY})
"""What figures cannot be, whatever stands above them: firms, terms, a board of 20,000 lb, a unit ('A'), a day."""


def _candidates(said: Sequence[Header]) -> dict[Role, float]:
    """Roles by strength. The lowest head counts most, but a bare unit only helps the words above it."""
    found: dict[Role, float] = {}
    # A zone or a firm above a unit groups the prices below it.
    worded = any(by_words(head) and head.role not in (Role.DESTINATION, Role.VENDOR) for head in said)
    for level, head in enumerate(reversed(said)):
        for reading in head.roles:
            if worded and reading.role is Role.PRICE and not by_words(head):
                continue
            if reading.role is Role.FREIGHT and says_delivery(head):
                continue
            if reading.role is Role.SHEETS_WEIGHT and len(head.weight_units) == 1:
                # The M of 'lb/M sq ft' is of square feet.
                continue
            found[reading.role] = max(found.get(reading.role, 0.0), reading.strength - 0.15 * level)
        for reading in _beside_unit(head) if not tells_of_freight(head.text) else ():
            found[reading.role] = max(found.get(reading.role, 0.0), reading.strength - 0.15 * level)
        # '#/MSF' is read as a number sign; that it is a unit of basis weight too is left to the cells.
        if head.lead_unit is not None and head.caliper_unit is None and Role.CALIPER in found:
            # The 'cal.' of 'Del. time (cal. days)' is of calendars.
            found[Role.LEAD_TIME] = max(found.get(Role.LEAD_TIME, 0.0), found.pop(Role.CALIPER))
        if head.lead_unit is not None and level == 0 and any(phrases("lead_topic").find(above.text) for above in said):
            # 'Leverans' over 'arbetsdagar': how long, and not on which terms.
            found[Role.LEAD_TIME] = max(found.get(Role.LEAD_TIME, 0.0), 0.9)
        if (len(head.weight_units) == 1 or head.ream is not None) and head.currency is None:
            found.setdefault(Role.WEIGHT, 0.85 - 0.15 * level)
        # 'um' is a unit of measure to some and a micron to others.
        only_units = all(reading.role in (Role.BASIS, Role.ITEM) for reading in head.roles)
        if head.caliper_unit is not None and head.currency is None and only_units:
            found.setdefault(Role.CALIPER, 0.6 - 0.15 * level)
    return _named_property(_measured_by_unit(found, said), said)


def _named_property(found: dict[Role, float], said: Sequence[Header]) -> dict[Role, float]:
    """'Cobb 60' over 'g/m²' is how much water the board takes up, whatever its unit measures elsewhere."""
    *above, lowest = said or (None,)
    if lowest is None or not any(phrases(units).whole(lowest.text) for units in ("weight_units", "caliper_units")):
        return found
    named = any(head.strength(Role.PROPERTY) >= _PLAINLY for head in above)
    return {Role.PROPERTY: found[Role.PROPERTY]} if named and Role.PROPERTY in found else found


_PLAINLY = 0.8
"""From this strength on, words name a property and are not only like its name."""


def _measured_by_unit(found: dict[Role, float], said: Sequence[Header]) -> dict[Role, float]:
    """'Substance' over 'g/m²' and 'µm': what a unit measures is what it measures, whatever its group is called."""
    lowest = said[-1] if len(said) > 1 else None
    if lowest is None or (by_words(lowest) and not _is_a_measure(lowest)):
        return found
    if lowest.currency is not None:
        # A head that ran on from its neighbour: figures in '€/t' are no calipers.
        return {role: strength for role, strength in found.items() if role not in (Role.CALIPER, Role.WEIGHT)}
    if _is_a_measure(lowest):
        # The sheet's title, repeated over each page, calls every column a price list's.
        found = {role: strength for role, strength in found.items() if role not in PRICE_ROLES}
    if lowest.length_unit is not None and any(head.role in _LENGTHS for head in said[:-1]):
        # 'Width' over 'in' is a sheet's side, though calipers are in inches too.
        return {role: strength for role, strength in found.items() if role is not Role.CALIPER}
    if lowest.caliper_unit is not None and not lowest.weight_units and Role.WEIGHT in found:
        return {Role.CALIPER if role is Role.WEIGHT else role: strength for role, strength in found.items()}
    if lowest.weight_units and lowest.caliper_unit is None and Role.CALIPER in found:
        return {Role.WEIGHT if role is Role.CALIPER else role: strength for role, strength in found.items()}
    return found


def _is_a_measure(head: Header) -> bool:
    """Nothing but a unit of caliper or basis weight; 'UM' is a unit of measure to some."""
    unit = any(phrases(units).whole(head.text) is not None for units in ("weight_units", "caliper_units"))
    return unit and head.basis is None and head.strength(Role.BASIS) == 0


_LENGTHS = frozenset({Role.WIDTH, Role.LENGTH, Role.ROLL_WIDTH, Role.SHEET_SIZE})


def _beside_unit(head: Header) -> tuple[RoleReading, ...]:
    """The roles of what is left of a head without its currency and unit: 'WAS USD/ton' is what the price was."""
    if head.currency is None or head.basis is None:
        return ()
    rest = without_unit(head).strip(" /()[]")
    return tuple(reading for reading in header(rest).roles if reading.strength >= 0.9) if rest else ()


def _is_money(role: Role) -> bool:
    return role in PRICE_ROLES or role in NEVER_PRICES


def _best(column: Column, candidates: dict[Role, float], cells: Sequence[Cell]) -> Role | None:
    fits = {role: fit(role, column, cells) for role in candidates}
    best = max(candidates, key=lambda role: candidates[role] + fits[role])
    if best is Role.ITEM and cells and fit(Role.BRACKET, column, cells) >= _ORDERS:
        # 'Lot' over 'Small lot', 'LTL' and 'TL' sizes orders.
        return Role.BRACKET
    by_unit = best is Role.PRICE and not column.currencies and not any(by_words(head) for head in column.said)
    if by_unit and role_by_cells(column, cells) is Role.BRACKET:
        # 'Tons' over '1-4' and '5-19': the unit of order sizes, and not what something is priced by.
        return Role.BRACKET
    # A single figure below a charge is charged, whatever words stand in the other rows ('inkl.', 'on request').
    charged = best in ON_TOP and any(_is_figure(cell) for cell in cells)
    if cells and fits[best] < _LEAST_FIT and not charged:
        # The words say one thing and the cells another: what the cells are beats a word that fits nothing.
        other = role_by_cells(column, cells)
        if other is None and column.currencies and not _is_money(best) and mostly_priced(cells):
            # 'Sheets' over '€/t' over figures: the word for a sheet size says in what form the board comes.
            other = Role.PRICE
        if best is Role.MINIMUM and other is Role.BASIS and candidates[best] >= _PLAINLY:
            # '1 pack' under 'Min. qty' is an order, and not what something is priced by.
            return best
        if other is not None and (best not in PRICE_ROLES or other is Role.BASIS):
            return other
        if best is Role.DISCOUNT and not any(map(str.isdigit, "".join(cell.text for cell in cells))):
            # 'Disc. class' over 'A' and 'B' takes nothing off.
            return None
        if best in MEASURES and not any(any(map(str.isdigit, cell.text)) for cell in cells):
            # 'GR-IV' over 'X' weighs nothing.
            return None
        if best in _NAMED_BY_WORDS and fits[best] == 0 and (best is Role.VENDOR or mostly_priced(cells)):
            return None
    return best


def _is_figure(cell: Cell) -> bool:
    return isinstance(cell.value, Decimal)
