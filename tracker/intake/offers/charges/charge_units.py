"""Whether a charge that names no unit can be per the price's own: freight of 62 beside 48.20 per MSF is per ton."""

from decimal import Decimal

from tracker.intake.words.lists import phrases

_MOST, _LEAST, _LEAST_FREIGHT = Decimal("0.5"), Decimal("0.0002"), Decimal("0.004")
"""Parts of a price that no charge exceeds, and that no charge and no freight fall short of; common practice, no
source."""


def may_share_unit(amount: Decimal, price: Decimal | None, *, freight: bool, label: str = "") -> bool:
    """A charge of more than half a price, and one of next to nothing, are per another unit than the price is; so may be
    what is charged by the pallet or the order, as 'Palettengebühr | 12' below prices per tonne."""
    if phrases("charged_apiece").find(label):
        return False
    if price is None or not price:
        return True
    least = (_LEAST_FREIGHT if freight else _LEAST) * price
    return least <= amount <= _MOST * price
