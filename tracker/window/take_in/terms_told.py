"""What was understood of a sheet's terms, in one line: freight, validity, lead time and charges. What is not in it was
not understood, so that a condition is missed before one agrees and not after."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Sequence
from datetime import date
from typing import TypeVar

from tracker.trade.offer import OPEN, Charge, Line, NoteCode, State
from tracker.trade.quoted import basis_sign, money_text
from tracker.window.look.figures import counted, date_text, lead_time

T = TypeVar("T")
_MOST_CHARGES = 3
_LONGEST_WORDS = 32
_FREIGHT = {True: "freight included", False: "freight not included", None: "no freight terms read"}
_DAY_UNREAD = (NoteCode.VALIDITY_UNREAD, NoteCode.DATE_AMBIGUOUS)
_LEAD_UNREAD = (NoteCode.LEAD_TIME_UNREAD,)


def terms_words(lines: Sequence[Line]) -> str:
    """'Freight not included (“FOB mill”) · valid until 4 Dec 2026 · lead time 4 wk · no charges read'; '' where no line
    can be used."""
    usable = [line for line in lines if line.state is not State.REFUSED]
    if not usable:
        return ""
    parts = (_freight(usable), _validity(usable), _lead(usable), _charges(usable))
    said = " · ".join(parts)
    return f"{said[:1].upper()}{said[1:]}"


def _freight(lines: Sequence[Line]) -> str:
    counts = Counter(line.offer.delivered for line in lines)
    if len(counts) > 1:
        return ", ".join(f"{_FREIGHT[said]} in {number:,}" for said, number in counts.most_common())
    (said,) = counts
    words = "" if said is None else _words(lines[0], "delivered")
    return f"{_FREIGHT[said]} (“{words}”)" if words else _FREIGHT[said]


def _words(line: Line, field: str) -> str:
    """What said it; '' where that is long, and stands in the sheet to be read."""
    said = next((piece.words for piece in line.evidence if piece.field == field), "")
    return said if len(said) <= _LONGEST_WORDS else ""


def _validity(lines: Sequence[Line]) -> str:
    until = Counter(line.offer.valid_until for line in lines)
    return _of_lines(until, len(lines), _days, "valid until", _unsaid(lines, "last day", _DAY_UNREAD))


def _days(days: Iterable[date]) -> str:
    first, *later = sorted(days)
    return f"{date_text(first)} to {date_text(later[-1])}" if later else date_text(first)


def _lead(lines: Sequence[Line]) -> str:
    times = Counter(line.offer.lead_days for line in lines)
    return _of_lines(times, len(lines), _times, "lead time", _unsaid(lines, "lead time", _LEAD_UNREAD))


def _times(times: Iterable[tuple[int, int]]) -> str:
    every = list(times)
    return lead_time(min(low for low, _ in every), max(high for _, high in every))


def _unsaid(lines: Sequence[Line], what: str, unread: tuple[NoteCode, ...]) -> str:
    """That none was read, which is no more than is known; where something stands there that is not certain, that."""
    doubtful = any(note.code in unread for line in lines for note in line.notes)
    return f"{what} not certain" if doubtful else f"no {what} read"


def _of_lines(counts: Counter[T | None], of: int, told: Callable[[Iterable[T]], str], what: str, unsaid: str) -> str:
    """'lead time 4 wk', and on how many lines where not on all of them."""
    known = [value for value in counts if value is not None]
    if not known:
        return unsaid
    said = f"{what} {told(known)}"
    return f"{said} on {of - counts[None]:,} of {of:,} lines" if counts[None] else said


def _charges(lines: Sequence[Line]) -> str:
    """'charges: energy surcharge 4 %, freight $2.10 /cwt'."""
    counts = Counter(charge for line in lines for charge in line.offer.charges)
    if not counts:
        return "no charges read"
    told = [_charge(charge, number, len(lines)) for charge, number in counts.most_common(_MOST_CHARGES)]
    more = len(counts) - len(told)
    return f"{'charge' if len(counts) == 1 else 'charges'}: {', '.join(told)}" + (f" and {more:,} more" if more else "")


def _charge(charge: Charge, number: int, of: int) -> str:
    on = "" if number == of else f" on {counted(number, 'line')}"
    return f"{charge.label} {_amount(charge)}{on}"


def _amount(charge: Charge) -> str:
    if charge.currency == OPEN:
        return "(amount not certain)"
    if charge.basis is None or charge.currency is None:
        return f"{charge.price.normalize():f} %"
    return f"{money_text(charge.price, charge.currency)} /{basis_sign(charge.basis)}"
