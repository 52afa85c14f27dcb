"""What is said of some rows against what the head says of all: 'these two per cwt' below 'US$/short ton'."""

from collections.abc import Sequence

from tracker.intake.offers.boards.physics import costs_as_board_does
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.prices.money import foreign_unit
from tracker.intake.offers.prices.settle import Claim, Settled
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.prices.basis import find_basis
from tracker.intake.words.lists import phrases
from tracker.trade.basis import Basis, BoardMeasure


def of_these_rows(settled: Settled[str], claims: Sequence[Sequence[Claim[str]]], draft: Draft) -> Settled[str]:
    """The unit of a contradiction that a row's remark, a heading or a note on marked rows names, where board costs what
    the figure says in that unit, and in the others does not, or where the words set these rows apart from the rest."""
    near = [claim for level in claims for claim in level if claim.of_rows and claim.values]
    own = frozenset.intersection(*(claim.values for claim in near)) if near else frozenset()
    if len(own) != 1 or _costs_as_board(next(iter(own)), draft) is not True:
        return settled
    against = [claim for level in claims for claim in level if not (claim.of_rows or claim.excused)]
    others = frozenset(value for claim in against if not claim.values & own for value in claim.values)
    alone = all(_costs_as_board(value, draft) is False for value in others)
    return Settled(own, near[0]) if alone or any(map(_sets_apart, near)) else settled


def _costs_as_board(value: str, draft: Draft) -> bool | None:
    """None where that is not known."""
    if foreign_unit(value) is not None or draft.price is None or draft.currency is None:
        return None
    measure = BoardMeasure(draft.grammage_gsm, draft.sheet_mm)
    return costs_as_board_does(draft.price, draft.currency, Basis(value), measure)


def _sets_apart(claim: Claim[str]) -> bool:
    """'This line only', 'these two', 'items below': said against what holds for the others."""
    saying = [clause for clause in clauses(claim.words) if find_basis(clause) is not None]
    return any(phrases(section).find(clause) for clause in saying for section in ("of_this_line", "from_here_on"))
