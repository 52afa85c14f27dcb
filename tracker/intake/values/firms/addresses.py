"""Addresses of letterheads and the countries that they are in: what decides whose dollar a bare $ is."""

import re
from functools import lru_cache

from tracker.intake.words.lists import phrases, words
from tracker.intake.words.phrases import Found, tokens_of

_ZIP = re.compile(r"\b[A-Z]{2}\.?\s+\d{5}(?:-\d{4})?\b")
"""'CA 91761': the state and the ZIP code of the United States, which make 'Ontario, CA 91761' a town of theirs."""
_CANADIAN = re.compile(
    r"\b(?!C\dS)[ABCEGHJ-NPRSTVXY]\d[A-Z] \d[A-Z]\d\b"
    r"|[,(]\s*(?:ON|QC|Qc|BC|AB|MB|SK|NS|NB|PE)\s*(?:[,.)]|$)"
    r"|,\s*(?:Ont|Qu[eé]|Man|Sask|Alta|Nfld)\.(?=\s*(?:$|[,;()]|[A-Z]\d[A-Z]))"
)
"""'M5V 2T6', ', ON' and ', Ont.'"""
_POSTCODES = re.compile(r"\bC\.\s?P\.\s*\d{5}\b|\b(?:NSW|VIC|QLD|TAS)\s+\d{4}\b")
"""'C.P. 64000' of Mexico and Spain, 'NSW 2000'."""
_SITE = re.compile(
    r"(?:@|\bwww\.)[\w.-]+\.(?:ca|mx|au|nz|de|at|ch|fr|es|se|fi|no|dk|nl|be|it|pl|cz|pt|ie|uk|cl|ar|br|za|jp|cn|hk|sg|tw|in)\b",
    re.IGNORECASE,
)
_CALLED_ABROAD = re.compile(r"(?<![\w.])\+\s?[2-9]\d{1,2}[\s()/-](?:[\s()./-]*\d){6,}")
"""'+52 81 8345 1200': an international number that does not begin with North America's 1."""
_NORTH_AMERICAN = re.compile(r"(?<!\d)(?:\+?1[\s.-]*)?\(?(\d{3})\)?[\s.-]+\d{3}[\s.-]\d{4}(?!\d)")


@lru_cache(maxsize=4096)
def countries(text: str) -> frozenset[str]:
    """The countries (ISO 3166 alpha-2) that an address or sentence names; states and provinces count for theirs."""
    found = phrases("countries").find(text)
    return frozenset(match.value for match in found if match.value == "US" or not _namesake(text, match))


@lru_cache(maxsize=4096)
def abroad(text: str) -> bool:
    """Whether a text holds an address outside the United States, or what only firms elsewhere write in a letterhead:
    their postcodes and telephone numbers, the streets of other languages, taxes that the United States do not have."""
    named = countries(text)
    if named - {"US"}:
        return True
    if named or _ZIP.search(text):
        return False
    if any(sign.search(text) for sign in (_CANADIAN, _POSTCODES, _SITE, _CALLED_ABROAD)):
        return True
    area = _NORTH_AMERICAN.search(text)
    in_canada = area is not None and area.group(1) in words("area_codes")["CA"]
    return in_canada or bool(phrases("signs_abroad").find(text)) or _has_a_street(text)


def _namesake(text: str, match: Found[str]) -> bool:
    """The Ontario of 'Ontario, California', the Toronto of 'Toronto, Ohio' and the Canada of '12 Canada Street'."""
    behind = text[match.end :]
    if _ZIP.match(behind.lstrip(" ,")):
        return True
    found = tokens_of(behind)
    if phrases("streets").at(found, 0) is not None:
        return True
    state = phrases("countries").at(found, 1) if found and found[0][0] == "," else None
    return state is not None and state.value == "US"


def _has_a_street(text: str) -> bool:
    """'212, chemin du Barrage', 'Calle Mayor 14' and 'Lindenstraße 9': a number at a street that is called so."""
    found = tokens_of(text)
    for match in phrases("streets_abroad").among(found):
        before = [token for token, _, _ in found[max(0, match.first - 2) : match.first] if token != ","]
        behind = [token for token, _, _ in found[match.after : match.after + _LONGEST_STREET]]
        if match.value == "number_first":
            if before and before[-1].isdigit():
                return True
        elif any(token.isdigit() for token in behind):
            return True
    return False


_LONGEST_STREET = 5
"""Words of a street's name and its number."""
