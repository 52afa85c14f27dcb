"""Tables beside each other under one header row with no empty column between: the same heads come round again."""

from tracker.intake.tables.headers.heads import Head, head_of
from tracker.intake.tables.table import HeadedColumn
from tracker.intake.values.heads.roles import Role
from tracker.intake.words.fold import fold


def segments_of(columns: list[HeadedColumn]) -> list[list[HeadedColumn]]:
    """The header's columns cut where its first board column comes round again after a price, else whole."""
    heads = [head_of(column.heads[-1]) if column.heads else None for column in columns]
    first = next((at for at, head in enumerate(heads) if head is not None and head.board), None)
    if first is None:
        return [columns]
    starts = [0] + [at for at in range(first + 1, len(columns)) if _begins_again(columns, heads, at, first)]
    pieces = [columns[a:b] for a, b in zip(starts, [*starts[1:], len(columns)], strict=True)]
    return pieces if len(pieces) > 1 else [columns]


def _begins_again(columns: list[HeadedColumn], heads: list[Head | None], at: int, first: int) -> bool:
    head, before = heads[at], heads[first]
    if head is None or before is None or head.across or not _of_one_kind(head.role, before.role):
        return False
    if _comes_round_whole(columns, heads, at, first):
        return True
    if not any(other is not None and (other.price or other.number is not None) for other in heads[:at]):
        return False
    # One word of the same kind ('Stock' beside 'Board') is no second table; the same word, or several, are.
    same_word = fold(columns[at].heads[-1].text) == fold(columns[first].heads[-1].text)
    return same_word or len(_board_roles(heads[first:at]) & _board_roles(heads[at:])) > 1


def _comes_round_whole(columns: list[HeadedColumn], heads: list[Head | None], at: int, first: int) -> bool:
    """'Kind | Pts | Wt | Ask | Kind | Pts | Wt | Ask/M': the run of board columns, word for word, behind something
    else, whatever the prices are called."""
    run = next((end for end in range(first, at) if not _tells_board(heads[end])), at) - first
    words = [fold(column.heads[-1].text) if column.heads else "" for column in columns[first : at + run]]
    return _SEVERAL <= run < at - first and words[:run] == words[at - first :]


_SEVERAL = 3


def _tells_board(head: Head | None) -> bool:
    return head is not None and head.board


def _of_one_kind(role: Role | None, other: Role | None) -> bool:
    """'Board' and 'Quality' both name boards."""
    return role is other or {role, other} <= _NAMES


_NAMES = frozenset({Role.PRODUCT, Role.GRADE})


def _board_roles(heads: list[Head | None]) -> set[Role]:
    return {head.role for head in heads if head is not None and head.board and head.role is not None}
