"""Charges named in one breath before one amount: 'FREIGHT AND FUEL $25/TON'."""

import re
from dataclasses import dataclass
from itertools import pairwise

from tracker.intake.values.freight.charge_names import ChargeKind, charges_named, whole_name
from tracker.intake.words.lists import pattern, phrases


@dataclass(frozen=True, slots=True)
class Together:
    """Charges named in one breath before one amount. `alike`: they are of one kind, as pallets and wrapping are, or one
    surcharge for both."""

    label: str
    alike: bool

    def names(self, label: str) -> bool:
        return label.casefold() in self.label.casefold()


def named_together(clause: str) -> list[Together]:
    """'FREIGHT AND FUEL $25/TON', 'Freight & energy surcharge 25 EUR/t': which of the two the amount is for, or whether
    it is for both, is open. Energies together are one surcharge."""
    spans = _names(clause)
    return [
        Together(label := " ".join(clause[one[0] : other[1]].split()), _are_one(label, {one[2], other[2]}))
        for one, other in pairwise(spans)
        if _JOINT.fullmatch(clause[one[1] : other[0]]) and {one[2], other[2]} != {ChargeKind.ENERGY.value}
    ]


def _are_one(label: str, kinds: set[str]) -> bool:
    """'Energy and raw material surcharge'; freight and sheeting are charged for what is done, and apart."""
    done = {ChargeKind.FREIGHT.value, ChargeKind.SHEETING.value}
    return len(kinds) == 1 or (kinds.isdisjoint(done) and bool(phrases("surcharge_words").find(label)))


def _names(clause: str) -> list[tuple[int, int, str]]:
    """Where the names of charges stand, each with the general words right beside it: 'energy surcharge' is one."""
    found = sorted(charges_named(clause), key=lambda match: match.start)
    names: list[tuple[int, int, str]] = []
    for match in found:
        start, end = whole_name(clause, match)
        last = names[-1] if names else None
        if last is not None and not clause[last[1] : start].strip():
            kind = match.value if last[2] == ChargeKind.OTHER else last[2]
            names[-1] = (last[0], max(last[1], end), kind)
        else:
            names.append((start, end, match.value))
    return names


_JOINT = re.compile(rf"\s*(?:[&+/]|{pattern('range', 'and')})\s*", re.IGNORECASE)
