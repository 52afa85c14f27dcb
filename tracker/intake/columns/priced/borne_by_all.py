"""Whether all board bears the surcharge that one of two prices leaves out, for all that the texts around say of it."""

from collections.abc import Iterable, Mapping, Sequence
from decimal import Decimal

from tracker.intake.columns.column import Column
from tracker.intake.tables.headers.later_days import begins_later
from tracker.intake.values.figures.numbers import number_readings
from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.freight.entry_amounts import amounts_in
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.orders.small_orders import signs_of_small, size_of_small
from tracker.intake.words.lists import joined, phrases

_Figures = Mapping[int, Decimal]


def is_borne_by_all(columns: Iterable[Column], texts: Sequence[str], part: _Figures, paid: _Figures) -> bool:
    """Not where 'The energy surcharge is suspended until further notice', 'No energy surcharge at present', 'Energy
    surcharge from January 2027' or 'Surcharge for orders below 5 t' stands there, nor another amount than `part` and
    `paid` differ by: the price without it may be what is paid."""
    heads = [head.text for column in columns for head in column.said]
    if any(_is_relieved(text) for text in (*heads, *texts) if charges_named(text)):
        return False
    told = [clause for text in texts for clause in clauses(text) if charges_named(clause)]
    return not any(_is_denied(clause) or _is_of_another_amount(clause, part, paid) for clause in told)


def _is_relieved(text: str) -> bool:
    relieved = any(match.value in _RELIEVED for match in phrases("relieved").find(text))
    return relieved or bool(signs_of_small(text)) or size_of_small(text) is not None


_RELIEVED = ("waived", "ended", "exempt")


def _is_denied(clause: str) -> bool:
    return bool(joined("negations", "leaves_out", "exceptions").find(clause)) or begins_later(clause, None)


def _is_of_another_amount(clause: str, part: _Figures, paid: _Figures) -> bool:
    """'Energy surcharge $30/ST' where the prices differ by 25."""
    told = [clause[start:end] for start, end in amounts_in(clause)]
    return bool(told) and not any(_is_the_difference(amount, part, paid) for amount in told)


def _is_the_difference(amount: str, part: _Figures, paid: _Figures) -> bool:
    for reading in number_readings("".join(sign for sign in amount if sign.isdigit() or sign in ".,")):
        shares = (start * reading.value / 100 if "%" in amount else reading.value for start in part.values())
        differences = (paid[row] - start for row, start in part.items())
        if all(abs(share - more) <= _NEAR for share, more in zip(shares, differences, strict=True)):
            return True
    return False


_NEAR = Decimal("0.5")
"""Prices are often written without what is behind the point."""
