"""Charges named in one breath before one amount: 'FREIGHT AND FUEL $25/TON'."""

import re
from dataclasses import dataclass
from itertools import pairwise

from tracker.intake.values.freight.charge_names import ChargeKind, charges_named, whole_name
from tracker.intake.values.prices.currency import find_currencies
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
        if _joined(clause, one, other) and {one[2], other[2]} != {ChargeKind.ENERGY.value}
    ]


def _are_one(label: str, kinds: set[str]) -> bool:
    """'Energy and raw material surcharge'; freight and sheeting are charged for what is done, and apart."""
    done = {ChargeKind.FREIGHT.value, ChargeKind.SHEETING.value}
    return len(kinds) == 1 or (kinds.isdisjoint(done) and bool(phrases("surcharge_words").find(label)))


def _joined(clause: str, one: "_Name", other: "_Name") -> bool:
    """'Freight & fuel', 'freight plus fuel' and 'Fracht- und Verpackungskosten'; '3 % energy surcharge plus freight'
    has an amount of its own for each."""
    between = clause[one[1] : other[0]]
    if _JOINT.fullmatch(between):
        return True
    own = clause[: one[0]].rpartition(",")[2]
    if _PLUS.fullmatch(between):
        return "%" not in own and not find_currencies(own)
    return ChargeKind.FREIGHT.value in (one[2], other[2]) and _HYPHEN.fullmatch(between) is not None


def parted_at_plus(part: str) -> list[str]:
    """'Freight $45/ST plus 18 % fuel surcharge', 'frei Haus zzgl. 3 % Energiezuschlag' as two parts, each with a charge
    and its amount, or terms of delivery; else as one."""
    for joint in _PLUS.finditer(part):
        before, behind = part[: joint.start()].strip(), part[joint.end() :].strip()
        delivered = not _has_amount(before) and phrases("delivery").find(before) and before
        if charges_named(behind) and ((_has_amount(before) and charges_named(before)) or delivered):
            energy = charges_named(behind)[0].value == ChargeKind.ENERGY
            return [before, *parted_at_plus(behind)] if _has_amount(behind) or not delivered or energy else [part]
    return [part]


def _has_amount(text: str) -> bool:
    return any(map(str.isdigit, text))


def named_alone(piece: str) -> ChargeKind | None:
    """What 'fuel' and 'applicable energy surcharge' behind 'freight $45/ST plus' are for, which come to who knows what;
    of freight it is known where prices are without it."""
    named = charges_named(piece)
    if not named or _has_amount(piece) or phrases("not_charge").find(piece):
        return None
    return None if named[0].value == ChargeKind.FREIGHT else ChargeKind(named[0].value)


_Name = tuple[int, int, str]


def _names(clause: str) -> list[_Name]:
    """Where the names of charges stand, each with the general words right beside it: 'energy surcharge' is one."""
    found = sorted(charges_named(clause), key=lambda match: match.start)
    names: list[_Name] = []
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
_HYPHEN = re.compile(rf"-\s*(?:[&+/]|{pattern('range', 'and')})\s*", re.IGNORECASE)
_PLUS = re.compile(rf"\s+(?:\+|{pattern('joined_charges', 'any')})\s+", re.IGNORECASE)
