"""Lines of a list by their numbers in a text: the 'items 1 and 3' of 'Items 1 and 3: six weeks'."""

import re
from itertools import pairwise
from typing import NamedTuple

from tracker.intake.values.boards.boards_named import measures_named
from tracker.intake.values.notes.lettered_lines import letters_as_numbers
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.times.lead import lead_text
from tracker.intake.words.lists import pattern, phrases
from tracker.intake.words.phrases import Found

JOINED = rf"(?:,|&|\+|[-–]|\b{pattern('range', 'and', 'or', 'any')}\b)"
_COUNTED = re.compile(
    rf"\s*(?:n[or]?\.?|n[°º]|#|:)?\s*(\d{{1,4}}(?:\s*{JOINED}\s*\d{{1,4}})*)"
    # The 12" of a width; the apostrophe of 's'entendent' is none of feet.
    r"(?![\d.,/]*\d|\s*[^\W\d_]?(?:[%°\"]|'(?![^\W\d_])))"
)
_BETWEEN = re.compile(rf"\.?\s*\d{{1,4}}\s*{JOINED}\s*(?:{pattern('range', 'and')}\s)?")
_LAST_DASH = re.compile(r"\s[-–]\s(?=\d+$)")
_FIGURE = re.compile(r"\d+")
_LONGEST_SPAN = 200
_SPAN = re.compile(rf"(\d+)\s*(?:[-–]|\b{pattern('range', 'any')}\b)\s*(\d+)")


def line_words(text: str) -> list[Found[str]]:
    """The words for lines in a text; the 'reference' of 'Your reference 203' counts papers."""
    return [match for match in phrases("line_numbers").find(text) if match.value != "paper"]


def once_called(text: str) -> str:
    """'Items 1, 2' for 'item 1, item 2': the word said again before each number is left out."""
    words = line_words(text)
    for before, match in reversed(list(pairwise(words))):
        if before.value == match.value and _BETWEEN.fullmatch(text[before.end : match.start]):
            text = text[: match.start] + text[match.end :].lstrip(". ")
    return text


def lines_named(text: str) -> tuple[int, int] | None:
    """Where a text names lines by their numbers: the 'items 1 and 3' in it."""
    for match in line_words(text):
        start = match.end + text[match.end :].startswith(".")
        counted = count_ahead(text[start:])
        if counted is not None and not of_all_lines(text[: match.end], text[match.start : match.end]):
            return match.start, start + counted.end()
    return None


class LinesNamed(NamedTuple):
    """The lines that a text names, and the text without the words that do. `of_contract`: all of them may be articles
    of a contract."""

    numbers: frozenset[int]
    rest: str
    of_contract: bool


def every_line_named(text: str) -> LinesNamed | None:
    """All lines that a text names by their numbers: 'Line 2: 67, line 7: 1,052'; None where it names none."""
    text = once_called(letters_as_numbers(text))
    numbers: frozenset[int] = frozenset()
    kinds: set[str] = set()
    for match in reversed(line_words(text)):
        start = match.end + text[match.end :].startswith(".")
        counted = count_ahead(text[start:])
        if counted is not None and not of_all_lines(text[: match.end], text[match.start : match.end]):
            numbers |= lines_counted(counted[1])
            kinds.add(match.value)
            text = f"{text[: match.start]} {text[start + counted.end() :]}"
    return LinesNamed(numbers, text, kinds == {"article"}) if numbers else None


def count_ahead(behind: str) -> re.Match[str] | None:
    """The numbers that a text begins with, which count lines and nothing else."""
    counted = _COUNTED.match(behind)
    if counted is None:
        return None
    dash = _LAST_DASH.search(counted[1])
    if dash is not None and _is_quantity(behind[counted.start(1) + dash.end() :]):
        # The 10 of 'item 3 – 10 weeks lead time' counts weeks.
        return _COUNTED.match(behind[: counted.start(1) + dash.start()])
    # Of '2 to 3' the last: '2 to' alone would be a weight in German.
    span = _SPAN.match(counted[1])
    first = span.start(2) if span is not None else 0
    return None if _is_quantity(behind[counted.start(1) + first :]) else counted


def counted_ahead(behind: str) -> tuple[frozenset[int], int] | None:
    """The numbers that a text begins with and how far they reach: those of ' 2 and 3: …'."""
    counted = count_ahead(behind)
    return None if counted is None else (lines_counted(counted[1]), counted.end())


def of_all_lines(before: str, word: str) -> bool:
    """'All items' and 'per item', of which figures behind them count none."""
    if any(found.end == len(before) for found in phrases("all_of_them").find(before)):
        return True
    ahead = before.removesuffix(word).rstrip()
    return any(found.end == len(ahead) for found in phrases("per_line").find(ahead))


def _is_quantity(behind: str) -> bool:
    """'4 weeks', '10 t', '10 short tons': a number with a unit counts no lines."""
    piece = " ".join(behind.split()[:2])
    if lead_text(piece) is not None or bool(find_masses(piece)) or bool(measures_named(piece)):
        return True
    longer = " ".join(behind.split()[:3])
    return any(longer.startswith(mass.words) for mass in find_masses(longer))


def lines_counted(text: str) -> frozenset[int]:
    spans = ((int(first), int(last)) for first, last in _SPAN.findall(text))
    between = (range(first, last + 1) for first, last in spans if 0 <= last - first <= _LONGEST_SPAN)
    return frozenset(map(int, _FIGURE.findall(text))).union(*between)
