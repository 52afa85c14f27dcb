"""The buyer's report: what is compared on one footing, what stands out, which samples are owed."""

from __future__ import annotations

from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

import numpy as np

from tracker.desk.comparison import ChosenFooting, Comparison, Per
from tracker.desk.explanation import offer_reasons
from tracker.desk.footing_words import footing_sentence, order_words
from tracker.desk.questions import open_questions
from tracker.desk.quotes import compare, load_snapshot
from tracker.desk.samples import Sample, SampleState, samples, verdict_words
from tracker.desk.standing import Standing, standings
from tracker.desk.trouble import Trouble
from tracker.reports.content import BandPoint, GradeSection, Mark, OfferRow, ReportContent, SampleRow, Unusual
from tracker.trade.exact import GSM_PER_LB_MSF, UM_PER_POINT, half_up
from tracker.trade.grades import grades

if TYPE_CHECKING:
    from tracker.desk.opening import Desk

_MARKS = {
    Standing.SLIP: Mark.SLIP,
    Standing.ABOVE: Mark.ABOVE,
    Standing.BELOW: Mark.BELOW,
    Standing.FEW: Mark.TOO_FEW,
    Standing.ESTIMATED: Mark.ESTIMATED,
    Standing.IN_LINE: Mark.IN_LINE,
}
_OWED = (SampleState.REQUESTED, SampleState.PROMISED, SampleState.SENT)


def write_report(desk: Desk, path: Path, footing: ChosenFooting | None = None, grade: str | None = None) -> None:
    """Write the report as PDF or XLSX, told by the file's ending. Trouble for another ending or a file in use."""
    from tracker.reports.pdf import write_pdf
    from tracker.reports.workbook import write_workbook

    writers = {".pdf": write_pdf, ".xlsx": write_workbook}
    writer = writers.get(path.suffix.lower())
    if writer is None:
        raise Trouble(f"{path.name} was not written: a report is a .pdf or an .xlsx file; name it so.")
    try:
        writer(report_content(desk, footing, grade), path)
    except OSError as problem:
        raise Trouble(
            f"{path} can't be written ({problem.strerror}): close it if it is open elsewhere, or choose another place."
        ) from problem


def leave_papers(desk: Desk, folder: Path) -> tuple[Path, ...]:
    """The report as PDF and workbook and a summary as text, in a folder: what the demo leaves without a window."""
    from tracker.reports.pdf import write_pdf
    from tracker.reports.summary import summary_text
    from tracker.reports.workbook import write_workbook

    content = report_content(desk)
    pdf, workbook, summary = folder / "report.pdf", folder / "report.xlsx", folder / "summary.txt"
    try:
        write_pdf(content, pdf)
        write_workbook(content, workbook)
        summary.write_text(summary_text(content), encoding="utf-8")
    except OSError as problem:
        raise Trouble(f"{folder} can't be written to ({problem.strerror}): name another --folder.") from problem
    return pdf, workbook, summary


def report_content(desk: Desk, footing: ChosenFooting | None = None, grade: str | None = None) -> ReportContent:
    """Everything the report says, for all grades or one; without a footing, the one that the window opens on."""
    footing = footing or ChosenFooting(desk.today, per=Per.MSF, delivered=True)
    comparison = compare(desk, load_snapshot(desk), footing)
    wanted = [code for code in comparison.snapshot.grades if grade in (None, code)]
    return ReportContent(
        as_of=footing.as_of,
        unit=f"{footing.currency} {footing.per_words}",
        footing=footing_sentence(footing),
        grades=tuple(section for code in _in_order(wanted) if (section := _section(comparison, code)).rows),
        samples=tuple(_sample(sample) for sample in samples(desk, footing.as_of) if sample.state in _OWED),
        questions=tuple(f"{asked.file}: {asked.question.text}" for asked in open_questions(desk)),
    )


def _in_order(codes: list[str]) -> list[str]:
    """In the order in which the trade lists the grades."""
    return sorted(codes, key=list(grades()).index)


def _section(comparison: Comparison, code: str) -> GradeSection:
    snapshot = comparison.snapshot
    standing = standings(comparison)
    of_grade = comparison.shown & (snapshot.grade == snapshot.grades.index(code))
    found = [int(index) for index in np.flatnonzero(of_grade)]
    found.sort(key=lambda index: (snapshot.caliper_um[index], comparison.price[index]))
    rows = {index: _row(comparison, index, _MARKS[Standing(int(standing[index]))]) for index in found}
    unusual = [index for index in found if comparison.out_of_line[index] or comparison.slip[index]]
    return GradeSection(
        code=code,
        name=grades()[code].name.says,
        band=_band_sentence(comparison, found),
        band_points=_band_points(comparison, found),
        rows=tuple(rows.values()),
        unusual=tuple(_unusual(rows[index], offer_reasons(comparison, index)) for index in unusual),
        cautions=tuple(str(caution) for caution in grades()[code].cautions),
    )


def _band_sentence(comparison: Comparison, found: list[int]) -> str:
    judged = comparison.judged
    if judged is None or not found:
        return "No band: no market level is set and there are too few offers of the reference grade."
    grade = int(comparison.snapshot.grade[found[0]])
    low, high = judged.bands.low[grade], judged.bands.high[grade]
    if not np.isfinite(low):
        return "No band: no market level is set and there are too few offers of the reference grade."
    currency = comparison.footing.currency
    band = f"{half_up(low, 0):,f} to {half_up(high, 0):,f} {currency} per tonne"
    return f"Expected band {band}: {judged.bands.sources[grade]}."


def _band_points(comparison: Comparison, found: list[int]) -> tuple[BandPoint, ...]:
    """One point a caliper: offers of one caliper but several weights have one band each per MSF, so their mean."""
    by_caliper: dict[float, list[int]] = {}
    for index in found:
        caliper = comparison.snapshot.caliper_um[index]
        if np.isfinite(caliper) and np.isfinite(comparison.band_low[index]):
            by_caliper.setdefault(round(float(caliper) / float(UM_PER_POINT), 1), []).append(index)
    return tuple(
        BandPoint(caliper, float(np.mean(comparison.band_low[indices])), float(np.mean(comparison.band_high[indices])))
        for caliper, indices in sorted(by_caliper.items())
    )


def _row(comparison: Comparison, index: int, mark: Mark) -> OfferRow:
    snapshot = comparison.snapshot
    caliper, price, expected = snapshot.caliper_um[index], comparison.price[index], comparison.expected[index]
    return OfferRow(
        mark=mark,
        vendor=_vendor(comparison, index),
        board=snapshot.product[index] or snapshot.grades[snapshot.grade[index]],
        decided=_decided(comparison, index),
        order=order_words(snapshot, index),
        caliper_pt=float(caliper) / float(UM_PER_POINT) if np.isfinite(caliper) else None,
        weight=_weight(snapshot.grammage_gsm[index]),
        weight_estimated=bool(snapshot.estimated[index]),
        as_quoted=snapshot.as_quoted[index],
        price=float(price) if np.isfinite(price) else None,
        of_expected=float(price / expected) if np.isfinite(price) and np.isfinite(expected) else None,
        lead_time=_lead_time(snapshot.lead_low[index], snapshot.lead_high[index]),
        valid_until=_date(snapshot.valid_until[index]),
        source=", ".join(
            part for part in (snapshot.files[snapshot.file[index]], snapshot.sheet[index], snapshot.cell[index]) if part
        ),
        between=comparison.range_of(index),
    )


def _decided(comparison: Comparison, index: int) -> str:
    """What was decided about the board last."""
    decided = comparison.board_verdicts.get(index)
    return verdict_words(decided[0]) if decided else ""


def _vendor(comparison: Comparison, index: int) -> str:
    code = comparison.snapshot.vendor[index]
    return comparison.snapshot.vendors[code] if code >= 0 else "vendor not named"


def _weight(grammage_gsm: float) -> str:
    if not np.isfinite(grammage_gsm):
        return "–"
    return f"{grammage_gsm / float(GSM_PER_LB_MSF):.1f} lb/MSF"


def _lead_time(low: float, high: float) -> str:
    if not np.isfinite(low):
        return "–"
    if high == 0:
        return "stock"
    unit, size = ("wk", 7) if low % 7 == high % 7 == 0 else ("days", 1)
    return f"{low / size:.0f} {unit}" if low == high else f"{low / size:.0f}–{high / size:.0f} {unit}"


def _unusual(row: OfferRow, reasons: tuple[str, ...]) -> Unusual:
    caliper = "" if row.caliper_pt is None else f" {row.caliper_pt:.1f}".removesuffix(".0") + " pt"
    title = f"{row.vendor}, {row.board}{caliper}, {row.as_quoted} ({row.source})"
    return Unusual(title, row.mark, reasons)


def _sample(sample: Sample) -> SampleRow:
    caliper = (
        "" if sample.caliper_um is None else f" {float(sample.caliper_um / 254 * 10):.1f}".removesuffix(".0") + " pt"
    )
    return SampleRow(
        number=str(sample.number),
        vendor=sample.vendor,
        board=f"{sample.grade}{caliper}",
        requested=sample.requested,
        promised=sample.promised,
        waiting_days=sample.waiting_days,
        overdue_days=sample.overdue_days,
        state=sample.state.value,
    )


def _date(ordinal: int) -> date | None:
    return None if ordinal < 0 else date.fromordinal(int(ordinal))
