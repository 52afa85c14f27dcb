"""Orders told in rolls or pallets with what one of them weighs: '2 Rollen, Rollengewicht 750 kg', '3 skids of 1 t'.

So many times that weight is ordered. '3 pallets (2,400 kg)', '3 pallets = 2,400 kg' and '3 pallets of 2,400 kg in all'
say what all of them weigh, '5 skids of 2,000 lb, total 10,000 lb' says both, and '2 rolls or 750 kg' another order. '2
Rollen mit 1.500 kg' may say either, and so do '8 Paletten zu 4 t', for no pallet carries that: then both are readings
of the weight.
"""

import re
from dataclasses import replace
from decimal import Decimal
from functools import lru_cache

from tracker.intake.values.figures.numbers_in_words import in_figures
from tracker.intake.values.orders.masses import TONS, Mass, find_masses, mass_text
from tracker.intake.words.lists import phrases, words
from tracker.intake.words.phrases import Found

_COUNT = re.compile(r"(?<![\d.,])(?P<several>\d+\s*[-–/]\s*)?(?P<count>\d{1,3})\s+$")
_PIECES = ("pallet", "roll")


@lru_cache(maxsize=4096)
def times_pieces(text: str, weight: Mass) -> Mass | None:
    """The weight as it stands in a text, or of so many pieces that each weigh it; None where '2-3 rolls' do."""
    figures = in_figures(text)
    ahead, _, behind = figures.partition(weight.words)
    piece = next((match for match in reversed(phrases("bracket").find(_plain(ahead))) if match.value in _PIECES), None)
    if piece is None:
        return weight
    plain = _plain(ahead)
    counted = _COUNT.search(plain[: piece.start])
    between = plain[piece.end :]
    told = _each(behind) or between.strip(_STOPS).startswith(_WEIGHT)
    if counted is None or not (told or _of_each(between) or _with(between)):
        return weight
    count = mass_text(f"{counted['count']} {words('basis')['kg'][0]}")
    if counted["several"] or count is None:
        return None
    all_of_them = weight.times(count)
    total = _total_behind(behind)
    if total is not None:
        # '5 skids of 2,000 lb, total 10,000 lb' says both, which must agree.
        return total if may_be_one(total, all_of_them) else _either(total, all_of_them)
    if _of_all(behind):
        possible = min(readings_in_kg(weight), default=Decimal(0)) >= _LIGHTEST_KG[piece.value] * int(counted["count"])
        return weight if possible else _either(weight, all_of_them)
    certain = told or _is_of_one(weight, int(counted["count"]), piece.value, between)
    return all_of_them if certain else _either(weight, all_of_them)


def _either(one: Mass, other: Mass) -> Mass:
    """A weight that is one of the two, which nothing tells."""
    return replace(one, amounts=(*one.amounts, *other.amounts), units=tuple(dict.fromkeys((*one.units, *other.units))))


_HEAVIEST_KG = {"pallet": 2000, "roll": 3000}
_LIGHTEST_KG = {"pallet": 150, "roll": 100}
"""What a pallet or a roll of board weighs (our choice: what lift trucks carry and unwinders hold, and less than which
nobody packs)."""


def _is_of_one(weight: Mass, count: int, piece: str, between: str) -> bool:
    """A piece can weigh as much; behind 'with', so many of them cannot weigh as little together."""
    readings = readings_in_kg(weight)
    possible = not readings or min(readings) <= _HEAVIEST_KG[piece]
    together = min(readings, default=Decimal(0)) >= _LIGHTEST_KG[piece] * count
    return possible and not (_with(between) and together)


def readings_in_kg(weight: Mass) -> list[Decimal]:
    """All that a weight may come to."""
    return [kg for ton in TONS if (kg := weight.kg(ton)) is not None]


def _total_behind(behind: str) -> Mass | None:
    """The 10,000 lb of ', total 10,000 lb' and of ', 10,000 lb in all'."""
    masses = find_masses(behind)
    if not masses:
        return None
    before, _, after = behind.partition(masses[0].words)
    led = [match for match in phrases("piece_weights").find(before) if match.value == "all"]
    leads = any(not before[: match.start].strip(_STOPS) and not before[match.end :].strip(_STOPS) for match in led)
    return masses[0] if leads or (not before.strip(_STOPS) and _of_all(after)) else None


def restates(told: Mass, again: Mass) -> bool:
    """Whether one weight tells another once more, rounded in its own unit: '5,000 lb / 2.3 t'."""
    readings = readings_in_kg(told)
    return any(abs(one - other) * 100 <= one * _ROUNDED for one in readings for other in readings_in_kg(again))


_ROUNDED = 3
"""Percent by which a weight may be rounded in its second unit (our choice)."""


def may_be_one(total: Mass, reckoned: Mass) -> bool:
    """Whether one of the readings of the one is one of the other's."""
    return total == reckoned or any(
        abs(one - other) * 100 <= one for one in readings_in_kg(total) for other in readings_in_kg(reckoned)
    )


def _plain(text: str) -> str:
    """The text with '*' for what names the weight of a piece, which has the piece's own name in it."""
    for match in reversed(_named(text)):
        text = f"{text[: match.start]}{_WEIGHT}{text[match.end :]}"
    return text


_WEIGHT = "*"


def _named(text: str) -> list[Found[str]]:
    weights = phrases("load_weights").find(text)
    return [match for match in weights if match.value in _PIECES]


def _of_each(between: str) -> bool:
    """', Rollengewicht' and ' à ': what stands between the piece and its weight says that one of them weighs it."""
    said = between.strip(_STOPS)
    rest = said.removeprefix(_WEIGHT).strip(" :=") if said.startswith(_WEIGHT) else said
    small = not rest or phrases("about").find(rest)
    return (said.startswith(_WEIGHT) and bool(small)) or phrases("piece_weights").whole(said) == "of"


_STOPS = " ,:;()–-"


def _with(between: str) -> bool:
    """'2 Rollen mit 1.500 kg', '10 rolls at 15,000 lb': of one of them, or of all."""
    return phrases("piece_weights").whole(between.strip(_STOPS)) == "with"


def _of_all(behind: str) -> bool:
    """'16,000 lb total', '2,400 kg insgesamt'."""
    return _stands_behind(behind, "all")


def _each(behind: str) -> bool:
    return _stands_behind(behind, "each")


def _stands_behind(behind: str, meaning: str) -> bool:
    found = phrases("piece_weights").find(behind)
    return any(match.value == meaning and not behind[: match.start].strip(" ,/(") for match in found)
