"""Percentages beside a charge that are no single share of the board's price: '2-3 %', '18 % of freight'."""

import re
from collections.abc import Sequence

from tracker.intake.values.freight.charge_names import ChargeKind, charges_named
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found


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
    """'Fuel: 18 % of freight' and '18 % fuel surcharge on freight' are no share of the board's price; '3 % energy
    surcharge' and '3 % plus freight' are."""
    named = sorted(charges_named(part), key=lambda match: match.start)
    costs = [match for match in phrases("freight_costs").find(part) if match.start >= percent[1]]
    behind = [match for match in named if match.start >= percent[1] and match.value != ChargeKind.OTHER]
    if _leads_from_a_charge(part[: percent[0]], named):
        return True
    if not named or not (named[0].start < percent[0] or len(behind) + len(costs) > 1):
        return False
    ends = [percent[1], *(match.end for match in named if match.start >= percent[1])]
    return any(_shares(part[end : match.start]) for match in (*behind, *costs) for end in ends if end < match.start)


def _leads_from_a_charge(before: str, named: Sequence[Found[str]]) -> bool:
    """'Fuel surcharge on freight: 22 %'."""
    ahead = [match for match in named if match.end <= len(before)]
    ends = bool(ahead) and ahead[-1].value == ChargeKind.FREIGHT and not before[ahead[-1].end :].strip(" :=–—-(")
    return ends and any(_shares(before[match.end : ahead[-1].start]) for match in ahead[:-1])


def _shares(between: str) -> bool:
    return phrases("share_of").whole(between) is not None
