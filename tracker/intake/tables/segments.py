"""Tables beside each other under one header row with no empty column between: the same heads come round again."""

from tracker.intake.tables.heads import Head, head_of
from tracker.intake.tables.table import HeadedColumn


def segments_of(columns: list[HeadedColumn]) -> list[list[HeadedColumn]]:
    """The header's columns cut where its first board column comes round again after a price, else whole."""
    heads = [head_of(column.heads[-1]) if column.heads else None for column in columns]
    first = next((head for head in heads if head is not None and head.board), None)
    if first is None:
        return [columns]
    starts = [0] + [at for at in range(1, len(columns)) if _begins_again(heads, at, first)]
    pieces = [columns[a:b] for a, b in zip(starts, [*starts[1:], len(columns)], strict=True)]
    return pieces if len(pieces) > 1 else [columns]


def _begins_again(heads: list[Head | None], at: int, first: Head) -> bool:
    head = heads[at]
    if head is None or head.role is not first.role or head.across:
        return False
    return any(other is not None and other.price for other in heads[:at])
