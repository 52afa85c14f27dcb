"""Clauses whose money is none of the prices, nor added to them: of goods that come back, deposits and late payment."""

from tracker.intake.values.freight.charge_names import ChargeKind, charges_named
from tracker.intake.words.lists import phrases


def of_other_dealings(clause: str) -> bool:
    """'Les retours se font sur accord, moins 10 % pour frais': what goods cost that come back."""
    led = next(iter(phrases("other_dealings").find(clause)), None)
    named = charges_named(clause)
    return (
        bool(named)
        and led is not None
        and all(led.start < one.start and ChargeKind(one.value) is ChargeKind.OTHER for one in named)
    )
