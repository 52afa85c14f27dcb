"""'% of base price', 'in % vom Grundpreis': what a column's figures are a share of, so that they are no prices."""

import re
from functools import lru_cache

from tracker.intake.values.heads.roles import MONEY
from tracker.intake.words.lists import phrases

_SHARE = re.compile(r"(?<![\d\w])(?<!\d\s)(?P<sign>%)")


@lru_cache(maxsize=4096)
def share_of_price(text: str) -> int | None:
    """Where a head names the price that its figures are a share of; None where it names none."""
    ends = [match.end for match in phrases("percent").find(text)]
    sign = _SHARE.search(text)
    ends += [] if sign is None else [sign.end("sign")]
    return next((end for end in ends if _is_of_a_price(text[end:])), None)


def _is_of_a_price(behind: str) -> bool:
    """'of base price', 'vom Listenpreis', and not the 'EUR/t' of 'Price incl. 3 % EUR/t'."""
    of = next((match for match in phrases("shares_of").find(behind) if not behind[: match.start].strip()), None)
    named = "" if of is None else behind[of.end :]
    return bool(phrases("price_words").find(named)) or any(
        match.value in MONEY for match in phrases("headers").find(named)
    )
