"""One footing for every offer: per tonne and per 1,000 ft², as quoted and delivered, in the quoted currency."""

from dataclasses import dataclass
from fractions import Fraction

from tracker.trade.basis import Basis, BoardMeasure, per_msf, per_tonne
from tracker.trade.offer import Charge, Offer


@dataclass(frozen=True, slots=True)
class Footing:
    """An offer's price on the two common bases, exact; None where it can't be known."""

    per_tonne: Fraction | None
    per_msf: Fraction | None
    delivered_per_tonne: Fraction | None
    delivered_per_msf: Fraction | None


def footing(offer: Offer) -> Footing:
    """Both common bases of the price alone, and with its charges where delivered cost is really known."""
    if offer.price is None or offer.basis is None:
        return Footing(None, None, None, None)
    measure = offer.measure
    tonne = per_tonne(offer.price, offer.basis, measure)
    msf = per_msf(offer.price, offer.basis, measure)
    if not delivered_cost_known(offer):
        return Footing(tonne, msf, None, None)
    return Footing(
        tonne,
        msf,
        with_charges(tonne, offer.charges, Basis.TONNE, measure),
        with_charges(msf, offer.charges, Basis.MSF, measure),
    )


def delivered_cost_known(offer: Offer) -> bool:
    """Price includes freight, or freight stands among the charges, and every charge is in the price's currency."""
    reaches_the_dock = offer.delivered is True or any(charge.freight for charge in offer.charges)
    return reaches_the_dock and all(charge.currency in (None, offer.currency) for charge in offer.charges)


def with_charges(
    price: Fraction | None, charges: tuple[Charge, ...], basis: Basis, board: BoardMeasure
) -> Fraction | None:
    """A price per tonne or per MSF with its charges added, each by its own basis; per cent is of the price alone."""
    if price is None:
        return None
    total = price
    convert = per_tonne if basis is Basis.TONNE else per_msf
    for charge in charges:
        if charge.basis is None:
            total += price * Fraction(charge.price) / 100
            continue
        added = convert(charge.price, charge.basis, board)
        if added is None:
            return None
        total += added
    return total
