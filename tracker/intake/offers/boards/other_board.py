"""Rows whose remark offers another board than they ask for: which of the two the price is for is asked."""

from collections.abc import Mapping
from decimal import Decimal
from fractions import Fraction

from tracker.intake.columns.column import Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.notes.said import at
from tracker.intake.offers.prices.price_changes import ask_whether_it_stands
from tracker.intake.values.boards.boards_meant import BoardsMeant, MeasureSpan
from tracker.intake.values.boards.offered_instead import offered_instead
from tracker.trade.offer import GrammageFrom

_ROUNDED = Fraction(3, 100)
"""By how much the same board may be written in two units, as between the two measures of a cell."""


def ask_of_another_board(draft: Draft, cells: Mapping[int, Cell], columns: Columns, facts: FileFacts) -> None:
    """Holds back a price beside 'we do not make 22 pt, offered is 24 pt'."""
    for cell in columns.remarks_in(cells):
        offered = offered_instead(cell.text)
        if offered is not None and _is_another(offered, draft):
            ask_whether_it_stands(draft, cell.text.strip(), f"in {at(cell)} offers another board than its row", facts)


def _is_another(offered: BoardsMeant, draft: Draft) -> bool:
    grades = offered.grade.grades if offered.grade is not None else ()
    if grades and draft.grade is not None and draft.grade not in grades:
        return True
    weight = None if draft.grammage_from is GrammageFrom.ESTIMATED else draft.grammage_gsm
    measures = ((True, draft.caliper_um), (False, weight))
    return any(measure is not None and _none_is(measure, offered, of_caliper=kind) for kind, measure in measures)


def _none_is(measure: Decimal, offered: BoardsMeant, *, of_caliper: bool) -> bool:
    spans = [span for span in offered.spans if span.of_caliper is of_caliper]
    return bool(spans) and not any(_holds(span, measure) for span in spans)


def _holds(span: MeasureSpan, measure: Decimal) -> bool:
    low, high = min(span.low, default=Fraction(0)), max(span.high, default=None)
    # 295 g/m² is not 300, though 457 µm may be called 450: nothing was converted between whole metric measures.
    whole = _is_metric(Fraction(measure)) and all(map(_is_metric, (*span.low, *span.high)))
    give = Fraction(0) if whole else _ROUNDED
    return low * (1 - give) <= measure and (high is None or measure <= high * (1 + give))


def _is_metric(measure: Fraction) -> bool:
    """A whole number of g/m² or µm, and none of those that are whole points as well (508 µm)."""
    return measure % 1 == 0 and measure % 127 != 0
