"""Names that are used of several grades, and what a standard's code beside them says: 'GT2 Chromokarton' is a GT2, and
'GD2 chipboard' white-lined."""

import re
from collections.abc import Sequence
from dataclasses import dataclass

from tracker.intake.words.lists import phrases


@dataclass(frozen=True, slots=True)
class Named:
    """A name in a text: the grade or the kind of board that it means, its words and where they begin and end."""

    meant: str
    words: str
    start: int
    end: int


def without_loose_names(text: str, grades: list[str], named: Sequence[Named]) -> list[str]:
    """The grades of a text without those that only loose names say.

    Some words name one grade only where no other is said; 'carton gris GD2' is grey on its back; and beside a code of
    recycled board nothing speaks for another that the trade calls any such board by.
    """
    loose = {phrases("loose_grade_names").whole(one.words) for one in named} - {None}
    firm = [grade for grade in grades if grade not in loose]
    if any(phrases("grey_names").whole(one.words) for one in named) and set(firm) == {"URB", "CRB"}:
        return [grade for grade in firm if grade != "URB"]
    coded = {one.meant for one in named if _CODE.fullmatch(one.words)}
    others = [one for one in named if one.meant in firm and one.meant not in coded]
    if len(coded) == 1 and others and all(map(_is_loose_beside_codes, others)) and not _are_several(text, named):
        return list(coded)
    return firm or grades


_CODE = re.compile(r"(?:[GU][DT] ?\d(?:/\d)?|WLC)")
"""What a standard, or in Britain the trade, calls boards of recycled fibre by: 'GD2', 'GT 2', 'UD1', 'WLC'."""


def _is_loose_beside_codes(name: Named) -> bool:
    return phrases("loose_beside_codes").whole(name.words) is not None


def _are_several(text: str, named: Sequence[Named]) -> bool:
    """'GD2 / greyboard', 'GD2 bzw. Graupappe' and 'GD2 replaces chipboard' are two boards; 'greyboard GD2', 'greyboard
    (GD2)' and 'GD2 grey chipboard' are one: nothing that may join two stands between its names."""
    ends = 0
    for one in sorted(named, key=lambda each: each.start):
        if ends and phrases("names_of_sides").whole(one.words) is not None:
            # 'GD2 chipboard, white lined'.
            continue
        if ends and not _are_of_one(text[ends : one.start]):
            return True
        ends = max(ends, one.end)
    return False


def _are_of_one(gap: str) -> bool:
    if _SIDE_BY_SIDE.fullmatch(gap):
        return True
    words = gap.strip(" ()")
    return "\n" not in gap and any(phrases(section).whole(words) is not None for section in _OF_ONE)


_SIDE_BY_SIDE = re.compile(r"[ \xa0]*|-|\s*[(\[]|[)\]]\s*")
"""A line break and a dash may part two boards; before a bracket a line is only wrapped."""
_OF_ONE = ("between_names", "coating")
