"""The report as a workbook: one sheet of offers, one of what stands out, one of samples owed."""

from collections.abc import Sequence
from pathlib import Path
from typing import Any

from tracker.reports.content import CARE, CONFIDENCE, ESTIMATE, ReportContent
from tracker.trade.exact import half_up

_OFFER_HEADINGS = (
    "Grade", "Verdict", "Vendor", "Board", "Decided", "Caliper, pt", "Order", "Basis weight", "As quoted", "{unit}",
    "from, if the weight is estimated", "to", "Over or under the going price, %",
    "Lead time", "Valid until", "Source",
)  # fmt: skip
_UNUSUAL_HEADINGS = ("Grade", "Verdict", "Offer", "Reasons")
_SAMPLE_HEADINGS = (
    "Number", "Vendor", "Board", "Requested", "Promised", "Days waiting", "Days overdue", "State"
)  # fmt: skip


def write_workbook(content: ReportContent, path: Path) -> None:
    """Write the report to an .xlsx file, text that looks like a formula as text. OSError where it can't be written."""
    from openpyxl import Workbook

    book = Workbook()
    _sheet(book.active, "Offers", [heading.format(unit=content.unit) for heading in _OFFER_HEADINGS], _offers(content))
    _sheet(book.create_sheet(), "Out of line", _UNUSUAL_HEADINGS, _unusual(content))
    _sheet(book.create_sheet(), "Samples owed", _SAMPLE_HEADINGS, _samples(content))
    notes = [[text] for text in (content.footing, ESTIMATE, CONFIDENCE, CARE, *content.questions)]
    _sheet(book.create_sheet(), "Notes", ("Notes and open questions",), notes)
    book.save(path)


def _offers(content: ReportContent) -> list[list[object]]:
    return [
        [
            grade.code,
            row.mark.value,
            row.vendor,
            row.board,
            row.decided,
            row.caliper_pt,
            row.order,
            row.weight + (" *" if row.weight_estimated else ""),
            row.as_quoted,
            None if row.price is None else float(half_up(row.price, 2)),
            *((None, None) if row.between is None else (float(half_up(end, 2)) for end in row.between)),
            None if row.of_expected is None else float(half_up(100 * (row.of_expected - 1), 1)),
            row.lead_time,
            row.valid_until,
            row.source,
        ]
        for grade in content.grades
        for row in grade.rows
    ]


def _unusual(content: ReportContent) -> list[list[object]]:
    return [
        [grade.code, unusual.mark.value, unusual.title, " ".join(unusual.reasons)]
        for grade in content.grades
        for unusual in grade.unusual
    ]


def _samples(content: ReportContent) -> list[list[object]]:
    return [
        [
            row.number,
            row.vendor,
            row.board,
            row.requested,
            row.promised,
            row.waiting_days,
            row.overdue_days,
            row.state,
        ]
        for row in content.samples
    ]


def _sheet(sheet: Any, title: str, headings: Sequence[str], rows: Sequence[Sequence[object]]) -> None:
    from openpyxl.styles import Alignment, Font

    sheet.title = title
    _append(sheet, 1, headings)
    for cell in sheet[1]:
        cell.font = Font(bold=True)
        cell.alignment = Alignment(wrap_text=True, vertical="top")
    for number, row in enumerate(rows, start=2):
        _append(sheet, number, row)
    sheet.freeze_panes = "A2"
    _fit_columns(sheet, headings, rows)


def _append(sheet: Any, number: int, values: Sequence[object]) -> None:
    for column, value in enumerate(values, start=1):
        cell = sheet.cell(row=number, column=column)
        cell.value = _without_control_characters(value) if isinstance(value, str) else value
        if isinstance(value, str):
            cell.data_type = "s"  # else openpyxl makes a formula of text that begins with '='


def _without_control_characters(text: str) -> str:
    from openpyxl.cell.cell import ILLEGAL_CHARACTERS_RE

    return str(ILLEGAL_CHARACTERS_RE.sub(" ", text))


def _fit_columns(sheet: Any, headings: Sequence[str], rows: Sequence[Sequence[object]]) -> None:
    from openpyxl.utils import get_column_letter

    for column, heading in enumerate(headings):
        longest = max([len(heading), *(len(str(row[column])) for row in rows if row[column] is not None)])
        sheet.column_dimensions[get_column_letter(column + 1)].width = min(max(longest + 2, 9), 90)
