"""Freight that a note tells apart by boards: 'SBS and CUK delivered, CRB not', 'Prices FOB mill. SBS delivered', 'Buyer
pays freight, on CRB the seller does'. Read as one it would be contradicted, or hold for the wrong ones."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from itertools import pairwise

from tracker.intake.values.boards.boards_behind import boards_behind
from tracker.intake.values.boards.boards_excepted import boards_ahead
from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.freight.delivery import find_delivery, terms_in
from tracker.intake.values.freight.freight_of_prices import freight_of_prices
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.notes.topics import OF_TERMS
from tracker.intake.values.notes.ways_named import FORMS, ways_named
from tracker.intake.values.prices.basis import find_basis
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.prices.units_in_doubt import is_of_a_later_day
from tracker.intake.words.lists import joined, phrases, without_article
from tracker.intake.words.phrases import blanked

_STOPS = " ,;:.()–-"


@dataclass(frozen=True, slots=True)
class _Said:
    """What a part says of freight: of the boards in `boards`, of all others (`others`), or of all where neither.
    `terms`: its words, '' where they can't be read, and `unread` then; `denies`: it says no more than that what is said
    before does not hold, `repeats`: than that it does; `paid`: it says how freight is paid without the word for it."""

    part: str
    boards: str = ""
    others: bool = False
    terms: str = ""
    denies: str = ""
    unread: str = ""
    repeats: bool = False
    paid: str = ""

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
            apart = apart or _goes_on_about_others(piece, found) or _is_of_unknown(piece)
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
            unknown = ahead is None and _is_of_unknown(clause[start:cut])
            going_on = ahead is not None and ahead.boards and _begins_with_boards(behind)
            if (told and (ahead is not None or unknown)) or going_on:
                yield clause[start:cut].strip()
                start = cut + 1
        yield clause[start:].strip()


def _goes_on_about_others(piece: str, before: list[str]) -> bool:
    """'CRB on request' and 'others: 6 weeks' behind 'SBS and CUK delivered'."""
    ahead = _said(before[-1]) if before else None
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


def _said(part: str) -> _Said | None:
    others = phrases("the_others").find(part)
    if joined("excepted", "exceptions", "only_these").find(part):
        return _kept_apart(part)
    if others:
        rest = f"{part[: others[0].start]} {part[others[0].end :]}"
        return _told(part, rest, others=True) if not boards_named(rest).some else None
    for boards, rest in _boards_in(part):
        return _told(part, rest, boards)
    if boards_named(part).some:
        return None
    said = freight_of_prices(part)
    return _Said(part, terms=part) if said is not None and said.delivered is not None else None


def _kept_apart(part: str) -> _Said | None:
    """'CRB is excluded from free delivery' and 'CRB only for collection': what holds for all does not hold there."""
    boards, rest = boards_ahead(without_article(part))
    but = next(iter(joined("excepted", "exceptions").find(rest)), None) if boards else None
    excluded = but is not None and not rest_of(rest[: but.start], (), "copula") and bool(terms_in(rest[but.end :]))
    return _Said(part, boards) if excluded or (boards and but is None and _is_done_with_it(rest)) else None


def _is_done_with_it(rest: str) -> bool:
    """'Pick up at mill', of which no term of delivery is made, and few words more."""
    done = [match.span for match in phrases("done_words").find(rest)]
    left = rest_of(rest, done, "copula", "only_these", "about_lines")
    return bool(done) and len(left.split()) <= _FEW and not any(map(str.isdigit, rest))


_FEW = 3


def _boards_in(part: str) -> Iterator[tuple[str, str]]:
    """The boards that a part begins with, leads to by 'for' or 'on', or ends in, and what it says of them."""
    denial = next((match for match in phrases("negations").find(part) if match.start == 0), None)
    start = 0 if denial is None else denial.end
    boards, rest = boards_ahead(without_article(part[start:].strip()))
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
    """What is said of boards; None where no word of it is of freight."""
    if any(phrases(section).find(rest) for section in OF_TERMS[:2]) or any(map(str.isdigit, rest)):
        return None
    said = _Said(part, boards, others)
    if _is_doubtful(rest):
        # 'SBS can be delivered', 'CUK not always'.
        return said if terms_in(rest) or phrases("negations").find(rest) else None
    terms = terms_in(rest)
    if terms and _tells_a_form(part, [rest[term.start : term.end] for term in terms]):
        return None
    if terms:
        bare = " ".join(rest.split()).strip(_STOPS)
        unread = rest_of(rest, (term.span for term in terms), *_BESIDE_TERMS)
        if unread and (freight_of_prices(bare) is None or find_currencies(bare) or find_basis(bare) is not None):
            # 'SBS samples ex works' tells nothing of its prices, 'GC2, price SEK/ton delivered' more than freight.
            return None
        return replace(said, unread=bare) if unread else replace(said, terms=bare)
    denials = phrases("negations").find(rest)
    if denials and not rest_of(rest, (match.span for match in denials), "copula"):
        return replace(said, denies=rest[denials[0].start : denials[0].end])
    alone = [one for one in joined(*_SHORT).find(rest) if not rest_of(rest, (one.span,), "copula")]
    if alone:
        words = rest[alone[0].start : alone[0].end]
        paid = phrases("freight_paid_so").whole(words) is not None
        return replace(said, paid=words) if paid else replace(said, repeats=True)
    if _is_done_with_it(rest):
        return said
    # 'The rest as before' tells nothing of what is said of some.
    return said if phrases("payers").find(rest) or others else None


def _tells_a_form(part: str, terms: list[str]) -> bool:
    """'GC1 wird in Rollen geliefert' says in which form it comes, and nothing of freight."""
    verbs = all(phrases("done_words").whole(term) is not None for term in terms)
    return verbs and bool(ways_named(part) & FORMS)


def _is_doubtful(rest: str) -> bool:
    """Of what is possible, was so, will be or is so at times, or is brought to the seller: 'to our warehouse'."""
    return is_of_a_later_day(rest) or bool(joined(*_DOUBTS).find(rest))


_DOUBTS = ("may_be", "was_then", "only_if", "optional", "units_in_doubt.possible", "not_always", "to_the_seller")


_SHORT = ("as_said_before", "ditto", "freight_paid_so")
_BESIDE_TERMS = ("copula", "sold_so", "price_words", "negations", "about_lines", "to_the_buyer", "board_goods")


def _texts(told: list[_Said]) -> Iterator[str]:
    """The texts for what is told of boards in turn; one whose words can't be read is kept from what is said of all."""
    told = list(_with_terms(told))
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


def _without_units(part: str) -> tuple[str, str]:
    """What a part says of freight, and what of the unit of all prices, which no board is excepted from: 'delivered' and
    'prices in EUR per tonne' of 'prices in EUR per tonne, delivered'."""
    terms = [term.span for term in terms_in(part)]
    words = ", ".join(part[start:end] for start, end in terms)
    told, alone = find_delivery(part), find_delivery(words) if words else None
    if told is None or alone is None or told.delivered is not alone.delivered:
        return part, ""
    return (words, blanked(part, terms)) if find_currencies(part) or find_basis(part) is not None else (part, "")


def _is_as_for_all(one: _Said, general: _Said) -> bool:
    """'SBS delivered in rolls' behind 'prices delivered'."""
    said = find_delivery(one.unread) if one.unread else None
    return said is not None and general.delivered is not None and said.delivered is general.delivered


def _text(one: _Said) -> str:
    """What is said of its boards; 'SBS delivered Ohio' is left to who reads it by itself."""
    said = one.terms or one.unread
    return f"{one.boards}: {said}" if one.boards and said else ""


def _with_terms(told: list[_Said]) -> Iterator[_Said]:
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
