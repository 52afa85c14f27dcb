"""Names of sheets that call what is in them old, and those of the sheets beside them: 'Old 2025' and 'Current', 'Alt'
and 'Neu'. 'Old Mill Road' and 'Oldham' are other names."""

import re
from enum import IntEnum
from functools import lru_cache

from tracker.intake.words.lists import phrases, without_words

_OLD, _IN_FORCE = "old", "in_force"
"""Keys of the word lists of ages."""
_YEAR = re.compile(r"(?<!\d)(?:19|20)\d\d(?!\d)")
_BESIDE = ("price_words", "price_lists", "list_names", "papers", "articles", "months", "quarters")


class CalledOld(IntEnum):
    """Whether a name says that prices are old. SHORTLY: by one word alone, which may mean something else ('Alt')."""

    NOT = 0
    SHORTLY = 1
    PLAINLY = 2


@lru_cache(maxsize=1024)
def called_old(name: str) -> CalledOld:
    """'Old 2025', '2025 old', 'gamla priser' are plain; 'Old' and 'viejo' are short."""
    text = name.replace("_", " ")
    if not _is_of_age(text, _OLD):
        return CalledOld.NOT
    more = _YEAR.search(text) or any(phrases(section).find(text) for section in _BESIDE)
    return CalledOld.PLAINLY if more else CalledOld.SHORTLY


@lru_cache(maxsize=1024)
def called_current(name: str) -> bool:
    """'Current', 'Neu', 'Tarif en vigueur'."""
    return _is_of_age(name.replace("_", " "), _IN_FORCE)


def is_of_a_later_year(name: str, than: str) -> bool:
    """Whether a name has a year, and it is later than the one of another name."""
    years, others = _YEAR.findall(name), _YEAR.findall(than)
    return bool(years and others) and min(years) > max(others)


def _is_of_age(text: str, age: str) -> bool:
    """It has a word for this age, and beside it no other than those of lists and times."""
    ages = {match.value for match in phrases("price_ages").find(text)}
    rest = without_words(text, "price_ages", *_BESIDE)
    return ages == {age} and not any(map(str.isalpha, rest))
