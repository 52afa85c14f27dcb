"""The boards that a note means: by grade or coating, and by what they measure: '20 pt and up', 'unter 230 g/m²'."""

from collections.abc import Iterator
from dataclasses import dataclass, field
from decimal import Decimal
from fractions import Fraction
from functools import lru_cache, partial

from tracker.intake.values.boards.caliper import calipers_of
from tracker.intake.values.boards.grade import GradeReading, find_grade
from tracker.intake.values.boards.weight import weighs_no_board, weights_of
from tracker.intake.values.figures.lengths import Measured
from tracker.intake.values.figures.rates import ends_in_per
from tracker.intake.values.figures.spans import FigureSpan, figure_spans

_ROUNDED = Fraction(3, 1000)
"""By how much two ways to write one measure of board may differ."""


@dataclass(frozen=True, slots=True)
class MeasureSpan:
    """Boards between two measures, in µm (`of_caliper`) or in g/m². An end that may be read in two ways has several
    values; without any it is open. `with_ends`: the ends belong to the span."""

    of_caliper: bool
    low: tuple[Fraction, ...]
    high: tuple[Fraction, ...]
    with_ends: bool

    def may_hold(self, measure: Decimal) -> bool:
        """Whether a board of this measure lies within the span, as one may read it."""
        least, most = min(self.low, default=Fraction(0)), max(self.high, default=Fraction(measure))
        give = _ROUNDED if self.with_ends else -_ROUNDED
        return least * (1 - give) <= measure <= (most * (1 + give) if self.high else measure)


@dataclass(frozen=True, slots=True)
class BoardsMeant:
    """`grade` None and no `spans`: all boards. `rest`: the text without the words of those spans."""

    grade: GradeReading | None = None
    spans: tuple[MeasureSpan, ...] = ()
    rest: str = field(default="", compare=False)

    @property
    def some(self) -> bool:
        return self.grade is not None or bool(self.spans)


ALL_BOARDS = BoardsMeant()


@lru_cache(maxsize=8192)
def boards_meant(text: str) -> BoardsMeant:
    """Which boards a part sentence names."""
    grade = find_grade(text)
    found = list(measures_meant(text))
    rest = text
    for span, _ in sorted(found, key=lambda each: -each[0].start):
        rest = f"{rest[: span.start]} {rest[span.stop :]}"
    spans = tuple(measured for _, measured in found)
    return BoardsMeant(grade if grade is not None and grade.tells_board else None, spans, rest)


def measures_meant(text: str) -> Iterator[tuple[FigureSpan, MeasureSpan]]:
    """The calipers and weights of board in a text, with where they stand."""
    for of_caliper, section in ((True, "caliper_units"), (False, "weight_units")):
        for span in figure_spans(text, section):
            no_board = _is_paid_for(text, span) or any(map(partial(_is_order, text), (span.low, span.high)))
            measured = None if no_board else _measured(of_caliper, span)
            if measured is not None:
                yield span, measured


def _is_paid_for(text: str, span: FigureSpan) -> bool:
    """The 100 lb of '$2 per 100 lb' are what the money is for; the 'les' of 'seuls les 230 et 250 g/m²' is an
    article."""
    ahead = text[: span.start]
    unit = next((end.unit for end in (span.low, span.high) if end is not None), "")
    return ends_in_per(ahead) and (unit == "pound" or any(map(str.isdigit, ahead)))


def _is_order(text: str, end: Measured | None) -> bool:
    return end is not None and end.unit == "pound" and weighs_no_board(text, end)


def _measured(of_caliper: bool, span: FigureSpan) -> MeasureSpan | None:
    low, high = (() if end is None else _values(of_caliper, end) for end in (span.low, span.high))
    unread = (span.low is not None and not low) or (span.high is not None and not high)
    return None if unread else MeasureSpan(of_caliper, low, high, span.with_ends)


def _values(of_caliper: bool, one: Measured) -> tuple[Fraction, ...]:
    if of_caliper:
        return tuple(Fraction(reading.um) for reading in calipers_of(one))
    return tuple(reading.gsm for reading in weights_of(one))
