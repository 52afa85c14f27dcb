"""Words that name board and leave its grade open: which grades they leave, and what a word of coating makes of them."""

from collections.abc import Iterable

GRADES = ("SBS", "CUK", "UUK", "CRB", "URB", "FBB")
UNCOATED = frozenset({"UUK", "URB"})
_COATED = {"unbleached": "CUK", "recycled": "CRB", "lined": "CRB"}
_UNCOATED = {"unbleached": "UUK", "recycled": "URB", "lined": "URB"}
_LEFT = {
    "unbleached": frozenset({"CUK", "UUK"}),
    "recycled": frozenset({"CRB", "URB"}),
    # White-lined chipboard is coated, chipboard lined with kraft is not.
    "lined": frozenset({"CRB", "URB"}),
    "bleached": frozenset({"SBS"}),
    # Kraft by itself is brown, though there is bleached kraft too: so it agrees with the brown grades and names none.
    "kraft": frozenset({"CUK", "UUK"}),
    "kraft_back": frozenset({"CUK", "CRB", "FBB"}),
}
"""What each kind of word agrees with; a kind that is not here, such as 'board', agrees with any grade."""


def left_open(kinds: Iterable[str]) -> frozenset[str]:
    """The grades that a text with words of these kinds may mean."""
    left = frozenset(GRADES)
    for kind in kinds:
        left &= _LEFT.get(kind, left)
    return left


def by_coating(kinds: Iterable[str], sides: int | None, coated: bool | None) -> list[str]:
    """'Unbleached kraft, C1S' is coated unbleached kraft; without any word of coating it is asked."""
    kinds = [kind for kind in kinds if kind in _COATED]
    if len(kinds) != 1:
        return []
    if coated is False or sides == 0:
        return [_UNCOATED[kinds[0]]]
    if coated is True or sides:
        return [_COATED[kinds[0]]]
    return []


def contradicted(named: list[str], sides: int | None, coated: bool | None) -> list[str]:
    """'Chipboard, coated' may be either of the recycled boards, so both come back; likewise 'CUK uncoated'."""
    for kind, coated_grade in _COATED.items():
        uncoated_grade = _UNCOATED[kind]
        if uncoated_grade in named and (sides or coated) and coated_grade not in named:
            return [*named, coated_grade]
        if coated_grade in named and (coated is False or sides == 0) and uncoated_grade not in named:
            return [*named, uncoated_grade]
    return named
