"""The buyer's report as a PDF: what stands out first, then each grade's picture and offers, then samples owed."""

from pathlib import Path
from typing import Any
from xml.sax.saxutils import escape

from tracker.reports.content import (
    CARE,
    CONFIDENCE,
    ESTIMATE,
    GradeSection,
    Mark,
    OfferRow,
    ReportContent,
    SampleRow,
)
from tracker.reports.ink import BOLD, COLOUR_OF, INK, QUIET, REGULAR, RIBBON, register_letters
from tracker.reports.overview_picture import overview_picture
from tracker.reports.spread_picture import mark_shapes, spread_picture
from tracker.trade.days import day_text

_MARGIN = 40.0
_PICTURE_HEIGHT = 150.0
_OFFER_WIDTHS = (14, 124, 106, 42, 80, 62, 94, 78, 50, 48, 62)  # points; 760 between the margins of A4 lying


def write_pdf(content: ReportContent, path: Path) -> None:
    """Write the report to a PDF, A4 lying. OSError where it can't be written."""
    from reportlab.lib.pagesizes import A4, landscape
    from reportlab.platypus import SimpleDocTemplate

    register_letters()
    document = SimpleDocTemplate(
        str(path),
        pagesize=landscape(A4),
        leftMargin=_MARGIN,
        rightMargin=_MARGIN,
        topMargin=_MARGIN,
        bottomMargin=_MARGIN,
        title=f"Paperboard prices on {day_text(content.as_of)}",
        author="",
    )
    story = [*_opening(content), *_overview(content, document.width), *_standing_out(content)]
    for section in content.grades:
        story += _grade(section, content.unit, document.width)
    story += _owed(content.samples)
    story += _open_questions(content.questions)
    document.build(story, onFirstPage=_foot, onLaterPages=_foot)


def _foot(canvas: Any, document: Any) -> None:
    canvas.setFont(REGULAR, 6.5)
    canvas.setFillColor(QUIET)
    canvas.drawString(_MARGIN, 22, "In confidence: several vendors' prices.")
    canvas.drawRightString(document.pagesize[0] - _MARGIN, 22, f"page {document.page}")


def _style(size: float, colour: str = INK, bold: bool = False, before: float = 0, align: int = 0) -> Any:
    from reportlab.lib.styles import ParagraphStyle

    return ParagraphStyle(
        f"{size}{colour}{bold}{before}{align}",
        fontName=BOLD if bold else REGULAR,
        fontSize=size,
        leading=size * 1.35,
        textColor=colour,
        spaceBefore=before,
        spaceAfter=3,
        alignment=align,
    )


def _text(words: str, style: Any) -> Any:
    from reportlab.platypus import Paragraph

    return Paragraph(escape(words), style)


def _opening(content: ReportContent) -> list[Any]:
    count = f"{content.offers} offers compared, {content.out_of_line} out of line, {len(content.samples)} samples owed."
    return [
        _text(f"Paperboard prices and samples on {day_text(content.as_of)}", _style(16, bold=True)),
        _text(content.footing, _style(9, QUIET)),
        _text(count, _style(10, before=6)),
        _text(CONFIDENCE, _style(7.5, QUIET, before=4)),
        _text(CARE, _style(7.5, QUIET)),
    ]


def _overview(content: ReportContent, width: float) -> list[Any]:
    picture = overview_picture(content.grades, width)
    if picture is None:
        return []
    title = "Every offer beside its going price: what other vendors' offers come to at that caliper and order size"
    return [_text(title, _style(8.5, QUIET, before=10)), picture, _legend()]


def _standing_out(content: ReportContent) -> list[Any]:
    story: list[Any] = [_text("Out of line", _style(12, bold=True, before=12))]
    unusual = [found for section in content.grades for found in section.unusual]
    if not unusual:
        story.append(_text("No price is out of line.", _style(9)))
    for found in unusual:
        colour = COLOUR_OF[found.mark]
        story.append(_text(f"{found.mark.value.capitalize()}: {found.title}", _style(9, colour, bold=True, before=6)))
        story += [_text(reason, _style(8)) for reason in found.reasons]
    return story


def _grade(section: GradeSection, unit: str, width: float) -> list[Any]:
    from reportlab.platypus import KeepTogether

    opening = [
        _text(f"{section.code}  {section.name}", _style(12, bold=True, before=16)),
        _text(section.band, _style(8.5, QUIET)),
        *(_text(caution, _style(7.5, QUIET)) for caution in section.cautions),
    ]
    picture = spread_picture(section, unit, width, _PICTURE_HEIGHT)
    if picture is not None:
        opening += [picture, _legend()]
    story: list[Any] = [KeepTogether(opening), _offer_table(section.rows, unit)]
    if any(row.weight_estimated for row in section.rows):
        story.append(_text(ESTIMATE, _style(7, QUIET, before=3)))
    return story


def _legend() -> Any:
    """What each mark means, in a line under the picture."""
    from reportlab.graphics.shapes import Drawing, String

    drawing, x = Drawing(760, 12), 46.0
    for mark in Mark:
        for shape in mark_shapes(mark, x, 6, 3.0):
            drawing.add(shape)
        drawing.add(String(x + 7, 3.5, mark.value, fontName=REGULAR, fontSize=6.5, fillColor=QUIET))
        x += 22 + 3.7 * len(mark.value)
    return drawing


def _offer_table(rows: tuple[OfferRow, ...], unit: str) -> Any:
    headings = (
        "",
        "Vendor",
        "Board",
        "Caliper",
        "Order",
        "Weight",
        "As quoted",
        unit,
        "vs going price",
        "Lead time",
        "Valid until",
    )
    left, right = _style(7), _style(7, align=2)
    body = [[_text(heading, _style(7, QUIET, align=2 if 3 <= n <= 8 else 0)) for n, heading in enumerate(headings)]]
    for row in rows:
        body.append(
            [
                _mark(row.mark),
                _text(row.vendor, left),
                _text(f"{row.board} ({row.decided})" if row.decided else row.board, left),
                _text("–" if row.caliper_pt is None else f"{row.caliper_pt:.1f}".removesuffix(".0") + " pt", right),
                _text(row.order, right),
                _text(row.weight + ("*" if row.weight_estimated else ""), right),
                _text(row.as_quoted, right),
                _text(row.price_words, right),
                _text(row.beside_going, right),
                _text(row.lead_time, left),
                _text("–" if row.valid_until is None else day_text(row.valid_until), left),
            ]
        )
    return _table(body, _OFFER_WIDTHS)


def _mark(mark: Mark) -> Any:
    from reportlab.graphics.shapes import Drawing

    drawing = Drawing(9, 9)
    for shape in mark_shapes(mark, 4.5, 4.5, 3.2):
        drawing.add(shape)
    return drawing


def _owed(samples: tuple[SampleRow, ...]) -> list[Any]:
    story: list[Any] = [_text("Samples owed", _style(12, bold=True, before=16))]
    if not samples:
        return [*story, _text("No sample is outstanding.", _style(9))]
    headings = ("Number", "Vendor", "Board", "Requested", "Promised", "Waiting", "Overdue", "State")
    plain = _style(7.5)
    body = [[_text(heading, _style(7.5, QUIET)) for heading in headings]]
    for row in samples:
        overdue = f"{row.overdue_days} days" if row.overdue_days and row.overdue_days > 0 else "–"
        promised = "–" if row.promised is None else day_text(row.promised)
        words = (
            row.number,
            row.vendor,
            row.board,
            day_text(row.requested),
            promised,
            f"{row.waiting_days} days",
            overdue,
        )
        body.append([_text(word, plain) for word in (*words, row.state)])
    return [*story, _table(body, (60, 130, 130, 80, 80, 70, 70, 90))]


def _open_questions(questions: tuple[str, ...]) -> list[Any]:
    if not questions:
        return []
    heading = _text("Questions that vendors' sheets left open", _style(12, bold=True, before=14))
    return [heading, *(_text(question, _style(8)) for question in questions)]


def _table(body: list[list[Any]], widths: tuple[int, ...]) -> Any:
    from reportlab.platypus import Table, TableStyle

    table = Table(body, colWidths=list(widths), repeatRows=1, hAlign="LEFT")
    table.setStyle(
        TableStyle(
            [
                ("VALIGN", (0, 0), (-1, -1), "TOP"),
                ("LINEBELOW", (0, 0), (-1, 0), 0.6, QUIET),
                ("LINEBELOW", (0, 1), (-1, -1), 0.3, RIBBON),
                ("LEFTPADDING", (0, 0), (-1, -1), 3),
                ("RIGHTPADDING", (0, 0), (-1, -1), 5),
                ("TOPPADDING", (0, 0), (-1, -1), 2),
                ("BOTTOMPADDING", (0, 0), (-1, -1), 1),
            ]
        )
    )
    return table
