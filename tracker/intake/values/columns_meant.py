"""The price columns that a note is about by the words of their heads: 'Zone 3 only: plus 4 % fuel surcharge',
'Lead time 4 weeks, except zone 3: 6 weeks'."""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from typing import NamedTuple

from tracker.intake.values.clauses import clauses
from tracker.intake.values.lines_meant import counted_ahead, ending_with, of_excepted
from tracker.intake.values.topics import OF_TERMS, topic_of
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import pattern, phrases
from tracker.intake.words.phrases import Found, tokens_of


@dataclass(frozen=True)
class ColumnNames:
    """What tells some price columns apart. `every`: all of them; `named`: words -> their columns; `counted`: a word
    that several heads begin with ('zone') -> what stands behind it -> their columns; `firms`: the names that are
    firms', and no places that a title may speak of."""

    every: frozenset[int]
    named: Mapping[tuple[str, ...], frozenset[int]] = field(default_factory=dict)
    counted: Mapping[str, Mapping[str, frozenset[int]]] = field(default_factory=dict)
    firms: frozenset[tuple[str, ...]] = frozenset()


class Piece(NamedTuple):
    """A part of a note: what it says, and of which columns; None: of all."""

    text: str
    columns: frozenset[int] | None = None


class _Run(NamedTuple):
    """Where a clause names columns. `plainly`: by a word and a number or a firm's name, which are said of nothing
    else."""

    start: int
    end: int
    columns: frozenset[int]
    plainly: bool


def columns_apart(text: str, names: ColumnNames) -> tuple[Piece, ...]:
    """The parts of a note, each with the columns that it is about; () where it tells no columns apart."""
    topic = topic_of(text, *OF_TERMS)
    pieces: list[Piece] = []
    waiting = ""
    for clause in clauses(text):
        whole = f"{waiting} {clause}".strip()
        runs = list(_runs(whole, names, pieces))
        if runs and not _said(whole[: runs[0].start] + whole[runs[-1].end :]):
            # 'Zone 3 – plus 4 %': what is said stands behind the dash.
            waiting = f"{whole}:"
            continue
        waiting = ""
        pieces += _pieces(whole, runs, names, topic) if runs else [Piece(whole)]
    return tuple(pieces) if any(piece.columns is not None for piece in pieces) else ()


def _pieces(clause: str, runs: list[_Run], names: ColumnNames, topic: str) -> Iterator[Piece]:
    before = clause[: runs[0].start].rstrip()
    excepted = _exception(before)
    if excepted is not None and len(runs) == 1:
        others, behind = before[: excepted.start].rstrip(" ,;(–-"), clause[runs[0].end :]
        if any(map(str.isdigit, others)):
            yield Piece(of_excepted(others, behind), runs[0].columns)
        else:
            # 'All zones except zone 3: lead time 4 weeks'.
            others = f"{others} {_said(behind)}"
        yield Piece(others, names.every - runs[0].columns)
        return
    trailing = any(map(str.isdigit, before))
    ends = [run.end for run in runs]
    starts = [*(run.start for run in runs[1:]), len(clause)]
    if trailing:
        # 'Fuel surcharge 2 % in zone 1, 3 % in zone 2'.
        starts, ends = [run.start for run in runs], [0, *ends[:-1]]
    lead = "" if trailing else _said(before)
    for run, start, end in zip(runs, ends, starts, strict=True):
        behind = f" {clause[run.end :]}" if trailing and run is runs[-1] else ""
        said = _said(f"{_said(clause[start:end])}{behind}")
        yield Piece(_with_topic(f"{lead} {said}".strip(), topic), run.columns)


def _exception(before: str) -> Found[str] | None:
    """The words for an exception that a clause has right before a column: 'except', 'all zones but', 'not in'."""
    for section in ("excepted", "names_excepted"):
        if (found := ending_with(_without_small_words(before, keep=section), section)) is not None:
            return found
    return None


def _with_topic(said: str, topic: str) -> str:
    return said if not topic or topic_of(said, *OF_TERMS) else f"{topic} {said}"


_STOPS = " .,;:()–-"
_SMALL = ("only_these", "about_lines", "articles")
"""Sections of words around the names of columns that say nothing themselves."""


def _said(text: str) -> str:
    """A part of a clause without the small words and stops at its ends: 'plus 4 %' for ' only: plus 4 %, in'."""
    text = _without_small_words(text)
    while (small := _leading(text, "only_these")) is not None:
        text = text[small:].lstrip(_STOPS)
    return text


def _without_small_words(text: str, *, keep: str = "") -> str:
    text = text.strip(_STOPS)
    while True:
        if keep and ending_with(text, keep) is not None:
            return text
        ends = (ending_with(text, section) for section in _SMALL)
        starts = [small.start for small in ends if small is not None]
        joined = _ENDING_JOIN.search(text)
        starts += [joined.start()] if joined is not None else []
        if not starts:
            return text
        text = text[: min(starts)].rstrip(_STOPS)


def _leading(text: str, section: str) -> int | None:
    return next((found.end for found in phrases(section).find(text) if found.start == 0), None)


_JOIN = rf"(?:,|&|\+|/|[-–]|\b{pattern('range', 'and', 'or', 'any')}\b)"
_JOINED = re.compile(rf"\s*{_JOIN}?\s*")
_ENDING_JOIN = re.compile(rf"\b{pattern('range', 'and', 'or')}$")
_SIGNS = re.compile(rf"\s*([A-Z])((?:\s*{_JOIN}\s*[A-Z])*)\b(?!['’])")


def _runs(clause: str, names: ColumnNames, told: list[Piece]) -> Iterator[_Run]:
    """The places of a clause that name columns, those beside each other as one; what names them all is none."""
    runs: list[_Run] = []
    for found in sorted([*_counted(clause, names), *_named(clause, names)], key=lambda run: (run.start, -run.end)):
        last = runs[-1] if runs else None
        if last is not None and found.start < last.end:
            continue
        if last is not None and _JOINED.fullmatch(clause[last.end : found.start]):
            runs[-1] = _Run(last.start, found.end, last.columns | found.columns, last.plainly or found.plainly)
        else:
            runs.append(found)
    about = any(run.plainly or _is_about(clause, run) for run in runs)
    kept = [run for run in runs if about and run.columns != names.every]
    known = frozenset().union(*(run.columns for run in kept), *(piece.columns or () for piece in told))
    yield from sorted([*kept, *_others(clause, names, known)])


def _is_about(clause: str, run: _Run) -> bool:
    """'Chicago: 6 weeks', 'plus 4 % for Chicago', 'Lead time: Chicago 2 weeks, …', 'Chicago only'; 'Price list Chicago,
    valid until …' is a title."""
    before, behind = clause[: run.start].rstrip(" ("), clause[run.end :].lstrip(" )")
    only = _leading(behind, "only_these") is not None
    near = any(ending_with(before, section) is not None for section in ("about_lines", "only_these"))
    led = before.endswith(":") or _exception(before) is not None
    return only or near or led or (not before and behind.startswith(":"))


def _others(clause: str, names: ColumnNames, known: frozenset[int]) -> Iterator[_Run]:
    """'All others 4 weeks', 'übrige Zonen 4 Wochen' beside columns that are named."""
    left = names.every - known
    if not known or not left:
        return
    for match in phrases("the_others").find(clause)[:1]:
        words = (end for start, end, _ in _words(clause, names) if start == match.end + 1)
        yield _Run(match.start, next(words, match.end), left, plainly=True)


def _words(clause: str, names: ColumnNames) -> Iterator[tuple[int, int, Mapping[str, frozenset[int]]]]:
    """The words of a clause that several heads begin with, in the plural too: 'zones', 'Zonen', 'zonas', 'zonerna'."""
    for word, start, end in tokens_of(clause):
        for counted, signs in names.counted.items():
            if word.startswith(counted[:-1]) and abs(len(word) - len(counted)) <= _LONGEST_ENDING:
                yield start, end, signs
                break


_LONGEST_ENDING = 4


def _counted(clause: str, names: ColumnNames) -> Iterator[_Run]:
    for start, end, signs in _words(clause, names):
        numbers = counted_ahead(clause[end:])
        lettered = _SIGNS.match(clause[end:]) if numbers is None else None
        if numbers is not None:
            found, stop = {str(number) for number in numbers[0]}, end + numbers[1]
        elif lettered is not None:
            found, stop = set(re.findall(r"\b[A-Z]\b", lettered.group())), end + lettered.end()
        else:
            continue
        columns = frozenset().union(*(signs.get(fold(sign), frozenset()) for sign in found))
        if columns:
            yield _Run(start, stop, columns, plainly=True)


def _named(clause: str, names: ColumnNames) -> Iterator[_Run]:
    found = tokens_of(clause)
    words = [word for word, *_ in found]
    for name, columns in names.named.items():
        for place in range(len(words) - len(name) + 1):
            if tuple(words[place : place + len(name)]) == name:
                yield _Run(found[place][1], found[place + len(name) - 1][2], columns, name in names.firms)
