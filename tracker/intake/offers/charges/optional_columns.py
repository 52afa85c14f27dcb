"""Columns of charges that a buyer may do without by a note: '(1) Optional', 'Sheeting is charged if ordered'."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from functools import lru_cache

from tracker.intake.columns.column import Column, Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.charges.relief import kind_of, label_of_column
from tracker.intake.offers.notes.footnotes import signs_behind, signs_in_heads
from tracker.intake.offers.notes.scope import Level
from tracker.intake.values.boards.grade import names_grade
from tracker.intake.values.freight.charge_names import ChargeKind, charges_named, label_of, same_charge
from tracker.intake.values.freight.charge_parts import ClauseParts, is_optional
from tracker.intake.values.heads.column_legend import column_named
from tracker.intake.values.heads.roles import ON_TOP
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.denials import denied
from tracker.intake.values.notes.note_signs import sign_ahead, without_sign
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.words.lists import phrases

_Choice = bool | None
"""True: the buyer may do without it; None: some may, or on some condition; False: nothing says so."""


class OptionalColumns:
    """What the notes around a table leave to the buyer of what its columns of charges hold."""

    def __init__(self, columns: Columns, levels: Iterable[Level]) -> None:
        self._charged = columns.of(*ON_TOP)
        texts = {words.text for level in levels for words in level.texts} if self._charged else ()
        self._signed = {text: sign for text in texts if (sign := sign_ahead(text)) and _hangs(without_sign(text))}
        notes = [text for text in texts if text not in self._signed and is_optional(text)]
        self._headed = {column.index: self._choice_of(column, notes) for column in self._charged}

    def of_row(self, cells: Mapping[int, Cell]) -> Mapping[int, _Choice]:
        """What is left to the buyer of a row's charges, by their columns."""
        if not self._signed:
            return self._headed
        signs = {column.index: signs_behind(cells[column.index]) for column in self._charged if column.index in cells}
        return {
            index: choice or next((_choice(text) for text in self._carried(signs.get(index, ()))), choice)
            for index, choice in self._headed.items()
        }

    def _carried(self, signs: Iterable[str]) -> Iterator[str]:
        return (text for text, sign in self._signed.items() if sign in signs)

    def _choice_of(self, column: Column, notes: Sequence[str]) -> _Choice:
        if any(is_optional(head.text) for head in column.said):
            return True
        signed = next(map(_choice, self._carried(signs_in_heads(column.heads))), False)
        told = {_choice_named(text, kind_of(column), label_of_column(column)) for text in notes}
        told |= {True for text in notes for clause in clauses(text) if _names_column(clause, column)}
        return signed or (True if True in told else None if None in told else signed)


def _hangs(text: str) -> bool:
    return is_optional(text) or bool(phrases("only_if").find(text))


def _names_column(clause: str, column: Column) -> bool:
    """'Column G: optional'."""
    return is_optional(clause) and column_named(clause) == column.index


@lru_cache(maxsize=1024)
def _choice(note: str) -> _Choice:
    """Of a footnote at the charge itself: 'Optional: 65 €/t more, only if the customer asks for sheets'; one that names
    a board, or any other condition, leaves it open."""
    said = without_sign(note)
    free = any(not denied(said, match) for match in phrases("optional").find(said))
    return True if free and not names_grade(said) else None


@lru_cache(maxsize=4096)
def _choice_named(note: str, kind: ChargeKind, label: str) -> _Choice:
    """Of a note that calls the charge by its name: 'Sheeting is optional'; with a word that nobody understands it is
    not known of what. Freight to other places on request is no freight to these."""
    found: list[_Choice] = []
    for part in (part for clause in clauses(note) for part in ClauseParts.of(clause).optional):
        named = [match for match in charges_named(part) if match.value == kind]
        if not any(same_charge(kind, label, label_of(part, [match])) for match in named) or _of_special_orders(part):
            continue
        said = phrases("optional").find(part)
        if any(denied(part, match) for match in said):
            continue
        spans = [match.span for match in (*charges_named(part), *said)]
        rest = rest_of(part, spans, "charge_filler", "surcharge_applies", "only_these", "surcharge_words", "copula")
        if not rest:
            found.append(True)
        elif kind is not ChargeKind.FREIGHT:
            found.append(None)
    return True if True in found else None if found else False


def _of_special_orders(part: str) -> bool:
    """'Sheeting to special sizes on request' is done besides what the list prices."""
    return bool(phrases("special_orders").find(part))
