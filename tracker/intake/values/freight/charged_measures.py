"""Charges that board bears only below or above some size: 'Zuschlag für Schmalrollen unter 600 mm Breite: 40 EUR/t',
'small formats below 50 x 70 cm: EUR 40/t'."""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal
from typing import NamedTuple

from tracker.intake.values.figures.lengths import Measured
from tracker.intake.values.figures.rates import is_added
from tracker.intake.values.figures.sheetsize import MM_PER, LengthUnit, find_sheet_sizes
from tracker.intake.values.figures.spans import FigureSpan, figure_spans
from tracker.intake.values.freight.charge_names import charges_named, whole_name
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.prices.price_within import prices_within
from tracker.intake.words.lists import joined, phrases
from tracker.intake.words.phrases import Found, blanked, outside

_NARROWEST_MM = 100
"""What is measured in less is a caliper or a core; common practice, no source."""


@dataclass(frozen=True, slots=True)
class WidthBound:
    """Widths of rolls in mm from `low` to `high`, None where that end is open; `with_ends`: these belong to it."""

    low: Decimal | None
    high: Decimal | None
    with_ends: bool

    def holds(self, width: Decimal) -> bool:
        """Whether a roll as wide as this lies within."""
        above = self.low is None or width > self.low or (self.with_ends and width == self.low)
        return above and (self.high is None or width < self.high or (self.with_ends and width == self.high))


class ChargedMeasure(NamedTuple):
    """A clause without the words for the size of what bears its charge. `bound` None: a size that is not read.
    `charges`: some bear it for certain, whatever the size is."""

    said: str
    bound: WidthBound | None = None
    form: str = ""
    charges: bool = True


def charged_measure(clause: str) -> ChargedMeasure | None:
    """The size that a clause bounds its charge by; None where it charges nothing, or bounds it by none."""
    if next(prices_within(clause), None) is None and not _RATE.search(clause):
        return None
    spans, sizes = _widths_in(clause), _limits_of_sheets(clause)
    narrow = phrases("narrow_webs").find(clause)
    if not (spans or sizes or narrow) or not (charges_named(clause) or is_added(clause)):
        return None
    places = [*sizes, *((span.start, span.stop) for span in spans)]
    if freed := _freed(clause, places):
        return ChargedMeasure(clause, charges=freed.isdisjoint(_CHARGES_NOBODY))
    if sizes:
        return ChargedMeasure(_without_leads(blanked(clause, sizes)), form="sheet")
    return _of_widths(clause, spans)


def bounds_a_size(part: str) -> bool:
    """'Waived for rolls over 600 mm', 'not on sheets below 50 x 70 cm': that is said of some sizes; '28 x 40 in'
    by itself is that of all."""
    starts = {word.start for word in _open_ends(part)}
    return bool(_widths_in(part)) or any(start in starts for start, _ in _limits_of_sheets(part))


def _widths_in(text: str) -> list[FigureSpan]:
    return [span for span in figure_spans(text, "length_units") if _is_width(span)]


def _of_widths(clause: str, spans: list[FigureSpan]) -> ChargedMeasure:
    """They are read where words for rolls lead to one span, and no word is left that may be of another measure; of
    'narrow rolls' alone they are not told."""
    places = [(_led_from(clause, span), span.stop) for span in spans]
    words = [match for section in _WIDTHS for match in phrases(section).find(clause)]
    said = _without_leads(blanked(clause, [*places, *(match.span for match in words)]))
    named = bool(words or phrases("charges_by_width").find(clause))
    bound = _bound(spans[0]) if named and len(spans) == 1 and not _leaves_unread(said) else None
    rolls = any(phrases(section).find(clause) for section in ("narrow_webs", "rolls"))
    if any(match.value == "sheet" for match in phrases("forms").find(clause)):
        # 'Rolls under 24 in and sheets'.
        return ChargedMeasure(said)
    return ChargedMeasure(said, bound, "roll" if rolls else "")


def _led_from(clause: str, span: FigureSpan) -> int:
    """Where the 'from' of 'from 600 to 900 mm' stands."""
    ahead = clause[: span.start].rstrip()
    leads = joined("open_measures.from", "between").find(ahead) if span.low and span.high else []
    return next((lead.start for lead in leads if lead.end == len(ahead)), span.start)


_WIDTHS = ("narrow_webs", "web_widths", "rolls")


def _freed(clause: str, places: list[tuple[int, int]]) -> set[str]:
    """The lists that hold a word by which a clause says who does not bear its charge, or that nobody does: 'not for
    rolls over 600 mm', and neither 'not over 600 mm' nor 'not included'."""
    said = blanked(clause, places)
    fillers = phrases("charge_filler").find(said)
    return {section for section in _FREEING if outside(joined(section).find(said), fillers)}


_CHARGES_NOBODY = frozenset({"negations", "relieved.within", "relieved.holds", "relieved.ended", "was_then"})
_FREEING = (*_CHARGES_NOBODY, "exceptions", "charge_exempt", "relieved.waived", "relieved.exempt")


def _without_leads(said: str) -> str:
    """'40 EUR/t bei' without the word that led to the size behind it."""
    leads = (match.span for match in phrases("charged_on").find(said) if _ENDS.match(said, match.end))
    return " ".join(blanked(said, leads).split())


_ENDS = re.compile(r"\s*(?:[:,.;]|$)")


def _is_width(span: FigureSpan) -> bool:
    """An end of a span, or both: a length by itself bounds nothing."""
    ends = [end for end in (span.low, span.high) if end is not None]
    open_or_both = len(ends) == 1 or span.low != span.high
    return open_or_both and all(length >= _NARROWEST_MM for end in ends for length in _lengths(end))


def _lengths(one: Measured) -> list[Decimal]:
    return [amount.value * MM_PER[LengthUnit(one.unit)] for amount in one.amounts]


def _bound(span: FigureSpan) -> WidthBound | None:
    low, high = (None if end is None else _lengths(end) for end in (span.low, span.high))
    if any(end is not None and len(end) != 1 for end in (low, high)):
        return None
    return WidthBound(low[0] if low else None, high[0] if high else None, span.with_ends)


def _limits_of_sheets(clause: str) -> list[tuple[int, int]]:
    """Where 'below 50 x 70 cm' and 'unter 0,35 m²' stand, and the size of 'sheets that go beyond 50 x 70 cm': whatever
    is said of it, not every sheet bears the charge."""
    starts = _open_ends(clause)
    areas = [(match.start, area.end()) for match in starts if (area := _AREA.match(clause, match.end)) is not None]
    sizes = [
        (place, place + len(size.words)) for size in find_sheet_sizes(clause) if (place := clause.find(size.words)) >= 0
    ]
    return [*areas, *((_start(clause, place, starts), end) for place, end in sizes)]


def _open_ends(clause: str) -> list[Found[str]]:
    return [match for match in phrases("open_measures").find(clause) if match.value in ("below", "above")]


def _start(clause: str, place: int, words: Sequence[Found[str]]) -> int:
    """Where the words right before a size begin, or the size."""
    return next((one.start for one in words if one.end <= place and not clause[one.end : place].strip()), place)


def _leaves_unread(said: str) -> bool:
    spans = [(start, end) for _, start, end, _ in prices_within(said)]
    spans += [match.span() for match in _RATE.finditer(said)]
    spans += [whole_name(said, match) for match in charges_named(said)]
    return bool(phrases("roll_measures").find(said)) or bool(rest_of(said, spans, *_READ))


_AREA = re.compile(r"\s*\d+(?:[.,]\d+)?\s?(?:m²|m2|qm|sqm|sq\.? ?m|sq\.? ?in|in²)(?!\w)", re.IGNORECASE)
_RATE = re.compile(r"\d+(?:[.,]\d+)?\s?%")
_READ = (
    "charged_on", "charge_verbs", "charge_filler", "additions", "added_on_top", "surcharge_applies", "surcharge_words",
    "extra_words", "price_words", "articles", "copula", "only_these", "no_other_boards", "all_of_them", "basis", "per",
    "currency", "percent",
)  # fmt: skip
