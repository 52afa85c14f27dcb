"""Freight that a note tells apart by boards: 'SBS and CUK delivered, CRB not', 'Prices FOB mill. SBS delivered', 'Buyer
pays freight, on CRB the seller does'. Read as one it would be contradicted, or hold for the wrong ones."""

from collections.abc import Iterator
from dataclasses import replace
from itertools import pairwise

from tracker.intake.values.boards.boards_excepted import boards_ahead
from tracker.intake.values.boards.boards_meant import BoardsMeant
from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.freight.delivery import find_delivery, terms_in
from tracker.intake.values.freight.freight_of_prices import freight_of_prices
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.notes.freight_said import FreightSaid, freight_said
from tracker.intake.values.prices.basis import find_basis
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.words.lists import phrases, without_article
from tracker.intake.words.phrases import blanked


def delivery_apart(text: str) -> tuple[str, ...]:
    """Its texts, each about one term of delivery and the boards that it holds for; () where it tells none apart."""
    if not boards_named(text).some:
        return ()
    found: list[str] = []
    apart = False
    told: list[FreightSaid] = []
    for piece in _pieces(text):
        said = freight_said(piece)
        if said is None or (said.delivered is not None and not (said.boards or said.others) and told):
            found.extend(_texts(told))
            told = []
        if said is None:
            apart = apart or _goes_on_about_others(piece, found) or _is_of_unknown(piece)
            found.append(piece)
            continue
        told.append(said)
        apart = apart or len(told) > 1 or bool(said.but)
    found.extend(_texts(told))
    return tuple(filter(None, found)) if apart else ()


def _pieces(text: str) -> Iterator[str]:
    """Its clauses, parted at the commas behind which a part tells of the freight of some boards, or of all others."""
    for clause in clauses(text):
        start = 0
        cuts = [match.start() for match in COMMA.finditer(clause)]
        for cut, end in pairwise((*cuts, len(clause))):
            said = freight_said(clause[cut + 1 : end].strip())
            ahead = freight_said(clause[start:cut].strip())
            behind = clause[cut + 1 : end].strip()
            told = said is not None and (said.boards or said.others)
            unknown = ahead is None and _is_of_unknown(clause[start:cut])
            going_on = ahead is not None and ahead.boards and _begins_with_boards(behind)
            if (told and (ahead is not None or unknown)) or going_on:
                yield clause[start:cut].strip()
                start = cut + 1
        yield clause[start:].strip()


def _goes_on_about_others(piece: str, before: list[str]) -> bool:
    """'CRB on request' and 'others: 6 weeks' behind 'SBS and CUK delivered'."""
    ahead = freight_said(before[-1]) if before else None
    return ahead is not None and bool(ahead.boards) and _begins_with_boards(piece)


def _begins_with_boards(part: str) -> bool:
    """With the words for some, or for all others."""
    others = any(match.first == 0 for match in phrases("the_others").find(part))
    return others or bool(boards_ahead(without_article(part))[0])


def _is_of_unknown(part: str) -> bool:
    """'White board is sold delivered', before 'greyboard ex works': of boards that no word is known for."""
    said = find_delivery(part)
    unread = said is not None and said.delivered is not None and freight_of_prices(part) is None
    return unread and not boards_named(part).some and not phrases("lead_topic").find(part)


def _texts(told: list[FreightSaid]) -> Iterator[str]:
    """The texts for what is told of boards in turn; one whose words can't be read is kept from what is said of all."""
    told = list(_with_terms(told))
    told += [
        FreightSaid(one.part, one.but) for one in told if one.but and not any(_are_the_same(one, each) for each in told)
    ]
    general = [one for one in told if not one.boards]
    named = [one for one in told if one.boards]
    if len(general) != 1 or len(told) == 1:
        yield from (_text(one) if len(told) > 1 else one.part for one in told if len(general) < 2 or one.boards)
        return
    of_all, units = _without_units(general[0].part)
    of_all = general[0].terms if general[0].others else of_all
    if not general[0].terms:
        of_all = ""
    yield from (units,) if units and of_all and not general[0].others else ()
    open_ = [one for one in named if one.delivered is None and not _is_as_for_all(one, general[0])]
    unread = [one.boards for one in open_]
    otherwise = [one for one in named if one.delivered is not None and one.delivered is not general[0].delivered]
    if unread:
        yield from ((f"{of_all} except {', '.join((*unread, *(one.boards for one in otherwise)))}",) if of_all else ())
        yield from map(_text, (*otherwise, *open_))
    elif otherwise:
        boards = ", ".join(one.boards for one in otherwise)
        yield from (f"{of_all} except {boards}: {otherwise[0].terms}",) if of_all else map(_text, otherwise)
    elif of_all:
        yield of_all
    if not of_all:
        yield from (_text(one) for one in named if one not in (*otherwise, *open_))


def _are_the_same(general: FreightSaid, named: FreightSaid) -> bool:
    """Whether those that it excepts are those of which another part tells: 'the URB chipboard' and 'the chipboard'."""
    excepted, told = boards_named(general.but), boards_named(named.boards)
    return bool(named.boards) and excepted.spans == told.spans and _grades(excepted) == _grades(told)


def _grades(boards: BoardsMeant) -> tuple[str, ...]:
    return () if boards.grade is None else boards.grade.grades


def _without_units(part: str) -> tuple[str, str]:
    """What a part says of freight, and what of the unit of all prices, which no board is excepted from: 'delivered' and
    'prices in EUR per tonne' of 'prices in EUR per tonne, delivered'."""
    terms = [term.span for term in terms_in(part)]
    words = ", ".join(part[start:end] for start, end in terms)
    told, alone = find_delivery(part), find_delivery(words) if words else None
    if told is None or alone is None or told.delivered is not alone.delivered:
        return part, ""
    return (words, blanked(part, terms)) if find_currencies(part) or find_basis(part) is not None else (part, "")


def _is_as_for_all(one: FreightSaid, general: FreightSaid) -> bool:
    """'SBS delivered in rolls' behind 'prices delivered'."""
    said = find_delivery(one.unread) if one.unread else None
    return said is not None and general.delivered is not None and said.delivered is general.delivered


def _text(one: FreightSaid) -> str:
    """What is said of its boards; 'SBS delivered Ohio' is left to who reads it by itself."""
    said = one.terms or one.unread
    return f"{one.boards}: {said}" if one.boards and said else ""


def _with_terms(told: list[FreightSaid]) -> Iterator[FreightSaid]:
    """'CRB not' with the words for what it denies, where these are understood so, 'CUK too' with those that it repeats,
    and 'SBS collect' with the word for freight."""
    before, denied = "", False
    freight = next((word for one in told for word in _freight_in(one.part)), "")
    for one in told:
        terms = one.terms
        if one.denies:
            terms = f"{one.denies} {before}" if before and _tells(f"{one.denies} {before}", False) else ""
        elif one.repeats:
            terms = before if not denied else ""
        elif one.paid:
            terms = f"{freight} {one.paid}" if freight and _tells(f"{freight} {one.paid}", True, False) else ""
        yield replace(one, terms=terms)
        before, denied = one.terms or before, bool(one.denies) or (denied and one.repeats)


def _tells(terms: str, *delivered: bool) -> bool:
    said = find_delivery(terms)
    return said is not None and said.delivered in delivered


def _freight_in(part: str) -> Iterator[str]:
    return (part[one.start : one.end] for one in phrases("charges").find(part) if one.value == "freight")
