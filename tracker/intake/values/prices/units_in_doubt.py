"""Units that a part of a sentence gives some boards, where it may speak of what is possible, of a later day or of
what is done with them: 'GD2 in USD möglich', 'CRB is per tonne from January 2027', 'we buy CUK in SEK'."""

import re

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.orders.worded_brackets import bracket_behind_words
from tracker.intake.values.times.dates import find_dates
from tracker.intake.words.lists import joined, phrases


def leaves_unit_open(part: str, *ahead: str) -> bool:
    """Whether a unit of some boards is perhaps not that of their prices here and now. `ahead`: the parts that lead to
    it, as 'if shipped to Canada' does."""
    if any(joined(*_POSSIBLE).find(one) for one in (*ahead, part)):
        return True
    if _is_of_a_size(part):
        return True
    if phrases("invoices").find(part) and names_buyers_country(part):
        return True
    said = {match.value for match in phrases("units_in_doubt").find(part)}
    return ("done" in said and "sold" not in said) or is_of_a_later_day(part)


def _is_of_a_size(part: str) -> bool:
    """'CRB per tonne from 5 short tons'."""
    board = find_grade(part)
    named = board is not None and board.words and board.words in part
    behind = part.partition(board.words)[2] if board is not None and named else part
    return bracket_behind_words(behind.strip()) is not None


def names_buyers_country(text: str) -> bool:
    """'GD2 for Sweden' tells who buys, 'GD2 comes from Sweden' does not."""
    origins = {match.end for match in phrases("comes_from").find(text)}
    return any(
        not any(origin <= match.start and not text[origin : match.start].strip() for origin in origins)
        for match in phrases("countries").find(text)
    )


_POSSIBLE = ("may_be", "only_if", "optional", "invoices.some", "units_in_doubt.possible")


def is_of_a_later_day(part: str) -> bool:
    """'CRB will be per tonne'; 'CRB is per tonne from January 2027' may be said of today or not."""
    if any(match.value == "later" for match in phrases("units_in_doubt").find(part)):
        return True
    leads = [match.end for match in phrases("units_in_doubt").find(part) if match.value == "from"]
    days = [date.start for date in find_dates(part)] if leads else []
    days += [month.start for month in phrases("months").find(part)] if leads else []
    days += [year.start() for year in _YEAR.finditer(part)] if leads else []
    return any(_DAY.fullmatch(part, end, day) is not None for end in leads for day in days)


_YEAR = re.compile(r"(?<![\d.,])20\d\d(?![\d.,]*\d)")
_DAY = re.compile(r"\s*(?:\d{1,2}(?:\.|st|er|º)?\s*(?:de\s+)?)?")
