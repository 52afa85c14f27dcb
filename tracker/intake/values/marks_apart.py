"""Notes on the lines that carry a mark and on those that do not: 'Items marked * ship in 6 weeks, all others in 3',
'(a) ships in 6 weeks; items not marked (a) ship in 3', 'Grades marked L are in stock'."""

import re
from collections.abc import Iterator
from functools import lru_cache

from tracker.intake.values.boards_behind import without_boards_word
from tracker.intake.values.boards_named import boards_named
from tracker.intake.values.clauses import clauses
from tracker.intake.values.denials import denied
from tracker.intake.values.lead import LeadTime
from tracker.intake.values.lead_remarked import lead_remarked
from tracker.intake.values.note_signs import LETTER, NOT, SIGN, sign_ahead, without_sign
from tracker.intake.values.statements import statements
from tracker.intake.values.topics import OF_TERMS, topic_of
from tracker.intake.words.lists import phrases

_COMMA = re.compile(r",\s+(?!\d{4}\b)")
_SIGNED = re.compile(rf"\s*({SIGN})\s*(?=\w|\(|$)")
_LETTER = re.compile(r"\s*(?:[^\W\d_]{1,5}\s)?[\"'“”‘’„«]?(?P<letter>[A-Z])[\"'“”‘’»]?(?=[\s.]|$)")
_STOPS = " ,;:."


@lru_cache(maxsize=4096)
def marks_apart(text: str) -> tuple[str, ...]:
    """Its texts, each with the sign of the lines that it is about; () where it tells no marked lines from others."""
    if not sign_ahead(text) and not phrases("marked_with").find(text) and not phrases("without_mark").find(text):
        return ()
    sentences = [_COMMA.split(clause) for clause in clauses(text)]
    pieces = [piece for sentence in sentences for piece in sentence]
    apart = any(map(_tells_apart, pieces)) or _begins_with_one(pieces)
    return tuple(_signed(sentences, footnote=bool(sign_ahead(text)))) if apart else ()


def _begins_with_one(pieces: list[str]) -> bool:
    """'* lead time 6 weeks; all others 3 weeks'. The others of '* SBS 6 weeks, all others 3 weeks' are other grades,
    and those of 'b) Items 6 and 7: 30,000 lb. All other items: 10,000 lb' other items."""
    others = any(found[0].start == 0 for piece in pieces[1:] if (found := phrases("the_others").find(piece)))
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
            others = _without_mark(piece) or (_of_the_others(piece, sign, said) if sign else None)
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
        letter = _LETTER.match(piece, match.end) if sign is None and phrases("marked").find(piece) else None
        found = sign or letter
        if found is not None:
            rest = without_boards_word(f"{piece[: match.start]}{piece[found.end() :].strip()}".strip())
            name = sign_ahead(f"{sign[1]} a") if sign is not None else f"{LETTER}{found['letter']}"
            return name, rest
    return None


def _by_letter(piece: str) -> tuple[str, str] | None:
    """'Grades marked L are in stock': the letter, and what is said of them."""
    if not phrases("marked").find(piece):
        return None
    for match in phrases("marked_with").find(piece):
        found = _LETTER.match(piece, match.end)
        if found is not None:
            behind = piece[found.end() :].strip()
            marked = next((one for one in phrases("marked").find(behind) if one.start == 0), None)
            behind = behind if marked is None else behind[marked.end :].lstrip()
            return f"{LETTER}{found['letter']}", f"{piece[: match.start]}{behind}".strip()
    return None


def _of_the_others(piece: str, sign: str, said: str) -> tuple[str, str] | None:
    """'All others 3 weeks' behind what is said of the lines with the sign: about the same."""
    others = phrases("the_others").find(piece)
    if not others or piece[: others[0].start].strip(_STOPS):
        return None
    rest = piece[others[-1].end if others[-1].first <= 1 else others[0].end :].strip(_STOPS)
    topic = topic_of(without_sign(said), *OF_TERMS)
    of_lead = (
        any(isinstance(one, LeadTime) for one in statements(without_sign(said))) or lead_remarked(said) is not None
    )
    if not statements(rest) and (topic or of_lead):
        return sign, f"{topic if topic and not of_lead else _LEAD}: {rest}"
    return (sign, rest) if rest else None


_LEAD = "Lead time"


def stock_lead(text: str) -> LeadTime | None:
    """The lead time of lines that a note says are 'in stock', and nothing else."""
    found = phrases("from_stock").find(text)
    ends = bool(found) and not text[found[-1].end :].strip(_STOPS) and not denied(text, found[-1])
    short = len(text.split()) <= _FEW_WORDS and not any(map(str.isdigit, text))
    return LeadTime(0, 0, text.strip()) if ends and short else None


_FEW_WORDS = 7
