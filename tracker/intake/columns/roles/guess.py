"""The role of a column whose header says nothing known, by its cells alone: only what explains itself counts."""

from collections.abc import Callable, Sequence
from decimal import Decimal

from tracker.intake.columns.column import Column
from tracker.intake.columns.groups.places import are_towns
from tracker.intake.columns.roles.fits import fit
from tracker.intake.grid import Cell
from tracker.intake.tables.headerless.headless import says_price
from tracker.intake.tables.headerless.item_marks import is_item_mark
from tracker.intake.values.boards.caliper import caliper_unit, find_calipers
from tracker.intake.values.boards.grade import coated_count, names_grade
from tracker.intake.values.boards.weight import find_weights, weight_units
from tracker.intake.values.figures.formats import format_words
from tracker.intake.values.figures.numbers import number_readings
from tracker.intake.values.firms.company import company_name
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.orders.brackets import bracket_text, is_bare_order_size
from tracker.intake.values.prices.money_ticked import money_ticked
from tracker.intake.words.lists import phrases
from tracker.trade.quantities import MassUnit

_ENOUGH = 0.6
# In this order: a text that is a currency is never a board, a bracket is never a lead time.
_BY_CELLS = (
    Role.CURRENCY,
    Role.BASIS,
    Role.SHEET_SIZE,
    Role.LEAD_TIME,
    Role.BRACKET,
    Role.DELIVERY_TERMS,
    Role.COATING,
)


def role_by_cells(column: Column, cells: Sequence[Cell]) -> Role | None:
    """The one role that most cells explain by themselves, or None: bare figures explain nothing."""
    if not cells:
        return None
    if any(phrases("minimum").find(head.text) for head in column.said) and fit(Role.MINIMUM, column, cells) >= _ENOUGH:
        # 'Min. kvantitet', 'Ped. mín.': one word of the head says it, however the other is cut short.
        return Role.MINIMUM
    if all(money_ticked(column.text, cell.text) is not None for cell in cells):
        return Role.CURRENCY
    masses = column.mass_units
    # The header's units stay out of it: a bare 63 is no lead time because some letter above it could mean days.
    column = Column(column.index, None, column.heads)
    texts = [cell for cell in cells if isinstance(cell.value, str) and not number_readings(cell.text)]
    if _share(cells, says_price) >= _ENOUGH:
        return Role.PRICE
    if not column.heads and all(map(is_item_mark, cells)):
        return Role.ITEM
    if sizes_orders(column, cells):
        return Role.BRACKET
    if (measure := _shown_as(cells)) is not None:
        return measure
    if not texts or len(texts) < _ENOUGH * len(cells):
        return None
    if _share(texts, lambda cell: _only_bracket(cell, masses)) >= _ENOUGH:
        return Role.BRACKET
    if _share(texts, _only_caliper) >= _ENOUGH:
        return Role.CALIPER
    if _share(texts, _only_weight) >= _ENOUGH:
        return Role.WEIGHT
    if _share(texts, _is_firm) >= _ENOUGH:
        return Role.VENDOR
    if fit(Role.GRADE, column, texts) >= _ENOUGH / 2:
        return Role.PRODUCT
    if all(phrases("basis").whole(cell.text) in ("roll", "sheet") for cell in texts):
        # Under no word for a unit or an order, 'reels' is the form that the board comes in.
        return Role.FORM
    if names_grade(column.text) and are_towns([cell.text for cell in texts]):
        # Below 'GC1'; under another head, or none, 'Aurora (PE)' may be a board.
        return Role.DESTINATION
    for role in _BY_CELLS:
        if role is Role.COATING and not _share(texts, _names_coating):
            # 'No' under 'Alternative?' answers another question.
            continue
        if role is Role.BRACKET and _share(texts, _bare_weight) >= _ENOUGH:
            continue
        if fit(role, column, texts) >= _ENOUGH:
            return role
    return Role.PRODUCT if fit(Role.PRODUCT, column, texts) >= _ENOUGH and not column.heads else None


def _shown_as(cells: Sequence[Cell]) -> Role | None:
    """The measure whose unit the number formats of all figures show: '0 "pt"', '0 "lb/MSF"'."""
    shown = {format_words(cell.number_format) if isinstance(cell.value, Decimal) else "" for cell in cells}
    if all(caliper_unit(words) is not None for words in shown):
        return Role.CALIPER
    return Role.WEIGHT if all(len(weight_units(words)) == 1 for words in shown) else None


def sizes_orders(column: Column, cells: Sequence[Cell]) -> bool:
    """Several texts, each an order size with its sign or two limits, which is what no board is called.

    Bare figures are where one of them says in words where it begins or ends: '4 to under 12', '12 and up'.
    """
    texts = [cell for cell in cells if isinstance(cell.value, str)]
    if not len(texts) == len(cells) > 1:
        return False
    if all(_only_bracket(cell, column.mass_units) for cell in texts):
        return True
    said = {match.value for cell in texts for match in phrases("bracket").find(cell.text)}
    return all(is_bare_order_size(cell.text) for cell in texts) and bool(said & _LIMITS)


_LIMITS = frozenset({"below", "from", "above"})


def _share(cells: Sequence[Cell], test: Callable[[Cell], bool]) -> float:
    return sum(test(cell) for cell in cells) / len(cells)


def _only_bracket(cell: Cell, masses: tuple[MassUnit, ...]) -> bool:
    """'from 5 t' or '5,000-20,000 lb', or 'under 5,000' below pounds; a bare '71 lb' could be a basis weight."""
    bracket = bracket_text(cell.text, masses)
    return bracket is not None and not bracket.alone and not bracket.not_weight


def _bare_weight(cell: Cell) -> bool:
    """'2 t' under no word for an order size may be a smallest order, a load or a stock."""
    bracket = bracket_text(cell.text)
    return bracket is not None and bracket.alone and not bracket.not_weight


def _only_caliper(cell: Cell) -> bool:
    return len(cell.text) <= 16 and bool(find_calipers(cell.text)) and not names_grade(cell.text)


def _only_weight(cell: Cell) -> bool:
    return len(cell.text) <= 24 and bool(find_weights(cell.text)) and not names_grade(cell.text)


def _is_firm(cell: Cell) -> bool:
    """'Larkfell Board Inc.', and nothing beside it."""
    return company_name(cell.text) == cell.text.strip()


def _names_coating(cell: Cell) -> bool:
    return coated_count(cell.text) is None
