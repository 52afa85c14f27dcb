"""What a key says of the figure in a vendor's codes: the 1 of 'W1' by 'W = SBS, K = CUK; figure = sides coated'."""

import re
from dataclasses import replace

from tracker.intake.values.boards.grade import GradeReading
from tracker.intake.words.lists import phrases

_PARTS = re.compile(r"[;,\n|]|\.\s")
_CODE = re.compile(r"(?P<letters>[^\W\d_]{1,3})[ -]?(?P<figure>\d)")
_MOST_SIDES = 2
_COATED = frozenset({"CUK"})
_UNCOATED = frozenset({"UUK"})


def figure_counts_sides(text: str) -> bool:
    """'Figure = sides coated', 'die Ziffer ist die Zahl der gestrichenen Seiten': that, and nothing else."""
    return any(map(_counts_sides, _PARTS.split(text)))


def _counts_sides(part: str) -> bool:
    said = phrases("figure_of_codes").find(part)
    if [match.value for match in said] != ["any", "sides"]:
        return False
    figure, sides = said
    between = part[figure.end : sides.start].strip()
    joined = between in {"=", ":", "-", "–"} or phrases("stands_for").whole(between) is not None
    return joined and not part[: figure.start].strip() and not part[sides.end :].strip(" .")


def of_letters_and_figure(code: str, letters: dict[str, GradeReading]) -> GradeReading | None:
    """The board of a code by the grades of its `letters`, in lower case, and its figure; None for what no board is."""
    found = _CODE.fullmatch(code.strip())
    grade = None if found is None else letters.get(found["letters"].lower())
    if found is None or grade is None or grade.coated_sides is not None:
        return None
    sides = int(found["figure"])
    impossible = sides > _MOST_SIDES or grade.grade in (_UNCOATED if sides else _COATED)
    return None if impossible else replace(grade, coated_sides=sides, coated=sides > 0)
