"""Orders told in rolls or pallets with what one of them weighs: '2 Rollen, Rollengewicht 750 kg', '3 skids of 1 t'.

So many times that weight is ordered. '3 pallets (2,400 kg)' and '3 pallets = 2,400 kg' say what all of them weigh,
and '2 rolls or 750 kg' another order.
"""

import re
from functools import lru_cache

from tracker.intake.values.figures.numbers_in_words import in_figures
from tracker.intake.values.orders.masses import Mass, mass_text
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
    if counted is None or not (_of_each(plain[piece.end :]) or _each(behind)):
        return weight
    count = mass_text(f"{counted['count']} {words('basis')['kg'][0]}")
    return None if counted["several"] or count is None else weight.times(count)


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
    said = between.strip(" ,:;()–-")
    rest = said.removeprefix(_WEIGHT).strip(" :=") if said.startswith(_WEIGHT) else said
    small = not rest or phrases("about").find(rest)
    return (said.startswith(_WEIGHT) and bool(small)) or phrases("piece_weights").whole(said) == "of"


def _each(behind: str) -> bool:
    found = phrases("piece_weights").find(behind)
    return any(match.value == "each" and not behind[: match.start].strip(" ,/(") for match in found)
