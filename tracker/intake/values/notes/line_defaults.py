"""What a sheet says of every line that does not say its own: 'Everything on this page is 18 pt C1S unless the line says
otherwise'."""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

from tracker.intake.values.boards.board_words import names_only_board
from tracker.intake.values.boards.caliper import CaliperReading, find_calipers
from tracker.intake.values.boards.grade import GradeReading, find_grade
from tracker.intake.values.boards.weight import WeightReading, find_weights
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.words.lists import phrases

_OTHER_SUBJECTS = ("open_measures", "minimum", "optional", "tolerances", "roll_measures", "only_these", "additions")
"""Words beside which a measure is no board's own: where prices begin, what may be had, how far a board may be off."""


@dataclass(frozen=True, slots=True)
class LineDefault:
    """The one caliper, the one weight and the coating and grade that lines without their own have; None for each that
    it does not say. `words`: the part sentence."""

    words: str
    caliper: CaliperReading | None = None
    weights: tuple[WeightReading, ...] = ()
    grade: GradeReading | None = None


@lru_cache(maxsize=4096)
def line_defaults(text: str) -> tuple[LineDefault, ...]:
    """What a text's part sentences say so: with 'unless the line says otherwise', or of all boards and nothing else."""
    return tuple(_all(text))


def _all(text: str) -> Iterator[LineDefault]:
    for clause in clauses(text):
        grade = find_grade(clause)
        calipers, weights = find_calipers(clause), find_weights(clause)
        if (grade is None and not calipers and not weights) or not _of_every_line(clause):
            continue
        yield LineDefault(
            clause,
            calipers[0] if len(calipers) == 1 else None,
            weights if len({weight.words for weight in weights}) == 1 else (),
            grade,
        )


def _of_every_line(clause: str) -> bool:
    if any(phrases(section).find(clause) for section in _OTHER_SUBJECTS):
        return False
    return bool(phrases("unless_marked").find(clause)) or (
        bool(phrases("all_of_them").find(clause)) and names_only_board(clause)
    )
