"""Units that a remark says its price is not in: 'priced per MSF, not per cwt', 'je 1000 Bogen statt EUR/t'."""

import re
from functools import lru_cache

from tracker.intake.values.prices.money import PriceUnit, unit_of_text
from tracker.intake.words.lists import phrases

_IN = re.compile(r"^(?:in|en|i)\s+", re.IGNORECASE)
_STOP = re.compile(r",(?!\d)|[;()\n]|\.(?:\s|$)")


@lru_cache(maxsize=4096)
def units_denied(text: str) -> tuple[str, tuple[PriceUnit, ...]]:
    """The text without the units that it denies, and those units."""
    found: list[PriceUnit] = []
    for match in reversed(phrases("instead_of").find(text)):
        behind = text[match.end :]
        stops = [one.start() for one in _STOP.finditer(behind)] + [
            one.start for one in phrases("but_rather").find(behind)
        ]
        end = min(stops, default=len(behind))
        unit = unit_of_text(_IN.sub("", behind[:end].strip()))
        if unit is not None:
            found.append(unit)
            text = f"{text[: match.start].rstrip(' ,')} {behind[end:].lstrip(' ,')}".strip()
    return text, tuple(found)
