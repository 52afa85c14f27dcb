"""The report as its reader meets it: read back out of the files it is written to."""

import re
from dataclasses import replace
from datetime import date
from pathlib import Path

import openpyxl
import pytest

from tracker.reports.content import BandPoint, GradeSection, Mark, OfferRow, ReportContent, SampleRow, Unusual
from tracker.reports.overview_picture import overview_picture
from tracker.reports.pdf import write_pdf
from tracker.reports.safe_text import spreadsheet_text
from tracker.reports.spread_picture import spread_picture
from tracker.reports.summary import summary_text
from tracker.reports.workbook import write_workbook

ROW = OfferRow(
    mark=Mark.ABOVE,
    vendor="Tolmere Board",
    board="=HYPERLINK(1)",
    decided="approved for rice",
    caliper_pt=18.0,
    order="from 20 t",
    weight="74 lb/MSF",
    weight_estimated=True,
    as_quoted="$1,240 /ST",
    price=1366.87,
    of_expected=1.31,
    lead_time="5–6 weeks",
    valid_until=date(2026, 12, 31),
    source="a.xlsx, Sheet1, F14",
)
REASON = "31 % above the going price that 23 other offers show."
CONTENT = ReportContent(
    as_of=date(2026, 11, 24),
    unit="USD per tonne",
    footing="Every price below: per tonne, in USD at 24 Nov 2026.",
    grades=(
        GradeSection(
            code="CRB",
            name="Coated recycled board",
            band="Expected 800 to 1,100 USD per tonne.",
            band_points=(BandPoint(12, 800, 1100), BandPoint(24, 780, 1050)),
            rows=(ROW, replace(ROW, mark=Mark.TOO_FEW, price=None, caliper_pt=None, of_expected=None)),
            unusual=(Unusual("Tolmere Board 18 pt, 31 % above", Mark.ABOVE, (REASON,)),),
            cautions=("Not for direct contact with food.",),
        ),
    ),
    samples=(
        SampleRow("S-0007", "Hesk", "SBS 18 pt", date(2026, 10, 1), date(2026, 10, 20), 54, 35, "promised"),
        SampleRow("S-0009", "Hesk", "SBS 20 pt", date(2026, 11, 20), None, 4, None, "requested"),
    ),
    questions=("a.xlsx: is 'ton' a short ton or a tonne?",),
)


def test_workbook_keeps_text_that_looks_like_a_formula_as_text(tmp_path: Path) -> None:
    write_workbook(CONTENT, tmp_path / "report.xlsx")
    sheet = openpyxl.load_workbook(tmp_path / "report.xlsx")["Offers"]
    assert sheet["D2"].value == "=HYPERLINK(1)"
    assert sheet["D2"].data_type == "s"
    assert sheet["J1"].value == "USD per tonne"
    assert sheet["J2"].value == 1366.87
    assert sheet["H2"].value == "74 lb/MSF *"


def test_workbook_takes_a_board_name_with_control_characters(tmp_path: Path) -> None:
    odd = replace(CONTENT, grades=(replace(CONTENT.grades[0], rows=(replace(ROW, board="CRB\x07 C1S"),)),))
    write_workbook(odd, tmp_path / "report.xlsx")
    assert openpyxl.load_workbook(tmp_path / "report.xlsx")["Offers"]["D2"].value == "CRB  C1S"


def test_pdf_runs_on_instead_of_beginning_a_page_for_each_part(tmp_path: Path) -> None:
    write_pdf(CONTENT, tmp_path / "short.pdf")
    many = replace(CONTENT.grades[0], rows=(ROW,) * 200)
    write_pdf(replace(CONTENT, grades=(many,)), tmp_path / "long.pdf")
    assert pages(tmp_path / "short.pdf") < 3  # what stands out, a grade and the samples
    assert pages(tmp_path / "long.pdf") > 5


def pages(path: Path) -> int:
    (count,) = re.findall(rb"/Count (\d+)", path.read_bytes())
    return int(count)


def test_pdf_without_anything_to_say_still_opens(tmp_path: Path) -> None:
    write_pdf(replace(CONTENT, grades=(), samples=(), questions=()), tmp_path / "report.pdf")
    assert (tmp_path / "report.pdf").read_bytes().startswith(b"%PDF-")


def test_summary_gives_reasons_and_days_overdue() -> None:
    text = summary_text(CONTENT)
    assert REASON in text
    assert "S-0007  Hesk, SBS 18 pt: 54 days waiting, 35 days overdue" in text
    assert "S-0009  Hesk, SBS 20 pt: 4 days waiting\n" in text
    assert "is 'ton' a short ton or a tonne?" in text


def test_picture_draws_only_offers_that_have_a_place() -> None:
    from reportlab.graphics.shapes import Polygon

    drawing = spread_picture(replace(CONTENT.grades[0], band_points=()), "USD per tonne", 400, 200)
    assert sum(isinstance(shape, Polygon) for shape in drawing.contents) == 1
    assert "Tolmere Board" in {getattr(shape, "text", None) for shape in drawing.contents}
    assert spread_picture(replace(CONTENT.grades[0], rows=(CONTENT.grades[0].rows[1],)), "USD", 400, 200) is None


def test_overview_has_every_offer_in_its_grade_s_line_and_names_what_stands_out() -> None:
    from reportlab.graphics.shapes import Circle, Polygon, String

    usual = replace(ROW, mark=Mark.IN_LINE, of_expected=1.0)
    slip = replace(ROW, vendor="Hesk", mark=Mark.BELOW, of_expected=0.05)
    grades = (
        replace(CONTENT.grades[0], rows=(ROW, usual, replace(usual, of_expected=None))),
        replace(CONTENT.grades[0], code="SBS", rows=(usual, slip)),
    )
    drawing = overview_picture(grades, 700)
    said = {shape.text for shape in drawing.contents if isinstance(shape, String)}
    assert {"CRB", "3 offers", "SBS", "2 offers", "Tolmere Board, +31 %", "Hesk, −95 %", "going price"} <= said
    dots = [shape for shape in drawing.contents if isinstance(shape, Circle)]
    assert len({dot.cx for dot in dots}) == 1
    assert len({dot.cy for dot in dots}) == 2
    for triangle in (shape for shape in drawing.contents if isinstance(shape, Polygon)):
        assert 0 < min(triangle.points[::2]) < max(triangle.points[::2]) < 700
    assert overview_picture((replace(CONTENT.grades[0], rows=(replace(ROW, of_expected=None),)),), 700) is None


def test_an_axis_has_a_few_round_figures_whatever_its_length() -> None:
    for top in range(20, 4000, 7):
        unit = replace(CONTENT.grades[0], band_points=(), rows=(ROW, replace(ROW, price=1366.87 + top)))
        drawing = spread_picture(unit, "USD per tonne", 400, 200)
        figures = [shape for shape in drawing.contents if getattr(shape, "textAnchor", "") == "end" and shape.x < 46]
        assert 2 <= len(figures) <= 7, top


@pytest.mark.parametrize("text", ["=1+2", "+1", "-1", "@x", "\tx", "\rx", "\nx"])
def test_text_that_starts_a_formula_gets_an_apostrophe(text: str) -> None:
    """OWASP, CSV Injection: the characters a cell must not start with."""
    assert spreadsheet_text(text) == "'" + text


def test_plain_text_is_left_alone() -> None:
    assert spreadsheet_text("SBS C1S 18pt") == "SBS C1S 18pt"


def test_a_price_that_rests_on_an_estimate_is_a_range():
    assert replace(ROW, price=45.9, between=(43.1, 48.2)).price_words == "43.10–48.20*"
    assert replace(ROW, price=45.876).price_words == "45.88"
    assert replace(ROW, price=None).price_words == "–"
