"""Footnotes within a text: 'Prices in EUR/t, those marked with * in EUR/kg' is the note '* those in EUR/kg' behind what
is said of all."""

import re
from collections.abc import Iterable, Iterator

from tracker.intake.values.boards.boards_behind import without_boards_word
from tracker.intake.values.notes.clauses import sentences_of
from tracker.intake.values.notes.money_of_marked import money_of_marked
from tracker.intake.values.notes.note_signs import NOT, SIGN, sign_ahead, without_sign
from tracker.intake.values.notes.relatives import is_relative
from tracker.intake.values.notes.signs_in_words import but_for_signed
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.notes.topics import OF_TERMS, topic_of
from tracker.intake.words.lists import phrases, without_leading

_COMMA = re.compile(r",\s+(?!\d{4}\b)")
_SIGNED = re.compile(rf"\s*({SIGN})\s*(?=[\w(:]|$)")
_FIGURE = re.compile(r"(?:[$€£]|[A-Z]{3}\s)?\s*\d")
_STOPS = " ,;:."


def notes_within(text: str) -> tuple[str, ...]:
    """What a text says of all lines, and the footnotes within it, each beginning with its sign; () where none is.

    'Prices in EUR/t, those marked with * in EUR/kg' is the note '* those in EUR/kg' behind 'Prices in EUR/t'.
    """
    told = [[*(money_of_marked(sentence) or _notes_in(sentence))] for sentence in sentences_of(text)]
    sentences = list(_on_their_matter(told))
    notes = tuple(part for parts in sentences for part in parts if sign_ahead(part))
    plain = (", ".join(part for part in parts if not sign_ahead(part)) for parts in sentences)
    return tuple(filter(None, ("; ".join(filter(None, plain)), *notes))) if notes else ()


def _on_their_matter(sentences: Iterable[list[str]]) -> Iterator[list[str]]:
    """The parts of each sentence; the '* 5,000 lb' of 'Minimum order 20,000 lb, items marked with * 5,000 lb' with the
    'minimum order' that it is about."""
    topic = ""
    for parts in sentences:
        whole: list[str] = []
        for part in parts:
            sign = sign_ahead(part)
            topic = topic if sign else topic_of(part, *OF_TERMS)
            said = without_leading(without_sign(part).strip(_STOPS), "articles", "marked").strip(_STOPS)
            said = without_boards_word(said).strip(_STOPS)
            # 'Items marked * come on pallets of 1 t' is about something else.
            bare = _FIGURE.match(said) or phrases("from_stock").whole(said) is not None
            told = f"{topic}: {said}" if topic and sign and bare else ""
            carries_on = told and not statements(without_sign(part)) and statements(told)
            whole.append(f"{part[: part.index(sign) + len(sign)]} {told}" if carries_on else part)
        yield whole


def _notes_in(sentence: str) -> list[str]:
    """Its parts between commas as notes. What goes on behind the colon of 'those marked with *: EUR/t, ex works' is of
    the same prices, and so is 'which we invoice in EUR/t, likewise ex works'."""
    others = but_for_signed(sentence)
    if others is not None:
        return [others]
    parts: list[str] = []
    for part in map(_as_note, _with_exceptions(_COMMA.split(sentence))):
        goes_on = parts and sign_ahead(parts[-1]) and not sign_ahead(part)
        same = is_relative(part) or phrases("goes_on_so").find(part)
        if goes_on and (":" in parts[-1] or (same and not parts[-1].startswith(f"[{NOT}"))):
            parts[-1] += f", {part}"
        else:
            parts.append(part)
    return parts


def _with_exceptions(parts: Iterable[str]) -> list[str]:
    """'ab Werk' and 'sofern nicht mit * gekennzeichnet' behind its comma as one."""
    whole: list[str] = []
    for part in parts:
        excepts = any(match.start == 0 for match in phrases("but_for_the_sign").find(part))
        if excepts and whole and phrases("marked_with").find(part):
            whole[-1] = f"{whole[-1]} {part}"
        else:
            whole.append(part)
    return whole


def _as_note(part: str) -> str:
    """'mit * gekennzeichnete Preise in EUR/kg' as '* gekennzeichnete Preise in EUR/kg'.

    'All but those marked with *' is said of the others.
    """
    for match in phrases("marked_with").find(part):
        sign = _SIGNED.match(part, match.end)
        before, behind = part[: match.start], part[sign.end() if sign else match.end :]
        others = _of_the_unmarked(before)
        if sign is not None and others and len(behind.split()) < 2:
            return f"[{NOT}{sign[1]}] {others}"
        if any(one.start <= match.start and one.end >= match.end for one in phrases("without_mark").find(part)):
            continue
        if sign is not None and (behind.strip(" .)") or not phrases("exceptions").find(before)):
            return f"{sign[1]} {before}{behind}"
    return part


def _of_the_unmarked(before: str) -> str:
    """What is said before an exception that a sign marks: the 'EXW' of 'EXW unless marked *', 'EXW, wenn nicht mit *
    gekennzeichnet'; '' where nothing leads to one."""
    for match in phrases("but_for_the_sign").find(before):
        if len(before[match.end :].split()) < 2:
            return before[: match.start].strip(" ,;(–-")
    return ""
