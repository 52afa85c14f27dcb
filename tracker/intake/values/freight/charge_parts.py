"""The parts of a clause about charges: those that are charged, and those that a buyer may do without."""

import re
from dataclasses import dataclass
from functools import lru_cache

from tracker.intake.values.boards.boards_meant import boards_meant
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.figures.rates import SHARE
from tracker.intake.values.freight.charge_names import ChargeKind, charges_named
from tracker.intake.values.freight.not_included import leads_to_its_amount
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.orders.small_orders import only_of_small
from tracker.intake.values.prices.money import price_text
from tracker.intake.words.lists import pattern, phrases
from tracker.intake.words.phrases import Found

PARTS = re.compile(rf",(?!\d|\s(?:19|20)\d\d\b)|\b{pattern('range', 'and')}\b", re.IGNORECASE)


def is_optional(text: str) -> bool:
    """'Sheeting (if required)': a buyer may do without what this names."""
    return bool(phrases("optional").find(text))


def is_fee(text: str) -> bool:
    """'Stornopauschale', 'Cancellation fee': no order bears it that is carried out."""
    fees = phrases("fees_of_dealings")
    # Asked of every row of a long list.
    return fees.may_begin_in(text) and bool(fees.find(text))


@dataclass(frozen=True, slots=True)
class OptionalCharge:
    """A charge for what a buyer may do without, or `of_dealings` for what he sends back, cancels or fails to do: it is
    no part of what the board costs."""

    words: str
    of_dealings: bool = False


@dataclass(frozen=True, slots=True)
class ClauseParts:
    """A clause's parts between commas and 'and': those about charges that a buyer may do without, and the others."""

    charged: list[str]
    optional: list[str]

    @classmethod
    def of(cls, clause: str) -> "ClauseParts":
        """'Sheeting, if required, USD 60/ST extra' is all about one charge; 'if required, freight 45 USD' is not."""
        parts = cls([], [])
        follows = False
        for part in map(str.strip, PARTS.split(clause)):
            if parts.charged and any(match.start == 0 for match in phrases("optional").find(part)):
                parts.optional.append(parts.charged.pop())
            if parts.charged and phrases("energies").whole(parts.charged[-1]) and phrases("energies").find(part):
                # 'Energy and fuel surcharge 20 USD/ST' is one charge for both.
                parts.charged[-1] += f" / {part}"
                continue
            if parts.charged and not charges_named(part) and _begins_with_all(part):
                # 'Energy surcharge, all items 2.5 %'.
                parts.charged[-1] += f" {part}"
                continue
            first = len(parts.charged) == 1 and not parts.optional
            leads = _leads_to_amount(part) or _is_share(part) or leads_to_its_amount(part)
            if first and leads and _names_no_amount(parts.charged[0]):
                # 'Palletizing is invoiced apart, at $5 per ST', 'Energy surcharge, 3.5 %', 'Freight, not included: 46
                # €/t'; 'GC1, freight extra, at $1,085/ST' prices board.
                parts.charged[-1] += f" {part}"
                continue
            sized = parts.charged and only_of_small(part) and charges_named(parts.charged[-1])
            if parts.charged and (sized or _is_of_those(part, parts.charged[-1])):
                parts.charged[-1] += f", {part}"
                continue
            named = any(match.value != ChargeKind.OTHER for match in charges_named(part))
            follows = is_optional(part) or (follows and not named)
            (parts.optional if follows else parts.charged).append(part)
        return parts


@lru_cache(maxsize=4096)
def optional_charges(text: str) -> tuple[OptionalCharge, ...]:
    """The charges of a note that a buyer may do without, where it says what they come to: 'Sheeting on request, 60
    EUR/t'."""
    return tuple(
        OptionalCharge(clause.strip())
        for clause in clauses(text)
        if any(charges_named(part) for part in ClauseParts.of(clause).optional) and any(map(str.isdigit, clause))
    )


def _is_share(part: str) -> bool:
    return SHARE.match(part) is not None and not charges_named(part)


def _begins_with_all(part: str) -> bool:
    """'all items 2.5 %', 'on all grades: 2.5 %'."""
    found = phrases("all_of_them").find(part)
    return bool(found) and found[0].first <= 1 and any(map(str.isdigit, part))


def _leads_to_amount(part: str) -> bool:
    """'At $5 per ST', 'mit 5 EUR/t': a small word that leads to an amount, and no other; '1,085 USD/ST' by itself
    behind a charge may be the price."""
    lead = next((match for match in phrases("leads_to_amount").find(part) if match.start == 0), None)
    price = price_text(part[lead.end :].strip(" .)")) if lead is not None else None
    return price is not None and bool(price.amounts) and not price.rest and not price.is_range


def _names_no_amount(part: str) -> bool:
    return bool(charges_named(part)) and not any(map(str.isdigit, part)) and not is_optional(part)


def _is_of_those(part: str, before: str) -> bool:
    """The 'majoration de 50 €/t' behind 'en dessous', the 'surcharge 50 USD/ST' behind 'for orders under 5 tons'."""
    general = any(match.value == ChargeKind.OTHER for match in charges_named(part))
    return general and bool(phrases("small_orders").find(before)) and not charges_named(before)


def without_added(clause: str) -> str:
    """'Freight, prepaid and added: USD 2.15 per cwt' and 'freight prepaid and added at $42' without what says no more
    than that it comes on top."""
    for match in reversed(phrases("delivery").find(clause)):
        named = charges_named(clause[match.start : match.end])
        start = match.start + (named[0].end if named else 0)
        leads = _leads_to_an_amount(clause[match.end :].lstrip()) and bool(named or charges_named(clause[:start]))
        if match.value == "collected" and leads:
            clause = f"{clause[:start].rstrip(' ,(–-')}{clause[match.end :]}"
    return clause


def _leads_to_an_amount(behind: str) -> bool:
    """': USD 2.15', 'at $42.00', '($42.00/ST)'; 'at cost' is none, nor is ', 3 weeks'."""
    if behind[:1] == ":":
        return True
    joint = next((match for match in phrases("charge_filler").find(behind) if match.start == 0), None)
    return _AMOUNT.match(behind[joint.end :].lstrip() if joint is not None else behind) is not None


_AMOUNT = re.compile(r"\(?\s*(?:[A-Z]{2,3}\s?)?[$€£]?\s?\d")


def is_of_some_board(part: str) -> bool:
    """It names a board; the 'carton' of '4 % du prix du carton' is any, that of '3 % on white carton' is not."""
    grade = find_grade(part)
    if grade is None:
        return False
    of_any = set(grade.kinds) == {"any_board"} and not grade.tells_board and grade.coated is None
    return not (of_any and phrases("price_words").find(part) and not boards_meant(part).spans)


def tells_another_rate(words: str) -> bool:
    """'Double', 'half of it', 'negotiable', and no more: what it comes to is not known, nor is it what others bear."""
    found = phrases("other_rates").find(words)
    return bool(found) and not rest_of(words, (match.span for match in found), "of_the_charge", "copula", "about")


def relieves(part: str, match: Found[str]) -> bool:
    """The 'waived' of 'will not be waived'."""
    return phrases("relieved").whole(part[match.start : match.end]) is not None


def is_condition(part: str, match: Found[str]) -> bool:
    """Whether what is charged hangs on this. Not the Swedish 'om' of 'tillägg om 3 %', which is 'if' elsewhere."""
    leads = phrases("charge_filler").whole(part[match.start : match.end]) is not None
    return not (leads and _FIGURE_NEXT.match(part[match.end :]))


_FIGURE_NEXT = re.compile(r"\s*(?:[^\W\d]{3}|[$€£])?\s*\d")
