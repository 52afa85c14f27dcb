"""Order-size brackets of a table: across in the price columns' headers, or down in columns of their own."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from decimal import Decimal

from tracker.intake.columns.column import Column, Columns, PriceColumn
from tracker.intake.grid import Cell
from tracker.intake.offers.answered import key_about
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.notes.said import Said, at
from tracker.intake.offers.notes.scope import Scope
from tracker.intake.offers.orders.bracket_words import bracket_around
from tracker.intake.offers.orders.discounts_listed import lists_discounts
from tracker.intake.offers.orders.loads_weighed import weighed
from tracker.intake.offers.orders.order_terms import least_of, ton_of
from tracker.intake.offers.orders.row_sizes import NO_UNIT, NOT_UNDERSTOOD, size_of_row
from tracker.intake.offers.orders.sizes_by_group import sizes_by_group, sizes_that_overlap
from tracker.intake.offers.orders.sizes_of_titles import TitledSizes, size_of_title, sizes_of_titles
from tracker.intake.offers.rows.rows import WholeRow
from tracker.intake.tables.table import Headings, Words
from tracker.intake.values.figures.numbers import NumberReading, number_readings
from tracker.intake.values.heads.roles import ORDER_SIZES, Role
from tracker.intake.values.notes.statements import SaysOrders
from tracker.intake.values.orders.bracket_pieces import HALF_LOAD
from tracker.intake.values.orders.brackets import Bracket
from tracker.intake.values.orders.brackets_in_kg import KgBracket, joined
from tracker.intake.values.orders.counted_orders import in_whole
from tracker.intake.values.orders.loads import LOADS
from tracker.intake.values.orders.loads_priced import is_load
from tracker.intake.values.orders.masses import Mass
from tracker.intake.words.lists import phrases
from tracker.trade.quantities import MassUnit

_BOARD = (Role.PRODUCT, Role.GRADE, Role.COATING, Role.CALIPER, Role.WEIGHT, Role.SHEET_SIZE, Role.FORM)

_HEADING = ("heading", "title", "sheet name")
"""What stands over prices, and may be nothing but the size of the orders that they are for."""

_Board = tuple[Headings | None, tuple[str, ...]]
"""The sub-headings above a row, and what its columns say of the board."""

_WAYS = (Role.DELIVERY_TERMS, Role.DESTINATION, Role.VENDOR)
"""What may have order sizes of its own: 'FOB mill', 'Delivered'."""

_ACROSS = (Role.WIDTH, Role.ROLL_WIDTH)
"""What tells one lot of a board from another: two lots are no two order sizes of one."""


@dataclass
class Brackets:
    """Brackets in kg by price column and by row; None where nothing is said of order size."""

    by_column: dict[int, Said[KgBracket]] = field(default_factory=dict)
    by_row: dict[int, Said[KgBracket]] = field(default_factory=dict)
    by_cell: dict[tuple[int, int], Said[KgBracket]] = field(default_factory=dict)
    titled: TitledSizes = field(default_factory=dict)
    facts: FileFacts = field(default_factory=FileFacts)

    def of(self, column: PriceColumn, row: int, scope: Scope) -> Said[KgBracket] | None:
        """The bracket of one price: of its column, its row, the nearest title, or a note."""
        own = self.by_cell.get((row, column.index)) or self.by_column.get(column.index) or self.by_row.get(row)
        if own is not None:
            return own
        around = bracket_around(scope) if self.titled else None
        if around is None:
            return self._noted(scope)
        words, bracket = around
        return Said(size_of_title(self.titled, words, bracket), at(words.cell), words.text)

    def _noted(self, scope: Scope) -> Said[KgBracket] | None:
        """The order size that a note, or the sheet's name, says the prices hold for; to be asked where notes say two.

        'Truckload' and no more among notes may be the label of what one weighs.
        """
        if not scope.nearest(SaysOrders):
            return None
        of_levels = (
            tuple(one for one in level.all_of(SaysOrders) if level.name in _HEADING or not one.value.bare)
            for level in scope.levels
        )
        said = next(filter(None, of_levels), ())
        if not said or (self.facts.loads_alike and all(is_load(one.value.bracket.words) for one in said)):
            return None
        in_kg = {_joined((one.value.bracket,), self.facts)[0] for one in said}
        return Said(in_kg.pop() if len(in_kg) == 1 else KgBracket(unread=True), said[0].where, said[0].words)


def brackets_of(columns: Columns, rows: Iterable[WholeRow], titles: Sequence[Words], facts: FileFacts) -> Brackets:
    """All brackets of a table, each ending where the next one of the same board begins.

    `titles`: those of all tables and headings of the sheet, because a title's order size ends where another's begins.
    """
    titled = sizes_of_titles(titles, lambda written: _joined(written, facts))
    return Brackets(_across(columns, facts), _down(columns, rows, facts), _paired(columns, rows, facts), titled, facts)


def _across(columns: Columns, facts: FileFacts) -> dict[int, Said[KgBracket]]:
    headed = [
        (price, head)
        for price in columns.prices
        if price.bracket is not None and (head := price.bracket_head) is not None
    ]
    in_kg = sizes_by_group([price for price, _ in headed], lambda written: _joined(written, facts))
    return {price.index: Said(kg, at(head), head.text.strip()) for (price, head), kg in zip(headed, in_kg, strict=True)}


def _joined(written: tuple[Bracket, ...], facts: FileFacts) -> tuple[KgBracket, ...]:
    if all(map(_counts_sheets, written)):
        counts = joined(tuple(map(_as_count, written)), None, facts.decimal_sign)
        return tuple(count if count.unread else replace(count, of_sheets=True) for count in counts)
    halves = any(bracket.not_weight == HALF_LOAD for bracket in written)
    brackets = tuple(weighed(bracket, facts, halves=halves) for bracket in written)
    masses = [mass for bracket in brackets for mass in (bracket.start, bracket.end) if mass is not None]
    tons = {ton_of(mass, facts) for mass in masses if mass.ambiguous_ton}
    ton = tons.pop() if len(tons) == 1 else None
    found = joined(brackets, ton, facts.decimal_sign)
    told = tuple(_answered(bracket, kg, facts) for bracket, kg in zip(brackets, found, strict=True))
    found = found if told == brackets else joined(told, ton, facts.decimal_sign)
    settled = ton is not None or facts.ton_answered or facts.tons_differ
    return found if settled else _of_either_ton(told, found, facts)


def _of_either_ton(
    brackets: tuple[Bracket, ...], found: tuple[KgBracket, ...], facts: FileFacts
) -> tuple[KgBracket, ...]:
    """Sizes that can be read once it is known which ton is meant say so: that is asked, and not what each weighs."""
    if not any(one.unread for one in found):
        return found
    short, metric = (joined(brackets, ton, facts.decimal_sign) for ton in (MassUnit.SHORT_TON, MassUnit.TONNE))
    return tuple(
        replace(one, of_ton=True) if one.unread and not by_short.unread and not by_metric.unread else one
        for one, by_short, by_metric in zip(found, short, metric, strict=True)
    )


def _counts_sheets(bracket: Bracket) -> bool:
    return bracket.not_weight == "sheets" and (bracket.start is not None or bracket.end is not None)


def _is_a_count(words: str) -> bool:
    """'24,000 sheets', and not 'from 24,000 sheets'."""
    return {match.value for match in phrases("bracket").find(words)} == {"sheets"}


def _as_count(bracket: Bracket) -> Bracket:
    """A number of sheets as if each weighed a kilogram: what it weighs is for the board to say."""
    bounds = (bracket.start, bracket.end)
    start, end = (None if bound is None else in_whole(replace(bound, units=(MassUnit.KG,))) for bound in bounds)
    return replace(bracket, start=start, end=end, not_weight="")


def _answered(bracket: Bracket, kg: KgBracket, facts: FileFacts) -> Bracket:
    """An earlier answer for a bracket that is no weight: 'truckload' -> '18000:'."""
    answer = facts.answered.settled.get(key_about("bracket", bracket.words)) if kg.unread else None
    if answer is None:
        return bracket
    start, _, end = answer.partition(":")
    return Bracket(bracket.words, _in_kg(start), _in_kg(end))


def _in_kg(amount: str) -> Mass | None:
    return Mass((NumberReading(Decimal(amount)),), (MassUnit.KG,), amount) if amount else None


def _down(columns: Columns, rows: Iterable[WholeRow], facts: FileFacts) -> dict[int, Said[KgBracket]]:
    if columns.first(*ORDER_SIZES, Role.REMARKS) is None:
        return {}
    groups: dict[_Board, list[tuple[int, Said[Bracket]]]] = {}
    ways: dict[int, tuple[str, ...]] = {}
    board = columns.of(*_BOARD, *_ACROSS)
    sized, complete = columns.first(*ORDER_SIZES) is not None, True
    # Of a very long list only what is asked about is kept: its rows would take a gigabyte.
    unsized: list[tuple[_Board, int, Cell]] = []
    for whole in rows:
        said = size_of_row(whole, columns)
        if said is None and not sized:
            complete = False
            continue
        key = (whole.row.headings, _texts(whole, board))
        if said is not None:
            groups.setdefault(key, []).append((whole.row.index, said))
            ways[whole.row.index] = _texts(whole, columns.of(*_WAYS))
            continue
        complete = False
        price = next((whole.cells[price.index] for price in columns.prices if price.index in whole.own), None)
        if price is not None:
            unsized.append((key, whole.row.index, price))
    found: dict[int, Said[KgBracket]] = {}
    if all(len(group) == 1 and _is_bare(group[0][1].value) for group in groups.values()):
        # One bare 'Qty' a board is what the price was asked for; only several of one board part its order sizes.
        return found
    rows_said = [said for group in groups.values() for _, said in group]
    alone = [_joined((said.value,), facts)[0] for said in rows_said]
    if all(len(group) == 1 for group in groups.values()) and lists_discounts(columns, alone, complete=complete):
        rows_of = ((index, said) for group in groups.values() for index, said in group)
        return {index: Said(KgBracket(beside=True), said.where, said.words) for index, said in rows_of}
    if _quantities_of_lines(columns, rows_said, len(groups)):
        return found
    every = {(one.words, one.value.not_weight) for group in groups.values() for _, one in group}
    if complete and len(every) == 1 and every.pop()[1] == NOT_UNDERSTOOD:
        # '1 lot' in every row parts no order sizes either.
        return found
    for group in groups.values():
        if not sized and len(group) == 1 and least_of(group[0][1].words, facts) is not None:
            # 'Minimum 5 t' among the remarks is the smallest order; only several of one board part its order sizes.
            continue
        sizes = tuple(said.value for _, said in group)
        in_kg = sizes_that_overlap([ways[index] for index, _ in group], sizes, lambda written: _joined(written, facts))
        for (index, said), kg in zip(group, in_kg or _joined(sizes, facts), strict=True):
            stated = len(group) == 1 and kg.of_sheets and _is_a_count(said.words)
            found[index] = Said(replace(kg, stated=stated), said.where, said.words)
    return found | _left_blank(groups, unsized, facts)


def _texts(whole: WholeRow, columns: Iterable[Column]) -> tuple[str, ...]:
    return tuple([whole.cells[column.index].text if column.index in whole.cells else "" for column in columns])


def size_without_limits(words: str, facts: FileFacts) -> KgBracket:
    """An order size in words that give no weight to go by, unless somebody has answered what it is."""
    return _joined((Bracket(words, not_weight=NOT_UNDERSTOOD),), facts)[0]


def _left_blank(
    groups: Mapping[_Board, Sequence[tuple[int, Said[Bracket]]]],
    unsized: Iterable[tuple[_Board, int, Cell]],
    facts: FileFacts,
) -> dict[int, Said[KgBracket]]:
    """Rows without an order size of a board whose other rows have several: what they hold for is not every order.
    `unsized`: board, row and price of each row without a size."""
    several = {board for board, sizes in groups.items() if len({said.words for _, said in sizes}) > 1}
    return {
        row: Said(size_without_limits(price.text.strip(), facts), at(price), price.text.strip())
        for board, row, price in unsized
        if board in several
    }


def _is_bare(size: Bracket) -> bool:
    """A figure that no unit of weight stands by: '2500', also where it counts sheets."""
    return size.not_weight == NO_UNIT or (bool(size.not_weight) and bool(number_readings(size.words)))


def _quantities_of_lines(columns: Columns, said: Sequence[Said[Bracket]], boards: int) -> bool:
    """'Qty avail (lb)', 'Menge t/a', 'Qty' over one figure a board: what there is of it, what is bought in a year or
    what the price was asked for, and no order size unless the head speaks of orders."""
    column = columns.first(Role.BRACKET)
    if column is None or len(said) > boards or phrases("order_words").find(column.text):
        return False
    return all(_counts_one(one.value) for one in said)


def _counts_one(size: Bracket) -> bool:
    """'31,050' and '2 rolls': one quantity, and no size that begins or ends somewhere."""
    if size.alone:
        return bool(number_readings(size.words))
    kinds = {match.value for match in phrases("bracket").find(size.words)}
    return size.words[:1].isdigit() and bool(kinds) and kinds <= _KINDS_OF_LOADS


_KINDS_OF_LOADS = frozenset(LOADS)


def _paired(columns: Columns, rows: Iterable[WholeRow], facts: FileFacts) -> dict[tuple[int, int], Said[KgBracket]]:
    """Order sizes that stand before each price of a row, each ending where the row's next one begins."""
    sized = [(price.index, _alone(price.sizes)) for price in columns.prices if price.sizes]
    found: dict[tuple[int, int], Said[KgBracket]] = {}
    for whole in rows if sized else ():
        said = {
            index: size_of_row(whole, sizes) or _blank(whole.cells[index])
            for index, sizes in sized
            if index in whole.cells
        }
        in_kg = _joined(tuple(one.value for one in said.values()), facts)
        for (index, one), kg in zip(said.items(), in_kg, strict=True):
            found[whole.row.index, index] = Said(kg, one.where, one.words)
    return found


def _alone(sizes: Sequence[Column]) -> Columns:
    return Columns((), {size.role: (size,) for size in sizes if size.role is not None})


def _blank(price: Cell) -> Said[Bracket]:
    """A price whose own order size is left blank is asked about: it need not hold for every order."""
    return Said(Bracket(price.text, not_weight="no order size"), at(price), price.text.strip())
