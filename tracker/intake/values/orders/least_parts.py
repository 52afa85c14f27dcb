"""The parts of a clause between its commas and brackets, with what each has of a smallest order and what is left."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.freight.delivery import find_delivery, terms_in
from tracker.intake.values.notes.rest import Span, rest_of
from tracker.intake.values.notes.unless import unless_at
from tracker.intake.values.orders.bracket_pieces import VEHICLES
from tracker.intake.values.orders.masses import Mass, find_masses
from tracker.intake.values.orders.pieces_weighed import restates
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.times.dates import find_dates
from tracker.intake.values.times.times_in_words import counts_time
from tracker.intake.words.lists import joined, pattern, phrases, without_words
from tracker.intake.words.phrases import Found, blanked

PIECES = frozenset({"pallet", "roll"})
AROUND = ("around_a_minimum", "minimum", "minimum_per", "order_words", "ordered.any", "bracket.from")
"""Words that change nothing of the weight of a smallest order beside it."""
_TAKEN = ("orders_taken", "around_orders_taken")


@dataclass(frozen=True)
class Part:
    """A part of a clause: its words for a smallest order, its weights with where they stand, and all from its
    beginning to the end of the clause."""

    text: str
    onwards: str

    @cached_property
    def topics(self) -> Sequence[Found[str]]:
        """'Je Sorte fertigen wir ab drei Tonnen' tells a smallest order where no other words do, and so do 'at least 5
        t per order' and 'we accept orders from 2 t', if they tell nothing else."""
        found = phrases("minimum").find(self.text) or phrases("minimum_at_first").find(self.text)
        return found or self._at_least or self._taken

    @property
    def _at_least(self) -> Sequence[Found[str]]:
        found = phrases("at_least").find(self.text)
        spans = [*(match.span for match in found), *(span for _, span in self.masses)]
        ordered = any(phrases(section).find(self.text) for section in ("order_words", "minimum_per"))
        return found if found and ordered and not _without_grades(rest_of(self.text, spans, *AROUND)) else []

    @property
    def _taken(self) -> Sequence[Found[str]]:
        """'We take orders up to 5 t' and 'we accept orders from 5 t carriage paid' tell no smallest one."""
        found = joined(*_TAKEN).find(self.text)
        taken = any(match.value == _TAKEN[0] for match in found) and phrases("ordered").find(self.text)
        if not taken or len(self.masses) != 1:
            return []
        ahead = without_words(self.text[: self.masses[0][1][0]], *_TAKEN).rstrip()
        begins = any(match.end == len(ahead) for match in joined("bracket.from").find(ahead))
        spans = [*(match.span for match in found), self.masses[0][1]]
        return found if begins and not _without_grades(rest_of(self.text, spans, *AROUND)) else []

    @cached_property
    def masses(self) -> list[tuple[Mass, Span]]:
        return list(_masses_in(self.text))

    @cached_property
    def rest(self) -> str:
        """What is left of the part without these, without grades and without all that goes without saying."""
        spans = [*(topic.span for topic in self.topics), *(span for _, span in self.masses)]
        ends = unless_at(self.text)
        spans += [] if ends is None else [(ends, len(self.text))]
        spans += [*self.pieces, *_all_forms(self.text), *_terms_ahead(self.text, self.topics)]
        spans += [*_told_again(self.text, self.masses), *_terms_behind(self.text, self.topics, self.masses)]
        return _without_grades(rest_of(self.text, spans, *AROUND))

    @cached_property
    def pieces(self) -> list[Span]:
        """What counts the pieces of an order, and joins them to a weight: '2 Rollen', 'Rollengewicht', 'of'."""
        counted = _counted(self.text, self.topics)
        named = [match for section in ("load_weights", "piece_weights") for match in phrases(section).find(self.text)]
        return [*counted, *(match.span for match in named)] if counted else []

    @property
    def behind_topic(self) -> str:
        """The clause from behind the words for a smallest order on, or from the weight where this stands before
        them."""
        first, weight = self.topics[0], self.masses[0][1][0]
        return self.onwards[first.end if first.end <= weight else 0 :]

    def joined(self, other: "Part") -> "Part":
        """Both as one."""
        return Part(f"{self.text} {other.text}", f"{self.text}, {other.onwards}")

    def without(self, spans: list[Span]) -> "Part":
        """The part with blanks there."""
        text = blanked(self.text, spans)
        return Part(text, text)


def parts_of(clause: str) -> list[Part]:
    """Its parts; an 'and' parts as well where another matter stands on one side of it: 'es de 3 t y el plazo, de 4
    semanas'."""
    found = (match for match in _BREAKS.finditer(clause) if not match["word"] or _is_unit(match["word"]))
    ends = [(match.end("word") if match["word"] else match.start(), match.end()) for match in found]
    parts, begins = [], 0
    for end, after in [*ends, (len(clause), len(clause))]:
        for piece, start in _parted_at_and(clause[begins:end]):
            if piece.strip():
                parts.append(Part(piece, clause[begins + start :]))
        begins = after
    return parts


def _is_unit(word: str) -> bool:
    """The 'ton' of 'USD per ton. 5,000 lb minimum' ends a sentence; the 'min' of 'min. 5 t' does not."""
    return phrases("basis").whole(word) is not None


_BREAKS = re.compile(r",(?!\d)|[()\[\]\n]|\s{3,}|\s[-–—](?=\s\D)|\s[*•·|]\s|\b(?P<word>[^\W\d]{2,})\.\s(?=\d)")


def _parted_at_and(text: str) -> Iterator[tuple[str, int]]:
    begins = 0
    for match in _AND.finditer(text):
        ahead, behind = text[begins : match.start()], text[match.end() :]
        if _of_another_matter(ahead) != _of_another_matter(behind) or (_of_a_board(ahead) and _of_a_board(behind)):
            yield ahead, begins
            begins = match.end()
    yield text[begins:], begins


def _of_another_matter(text: str) -> bool:
    """A lead time, or what is in the prices, and no weight."""
    matters = counts_time(text) or phrases("lead_topic").find(text) or find_delivery(text) is not None
    return bool(matters) and not find_masses(text)


def _of_a_board(text: str) -> bool:
    """'5 ST for CUK', beside 'and 10 ST for CRB'."""
    return bool(find_masses(text)) and find_grade(text) is not None


_AND = re.compile(rf"\s{pattern('range', 'and', 'or')}\s", re.IGNORECASE)


def _masses_in(text: str) -> Iterator[tuple[Mass, Span]]:
    begins = 0
    for mass in find_masses(text):
        start = text.find(mass.words, begins)
        if start >= 0:
            # The '1000 kg' of '2 ton á 1000 kg' is a part of that weight.
            begins = start + len(mass.words)
            yield mass, (start, begins)


def _terms_ahead(text: str, topics: Sequence[Found[str]]) -> Iterator[Span]:
    """The 'Effective 12/14/2026 FOB mill' of 'Effective 12/14/2026 FOB mill minimum 5,000 lb', as titles set terms one
    behind the other; nothing else may stand there."""
    ahead = text[: topics[0].start] if topics else ""
    spans = [*(term.span for term in terms_in(ahead)), *((day.start, day.end) for day in find_dates(ahead))]
    if (spans or find_currencies(ahead)) and not rest_of(ahead, spans, *_OTHER_TERMS):
        yield 0, len(ahead)


def _terms_behind(text: str, topics: Sequence[Found[str]], masses: list[tuple[Mass, Span]]) -> Iterator[Span]:
    """The 'FOB mill' of 'MOQ 5 ST FOB mill', where nothing else stands behind the weight; 'minimum 4 t frei Haus' may
    be the least that is delivered free."""
    last = masses[-1][1][1] if masses else len(text)
    behind = text[last:]
    said = find_delivery(behind)
    spans = [term.span for term in terms_in(behind)] if said is not None and said.delivered is False else []
    if topics and topics[0].start < last and spans and not rest_of(behind, spans):
        yield last, len(text)


def _told_again(text: str, masses: list[tuple[Mass, Span]]) -> Iterator[Span]:
    """The '/ 2.3 t' of '5,000 lb / 2.3 t'."""
    for mass, (_, end) in masses:
        stroke = _AGAIN.match(text, end)
        again = find_masses(text[stroke.end() :])[:1] if stroke is not None else ()
        for other in again:
            if stroke is not None and text.startswith(other.words, stroke.end()) and restates(mass, other):
                yield end, stroke.end() + len(other.words)


_AGAIN = re.compile(r"\s*[/=≈]\s*")
_OTHER_TERMS = ("currency", "cents", "basis", "per", "price_words", "list_names", "valid", "until", "since")


def _all_forms(text: str) -> Iterator[Span]:
    """The 'rolls and sheets' of an order that may be of either."""
    named = phrases("forms_named").find(text)
    return (match.span for match in named if len({one.value for one in named}) > 1)


def _counted(text: str, topics: Sequence[Found[str]]) -> list[Span]:
    """The '2 Rollen' of an order in rolls, the '1 container' of one that fills it."""
    return [
        (number.start(), piece.end)
        for piece in phrases("bracket").find(text)
        if piece.value in PIECES or (piece.value in VEHICLES and topics and topics[0].end <= piece.start)
        if (number := _COUNT.search(text[: piece.start])) is not None
        and (piece.value in PIECES or not number["count"].isdigit() or number["count"] == "1")
    ]


_COUNT = re.compile(rf"(?:(?<![\d.,])(?P<count>\d{{1,3}}|\b{pattern('articles', 'any')}))\s+$", re.IGNORECASE)


def _without_grades(rest: str) -> str:
    named = find_grade(rest) if rest else None
    names = set(named.words.split()) if named is not None else set()
    return " ".join(word for word in rest.split() if word.strip(".:;") not in names)
