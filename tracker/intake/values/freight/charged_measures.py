"""Charges that board bears only below or above some size: 'Zuschlag für Schmalrollen unter 600 mm Breite: 40 EUR/t',
'small formats below 50 x 70 cm: EUR 40/t'."""

import re
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
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import blanked

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
    """A clause without the words for the size of what bears its charge. `bound` None: a size that is not read."""

    said: str
    bound: WidthBound | None
    form: str
    unsure: bool


def charged_measure(clause: str) -> ChargedMeasure | None:
    """The size that a clause bounds its charge by; None where it charges nothing, or bounds it by none."""
    if next(prices_within(clause), None) is None and not _RATE.search(clause):
        return None
    narrow = phrases("narrow_webs").find(clause)
    spans = [span for span in figure_spans(clause, "length_units") if _is_width(span)]
    sizes = _limits_of_sheets(clause)
    if not (charges_named(clause) or is_added(clause)) or not (spans or sizes):
        return None
    if sizes:
        return ChargedMeasure(_without_leads(blanked(clause, sizes)), None, "sheet", unsure=True)
    words = [match.span for section in ("web_widths", "rolls") for match in phrases(section).find(clause)]
    said = blanked(clause, [*((span.start, span.stop) for span in spans), *(match.span for match in narrow), *words])
    said = _without_leads(said)
    bound = _bound(spans[0]) if len(spans) == 1 else None
    rolls = bool(narrow or phrases("rolls").find(clause))
    return ChargedMeasure(said, bound, "roll" if rolls else "", unsure=bound is None or _leaves_unread(said))


def _without_leads(said: str) -> str:
    """'40 EUR/t bei' without the word that led to the size behind it."""
    leads = (match.span for match in phrases("charged_on").find(said) if _ENDS.match(said, match.end))
    return " ".join(blanked(said, leads).split())


_ENDS = re.compile(r"\s*(?:[:,.;]|$)")


def _is_width(span: FigureSpan) -> bool:
    ends = [end for end in (span.low, span.high) if end is not None]
    return len(ends) == 1 and all(length >= _NARROWEST_MM for length in _lengths(ends[0]))


def _lengths(one: Measured) -> list[Decimal]:
    return [amount.value * MM_PER[LengthUnit(one.unit)] for amount in one.amounts]


def _bound(span: FigureSpan) -> WidthBound | None:
    low, high = ([] if end is None else _lengths(end) for end in (span.low, span.high))
    if len(low) + len(high) != 1:
        return None
    return WidthBound(low[0] if low else None, high[0] if high else None, span.with_ends)


def _limits_of_sheets(clause: str) -> list[tuple[int, int]]:
    """Where 'below 50 x 70 cm' and 'unter 0,35 m²' stand."""
    starts = [match for match in phrases("open_measures").find(clause) if match.value in ("below", "above")]
    found: list[tuple[int, int]] = []
    for match in starts:
        behind = clause[match.end :]
        area = _AREA.match(behind)
        if area is not None:
            found.append((match.start, match.end + area.end()))
        for size in find_sheet_sizes(behind):
            place = behind.find(size.words)
            if place >= 0 and not behind[:place].strip():
                found.append((match.start, match.end + place + len(size.words)))
    return found


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
