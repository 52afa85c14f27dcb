"""What is charged on some boards alone: 'A wood levy of 22 euros per tonne is added to the prices of the GC grades'."""

import re
from typing import NamedTuple

from tracker.intake.values.boards.boards_behind import boards_behind
from tracker.intake.values.boards.boards_meant import BoardsMeant
from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.boards.coated_boards import coated_ahead
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.boards.measures_ahead import measures_ahead
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.notes.relatives import is_relative
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.orders.supplements import not_included
from tracker.intake.words.lists import phrases, without_words
from tracker.intake.words.phrases import blanked

_HYPHEN = re.compile(r"(?<=\b[A-Z]{2})(\d?)-(?=[^\W\d_]{5})")
"""That of 'GD2-Positionen' and 'GC-sorterna'."""
_EXCEPT = ("excepted", "exceptions", "the_others")
_STOPS = " ,;:.–-"


class Charged(NamedTuple):
    """What is charged, without the words for the boards that bear it, and these."""

    said: str
    boards: BoardsMeant


def charged_boards(text: str) -> Charged | None:
    """The boards behind 'on', 'to the prices of' or 'for both', where a sentence adds an amount to those alone; None
    where others are named beside them, or any is excepted."""
    if len(clauses(text)) != 1 or any(phrases(section).find(text) for section in _EXCEPT):
        return None
    text = _HYPHEN.sub(r"\1 ", _without_asides(text))
    if not any(map(str.isdigit, text)) or not _adds(text):
        return None
    bearing = _bearing(text) or _named_apart(text)
    if bearing is not None:
        return bearing
    for match in phrases("charged_on").find(text):
        behind = text[match.end :]
        lead = phrases("both_of").find(behind.lstrip())
        start = next((each.end for each in lead if each.start == 0), 0)
        coated = coated_ahead(behind.lstrip()[start:])
        words, rest = ("", coated[1]) if coated is not None else _boards_ahead(behind.lstrip()[start:])
        if words or coated is not None:
            # 'Is added to the prices': an amount without a charge's name is one beside prices.
            named = any(phrases(section).find(text[: match.start]) for section in ("charges", "surcharge_words"))
            priced = [] if named else phrases("price_words").find(text[match.start : match.end])
            before = text[: match.start + priced[-1].end if priced else match.start]
            told = f"{before.strip()} {_without_verb(rest) if not before.strip() else rest.strip(_STOPS)}"
            said = without_words(told, "no_other_boards").strip(_STOPS)
            boards = coated[0] if coated is not None else boards_named(words)
            also = phrases("as_well").find(rest)
            return Charged(said, boards) if boards.some and not (also or boards_named(said).some) else None
    return None


def _boards_ahead(text: str) -> tuple[str, str]:
    words, rest = boards_behind(text)
    if words:
        return words, rest
    words, rest = measures_ahead(text)
    # The 'carton' of 'on carton above 18 pt' may be one kind of board.
    return (words, rest) if find_grade(words) is None else ("", text)


def _without_verb(rest: str) -> str:
    """'Ein Zuschlag von 40 €/t' of 'kommt ein Zuschlag von 40 €/t', which stands behind the boards."""
    for section in ("charge_verbs", "articles"):
        first = next((match for match in phrases(section).find(rest) if not rest[: match.start].strip(_STOPS)), None)
        rest = rest[first.end :] if first is not None else rest
    return rest.strip(_STOPS)


def _bearing(text: str) -> Charged | None:
    """'Only GD2 bears a surcharge of 18 euros per tonne': the boards stand first."""
    found = next((match for match in phrases("only_these").find(text) if not text[: match.start].strip()), None)
    text = text[found.end :] if found is not None else text
    coated = coated_ahead(text)
    words, rest = ("", coated[1]) if coated is not None else _boards_ahead(text)
    verb = next((match for match in phrases("charge_verbs").find(rest) if not rest[: match.start].strip()), None)
    if verb is None or not (words or coated):
        return None
    said = rest[verb.end :].strip(_STOPS)
    boards = coated[0] if coated is not None else boards_named(words)
    return Charged(said, boards) if boards.some and not boards_named(said).some else None


def _named_apart(text: str) -> Charged | None:
    """'Energy surcharge: 3 %, coated unbleached kraft only': the part of a sentence that names its boards."""
    start = 0
    for part in _APART.split(text):
        only = phrases("only_these").find(part)
        words, rest = _boards_ahead(without_words(part, "only_these", "charged_on").strip(_STOPS)) if only else ("", "")
        told = blanked(text, [(start, start + len(part))]).strip(_STOPS + "()")
        said = f"{told} {rest.strip(_STOPS)}".strip()
        if words and not boards_named(said).some:
            return Charged(said, boards_named(words))
        start += len(part) + 1
    return None


_APART = re.compile(r"[:()]|,(?=\s)")


def frees_the_others(clause: str) -> bool:
    """'The other grades bear no surcharge', and no more than that."""
    denies = any(phrases(section).find(clause) for section in _DENIALS)
    told = bool(phrases("the_others").find(clause)) and denies
    return told and not rest_of(clause, (), "the_others", "charges", "surcharge_words", "charge_verbs", *_DENIALS)


_DENIALS = ("charge_exempt", "negations", "relieved.waived")


def _adds(text: str) -> bool:
    sections = ("charges", "surcharge_words", "added_on_top", "charge_verbs")
    return any(phrases(section).find(text) for section in sections)


def _without_asides(text: str) -> str:
    """The sentence without what follows its last comma, where that tells of the past alone, '…, der im Herbst bei 35
    Euro lag', or says once more that it comes on top, '…, que no va incluido en el precio'."""
    *said, last = COMMA.split(text)
    if not said or not ((is_relative(last) and phrases("was_then").find(last)) or not_included(last)):
        return text
    return blanked(text, [(len(text) - len(last) - 1, len(text))]).rstrip()
