"""'Reference only' over columns: what stands below is compared with, where others are the prices to be paid."""

from collections.abc import Iterable, Mapping

from tracker.intake.columns.column import Column, Kind
from tracker.intake.values.changes.shown_besides import head_shown_besides


def for_reference(kinds: Mapping[Column, Kind]) -> list[Column]:
    """The columns so headed; none where every price is, for then what they are is told of the whole list."""
    offers = [column for column, kind in kinds.items() if kind is Kind.OFFER]
    paid = [column for column in offers if not _shown_for_reference(column)]
    return [column for column in offers if column not in paid and not _is_once_more(column, paid)] if paid else []


def _shown_for_reference(column: Column) -> bool:
    return any(head_shown_besides(head.text) for head in column.said)


def _is_once_more(column: Column, paid: Iterable[Column]) -> bool:
    """'$/MSF' for reference beside '$/ST' is the price to be paid on another basis."""
    own = {basis.bases for basis in column.bases}
    return bool(own) and all(one.bases and own.isdisjoint(basis.bases for basis in one.bases) for one in paid)
