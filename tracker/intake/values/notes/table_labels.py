"""What tables are called: by letters and numbers in a text, 'table A', 'the first table', and by those of lists."""

import re
from functools import lru_cache

from tracker.intake.values.notes.rest import Span, rest_of
from tracker.intake.words.lists import joined, pattern, phrases

_SIGN = r"(?:[A-Z]|[IVX]{1,4}|\d{1,2})"
_AND = rf"(?:[&+]|\b{pattern('range', 'and')}\b)"
# 'Tables A, B and C'; in 'table B, 6 weeks' the figure is no table's.
_LABELS = re.compile(
    rf"\.?\s*(?:n[or]\.?|n[°º])?\s*(?P<labels>{_SIGN}(?:(?:\s*,\s*{_SIGN})*\s*{_AND}\s*{_SIGN}(?!\w))*)"
    r"(?![\w°%]|[.,]\d)"
)
_EACH = re.compile(_SIGN)

PLACE = "#"
"""Before the number of a table that is called by its place: 'the first table'."""


@lru_cache(maxsize=4096)
def table_labels(text: str) -> tuple[tuple[frozenset[str], Span], ...]:
    """The letters and numbers by which a text names tables, and where: 'table A', 'Tafeln 1 und 2', 'first table'.

    'Section 2 of our terms' is none of a list.
    """
    found = []
    for match in phrases("tables_named").find(text):
        if match.value != "table":
            found.append((frozenset({f"{PLACE}{match.value}"}), (match.start, match.end)))
        elif (labels := _LABELS.match(text, match.end)) is not None and not _is_of_a_paper(text[labels.end() :]):
            signs = frozenset(sign.casefold() for sign in _EACH.findall(labels["labels"]))
            found.append((signs, (match.start, labels.end())))
    return tuple(found)


@lru_cache(maxsize=1024)
def numbered_list(title: str) -> str:
    """The 'list 14' of 'List 14, October', folded; '' for a title that calls its table otherwise."""
    begins = _NUMBERED.match(title.strip())
    named = begins is not None and joined("list_names", "price_lists").whole(begins["word"]) is not None
    return " ".join(begins.group().casefold().split()) if begins is not None and named else ""


_NUMBERED = re.compile(r"(?P<word>[^\W\d]+(?:\s[^\W\d]+)?)\s+\d+(?![\w°%]|[.,]\d)")


def _is_of_a_paper(behind: str) -> bool:
    """'Of our terms', right behind a number."""
    named = next(iter(phrases("papers_of_terms").find(behind)), None)
    return (
        named is not None and not rest_of(behind[: named.start], ()) and _ASIDE.search(behind, 0, named.start) is None
    )


_ASIDE = re.compile(r"[^\w\s'’]")
