"""Labels for samples as they arrive: the number as text and as a QR code, and what the board is meant to be."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Any

from tracker.reports.ink import BOLD, INK, QUIET, REGULAR, register_letters

_POINTS_PER_MM = 72 / 25.4


@dataclass(frozen=True, slots=True)
class LabelSheet:
    """A sheet of labels, or one label a page; all lengths in mm. `down` and `across` count the labels of a page."""

    name: str
    page: tuple[float, float]
    label: tuple[float, float]
    across: int
    down: int
    left: float
    top: float
    pitch: tuple[float, float]


# Sizes in common use; common practice, no source.
LABEL_SHEETS = {
    "roll-62x29": LabelSheet("Roll, 62 × 29 mm", (62, 29), (62, 29), 1, 1, 0, 0, (62, 29)),
    "roll-100x50": LabelSheet("Roll, 100 × 50 mm", (100, 50), (100, 50), 1, 1, 0, 0, (100, 50)),
    "a4-21": LabelSheet("A4, 21 of 63.5 × 38.1 mm", (210, 297), (63.5, 38.1), 3, 7, 7.2, 15.1, (66.0, 38.1)),
    "letter-10": LabelSheet("Letter, 10 of 4 × 2 in", (215.9, 279.4), (101.6, 50.8), 2, 5, 4.0, 12.7, (106.3, 50.8)),
}


@dataclass(frozen=True, slots=True)
class SampleLabel:
    number: str
    vendor: str
    board: str
    for_what: str
    requested: date


def write_labels(labels: Sequence[SampleLabel], sheet: LabelSheet, path: Path) -> None:
    """Write the labels to a PDF at true size. ValueError for none at all, OSError where it can't be written."""
    from reportlab.pdfgen.canvas import Canvas

    if not labels:
        raise ValueError("No sample was chosen, so there is no label to print.")
    register_letters()
    canvas = Canvas(str(path), pagesize=(sheet.page[0] * _POINTS_PER_MM, sheet.page[1] * _POINTS_PER_MM))
    for place, label in enumerate(labels):
        on_page = place % (sheet.across * sheet.down)
        if place and not on_page:
            canvas.showPage()
        _draw_label(canvas, label, sheet, on_page)
    canvas.save()


def _draw_label(canvas: Any, label: SampleLabel, sheet: LabelSheet, on_page: int) -> None:
    row, column = divmod(on_page, sheet.across)
    width, height = (side * _POINTS_PER_MM for side in sheet.label)
    x = (sheet.left + column * sheet.pitch[0]) * _POINTS_PER_MM
    y = (sheet.page[1] - sheet.top - row * sheet.pitch[1]) * _POINTS_PER_MM - height
    margin = 2.5 * _POINTS_PER_MM
    code_side = min(height - 2 * margin, width * 0.42)
    _draw_code(canvas, label.number, x + margin, y + (height - code_side) / 2, code_side)
    _draw_words(canvas, label, x + code_side + 2 * margin, y + height - margin, width - code_side - 3 * margin)


def _draw_code(canvas: Any, number: str, x: float, y: float, side: float) -> None:
    from reportlab.graphics import renderPDF

    renderPDF.draw(number_code(number, side), canvas, x, y)


def number_code(number: str, side: float) -> Any:
    """The number as a QR code (ISO/IEC 18004) in a reportlab Drawing of `side` points, the quiet zone within."""
    from reportlab.graphics.barcode.qr import QrCodeWidget
    from reportlab.graphics.shapes import Drawing

    code = QrCodeWidget(number, barLevel="M")
    left, bottom, right, top = code.getBounds()
    drawing = Drawing(side, side, transform=[side / (right - left), 0, 0, side / (top - bottom), 0, 0])
    drawing.add(code)
    return drawing


def _draw_words(canvas: Any, label: SampleLabel, x: float, top: float, width: float) -> None:
    lines = (
        (label.number, BOLD, 11.0, INK),
        (label.board, BOLD, 7.5, INK),
        (label.vendor, REGULAR, 7.5, INK),
        (label.for_what, REGULAR, 6.5, QUIET),
        (f"asked for {label.requested.isoformat()}", REGULAR, 6.5, QUIET),
    )
    y = top
    for words, font, size, colour in lines:
        if words:
            y -= size * 1.25
            canvas.setFont(font, size)
            canvas.setFillColor(colour)
            canvas.drawString(x, y, _cut_to(words, font, size, width))


def _cut_to(words: str, font: str, size: float, width: float) -> str:
    from reportlab.pdfbase.pdfmetrics import stringWidth

    if stringWidth(words, font, size) <= width:
        return words
    while words and stringWidth(words + "…", font, size) > width:
        words = words[:-1]
    return words.rstrip() + "…"
