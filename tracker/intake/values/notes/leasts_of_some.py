"""The weights that a piece of a note may tell as the smallest order of its boards: 'GD2 minimum 10 t', 'greyboard is
sold in lots of 1 tonne or more'.

Where terms of delivery stand beside a weight, it may be the one from which they hold.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from tracker.intake.values.boards.some_boards import some_boards
from tracker.intake.values.freight.delivery import find_delivery, terms_in
from tracker.intake.values.freight.place_behind import end_of_place
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.orders.masses import Mass, find_masses
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.words.lists import joined, phrases
from tracker.intake.words.phrases import blanked

_OF_LEASTS = ("minimum", "minimum_at_first", "at_least", "orders_refused", "order_words")


@dataclass(frozen=True, slots=True)
class LeastsOfSome:
    """`begun`: boards are sold from these weights on, where no word for orders stands; `sure`: no terms of delivery
    may be what they are for."""

    masses: tuple[Mass, ...] = ()
    begun: bool = False
    sure: bool = True


def leasts_of_some(text: str, plain: str, *, spoken: bool) -> LeastsOfSome:
    """The weights that a piece tells of orders. `plain`: it without the words for its boards; `spoken`: weights were
    told of orders before."""
    named = some_boards(text) is not None
    masses = tuple(find_masses(plain))
    begun = named and any(_begins_an_order(plain, mass) for mass in masses)
    if not (begun or spoken or any(phrases(section).find(plain) for section in _OF_LEASTS)):
        return LeastsOfSome()
    told = [(part, find_delivery(part)) for part in COMMA.split(text)]
    terms = [(part, said) for part, said in told if said is not None]
    if not terms:
        return LeastsOfSome(masses, begun)
    if not begun or find_delivery(text) is None:
        return LeastsOfSome()
    # 'Delivered free from 5 tonnes' is no order; 'ex works from 1 tonne' may be the smallest one, or the least that is.
    of_freight = [part for part, said in terms if said.delivered is not False]
    kept = tuple(mass for mass in masses if not any(mass.words in part for part in of_freight))
    apart = all(mass.words not in part for part, _ in terms for mass in kept)
    return LeastsOfSome(kept, begun, sure=apart and not of_freight)


def sold_from(text: str) -> bool:
    """Whether all that a note says of its own lines may be from which weight on they are sold: 'from 1 t', 'are sold in
    lots of 1 t or more'; money beside a weight tells a price for such orders."""
    short = len(text.split()) <= _FEW_WORDS
    told = any((short and _begins(text, mass)) or _begins_an_order(text, mass) for mass in find_masses(text))
    return told and not (find_currencies(text) or "%" in text or find_delivery(text) is not None)


_FEW_WORDS = 5
"""Of 'those from 1 t' and 'GD2 from 1 tonne only'."""


def _begins_an_order(plain: str, mass: Mass) -> bool:
    """'Sold from 1 t', 'available, 1 t or more', 'in lots of 1 t'."""
    ahead = plain[: plain.find(mass.words)].rstrip()
    if any(match.end == len(ahead) for match in joined("made_so.lots").find(ahead)):
        return True
    return _begins(plain, mass) and bool(joined("made_so.sold", "made_so.there").find(plain))


def _begins(plain: str, mass: Mass) -> bool:
    """'From 1 t', '1 t or more'."""
    start = plain.find(mass.words)
    ahead, behind = plain[:start].rstrip(), plain[start + len(mass.words) :].lstrip()
    led = any(match.end == len(ahead) for match in joined("bracket.from").find(ahead))
    return led or any(match.start == 0 for match in joined("bracket.from").find(behind))


def without_cells(text: str) -> str:
    """A text with blanks for the place behind its terms of delivery: the Norden of 'sold ex warehouse Norden'."""
    return blanked(text, _places(text))


def _places(text: str) -> Iterator[tuple[int, int]]:
    for term in terms_in(text):
        end = end_of_place(text, term.end)
        if some_boards(text[term.end : end]) is None:
            yield term.end, end
