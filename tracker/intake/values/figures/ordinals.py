"""Numbers that count the steps of a price and say nothing of an order: 'Preis 2 (ab 5 t)', 'Staffel 3: ab 10 t'."""

import re

from tracker.intake.words.lists import phrases

_ORDINAL = re.compile(r"^(?P<word>[^\W\d]+)[ .-]*\d{1,2}(?:\s*(?P<ends>:|\)(?=\s))\s*|[.]?\s*(?=[(\[<>≤≥]|[^\W\d]))")


def without_ordinal(text: str) -> str:
    """'Preis 2 (ab 5 t)', 'Staffel 3: ab 10 t' and 'Stufe 1: < 5 t' count the prices, and no order is for 2 t."""
    first = _ORDINAL.match(text)
    named = phrases("bracket").whole(first["word"]) if first is not None else None
    if first is None or named not in (None, "filler"):
        return text
    rest = text[first.end() :]
    if first["ends"] or rest[:1] in "([" or (named is None and rest[:1] in "<>≤≥"):
        return rest
    said = phrases("bracket").find(rest)
    begins = bool(said) and said[0].first == 0 and said[0].value in ("from", "above", "below")
    return f"{first['word']} {rest}" if begins and rest[:1] not in "<>≤≥" else text
