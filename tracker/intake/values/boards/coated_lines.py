"""Notes that tell the coating of some lines by their numbers: 'All items coated one side; items 3 and 4 on both'."""

from functools import lru_cache

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.lines_counted import lines_named


@lru_cache(maxsize=512)
def coats_some_lines(texts: tuple[str, ...]) -> bool:
    """Whether one of these texts does: then none of them says of every line how many of its sides are coated."""
    return any(_coats(clause) and lines_named(clause) is not None for text in texts for clause in clauses(text))


def _coats(clause: str) -> bool:
    said = find_grade(clause)
    return said is not None and said.coated_sides is not None
