"""The parts of a note, each with the way of being sold that it is about and what it goes on about.

The 'sheets 5 weeks' of 'Lead time rolls 3 weeks, sheets 5 weeks' is a lead time, of sheets."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.topics import topic_of
from tracker.intake.values.notes.ways_named import FORMS, named_in, ways_named
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
_LEAD = frozenset({"lead"})
_NOTHING: frozenset[str] = frozenset()


@dataclass(frozen=True, slots=True)
class TermOfWay:
    """A part of a note: `ways` that it is about, () for all; `kinds` of terms that it tells; `clause`: in which."""

    text: str
    ways: frozenset[str] = _NOTHING
    kinds: frozenset[str] = _NOTHING
    clause: int = 0


def parts_told(text: str, heard: frozenset[str]) -> Iterator[TermOfWay]:
    """The parts of a note, one after the other; only the ways `heard` are told apart."""
    telling = _Telling(heard)
    for number, clause in enumerate(clauses(_with_colons(text))):
        yield from telling.clause(number, clause)


@dataclass(slots=True)
class _Telling:
    """What a note has said so far, which its next part goes on about."""

    heard: frozenset[str]
    topic: str = ""
    """The words for what is told: 'Lead time'."""
    begun: int = 0
    """The clause in which they were said."""
    timed: str = ""
    """The last part that counted a time, in whose unit a bare figure counts."""
    paid: bool = False
    """Whether it tells when prices are paid."""
    counted_apart: int = -1
    """The clause whose times are those of something else than an order."""
    number: int = 0
    leader: frozenset[str] = _NOTHING
    """The way that the present clause begins with."""
    strange: bool = False
    """Whether the present clause has told something that no rule knows."""

    def clause(self, number: int, clause: str) -> Iterator[TermOfWay]:
        """Its parts."""
        self.number, self.strange = number, False
        self.leader = _leader(clause) & self.heard
        self.paid = _labels_another(clause) or (self.paid and not topic_of(clause, *_TOPICS))
        for piece in _pieces(clause, self.heard):
            yield self._part(piece)

    def _part(self, piece: str) -> TermOfWay:
        ways, own = self._ways(piece), topic_of(piece, *_TOPICS)
        if own:
            self.topic, self.begun = own, self.number
        said = self._said_of(piece, ways, own)
        if ways and not own:
            said = self._led_on(said)
        # 'Payment: rolls 4 weeks, sheets 8 weeks' counts other weeks than those of a lead time, all of it.
        self.strange = self.strange or not (own or _kinds_in(said) or _is_of_ways_alone(said))
        return TermOfWay(said, ways, self._kinds(piece, said, ways, own), self.number)

    def _ways(self, piece: str) -> frozenset[str]:
        named = any(match.value in self.heard for match in named_in(piece))
        return (ways_named(piece) & self.heard) or (_NOTHING if named else self.leader)

    def _said_of(self, piece: str, ways: frozenset[str], own: str) -> str:
        """What a piece says of its ways, a bare figure with the unit of the time before it."""
        said = _without(piece, ways)
        if ways and not own and "lead" in _kinds_in(self.topic):
            said = with_unit_of(said, self.timed)
        if counts_time(piece):
            self.timed = piece
        return said if own or not ways else _time_alone(said) or said

    def _led_on(self, said: str) -> str:
        """What is said of a way under the topic that was said before it."""
        weeks = _leads_to(said)
        if weeks and "validity" in _kinds_in(self.topic) and self.begun < self.number:
            # 'Offer valid until 31 December. Sheets from stock, rolls 3 weeks': those of the next sentence.
            self.topic = ""
        if weeks and not (self.topic or self.strange):
            # 'Sheets in 6 weeks, rolls in 4' goes on with weeks.
            self.topic, self.begun = weeks, self.number
        if _is_of(self.topic, said):
            return _led_to(self.topic, said)
        return _led_to(weeks, said) if weeks and not self.strange else said

    def _kinds(self, piece: str, said: str, ways: frozenset[str], own: str) -> frozenset[str]:
        """The kinds of terms that a part tells for certain."""
        told = _kinds_in(said) or (_LEAD if ways and counts_a_lead(said) else _NOTHING)
        if counts_time(said) and (not told or phrases("samples").find(piece)):
            # 'Rolls are paid in 3 weeks, sheets in five': of what is counted there the rest of it tells as well.
            self.topic, self.counted_apart = "", self.number
        if told == _LEAD and self.counted_apart == self.number and not own:
            return _NOTHING
        if ways & FORMS and told and tells_how_it_comes(piece, said):
            return _NOTHING
        return _NOTHING if told == _LEAD and self.paid and not phrases("lead_topic").find(said) else told


def _led_to(topic: str, said: str) -> str:
    """'Delivered in 5 weeks' of 'delivered in' and 'in 5 weeks'; a time alone is none of delivered prices."""
    of_lead = "lead" in _kinds_in(topic) and find_delivery(topic) is not None
    return f"{_LEAD_TIME if of_lead else topic} {said}"


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
    kinds = _kinds_in(topic)
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


def _kinds_in(said: str) -> frozenset[str]:
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
