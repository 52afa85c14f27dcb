"""Charges that a sentence calls by 'it', behind one that says that they are not in the prices: 'Freight is not
included; we bill it at $2.15 per cwt'."""

from collections.abc import Iterable, Iterator
from itertools import pairwise

from tracker.intake.values.freight.charge_names import ChargeKind, charges_named, label_of
from tracker.intake.values.freight.charge_parts import is_optional
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.words.lists import joined, phrases
from tracker.intake.words.phrases import Found


def with_their_names(clauses: Iterable[str]) -> list[str]:
    """The clauses with the name of a charge in the place of 'we bill it at'."""
    pieces = [piece for clause in clauses for piece in _parted(clause)]
    return [*pieces[:1], *(_with_name(before, piece) for before, piece in pairwise(pieces))]


def _parted(clause: str) -> Iterator[str]:
    """'Freight is extra, we bill it at $2 per cwt' at its comma."""
    start = 0
    for comma in COMMA.finditer(clause):
        if _billed(clause[comma.end() :]) is not None:
            yield clause[start : comma.start()]
            start = comma.end()
    yield clause[start:]


def _billed(piece: str) -> Found[str] | None:
    """The 'we bill it at' that a part begins with."""
    found = next(iter(phrases("bill_it_at").find(piece)), None)
    return None if found is None or rest_of(piece[: found.start], (), "but_words") else found


def _with_name(before: str, piece: str) -> str:
    named, billed = charges_named(before), _billed(piece)
    if billed is None or not named or charges_named(piece) or not _is_on_top(before):
        return piece
    return f"{label_of(before, named)} {piece[billed.end :].strip()}"


def _is_on_top(clause: str) -> bool:
    """'Freight is not in these prices', 'le transport est en sus'; what only some orders bear is no charge of all."""
    kinds = {match.value for match in charges_named(clause)} - {ChargeKind.OTHER.value}
    if len(kinds) > 1 or is_optional(clause) or phrases("only_if").find(clause) or find_masses(clause):
        return False
    within = joined("relieved.within", "price_words").find(clause)
    return bool(phrases("surcharge_applies").find(clause) or (phrases("negations").find(clause) and within))
