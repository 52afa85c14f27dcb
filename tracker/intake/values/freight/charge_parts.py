"""The parts of a clause about charges: those that are charged, and those that a buyer may do without."""

import re
from dataclasses import dataclass
from itertools import pairwise

from tracker.intake.values.freight.charge_names import ChargeKind, charges_named, whole_name
from tracker.intake.values.orders.small_orders import only_of_small
from tracker.intake.words.lists import pattern, phrases

PARTS = re.compile(rf",(?!\d)|\b{pattern('range', 'and')}\b", re.IGNORECASE)


def is_optional(text: str) -> bool:
    """'Sheeting (if required)': a buyer may do without what this names."""
    return bool(phrases("optional").find(text))


@dataclass(frozen=True, slots=True)
class ClauseParts:
    """A clause's parts between commas and 'and': those about charges that a buyer may do without, and the others."""

    charged: list[str]
    optional: list[str]

    @classmethod
    def of(cls, clause: str) -> "ClauseParts":
        """'Sheeting, if required, USD 60/ST extra' is all about one charge; 'if required, freight 45 USD' is not."""
        parts = cls([], [])
        follows = False
        for part in map(str.strip, PARTS.split(clause)):
            if parts.charged and any(match.start == 0 for match in phrases("optional").find(part)):
                parts.optional.append(parts.charged.pop())
            if parts.charged and phrases("energies").whole(parts.charged[-1]) and phrases("energies").find(part):
                # 'Energy and fuel surcharge 20 USD/ST' is one charge for both.
                parts.charged[-1] += f" / {part}"
                continue
            if parts.charged and not charges_named(part) and _begins_with_all(part):
                # 'Energy surcharge, all items 2.5 %'.
                parts.charged[-1] += f" {part}"
                continue
            sized = parts.charged and only_of_small(part) and charges_named(parts.charged[-1])
            if parts.charged and (sized or _is_of_those(part, parts.charged[-1])):
                parts.charged[-1] += f", {part}"
                continue
            named = any(match.value != ChargeKind.OTHER for match in charges_named(part))
            follows = is_optional(part) or (follows and not named)
            (parts.optional if follows else parts.charged).append(part)
        return parts


def _begins_with_all(part: str) -> bool:
    """'all items 2.5 %', 'on all grades: 2.5 %'."""
    found = phrases("all_of_them").find(part)
    return bool(found) and found[0].first <= 1 and any(map(str.isdigit, part))


def _is_of_those(part: str, before: str) -> bool:
    """The 'majoration de 50 €/t' behind 'en dessous', the 'surcharge 50 USD/ST' behind 'for orders under 5 tons'."""
    general = any(match.value == ChargeKind.OTHER for match in charges_named(part))
    return general and bool(phrases("small_orders").find(before)) and not charges_named(before)


def without_added(clause: str) -> str:
    """'Freight, prepaid and added: USD 2.15 per cwt' without what says no more than that it comes on top."""
    for match in reversed(phrases("delivery").find(clause)):
        named = charges_named(clause[match.start : match.end])
        start = match.start + (named[0].end if named else 0)
        leads = clause[match.end :].lstrip()[:1] == ":" and bool(named or charges_named(clause[:start]))
        if match.value == "collected" and leads:
            clause = f"{clause[:start].rstrip(' ,(–-')}{clause[match.end :]}"
    return clause


@dataclass(frozen=True, slots=True)
class Together:
    """Charges named in one breath before one amount. `alike`: they are of one kind, as pallets and wrapping are."""

    label: str
    alike: bool

    def names(self, label: str) -> bool:
        return label.casefold() in self.label.casefold()


def named_together(clause: str) -> list[Together]:
    """'FREIGHT AND FUEL $25/TON', 'Freight & energy surcharge 25 EUR/t': which of the two the amount is for, or whether
    it is for both, is open. Energies together are one surcharge."""
    spans = _names(clause)
    return [
        Together(" ".join(clause[one[0] : other[1]].split()), one[2] == other[2])
        for one, other in pairwise(spans)
        if _JOINT.fullmatch(clause[one[1] : other[0]]) and {one[2], other[2]} != {ChargeKind.ENERGY.value}
    ]


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


def is_open_share(part: str, percent: tuple[int, int]) -> bool:
    """Whether a percentage with these ends is no single share of the board's price."""
    return _ends_a_range(part, percent[0]) or _is_of_a_charge(part, percent)


_FIGURE_BEFORE = re.compile(r"\d\s*(?P<gap>[^\d\s.,]{1,6})\s*$")


def _ends_a_range(part: str, percent: int) -> bool:
    """'2-3 %' and '2 or 3 %' say two rates."""
    before = _FIGURE_BEFORE.search(part[:percent])
    return before is not None and (
        not any(map(str.isalpha, before["gap"])) or phrases("range").whole(before["gap"]) is not None
    )


def _is_of_a_charge(part: str, percent: tuple[int, int]) -> bool:
    """'Fuel: 18 % of freight' is no share of the board's price; '3 % energy surcharge' and '3 % plus freight' are."""
    named = sorted(charges_named(part), key=lambda match: match.start)
    if not named or named[0].start >= percent[0]:
        return False
    behind = (match for match in named if match.start >= percent[1] and match.value != ChargeKind.OTHER)
    return any(phrases("share_of").whole(part[percent[1] : match.start]) is not None for match in behind)
