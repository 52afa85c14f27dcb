"""What the head over a row of order sizes says these count: 'Sheets ordered', 'Anzahl Rollen', 'Cantidad de hojas'."""

import re
from dataclasses import replace
from functools import lru_cache

from tracker.intake.values.heads.roles import Role
from tracker.intake.values.orders.brackets import Bracket, bracket_text
from tracker.intake.values.orders.masses import Mass, find_mass_units, mass_units
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.words.lists import pattern, phrases
from tracker.trade.quantities import MassUnit

_KINDS = frozenset({"sheets", "roll", "pallet", "truckload"})


@lru_cache(maxsize=4096)
def counts_orders(text: str) -> str:
    """The kind of piece or load that a head counts orders in; '' for none, for two, and where it is about money.

    'Sheets' alone may be how the board comes, and 'Sheets per pallet' how it is packed.
    """
    counted = {match.value for match in phrases("bracket").find(text)} & _KINDS
    whole = phrases("counted_orders").whole(text)
    bounds = any(match.value in ("from", "below", "up_to") for match in phrases("bracket").find(text))
    named = any(match.value == "any" for match in phrases("counted_orders").find(text))
    said = bounds or named or phrases("order_words").find(text)
    if find_currencies(text) or phrases("price_words").find(text) or _tells_what_one_holds(text):
        return ""
    if whole is not None and whole in _KINDS:
        return whole
    return counted.pop() if len(counted) == 1 and said else ""


def _tells_what_one_holds(text: str) -> bool:
    """'Antal per pall', and not 'Nombre de feuilles'."""
    before = [text[: match.start].rstrip() for match in phrases("bracket").find(text) if match.value in _KINDS]
    joints = [
        ahead[found.start :].casefold()
        for ahead in before
        for found in phrases("per").find(ahead)
        if found.end == len(ahead)
    ]
    return any(joint not in _OF for joint in joints)


_OF = ("de", "d'", "of", "von", "av")


def counted_in(text: str) -> str:
    """The same of the head over a column of order sizes, where 'Rolls' alone says so."""
    alone = phrases("bracket").whole(text)
    return counts_orders(text) or (alone if alone in _KINDS else "")


def counted_size(text: str, kind: str) -> Bracket | None:
    """A figure, or where it begins or ends, as so many of a kind: '2,000–9,999', '10 000–', 'ab 5.000'."""
    size = bracket_text(text, (MassUnit.KG,))
    if size is None or size.not_weight or find_mass_units(text):
        # '20 t and more' below a number of pallets is so many tons.
        return None
    start, end = (None if bound is None else in_whole(replace(bound, units=())) for bound in (size.start, size.end))
    return replace(size, start=start, end=end, alone=False, not_weight=kind)


def in_whole(count: Mass) -> Mass:
    """Sheets and rolls are ordered whole, so '50,000' is no fifty written to the third place."""
    whole = tuple(amount for amount in count.amounts if int(amount.value.as_tuple().exponent) >= 0)
    return replace(count, amounts=whole) if whole else count


_MASS_PER = re.compile(
    rf"(?P<unit>[^\W\d]+\.?(?:\s[^\W\d]+\.?)??)(?:\s*/\s*|\s+{pattern('per', 'strong')}\s+)(?P<what>.+)", re.IGNORECASE
)
_IN_MASS = re.compile(
    r"(?P<what>[^()/]+?)\s*(?:\((?:in\s)?(?P<unit>[^()/]{2,})\)|\s(?:in|en|i)\s(?P<in_unit>[^\W\d]{2,}))"
)
_TIMES = (Role.LEAD_TIME, Role.DELIVERY_TERMS)


@lru_cache(maxsize=1024)
def weighs_deliveries(text: str) -> bool:
    """'Tonnes per delivery', 'Lieferung (kg)': how much goes out at once, and not when. 'Delivery per tonne' is no such
    size, nor is 'Lieferzeit (T)', where the letter may be short for days."""
    text = text.strip()
    per, within = _MASS_PER.fullmatch(text), _IN_MASS.fullmatch(text)
    if per is not None:
        unit, what = per["unit"], per["what"]
    elif within is not None:
        unit, what = within["unit"] or within["in_unit"], within["what"]
    else:
        return False
    return bool(mass_units(unit)) and phrases("headers").whole(what) in _TIMES
