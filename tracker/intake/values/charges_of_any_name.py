"""What is invoiced beside all prices, whatever its name: 'Skids and wrap: US$1.15 per cwt, added on the invoice'."""

from functools import lru_cache

from tracker.intake.values.boards_meant import boards_meant
from tracker.intake.values.charge_names import charges_named
from tracker.intake.values.money import PriceText, price_text
from tracker.intake.words.lists import phrases

_LONGEST_NAME = 5
_OF_SOME = ("invoiced_beside", "grades", "coating", "forms", "small_orders", "not_charge", "optional")
"""Lists whose words make a name that of what some boards or orders bear."""


@lru_cache(maxsize=4096)
def charge_of_any_name(clause: str) -> tuple[str, PriceText] | None:
    """The name and the amount of what a clause says is added on the invoice; None where its name is known, where it is
    a board's, a form's or an order's, and where the amount is not all that the rest says."""
    name, _, rest = clause.partition(":")
    added = [match for match in phrases("invoiced_beside").find(rest) if match.value == "all"]
    if len(added) != 1 or charges_named(clause) or not _is_a_name(name):
        return None
    said = price_text(f"{rest[: added[0].start]}{rest[added[0].end :]}".strip(" ,.()–-"))
    if said is None or not said.amounts or said.is_range or said.rest or said.basis is None:
        return None
    return None if said.basis.foreign else (" ".join(name.split()), said)


def _is_a_name(text: str) -> bool:
    """Not 'PE coating', 'SBS' (boards'), 'Rolls' (a form's), 'Small orders', 'Late payment'."""
    plain = not any(map(str.isdigit, text)) and 0 < len(text.split()) <= _LONGEST_NAME
    return plain and not any(phrases(section).find(text) for section in _OF_SOME) and not boards_meant(text).spans
