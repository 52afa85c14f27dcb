"""Order sizes in thousands by a letter: '10M to 20M' and '40k+' below pounds, which 'M = 1,000 lb' may give them."""

import re
from decimal import Decimal

from tracker.intake.values.orders.masses import find_mass_units
from tracker.trade.quantities import MassUnit

_COUNT = r"(?<![\w.,])(?P<count>\d{1,3}(?:\.\d)?)"
_BARE = re.compile(rf"{_COUNT}\s?[Mk](?!\w)(?!\s*(?:lb|#|pound|kg))")
_FIRST_OF_TWO = re.compile(rf"{_COUNT}(?=\s*(?:[-–]|to)\s*\d{{1,3}}\s?(?P<letter>[Mk])(?!\w))")
_GIVEN = re.compile(r"\bM\s*=\s*1[,.' ]?000\s*(?P<unit>[^\W\d_]+|#)")


def bare_thousands_in_full(text: str) -> str:
    """'10000 to 20000' for '10M to 20M' and for '10-20M'; a letter before its unit, 'M lb', is left to that."""
    return _BARE.sub(_in_full, _FIRST_OF_TWO.sub(r"\g<count>\g<letter>", text))


def _in_full(thousands: re.Match[str]) -> str:
    return f"{Decimal(thousands['count']) * 1000:f}".removesuffix(".0")


def unit_of_thousands(text: str) -> tuple[MassUnit, ...]:
    """The pounds of 'In the order sizes below M = 1,000 lb'; () where M stands for no weight."""
    given = _GIVEN.search(text)
    return find_mass_units(given["unit"]) if given is not None else ()
