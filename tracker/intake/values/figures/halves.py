"""Two prices in one cell, told apart by a sign: '1.210 / 1.245', '1,245 (1,210)', '890 → 915 €/t'."""

import re

_PARTED = re.compile(r"\s*(?:[/;|→]|->|\s[-–—]\s)\s*")
_BRACKETED = re.compile(r"(?P<first>[^()]+?)\s*\((?P<second>[^()]+)\)")


def halves_of(text: str) -> tuple[str, str] | None:
    """What stands on either side of the sign; None where a text does not hold two figures so. One of them may be a
    dash, where nothing was offered then. The '/' of '1.210 / 1.245 €/t' before its unit parts no figures."""
    text = text.strip()
    bracketed = _BRACKETED.fullmatch(text)
    if bracketed is not None:
        return bracketed["first"].strip(), bracketed["second"].strip()
    found = [match for match in _PARTED.finditer(text) if _begins_a_half(text[match.end() :])]
    if len(found) != 1:
        return None
    return text[: found[0].start()].strip(), text[found[0].end() :].strip()


def _begins_a_half(text: str) -> bool:
    return re.match(r"[^\W\d]{0,3}[$€£]?\s*\d|[-–—]+$", text) is not None
