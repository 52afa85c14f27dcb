"""Charges listed with what each comes to, and one word behind them: 'Freight ($42/ST), energy ($18/ST) included'."""

import re
from functools import lru_cache

from tracker.intake.values.freight.charge_names import charges_named, whole_name
from tracker.intake.values.notes.denials import denied
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.words.lists import pattern, phrases
from tracker.intake.words.phrases import blanked

_BRACKETS = re.compile(r"\([^()]*\d[^()]*\)")
_JOINT = re.compile(rf"\s*(?:[&+]|,?\s+{pattern('range', 'and')}\s)\s*|\s*,\s+(?!\d)", re.IGNORECASE)
_BESIDE = ("articles", "copula", "price_words", "per", "basis", "currency", "surcharge_words")


@lru_cache(maxsize=2048)
def without_included(clause: str) -> str:
    """The clause without the amounts of charges that are in the price all together.

    Each has its amount in brackets; of 'Sheeting 60 EUR/t and freight 45 EUR/t included' the first may be charged.
    """
    verdict, pieces, plainly = _listed(clause)
    return " ".join((*_names(pieces), clause[verdict:])) if plainly else clause


def may_be_included(clause: str) -> bool:
    """Of 'Freight $42/ST, energy $18/ST included' the first is in the price as well, or charged."""
    _, pieces, plainly = _listed(clause)
    return bool(pieces) and not plainly


def _listed(clause: str) -> tuple[int, list[str], bool]:
    """Where the word for 'included' stands, the charges ahead of it, and whether it is plainly about all."""
    verdict = next((one for one in phrases("relieved").find(clause) if one.value == "within"), None)
    if verdict is None or denied(clause, verdict) or rest_of(clause[verdict.end :], (), *_BESIDE):
        return 0, [], False
    listed = clause[: verdict.start]
    joints = list(_JOINT.finditer(listed))
    pieces = [listed[start:end] for start, end in _between(joints, len(listed))]
    if len(pieces) < _SEVERAL or not all(map(_is_charge_with_amount, pieces)):
        return 0, [], False
    return verdict.start, pieces, all(map(_BRACKETS.search, pieces))


_SEVERAL = 2


def _names(pieces: list[str]) -> list[str]:
    """The names alone, as one breath says them: 'Freight', '+ energy'."""
    names = [piece[slice(*whole_name(piece, charges_named(piece)[0]))] for piece in pieces]
    return [names[0], *(f"+ {name}" for name in names[1:])]


def _between(joints: list[re.Match[str]], end: int) -> list[tuple[int, int]]:
    starts = [0, *(joint.end() for joint in joints)]
    return list(zip(starts, [*(joint.start() for joint in joints), end], strict=True))


def _is_charge_with_amount(piece: str) -> bool:
    named = charges_named(piece)
    spans = [*(whole_name(piece, one) for one in named), *(match.span() for match in _BRACKETS.finditer(piece))]
    left = re.sub(r"[\d.,]+", " ", blanked(piece, spans))
    return bool(named) and any(map(str.isdigit, piece)) and not rest_of(left, (), *_BESIDE)
