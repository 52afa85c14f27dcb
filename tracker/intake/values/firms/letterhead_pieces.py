"""A letterhead in one cell whose pieces stand wide apart: 'Tolbrook Sheet & Board     Akron, Ohio'."""

import re
from functools import lru_cache

from tracker.intake.values.firms.company import company_name, letterhead_name

_WIDE = re.compile(r"[^\S\n]{3,}")
_LONGEST = 400


@lru_cache(maxsize=1024)
def letterhead_in_pieces(text: str) -> str | None:
    """'Tolbrook Sheet & Board | Akron, Ohio', None for a text that is no firm's name with more behind it.

    Asked before blanks are tidied away, since they are all that parts the pieces.
    """
    first, *others = _WIDE.split(text[:_LONGEST].strip())
    if not others or "\n" in text or (company_name(first) or letterhead_name(first)) != first:
        return None
    return " | ".join(" ".join(piece.split()) for piece in (first, *others))
