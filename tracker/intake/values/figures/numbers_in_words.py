"""Numbers written out in words, put in figures: 'three weeks' -> '3 weeks'.

Of those said with hundreds or thousands only 'ten thousand' is read: a part of 'one hundred and twenty' is another
number than the whole, so all of it is left in words.
"""

import re
from collections.abc import Callable, Iterable
from functools import cache, lru_cache

from tracker.intake.words.lists import pattern, phrases, words


@lru_cache(maxsize=16384)
def in_figures(text: str) -> str:
    """'three weeks' -> '3 weeks', 'twenty-eight (28) days' -> '28 days'; other words stay as they are."""
    text = outside_large_numbers(text, _counts_in_figures)
    return _TWICE.sub(r"\1", text) if "(" in text else text


def in_figures_to_the_end(text: str) -> str:
    """The same, with the last word as well: 'over ten tonnes, up to twenty'; elsewhere a word behind it shows that it
    is a number."""
    return _to_the_end(text, in_figures)


def outside_large_numbers(text: str, put: Callable[[str], str]) -> str:
    """A text with `put` done to all of it but the numbers that are not read; a large word alone is none of them."""
    if not _may_have_large(text):
        return put(text)
    done, reached = [], 0
    for match in _run().finditer(text):
        if _is_unread(match):
            done += [put(text[reached : match.start()]), match.group()]
            reached = match.end()
    return "".join(done) + put(text[reached:])


def says_unread_number(text: str) -> bool:
    """'Five hundred fifty kg': a number that is not read, but for one in brackets behind its figures: '500 (five
    hundred) kg'."""
    if not _may_have_large(text):
        return False
    unread = (match for match in _run().finditer(text) if _is_unread(match))
    return any(not _REPEATS.search(text[: match.start()]) for match in unread)


_TWICE = re.compile(r"(?<![\d.,])(\d+)\s*\(\1\)")
"""A figure and the same in brackets, as contracts say it."""
_HUNDRED = pattern("large_numbers", "hundred")
_THOUSAND = pattern("thousand_words", "any")
_AND = pattern("large_numbers", "joined")
_LARGE = re.compile(f"{_HUNDRED}|{_THOUSAND}", re.IGNORECASE)
_REPEATS = re.compile(r"\d\s*\(\s*$")
_READ = re.compile(rf"(?:\d{{1,3}}(?:\s?{_THOUSAND})?\s{_AND}\s)?\d{{1,3}}\s?{_THOUSAND}", re.IGNORECASE)
"""'Ten thousand', 'five and ten thousand' behind 'between'."""


def _may_have_large(text: str) -> bool:
    """Whether a whole word may be a large number: the 'mil' of 'Mill' is none. Asked first, because the pattern for
    numbers of several words is one of thousands of signs, which few files need."""
    return _LARGE.search(text) is not None and _large_word().search(text) is not None


@cache
def _large_word() -> re.Pattern[str]:
    return re.compile(rf"(?<![^\W\d]){_large()}\b", re.IGNORECASE)


@cache
def _large() -> str:
    one = _any_of(_figures())
    return rf"(?:{one})*(?:{_HUNDRED}|{_THOUSAND})(?:{_AND}|{one}|{_HUNDRED}|{_THOUSAND})*"


@cache
def _run() -> re.Pattern[str]:
    """Words for numbers one behind the other, of which one is large: 'four thousand five hundred', 'zweihundert'."""
    one, large = _any_of(_figures()), _large()
    piece = rf"(?:{large}|(?:{one})(?:{_AND}|{one})*)\b"
    apart = rf"(?:-|\s+(?:{_AND}\s+)?)"
    return re.compile(
        rf"(?<![\w.,])(?:\d{{1,3}}\s?(?={_THOUSAND}\b))?(?:{piece}{apart})*{large}\b(?:{apart}{piece})*", re.IGNORECASE
    )


def _is_unread(match: re.Match[str]) -> bool:
    said = match.group()
    if _LARGE.fullmatch(said) or _READ.fullmatch(_to_the_end(said, _counts_in_figures)):
        return False
    # 'Five hundred pounds' are five of a unit that is so called.
    last = _LAST.search(said)
    before = said[: last.start()].strip() if last is not None else ""
    rest = match.string[match.start() + last.start() :] if last is not None else ""
    of_unit = any(unit.start == 0 and unit.value == "cwt" for unit in phrases("basis").find(rest))
    return not (of_unit and before and _to_the_end(before, _counts_in_figures).isdigit())


_LAST = re.compile(rf"(?<!\w){_HUNDRED}$", re.IGNORECASE)
_BEHIND = " t"
"""A number is written out before a word; this one stands behind the last."""


def _to_the_end(text: str, put: Callable[[str], str]) -> str:
    return put(f"{text}{_BEHIND}").removesuffix(_BEHIND)


def _counts_in_figures(text: str) -> str:
    """Word by word, of whichever number each is a part."""
    text = _compounds().sub(_sum, text)
    return _count_words().sub(lambda match: _figures()[match.group().lower()], text)


@cache
def _figures() -> dict[str, str]:
    return {word.lower(): figure for figure, group in words("count_words").items() for word in group}


_NEXT = r"(?=\W+[^\W\d]|\s*\(\d)"


def _any_of(figures: Iterable[str]) -> str:
    return "|".join(sorted(map(re.escape, figures), key=len, reverse=True))


@cache
def _count_words() -> re.Pattern[str]:
    return re.compile(rf"\b(?:{_any_of(_figures())})\b{_NEXT}", re.IGNORECASE)


@cache
def _compounds() -> re.Pattern[str]:
    """'Twenty-eight', 'treinta y cinco', 'achtundzwanzig', 'tjugoåtta'."""
    ones = _any_of(word for word, figure in _figures().items() if len(figure) == 1)
    tens = _any_of(word for word, figure in _figures().items() if figure in _TENS)
    joined = rf"(?P<tens>{tens})(?:-|\s|\sy\s|[-\s]et[-\s])?(?P<ones>{ones})"
    return re.compile(rf"\b(?:{joined}|(?P<first>{ones})und(?P<last>{tens}))\b{_NEXT}", re.IGNORECASE)


_TENS = frozenset({"20", "30", "40", "50", "60", "70", "80", "90"})


def _sum(match: re.Match[str]) -> str:
    parts = (match["tens"] or match["last"], match["ones"] or match["first"])
    return str(sum(int(_figures()[part.lower()]) for part in parts))
