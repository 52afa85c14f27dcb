"""Words in the place of who quotes that are no firm: 'Average', 'Last year' and 'Budget' below the firms compared."""

from enum import StrEnum
from functools import lru_cache

from tracker.intake.values.heads.roles import Role
from tracker.intake.words.lists import phrases

_FIGURED = (Role.PREVIOUS_PRICE, Role.LIST_PRICE, Role.CHANGE)


class NoFirm(StrEnum):
    """What a cell that names no firm says of its row's price."""

    SUMMED = "a total or an average"
    MAY_BE_SUMMED = "perhaps a total or an average"
    """Said by a word that a firm may bear as well: 'Total'."""
    NOT_OFFERED = "its words say that nobody offers it"
    MAY_BE_OTHERS = "perhaps what nobody offers"
    MAY_BE_MEANT = "perhaps what is planned or paid"
    """Said by a word that a firm may bear as well: 'Target', 'Plan'."""


@lru_cache(maxsize=4096)
def no_firm(text: str) -> NoFirm | None:
    """What a cell in the place of a firm says where that is all it says; None for what may be a firm's name, as
    'Average Joe Paper' and 'Total Board' are."""
    text = text.strip(" .:*Ø∅")
    own = phrases("no_firms").whole(text)
    if own is not None or phrases("total").whole(text) is not None:
        return _OWN.get(own or "", NoFirm.SUMMED)
    if phrases("index").whole(text) is not None or phrases("headers").whole(text) in _FIGURED:
        return NoFirm.NOT_OFFERED
    of_others = phrases("prices_of_others").whole(text)
    if of_others is None:
        return None
    return NoFirm.NOT_OFFERED if of_others == "named" else NoFirm.MAY_BE_OTHERS


_OWN = {
    "may_be_firms": NoFirm.MAY_BE_SUMMED,
    "paid": NoFirm.NOT_OFFERED,
    "paid_or_firms": NoFirm.MAY_BE_MEANT,
}
"""What the words of [no_firms] say by their keys."""


def doubted(said: NoFirm, text: str) -> NoFirm:
    """What one word says where nothing else speaks against a firm; 'last year' and 'lowest price' name none anyhow."""
    return _DOUBTED.get(said, said) if len(text.split()) == 1 else said


_DOUBTED = {NoFirm.SUMMED: NoFirm.MAY_BE_SUMMED, NoFirm.NOT_OFFERED: NoFirm.MAY_BE_OTHERS}
