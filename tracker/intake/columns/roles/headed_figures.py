"""What the heads and cells of one column tell: values spread across, words of its own, figures below."""

import re
from collections.abc import Sequence

from tracker.intake.columns.column import Column, vendor_in_head
from tracker.intake.columns.groups.index_headings import speaks_of_index
from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import Head, head_of, looks_priced
from tracker.intake.values.heads.header import Header
from tracker.intake.values.heads.roles import CHARGES, MEASURES, ON_TOP, ORDER_SIZES, Role
from tracker.intake.values.orders.bracket_pieces import PIECES_OR_TONS
from tracker.intake.values.orders.brackets import Bracket, is_bare_order_size, is_open_figure
from tracker.intake.values.orders.counted_orders import counts_orders
from tracker.intake.values.orders.loads import LOADS
from tracker.intake.values.prices.money import price_text
from tracker.intake.values.prices.ton_kinds import ton_under
from tracker.intake.values.times.validity import until_in_head
from tracker.intake.words.lists import phrases

NEVER_PRICES = frozenset(
    {
        Role.FREIGHT,
        Role.ENERGY,
        Role.SHEETING,
        Role.CHARGE,
        Role.DISCOUNT,
        Role.STOCK,
        Role.PACKING,
        Role.SHEETS_WEIGHT,
        Role.YIELD,
        Role.TOTAL,
        Role.CHANGE,
        Role.MARGIN,
        Role.INDEX,
        Role.LEAD_TIME,
        Role.MINIMUM,
    }
)
"""What figures below such words are not, even where they look like prices."""


def tells_offers_apart(column: Column) -> bool:
    """Prices by order size, caliper or delivery are offers each, however their figures add up."""
    return spreads_values(column) or any(says_delivery(head) or head.bracket is not None for head in column.said)


def spreads_values(column: Column) -> bool:
    """The head is a value ('18 pt', '< 5 t', 'SBS'), or a bare number under words that name a property."""
    heads = [head_of(cell) for cell in column.heads]
    lowest = _lowest_value(column, heads)
    if lowest is None or lowest.across in ("period", "width"):
        return False
    for head, said in zip(heads, column.said, strict=True):
        if said is not column.said[-1] and speaks_of_index(said):
            # 'Index' over '16 pt' heads as many figures as 'Our prices' does, though none is offered.
            continue
        if head is not None and head.named and head.role in NEVER_PRICES and not _heads_values(said, column):
            return False
        if head is not None and not head.named and _charged_for(said):
            # 'Freight 18 pt' is what 18 pt costs to carry.
            return False
        if head is not None and head.across == "coating" and said.strength(Role.PROPERTY) >= _NAMES:
            # 'Brightness C1S' is how bright the coated side is.
            return False
        if head is not None and head.across == "grade" and said.strength(Role.INDEX) >= _NAMES:
            # 'SBS index' is a series of the market and no price of SBS.
            return False
        measured = lowest.across in ("caliper", "weight") or lowest.number is not None
        if head is not None and head.across == "grade" and in_a_measures_unit(said) and not measured:
            # 'GC1 (g/m²)' over a column of weights says whose they are; over a head of '230' or '220 g/m² (360 µm)' it
            # says what these are.
            return False
        if lowest.across == "grade" and head is not None and head.named and head.role in MEASURES:
            # A sub-heading 'GC1' right below the head 'g/m²' does not make prices of the weights.
            return False
    return bool(lowest.across) or lowest.number is not None


def _heads_values(said: Header, column: Column) -> bool:
    """'Antal ark' over '500–2 499' counts what is ordered, though by itself it tells how board is packed."""
    lowest = column.said[-1]
    counted = counts_orders(said.text) and said is not lowest
    return (
        says_delivery(said)
        or _loads_weighed(said, lowest)
        or _amounts_by_size(said, column)
        or (bool(counted) and (is_bare_order_size(lowest.text) or is_open_figure(lowest.text)))
    )


def _loads_weighed(said: Header, lowest: Header) -> bool:
    """'Pallet' over 'under 15 t' is how that is ordered, and not how board is packed."""
    loads = said is not lowest and said.bracket is not None and said.bracket.not_weight in LOADS
    return loads and _is_a_weight(lowest.bracket)


def _amounts_by_size(said: Header, column: Column) -> bool:
    """'Importe según cantidad' and 'Total weight of the order' over 'under 3 t' head what board costs in such orders,
    and not what a line comes to."""
    sized = any(_is_a_weight(head.bracket) for head in column.said if head is not said)
    return sized and any(phrases(section).find(said.text) for section in ("line_amounts", "order_words"))


def _is_a_weight(size: Bracket | None) -> bool:
    """'Under 3 t'; the 'ST' of 'under 3 ST' may be pieces elsewhere, and heads a price all the same."""
    return size is not None and size.not_weight in ("", PIECES_OR_TONS) and not size.alone


def in_a_measures_unit(said: Header) -> bool:
    """A unit of basis weight or caliper without a figure in it, and no money."""
    money = said.currency is not None or said.basis is not None
    units = (len(said.weight_units) == 1 and not said.weights) or (said.caliper_unit is not None and not said.calipers)
    return units and not money


def _charged_for(said: Header) -> bool:
    strongest = max((reading.strength for reading in said.roles if reading.role in CHARGES), default=0.0)
    return strongest >= _OUTRIGHT and not says_delivery(said)


_OUTRIGHT = 0.9
"""From this strength on, a word is said outright, also beside a value."""


def names_a_charge(column: Column) -> bool:
    """The words of the head say nothing but a charge: 'Premium USD/ST', 'Freight'."""
    return any(head.strength(role) > _OUTRIGHT for head in column.said for role in ON_TOP)


def heads_prices_of_a_kind(column: Column) -> bool:
    """The head says whose prices stand below it, by which terms, or until when: so they are told from those beside."""
    return _heads_a_vendor(column) or _heads_terms(column) or _heads_a_last_day(column)


def _heads_a_vendor(column: Column) -> bool:
    """A firm's name over figures: two vendors' prices side by side."""
    return bool(column.said) and vendor_in_head(column.said[-1]) is not None


def _heads_terms(column: Column) -> bool:
    """'EXW mill' or 'CIF Laredo' over figures: prices by the terms they come with. The store of 'DAP your warehouse' is
    where they lead, though by itself it says where board lies."""
    lowest = column.said[-1] if column.said else None
    if lowest is None or lowest.delivery is None:
        return False
    term, text = lowest.delivery, lowest.text.strip()
    begun = term.delivered is not None and text.startswith(term.words)
    placed = (Role.PROPERTY,) if begun and (_names_a_site(text) or text == term.words) else ()
    return lowest.role in (None, Role.VENDOR, Role.DELIVERY_TERMS, Role.DESTINATION, *placed)


def _names_a_site(text: str) -> bool:
    ours = (match.value == "place" for match in phrases("leaves_from").find(text))
    return bool(phrases("buyer_sites").find(text)) or any(ours)


def _heads_a_last_day(column: Column) -> bool:
    """'Price valid to 31 Dec 2026' over figures: what board costs until then, and no days."""
    return any(until_in_head(head.text) is not None for head in column.said)


_NAMES = 0.75
"""From this strength on, a word of the head names a property or an index, also beside one that names a board."""


def _lowest_value(column: Column, heads: Sequence[Head | None]) -> Head | None:
    """The lowest head that is no unit: '18 pt' over 'USD/ST' spreads calipers, and '230 g' over 'g/m²' weights."""
    spread = any(head is not None and head.across in ("caliper", "weight") for head in heads[:-1])
    for head, said in zip(reversed(heads), reversed(column.said), strict=True):
        measure = spread and not said.calipers and not said.weights and bool(said.caliper_unit or said.weight_units)
        # '16 pt ($/ST)' is a value and the unit of the prices below it.
        value = head is not None and head.across in ("caliper", "weight")
        if head is None or not head.unit or value or (said.currency is None and not measure):
            return head
    return None


def says_delivery(said: Header) -> bool:
    """'Freight included' over order sizes heads prices, though 'freight' alone heads a charge."""
    return said.delivery is not None and said.delivery.delivered is not None


def heads_delivered(column: Column) -> bool:
    """'inkl. Fracht' over figures like the prices beside it explains them: they are delivered; 'excl. freight EUR/t'
    over such figures tells as well that these are not."""
    said = {head.delivery.delivered for head in column.said if head.delivery is not None}
    return True in said or (False in said and bool(column.currencies) and bool(column.bases))


_NO_MONEY = frozenset({Role.STOCK, Role.PACKING, Role.LEAD_TIME, Role.MINIMUM, *ORDER_SIZES})
"""Quantities and times, which no money is paid for."""


def named_with_money(role: Role | None, column: Column) -> bool:
    """'Ex stock' over 'USD/ST' and 'Making (min. 5 t) €/t': what board costs so, and no quantity or time."""
    return role in _NO_MONEY and bool(column.currencies) and (role is Role.STOCK or bool(column.bases))


def mostly_priced(cells: Sequence[Cell]) -> bool:
    """At least half of the cells are figures; dashes and 'n/a' do not count against them."""
    offering = [cell for cell in cells if not _says_none(cell)]
    return bool(offering) and 2 * sum(looks_priced(cell) for cell in offering) >= len(offering)


def letters_alone(cells: Sequence[Cell]) -> bool:
    """'P' and 'D' below 'T', which is a key's letter there, and no tonne."""
    letters = (isinstance(cell.value, str) and _LETTER.fullmatch(cell.text) is not None for cell in cells)
    return bool(cells) and all(letters)


_LETTER = re.compile(r"\s*[^\W\d_]\s*")


def _says_none(cell: Cell) -> bool:
    price = price_text(cell.text) if isinstance(cell.value, str) else None
    return price is not None and not price.amounts


def by_words(head: Header) -> bool:
    """Some role of the head rests on a word of its own and not on its unit alone."""
    return any(reading.words.strip() != head.text.strip() or reading.strength >= 0.9 for reading in head.roles)


def defines_tons(column: Column, cells: Sequence[Cell]) -> bool:
    """'Ton' over 'long ton', '2000 lb' and '1000 kg' says row by row what prices are per."""
    tons = sum(isinstance(cell.value, str) and ton_under(column.text, cell.text) is not None for cell in cells)
    return 2 * tons > len(cells)
