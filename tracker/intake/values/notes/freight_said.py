"""What one part of a note says of freight, and of which boards: 'CRB not', 'only greyboard ex works', 'everything but
the chipboard comes delivered'."""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from tracker.intake.values.boards.boards_behind import boards_behind
from tracker.intake.values.boards.boards_excepted import boards_ahead
from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.freight.delivery import find_delivery, terms_in
from tracker.intake.values.freight.freight_of_prices import freight_of_prices
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.notes.topics import OF_TERMS
from tracker.intake.values.notes.ways_named import FORMS, ways_named
from tracker.intake.values.prices.basis import find_basis
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.prices.units_in_doubt import is_of_a_later_day
from tracker.intake.words.lists import joined, phrases, without_article

_STOPS = " ,;:.()–-"


@dataclass(frozen=True, slots=True)
class FreightSaid:
    """What a part says of freight: of the boards in `boards`, of all others (`others`), or of all where neither; `but`:
    all others are all but these. `terms`: its words, '' where they can't be read, and `unread` then; `denies`: it says
    no more than that what is said before does not hold, `repeats`: than that it does; `paid`: it says how freight is
    paid without the word for it."""

    part: str
    boards: str = ""
    others: bool = False
    but: str = ""
    terms: str = ""
    denies: str = ""
    unread: str = ""
    repeats: bool = False
    paid: str = ""

    @property
    def delivered(self) -> bool | None:
        said = find_delivery(self.terms) if self.terms else None
        return None if said is None else said.delivered


def freight_said(part: str) -> FreightSaid | None:
    """None where a part says nothing of freight, or of boards that are not told apart."""
    others = phrases("the_others").find(part)
    if joined("excepted", "exceptions", "only_these").find(part):
        return _of_all_but(part) or _of_these_only(part) or _kept_apart(part)
    if others:
        rest = f"{part[: others[0].start]} {part[others[0].end :]}"
        return _told(part, rest, others=True) if not boards_named(rest).some else None
    for boards, rest in _boards_in(part):
        return _told(part, rest, boards)
    if boards_named(part).some:
        return None
    said = freight_of_prices(part)
    return FreightSaid(part, terms=part) if said is not None and said.delivered is not None else None


def _of_all_but(part: str) -> FreightSaid | None:
    """'Everything but the chipboard comes delivered'."""
    every = next((match for match in joined("all_goods", "all_of_them").find(part) if match.start == 0), None)
    but = next(iter(joined("excepted", "exceptions").find(part)), None)
    if but is None or every is None or rest_of(part[every.end : but.start], (), "made_so.boards"):
        return None
    boards, rest = boards_ahead(without_article(part[but.end :].strip()))
    said = _told(part, rest, others=True) if boards else None
    if said is None or not said.terms:
        return None
    alone = ", ".join(said.terms[term.start : term.end] for term in terms_in(said.terms))
    told = find_delivery(alone) if alone else None
    return replace(
        said, but=boards, terms=alone if told is not None and told.delivered is said.delivered else said.terms
    )


def _of_these_only(part: str) -> FreightSaid | None:
    """'Only greyboard is sold ex works', where what holds for all is told before."""
    only = next((match for match in phrases("only_these").find(part) if match.start == 0), None)
    boards, rest = boards_ahead(without_article(part[only.end :].strip())) if only is not None else ("", "")
    said = _told(part, rest, boards) if boards and not phrases("only_these").find(rest) else None
    return said if said is not None and said.terms else None


def _kept_apart(part: str) -> FreightSaid | None:
    """'CRB is excluded from free delivery' and 'CRB only for collection': what holds for all does not hold there."""
    boards, rest = boards_ahead(without_article(part))
    but = next(iter(joined("excepted", "exceptions").find(rest)), None) if boards else None
    excluded = but is not None and not rest_of(rest[: but.start], (), "copula") and bool(terms_in(rest[but.end :]))
    return FreightSaid(part, boards) if excluded or (boards and but is None and _is_done_with_it(rest)) else None


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


def _told(part: str, rest: str, boards: str = "", *, others: bool = False) -> FreightSaid | None:
    """What is said of boards; None where no word of it is of freight."""
    if any(phrases(section).find(rest) for section in OF_TERMS[:2]) or any(map(str.isdigit, rest)):
        return None
    said = FreightSaid(part, boards, others)
    if _is_doubtful(rest):
        # 'SBS can be delivered', 'CUK not always'.
        return said if terms_in(rest) or phrases("negations").find(rest) else None
    terms = terms_in(rest)
    if terms and _tells_a_form(part, [rest[term.start : term.end] for term in terms]):
        return None
    if terms:
        collected = phrases("collected_so").find(rest)
        unread = rest_of(rest, (one.span for one in (*terms, *collected)), *_BESIDE_TERMS)
        # 'You collect at the mill (EXW)' says no more than 'EXW'.
        told = ", ".join(rest[term.start : term.end] for term in terms) if collected and not unread else rest
        bare = " ".join(told.split()).strip(_STOPS)
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
_BESIDE_TERMS = (
    "copula",
    "sold_so",
    "collected_so",
    "price_words",
    "negations",
    "about_lines",
    "to_the_buyer",
    "board_goods",
)
