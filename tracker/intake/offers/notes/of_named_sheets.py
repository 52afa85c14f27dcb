"""Texts of a sheet of terms that begin with the name of another sheet: 'Rolls EU: EUR per tonne, DAP' says nothing of
'Rolls US'."""

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from functools import lru_cache

from tracker.intake.tables.table import Words
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases, words


def of_sheet(texts: Iterable[Words], name: str, names: Sequence[str]) -> tuple[list[Words], list[Words]]:
    """What is said of the sheet of this name alone, and what of all; `names`: those of every sheet with prices."""
    telling = tuple(sorted(filter(is_telling, set(names)), key=len, reverse=True))
    own: list[Words] = []
    of_all: list[Words] = []
    for said in texts:
        for named, part in _parts(said.text, telling) if len(telling) > 1 else (((), said.text),):
            if not named or name in named:
                (own if named else of_all).append(said if part == said.text else replace(said, text=part))
    return own, of_all


def is_telling(name: str) -> bool:
    """'Prices' and 'SBS' say at the beginning of a text what follows, whatever a sheet is called."""
    known = phrases("headers").whole(name) or phrases("price_words").whole(name) or find_grade(name)
    return len(name.strip()) >= _SHORTEST and not known


_SHORTEST = 2


@lru_cache(maxsize=4096)
def _parts(text: str, names: tuple[str, ...]) -> tuple[tuple[tuple[str, ...], str], ...]:
    """Each part of a text with the sheets that it names ahead of a colon or a dash; none for what is said of all."""
    found = list(_ahead(names).finditer(text))
    if not found:
        return tuple(_mentioning(text, tuple(name for name in names if " " in name.strip())))
    starts = [match.start("label") for match in found]
    first = text[: starts[0]].strip(" ;,") if starts else text
    parts: list[tuple[tuple[str, ...], str]] = [((), first)] if first else []
    for match, end in zip(found, [*starts[1:], len(text)], strict=True) if found else ():
        parts.append((_named(match["names"], names), text[match.end() : end].strip(" ;,")))
    return tuple(parts)


def _mentioning(text: str, names: tuple[str, ...]) -> Iterator[tuple[tuple[str, ...], str]]:
    """'Prices on Rolls US are US$ per short ton, those on Rolls EU are EUR per tonne': what a sentence says from the
    name of a sheet on is of that one."""
    if not names or not _one_of(names).search(text):
        yield (), text
        return
    for sentence in _SENTENCES.split(text):
        parts: list[tuple[tuple[str, ...], str]] = []
        pieces = _joints().split(sentence)
        for joint, piece in zip(("", *pieces[1::2]), pieces[::2], strict=True):
            named = _named(piece, names)
            if parts and (not named or named == parts[-1][0] or _names_alone(parts[-1][1], names)):
                parts[-1] = (*parts[-1][0], *named), f"{parts[-1][1]}{joint}{piece}"
            else:
                parts.append((named, piece))
        yield from parts


_SENTENCES = re.compile(r"(?<=[.;])\s+|\n")


@lru_cache(maxsize=1)
def _joints() -> re.Pattern[str]:
    """A comma, or an 'and' between words."""
    joints = "|".join(re.escape(word) for word in words("and_words")["any"] if word.isalpha())
    return re.compile(rf"(,\s+|\s(?:{joints})\s)", re.IGNORECASE)


def _names_alone(text: str, names: tuple[str, ...]) -> bool:
    """The 'Rolls EU' of 'Rolls EU and Rolls US: …' says nothing by itself."""
    return not any(map(str.isalnum, _one_of(names).sub(" ", text)))


def _named(text: str, names: tuple[str, ...]) -> tuple[str, ...]:
    told = {fold(" ".join(one.split())) for one in _one_of(names).findall(text)}
    return tuple(name for name in names if fold(" ".join(name.split())) in told)


_JOINTS = r"\s*(?:[,/&+]|(?<!\S)[^\W\d_]{1,3}(?!\S))\s*"


@lru_cache(maxsize=64)
def _ahead(names: tuple[str, ...]) -> re.Pattern[str]:
    named = _one_of(names).pattern
    called = "|".join(re.escape(word) for word in sorted(words("sheet_words")["any"], key=len, reverse=True))
    one = rf"[\"'“„«]?(?:{named})[\"'”“»]?"
    label = rf"(?P<label>(?:(?:{called})\s+)*(?P<names>{one}(?:{_JOINTS}{one})*))"
    return re.compile(rf"(?:^|[;.\n]\s*|\s[-–—]\s){label}\s*(?::|\s[-–—]\s|=)\s*", re.IGNORECASE)


@lru_cache(maxsize=64)
def _one_of(names: tuple[str, ...]) -> re.Pattern[str]:
    """The longest first, so that 'Rolls' is not seen in 'Rolls EU'."""
    spelled = (r"\s+".join(map(re.escape, name.split())) for name in names)
    return re.compile(rf"(?<!\w)(?:{'|'.join(spelled)})(?!\w)", re.IGNORECASE)
