"""When to pay, where it stands by itself: '1% 20, net 30', '30 Tage netto', and not 'Net' over prices."""

import re
from functools import lru_cache

from tracker.intake.values.heads.roles import Role
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import tokens_of

_USUAL_DAYS = frozenset({10, 15, 20, 30, 45, 60, 90, 120})
"""What 'net 30' counts without a word for days; other figures may be calipers. Common practice, no source."""
_MOST_DAYS = 365


@lru_cache(maxsize=8192)
def is_when_to_pay(text: str) -> bool:
    """Whether a text is made of a word for net, days and percents alone."""
    figures = [int(figure) for figure in re.findall(r"(?<![\d.,])\d+(?![\d.,]*\d)", text)]
    words = [(place, token) for place, (token, _, _) in enumerate(tokens_of(text)) if token.isalpha()]
    if not figures or max(figures) > _MOST_DAYS or not words:
        return False
    net = {match.first for match in phrases("headers").find(text) if match.value == Role.NET_PRICE}
    net |= {place for place, word in words if phrases("headers_alone").whole(word) == Role.NET_PRICE}
    days = {match.first for match in phrases("lead").find(text) if match.value == "day"}
    counted = bool(days) or figures[-1] in _USUAL_DAYS
    return bool(net) and counted and all(place in net | days for place, _ in words)
