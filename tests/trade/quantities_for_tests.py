"""Values as vendors write them: decimals of a few places, never binary floats."""

from decimal import Decimal

from hypothesis import strategies as st

from tracker.trade.basis import BoardMeasure


def decimals(least: str, most: str, places: int = 4) -> st.SearchStrategy[Decimal]:
    return st.decimals(Decimal(least), Decimal(most), places=places, allow_nan=False, allow_infinity=False)


prices = decimals("0.0001", "1000000")
grammages = decimals("50", "2000")
calipers_um = decimals("100", "2000")
sheets_mm = st.tuples(decimals("100", "3000", 2), decimals("100", "3000", 2))
measures = st.builds(BoardMeasure, grammages, sheets_mm)
