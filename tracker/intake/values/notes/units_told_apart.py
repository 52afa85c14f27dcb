"""Sentences about what prices are in or per that tell some boards apart: these are no terms of lines."""

from tracker.intake.values.boards.boards_excepted import boards_excepted
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.prices.money import find_price_unit
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.words.lists import phrases


def excepts_of_units(text: str) -> bool:
    """'Prices in MXN, except SBS, in USD' and '…, except the recycled board, which we sell in USD': what prices are in
    and per is told apart where it is read. '…, except SBS, sold ex works' excepts from how they are delivered."""
    apart = any(isinstance(one, SaysBasis | SaysCurrency) and one.grades for one in statements(text))
    found = boards_excepted(text) if apart else None
    if found is None:
        return apart and bool(phrases("exceptions").find(text))
    return find_delivery(found.behind) is None or find_price_unit(found.behind) is not None


def tells_units_apart(text: str) -> bool:
    """'Prices per short ton in USD, those of CRB in CAD' says no more than units of all prices and of some."""
    units = [one for one in statements(text) if isinstance(one, SaysBasis | SaysCurrency)]
    of_some = [one for one in units if one.grades or one.perhaps]
    return 0 < len(of_some) < len(units) == len(statements(text))
