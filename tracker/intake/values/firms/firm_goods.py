"""What a firm deals in, said behind a comma as a part of its name: 'Hermanos Ardelune, cartón y papel'."""

import re

from tracker.intake.words.lists import pattern, phrases
from tracker.intake.words.phrases import Found

_GOODS = re.compile(r",\s+(?P<goods>[^,;:|]+)$")
_JOINED = re.compile(rf"(?:-\s|\s)?{pattern('range', 'and')}\s|\s&\s")


def with_goods(text: str, name: str) -> str:
    """The name with the goods that the rest of its text joins to it; 'Marlow Mills, paperboard' may go on with what the
    sheet is about, and is left as it is."""
    whole = text.strip()
    behind = _GOODS.fullmatch(whole.removeprefix(name)) if whole.startswith(name) else None
    if behind is None:
        return name
    goods = [part.strip(" -") for part in _JOINED.split(behind["goods"])]
    named = all(phrases("firm_goods").whole(part) is not None for part in goods)
    dealers = phrases("firm_dealers").whole(behind["goods"]) is not None
    return whole if dealers or (len(goods) > 1 and named) else name


def ends_in_goods(name: str, word: Found[str]) -> bool:
    """The board that a firm is called by behind a name: 'Alborena Cartoncillo', not 'Cartoncillo, S.L.'."""
    return word.first > 0 and phrases("company").whole(name[word.start : word.end]) == "weak"


def before_its_works(head: str) -> tuple[str, str, str]:
    """'Marlow Coated', 'Board', 'Board Company': of a name that tells no more of board than its coating."""
    ends = [match for match in phrases("works").find(head) if match.value == "behind" and match.end == len(head)]
    return (head[: ends[0].start], head[ends[0].start :], head[ends[0].start :]) if ends else (head, "", "")
