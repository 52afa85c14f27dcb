"""The report in plain text: what needs the buyer, a line each."""

from tracker.reports.content import CARE, CONFIDENCE, GradeSection, ReportContent, SampleRow
from tracker.trade.days import day_text


def summary_text(content: ReportContent) -> str:
    """The whole report as text, UTF-8 friendly, lines ending in a newline."""
    lines = [
        f"Paperboard prices and samples on {day_text(content.as_of)}",
        content.footing,
        "",
        f"{content.offers} offers compared, {content.out_of_line} out of line.",
        "",
    ]
    for grade in content.grades:
        lines += _grade_lines(grade)
    lines += _sample_lines(content.samples)
    lines += _question_lines(content.questions)
    lines += [CONFIDENCE, CARE]
    return "\n".join(lines) + "\n"


def _grade_lines(grade: GradeSection) -> list[str]:
    lines = [f"{grade.code}  {grade.name}: {len(grade.rows)} offers. {grade.band}"]
    for unusual in grade.unusual:
        lines.append(f"  {unusual.mark.value}: {unusual.title}")
        lines += [f"      {reason}" for reason in unusual.reasons]
    return [*lines, ""]


def _sample_lines(samples: tuple[SampleRow, ...]) -> list[str]:
    if not samples:
        return ["No sample is outstanding.", ""]
    lines = [f"{len(samples)} samples are outstanding:"]
    for sample in samples:
        late = f", {_days(sample.overdue_days)} overdue" if sample.overdue_days and sample.overdue_days > 0 else ""
        lines.append(f"  {sample.number}  {sample.vendor}, {sample.board}: {_days(sample.waiting_days)} waiting{late}")
    return [*lines, ""]


def _days(count: int) -> str:
    return f"{count} day" if count == 1 else f"{count} days"


def _question_lines(questions: tuple[str, ...]) -> list[str]:
    if not questions:
        return []
    return ["Questions that vendors' sheets left open:", *(f"  {question}" for question in questions), ""]
