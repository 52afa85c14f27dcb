"""Boards that a note only holds another against: 'CRB: better than SBS, from stock' tells no time of SBS."""

import re
from functools import lru_cache

from tracker.intake.values.boards.board_ahead import board_ahead
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.words.lists import joined
from tracker.intake.words.phrases import Found, blanked


@lru_cache(maxsize=8192)
def without_held_boards(text: str) -> str:
    """The text without them and the words that hold them against the one it is about, where that is named as well.

    Where both have a figure of their own, 'CRB 6 weeks instead of SBS 4 weeks', and where a difference is told, 'SBS
    costs $40/ST more than CUK', it stays as it is.
    """
    for match in joined("not_this_board.held", "held_against.any", _THAN).find(text):
        board, behind = board_ahead(text[match.end :].lstrip(" "))
        if not _names_board(board) or _is_told_of(text[: match.start], behind, difference=match.value == _THAN):
            continue
        ahead = _without_what_is_compared(text[: match.start], match)
        if not ahead.strip():
            behind = behind.lstrip(" ,:")
        left = f"{ahead.rstrip()}{'' if behind[:1] in _CLOSES else ' '}{behind}".strip()
        if _names_board(left):
            return without_held_boards(_EMPTY.sub("", left))
    return text


_THAN = "held_against.than"
_CLOSES = ("", ",", ".", ";", ":", ")")
_EMPTY = re.compile(r"\s*\(\s*\)")
_STOPS = re.compile(r"[,;:()–]|\.\s")


def _is_told_of(ahead: str, behind: str, *, difference: bool) -> bool:
    """Whether a figure stands at either side of the comparison, or in its own part of the sentence and tells by how
    much they differ."""
    own = _without_board(_STOPS.split(ahead)[-1])
    return (difference and _has_figure(own)) or (_has_figure(_without_board(ahead)) and _has_figure(behind))


def _without_board(text: str) -> str:
    board, rest = board_ahead(text.strip())
    return rest if board else text


def _has_figure(text: str) -> bool:
    return any(map(str.isdigit, text))


def _without_what_is_compared(ahead: str, match: Found[str]) -> str:
    """'CRB: better', 'CUK, a' and 'CUK is' without what leads to the comparison alone."""
    stops = [found.end() for found in _STOPS.finditer(ahead)]
    begins = stops[-1] if stops else 0
    piece = ahead[begins:]
    board, rest = board_ahead(piece.strip())
    start = len(ahead) - len(rest) if board else begins
    led_to = ahead[start:]
    if match.value == _THAN or not rest_of(led_to, (), "articles", "copula"):
        return blanked(ahead, [(start, len(ahead))])
    return ahead


def _names_board(text: str) -> bool:
    grade = find_grade(text)
    return grade is not None and bool(grade.grades)
