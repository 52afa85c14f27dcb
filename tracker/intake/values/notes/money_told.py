"""The parts of a text that say something of money, of freight that is left open or of prices out of force, whether or
not any rule understands them: 'Less 2 % for truckloads', 'pallets are charged at cost', 'delivered dayton'.

Nothing is read from them here. They are looked for so that what no rule used is told, and not lost without a word.
"""

from dataclasses import dataclass
from functools import lru_cache

from tracker.intake.values.changes.competitors import without_competitors
from tracker.intake.values.changes.list_age import Age, age_of_list
from tracker.intake.values.changes.no_offers import shows_how_to_read
from tracker.intake.values.figures.rates import EITHER_WAY, in_signs, is_added, states_rate
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.freight.named_before import with_their_names
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.notes.denials import denied
from tracker.intake.values.notes.note_signs import without_sign
from tracker.intake.values.notes.statements import Remark, Statement, says, statements
from tracker.intake.values.prices.amounts_named import names_amount
from tracker.intake.values.prices.payment_terms import is_when_to_pay
from tracker.intake.words.lists import phrases


@dataclass(frozen=True, slots=True)
class MoneyTold:
    """A part of a sentence that tells of money: its `words`, and what the rules read in it and in its whole sentence.

    `alone`: nothing else of the sentence tells of money. `old`: it says that a list is no longer in force. `freight`:
    it says no more than on what condition prices include freight.
    """

    words: str
    own: tuple[Statement, ...]
    of_clause: tuple[Statement, ...]
    alone: bool
    old: bool
    freight: bool


@lru_cache(maxsize=8192)
def money_told(text: str) -> tuple[MoneyTold, ...]:
    """Each part of a title, a note or a remark that does; what explains the list, or tells of competitors, does not."""
    if shows_how_to_read(text):
        return ()
    said = with_their_names(clauses(without_competitors(without_sign(text))))
    return tuple(told for clause in said for told in _in_clause(clause))


def _in_clause(clause: str) -> list[MoneyTold]:
    parts = [part.strip() for part in COMMA.split(clause)]
    speaking = [place for place, part in enumerate(parts) if _tells(part)]
    return [
        MoneyTold(
            _with_bounds(parts, place, speaking),
            statements(parts[place]),
            statements(clause),
            len(speaking) == 1,
            _is_old(parts[place]),
            not (_names_money(in_signs(parts[place])) or _is_old(parts[place])),
        )
        for place in speaking
    ]


def _with_bounds(parts: list[str], place: int, speaking: list[int]) -> str:
    """The part with those beside it that state nothing of their own: the 'for truckloads' of 'less 2 %, for
    truckloads' bounds it, and the 'net 30, FOB mill' before it does not."""
    first = last = place
    while first > 0 and first - 1 not in speaking and _bounds(parts[first - 1]):
        first -= 1
    while last + 1 < len(parts) and last + 1 not in speaking and _bounds(parts[last + 1]):
        last += 1
    return ", ".join(parts[first : last + 1])


def _bounds(part: str) -> bool:
    return not (statements(part) or _is_of_payment(part))


@lru_cache(maxsize=8192)
def _tells(part: str) -> bool:
    said = in_signs(part)
    if EITHER_WAY.search(said) or Remark.INDEX in says(part):
        return False
    if _is_of_other_things(part):
        # The 'within' of 'freight is included within Ohio' is no tolerance.
        return bool(phrases("carriage").find(part)) and _leaves_freight_open(part)
    return _names_money(said) or _is_old(part) or _leaves_freight_open(part)


def _leaves_freight_open(part: str) -> bool:
    """'Delivered dayton', 'delivered on request'."""
    return any(isinstance(one, Delivery) and one.delivered is None for one in statements(part))


def _is_old(part: str) -> bool:
    return age_of_list(part) is not Age.IN_FORCE


def _is_of_other_things(part: str) -> bool:
    """Of when to pay, of taxes, of goods that come back, of how exact a measure is, and of a firm's own capital."""
    taxed = any(match.value in ("named", "with_tax") for match in phrases("tax").find(part))
    elsewhere = any(
        phrases(section).find(part) for section in ("other_dealings", "tolerances", "no_money", "payment_means")
    )
    charged = any(phrases(section).find(part) for section in ("charges", "surcharge_words"))
    return elsewhere or (taxed and not charged) or _is_of_payment(part)


def _is_of_payment(part: str) -> bool:
    """'Net 30 days', '2 % discount within 14 days'."""
    hangs = any(match.value == "payment" for match in phrases("discount_hangs").find(part))
    return is_when_to_pay(part.rpartition(":")[2]) or bool(phrases("pays").find(part)) or hangs


def _names_money(part: str) -> bool:
    if names_amount(part) or is_added(part):
        return True
    beside = any(phrases(section).find(part) for section in ("price_words", "these_prices"))
    if states_rate(part):
        return beside or any(phrases(section).find(part) for section in _CHANGE_PRICES)
    named = [match for section in ("discounts", "money_told") for match in phrases(section).find(part)]
    known = (match for match in named if match.value != "other" and (beside or match.value != _OF_PRICES))
    # 'No surcharges' and 'the increase of May is included' leave the prices as they are.
    return not phrases("not_money_told").find(part) and any(not denied(part, match) for match in known)


_CHANGE_PRICES = (
    "charges", "surcharge_words", "discounts", "reductions", "additions", "plus_words", "more_words", "off_words",
    "minus_words", "price_moves", "adjustments", "money_told",
)  # fmt: skip
_OF_PRICES = "of_prices"
