"""Terms said of one way in which board is sold: 'Mindestmenge Rolle 5 t, Bogen 1 t', 'Strecke: Lieferzeit 4 Wochen'."""

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import lru_cache

from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.topics import topic_of
from tracker.intake.values.notes.ways_named import FORMS, OTHER_WAY, named_in, ways_named
from tracker.intake.values.notes.ways_timed import counts_a_lead, tells_how_it_comes, with_unit_of
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.times.dates import find_dates
from tracker.intake.values.times.goods_in_stock import told_in_stock
from tracker.intake.values.times.lead import counts_plain_days, lead_text
from tracker.intake.values.times.lead_from_order import lead_from_order
from tracker.intake.values.times.lead_sentences import times_in
from tracker.intake.values.times.times_in_words import counts_time, times_in_figures
from tracker.intake.words.lists import pattern, phrases, without_words
from tracker.intake.words.phrases import tokens_of

_TOPICS = {"minimum": "minimum", "lead_topic": "lead", "valid": "validity"}
_KINDS = {**_TOPICS, "until": "validity"}
_PIECES = re.compile(r",(?!\d|\s\d{4}\b)\s*|\s[-–—]\s(?!\d)|\s\((?=[^()]*\d)")
_AND = re.compile(rf"\s{pattern('range', 'and')}\s")
_STOPS = " :,;–-"


@dataclass(frozen=True, slots=True)
class TermOfWay:
    """A part of a note: `ways` that it is about, () for all; `kinds` of terms that it tells; `clause`: in which."""

    text: str
    ways: frozenset[str] = frozenset()
    kinds: frozenset[str] = frozenset()
    clause: int = 0


def considered(of_prices: Iterable[str]) -> frozenset[str]:
    """The ways that notes are heard to name: forms always, others where prices are told apart by them."""
    ways = frozenset(of_prices)
    return FORMS | {way for way in ways if OTHER_WAY[way] in ways}


@lru_cache(maxsize=4096)
def terms_by_way(text: str, heard: frozenset[str]) -> tuple[TermOfWay, ...]:
    """The parts of a note that tells terms of one of the ways `heard` and not of the other; () for any other note."""
    if not any(match.value in heard for match in named_in(text)):
        return ()
    parts = tuple(_parts(text, heard))
    return parts if any(part.ways and part.kinds for part in parts) else ()


def _parts(text: str, heard: frozenset[str]) -> Iterator[TermOfWay]:
    topic, begun, paid, apart, timed = "", 0, False, -1, ""
    for number, clause in enumerate(clauses(_with_colons(text))):
        leader, strange = _leader(clause) & heard, False
        paid = _labels_another(clause) or (paid and not topic_of(clause, *_TOPICS))
        for piece in _pieces(clause, heard):
            named = any(match.value in heard for match in named_in(piece))
            ways = (ways_named(piece) & heard) or (frozenset() if named else leader)
            own = topic_of(piece, *_TOPICS)
            topic, begun = (own, number) if own else (topic, begun)
            said = _without(piece, ways)
            if ways and not own and "lead" in _kinds(topic):
                said = with_unit_of(said, timed)
            timed = piece if counts_time(piece) else timed
            said = said if own or not ways else _time_alone(said) or said
            weeks = _leads_to(said) if ways and not own else ""
            if weeks and "validity" in _kinds(topic) and begun < number:
                # 'Offer valid until 31 December. Sheets from stock, rolls 3 weeks': those of the next sentence.
                topic = ""
            if weeks and not (topic or strange):
                # 'Sheets in 6 weeks, rolls in 4' goes on with weeks.
                topic, begun = weeks, number
            if ways and not own and (led_to := topic if _is_of(topic, said) else "" if strange else weeks):
                said = _led_to(led_to, said)
            # 'Payment: rolls 4 weeks, sheets 8 weeks' counts other weeks than those of a lead time, all of it.
            strange = strange or not (own or _kinds(said) or _is_of_ways_alone(said))
            told = _kinds(said) or (_LEAD if ways and counts_a_lead(said) else frozenset())
            if counts_time(said) and (not told or phrases("samples").find(piece)):
                # 'Rolls are paid in 3 weeks, sheets in five': of what is counted there the rest of it tells as well.
                topic, apart = "", number
            told = frozenset() if apart == number and not own and told == _LEAD else told
            if ways & FORMS and told and tells_how_it_comes(piece, said):
                told = frozenset()
            of_lead = told != {"lead"} or bool(phrases("lead_topic").find(said))
            yield TermOfWay(said, ways, told if of_lead or not paid else frozenset(), number)


def _led_to(topic: str, said: str) -> str:
    """'Delivered in 5 weeks' of 'delivered in' and 'in 5 weeks'; a time alone is none of delivered prices."""
    of_lead = "lead" in _kinds(topic) and find_delivery(topic) is not None
    return f"{_LEAD_TIME if of_lead else topic} {said}"


_LEAD = frozenset({"lead"})


def _time_alone(said: str) -> str:
    """The '4 weeks' of 'for these please reckon with 4 weeks', and a word for stock for 'we keep in stock', where no
    more is said."""
    if told_in_stock(said):
        return said if phrases("from_stock").whole(said.strip(_STOPS)) is not None else _IN_STOCK
    times = list(times_in(times_in_figures(said))) if counts_a_lead(said) else []
    return times[0][0].words if len(times) == 1 and not phrases("may_be").find(without_words(said, "made_so")) else ""


_IN_STOCK = "ex stock"
"""As all languages know it."""


def _labels_another(clause: str) -> bool:
    """'Payment: rolls 10 days after order, sheets 20 days': neither of these is a lead time."""
    label = clause.partition(":")[0]
    return label != clause and bool(phrases("not_lead").find(label)) and not phrases("lead_topic").find(label)


def _with_colons(text: str) -> str:
    """'Rolls - delivered, sheets - FOB mill' and 'Rollen – 5 Wochen' with a colon behind each way that a part begins
    with, for the dash; that of 'Price list - sheets from stock' parts two matters."""
    for match in reversed(named_in(text)):
        dash = _DASH.match(text, match.end)
        if dash is not None and text[: match.start].rstrip()[-1:] in _BEFORE_A_PART:
            text = f"{text[: match.end]}: {text[dash.end() :]}"
    return text


_DASH = re.compile(r"\s[-–—]\s")
_BEFORE_A_PART = (*",;.:\n", "")


def _leads_to(said: str) -> str:
    """The words for lead time, before the 'five weeks' that are all that is said of a way; days may be of payment."""
    lead = lead_text(said.strip(_STOPS))
    counted = lead is not None and lead.high > 0 and counts_plain_days(lead.words) is None
    return _LEAD_TIME if counted else ""


def _is_of_ways_alone(said: str) -> bool:
    """Nothing is said in words but how board is sold."""
    return not any(token.isalpha() for token, _, _ in tokens_of(said))


_LEAD_TIME = "LT"
"""One of [lead_topic] that all languages know."""


def _is_of(topic: str, said: str) -> bool:
    """The '5 weeks' behind 'Lead time 3 weeks', the '5' behind it, and not 'every one weighs 2,500 lb'."""
    words = sum(token.isalpha() for token, _, _ in tokens_of(times_in_figures(said)))
    kinds = _kinds(topic)
    if "validity" in kinds:
        return words <= _WORDS_OF_A_DAY and any(map(str.isdigit, said))
    weighed = "minimum" in kinds and bool(find_masses(said))
    timed = "lead" in kinds and (counts_time(said) or lead_text(said) is not None)
    return words <= _WORDS_OF_A_FIGURE and (weighed or timed or (bool(kinds) and bool(_BARE.fullmatch(said))))


_WORDS_OF_A_FIGURE, _WORDS_OF_A_DAY = 3, 4
_BARE = re.compile(r"(?:[^\W\d]+\s)?\d+")


def _leader(clause: str) -> frozenset[str]:
    """The way that a clause begins with, and names no other behind: what it goes on with is said of it."""
    named = named_in(clause)
    begins = bool(named) and not clause[: min(match.start for match in named)].strip()
    return ways_named(clause) if begins else frozenset()


def _pieces(clause: str, heard: frozenset[str]) -> Iterator[str]:
    for piece in (piece for part in _PIECES.split(clause) for piece in _at_colon(part)):
        text = piece.removesuffix(")") if piece.count(")") > piece.count("(") else piece
        joint = next((joint for joint in _AND.finditer(text) if _told_apart(text, joint, heard)), None)
        if joint is None:
            yield text.strip()
        else:
            yield text[: joint.start()].strip()
            yield text[joint.end() :].strip()


def _at_colon(piece: str) -> tuple[str, ...]:
    """'All prices delivered: rolls per tonne' at its colon, behind the freight of all."""
    head, colon, tail = piece.partition(": ")
    of_all = bool(colon) and not named_in(head) and find_delivery(head) is not None
    return (head, tail) if of_all and named_in(tail) else (piece,)


def _told_apart(text: str, joint: re.Match[str], heard: frozenset[str]) -> bool:
    """'Rolls 20 t and sheets 2 t', 'rolls in 10 days and sheets in four weeks': a figure of each."""
    return all(
        ways_named(side) & heard and any(map(str.isdigit, times_in_figures(side)))
        for side in (text[: joint.start()], text[joint.end() :])
    )


def _kinds(said: str) -> frozenset[str]:
    """The kinds of terms that a piece tells; '10 business days' and 'from stock' are lead times by themselves, and the
    'stock' of 'sheeted stock' is none."""
    # The 'to' of '4 to 5 weeks' and of 'widths 20 to 96 in' ends no validity.
    told = {
        kind
        for section, kind in _KINDS.items()
        if any(match.value not in ("weak", "of_a_span") or find_dates(said) for match in phrases(section).find(said))
    }
    if lead_from_order(said) is not None:
        told.add("lead")
    words = said.strip(_STOPS)
    counted = any(map(str.isdigit, words)) and lead_text(words) is not None and not find_masses(words)
    if not told and (counted or phrases("from_stock").whole(words) is not None):
        return frozenset({"lead"})
    return frozenset(told or ({"delivery"} if find_delivery(said) is not None else ()))


def _without(piece: str, ways: frozenset[str]) -> str:
    """The piece without the words for its ways; 'ab Werk' says of delivery what it does all the same."""
    for match in sorted(named_in(piece), key=lambda match: -match.start):
        if match.value in ways and find_delivery(piece[match.start : match.end]) is None:
            piece = f"{piece[: match.start]} {piece[match.end :]}"
    return piece.strip(_STOPS) if ways else piece


def left_to(text: str, own: frozenset[str], apart: frozenset[str]) -> str:
    """What a note says of prices of their `own` ways, where the ways `apart` are those of others beside them.

    A term of their own comes before one of the same kind that is said of all.
    """
    parts = terms_by_way(text, considered(apart))
    named = frozenset().union(*(part.ways for part in parts))
    held = [part for part in parts if all(_holds(way, part, own, apart, named) for way in part.ways)]
    own_kinds = frozenset().union(*(part.kinds for part in held if part.ways and part.ways <= own))
    kept = [part for part in held if part.ways or not part.kinds & own_kinds]
    unsure = _told_twice(kept, own)
    kept = [part for part in kept if not part.kinds & unsure]
    if len(kept) == len(parts) and not any(_is_own_least(part, own) for part in kept):
        return text
    by_clause: dict[tuple[int, int], list[str]] = {}
    for place, part in enumerate(kept):
        told = _without_any(part.text) if _is_own_least(part, own) else part.text
        by_clause.setdefault((part.clause, place if part.ways else -1), []).append(told)
    return "; ".join(", ".join(texts) for texts in by_clause.values())


def _is_own_least(part: TermOfWay, own: frozenset[str]) -> bool:
    """A smallest order of these prices' own way: 'Delivered: minimum 20 t'. It is that of all of them."""
    return bool(part.ways) and part.ways <= own and part.kinds == {"minimum"}


def _without_any(piece: str) -> str:
    for match in reversed(named_in(piece)):
        piece = f"{piece[: match.start]} {piece[match.end :]}"
    return piece.strip(_STOPS)


def _told_twice(parts: list[TermOfWay], own: frozenset[str]) -> frozenset[str]:
    """The kinds of terms of which these prices may have that of all or that of a way. Two lead times or smallest orders
    are told as such where they are read."""
    of_all = frozenset().union(*(part.kinds for part in parts if not part.ways))
    of_some = frozenset().union(*(part.kinds for part in parts if part.ways and not part.ways <= own))
    return (of_all & of_some) - _TOLD_WHERE_READ


_TOLD_WHERE_READ = frozenset({"lead", "minimum"})


def _holds(way: str, part: TermOfWay, own: frozenset[str], apart: frozenset[str], named: frozenset[str]) -> bool:
    """Whether what is said of a way is said of these prices; of those whose way is not told, where no others are."""
    other = OTHER_WAY[way]
    if way in own or other in own:
        return way in own
    # Two of which it is not known which holds are told as such where they are read.
    both = other in named and way in FORMS and not part.kinds & _TOLD_WHERE_READ
    return not (both or {way, other} & apart)
