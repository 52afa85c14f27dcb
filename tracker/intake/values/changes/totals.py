"""Rows that sum up the ones above: a total, a sum, an average."""

from tracker.intake.values.notes.statements import Remark, says
from tracker.intake.words.lists import phrases


def is_total(label: str) -> bool:
    """'Total', 'Average of all grades', and 'SBS C1S average'."""
    ends = (match.end for match in phrases("total").find(label))
    return Remark.TOTAL in says(label) or any(not label[end:].strip(" .:") for end in ends)
