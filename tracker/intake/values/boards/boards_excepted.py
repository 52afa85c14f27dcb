"""The boards that a note excepts from what it says: 'Lead time 4 weeks, except SBS: 6 weeks', 'CRB excepted'."""

import re
from dataclasses import dataclass

from tracker.intake.values.boards.board_ahead import board_ahead
from tracker.intake.values.boards.boards_meant import BoardsMeant
from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.boards.kinds_meant import kind_meant
from tracker.intake.values.boards.measures_ahead import measures_ahead
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.notes.topics import ends_then, goes_on_about_excepted
from tracker.intake.values.times.lead import lead_text
from tracker.intake.words.lists import pattern, phrases, without_article, without_leading

JOINED = re.compile(rf"\s*(?:,|&|\+|/|\b{pattern('range', 'and', 'or')}\b)\s*")
_STOPS = " ,;:.()–-"


@dataclass(frozen=True, slots=True)
class Excepted:
    """`others`: what is said of all boards but these; `behind`: what is said of these, '' where nothing is."""

    boards: BoardsMeant
    others: str
    behind: str = ""


def boards_excepted(text: str) -> Excepted | None:
    """The boards for which a text does not hold; None where it excepts none, or not whole boards."""
    for match in phrases("excepted").find(text):
        before, behind = text[: match.start].rstrip(_STOPS), text[match.end :].lstrip(" :")
        words, rest = boards_ahead(without_leading(behind, *_LEADING))
        # 'Greyboard (URB)' is no kind of which the grade in brackets is left over.
        of_kind = kind_meant(behind) if before and not words.endswith(")") else None
        if of_kind is not None:
            return Excepted(of_kind.boards, before, _said_of_them(of_kind.behind))
        if not words:
            words, rest = measures_ahead(behind)
        if words:
            # 'Except SBS, lead time is 4 weeks' says it of the others first.
            if before or goes_on_about_excepted(rest):
                return Excepted(boards_named(words), before, _said_of_them(rest))
            return Excepted(boards_named(words), rest.strip(_STOPS))
        said, comma, piece = before.rpartition(",")
        if comma and not behind.strip(_STOPS) and boards_named(piece).some and not statements(piece):
            return Excepted(boards_named(piece), said.strip(_STOPS))
    return _contrasted(text)


def _contrasted(text: str) -> Excepted | None:
    """'Delivered to your works. Greyboard, however, is sold ex works', '…, der Graukarton hingegen ab Werk': a part
    that begins with the board and is set against all that stands before it."""
    for match in phrases("contrasted").find(text):
        starts = [stop.end() for stop in _PART_ENDS.finditer(text, 0, match.start)]
        for start in reversed(starts):
            words, rest = boards_ahead(without_leading(text[start : match.start].strip(), *_LEADING))
            others = text[:start].strip(_STOPS)
            if words and others and not boards_named(others).some:
                return Excepted(
                    boards_named(words), others, _said_of_them(f"{rest.strip(_STOPS)} {text[match.end :]}".strip())
                )
    return None


_PART_ENDS = re.compile(r"[,;](?!\d)\s*|[.!](?:\s+|$)")


def boards_ahead(text: str) -> tuple[str, str]:
    """As board_ahead, for several boards as well: 'SBS and CUK' of 'SBS and CUK: 6 weeks'."""
    words, rest = board_ahead(text)
    if not words:
        return _in_turn(text)
    while words and (joint := JOINED.match(rest)) is not None:
        more, behind = board_ahead(_past_article(joint[0], rest[joint.end() :]))
        if not more:
            break
        words, rest = f"{words}{rest[: joint.end()]}{more}", behind
    return words, rest


def _past_article(joint: str, text: str) -> str:
    """'GT2' behind the 'et le' of 'le GD2 et le GT2'; an article behind a comma may begin what is said of others."""
    return without_article(text) if any(map(str.isalpha, joint)) and "," not in joint else text


def said_of_boards_alone(text: str) -> tuple[str, str]:
    """What a text says before it names the only boards that it is about, and those: 'Energy surcharge 2.5 %' and 'SBS'
    of 'Energy surcharge 2.5 %: SBS only' and 'Energy surcharge 2.5 % (only SBS)'; '' and '' of all others."""
    parted = _LAST.fullmatch(text.strip())
    only = next(iter(phrases("only_these").find(parted["last"])), None) if parted is not None else None
    if parted is None or only is None:
        return "", ""
    words, rest = boards_ahead(f"{parted['last'][: only.start]} {parted['last'][only.end :]}".strip(_STOPS))
    return ("", "") if rest.strip(_STOPS) else (parted["said"].strip(), words)


_LAST = re.compile(r"(?P<said>[^:]*\S)\s*(?::|\((?=[^()]*\)\.?$))(?P<last>[^:]*)")


def _in_turn(text: str) -> tuple[str, str]:
    """'GC1 und GD2 ab Lager' begins with two boards, each of which is one by itself."""
    joint = JOINED.search(text)
    first = text[: joint.start()] if joint is not None else ""
    if joint is None or not first or board_ahead(first) != (first, ""):
        return "", text
    more, behind = boards_ahead(_past_article(joint[0], text[joint.end() :]))
    return (text[: joint.end()] + more, behind) if more else ("", text)


def _said_of_them(rest: str) -> str:
    """What stands behind the names; the 'trim rolls' of 'except SBS trim rolls' are a part of the name, and so it is
    not known what is said of the board; 'except SBS from stock' and 'except SBS ex works' tell it."""
    said = rest.strip(_STOPS)
    terms = find_delivery(said)
    if terms is not None and terms.delivered is not None and terms.words in said and _sells_so(said, terms.words):
        return terms.words
    told = not rest[:1].isalpha() or lead_text(said) is not None or terms is not None or ends_then(said)
    return said if told else ""


def _sells_so(said: str, terms: str) -> bool:
    """'Som säljs fritt vårt lager' and 'den wir ab Werk Adlau verkaufen' tell terms of delivery, and no more."""
    start = said.find(terms)
    place = _PLACE.match(said, start + len(terms))
    end = place.end() if place is not None else start + len(terms)
    return not rest_of(said, [(start, end)], "relative_words", "sold_so", "copula")


_PLACE = re.compile(r"(?:,?\s+[A-ZÄÖÜÅÉ][\w-]+){0,2}")
_LEADING = ("articles", "named_boards")
"""'The grade GD' begins with a board all the same."""
