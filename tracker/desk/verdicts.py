"""What people decided about a board: approved for a use, or rejected and why."""

from __future__ import annotations

from typing import TYPE_CHECKING

from tracker.desk.chasing import signature
from tracker.desk.claims import claims
from tracker.desk.edits import Edit, writing
from tracker.desk.sample_life import SampleState
from tracker.desk.samples import sample, verdict_words
from tracker.desk.trouble import Trouble
from tracker.trade.days import day_text

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.store.verdicts import BoardVerdict as BoardVerdict


def approve(desk: Desk, vendor: str, product: str, for_what: str, sample: int | None = None) -> Edit:
    """Approves a vendor's board for a use; `sample` is the number of the sample it rests on. It is signed with the name
    that chases are signed with, where one is kept."""
    from tracker.store import verdicts as kept

    use = f" for {for_what.strip()}" if for_what.strip() else ""
    text = f"approved {_called(product)} of {vendor}{use}"
    with writing(desk, text) as pen:
        change = kept.add(pen, vendor, product, True, for_what.strip(), "", desk.today, signature(desk), sample)
    return Edit(text, (change,))


def reject(desk: Desk, vendor: str, product: str, because: str, sample: int | None = None) -> Edit:
    """Rejects a vendor's board. Trouble without a reason: the vendor will ask for one."""
    from tracker.store import verdicts as kept

    if not because.strip():
        raise Trouble("Say why the board is rejected: the vendor will ask.")
    text = f"rejected {_called(product)} of {vendor}: {because.strip()}"
    with writing(desk, text) as pen:
        change = kept.add(pen, vendor, product, False, "", because.strip(), desk.today, signature(desk), sample)
    return Edit(text, (change,))


def decide(desk: Desk, number: int, approved: bool, words: str) -> Edit:
    """The verdict on the board that a sample is of: approved for `words`, or rejected because of them.

    Trouble for a sample that has not arrived, a rejection without a reason, or where it isn't known which of the
    vendor's boards the sample is of: a verdict on a nameless board could be shown beside no price.
    """
    tried = sample(desk, number)
    if tried.state not in (SampleState.ARRIVED, SampleState.TESTED):
        raise Trouble(f"Sample {number} has not arrived, so nobody can have tried it.")
    known = claims(desk, number)
    if not known.found:
        raise Trouble(f"Say first which board sample {number} is of, by the vendor's name for it. {known.why_not}")
    if approved:
        return approve(desk, tried.vendor, known.board, words or tried.for_what, number)
    return reject(desk, tried.vendor, known.board, words, number)


def _called(product: str) -> str:
    return product or "a board without a name"


def verdicts(desk: Desk) -> tuple[BoardVerdict, ...]:
    """Every decision, the latest first."""
    from tracker.store import verdicts as kept

    with desk.store.reading() as connection:
        return kept.listing(connection)


def said(verdict: BoardVerdict) -> str:
    """A decision with who and when: 'approved for tea cartons (Ada, 20 Nov 2026)'."""
    return f"{verdict_words(verdict)} ({verdict.by}, {day_text(verdict.on)})"
