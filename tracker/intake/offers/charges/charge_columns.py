"""Which of a table's columns of charges come on top of a price: not what it bears, what sheets bear where it is of
rolls, what small orders bear; and of several that exclude each other it is not known which."""

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from tracker.intake.columns.column import Column, Columns, PriceColumn
from tracker.intake.columns.sizes.forms import form_in
from tracker.intake.grid import Cell
from tracker.intake.offers.charges.borne_charges import beside_mill_price, borne_by, figure_in, led_to_by
from tracker.intake.offers.charges.charge_units import may_share_unit
from tracker.intake.offers.charges.relief import relieved_columns
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.notes.scope import Scope
from tracker.intake.tables.headers.periods import without_periods
from tracker.intake.values.freight.charge_heads import charge_header
from tracker.intake.values.freight.charge_names import charges_named, same_charge
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.freight.relieved_charges import NoCharge, names_share
from tracker.intake.values.heads.header import Header
from tracker.intake.values.heads.roles import ON_TOP, Role
from tracker.intake.values.orders.small_orders import of_sized_orders
from tracker.intake.values.prices.shares import is_share_cut_short
from tracker.intake.values.times.dates import find_dates
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import joined, phrases
from tracker.trade.basis import BY_SHEET

_FORMS = _ROLL, _SHEET = "roll", "sheet"
_ROUNDED = Decimal("0.006")


@dataclass(frozen=True, slots=True)
class ChargeColumns:
    """Columns of charges by what they are for one price, the rest of which comes on top of it.

    `borne`: in it already, or charged for another form of board that has a price of its own; `open`: whether, or which
    of them, it bears is not certain; `optional`: charged for another form, or only if ordered; `of_some_orders`: for
    orders of some size.
    `freight_borne`: the price is the delivered one beside another that is not, so that no note's freight is added.
    `unread`: taken for prices, though a charge's name heads them. `held`: the names of what the price has in it.
    """

    borne: frozenset[int] = frozenset()
    open: frozenset[int] = frozenset()
    optional: frozenset[int] = frozenset()
    of_some_orders: frozenset[int] = frozenset()
    freight_borne: bool = False
    unread: tuple[Column, ...] = ()
    held: tuple[str, ...] = ()

    def has(self, charge: ChargeWords) -> bool:
        """Whether a charge that is told of is in the price already."""
        return any(same_charge(charge.kind, charge.label, name) for name in self.held)


_NONE_CHARGED = {borne: ChargeColumns(freight_borne=borne) for borne in (False, True)}


def charge_columns(
    price: PriceColumn, offers: Sequence[PriceColumn], cells: dict[int, Cell], columns: Columns,
    free: Iterable[NoCharge], draft: Draft, left_to_buyer: Mapping[int, bool | None],
    scope: Scope,
) -> ChargeColumns:  # fmt: skip
    """What the columns of charges are for the price of this draft. `left_to_buyer`: which of them are charged only if
    ordered, None where that is not certain."""
    charged = [column for column in columns.of(*ON_TOP) if _has_figure(cells, column)]
    unread = _unread_charges(price, columns, cells)
    if not charged:
        return replace(_NONE_CHARGED[beside_mill_price(price, offers)], unread=unread, held=price.column.holds)
    led, perhaps_led = led_to_by(price, cells, columns, (words.text for level in scope.levels for words in level.texts))
    borne = borne_by(price, offers, cells, columns) | relieved_columns(columns, free, offers) | led
    form = _FormOfPrice(price, offers, cells, draft)
    other = frozenset(column.index for column in charged if form.is_other(column))
    chosen = frozenset(column.index for column in charged if left_to_buyer.get(column.index)) - borne
    some = frozenset(column.index for column in charged if column.role is Role.CHARGE and of_sized_orders(column.text))
    sums = frozenset(column.index for column in charged if column.index in borne and _is_whole(cells, column, draft))
    left = [column for column in charged if column.index not in borne | other | some | chosen]
    unsure = {column.index for column in left if of_sized_orders(column.text) or _may_be_borne(column, draft)}
    unsure |= {column.index for column in left if form.may_be_other(column) or _may_be_a_change(column, columns)}
    unsure |= {column.index for column in left if left_to_buyer.get(column.index, False) is None}
    unsure |= {column.index for column in left if _is_cut_short(column) or column.index in perhaps_led}
    optional = chosen | (other - borne if form.is_only else frozenset())
    return ChargeColumns(
        (borne | other) - sums - optional, (sums | unsure | _exclude_each_other(left)) - chosen, optional, some - borne,
        beside_mill_price(price, offers), unread, price.column.holds,
    )  # fmt: skip


def _unread_charges(price: PriceColumn, columns: Columns, cells: dict[int, Cell]) -> tuple[Column, ...]:
    """Columns that were taken for prices though a charge's name heads them: 'Energiezuschlag' over 'Preis lt. Liste'.
    What they come to is not known, and without it nor is the delivered cost."""
    others = [
        other.column for other in columns.prices if other.index != price.index and _has_figure(cells, other.column)
    ]
    return tuple(
        column
        for column in others
        if not (column.currencies or column.bases) and any(map(_names_charge, column.said[:-1]))
    )


def _names_charge(head: Header) -> bool:
    """'Freight included' over order sizes heads delivered prices."""
    return head.role in ON_TOP and find_delivery(head.text) is None


def _has_figure(cells: dict[int, Cell], column: Column) -> bool:
    return column.index in cells and any(map(str.isdigit, cells[column.index].text))


def _is_whole(cells: dict[int, Cell], column: Column, draft: Draft) -> bool:
    """1,215 under 'incl. energy' beside 1,180 is what the board costs with it, and not the energy in the price."""
    figure = figure_in(cells, column)
    return figure is not None and "%" not in column.text and not may_share_unit(figure, draft.price, freight=False)


def _may_be_borne(column: Column, draft: Draft) -> bool:
    """'Freight share' beside a price with freight."""
    return column.role is Role.FREIGHT and draft.delivered is True and names_share(column.text)


def _is_cut_short(column: Column) -> bool:
    """'EFS %': letters that name no charge that is known."""
    return is_share_cut_short(column.text) and not charges_named(column.text)


def _may_be_a_change(column: Column, columns: Columns) -> bool:
    """'Old SEK/t | New EUR/t | Up EUR/t': a small figure under no word for a charge, where no sum compares the prices,
    may be what comes on top or by how much the price went up; so may one under 'From January 2027 $/ST', which holds
    from then on, and any charge that is announced."""
    if phrases("rises_to_come").find(column.text):
        return True
    if column.sure or column.role is not Role.CHARGE or charges_named(column.text):
        return False
    if not _is_called_a_charge(column):
        # 'Zorb USD/ST': what is paid for, and by whom, nothing says.
        return True
    if without_periods(column.text) != column.text or find_dates(column.text):
        return True
    return any(_in_other_money(column, old) for old in columns.of(Role.PREVIOUS_PRICE))


def _is_called_a_charge(column: Column) -> bool:
    """By its name, also a misspelt one, or by a word for fees and surcharges."""
    named = any(head.strength(role) for head in column.said for role in ON_TOP)
    called = joined("surcharge_words", "charge_nouns").find(column.text)
    return named or charge_header(column.text) is not None or bool(called)


def _in_other_money(column: Column, other: Column) -> bool:
    money, others = ({reading.words for reading in each.currencies} for each in (column, other))
    units, other_units = ({reading.bases for reading in each.bases} for each in (column, other))
    return money != others or units != other_units


def _exclude_each_other(charged: Sequence[Column]) -> frozenset[int]:
    """'Freight Chicago | Freight Dallas', 'Energie alt | Energie neu': one of them will be charged. 'Ocean freight' and
    'inland freight' are two legs of one way, and 'energy' and 'fuel' two charges."""
    freights = [column for column in charged if column.role is Role.FREIGHT]
    legs = [column for column in freights if phrases("freight_legs").find(column.text)]
    others = [column for column in charged if column.role in (Role.ENERGY, Role.SHEETING)]
    named = Counter(map(_name, others))
    alike = [column for column in others if named[_name(column)] > 1]
    rivals = freights if len(freights) - len(legs) > 1 else []
    return frozenset(column.index for column in (*rivals, *alike))


def _name(column: Column) -> tuple[Role | None, str]:
    head = charge_header(column.text)
    return column.role, fold(head.label) if head is not None else fold(column.text)


class _FormOfPrice:
    """Whether a price is of rolls or of sheets, '' where neither is said, and which charges are those of the other."""

    def __init__(self, price: PriceColumn, offers: Sequence[PriceColumn], cells: dict[int, Cell], draft: Draft) -> None:
        self._cells, self._price = cells, price
        self._rolls = [other for other in offers if form_in(other.column.text) == _ROLL]
        self.is_only = len({form_in(other.column.text) for other in offers}) < len(_FORMS)
        self._form = _SHEET if draft.basis in BY_SHEET else form_in(price.column.text)

    def is_other(self, column: Column) -> bool:
        """A charge that only the other form bears; of the sheeting that is in the price of sheets beside that of rolls,
        too."""
        form = _form_of_charge(column)
        if form == _SHEET and self._form == _SHEET and column.role is Role.SHEETING:
            return self._adds_up(column)
        return bool(form and self._form) and form != self._form

    def may_be_other(self, column: Column) -> bool:
        """'Sheeting (sheets only)' beside a price of either, and 'Sheeting' where sheets have a price of their own."""
        form = _form_of_charge(column)
        if column.role is not Role.SHEETING:
            return bool(form) and not self._form
        if phrases("only_these").find(column.text):
            return not self._form
        return self._form == _SHEET and bool(self._rolls)

    def _adds_up(self, charge: Column) -> bool:
        whole, added = figure_in(self._cells, self._price.column), figure_in(self._cells, charge)
        starts = [start for roll in self._rolls if (start := figure_in(self._cells, roll.column)) is not None]
        if whole is None or added is None:
            return False
        return any(abs(start + added - whole) <= _ROUNDED for start in starts)


def _form_of_charge(column: Column) -> str:
    form = form_in(column.text)
    if column.role is Role.SHEETING and form != _ROLL:
        return "" if phrases("roll_work").find(column.text) else _SHEET
    return form
