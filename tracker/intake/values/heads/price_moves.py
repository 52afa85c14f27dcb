"""Signs at the head of a column that tell by how much prices moved: '+/- €/t', 'Δ USD/ST'."""

from tracker.intake.values.heads.roles import Role
from tracker.intake.values.prices.money import find_price_unit
from tracker.intake.words.phrases import Found


def moves_money(sign: Found[str], text: str) -> bool:
    """'+/- €/t' is by how much a price went up or down; '+/- g/m²' is a tolerance."""
    unit = find_price_unit(text) if sign.value == Role.CHANGE else None
    return unit is not None and unit.currency is not None
