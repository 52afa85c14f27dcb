"""Heads that a number begins or tells apart: 'Price 1 | Price 2', each beside its own order size, '2025 $/ST | 2026
$/ST', and '25 USD/ton surcharge included' among the heads of boards."""

import re
from collections.abc import Sequence
from itertools import pairwise

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import PRICE_ROLES, Head, head_of, head_of_words
from tracker.intake.tables.headers.periods import YEAR, without_estimates
from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.prices.money import price_text, price_unit

_COUNTED = re.compile(r"([^\W\d][^\d]*?)\s+([1-9])(?=\s|$|\()([^\d]*)")


def counted_prices(cells: Sequence[Cell]) -> dict[Cell, Head]:
    """The cells of one row that say price and count 1, 2, 3 …, as heads without their number.

    One alone is none: the 5 of 'Price 5 $/kg' is a price.
    """
    found = [(cell, said) for cell in cells if (said := _counted(cell)) is not None]
    numbers = [number for _, (number, _) in found]
    if len(found) < 2 or numbers != list(range(1, len(found) + 1)) or len({words for _, (_, words) in found}) > 1:
        return {}
    head = head_of_words(found[0][1][1])
    return {cell: head for cell, _ in found} if head is not None and head.price else {}


def _counted(cell: Cell) -> tuple[int, str] | None:
    """The number that counts a price's head, and the head's words without it."""
    match = _COUNTED.fullmatch(cell.text.strip()) if isinstance(cell.value, str) else None
    if match is None:
        return None
    roles = header_roles(match.group(1))
    if not roles or roles[0].role not in PRICE_ROLES or roles[0].strength < _OUTRIGHT:
        return None
    return int(match.group(2)), f"{match.group(1)} {match.group(3).strip()}".strip()


_OUTRIGHT = 0.9


_YEAR_AND_UNIT = re.compile(rf"{YEAR.pattern}\s+(?P<unit>\D+)")


def priced_years(cells: Sequence[Cell]) -> dict[Cell, Head]:
    """The cells of one row that are a year and a unit of price among heads: '2026 $/ST' could be a price elsewhere.

    Another year's price beside it says so, or words for what stands below in two columns.
    """
    texts = [cell.text.strip() for cell in cells if isinstance(cell.value, str)]
    if len(texts) != len(cells):
        return {}
    dated = [
        (cell, unit)
        for cell, text in zip(cells, texts, strict=True)
        if (found := _YEAR_AND_UNIT.match(text)) is not None
        and (unit := price_unit(_BRACKETED.sub("", found["unit"]))) is not None
        and unit.currency is not None
        and unit.basis is not None
    ]
    if not dated:
        return {}
    others = [text for cell, text in zip(cells, texts, strict=True) if cell not in [one for one, _ in dated]]
    named = sum((head := head_of_words(text)) is not None and head.named for text in others)
    if named < _FEWEST_NAMED and len(dated) < _FEWEST_NAMED:
        return {}
    return {cell: Head(Role.PRICE, named=True, unit=True) for cell, _ in dated}


_BRACKETED = re.compile(r"\([^()]*\)")
_FEWEST_NAMED = 2


def years_in_turn(cells: Sequence[Cell]) -> dict[Cell, Head]:
    """The numbers of '2024 | 2025 | 2026 | 2027 est.' among the heads of boards: years, one after the other."""
    years = {cell: year for cell in cells if (year := _year(cell))}
    numbers = [cell for cell in years if not isinstance(cell.value, str)]
    if not numbers or len(years) < _FEWEST_YEARS or any(b - a != 1 for a, b in pairwise(years.values())):
        return {}
    named = sum((head := head_of(cell)) is not None and head.named for cell in cells if cell not in years)
    return {cell: Head(across="period") for cell in numbers} if named >= _FEWEST_NAMED else {}


_FEWEST_YEARS = 2


def _year(cell: Cell) -> int:
    """The year that a cell is, and nothing else; 0 for none."""
    found = YEAR.search(cell.text)
    return int(found[0]) if found is not None and YEAR.fullmatch(without_estimates(cell.text.strip())) else 0


def amounts_told(cells: Sequence[Cell]) -> dict[Cell, Head]:
    """'25 USD/ton surcharge included' beside 'Grade | Caliper | Price' heads what is told of an amount, where among the
    boards themselves it would be a price with words behind it."""
    heads = {cell: head_of(cell) for cell in cells}
    told = [cell for cell, head in heads.items() if head is None and _tells_of_money(cell)]
    others = [head for cell, head in heads.items() if cell not in told]
    if len(told) != 1 or len(others) < _FEWEST_NAMED or not all(head is not None and head.named for head in others):
        return {}
    return {told[0]: Head()} if any(head is not None and head.board for head in others) else {}


def _tells_of_money(cell: Cell) -> bool:
    price = price_text(cell.text) if isinstance(cell.value, str) else None
    if price is None or not price.amounts:
        return False
    # 'Incl. freight $45/ST' is an amount of freight, though as a price's own words it would leave none over.
    return any(map(str.isalpha, price.rest)) or bool(charges_named(cell.text))
