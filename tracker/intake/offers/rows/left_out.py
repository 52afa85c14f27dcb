"""Lines that a person decided to leave out rather than settle: refused, and saying so."""

from collections.abc import Iterable
from dataclasses import replace

from tracker.intake.offers.draft import Draft
from tracker.intake.words.fold import fold
from tracker.trade.answers import objection
from tracker.trade.offer import LEAVE_OUT, Answers


def to_read_with(answers: Answers) -> Answers:
    """The answers that mean something to the reader.

    Those that leave lines out say nothing of currency or unit; one that is not of its kind leaves its question open.
    """
    settled = {
        fold(key): value
        for key, value in answers.settled.items()
        if value != LEAVE_OUT and objection(key, value) is None
    }
    return replace(answers, settled=settled)


def leave_out(drafts: Iterable[Draft], answers: Answers) -> None:
    """Refuses the lines that a question holds back whose answer was to leave them out."""
    unwanted = {key for key, value in answers.settled.items() if value == LEAVE_OUT}
    if not unwanted:
        return
    for draft in drafts:
        cause = next((asked for asked in draft.asked if asked.key in unwanted), None)
        if cause is not None:
            draft.asked.clear()
            draft.refuse(cause.code, "Left out, as you decided.")
