"""Prices of several rounds of a negotiation beside each other: of 'Initial offer | Revised offer' the last is meant."""

from collections.abc import Iterable, Mapping

from tracker.intake.columns.column import Column, Kind
from tracker.intake.columns.priced.in_force import plainly, without_days
from tracker.intake.words.lists import phrases

SEVERAL_ROUNDS = "prices of several rounds of bids stand beside each other"
"""The doubt that such prices leave, where none of them says that it is the last."""
_LAST = "last"


def set_aside_earlier_rounds(kinds: Mapping[Column, Kind]) -> dict[Column, Kind]:
    """The kinds of prices with those before the last round as earlier ones. What holds from a day on may be yet to
    come, and is asked about."""
    found = dict(kinds)
    for group in _groups(column for column, kind in kinds.items() if kind is Kind.OFFER):
        last = [column for column, said in group.items() if said == _LAST]
        if len(last) == 1 and not phrases("since").find(last[0].text):
            found |= dict.fromkeys((column for column in group if column is not last[0]), Kind.PREVIOUS)
    return found


def several_rounds(offers: Iterable[Column]) -> bool:
    """Whether prices of several rounds are left, so that a person must say which is paid."""
    return bool(_groups(offers))


def _groups(columns: Iterable[Column]) -> list[dict[Column, str]]:
    """Columns of different rounds whose heads say nothing else that differs, with the round of each."""
    alike: dict[str, dict[Column, str]] = {}
    for column in columns:
        rounds = phrases("bid_rounds").find(column.text)
        if len(rounds) == 1:
            rest = column.text[: rounds[0].start] + column.text[rounds[0].end :]
            alike.setdefault(plainly(without_days(rest)), {})[column] = rounds[0].value
    return [group for group in alike.values() if len(set(group.values())) > 1]
