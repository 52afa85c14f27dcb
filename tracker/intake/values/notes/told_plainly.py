"""Whether a piece of a note tells a lead time or a smallest order of its boards and nothing else, by the order of its
words: 'GD2 takes 6 weeks', 'for weights from 350 g/m² we need five weeks after order', 'on SBS orders from 10 t'.

Each word is of a kind. A time counts where its boards, a verb or 'in' lead to it, and not 'for', 'plus' or 'every'; a
weight where words for orders stand beside it, or where nothing stands beside it but the boards and 'from'. One word of
no kind, and nothing is told for certain.
"""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.notes.rest import Span
from tracker.intake.values.orders.bracket_pieces import VEHICLES
from tracker.intake.values.orders.least_parts import PIECES
from tracker.intake.words.lists import joined, phrases
from tracker.intake.words.phrases import Found, blanked

BOARDS = "¤"
"""Stands for the words of the boards in a piece."""
_TIME, _MASS, _NAMED, _NOUN, _UNKNOWN = "T", "M", "B", "b", "?"
_KINDS = {
    "made_so.lots": "l", "made_so.apart": "g", "made_so.sold": "a", "only_these": "o", "made_so.to_order": "O",
    "made_so.at_once": "n", "at_once.any": "n", "from_stock.any": "S", "kept_in_stock": "S", "no_minimum": "N",
    "made_so.but": "c", "made_so.for_them": "c", "made_so.takes": "t", "made_so.reckon": "t", "made_so.there": "a",
    "made_so.kept": "k", "made_so.rarely": "r", "made_so.made": "m", "made_so.least": "f", "made_so.within": "i",
    "within_a_time": "i", "takes_time": "t", "lead_topic": "L", "from_order": "F", "counted_after": "z",
    "order_taken": "F", "the_order": "F", "minimum": "w", "minimum_at_first": "w", "at_least": "w",
    "orders_refused": "w", "order_words": "w", "exceptions": "p", "excepted": "p", "about_lines": "p",
    "range.and": "c", "and_words": "c", "copula": "=", "articles": "d", "made_so.boards": "b", "weight_words": "b",
    "goods_delivered": "b", "all_of_them": "b", "all_goods": "b", "board_nouns": "b", "bracket.from": "f",
    "minimum_per": "q", "ordered.any": "q", "around_a_minimum": "q", "about": "u", "firm_times": "u",
    "the_buyer": "u", "buyer_sites": "u", "to_the_buyer": "u", "countries": "u", "incoterms": "u", "delivery": "u",
    "beside_a_time": "u", "says_nothing_more": "g",
}  # fmt: skip
"""The kind of each list's words; where two lists have the same words, the first one's."""
_BESIDE_WEIGHTS = tuple(section for section in _KINDS if section != "beside_a_time")
_LED = rf"p(?=[gdpibu]*[{_NAMED}{_NOUN}c]|[gdi]*[{_MASS}w])"
_LEAD_TIME = re.compile(
    rf"(?:(?:^|(?<=[BbSOMNTFtLiu=ocd]))T(?=$|[BbcgdpiouFztLaMwqNSO=T])"
    rf"|{_LED}|[BbcgdouiFNSOLM=twqfman]|l(?=[gd]*(?:[fz]M|Mf))|z(?=[FgquM])|r(?=.*T)|k(?=.*S)|(?<=S)k)*"
)
_AT_ONCE = re.compile(r"[BbgdcoiL=n]*a[BbgdcoiaL=n]*")
"""'Greyboard goes out at once', and not 'in small lots'."""
_OTHERS_BEHIND = re.compile(rf"{_NAMED}.*[{_TIME}{_MASS}S].*c[dgpib]*{_NAMED}")
"""'SBS, 5 weeks, and GD2': what holds for the last is told behind it, if at all."""
_LEAST = re.compile(rf"(?:{_LED}|[BbcgdouiFNSOLT=twqfma])*(?:w[BbgdpifoucFtmaqwLz=]*M|M[gdpif=qou]*w|l[gd]*[fz]?M).*")
_REPEATED = re.compile(rf"(?:{_LED}|[Bbcgdoi=mta])*[fz]?[iod]*M(?:{_LED}|i(?=[gd]*{_NAMED})|[Bbdocf=gt])*")
"""'2 t en GD': the word that leads to times leads to the boards of a weight as well."""


@dataclass(frozen=True, slots=True)
class Plain:
    """`lead`: nothing but times, stock and what belongs to them is told; `least`: a weight is for certain that of the
    smallest order; `other_weight`: its weights are for certain those of something else, of what is there or of a
    load; `figures_left`: another figure stands there.
    """

    lead: bool
    least: bool
    other_weight: bool
    figures_left: bool


def told_plainly(told: str, times: Sequence[Span], masses: Sequence[str], *, repeats: bool) -> Plain:
    """How a piece with its times in figures tells them, its boards replaced by their sign. `repeats`: weights were told
    of orders before, so that 'GD2 10 t' is one too."""
    spans = [*((start, end, _TIME) for start, end in times), *_weighed(blanked(told, times), masses)]
    # Beside a time 'for orders' says nothing more; beside a weight alone it is of the order.
    lists = tuple(_KINDS) if times else _BESIDE_WEIGHTS
    kinds = "".join(_kinds(told, sorted(spans), lists))
    # 'At once' beside a time may be how soon something else is done.
    at_once = "n" not in kinds or (_TIME not in kinds and ("S" in kinds or bool(_AT_ONCE.fullmatch(kinds))))
    known = at_once and _LEAD_TIME.fullmatch(kinds) is not None and _OTHERS_BEHIND.search(kinds) is None
    least = known and bool(_LEAST.fullmatch(kinds) or (repeats and _REPEATED.fullmatch(kinds)))
    left = blanked(told, ((start, end) for start, end, _ in spans))
    other = _MASS in kinds and _is_of_something_else(told, kinds, masses)
    return Plain(known, least, other, figures_left=any(map(str.isdigit, left)))


def _weighed(told: str, masses: Sequence[str]) -> Iterator[tuple[int, int, str]]:
    begins = 0
    for mass in masses:
        start = told.find(mass, begins)
        if start >= 0:
            begins = start + len(mass)
            yield start, begins, _MASS


def _kinds(told: str, spans: list[tuple[int, int, str]], lists: tuple[str, ...]) -> Iterator[str]:
    reached = 0
    for start, end, kind in spans:
        yield from _kinds_of_words(told[reached:start], lists)
        yield kind
        reached = end
    yield from _kinds_of_words(told[reached:], lists)


def _kinds_of_words(text: str, lists: tuple[str, ...]) -> Iterator[str]:
    found = joined(*lists).find(text)
    rest = blanked(text, (match.span for match in found))
    kinds = [(match.start, _KINDS[match.value]) for match in found]
    kinds += [(word.start(), _kind_left(word.group())) for word in _WORDS.finditer(rest)]
    yield from (kind for _, kind in sorted(kinds))


_WORDS = re.compile(rf"[^\s.,:;()\-–—'’“”\"&{BOARDS}]+|{BOARDS}")


def _kind_left(word: str) -> str:
    if word == BOARDS:
        return _NAMED
    if word == "=":
        return "="
    roles = header_roles(word) if word.isalpha() else ()
    return _NOUN if roles and roles[0].role in _OF_BOARDS else _UNKNOWN


_OF_BOARDS = (Role.CALIPER, Role.WEIGHT, Role.PRODUCT, Role.GRADE, Role.ITEM, Role.SHEET_SIZE)


def _is_of_something_else(told: str, kinds: str, masses: Sequence[str]) -> bool:
    """'40 t from stock' and '18 t available' are there, '24 t per truck' is a load, '1 t pallets' are what boards come
    on; words for orders, and 'from', tell of an order."""
    if any(kind in kinds for kind in "wf"):
        return False
    loads = [match for match in phrases("bracket").find(told) if match.value in (*VEHICLES, *PIECES)]
    if loads:
        per = any(_is_per(told, match) for match in loads)
        return per or ("a" in kinds and all(match.value in PIECES for match in loads))
    # '10 t, from stock' may be ordered all the same.
    weighed = (part for part in COMMA.split(told) if any(mass in part for mass in masses))
    return all(joined("made_so.there", "from_stock.any", "kept_in_stock").find(part) for part in weighed)


def _is_per(told: str, load: Found[str]) -> bool:
    """The 'per' of '24 t per truck', right before what it counts."""
    found = [match for match in phrases("per").find(told[: load.end]) if match.value == "strong"]
    return any(match.start == load.start or not told[match.end : load.start].strip() for match in found)
