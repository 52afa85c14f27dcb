"""Columns that say how much there is of a board, and not what it weighs or costs."""

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from decimal import Decimal

from tracker.intake.columns.column import Column
from tracker.intake.columns.priced.unnamed import close_by_row
from tracker.intake.columns.roles.headed_figures import by_words
from tracker.intake.grid import Cell
from tracker.intake.tables.figures import figures_by_row
from tracker.intake.tables.headers.heads import PRICE_ROLES
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.orders.masses import Mass, mass_text, mass_units
from tracker.intake.words.lists import phrases
from tracker.trade.quantities import MassUnit


def weighs_the_lot(column: Column, columns: list[Column], samples: Mapping[int, Sequence[Cell]]) -> Column:
    """'kg' beside '€/kg' or 'Price', 'Weight lb' beside 'lb/MSF', 'Weight' over '14,220 lb', 'Lbs' over 18,400: how
    much there is of it, where its figures are no board's price or weight."""
    if column.role is Role.WEIGHT and not column.weight_units and _weigh_lots(samples[column.index]):
        return replace(column, role=Role.STOCK)
    if column.role is Role.WEIGHT and not _on_area(column):
        alone = not any(other.role is Role.WEIGHT for other in columns if other is not column)
        if _mostly_of_no_board(column, samples[column.index], alone=alone):
            return replace(column, role=Role.STOCK)
    if not column.mass_units or column.currencies or any(head.currency for head in column.said):
        return column
    net = column.role is Role.NET_PRICE and _is_net_mass(column)
    if net or (column.role is Role.PRICE and not any(by_words(head) and head.basis is None for head in column.said)):
        others = [other for other in columns if other is not column and other.role in PRICE_ROLES]
        priced = [other for other in others if other.currencies or any(by_words(head) for head in other.said)]
        figures = samples[column.index]
        apart = priced and not any(close_by_row(figures, samples[other.index], 1) for other in priced)
        return replace(column, role=Role.STOCK) if apart and (net or mass_units(column.said[-1].text)) else column
    if column.role is Role.WEIGHT and any(other.role is Role.WEIGHT and _on_area(other) for other in columns):
        heaviest = max(figures_by_row(samples[column.index]).values(), default=Decimal(0))
        # Pounds may be those of a basis weight, kilograms are of no board.
        lots = heaviest > _HEAVIEST or (not column.weight_units and set(column.mass_units) == {MassUnit.KG})
        return replace(column, role=Role.STOCK) if not _on_area(column) and lots else column
    return column


def _mostly_of_no_board(column: Column, cells: Sequence[Cell], *, alone: bool) -> bool:
    """'Lbs' over 18,400 and 950; among weights of board one such figure is a slip, and asked about. What a 'Basis
    weight' is called is never a lot's.

    A lone 'Gewicht' may be in g/m², and binders' board of 3 mm weighs 2,000.
    """
    if any(phrases("weights_of_area").find(head.text) for head in column.said):
        return False
    heaviest = _HEAVIEST if column.mass_units else 3 * _HEAVIEST
    figures = [*figures_by_row(cells).values(), *_in_thousands(column, cells, alone=alone)]
    return 2 * sum(figure > heaviest for figure in figures) > len(figures)


def _in_thousands(column: Column, cells: Sequence[Cell], *, alone: bool) -> list[Decimal]:
    """'38,450' and '15,120' as whole numbers; none where all are weights of board with three decimals, as exports write
    '300,000' g/m² and '77.250' lb. `alone`: no other column says what the board weighs."""
    written = [cell.text.strip() for cell in cells if _IN_THOUSANDS.fullmatch(cell.text.strip())]
    boards = alone and _are_of_boards(written, column.mass_units)
    return [] if boards else [Decimal(re.sub(r"\D", "", text)) for text in written]


def _are_of_boards(written: Sequence[str], units: Sequence[MassUnit]) -> bool:
    """Figures with three decimals of one unit. Those who weigh boards in pounds group thousands by a comma: '77,250' is
    a lot; a point they write before decimals. Between quarters of a gram nobody weighs boards, and kilograms are of no
    board."""
    as_decimals = [Decimal(text.replace(",", ".")) for text in written]
    if units and MassUnit.LB not in units:
        return False
    if not units and all(_FEWEST_GRAMS <= figure <= _HEAVIEST for figure in as_decimals):
        return all(figure % _QUARTER == 0 for figure in as_decimals)
    pounds = all(_LIGHTEST <= figure <= _HEAVIEST_IN_POUNDS for figure in as_decimals)
    # Lots of a truckload look like light boards.
    apart = bool(units) or all(figure > _TRUCKLOAD or figure % _QUARTER == 0 for figure in as_decimals)
    return pounds and apart and not any("," in text for text in written)


_IN_THOUSANDS = re.compile(r"\d{1,3}[.,]\d{3}")
_QUARTER = Decimal("0.25")
_TRUCKLOAD = Decimal(48)
"""Thousands of pounds that no truck carries; common practice, no source."""
_LIGHTEST, _HEAVIEST_IN_POUNDS = Decimal(38), Decimal(450)
"""Pounds of board that is sold, of the lightest per 1,000 ft² and the heaviest per 3,000 ft²; common practice, no
source."""
_FEWEST_GRAMS = Decimal(150)
"""Grams per m² of the lightest board that is sold; common practice, no source."""


def _is_net_mass(column: Column) -> bool:
    """'Net lbs', 'kg netto': so many pounds without their packing, and no price."""
    head = column.said[-1]
    words = next((reading.words for reading in head.roles if reading.role is Role.NET_PRICE), "")
    return bool(words) and bool(mass_units(head.text.replace(words, " ").strip(" .()")))


def _weigh_lots(cells: Sequence[Cell]) -> bool:
    masses = [mass_text(cell.text) if isinstance(cell.value, str) else None for cell in cells]
    return bool(masses) and all(mass is not None and _weighs_a_lot(mass) for mass in masses)


def _weighs_a_lot(mass: Mass) -> bool:
    """No board weighs tons, and none so many pounds or grams."""
    in_tons = {MassUnit.LB, MassUnit.KG}.isdisjoint(mass.units)
    return in_tons or max(amount.value for amount in mass.amounts) > _HEAVIEST


def _on_area(column: Column) -> bool:
    return len(column.weight_units) == 1


_HEAVIEST = Decimal(1500)
"""No board weighs so much in any unit; common practice, no source."""
