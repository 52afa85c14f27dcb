"""The lead times that are said around some rows, where what is in stock still takes its days to go out, or where it is
only of what is in stock that a time is said."""

from tracker.intake.offers.notes.said import Said
from tracker.intake.offers.notes.scope import Scope
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.times.lead import LeadTime, lead_text
from tracker.intake.values.times.lead_unread import LeadUnread
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import tokens_of

_FROM_STOCK = (0, 0)
_TITLES = ("title", "sheet", "sheet name")


def leads_around(scope: Scope) -> tuple[Said[LeadTime], ...]:
    """The nearest lead times; for 'Stock formats' in a title, the one time that all boards take to go out, where the
    sheet says it: 'Dispatch within 7 days'."""
    said = scope.nearest(LeadTime)
    if not said or any(one.value.days != _FROM_STOCK or one.value.grades for one in said):
        return said
    level = next(level for level in scope.levels if level.all_of(LeadTime))
    if level.name not in _TITLES:
        return said
    # 'Dispatch in 4 weeks (GD2 from stock)' tells the two apart itself.
    apart = {one.where for one in said}
    others = (one for around in scope.levels for one in around.all_of(LeadTime) if one.where not in apart)
    counted = {one.value.days: one for one in others if _goes_out(one)}
    return tuple(counted.values()) if len(counted) == 1 else said


def lead_of_stock(scope: Scope, unread: Said[LeadUnread]) -> LeadTime | None:
    """The time of what is in stock where the list's title says that it sells what is: 'Stock board, spring prices'."""
    texts = (words for level in scope.levels if level.name in _TITLES for words in level.texts)
    others = (words.text for words in texts if words.text != unread.words)
    of_stock = any(match.value == "stock" for text in others for match in phrases("list_parts").find(text))
    return unread.value.of_stock if of_stock else None


def _goes_out(said: Said[LeadTime]) -> bool:
    """A clause of its own that counts the days of a dispatch, and none of making."""
    if said.value.days == _FROM_STOCK or said.value.grades:
        return False
    return any(_time_to_go_out(clause) == said.value.days for clause in clauses(said.words))


def _time_to_go_out(clause: str) -> tuple[int, int] | None:
    leads = phrases("dispatch").at(tokens_of(clause), 0)
    lead = lead_text(clause[leads.end :].strip(" :.")) if leads is not None else None
    return None if lead is None else lead.days
