"""What each column of a table holds, once header words, cells and formats have been heard."""

import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import StrEnum
from functools import cached_property, lru_cache

from tracker.intake.grid import Cell
from tracker.intake.values.boards.caliper import CaliperReading
from tracker.intake.values.boards.grade import GradeReading
from tracker.intake.values.boards.reams import Ream
from tracker.intake.values.boards.weight import WeightReading
from tracker.intake.values.figures.sheetsize import LengthUnit, SheetSize
from tracker.intake.values.firms.bidders import behind_bid
from tracker.intake.values.firms.company import company_name
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.heads.header import Header, leads_to_places
from tracker.intake.values.heads.roles import ORDER_SIZES, Role
from tracker.intake.values.heads.weighed import weighing_units
from tracker.intake.values.orders.brackets import Bracket
from tracker.intake.values.orders.loads import LOADS
from tracker.intake.values.orders.masses import find_mass_units
from tracker.intake.values.prices.basis import BasisReading, basis_in_a_word, basis_span, hints_at_tonne
from tracker.intake.values.prices.currency import CurrencyReading
from tracker.intake.values.prices.money import price_unit
from tracker.intake.values.times.lead import LeadTime, LeadUnit
from tracker.intake.values.times.lead_unread import LeadUnread
from tracker.intake.values.times.validity import Validity
from tracker.intake.words.lists import phrases
from tracker.trade.basis import Basis
from tracker.trade.quantities import CaliperUnit, MassUnit, WeightUnit

_BRACKETED = re.compile(r"[(\[]([^)\]]*)[)\]]")


@dataclass(frozen=True)
class Column:
    """One column: its role, and everything that its header cells say of units, money and board.

    `heads` are the header cells from the top down, `said` what each of them says in the same order; `holds` are the
    names of surcharges that its prices have in them, as those beside it show. What follows from the heads is worked out
    once, since every row asks for it.
    """

    index: int
    role: Role | None
    heads: tuple[Cell, ...] = ()
    said: tuple[Header, ...] = ()
    sure: bool = True
    lines: tuple[Cell, ...] = ()
    vendor: str = ""
    holds: tuple[str, ...] = ()

    @cached_property
    def text(self) -> str:
        return " ".join(" ".join(cell.text.split()) for cell in self.heads)

    def head_saying(self, words: str) -> Cell:
        """The header cell, or line above, that has these words in it; the lowest head where none has."""
        saying = [cell for cell, head in zip(self.heads, self.said, strict=True) if words and words in head.text]
        saying += [cell for cell in self.lines if words and words in cell.text]
        return next(iter(saying), self.heads[-1])

    @cached_property
    def currencies(self) -> tuple[CurrencyReading, ...]:
        return tuple(head.currency for head in self.said if head.currency is not None)

    @cached_property
    def bases(self) -> tuple[BasisReading, ...]:
        return tuple(basis for head in self.said if (basis := basis_in_head(head)) is not None)

    @cached_property
    def caliper_unit(self) -> CaliperUnit | None:
        return next((head.caliper_unit for head in reversed(self.said) if head.caliper_unit is not None), None)

    @cached_property
    def weight_units(self) -> tuple[WeightUnit, ...]:
        """The narrowest that any header cell says, the lowest of such: 'Weight (lb)' over 'lb/MSF' is lb/MSF."""
        named = [head.weight_units for head in self.said if head.weight_units]
        return min(reversed(named), key=len) if named else ()

    @cached_property
    def ream(self) -> Ream | None:
        """The ream that the heads name by its sheet, where they name no other unit of basis weight."""
        return next((head.ream for head in reversed(self.said) if head.ream), None) if not self.weight_units else None

    @cached_property
    def mass_units(self) -> tuple[MassUnit, ...]:
        named = next((head.mass_units for head in reversed(self.said) if head.mass_units and not _weighs(head)), ())
        if named:
            return named
        # 'To below (lb)': 'to' is a ton in German, so the unit in brackets is asked alone.
        bracketed = [find_mass_units(inside) for head in self.said for inside in _BRACKETED.findall(head.text)]
        return next((units for units in reversed(bracketed) if units), ())

    @cached_property
    def lone_t(self) -> bool:
        """Whether its unit of weight is written 't', the symbol of the tonne: 'From (t)', 'Order size, t'."""
        bracketed = [inside for head in self.said for inside in _BRACKETED.findall(head.text)]
        last = [word for head in self.said for word in head.text.split()[-1:]]
        return any(hints_at_tonne(text) for text in bracketed or last)

    @cached_property
    def lead_unit(self) -> LeadUnit | None:
        return next((head.lead_unit for head in reversed(self.said) if head.lead_unit is not None), None)

    @cached_property
    def length_unit(self) -> LengthUnit | None:
        return next((head.length_unit for head in reversed(self.said) if head.length_unit is not None), None)

    @cached_property
    def percent(self) -> bool:
        return any(head.percent for head in self.said)


def _weighs(head: Header) -> bool:
    """'Basis weight, lb/MSF' in a corner above order sizes: the pounds of an area of board, and of no order."""
    of_area = len(head.weight_units) == 1 and weighing_units(head.text) == head.weight_units
    return of_area and head.strength(Role.WEIGHT) > max(map(head.strength, _QUANTITIES))


_QUANTITIES = (*ORDER_SIZES, Role.MINIMUM, Role.STOCK, Role.TOTAL)


@lru_cache(maxsize=4096)
def basis_in_head(head: Header) -> BasisReading | None:
    """What a header says its price is per; 'Your price a ST' says so too, once the words for price are taken off."""
    if head.basis is not None or head.role not in (Role.PRICE, Role.NET_PRICE):
        return head.basis
    named = basis_in_a_word(head.text)
    if named is not None:
        return named
    if head.bracket is not None and head.bracket.not_weight in LOADS and basis_span(head.text) is None:
        # 'Pris bil' and 'Truck price' are prices of what is ordered by the load.
        return None
    rest = head.text.replace(head.roles[0].words, " ", 1)
    unit = price_unit(rest) if rest != head.text else None
    if unit is None or phrases("forms").whole(unit.words.strip(" ,;:-–")) is not None:
        return None
    return None if leads_to_places(head.text) else unit.basis


def may_name_form(head: Header, basis: BasisReading) -> bool:
    """'Roll price', 'Sheet price' and 'Precio bobina', which no 'per' or '/' parts: what the board comes in, or what
    it is priced by."""
    piece = basis.foreign == "roll" or basis.bases == {Basis.SHEET}
    return piece and head.currency is None and basis_span(head.text) is None


@lru_cache(maxsize=1024)
def vendor_in_head(head: Header) -> str | None:
    """The firm that a header names, with its price's currency and unit taken off; None for none.

    'MOQ KG' and 'Stock KG' are no limited partnerships: a head that names what its column holds names no firm, and
    nor does one that ends in a unit. 'Supplier: Tarnmoor Board' names one behind its label.
    """
    named = [one for one in head.roles if one.strength >= 0.8 and one.role not in (Role.PRODUCT, Role.GRADE)]
    labels = (Role.PRICE, Role.VENDOR) if ":" in head.text else (Role.PRICE,)
    if any(one.role not in labels for one in named):
        return None
    rest = head.text
    for said in (head.currency, head.basis):
        # From the end: the t of '£/t' is not the t of 'Mirrowgate'.
        before, _, after = rest.rpartition(said.words) if said is not None else ("", "", rest)
        rest = f"{before} {after}".strip()
    rest = rest.strip(" /()[]\n")
    firm = company_name(behind_bid(rest) or "") or company_name(rest)
    if "&" in rest or not find_mass_units(rest):
        return firm
    # 'Kartonfabrik Ellerbach KG' is a firm without its last word too.
    return firm if company_name(rest.removesuffix(" KG")) is not None else None


class Kind(StrEnum):
    """Which of several prices beside each other a price column holds."""

    OFFER = "offer"
    LIST = "list"
    PREVIOUS = "previous"
    LATER = "later"
    ALL_IN = "all-in"
    TAXED = "tax-included"
    COST = "cost"


@dataclass(frozen=True, slots=True)
class PriceColumn:
    """A column of prices with what its own header says of the board, the order size and the delivery.

    `sheets`: the one sheet size that the header says, in every unit that it may be in.
    `label`: words of the header that are none of these, such as a place; they tell this price from those beside it.
    `unexplained`: the header does not call it a price; its figures stay close to one beside it. `ranged`: it holds an
    end of ranges of prices.
    """

    column: Column
    kind: Kind = Kind.OFFER
    delivery: Delivery | None = None
    until: Validity | None = None
    lead: LeadTime | LeadUnread | None = None
    bracket: Bracket | None = None
    bracket_head: Cell | None = None
    caliper: CaliperReading | None = None
    weights: tuple[WeightReading, ...] = ()
    sheets: tuple[SheetSize, ...] = ()
    grade: GradeReading | None = None
    grade_words: str = ""
    vendor: str | None = None
    label: str = ""
    indicative: bool = False
    unexplained: bool = False
    ranged: bool = False
    pair: int | None = None
    """Which of the two prices in each of its cells is in force, by a head like 'old / new €/t'."""
    sizes: tuple[Column, ...] = ()
    """The columns that hold this price's own order size, row by row."""
    lender: Column | None = None
    """The price column whose head says the unit that this one's head leaves out."""
    index: int = field(init=False, compare=False)
    """The column's own, kept here because it is asked for a dozen times a row."""

    def __post_init__(self) -> None:
        object.__setattr__(self, "index", self.column.index)


@dataclass
class Columns:
    """All columns of a table: its prices, and the columns by role."""

    prices: tuple[PriceColumn, ...]
    by_role: dict[Role, tuple[Column, ...]] = field(default_factory=dict)
    doubt: str = ""
    """Why it is not certain which column holds the price; '' where it is."""
    _found: dict[tuple[Role, ...], tuple[Column, ...]] = field(default_factory=dict, repr=False)

    def of(self, *roles: Role) -> tuple[Column, ...]:
        """The columns with one of these roles, role by role."""
        found = self._found.get(roles)
        if found is None:
            found = tuple(column for role in roles for column in self.by_role.get(role, ()))
            self._found[roles] = found
        return found

    def first(self, *roles: Role) -> Column | None:
        found = self.of(*roles)
        return found[0] if found else None

    def remarks_in(self, cells: Mapping[int, Cell]) -> list[Cell]:
        """The words that a row has in its columns of remarks; asked for by half a dozen readers of every row."""
        found = [cells[index] for index in self._of_remarks if index in cells]
        return [cell for cell in found if isinstance(cell.value, str)] if found else found

    @cached_property
    def _of_remarks(self) -> tuple[int, ...]:
        return tuple(column.index for column in self.of(Role.REMARKS))

    @cached_property
    def board(self) -> tuple[Column, ...]:
        """The columns that describe the board."""
        return self.of(Role.PRODUCT, Role.GRADE, Role.COATING, Role.CALIPER, Role.WEIGHT, Role.SHEET_SIZE, Role.FORM)
