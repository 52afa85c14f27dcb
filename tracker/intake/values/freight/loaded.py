"""'Loaded on your truck' among terms of delivery: of prices it says that the buyer fetches, of goods how they leave."""

import re
from collections.abc import Sequence

from tracker.intake.values.notes.subjects import Subject, subject_of
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found

_PARTS = re.compile(r",(?!\d)|[;:()]|\.\s|\s[-–—]\s")


def without_loading(text: str, terms: Sequence[Found[str]]) -> list[Found[str]]:
    """The terms without those that tell how board is loaded: 'goods are inspected and loaded at our dock', 'franco,
    hayon sur votre camion non compris'; 'prices loaded at our dock' and 'loaded on your truck' alone stay."""
    return [term for term in terms if not _is_loading(text, term) or _of_prices(text, term, terms)]


def _is_loading(text: str, term: Found[str]) -> bool:
    return phrases("loaded").whole(text[term.start : term.end]) is not None


def _of_prices(text: str, term: Found[str], terms: Sequence[Found[str]]) -> bool:
    """Beside 'delivered' only where it is all that a part says, or stands right behind: 'delivered, loaded on your
    truck' and 'prix franco sur votre camion' contradict themselves."""
    cuts = [0, *(place for cut in _PARTS.finditer(text) for place in cut.span()), len(text)]
    starts = max(place for place in cuts if place <= term.start)
    ends = min(place for place in cuts if place >= term.end)
    ahead, behind = text[starts : term.start].strip(), text[term.end : ends].strip(" .")
    either = any(match.value == "or" for match in phrases("range").find(text))
    if any(each.value == "delivered" for each in terms) and not either:
        follows = any(each.after == term.first for each in terms)
        return follows or not (ahead or behind)
    return subject_of(ahead, "ahead_of_delivered", "articles", "all_of_them", "orders_meant") is not Subject.OTHER
