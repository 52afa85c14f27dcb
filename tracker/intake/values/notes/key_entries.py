"""What a key explains, entry by entry: 'A = less than 10,000 lb, B = 10,000 lb and over', and with the head of the
column whose codes it explains: 'G: 1 = SBS, 2 = CUK'."""

import re
from collections.abc import Iterator
from functools import lru_cache
from typing import NamedTuple

from tracker.intake.values.notes.told_in_words import meant_by_codes, told_in_words
from tracker.intake.values.prices.units_of_codes import BEHIND_THE_CODES
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases

_PARTS = re.compile(r"[;\n|·]|[,.]\s(?=\S{1,6}\s*[=:])|,(?=[^\s=:,;.]{1,6}\s*=)|,\s(?=\S{1,3}\s[-–—]\s)")
_NEXT_BRACKET = re.compile(r"\s(?=\([^\W\d_]{1,2}\)\s+\S)")
"""'(d) delivered (f) FOB mill': only behind one that begins so, as units stand in brackets too."""
_ENTRY = re.compile(r"\s*(?P<code>[^\s=:]{1,6})\s*(?:[=:]|\s[-–—]\s)\s*(?P<said>[^=]+?)\s*")
_BRACKETED = re.compile(r"\s*\((?P<code>[^\s()]{1,3})\)\s*[=:–-]?\s*(?P<said>[^=]+?)\s*")

_NAMED_ENTRY = re.compile(
    r"\s*(?P<name>[^\d=:]{3,30}?)\s+(?P<code>[^\s=:]{1,3})\s*(?:[=:]|\s[-–—]\s)\s*(?P<said>[^=]+?)\s*"
)
"""'Class A: orders under 10,000 lb', where A or 'Class A' stands over prices."""
_KEY_BEHIND = r"\s*:\s*(?=[^\s=:,;]{1,6}\s*=)"
_LABELLED = re.compile(rf"\s*(?P<label>[^:=;,\n]{{1,30}}?){_KEY_BEHIND}(?P<rest>.*)", re.DOTALL)
_NEXT_LABEL = re.compile(rf"[,;.\n]\s*(?=[^:=;,\n]{{1,30}}?{_KEY_BEHIND})")


class Entry(NamedTuple):
    """`label`: what the text calls its codes, folded, '' for nothing: the head of a column, or 'key'. `code`: folded.
    `whole`: the text explains codes, each once, and says nothing else."""

    label: str
    code: str
    said: str
    whole: bool


@lru_cache(maxsize=8192)
def key_entries(text: str) -> tuple[Entry, ...]:
    """What one text explains, from left to right; of several heads each stands in a text of its own (`keys_apart`)."""
    label, body = _without_label(text)
    bracketed = _BRACKETED.match(body) is not None
    parts = [one for part in _PARTS.split(body) for one in (_NEXT_BRACKET.split(part) if bracketed else (part,))]
    told = [(fold(code).strip(), said) for part in parts for code, said in _in_part(part)]
    distinct = len({code for code, _ in told}) == len(parts) == len(told)
    whole = distinct and all(map(_entry, parts)) and not BEHIND_THE_CODES.search(text)
    return (
        *(Entry(label, code, said, whole) for code, said in told),
        *(Entry("", code, said, whole=False) for code, said in told_in_words(text)),
    )


def keys_apart(text: str) -> list[str]:
    """'G: 1 = SBS, 2 = CUK; F: D = delivered, M = FOB mill' as a text for each head; any other as it is."""
    labelled = text.count("=") > 1 and text.count(":") > 1 and _LABELLED.fullmatch(text) is not None
    return [part.strip() for part in _NEXT_LABEL.split(text)] if labelled else [text]


def _in_part(part: str) -> Iterator[tuple[str, str]]:
    entry = _entry(part)
    if entry is not None:
        yield entry["code"], entry["said"]
        return
    yield from meant_by_codes(part)
    named = _NAMED_ENTRY.fullmatch(part)
    if named is not None and phrases("tiers").whole(named["name"]) is not None:
        for code in (named["code"], f"{named['name']} {named['code']}"):
            yield code, named["said"]


def _entry(part: str) -> re.Match[str] | None:
    return _BRACKETED.fullmatch(part) or _ENTRY.fullmatch(_without_price(part))


def _without_label(text: str) -> tuple[str, str]:
    """The head that a key is said to be of, folded, and the key: 'Key: S = grade, …', where 'Key' may be one too."""
    label, colon, rest = text.partition(":")
    if colon and "=" in rest and phrases("legend_labels").whole(label) is not None:
        return label_of(label), rest
    labelled = _LABELLED.fullmatch(text)
    return (label_of(labelled["label"]), labelled["rest"]) if labelled is not None else ("", text)


def label_of(text: str) -> str:
    """A head as keys call it: the 'U' of 'Column U' as well."""
    first = next((match for match in phrases("column_words").find(text) if match.start == 0), None)
    return fold(text if first is None or first.end == len(text) else text[first.end :]).strip(" .\"'“”")


def _without_price(entry: str) -> str:
    """'Price A: EUR/t ex works' explains the A of a head."""
    first, _, rest = entry.strip().partition(" ")
    return rest if phrases("price_words").whole(first) is not None and _ENTRY.fullmatch(rest) is not None else entry
