"""Which character parts the fields of a delimited file.

Tried one after the other on the first records: the right one parts most records into the same number of fields and
leaves no field holding another delimiter. A decimal comma in a semicolon file parts records evenly too, but leaves
semicolons inside the fields; a title line with commas is one record among many.
"""

import csv
import io
import re
from collections import Counter
from itertools import pairwise

DELIMITERS = ("\t", ";", "|", ",")
_RECORDS_TRIED = 400
_CHARACTERS_TRIED = 200_000
_SEP = re.compile(r"\s*\"?sep=(.)\"?\s*", re.IGNORECASE)
_QUOTED = re.compile(r'(?<![^\n;,\t|])"(?:[^"]|"")*"(?=[;,\t|\r\n]|$)')
"""A field that a program put in quotes: what stands inside parts nothing. The sign for inches opens none."""
_ANY = re.compile(r"[;,\t|]")
_WHOLE_NUMBER = re.compile(r"\s*-?\d{1,4}\s*")
_DECIMALS = re.compile(r"\d{1,4}\s*(?:[€$£%]|[A-Za-z]{2,3})?\s*")


def named_delimiter(first_line: str) -> str | None:
    """The delimiter that a first line `sep=;` names, as spreadsheet programs write and honour it."""
    named = _SEP.fullmatch(first_line)
    return named[1] if named and named[1] in (*DELIMITERS, ":", " ", "^", "~") else None


def delimiter_of(text: str) -> str:
    """The best of tab, semicolon, bar and comma; a comma where none parts anything (a single column)."""
    sample = _QUOTED.sub(_without_delimiters, _sample(text))
    scores = {delimiter: _score(sample, delimiter) for delimiter in DELIMITERS}
    best = max(DELIMITERS, key=lambda delimiter: scores[delimiter])
    return best if scores[best] > 0 else ","


def _without_delimiters(quoted: re.Match[str]) -> str:
    return _ANY.sub(" ", quoted[0])


def _sample(text: str) -> str:
    """The first records, cut at a line's end."""
    if len(text) <= _CHARACTERS_TRIED:
        return text
    return text[: text.rfind("\n", 0, _CHARACTERS_TRIED) + 1] or text[:_CHARACTERS_TRIED]


def _score(sample: str, delimiter: str) -> float:
    """How evenly and cleanly a delimiter parts the records: 0 for not at all."""
    records = _parted(sample, delimiter)
    if not records:
        return 0.0
    widths = Counter(len(record) for record in records)
    share = {width: count for width, count in widths.items() if width > 1}
    if not share:
        return 0.0
    usual = max(share, key=lambda width: share[width] * (width - 1))
    evenness = (share[usual] + 0.5 * sum(n for width, n in share.items() if width != usual)) / len(records)
    fields = [field for record in records if len(record) > 1 for field in record if field.strip()]
    others = [other for other in DELIMITERS if other not in (delimiter, ",")]
    mixed = sum(any(other in field for other in others) for field in fields) / max(1, len(fields))
    return float(evenness * (1 - mixed) ** 3 * min(usual - 1, 8) ** 0.5)


def _parted(sample: str, delimiter: str) -> list[list[str]]:
    records: list[list[str]] = []
    try:
        for record in csv.reader(io.StringIO(sample, newline=""), delimiter=delimiter):
            if any(field.strip() for field in record):
                records.append(record)
            if len(records) >= _RECORDS_TRIED:
                break
    except csv.Error:
        return [line.split(delimiter) for line in sample.splitlines()[:_RECORDS_TRIED] if line.strip()]
    return records


def decimal_commas_split_fields(records: list[list[str]]) -> bool:
    """Whether a comma file's records are longer than its header because unquoted decimals were parted in two.

    The header is the widest record of words alone; nearly all later records must overflow it with digits after digits.
    Where a program wrote every record to one width, none overflows.
    """
    header = _header(records)
    if header is None or len(set(map(len, records))) == 1:
        return False
    place, width = header
    later = [_trimmed(record) for record in records[place + 1 :]]
    wide = [record for record in later if len(record) >= width]
    split = [record for record in wide if len(record) > width and _has_parted_decimal(record)]
    return len(split) >= 2 and len(split) >= 0.8 * len(wide)


def _header(records: list[list[str]]) -> tuple[int, int] | None:
    """Place and width of the first of the widest records with three or more filled fields, all of them words."""
    worded = [
        (place, len(fields))
        for place, fields in enumerate(map(_trimmed, records[:60]))
        if sum(bool(field.strip()) for field in fields) >= _FEWEST_HEADS
        and not any(_WHOLE_NUMBER.fullmatch(field) for field in fields)
    ]
    return max(worded, key=lambda found: found[1], default=None)


_FEWEST_HEADS = 3


def _trimmed(record: list[str]) -> list[str]:
    fields = list(record)
    while fields and not fields[-1].strip():
        fields.pop()
    return fields


def _has_parted_decimal(record: list[str]) -> bool:
    return any(
        _WHOLE_NUMBER.fullmatch(left) and _DECIMALS.fullmatch(right) is not None for left, right in pairwise(record)
    )
