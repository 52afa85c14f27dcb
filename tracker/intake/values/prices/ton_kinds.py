"""Kinds of ton by their words: 'long', '2,000 lb' or 'metric' under a head 'Ton'; 'short ton' beside a plain 'ton'."""

from functools import lru_cache

from tracker.intake.values.prices.basis import basis_text
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, tokens_of
from tracker.trade.basis import Basis
from tracker.trade.quantities import MassUnit

_TONS = frozenset({Basis.SHORT_TON, Basis.TONNE})


@lru_cache(maxsize=1024)
def ton_under(head: str, text: str) -> str | None:
    """The ton in full, as the cell and its head together say it; None where they name none."""
    named = phrases("ton_words").find(head)
    if not named:
        return None
    word = head[named[0].start : named[0].end]
    candidates = (text.strip(), f"{text.strip()} {word}", f"{word} {text.strip()}")
    return next((candidate for candidate in candidates if _is_one_ton(candidate)), None)


def _is_one_ton(text: str) -> bool:
    unit = basis_text(text)
    return unit is not None and (unit.basis in _TONS or unit.foreign == "long_ton")


@lru_cache(maxsize=4096)
def names_plain_ton(text: str) -> bool:
    """Whether a text speaks of a ton without its kind: what 'short ton (2,000 lb)' is tells nothing of other tons."""
    kinds = [(one.start, one.end) for one in phrases("basis").find(text) if _is_of_a_kind(one, text)]
    return any(
        not any(start <= ton.start and ton.end <= end for start, end in kinds)
        for ton in phrases("ton_words").find(text)
    )


def _is_of_a_kind(unit: Found[str], text: str) -> bool:
    """'short ton' and 'tonelada corta', where 'ton of 2,000 lb' adds to the ton no more than its weight."""
    if unit.value not in ("short_ton", "tonne", "long_ton"):
        return False
    words = [word for word, _, _ in tokens_of(text[unit.start : unit.end]) if word.isalpha()]
    return any(phrases("ton_words").whole(word) is None and word not in _WEIGHED for word in words)


_WEIGHED = frozenset({"lb", "lbs", "pounds", "libras", "livres", "kg", "of", "de", "a", "zu", "je", "von", "om"})
"""What a weight beside a plain ton is said with."""


@lru_cache(maxsize=4096)
def ton_definition(text: str) -> MassUnit | None:
    """Which ton a sentence defines its tons to be: 'ton = 2,000 lb', 'All tons are metric'.

    None where it doesn't, or says two.

    'USD per short ton' is a basis, no definition.
    """
    if not phrases("ton_words").find(text):
        return None
    said = {match.value for match in phrases("ton_definitions").find(text)}
    return MassUnit(said.pop()) if len(said) == 1 else None
