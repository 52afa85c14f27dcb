"""Notes that tell the coating of some lines or boards beside that of all: 'All items coated one side; items 3 and 4 on
both'."""

from functools import lru_cache

from tracker.intake.values.boards.boards_excepted import boards_ahead
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.notes.lines_counted import lines_named
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.words.lists import phrases, without_article


@lru_cache(maxsize=512)
def coats_some_lines(texts: tuple[str, ...], sides: int) -> bool:
    """Whether one of these texts does, otherwise than on so many sides: then none of them says of every line how many
    of its sides are coated."""
    parts = (part for text in texts for clause in clauses(text) for part in COMMA.split(clause))
    return any(_coats_some(part.strip(), sides) for part in parts)


def _coats_some(part: str, sides: int) -> bool:
    lines = lines_named(part)
    named, rest = boards_ahead(without_article(part))
    if lines is None and not named:
        return False
    said = find_grade(part)
    if said is not None and said.coated_sides is not None:
        return lines is not None or said.coated_sides != sides
    return _leaves_out_the_verb(rest if lines is None else f"{part[: lines[0]]} {part[lines[1] :]}")


def _leaves_out_the_verb(rest: str) -> bool:
    """The 'on both' of 'items 3 and 4 on both', with no other word: not 'on both pallets'."""
    return bool(phrases("sides_alone").find(rest)) and not rest_of(rest, (), "sides_alone", "copula")
