"""A note that says one thing of some lines and another of the rest, as a text for each: 'Items 6 and 7: min. order
30,000 lb. All other items: 10,000 lb.'"""

import re
from collections.abc import Iterator
from functools import lru_cache
from itertools import groupby
from operator import itemgetter

from tracker.intake.values.boards.board_behind import states
from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.boards.grade import GradeReading
from tracker.intake.values.boards.held_against import without_held_boards
from tracker.intake.values.boards.open_grades import UNCOATED
from tracker.intake.values.changes.line_corrections import lines_corrected
from tracker.intake.values.figures.rates import SHARE
from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.freight.charges_apart import boards_freed, charges_apart
from tracker.intake.values.freight.relieved_charges import no_charges
from tracker.intake.values.notes.charged_boards import charged_boards, frees_the_others
from tracker.intake.values.notes.charged_but import charged_but
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.notes.delivery_apart import delivery_apart
from tracker.intake.values.notes.lettered_lines import letters_as_numbers
from tracker.intake.values.notes.likened import with_likes
from tracker.intake.values.notes.lines_counted import line_words, lines_named, once_called
from tracker.intake.values.notes.lines_meant import lines_meant
from tracker.intake.values.notes.of_all_and_some import of_all_and_some, speaks_of_all
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.notes.said_anew import in_its_place
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.notes.times_carried_on import with_what_leads
from tracker.intake.values.notes.units_by_measure import units_by_measure
from tracker.intake.values.prices.price_within import prices_within
from tracker.intake.words.lists import phrases

_STOPS = " :,.–-()"
_BRACKETED = re.compile(r"\(([^()]*)\)")


@lru_cache(maxsize=4096)
def lines_apart(text: str) -> tuple[str, ...]:
    """Its texts, each of which names the lines that it is about or excepts, and says all of what it says of them."""
    text = with_likes(without_held_boards(once_called(letters_as_numbers(_without_examples(text)))))
    if phrases("the_others").find(text) and lines_named(text) is not None:
        return tuple(_apart(text))
    told = (
        _corrections(text)
        or _all_behind(text)
        or charges_apart(text)
        or units_by_measure(text)
        or delivery_apart(text)
        or _beside_the_freed(text)
        or _each_by_itself(text)
        or _before_boards(text)
        or _charged_by_itself(text)
        or charged_but(text)
    )
    return with_what_leads(told or of_all_and_some(text))


def _corrections(text: str) -> tuple[str, ...]:
    """'Line 2: 67 lb, not 76. Line 4 is withdrawn.': each is about its own lines; () where none corrects a line."""
    pieces = clauses(text)
    several = len(pieces) > 1 and any(lines_corrected(piece) is not None for piece in pieces)
    return tuple(pieces) if several else ()


def _without_examples(text: str) -> str:
    """'Energy surcharge 3% of the price (currently $36/ST for SBS)' without what it comes to for one board today."""
    for found in _BRACKETED.finditer(text):
        now = any(match.value == "now" and match.first == 0 for match in phrases("present_times").find(found[1]))
        amount = now and next(prices_within(found[1]), None) is not None and boards_named(found[1]).some
        before = text[: found.start()]
        if amount and SHARE.search(before) and charges_named(before) and not boards_named(before).some:
            return f"{before.rstrip()}{text[found.end() :]}"
    return text


def _all_behind(text: str) -> tuple[str, ...]:
    """'Energy surcharge $25/ST on SBS only, freight $42/ST on all': the last part is said of all boards."""
    *some, last = COMMA.split(text)
    ahead = ",".join(some)
    if not some or not boards_named(ahead).some or boards_named(last).some or not (states(ahead) and states(last)):
        return ()
    of_all = next(iter(phrases("all_of_them").find(last)), None)
    if of_all is None or rest_of(last[of_all.end :], (), "board_goods", "line_numbers"):
        return ()
    return (ahead.strip(), last.strip()) if charges_named(last) else ()


def _before_boards(text: str) -> tuple[str, ...]:
    """A paragraph that begins with what holds for all, and further on has a sentence about some boards: 'Prices are in
    euro. Ask for samples of GC2. Payment is at 30 days.' One whose first sentence names a board already has others
    about all behind it only where they say so: 'Of GC2 2 t will do. All prices are in euro.'"""
    sentences = [one for one in _SENTENCE_ENDS.split(text) if one.strip()]
    names_first = bool(sentences) and boards_named(sentences[0]).some
    if len(sentences) < 2 or (names_first and not any(map(_is_of_all, sentences))):
        return ()
    meant = lines_meant(text, note=True)
    if meant is None or meant.boards is None or meant.others:
        return ()
    about: list[bool] = []
    for sentence in sentences:
        goes_on = names_first and bool(about) and about[-1] and not _is_of_all(sentence)
        about.append(boards_named(sentence).some or goes_on)
    groups = groupby(zip(about, sentences, strict=True), key=itemgetter(0))
    return tuple(" ".join(sentence for _, sentence in group) for _, group in groups)


def _is_of_all(sentence: str) -> bool:
    return speaks_of_all(sentence) and not boards_named(sentence).some


_SENTENCE_ENDS = re.compile(r"(?<=[.!?])\s+(?=[^\W\d_a-z])|\n+")


def _charged_by_itself(text: str) -> tuple[str, ...]:
    """'Energy surcharge 3 %, SBS only. Lead time 4 weeks.' at its stop: the sentence behind names no boards, and its
    subject is another. () where a sentence states nothing, for that may go on about the charge."""
    pieces = clauses(text)
    charged = [piece for piece in pieces if charged_boards(piece) is not None]
    others = [piece for piece in pieces if piece not in charged]
    if not charged or not others or any(boards_named(piece).some or not statements(piece) for piece in others):
        return ()
    told = (one for piece in others for one in statements(piece))
    return () if any(isinstance(one, ChargeWords) for one in told) else tuple(pieces)


def _each_by_itself(text: str) -> tuple[str, ...]:
    """'Freight: $40/ST, on SBS only. CRB is collected at the mill' at its stop: each sentence names its own boards.
    () where one does not, or where it is about all."""
    pieces = clauses(text)
    if len(pieces) < 2 or not all(boards_named(piece).some for piece in pieces):
        return ()
    meant = [lines_meant(piece, note=True) for piece in pieces]
    told = [one.boards for one in meant if one is not None and one.boards is not None and not one.others]
    others = [piece for piece, one in zip(pieces, meant, strict=True) if one is None and statements(piece)]
    return tuple(pieces) if told and not others and len(set(told)) == len(told) else ()


def _beside_the_freed(text: str) -> tuple[str, ...]:
    """'On GD and GT we charge 26 €/t for energy. GC is free of it.' and '…; the other grades bear no surcharge' without
    what goes without saying; () elsewhere."""
    freed = [said.words for said in no_charges(text) if said.grades and not (said.open or said.days)]
    freed += [clause for clause in clauses(text) if frees_the_others(clause)]
    freed += [clause for clause in clauses(text) if _frees_others_than(text, clause)]
    left = tuple(clause for clause in clauses(text) if clause not in freed) if freed else ()
    return left if any(map(_charges_some, left)) else ()


def _frees_others_than(text: str, clause: str) -> bool:
    """'Every coated grade bears it. Grey board is free of it': the board freed is none of those charged."""
    freed = boards_freed(clause)
    if freed is None or freed.grade is None:
        return False
    told = (lines_meant(one, note=True) for one in clauses(text) if one != clause and _charges_some(one))
    charged = [one.boards.grade for one in told if one is not None and one.boards is not None]
    return bool(charged) and all(grade is not None and _are_others(freed.grade, grade) for grade in charged)


def _are_others(freed: GradeReading, charged: GradeReading) -> bool:
    if charged.grades:
        return bool(freed.grades) and not set(freed.grades) & set(charged.grades)
    uncoated = freed.coated_sides == 0 or (bool(freed.grades) and set(freed.grades) <= UNCOATED)
    return charged.coated is True and uncoated


def _charges_some(clause: str) -> bool:
    meant = lines_meant(clause, note=True)
    of_some = meant is not None and meant.boards is not None
    return of_some and any(
        isinstance(one, ChargeWords) and one.amounts for one in statements(meant.rest if meant else "")
    )


def _apart(text: str) -> Iterator[str]:
    lines = said = ""
    for clause in (part for whole in clauses(text) for part in _before_others(whole)):
        named = lines_named(clause)
        if named is not None:
            lines, said = clause[named[0] : named[1]], f"{clause[: named[0]]} {clause[named[1] :]}".strip(_STOPS)
        rest = without_others(clause) if lines and named is None else None
        yield clause if rest is None else f"{in_its_place(said, rest)} except {lines}"


def _before_others(clause: str) -> Iterator[str]:
    """'Items 6 and 7 30,000 lb, all others 10,000 lb' at its comma."""
    others = next(iter(phrases("the_others").find(clause)), None)
    before = clause[: others.start].rstrip() if others is not None else ""
    if before.endswith(","):
        yield before[:-1]
        yield clause[len(before) :].strip()
    else:
        yield clause


def without_others(clause: str) -> str | None:
    """'All other items: 10,000 lb' without the words for the others; None where it speaks of none."""
    others = phrases("the_others").find(clause)
    if not others:
        return None
    start, end = min(match.start for match in others), max(match.end for match in others)
    words = [match for match in line_words(clause) if not clause[end : match.start].strip()]
    end = max([end, *(match.end for match in words if match.start >= end)])
    before = clause[:start].rstrip()
    every = [match for name in ("about_lines", "all_of_them") for match in phrases(name).find(before)]
    while (leading := next((match for match in every if match.end == len(before)), None)) is not None:
        before = before[: leading.start].rstrip()
    return f"{before} {clause[end:].strip(_STOPS)}".strip(_STOPS)
