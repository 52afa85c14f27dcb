"""Pieces of a note that go on with the time of something else: the 'sheets in five weeks' of 'Rolls are paid in 15
business days, sheets in five weeks'."""

from collections.abc import Sequence

from tracker.intake.values.times.times_in_words import counts_time, times_in_figures
from tracker.intake.words.lists import joined

_OTHERS = ("not_lead.any", "other_times")
_OWN = ("lead_topic", "from_order", "takes_time", "made_so.takes", "from_stock", "kept_in_stock")
"""What tells a lead time by its own words: 'GD2 takes 5 weeks', and not 'GD2 in 5 weeks'."""


def goes_on_with_another(piece: str, before: Sequence[str]) -> bool:
    """Whether a piece counts a time by no word of its own, where the last one before it that counts one tells when
    something is paid, claimed or confirmed: the verb is said once for all."""
    if not _counts(piece) or joined(*_OWN).find(piece):
        return False
    # 'Rolls are paid in 15 days, sheets in 20, reels in 30' goes on with what leads it.
    led = (one for one in reversed(before) if _counts(one) and joined(*_OWN, *_OTHERS).find(one))
    last = next(led, None)
    return last is not None and not joined(*_OWN).find(last)


def with_what_leads(parts: Sequence[str]) -> tuple[str, ...]:
    """The 'CUK in 5 weeks' of 'SBS is paid in 3 weeks; CUK in 5 weeks' put back behind the text that has its verb."""
    told: list[str] = []
    for part in parts:
        if told and goes_on_with_another(part, told[-1:]):
            told[-1] = f"{told[-1]}, {part}"
        else:
            told.append(part)
    return tuple(told)


def _counts(piece: str) -> bool:
    return counts_time(times_in_figures(piece))
