"""Codes that stand for sheet sizes: 'Size A = 28 x 40 in', 'Formate: A 70 x 100 cm, B 72 x 102 cm'."""

import re
from decimal import Decimal
from functools import lru_cache
from typing import NamedTuple

from tracker.intake.values.figures.sheetsize import (
    LengthUnit,
    SheetSize,
    find_sheet_sizes,
    length_unit,
    with_whole_numbers,
)
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import pattern, phrases
from tracker.intake.words.phrases import without


class SizeOfCode(NamedTuple):
    """What a text calls the codes, folded and '' for any known word or none; a code, folded, and its size in words."""

    label: str
    code: str
    size: str


CODE = r"[^\W\d_]{1,2}\d{0,2}|\d{1,2}|[IVX]{1,4}"
_AHEAD = re.compile(
    rf"[\s,;.|·()]*(?:{pattern('range', 'and')}\s+)?(?:(?P<label>[^\W\d_][^=;|]*?)[\s:]+)??(?P<code>{CODE})\s*"
    r"(?P<joint>[=:(]|[-–—]\s|\s)\s*(?P<verb>[^\W\d_][^=:;,]*)?"
)
_TWICE = re.compile(r"\s*[(/=,]\s*")
_ROUNDED = Decimal("0.005")


@lru_cache(maxsize=4096)
def sizes_of_codes(text: str) -> tuple[SizeOfCode, ...]:
    """What a text explains, where it does so for each of its sizes and says nothing else; else nothing."""
    # Which way the fibres run changes no size: '28 x 40 in, long grain'.
    text = with_whole_numbers(without(text, phrases("grain").find(text)).strip())
    found: list[SizeOfCode] = []
    labelled, end = "", 0
    last: SheetSize | None = None
    for size in _one_by_one(text):
        start = text.find(size.words, end)
        before, end = text[end:start], start + len(size.words)
        if last is not None and _TWICE.fullmatch(before) and same_size(last, size):
            continue
        ahead = _AHEAD.fullmatch(before)
        if start < 0 or ahead is None or not _joins(ahead):
            return ()
        label = ahead["label"] or labelled
        unit = None if size.said else length_unit(label)
        if found and ahead["label"] is not None and _called(label) != found[-1].label:
            return ()
        labelled, last = label, size
        words = size.words.strip() if unit is None else f"{size.words.strip()} {unit.value}"
        found.append(SizeOfCode(_called(label), fold(ahead["code"]), words))
    return tuple(found) if not text[end:].strip(" .;,()-–") and _is_key(found) else ()


def _is_key(found: list[SizeOfCode]) -> bool:
    codes = [one.code for one in found]
    return bool(codes) and len(set(codes)) == len(codes)


def _one_by_one(text: str) -> list[SheetSize]:
    """The sizes in their order, of several readings of one, which share its words, the first."""
    sizes: list[SheetSize] = []
    for size in find_sheet_sizes(text):
        if not (sizes and sizes[-1].words is size.words):
            sizes.append(size)
    return sizes


def same_size(one: SheetSize, other: SheetSize) -> bool:
    """'28 x 40 in' and '711 x 1016 mm' are."""
    return all(abs(a - b) <= _ROUNDED * b for a, b in zip(sorted(one.mm), sorted(other.mm), strict=True))


def _joins(ahead: re.Match[str]) -> bool:
    """'A =' and 'A means' do, and 'A 70 x 100' where 'Format' is ahead; the 'in' of 'B in 70 x 100' does not."""
    verb = (ahead["verb"] or "").strip()
    if verb:
        return phrases("stands_for").whole(verb) is not None
    return bool(ahead["joint"].strip()) or ahead["label"] is not None


def _called(label: str) -> str:
    """The label, folded; '' for what any key of sizes may be called: 'Formats', 'Sizes in inches', 'Key'."""
    plain = _UNIT.sub("", label).strip(" .:()")
    known = any(phrases(section).whole(plain) is not None for section in ("size_codes", "legend_labels", "tiers"))
    return "" if known else fold(label).strip(" .:")


_UNIT = re.compile(
    rf"\s*(?:[(,]\s*)?(?:\b[^\W\d_]{{1,3}}\s+)?(?:{'|'.join((*LengthUnit, 'inches', 'Zoll', 'tum'))})\)?\s*$"
)
