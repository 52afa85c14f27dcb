"""Amounts of charges that are none for certain: 'about $25/ST', 'may be charged', '$25/ST or 3 %, whichever is
greater', '$25/ST, payable for CRB in rolls'."""

import re

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.boards.not_only import not_of_these_only
from tracker.intake.values.freight.charge_names import charges_named, is_of_the_past
from tracker.intake.values.freight.charge_parts import PARTS, is_of_some_board
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.notes.denials import denied
from tracker.intake.values.notes.topics import OF_TERMS
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.prices.price_within import prices_within
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import pattern, phrases
from tracker.intake.words.phrases import blanked

_PERCENT = rf"(?:%|{pattern('percent', 'any')})"
_FIGURE = re.compile(r"\s*(?:[A-Z]{2,3}\s?|[$€£]\s?)?\d[\d.,]*")
_SHARE = re.compile(rf"\s?{_PERCENT}", re.IGNORECASE)
_ENDS = re.compile(
    rf"(?P<said>(?:[^\W\d]{{2,3}}\s?|[$€£]\s?)?\d[\d.,]*\s?(?:{_PERCENT}|[$€£]|[A-Z]{{3}})?"
    rf"(?:\s?/\s?[^\W\d]+|\s{pattern('per', 'strong')}\s[^\W\d]+(?:\s[^\W\d]+)?)?)\s*,?\s*$",
    re.IGNORECASE,
)


def is_unsure(part: str, clause: str) -> bool:
    """Whether the amount in a part of a clause is none for certain."""
    sometimes = _falls_due_at_times(part) or _is_estimated(part)
    if sometimes or _may_be_included(part, clause) or _is_borne_by_some(part, clause):
        return True
    return any(
        _is_one_of_two(clause, match.start, match.end) for match in phrases("range").find(clause) if match.value == "or"
    )


def _falls_due_at_times(part: str) -> bool:
    """'A surcharge of 25 €/t may apply', 'demurrage $75/ST', 'energy surcharge 3 % west of Denver', 'fuel surcharge 2 %
    for delivered orders'."""
    return any(phrases(section).find(part) for section in _AT_TIMES) or _is_of_a_delivery(part) or _is_past(part)


def _is_past(part: str) -> bool:
    """'Energy surcharge last quarter: 3 %'."""
    return is_of_the_past(blanked(part, ((start, end) for _, start, end, _ in prices_within(part))))


_AT_TIMES = ("may_be_charged", "when_it_happens", "some_places_and_times")


def _is_of_a_delivery(part: str) -> bool:
    leads = [match.end for section in ("about_lines", "charged_on") for match in phrases(section).find(part)]
    return any(
        len(part[: match.start].rstrip()) in leads and not charges_named(part[match.start : match.end])
        for match in phrases("delivery").find(part)
        if match.value == "delivered"
    )


def _is_estimated(part: str) -> bool:
    """'Of about $25/ST', 'rund 3 %'; the 'about 5 t' of an order is no amount, the 'est' of 'le port est 48 €/t' no
    estimate, and 'gegen 25 €/t' may name the price itself."""
    return _is_bounded(part) or any(
        _begins_with_amount(part[match.end :].removeprefix("."))
        for match in phrases("about").find(part)
        if not any(phrases(section).whole(part[match.start : match.end]) for section in ("copula", "against"))
        or part[match.end :].startswith(".")
    )


def _is_bounded(part: str) -> bool:
    """'Max. 3 %', '3 % max.', '3 % approx.': right before the amount or right behind; 'min. 5 t' is no amount."""
    found = phrases("amount_bounds").find(part)
    ahead = any(_begins_with_amount(part[match.end :].removeprefix(".")) for match in found)
    closing = (*found, *phrases("about").find(part))
    return ahead or any(_ends_with_amount(part[: match.start]) and _closes(part[match.end :]) for match in closing)


def _ends_with_amount(before: str) -> bool:
    ends = _ENDS.search(before.rstrip(" (,"))
    return ends is not None and _is_money_or_share(ends["said"])


def _closes(behind: str) -> bool:
    """Nothing stands behind it that 'approx.' may be said of: not in '3 %, approx. 2 weeks'."""
    return not any(map(str.isalnum, behind))


def _is_one_of_two(clause: str, start: int, end: int) -> bool:
    """'… or 3 %' and '3 % or as published'; 'on rolls or sheets' names no amount."""
    before, behind = clause[:start], clause[end:]
    if _begins_with_amount(behind):
        return any(map(str.isdigit, before))
    ends = _ENDS.search(before)
    return ends is not None and _is_money_or_share(ends["said"])


def _begins_with_amount(text: str) -> bool:
    figure = _FIGURE.match(text)
    if figure is None:
        return False
    share = _SHARE.match(text, figure.end())
    beside = text[figure.end() : figure.end() + _LONGEST_MONEY]
    return share is not None or bool(find_currencies(f"{figure[0]}{beside.split('/')[0]}"))


_LONGEST_MONEY = 8


def _is_money_or_share(text: str) -> bool:
    return bool(find_currencies(text)) or re.search(_PERCENT, fold(text)) is not None


def _may_be_included(part: str, clause: str) -> bool:
    """What 'and freight $45/ST included' says of the 'Sheeting $60/ST' before it is not certain; of 'plus sheeting' and
    'a surcharge applies' it says nothing."""
    joint = _AND.match(clause.partition(part)[2]) if part in clause else None
    if joint is None or phrases("surcharge_applies").find(part) or phrases("added_on_top").find(part):
        return False
    behind = PARTS.split(joint.string[joint.end() :])[0]
    named = charges_named(behind)
    return bool(named) and any(
        match.value in ("within", "waived") and match.start >= named[-1].end and not denied(behind, match)
        for match in phrases("relieved").find(behind)
    )


_AND = re.compile(rf"\s*\b{pattern('range', 'and')}\b", re.IGNORECASE)


def _is_borne_by_some(part: str, clause: str) -> bool:
    """'…, negotiable for CRB', '…, payable on CRB rolls': a part behind names boards that bear it, or bear it
    otherwise. What has a figure or a topic of its own, and what is excepted, is told elsewhere."""
    if part not in clause or not_of_these_only(clause):
        return False
    ahead, _, behind = clause.partition(part)
    behind_it = any(_leads_to_boards(one) and not _tells_its_own(one) for one in COMMA.split(behind))
    return behind_it or _begins_with_boards(ahead)


def _begins_with_boards(ahead: str) -> bool:
    """'On GD2 and GT2, as you know, we reckon with 4 %': a part of its own ahead names boards that bear it."""
    first = COMMA.split(ahead)[0]
    led = any(match.start == 0 for match in phrases("charged_on").find(first))
    named = led and first != ahead and is_of_some_board(first)
    return named and not (phrases("as_well").find(ahead) or _tells_its_own(first))


def _leads_to_boards(part: str) -> bool:
    grade = find_grade(part)
    if grade is None or not is_of_some_board(part):
        return False
    before, _, behind = part.partition(grade.words)
    ahead = before.rstrip()
    led = any(match.end == len(ahead) for match in phrases("charged_on").find(ahead))
    return led and not any(map(str.isdigit, before + behind))


def _tells_its_own(part: str) -> bool:
    sections = (*OF_TERMS, "excepted", "exceptions", "valid", "as_well")
    return find_delivery(part) is not None or any(phrases(section).find(part) for section in sections)
