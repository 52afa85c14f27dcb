"""Whether an answer is of the kind that its question asks for: a currency's code, a grade, a basis."""

from collections.abc import Callable, Iterable, Mapping
from decimal import Decimal, InvalidOperation

from tracker.trade.basis import Basis
from tracker.trade.currencies import no_currency
from tracker.trade.grades import grades
from tracker.trade.offer import LEAVE_OUT, Choice


def objection(key: str, value: str, choices: Iterable[Choice] = ()) -> str | None:
    """Why `value` answers no question of this key, in one sentence; None where it does.

    `choices`: those of the question that is answered, where it is at hand: then the value must be one of them.
    """
    if value == LEAVE_OUT:
        return None
    look = _KINDS.get(key.partition(":")[0])
    fault = look(value) if look is not None else None
    offered = tuple(choices)
    if fault is None and offered and value not in {choice.value for choice in offered}:
        labels = ", ".join(choice.label for choice in offered)
        fault = f"“{value}” is not among the answers to this question: {labels}."
    return fault


def _bracket(value: str) -> str | None:
    """'18000:' from 18,000 kg; '5000:18000' below 18,000 kg as well."""
    try:
        bounds = [Decimal(part) if part else None for part in value.partition(":")[::2]]
    except InvalidOperation:
        bounds = []
    low, high = bounds or (None, None)
    said = [bound for bound in (low, high) if bound is not None]
    sound = all(bound.is_finite() and bound >= 0 for bound in said) and not (low and high is not None and low >= high)
    if said and sound:
        return None
    return f"“{value}” is no order size: write the kilograms as 5000:18000, or 18000: for 18,000 kg and more."


def _one_of(values: Iterable[str], what: str) -> Callable[[str], str | None]:
    known = tuple(values)

    def look(value: str) -> str | None:
        return None if value in known else f"“{value}” is no {what}: it is one of {', '.join(known)}."

    return look


def _grade(value: str) -> str | None:
    return _one_of(grades(), "grade")(value)


_KINDS: Mapping[str, Callable[[str], str | None]] = {
    "currency": no_currency,
    "grade": _grade,
    "bracket": _bracket,
    "basis": _one_of((basis.value for basis in Basis), "basis of a price"),
    "ton": _one_of(("short", "metric"), "ton"),
    "weight-basis": _one_of(("msf", "3000ft2", "gsm"), "basis of a weight"),
    "price-change": _one_of(("stand",), "answer to what changes a price"),
    "decimal": _one_of((".", ","), "decimal sign"),
    "date-order": _one_of(("dmy", "mdy"), "order of day and month"),
}
