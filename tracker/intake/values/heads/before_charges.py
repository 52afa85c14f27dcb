"""Heads of prices 'before' a charge or a tax: 'Price before energy surcharge' is without it, and no earlier price."""

from collections.abc import Iterable
from dataclasses import replace

from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.heads.roles import Role, RoleReading
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.words.lists import phrases


def of_prices_before_charges(readings: Iterable[RoleReading], head: str) -> tuple[RoleReading, ...]:
    """The roles of a head with that of a price in the place of a previous one, where its 'before' leads to a charge."""
    return tuple(
        replace(reading, role=Role.PRICE)
        if reading.role is Role.PREVIOUS_PRICE and leads_to_charge(reading.words, head) else reading
        for reading in readings
    )  # fmt: skip


def leads_to_charge(words: str, head: str) -> bool:
    """Whether words of a head end with 'before' or its like, and a charge, a tax or a discount follows them."""
    place = head.find(words)
    out = [match for match in phrases("leaves_out").find(head) if match.start < place + len(words) <= match.end]
    if place < 0 or not out:
        return False
    behind = head[out[-1].end :]
    taxes = (match for match in phrases("tax").find(behind) if match.value == "named")
    named = [*charges_named(behind), *taxes, *phrases("discounts").find(behind)]
    return any(not rest_of(behind[: match.start], (), "articles") for match in named)
