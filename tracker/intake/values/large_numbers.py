"""Numbers that are said with hundreds or thousands, of which only 'ten thousand' is read: a part of 'one hundred and
twenty' is another number than the whole, so all of it is left in words."""

import re
from collections.abc import Callable
from functools import cache

from tracker.intake.words.lists import pattern, phrases, words

InFigures = Callable[[str], str]
"""Puts each word for a number in figures, of whichever number it is a part."""


def outside_large_numbers(text: str, put: Callable[[str], str], in_figures: InFigures) -> str:
    """A text with `put` done to all of it but the numbers that are not read; a large word alone is none of them."""
    if not _LARGE.search(text):
        return put(text)
    done, reached = [], 0
    for match in _run().finditer(text):
        if _is_unread(match, in_figures):
            done += [put(text[reached : match.start()]), match.group()]
            reached = match.end()
    return "".join(done) + put(text[reached:])


def says_unread_number(text: str, in_figures: InFigures) -> bool:
    """A number that is not read stands there, but for one in brackets behind its figures: '500 (five hundred) kg'."""
    if not _LARGE.search(text):
        return False
    unread = (match for match in _run().finditer(text) if _is_unread(match, in_figures))
    return any(not _REPEATS.search(text[: match.start()]) for match in unread)


_HUNDRED = pattern("large_numbers", "hundred")
_THOUSAND = pattern("thousand_words", "any")
_AND = pattern("large_numbers", "joined")
_LARGE = re.compile(f"{_HUNDRED}|{_THOUSAND}", re.IGNORECASE)
_REPEATS = re.compile(r"\d\s*\(\s*$")
_READ = re.compile(rf"(?:\d{{1,3}}(?:\s?{_THOUSAND})?\s{_AND}\s)?\d{{1,3}}\s?{_THOUSAND}", re.IGNORECASE)
"""'Ten thousand', 'five and ten thousand' behind 'between'."""
_BEHIND = " t"
"""A number is written out before a word."""


@cache
def _run() -> re.Pattern[str]:
    """Words for numbers one behind the other, of which one is large: 'four thousand five hundred', 'zweihundert'."""
    counted = sorted((word for group in words("count_words").values() for word in group), key=len, reverse=True)
    one = "|".join(map(re.escape, counted))
    large = rf"(?:{one})*(?:{_HUNDRED}|{_THOUSAND})(?:{_AND}|{one}|{_HUNDRED}|{_THOUSAND})*"
    piece = rf"(?:{large}|(?:{one})(?:{_AND}|{one})*)\b"
    apart = rf"(?:-|\s+(?:{_AND}\s+)?)"
    return re.compile(
        rf"(?<![\w.,])(?:\d{{1,3}}\s?(?={_THOUSAND}\b))?(?:{piece}{apart})*{large}\b(?:{apart}{piece})*", re.IGNORECASE
    )


def _is_unread(match: re.Match[str], in_figures: InFigures) -> bool:
    said = match.group()
    if _LARGE.fullmatch(said) or _READ.fullmatch(in_figures(f"{said}{_BEHIND}").removesuffix(_BEHIND)):
        return False
    # 'Five hundred pounds' are five of a unit that is so called.
    last = _LAST.search(said)
    before = said[: last.start()].strip() if last is not None else ""
    rest = match.string[match.start() + last.start() :] if last is not None else ""
    of_unit = any(unit.start == 0 and unit.value == "cwt" for unit in phrases("basis").find(rest))
    return not (of_unit and before and in_figures(f"{before}{_BEHIND}").removesuffix(_BEHIND).isdigit())


_LAST = re.compile(rf"(?<!\w){_HUNDRED}$", re.IGNORECASE)
