"""What is said around a row of its charges: each with one rate, or with none where several may be meant."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace

from tracker.intake.offers.notes.said import Said
from tracker.intake.offers.notes.scope import Scope
from tracker.intake.values.freight.charge_names import same_charge
from tracker.intake.values.freight.charges import ChargeWords

Told = Said[ChargeWords]


def charges_around(scope: Scope, left: Callable[[Told], Told | None]) -> tuple[Told, ...]:
    """Each charge that a row bears, from the nearest level that names it; several rates leave open what it comes to.

    What some bear is asked first whether the row is one of them (`left`): '$40/ST on sheets' is no rate of rolls.
    """
    borne = ([one for said in level if (one := left(said)) is not None] for level in scope.charges)
    return tuple(_merged(borne))


def _merged(levels: Iterable[Sequence[Told]]) -> list[Told]:
    kept: list[Told] = []
    for level in levels:
        here: list[list[Told]] = []
        for said in level:
            if any(_same_charge(said, nearer) for nearer in kept):
                continue
            named = next((rates for rates in here if _same_charge(said, rates[0])), None)
            if named is None:
                here.append([said])
            else:
                named.append(said)
        kept += map(_one_rate, here)
    return kept


def _same_charge(one: Told, other: Told) -> bool:
    return one.value.kind is other.value.kind and same_charge(one.value.kind, one.value.label, other.value.label)


def _one_rate(found: Sequence[Told]) -> Told:
    """The charge with its rate, where all that are said to bear it have the same."""
    borne = {(said.value.form, said.value.bound, said.value.of_some) for said in found}
    rates = [
        _rate_of([said for said in found if (said.value.form, said.value.bound, said.value.of_some) == bearers])
        for bearers in borne
    ]
    if len({None if one is None else _figures(one) for one in rates}) == 1 and rates[0] is not None:
        return rates[0]
    return replace(found[0], value=replace(found[0].value, amounts=()))


def _rate_of(found: Sequence[Told]) -> Told | None:
    """The one rate of those of the same bearers; 'a surcharge applies' beside 'energy surcharge 3 %' says no more than
    that."""
    rates = {_figures(said): said for said in reversed(found) if said.value.amounts}
    return next(iter(rates.values())) if len(rates) == 1 else None


def _figures(said: Told) -> tuple[object, ...]:
    return (*(amount.value for amount in said.value.amounts), said.value.percent)
