"""Freight that a note tells apart by boards: 'SBS and CUK delivered, CRB not', 'Prices FOB mill. SBS delivered', 'Buyer
pays freight, on CRB the seller does'. Read as one it would be contradicted, or hold for the wrong ones."""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

from tracker.intake.values.boards.boards_behind import boards_behind
from tracker.intake.values.boards.boards_excepted import boards_ahead
from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.freight.delivery import find_delivery, terms_in
from tracker.intake.values.freight.freight_of_prices import freight_of_prices
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.notes.topics import OF_TERMS
from tracker.intake.words.lists import phrases

_STOPS = " ,;:.()–-"


@dataclass(frozen=True, slots=True)
class _Said:
    """What a part says of freight: of the boards in `boards`, of all others (`others`), or of all where neither.
    `terms`: its words, '' where they can't be read; `denies`: it says no more than that what is said before does not
    hold."""

    part: str
    boards: str = ""
    others: bool = False
    terms: str = ""
    denies: str = ""

    @property
    def delivered(self) -> bool | None:
        said = find_delivery(self.terms) if self.terms else None
        return None if said is None else said.delivered


def delivery_apart(text: str) -> tuple[str, ...]:
    """Its texts, each about one term of delivery and the boards that it holds for; () where it tells none apart."""
    if not boards_named(text).some:
        return ()
    found: list[str] = []
    apart = False
    told: list[_Said] = []
    for piece in _pieces(text):
        said = _said(piece)
        if said is None or (said.delivered is not None and not (said.boards or said.others) and told):
            found.extend(_texts(told))
            told = []
        if said is None:
            apart = apart or _goes_on_about_others(piece, found)
            found.append(piece)
            continue
        told.append(said)
        apart = apart or len(told) > 1
    found.extend(_texts(told))
    return tuple(found) if apart else ()


def _pieces(text: str) -> Iterator[str]:
    """Its clauses, parted at the commas behind which a part tells of the freight of some boards, or of all others."""
    for clause in clauses(text):
        start = 0
        cuts = [match.start() for match in COMMA.finditer(clause)]
        for cut, end in pairwise((*cuts, len(clause))):
            said = _said(clause[cut + 1 : end].strip())
            ahead = _said(clause[start:cut].strip())
            behind = clause[cut + 1 : end].strip()
            told = said is not None and (said.boards or said.others)
            if ahead is not None and (told or (ahead.boards and boards_ahead(_without_article(behind))[0])):
                yield clause[start:cut].strip()
                start = cut + 1
        yield clause[start:].strip()


def _goes_on_about_others(piece: str, before: list[str]) -> bool:
    """'CRB on request' behind 'SBS and CUK delivered'."""
    ahead = _said(before[-1]) if before else None
    return ahead is not None and bool(ahead.boards and boards_ahead(_without_article(piece))[0])


def _said(part: str) -> _Said | None:
    others = phrases("the_others").find(part)
    if phrases("excepted").find(part) or phrases("exceptions").find(part) or phrases("only_these").find(part):
        return None
    if others:
        rest = f"{part[: others[0].start]} {part[others[0].end :]}"
        return _told(part, rest, others=True) if not boards_named(rest).some else None
    for boards, rest in _boards_in(part):
        return _told(part, rest, boards)
    if boards_named(part).some:
        return None
    said = freight_of_prices(part)
    return _Said(part, terms=part) if said is not None and said.delivered is not None else None


def _boards_in(part: str) -> Iterator[tuple[str, str]]:
    """The boards that a part begins with, leads to by 'for' or 'on', or ends in, and what it says of them."""
    denial = next((match for match in phrases("negations").find(part) if match.start == 0), None)
    start = 0 if denial is None else denial.end
    boards, rest = boards_ahead(_without_article(part[start:].strip()))
    if boards:
        # 'Not CRB' and 'CRB not' say the same.
        yield boards, f"{part[:start]} {rest}"
        return
    ends = [match.end for match in phrases("about_lines").find(part)]
    ends += [match.end for match in terms_in(part)]
    for end in sorted(ends):
        boards, rest = boards_behind(part[end:].strip())
        if boards:
            lead = next((match for match in phrases("about_lines").find(part) if match.end == end), None)
            yield boards, f"{part[: end if lead is None else lead.start]} {rest}"
            return


def _told(part: str, rest: str, boards: str = "", *, others: bool = False) -> _Said | None:
    """What is said of boards; None where no word of it is of freight, or where more is said."""
    if any(phrases(section).find(rest) for section in OF_TERMS[:2]) or any(map(str.isdigit, rest)):
        return None
    terms = terms_in(rest)
    if terms:
        unread = rest_of(rest, (term.span for term in terms), *_BESIDE_TERMS)
        return None if unread else _Said(part, boards, others, " ".join(rest.split()).strip(_STOPS))
    denials = phrases("negations").find(rest)
    if denials and not rest_of(rest, (match.span for match in denials), "copula"):
        return _Said(part, boards, others, denies=rest[denials[0].start : denials[0].end])
    return _Said(part, boards, others) if phrases("payers").find(rest) else None


_BESIDE_TERMS = ("copula", "sold_so", "price_words", "negations", "about_lines", "to_the_buyer", "board_goods")


def _texts(told: list[_Said]) -> Iterator[str]:
    """The texts for what is told of boards in turn; one whose words can't be read is kept from what is said of all."""
    told = list(_with_terms(told))
    general = [one for one in told if not one.boards]
    named = [one for one in told if one.boards]
    if len(general) != 1 or len(told) == 1:
        yield from (_text(one) if len(told) > 1 else one.part for one in told if len(general) < 2 or one.boards)
        return
    of_all = general[0].terms if general[0].others else general[0].part
    if not general[0].terms:
        of_all = ""
    unread = [one.boards for one in named if one.delivered is None]
    otherwise = [one for one in named if one.delivered is not None and one.delivered is not general[0].delivered]
    if unread:
        yield from ((f"{of_all} except {', '.join((*unread, *(one.boards for one in otherwise)))}",) if of_all else ())
        yield from map(_text, otherwise)
    elif otherwise:
        boards = ", ".join(one.boards for one in otherwise)
        yield f"{of_all} except {boards}: {otherwise[0].terms}" if of_all else f"{boards}: {otherwise[0].terms}"
    elif of_all:
        yield of_all
    if not of_all:
        yield from (_text(one) for one in named if one not in otherwise)


def _text(one: _Said) -> str:
    return f"{one.boards}: {one.terms}" if one.boards and one.terms else ""


def _with_terms(told: list[_Said]) -> Iterator[_Said]:
    """'CRB not' with the words for what it denies, where these are understood so."""
    before = ""
    for one in told:
        terms = f"{one.denies} {before}" if one.denies and before else one.terms
        denied = find_delivery(terms) if one.denies else None
        if one.denies and (denied is None or denied.delivered is not False):
            terms = ""
        yield _Said(one.part, one.boards, one.others, terms)
        before = one.terms or before


def _without_article(part: str) -> str:
    ahead = next((match for match in phrases("articles").find(part) if match.start == 0), None)
    return part if ahead is None else part[ahead.end :].lstrip(" '’")
