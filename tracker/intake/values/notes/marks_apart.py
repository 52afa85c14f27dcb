"""Notes on the lines that carry a mark and on those that do not: 'Items marked * ship in 6 weeks, all others in 3',
'(a) ships in 6 weeks; items not marked (a) ship in 3', 'Grades marked L are in stock', 'Prices in EUR/t, those marked
with * in EUR/kg', 'EXW unless marked *'."""

import re
from collections.abc import Iterator
from functools import lru_cache
from typing import NamedTuple

from tracker.intake.values.boards.boards_behind import without_boards_word
from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.notes.clauses import clauses, sentences_of
from tracker.intake.values.notes.marks_within import notes_within
from tracker.intake.values.notes.money_of_marked import money_of_marked
from tracker.intake.values.notes.note_signs import LETTER, NOT, SIGN, sign_ahead, without_sign
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.notes.signs_in_words import with_signs
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.notes.topics import OF_TERMS, topic_of
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.lead_remarked import lead_remarked
from tracker.intake.words.lists import pattern, phrases
from tracker.intake.words.phrases import Found

_COMMA = re.compile(r",\s+(?!\d{4}\b)")
_SIGNED = re.compile(rf"\s*({SIGN})\s*(?=[\w(:]|$)")
_ONE = r"[\"'“”‘’„«]?[A-Z][\"'“”‘’»]?"
_JOIN = rf"(?:\s*[,/&]\s*|(?:\s*,)?\s+{pattern('range', 'and', 'or')}\s+)"
_LETTERS = re.compile(rf"\s*(?P<word>[^\W\d_]{{1,5}}\s)?(?P<letters>{_ONE}(?:{_JOIN}{_ONE})*)(?:\s*:\s*|(?=[\s.,]|$))")
"""'L', 'A or B', 'with the L:'."""
_OTHER, _OTHER_LISTED = re.compile(rf"{_ONE}\s*[:=]"), re.compile(rf"{_ONE}(?=[\s:=]|$)")
"""The 'B:' of 'Items marked A: 5 weeks; B: 7 weeks', and the 'B' of 'marked A 5 weeks, B 7 weeks'."""
_GOES_ON = re.compile(rf"\s*(?:[,/&+–-]|{pattern('range', 'and', 'or', 'any')}(?!\w))")
_LETTER = re.compile("[A-Z]")
_OF_LETTERS = re.compile(rf"\[{LETTER}([A-Z]+)\]")
_STOPS = " ,;:."


class _Letters(NamedTuple):
    """Letters that a piece says lines are marked with or not: where, and whether a word leads to them ('the L')."""

    start: int
    end: int
    sign: str
    led: bool


@lru_cache(maxsize=4096)
def marks_apart(text: str) -> tuple[str, ...]:
    """Its texts, each with the sign of the lines that it is about; () where it tells no marked lines from others."""
    text = with_signs(text)
    by_words = bool(phrases("marked_with").find(text) or phrases("unless_signed").find(text))
    noted = notes_within(text) if by_words else ()
    if any(part.startswith(f"[{NOT}") for part in noted) or any(map(money_of_marked, sentences_of(text))):
        return noted
    told = by_words or sign_ahead(text) or phrases("without_mark").find(text)
    return (_told_apart(text) if told else ()) or noted


def _told_apart(text: str) -> tuple[str, ...]:
    """The texts of one that says of what is marked and of what is not, or names a letter as a mark."""
    sentences = [list(_parts(clause)) for clause in clauses(text)]
    pieces = [piece for sentence in sentences for piece in sentence]
    if any(_is_not_understood(piece, listed=n > 0) for sentence in sentences for n, piece in enumerate(sentence)):
        return ()
    apart = any(map(_tells_apart, pieces)) or _begins_with_one(pieces)
    texts = _signed(sentences, footnote=bool(sign_ahead(text))) if apart else ()
    return tuple(each for signed in texts for each in _of_each_letter(signed))


def _of_each_letter(text: str) -> tuple[str, ...]:
    """'[letter AB] in stock' once for each of its letters."""
    found = _OF_LETTERS.match(text)
    if found is None:
        return (text,)
    return tuple(f"[{LETTER}{letter}]{text[found.end() :]}" for letter in found[1])


def _parts(clause: str) -> Iterator[str]:
    """A clause parted at its commas, but for those of 'marked A, B or C'."""
    start = 0
    for match in _COMMA.finditer(clause):
        piece = clause[start:]
        named = _letters(piece, "without_mark") or _letters(piece, "marked_with")
        if named is None or not named.start < match.start() - start < named.end:
            yield clause[start : match.start()]
            start = match.end()
    yield clause[start:]


def _letters(piece: str, section: str) -> _Letters | None:
    if not phrases("marked").find(piece):
        return None
    for match in phrases(section).find(piece):
        found = _LETTERS.match(piece, match.end)
        if found is not None:
            sign = "".join(sorted(set(_LETTER.findall(found["letters"]))))
            return _Letters(match.start, found.end(), f"{LETTER}{sign}", found["word"] is not None)
    return None


def _is_not_understood(piece: str, *, listed: bool) -> bool:
    """'Items marked A to C', 'not marked (a) or (b)', and the 'B: 7 weeks' behind 'Items marked A: 5 weeks'."""
    if (_OTHER_LISTED if listed else _OTHER).match(piece):
        return True
    sections = ("without_mark", "marked_with")
    signs = [_SIGNED.match(piece, match.end) for section in sections for match in phrases(section).find(piece)]
    named = [letters for section in sections if (letters := _letters(piece, section)) is not None]
    if any(letters.led and len(letters.sign) > len(LETTER) + 1 for letters in named):
        return True
    ends = [sign.end() for sign in signs if sign is not None] + [letters.end for letters in named]
    return any(_GOES_ON.match(piece, end) for end in ends)


def _begins_with_one(pieces: list[str]) -> bool:
    """'* lead time 6 weeks; all others 3 weeks'. The others of '* SBS 6 weeks, all others 3 weeks' are other grades,
    and those of 'b) Items 6 and 7: 30,000 lb. All other items: 10,000 lb' other items."""
    others = any(found[0].start == 0 for piece in pieces[1:] if (found := _others_in(piece)))
    told = boards_named(pieces[0]).some or phrases("line_numbers").find(pieces[0])
    return others and bool(sign_ahead(pieces[0])) and not told


def _tells_apart(piece: str) -> bool:
    return _without_mark(piece) is not None or _by_letter(piece) is not None or _so_marked(piece) is not None


def _signed(sentences: list[list[str]], *, footnote: bool) -> Iterator[str]:
    """The pieces with their signs before them. What goes on in a sentence is about the same lines, and all that stands
    behind the sign of a `footnote`."""
    sign = said = note = ""
    for sentence in sentences:
        if note and not footnote:
            yield note
            note = ""
        for piece in sentence:
            told = said_of_the_others(piece, said) if sign else ""
            others = _without_mark(piece) or ((sign, told) if told else None)
            lettered = _by_letter(piece)
            ahead = sign_ahead(piece)
            if others is None and lettered is None and not ahead:
                note = f"{note}, {piece}" if note else piece
                continue
            if note:
                yield note
            if others is not None:
                note = f"[{NOT}{others[0]}] {others[1]}"
                continue
            sign, said = lettered if lettered is not None else (ahead, piece)
            note = f"[{sign}] {said}" if lettered is not None else _so_marked(piece) or piece
    if note:
        yield note


def _so_marked(piece: str) -> str | None:
    """'* add $18 per ton to items so marked' without the words for the lines that its sign names."""
    found = phrases("so_marked").find(piece) if sign_ahead(piece) else []
    return f"{piece[: found[0].start]}{piece[found[0].end :]}".strip() if found else None


def _without_mark(piece: str) -> tuple[str, str] | None:
    """The sign that lines must not carry, and what is said of those: 'items not marked (a) ship in 3 weeks'."""
    for match in phrases("without_mark").find(piece):
        sign = _SIGNED.match(piece, match.end)
        if sign is not None:
            behind = piece[sign.end() :].removeprefix(":")
            return sign_ahead(f"{sign[1]} a"), _said_of_them(piece[: match.start], behind)
    named = _letters(piece, "without_mark")
    return None if named is None else (named.sign, _said_of_them(piece[: named.start], piece[named.end :]))


def _said_of_them(before: str, behind: str) -> str:
    return without_boards_word(f"{before}{behind.strip()}".strip())


def _by_letter(piece: str) -> tuple[str, str] | None:
    """'Grades marked L are in stock': the letter, and what is said of them."""
    named = _letters(piece, "marked_with")
    if named is None:
        return None
    behind = piece[named.end :].strip()
    marked = next((one for one in phrases("marked").find(behind) if one.start == 0), None)
    behind = behind if marked is None else behind[marked.end :].lstrip()
    return named.sign, _said_of_them(piece[: named.start], behind)


def said_of_the_others(piece: str, said: str) -> str:
    """The '3 weeks' of 'all others 3 weeks' behind what is `said` of the lines with a sign: about the same; '' where it
    does not begin with the others."""
    others = _others_in(piece)
    if not others:
        return ""
    ahead = piece[: others[0].start].strip(_STOPS)
    if ahead and (rest_of(ahead, (), *OF_TERMS, "about_lines") or not topic_of(ahead, *OF_TERMS)):
        return ""
    rest = piece[others[-1].end if others[-1].first <= 1 else others[0].end :].strip(_STOPS)
    # Other 'qualités', 'Sorten', 'boards'.
    rest = without_boards_word(rest).strip(_STOPS)
    if rest and ahead:
        # 'Lead time of all others 4 weeks'.
        return f"{topic_of(ahead, *OF_TERMS)}: {rest}"
    topic = topic_of(without_sign(said), *OF_TERMS)
    of_lead = (
        any(isinstance(one, LeadTime) for one in statements(without_sign(said))) or lead_remarked(said) is not None
    )
    if rest and not statements(rest) and (topic or of_lead):
        return f"{topic if topic and not of_lead else _LEAD}: {rest}"
    return rest


def _others_in(piece: str) -> list[Found[str]]:
    """The words for the other lines; 'otherwise' says so where a piece begins with it."""
    return list(phrases("the_others").find(piece)) or [
        one for one in phrases("else_words").find(piece) if not one.start
    ]


_LEAD = "Lead time"
