"""What the heads over one column say: units that only two of them together name, and firms' names, which name no
role."""

from collections.abc import Iterable, Sequence
from dataclasses import replace
from typing import Any

from tracker.intake.columns.column import vendor_in_head
from tracker.intake.tables.headers.heads import PRICE_ROLES, head_text
from tracker.intake.tables.table import HeadedColumn
from tracker.intake.values.firms.company import letterhead_name
from tracker.intake.values.firms.own_words import has_a_strange_word
from tracker.intake.values.heads.header import Header, header
from tracker.intake.values.heads.roles import ON_TOP, Role
from tracker.intake.values.prices.currency import currency_phrases
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found


def said_by_heads(headed: HeadedColumn) -> list[Header]:
    """What each head says; what goes on from the one above it ('US dollars' over 'a ton', 'lb per 3,000' over
    'sq. ft.') with the unit that the two name."""
    heads = [header(head_text(cell)) for cell in headed.heads]
    weighed = _weighed_together(heads)
    if weighed is not None:
        return [*(Header(head.text, ()) for head in heads[:-1]), weighed]
    said: list[Header] = []
    for lower in heads:
        whole = _going_on(said[-1], lower) if said else lower
        if whole.text != lower.text:
            # 'US$ per 1,000' over 'sq ft' is per no 1,000 sheets.
            said[-1] = Header(said[-1].text, ())
        said.append(whole)
    return said


def _weighed_together(heads: Sequence[Header]) -> Header | None:
    """'Pounds' over 'per thousand' over 'square feet': one unit of basis weight, whose parts price nothing."""
    if len(heads) <= _PAIR or any(len(head.weight_units) == 1 for head in heads):
        return None
    whole = header(" ".join(head.text for head in heads))
    return whole if len(whole.weight_units) == 1 and whole.currency is None else None


_PAIR = 2


def _going_on(upper: Header, lower: Header) -> Header:
    whole = header(f"{upper.text} {lower.text}")
    if _names_what_it_is_per(upper, lower, whole) or _names_whose_money(upper, lower, whole):
        return whole
    if len(whole.weight_units) == 1 and 1 not in (len(upper.weight_units), len(lower.weight_units)):
        lower = replace(lower, weight_units=whole.weight_units)
    if whole.caliper_unit is not None and _part_ahead(upper, phrases("caliper_units").find(whole.text)):
        lower = replace(lower, caliper_unit=whole.caliper_unit)
    return lower


def _names_what_it_is_per(upper: Header, lower: Header, whole: Header) -> bool:
    """'1.000 kg' below 'Preis pro', 'sq ft' below 'US$ per 1,000', and 'a ton' below 'US dollars'."""
    if whole.basis is None or not any(reading.role in PRICE_ROLES for reading in whole.roles):
        return False
    # 'Price for' over '1,000 kg' and '5,000 kg' are orders.
    if _ends_in_per(upper.text) and upper.strength(Role.BASIS) > 0:
        return True
    start = whole.text.rfind(whole.basis.words)
    if 0 <= start < len(upper.text) < start + len(whole.basis.words) and _is_a_part(upper.text[start:]):
        return True
    # 'EUR' over 'Rolls' names a form.
    asked = lower.basis is None and lower.strength(Role.BASIS) > 0
    return asked and upper.basis is None and upper.currency is not None and bool(whole.basis.bases)


def _names_whose_money(upper: Header, lower: Header, whole: Header) -> bool:
    """'dollars a tonne' below 'Canadian'; 'Plant CA' over '$/ST' says nothing of Canada."""
    worded = lower.text[:1].isalpha()
    return worded and _is_a_part(_part_ahead(upper, currency_phrases().find(whole.text)))


def _is_a_part(words: str) -> bool:
    """The C of 'Plant C' over 'tons' and the M of 'Grade M' over 'sheets' are no parts of units."""
    return len(words.strip()) >= _SHORTEST_PART


_SHORTEST_PART = 2


def _part_ahead(upper: Header, found: Iterable[Found[Any]]) -> str:
    """What the upper head has of a phrase of both that ends in the lower one; '' for none."""
    seam = len(upper.text)
    return next((upper.text[one.start :] for one in found if one.start < seam < one.end), "")


def _ends_in_per(text: str) -> bool:
    *before, last = text.split() or [""]
    return bool(before) and phrases("per").whole(last) is not None


def without_roles_of_firms(said: Sequence[Header], priced: bool) -> tuple[Header, ...]:
    """'Fenwold Fibre Ltd.' and 'Orrick Board Co.' over a unit, or over prices, offer, and no property or board."""
    return tuple(
        replace(head, roles=()) if (priced or head is not said[-1]) and _is_firm(head) else head for head in said
    )


def _is_firm(head: Header) -> bool:
    text = head.text.strip()
    if vendor_in_head(head) == text:
        return True
    # 'Tessamill Packaging Board' charges nothing.
    charged = bool(head.roles) and head.roles[0].role in ON_TOP
    return charged and has_a_strange_word(text) and letterhead_name(text) == text
