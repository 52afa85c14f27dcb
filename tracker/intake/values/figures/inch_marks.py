"""The sign for inches behind a figure: the '38"' of '38" rolls - $1,212.00' is how wide they are."""

import re

_MARK = re.compile(r"\s?(?:\"|'')")


def is_in_inches(folded: str, start: int, end: int) -> bool:
    """Whether the figure from `start` to `end` has the sign behind it; not in '"1,212.00"', which is in quotes."""
    quoted = folded.count('"', 0, start) % 2
    return not quoted and _MARK.match(folded, end) is not None
