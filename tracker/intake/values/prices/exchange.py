"""Clauses on rates of exchange: 'If EUR/SEK deviates by more than 2.5 %, prices in SEK are adjusted'."""

from tracker.intake.values.figures.rates import states_rate
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.words.lists import phrases


def beside_exchange(clause: str) -> str:
    """A clause without what it says of such rates, which tells when prices move, and not in what money they are."""
    if not states_rate(clause) or not any(one.value == "deviates" for one in phrases("currency_clauses").find(clause)):
        return clause
    return ",".join(part for part in COMMA.split(clause) if not phrases("currency_clauses").find(part))
