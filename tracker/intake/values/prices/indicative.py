"""Whether a text marks the prices that it stands beside as indicative: 'Budget prices', 'Preise unverbindlich'."""

import re
from functools import lru_cache

from tracker.intake.values.heads.roles import PRICES
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.denials import denied
from tracker.intake.values.notes.unless import unless_at
from tracker.intake.values.times.dates import without_dates
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases

_SHORTEST = 4
"""'Ind.' beside a price is indicative; in an address it is an industrial estate."""
_SUBJECTS = ("lead_topic", "weight_words", "charges", "minimum")


def marks_indicative(text: str, year: str = "") -> bool:
    """A clause that says so of prices, or of nothing else: 'Lead times are indicative' leaves prices firm. `year`: the
    one that the prices are of; '2027 prices are estimates' marks no others."""
    return any(not years or not year or year in years for years in _years_marked(text))


@lru_cache(maxsize=8192)
def _years_marked(text: str) -> tuple[tuple[str, ...], ...]:
    marking = (clause for clause in clauses(text) if _says_so(clause) and speaks_of_prices(clause))
    return tuple(tuple(_YEAR.findall(without_dates(clause))) for clause in marking)


_YEAR = re.compile(r"(?<!\d)(?:19|20)\d\d(?!\d)")


def _says_so(clause: str) -> bool:
    unless = unless_at(clause)
    # The French 'indication' of 'sauf indication contraire' marks nothing.
    clause = clause if unless is None else clause[:unless]
    found = [one for one in phrases("indicative").find(clause) if one.end - one.start >= _SHORTEST]
    for greeting in reversed(phrases("salutations").find(clause)):
        found = [one for one in found if not greeting.start <= one.start < greeting.end]
    if not phrases("price_words").find(clause):
        # 'Budget order' and 'Budget 2027' are what somebody plans with.
        found = [one for one in found if fold(clause[one.start : one.end]) not in _PLANS]
    return any(not denied(clause, match) for match in found)


_PLANS = ("budget", "presupuesto")


def speaks_of_prices(clause: str) -> bool:
    """Whether a clause is about prices, or about nothing by name."""
    if phrases("price_words").find(clause):
        return True
    headed = {match.value for match in phrases("headers").find(clause)}
    return not (headed - PRICES or any(phrases(subject).find(clause) for subject in _SUBJECTS))
