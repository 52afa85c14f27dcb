"""'Not for SBS only but for all': what names a board so is said of it and of the others."""

from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.words.lists import phrases


def not_of_these_only(text: str) -> bool:
    """Whether a text denies that it is about some boards alone: 'nicht nur für GC1', 'not on SBS only'."""
    if any(boards_named(text[match.end :]).some for match in phrases("not_only").find(text)):
        return True
    return any(
        boards_named(between := text[denial.end : only.start]).some and "," not in between
        for denial in phrases("negations").find(text)
        for only in phrases("only_these").find(text)
        if denial.end <= only.start
    )
