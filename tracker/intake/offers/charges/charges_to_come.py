"""Columns of charges that are charged from a day on that is still to come: 'Energy surcharge from January 2027'."""

import re
from collections.abc import Mapping
from datetime import date
from decimal import Decimal
from typing import NamedTuple

from tracker.intake.columns.column import Column, Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.charges.relief import kind_of, label_of_column
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.notes.scope import Scope
from tracker.intake.tables.headers.later_days import begins_later
from tracker.intake.values.freight.charge_names import ChargeKind, charges_named, label_of, same_charge
from tracker.intake.values.freight.entry_amounts import amounts_in
from tracker.intake.values.heads.roles import ON_TOP
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.words.lists import joined


class _ToCome(NamedTuple):
    """A charge of which a text says that it begins later. `figures`: of its amount, where that is said."""

    kind: ChargeKind
    label: str
    figures: frozenset[Decimal]


def columns_to_come(columns: Columns, cells: Mapping[int, Cell], scope: Scope, facts: FileFacts) -> frozenset[int]:
    """The columns of charges that their head, or a note, says to begin on a day after that of the list, or perhaps."""
    charged = columns.of(*ON_TOP)
    if not charged:
        return frozenset()
    noted = _noted(scope, facts)
    return frozenset(
        column.index
        for column in charged
        if begins_later(column.text, _in_force(facts), facts.date_order)
        or any(_is_column(one, column, cells) for one in noted)
    )


def _is_column(told: _ToCome, column: Column, cells: Mapping[int, Cell]) -> bool:
    """Beside 'Energy surcharge $30/ST from January 1, 2027' a column's 25 is charged until then, and its 30 is not."""
    if told.kind is not kind_of(column) or not same_charge(told.kind, told.label, label_of_column(column)):
        return False
    return not told.figures or (column.index in cells and bool(told.figures & _figures(cells[column.index].text)))


def _in_force(facts: FileFacts) -> date | None:
    """The day on which the list was made, or from which its prices hold where that is later."""
    return max((day for day in (facts.list_date, facts.holds_from) if day is not None), default=None)


def _noted(scope: Scope, facts: FileFacts) -> tuple[_ToCome, ...]:
    """The charges of which the texts around say so, worked out once for all rows with these."""
    known = scope.terms.get("charges to come")
    if not isinstance(known, tuple):
        texts = dict.fromkeys(words.text for level in scope.levels for words in level.texts)
        known = tuple(found for text in texts for clause in clauses(text) if (found := _to_come(clause, facts)))
        scope.terms["charges to come"] = known
    return known


def _to_come(clause: str, facts: FileFacts) -> _ToCome | None:
    """'Energy surcharge will change from January 2027' says that until then the column's figure is charged."""
    named = charges_named(clause)
    if not named or not begins_later(clause, _in_force(facts), facts.date_order):
        return None
    amounts = frozenset(figure for start, end in amounts_in(clause) for figure in _figures(clause[start:end]))
    if not amounts and joined("price_rises", "price_moves", "rises_to_come", "will_change").find(clause):
        return None
    return _ToCome(ChargeKind(named[0].value), label_of(clause, named), amounts)


def _figures(text: str) -> frozenset[Decimal]:
    return frozenset(Decimal(found.replace(",", ".")) for found in _FIGURE.findall(text))


_FIGURE = re.compile(r"\d+(?:[.,]\d+)?")
