"""Values as vendors write them: decimals of a few places, never binary floats."""

from decimal import Decimal
from fractions import Fraction

from hypothesis import strategies as st

from tracker.trade.basis import Basis, BoardMeasure, mass_of
from tracker.trade.exact import KG_PER_TONNE
from tracker.trade.quantities import Exact


def decimals(least: str, most: str, places: int = 4) -> st.SearchStrategy[Decimal]:
    return st.decimals(Decimal(least), Decimal(most), places=places, allow_nan=False, allow_infinity=False)


prices = decimals("0.0001", "1000000")
grammages = decimals("50", "2000")
calipers_um = decimals("100", "2000")
sheets_mm = st.tuples(decimals("100", "3000", 2), decimals("100", "3000", 2))
measures = st.builds(BoardMeasure, grammages, sheets_mm)


def price_on(per_tonne_price: Exact, basis: Basis, board: BoardMeasure) -> Fraction:
    """A price per tonne expressed on another basis: the inverse of per_tonne, for a board that is known."""
    mass = mass_of(basis, board)
    assert mass is not None
    return Fraction(per_tonne_price) * mass / KG_PER_TONNE
