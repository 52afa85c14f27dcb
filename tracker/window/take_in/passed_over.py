"""What of a file holds no offers, and why, in a sentence: nothing of a sheet is dropped without a word."""

from __future__ import annotations

from collections.abc import Sequence

from tracker.trade.offer import PassedOver

_MOST_TOLD = 3


def passed_words(passed: Sequence[PassedOver], several_sheets: bool) -> str:
    """'Passed over: row 13 (“call” is no price).'; '' where nothing was. Only the first few are told one by one."""
    if not passed:
        return ""
    told = [_part(part, several_sheets) for part in passed[:_MOST_TOLD]]
    more = len(passed) - len(told)
    return f"Passed over: {', '.join(told)}{f', and {more:,} more' if more else ''}."


def passed_in_full(passed: Sequence[PassedOver]) -> str:
    """Everything that was passed over, one a line."""
    return "\n".join(_part(part, True) for part in passed)


def _part(part: PassedOver, named: bool) -> str:
    rows = f"row{'s' if '-' in part.rows else ''} {part.rows.replace('-', '–')}" if part.rows else "the sheet"
    where = f"{rows} of “{part.sheet}”" if named and part.sheet else rows
    return f"{where} ({part.why})"
