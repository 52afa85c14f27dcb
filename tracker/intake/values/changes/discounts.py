"""Discounts that a sheet names without their size: those that still come off its prices, and those that are off.

Gross prices 'less your contract discount' leave open what is paid; a discount that hangs on the size of an order or the
day of payment leaves nothing open.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache

from tracker.intake.values.freight.relieved_charges import within_price
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.notes.denials import denied
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, tokens_of


@dataclass(frozen=True, slots=True)
class DiscountTaken:
    """The prices bear a discount already."""

    words: str


@lru_cache(maxsize=4096)
def discounts_taken(text: str) -> tuple[DiscountTaken, ...]:
    """The part sentences that say so: 'Rabatt bereits abgezogen', 'your rebate is included in the price'."""
    if not names_discount(text):
        return ()
    return tuple(DiscountTaken(clause) for clause in clauses(text) if any(map(_takes, COMMA.split(clause))))


def _takes(part: str) -> bool:
    named = [match for match in phrases("discounts").find(part) if match.value == "any"]
    told = [match for match in phrases("to_be_deducted").find(part) if named and _is_told_of(part, match, named[0])]
    return bool(named) and not denied(part, named[0]) and _is_taken(part, named[0], told)


def names_discount(text: str) -> bool:
    """It names what takes money off; the 'remise' of an order that is handed in and a 'trim allowance' are none."""
    return any(match.value != "other" for match in phrases("discounts").find(text))


def taken_in_head(head: str) -> bool:
    """Whether the head of discounts says that the prices bear them: 'Rebate incl.', 'Remise déjà déduite'."""
    return within_price(head) or any(not denied(head, match) for match in phrases("discount_taken").find(head))


def discount_to_come(clause: str) -> bool:
    """Whether a part sentence says that a discount of a size it does not tell still comes off the prices."""
    if not names_discount(clause) or find_masses(clause) or _hangs(clause, "order"):
        return False
    return any(map(_still_comes_off, dict.fromkeys((*COMMA.split(clause), clause))))


def _hangs(text: str, on: str) -> bool:
    return any(match.value == on for match in phrases("discount_hangs").find(text))


def _still_comes_off(part: str) -> bool:
    named = [match for match in phrases("discounts").find(part) if match.value == "any"]
    if not named or _hangs(part, "payment"):
        return False
    told = {match for match in phrases("to_be_deducted").find(part) if _is_told_of(part, match, named[0])}
    if _is_taken(part, named[0], told):
        return False
    kinds = {match.value for match in told}
    agreed = bool(phrases("agreed_discounts").find(part))
    return bool(kinds - {"weak"}) or agreed or (bool(kinds) and bool(phrases("the_buyer").find(part)))


def _is_told_of(part: str, said: Found[str], discount: Found[str]) -> bool:
    """'Less' stands before the discount, 'to be deducted' behind it, the 'off' of 'comes … off' at the end."""
    if said.value == "parted":
        ends = tokens_of(part.rstrip(" .!)"))
        return bool(ends) and _ends_parted(ends[-1][0])
    if said.value == "before":
        return said.end <= discount.start
    return said.value in ("weak", "either") or (said.value == "behind" and said.start >= discount.end)


def _ends_parted(word: str) -> bool:
    return phrases("to_be_deducted").whole(word) == "parted_end"


def _is_taken(part: str, discount: Found[str], told: Iterable[Found[str]]) -> bool:
    """'Already deducted', 'net of', 'no discount'; the 'included' of 'not included' is no such word by itself."""
    spans = [(match.start, match.end) for match in told]
    words = phrases("discount_taken").find(part)
    free = [match for match in words if not any(start <= match.start and match.end <= end for start, end in spans)]
    denial = denied(part, discount) and not any(_covers_a_denial(part[start:end]) for start, end in spans)
    return denial or any(not denied(part, match) for match in free)


def _covers_a_denial(words: str) -> bool:
    return bool(phrases("negations").find(words))
