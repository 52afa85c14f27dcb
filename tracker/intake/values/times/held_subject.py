"""Whose last day a sentence tells: 'Our offer is valid until …' that of the prices, 'Our eco label is valid until …'
that of the label, and of whatever else a vendor may have that holds for a time."""

import re

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.notes.relatives import is_relative, without_relatives
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.times.dates import find_dates
from tracker.intake.words.lists import phrases, without_words
from tracker.intake.words.phrases import blanked, tokens_of

_SPEAKS = ("valid", "until", "lasts_for")
_PRICES = ("price_words", "price_lists", "list_names", "these_prices", "all_goods")
_ADDED = ("valid", "until", "since", "copula", "articles", "months", "generic_names", "forms", "firm_times", "dated")
"""Words that make nothing else of what holds until a day, but do not say what it is either."""
_OWN, _OTHERS, _FILLER, _LEADS = "own", "others", "filler", "leads"
_LABEL, _OF_A_SPAN = "label", "of_a_span"
"""Keys of the word lists."""
_SIGNS = " -–—•*(\"'"
_WORD = re.compile(r"[^\W\d_]{4,}")
"""A word that may be a noun; what is shorter goes without saying, or is cut short."""
_LABELS = re.compile(r":|\s/\s")
"""Behind 'Note:', and between the two languages of 'Voimassa / Valid until'."""
_NAME_ENDS = re.compile(r",|:|\d")
_COUNTED = re.compile(r"(?<!\d)\d{1,3}\s*[^\W\d_]+")
"""'30 days'."""


def of_unknown_subject(clause: str) -> bool:
    """Whether what a clause says to hold until a day has a name that is none of prices, papers with them or boards.

    It stands before the word for it ('Our eco label is valid until …'), behind one that begins the clause ('Bis 30.
    Juni gilt unser Umweltsiegel'), or is whose validity it is ('Validity of our eco label: …').
    """
    said = (match for section in _SPEAKS for match in phrases(section).find(clause))
    spoken = sorted(match.span for match in said if match.value != _OF_A_SPAN)
    if not spoken:
        return False
    ahead = _subject(clause[: spoken[0][0]])
    if ahead.strip(_SIGNS):
        # The 'Preise' of 'Preise gelten bis' is one of the words for validity there.
        return _is_another(f"{ahead} {clause[slice(*spoken[0])]}")
    if clause[: spoken[0][0]].strip(_SIGNS):
        return False
    labelled = phrases("valid").at(tokens_of(clause[spoken[0][0] :]), 0)
    named = clause[spoken[0][1] :] if labelled is not None and labelled.value == _LABEL else _behind_its_day(clause)
    return _is_led(named) and _is_another(_NAME_ENDS.split(named)[0])


def _behind_its_day(clause: str) -> str:
    """The 'unser Umweltsiegel' of 'Bis 30. Juni gilt unser Umweltsiegel'; '' where no verb stands behind the day."""
    days = find_dates(clause)
    behind = clause[days[0].end :].lstrip() if days else ""
    verb = next((match for match in phrases("valid").find(behind) if match.start == 0), None)
    return "" if verb is None else behind[verb.end :]


def _subject(ahead: str) -> str:
    """What a clause begins with, up to its word for validity: behind the last comma, colon or slash; of a relative
    clause ('Our seal, which you know, holds until …') it is the part before."""
    *before, last = COMMA.split(without_relatives(_LABELS.split(ahead)[-1]))
    return f"{before[-1]} {last}" if before and is_relative(last) else last


def _is_led(part: str) -> bool:
    """'Of our eco label', 'unser Umweltsiegel': a noun of its own, not 'for all grades'."""
    found = next(iter(phrases("held_subject").find(part)), None)
    return found is not None and found.value == _LEADS and not part[: found.start].strip()


def _is_another(words: str) -> bool:
    named = {match.value for match in phrases("held_subject").find(words)}
    if _OTHERS in named:
        return True
    if _OWN in named or any(phrases(section).find(words) for section in _PRICES):
        return False
    if (
        phrases("lead_topic").find(words)
        or find_grade(words) is not None
        or find_currencies(words)
        or find_delivery(words) is not None
    ):
        return False
    left = _COUNTED.sub(" ", blanked(words, ((day.start, day.end) for day in find_dates(words))))
    return _WORD.search(without_words(left, *_ADDED, "held_subject")) is not None
