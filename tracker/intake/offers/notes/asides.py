"""Remarks in the midst of a group of rows, which head nothing below them."""

from collections.abc import Iterable
from functools import lru_cache

from tracker.intake.tables.table import Words
from tracker.intake.values.boards.grade import find_grade


def begin_a_group(headings: Iterable[Words]) -> bool:
    """Whether what stands between two rows heads the second: a remark in the midst of a group leaves it one."""
    return not all(_is_aside(words.text) for words in headings)


@lru_cache(maxsize=4096)
def _is_aside(text: str) -> bool:
    """'(stock sizes only)', '* from autumn', 'new making of 16 pt in week 31': set apart, or a sentence's part."""
    text = text.strip()
    if find_grade(text) is not None or not text:
        return False
    set_apart = text[0] in "*†‡" or (text[0] == "(" and text[-1] == ")")
    return set_apart or (not text[0].isupper() and text[0].isalnum() and len(text.split()) >= _FEWEST_WORDS)


_FEWEST_WORDS = 4
"""A heading of a group is shorter, or begins with a capital."""
