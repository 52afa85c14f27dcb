"""The price columns that a note is about by the words of their heads: 'Zone 3 only: plus 4 % fuel surcharge',
'Lead time 4 weeks, except zone 3: 6 weeks'."""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from typing import NamedTuple

from tracker.intake.values.freight.delivery import delivery_text
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.denials import denied
from tracker.intake.values.notes.lines_counted import counted_ahead
from tracker.intake.values.notes.numbered_lines import ending_with
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.notes.topics import OF_TERMS, of_excepted, topic_of
from tracker.intake.values.times.lead import LeadTime
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
    trailing, first = any(map(str.isdigit, before)), 0
    relief = _relief_behind_figure(before) if trailing else None
    if relief is not None:
        # 'Fuel surcharge 3 %, waived in zone 1'.
        yield from _of_the_rest(before[:relief], runs, names)
        first = relief
    elif trailing and _each_has_its_own(clause, runs, topic):
        # 'Fuel surcharge 3 %, zone 1 free', 'Lead time 4 weeks (zone 1: 2 weeks)'.
        yield from _of_the_rest(before, runs, names)
        trailing, before = False, ""
    ends = [run.end for run in runs]
    starts = [*(run.start for run in runs[1:]), len(clause)]
    if trailing:
        # 'Fuel surcharge 2 % in zone 1, 3 % in zone 2'.
        starts, ends = [run.start for run in runs], [first, *ends[:-1]]
    lead = "" if trailing else _said(before)
    for run, start, end in zip(runs, ends, starts, strict=True):
        behind = f" {clause[run.end :]}" if trailing and run is runs[-1] else ""
        said = _said(f"{_said(clause[start:end])}{behind}")
        yield Piece(_with_topic(f"{lead} {said}".strip(), topic), run.columns)


def _of_the_rest(said: str, runs: list[_Run], names: ColumnNames) -> Iterator[Piece]:
    """What is said before columns that have something of their own holds for all but those."""
    rest = names.every.difference(*(run.columns for run in runs))
    if rest:
        yield Piece(said.rstrip(" ,;(–-"), rest)


def _relief_behind_figure(before: str) -> int | None:
    """Where the words begin that free the columns behind them from the last figure: '3 %, waived in'."""
    figure = max(place for place, sign in enumerate(before) if sign.isdigit())
    relieved = [found for found in phrases("relieved").find(before) if found.start > figure and found.value != "holds"]
    if relieved:
        # 'Not included in zone 1' frees it from nothing.
        return None if any(denied(before, found) for found in relieved) else relieved[0].start
    exempt = ending_with(_without_small_words(before), "charge_exempt")
    return exempt.start if exempt is not None and exempt.start > figure else None


def _each_has_its_own(clause: str, runs: list[_Run], topic: str) -> bool:
    """Whether what each column bears stands right behind its name, so that the figure before them is the others'."""
    ends = [*(run.start for run in runs[1:]), len(clause)]
    behind = [clause[run.end : end] for run, end in zip(runs, ends, strict=True)]
    ahead = clause[: runs[0].start].rstrip()
    led = ending_with(ahead, "about_lines")
    if led is not None and ahead[: led.start].rstrip()[-1:] not in tuple(",;(–-"):
        # '3 % in zone 1, none elsewhere'; but '3 % in zone 1 waived'.
        return len(runs) == 1 and any(phrases(each).whole(_said(behind[0])) is not None for each in _RELIEF)
    return all(text.lstrip()[:1] not in tuple(",;)") and _is_own(_said(text), topic) for text in behind)


_RELIEF = ("relieved", "charge_exempt")
_FIGURE_FIRST = re.compile(r"(?:[+~]\s*|[A-Z]{3}\s*|[$€£]\s*)*\d")


def _is_own(said: str, topic: str) -> bool:
    """'Free', 'none', '4 %', 'two weeks', and 'stock' beside a lead time."""
    freed = any(found.start == 0 for section in _RELIEF for found in phrases(section).find(said))
    if freed or _FIGURE_FIRST.match(said) is not None:
        return True
    if phrases("lead_topic").whole(topic) is None:
        return False
    stock = phrases("from_stock").find(said) or phrases("supply_named").whole(said) is not None
    return bool(stock) or any(isinstance(one, LeadTime) for one in statements(_with_topic(said, topic)))


def _exception(before: str) -> Found[str] | None:
    """The words for an exception that a clause has right before a column: 'except', 'all zones but', 'not in'."""
    for section in ("excepted", "names_excepted"):
        if (found := ending_with(_without_small_words(before, keep=section), section)) is not None:
            return found
    return None


def _with_topic(said: str, topic: str) -> str:
    """'Two weeks' goes on with 'lead time'; 'EXW' is of no energy surcharge that another sentence tells."""
    return said if not topic or topic_of(said, *OF_TERMS) or delivery_text(said) is not None else f"{topic} {said}"


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
        joined = last is not None and _JOINED.fullmatch(clause[last.end : found.start]) is not None
        if last is not None and joined and not _is_freed_beside(clause, last, found):
            runs[-1] = _Run(last.start, found.end, last.columns | found.columns, last.plainly or found.plainly)
        else:
            runs.append(found)
    about = any(run.plainly or _is_about(clause, run) for run in runs)
    kept = [run for run in runs if about and run.columns != names.every]
    known = frozenset().union(*(run.columns for run in kept), *(piece.columns or () for piece in told))
    named = bool(kept) or any(piece.columns is not None for piece in told)
    yield from sorted([*kept, *_others(clause, names, known)] if named else kept)


def _is_freed_beside(clause: str, last: _Run, found: _Run) -> bool:
    """The zone 1 of '3 % in zones 2 and 3, zone 1 free', of which the figure is not."""
    led = ending_with(clause[: last.start].rstrip(), "about_lines") is not None
    behind = _said(clause[found.end :])
    freed = any(match.start == 0 for section in _RELIEF for match in phrases(section).find(behind))
    return led and freed and "," in clause[last.end : found.start]


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
    if not left:
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
        run = _Run(start, stop, columns, plainly=True)
        if columns or _is_of_none(clause, run, found):
            yield run


def _is_of_none(clause: str, run: _Run, signs: set[str]) -> bool:
    """'Zone 7: plus 4 %' over zones 1 to 3 is about none of them; the 2027 of 'Prices 2027:' counts no prices."""
    alone = not clause[: run.start].strip() and not clause[run.end :].strip()
    return all(len(sign) <= _LONGEST_SIGN for sign in signs) and (alone or _is_about(clause, run))


_LONGEST_SIGN = 2


def _named(clause: str, names: ColumnNames) -> Iterator[_Run]:
    found = tokens_of(clause)
    words = [word for word, *_ in found]
    for name, columns in names.named.items():
        for place in range(len(words) - len(name) + 1):
            if tuple(words[place : place + len(name)]) == name:
                yield _Run(found[place][1], found[place + len(name) - 1][2], columns, name in names.firms)
