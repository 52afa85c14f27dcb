"""Lead times that boards have in turn beside the one of all: 'Lead time is 4 weeks, except GD2, which comes in 2 weeks,
and weights above 350 g/m², which take 6'. Read as one exception it would give the others the time of all."""

import re
from collections.abc import Iterator
from dataclasses import dataclass, field

from tracker.intake.values.boards.boards_behind import boards_behind
from tracker.intake.values.boards.measures_ahead import measures_ahead
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.topics import topic_of
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.lead_remarked import bare_lead
from tracker.intake.values.times.lead_sentences import find_lead
from tracker.intake.values.times.leads_in_full import tells_no_more
from tracker.intake.values.times.times_in_words import counts_time
from tracker.intake.words.lists import pattern, phrases
from tracker.intake.words.phrases import Found

_JOINTS = re.compile(rf"\s*[,:;()](?!\d)\s*|\s+{pattern('range', 'and')}\s+")
_STOPS = " ,;:.()–-"
_LEADS = ("excepted", "and_words", "about_lines")


@dataclass(slots=True)
class _Boards:
    """The words of boards that have one time together, and the pieces of what is said of them."""

    words: list[str]
    said: list[str] = field(default_factory=list)


def leads_excepted(text: str) -> tuple[str, ...]:
    """Its texts: what is said of all, and one for the time of each of the boards excepted; () where it is not of lead
    times, or something else is said of any of these."""
    pieces = clauses(text)
    place = next((at for at, piece in enumerate(pieces) if phrases("excepted").find(piece)), None)
    if place is None:
        return ()
    excepting = pieces[place]
    but = phrases("excepted").find(excepting)[0]
    of_all, behind = excepting[: but.start].strip(_STOPS), excepting[but.end :]
    later = pieces[place + 1 :]
    excepted = list(_in_turn(behind))
    lead = find_lead(of_all) or bare_lead(of_all)
    if lead is None or not excepted or any(_boards_ahead(piece)[0] for piece in later):
        return ()
    told = [one for boards in excepted for one in _told(boards, of_all)]
    return (*pieces[:place], of_all, *told, *later) if all(told) else ()


def _in_turn(behind: str) -> Iterator[_Boards]:
    last: _Boards | None = None
    for piece in filter(None, map(str.strip, _pieces(behind))):
        words, rest = _boards_ahead(piece)
        if words and last is not None and not last.said:
            last.words.append(words)
            last.said += [rest] if rest else []
        elif words:
            if last is not None:
                yield last
            last = _Boards([words], [rest] if rest else [])
        elif last is None:
            return
        else:
            last.said.append(piece)
    if last is not None:
        yield last


def _pieces(behind: str) -> Iterator[str]:
    """The 'and' of '18 pt and below' joins nothing."""
    start = 0
    for joint in _JOINTS.finditer(behind):
        if not any(one.start < joint.end() and joint.start() < one.end for one in _open_measures(behind)):
            yield behind[start : joint.start()]
            start = joint.end()
    yield behind[start:]


def _open_measures(text: str) -> list[Found[str]]:
    return [match for match in phrases("open_measures").find(text) if match.value in ("and_up", "and_down")]


def _boards_ahead(piece: str) -> tuple[str, str]:
    """The words of the boards that a piece begins with, behind 'for' or another 'except', and what goes on behind."""
    piece = piece.strip(_STOPS)
    while (led := next(filter(None, (_first(piece, section) for section in _LEADS)), None)) is not None:
        piece = piece[led.end :].lstrip()
    words, rest = boards_behind(piece)
    measures, behind = measures_ahead(rest)
    # 'SBS 18 pt and below', 'GC1 ab 300 g/m²'.
    return (f"{words} {measures}".strip(), behind) if measures else (words, rest)


def _first(text: str, section: str) -> Found[str] | None:
    return next((match for match in phrases(section).find(text) if match.start == 0), None)


def _told(boards: _Boards, of_all: str) -> Iterator[str]:
    """'GD2: lead time 2 weeks' for each of them; as it stands where it is not read for certain, '' where it is of no
    time."""
    said = " ".join(boards.said).strip(_STOPS)
    topic = topic_of(of_all, "lead_topic")
    lead = _own_lead(said, topic, of_all) if tells_no_more(said) else None
    own = lead.words if lead is not None else said
    # The 'net 30 days' of 'except SBS, net 30 days' are not the time of SBS.
    timed = lead is not None or (counts_time(said) and not phrases("not_lead").find(said))
    for words in boards.words:
        yield f"{words}: {topic} {own}".replace(":  ", ": ") if timed else ""


def _own_lead(said: str, topic: str, of_all: str) -> LeadTime | None:
    """Behind 'All grades 4 weeks', which says no more than a time, only what says no more either is one."""
    if not topic and bare_lead(of_all) is not None:
        return bare_lead(said)
    return find_lead(f"{topic or of_all} {said}")
