"""Lead times that boards have in turn beside the one of all: 'Lead time is 4 weeks, except GD2, which comes in 2 weeks,
and weights above 350 g/m², which take 6'. Read as one exception it would give the others the time of all."""

import re
from collections.abc import Iterator
from dataclasses import dataclass, field

from tracker.intake.values.boards.boards_behind import boards_behind
from tracker.intake.values.boards.measures_ahead import measures_ahead
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.topics import topic_of
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
    if find_lead(of_all) is None or not excepted or any(_boards_ahead(piece)[0] for piece in later):
        return ()
    told = [one for boards in excepted for one in _told(boards, of_all)]
    return (*pieces[:place], of_all, *told, *later) if all(told) else ()


def _in_turn(behind: str) -> Iterator[_Boards]:
    last: _Boards | None = None
    for piece in filter(None, map(str.strip, _JOINTS.split(behind))):
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


def _boards_ahead(piece: str) -> tuple[str, str]:
    """The words of the boards that a piece begins with, behind 'for' or another 'except', and what goes on behind."""
    piece = piece.strip(_STOPS)
    while (led := next(filter(None, (_first(piece, section) for section in _LEADS)), None)) is not None:
        piece = piece[led.end :].lstrip()
    words, rest = boards_behind(piece)
    return (words, rest) if words else measures_ahead(piece)


def _first(text: str, section: str) -> Found[str] | None:
    return next((match for match in phrases(section).find(text) if match.start == 0), None)


def _told(boards: _Boards, of_all: str) -> Iterator[str]:
    """'GD2: lead time 2 weeks' for each of them; as it stands where it is not read for certain, '' where it is of no
    time."""
    said = " ".join(boards.said).strip(_STOPS)
    topic = topic_of(of_all, "lead_topic") or of_all
    lead = find_lead(f"{topic} {said}") if tells_no_more(said) else None
    own = lead.words if lead is not None else said
    for words in boards.words:
        yield f"{words}: {topic} {own}" if lead is not None or counts_time(said) else ""
