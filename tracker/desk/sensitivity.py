"""How far a price must stand out to be called out of line, in the words a buyer would choose."""

from __future__ import annotations

from enum import StrEnum
from typing import TYPE_CHECKING

from tracker.desk.edits import Edit, writing
from tracker.market.offers import SENSITIVITIES

if TYPE_CHECKING:
    from tracker.desk.opening import Desk


class Sensitivity(StrEnum):
    """From few to many: what is called out of line."""

    SURE = "sure"
    CAREFUL = "careful"
    CURIOUS = "curious"

    @property
    def words(self) -> str:
        """As the choice reads: 'as a careful buyer would'."""
        return _WORDS[self]

    @property
    def cut_off(self) -> float:
        """The modified z-score beyond which a price is out of line."""
        return SENSITIVITIES[_WORDS[self]]


_WORDS = dict(zip(Sensitivity, SENSITIVITIES, strict=True))


def sensitivity(desk: Desk) -> Sensitivity:
    """What this database is set to; careful where nobody chose."""
    from tracker.store import settings

    with desk.store.reading() as connection:
        known = settings.get(connection, settings.SENSITIVITY)
    return Sensitivity(known) if known in tuple(Sensitivity) else Sensitivity.CAREFUL


def set_sensitivity(desk: Desk, chosen: Sensitivity) -> Edit:
    """Sets it for everybody who opens this database."""
    from tracker.store import settings

    text = f"set what is called out of line: {chosen.words}"
    with writing(desk, text) as pen:
        change = settings.put(pen, settings.SENSITIVITY, chosen.value)
    return Edit(text, (change,))
