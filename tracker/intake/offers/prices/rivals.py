"""Two prices of a sheet for one and the same offer: the one that holds, as a person decided."""

from collections.abc import Iterable, Iterator

from tracker.intake.offers.draft import Asked, Draft
from tracker.trade.offer import Answers, Evidence, NoteCode

HOLDS = "holds"
"""The kind of the question which of two prices holds; its answer is the address of that one's cell."""


def decided(drafts: Iterable[Draft], answers: Answers) -> Iterator[Draft]:
    """The drafts, of two rivals the one that holds in the place of the other, which says why it is left out.

    A price on another basis that was joined to the first (`also`) changes places with it.
    """
    for draft in drafts:
        asked = next((each for each in draft.asked if each.key.startswith(f"{HOLDS}:")), None)
        holds = answers.settled.get(asked.key) if asked is not None else None
        if asked is None or draft.rival is None or holds not in asked.options:
            yield draft
        elif holds == draft.where:
            yield _holding(draft, draft.rival, asked)
        elif draft.rival.where in draft.also:
            yield _holding(_in_place_of(draft, draft.rival), draft, asked)
        else:
            draft.asked.clear()
            draft.refuse(NoteCode.PRICES_DISAGREE, f"Left out: the price in {holds} holds, as you decided.")
            yield draft


def _in_place_of(draft: Draft, rival: Draft) -> Draft:
    rival.also = tuple(cell for cell in (draft.where, *draft.also) if cell != rival.where)
    return rival


def _holding(draft: Draft, other: Draft, asked: Asked) -> Draft:
    draft.settle(asked.key)
    text = f"The price in {other.where} for the same board is another; this one holds, as you decided."
    draft.note(NoteCode.PRICES_DISAGREE, other.where, text)
    draft.evidence.append(Evidence("price", "your answer", draft.where))
    return draft
