"""What the heads over one column say: a unit that goes on below its 'per', and firms' names, which name no role."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from tracker.intake.columns.column import vendor_in_head
from tracker.intake.tables.heads import PRICE_ROLES, head_text
from tracker.intake.tables.table import HeadedColumn
from tracker.intake.values.heads.header import Header, header
from tracker.intake.values.heads.roles import Role
from tracker.intake.words.lists import phrases


def said_by_heads(headed: HeadedColumn) -> list[Header]:
    """What each head says; '1.000 kg' below 'Preis pro' goes on with it."""
    texts = [head_text(cell) for cell in headed.heads]
    said = [header(text) for text in texts]
    for place, (upper, lower) in enumerate(pairwise(texts)):
        # 'Price for' over '1,000 kg' and '5,000 kg' are orders.
        asks = _ends_in_per(upper) and said[place].strength(Role.BASIS) > 0
        whole = header(f"{upper} {lower}") if asks else None
        if whole is not None and whole.basis is not None and any(one.role in PRICE_ROLES for one in whole.roles):
            said[place + 1] = whole
    return said


def _ends_in_per(text: str) -> bool:
    *before, last = text.split() or [""]
    return bool(before) and phrases("per").whole(last) is not None


def without_roles_of_firms(said: Sequence[Header], priced: bool) -> tuple[Header, ...]:
    """'Fenwold Fibre Ltd.' and 'Orrick Board Co.' over a unit, or over prices, offer, and no property or board."""
    return tuple(
        replace(head, roles=()) if (priced or head is not said[-1]) and _is_firm(head) else head for head in said
    )


def _is_firm(head: Header) -> bool:
    return vendor_in_head(head) == head.text.strip()
