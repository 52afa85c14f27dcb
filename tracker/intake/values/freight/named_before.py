"""Charges that a sentence names in its first part alone: 'Freight is not included; we bill it at $2.15 per cwt',
'Surcharge $40/ST for rolls under 24 in; $20/ST for rolls 24 to 36 in'."""

from collections.abc import Iterable, Iterator

from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.freight.charge_names import ChargeKind, charges_named, label_of
from tracker.intake.values.freight.charge_parts import is_optional
from tracker.intake.values.freight.charged_measures import bounds_a_size
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.prices.price_within import prices_within
from tracker.intake.words.lists import joined, phrases
from tracker.intake.words.phrases import Found


def with_their_names(clauses: Iterable[str]) -> list[str]:
    """The clauses with the name of a charge in the place of 'we bill it at', and ahead of its further steps."""
    named: list[str] = []
    for piece in (piece for clause in clauses for piece in _parted(clause)):
        named.append(_step(named[-1], _with_name(named[-1], piece)) if named else piece)
    return named


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


def _step(before: str, piece: str) -> str:
    """'$20/ST for rolls 24 to 36 in' and '$40/ST on sheets' with the name of the charge of which they are a step."""
    named = charges_named(before)
    if not named or charges_named(piece) or boards_named(piece).some:
        return piece
    spans = [[(start, end) for _, start, end, _ in prices_within(part)] for part in (before, piece)]
    if not all(spans):
        return piece
    forms, others = (_forms_in(part) for part in (piece, before))
    of_form = len(forms) == len(others) == 1 and forms != others
    told = bounds_a_size(piece) or (of_form and not rest_of(piece, spans[1], "forms", "charged_on", "articles"))
    return f"{label_of(before, named)}: {piece}" if told else piece


def _forms_in(part: str) -> set[str]:
    return {form.value for form in phrases("forms").find(part)}


def _is_on_top(clause: str) -> bool:
    """'Freight is not in these prices', 'le transport est en sus'; what only some orders bear is no charge of all."""
    kinds = {match.value for match in charges_named(clause)} - {ChargeKind.OTHER.value}
    if len(kinds) > 1 or is_optional(clause) or phrases("only_if").find(clause) or find_masses(clause):
        return False
    within = joined("relieved.within", "price_words").find(clause)
    return bool(phrases("surcharge_applies").find(clause) or (phrases("negations").find(clause) and within))
