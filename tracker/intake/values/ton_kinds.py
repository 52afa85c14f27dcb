"""Which ton a cell in a column headed 'Ton' names: 'long', '2,000 lb', 'metric', 'tonelada corta'."""

from functools import lru_cache

from tracker.intake.values.basis import basis_text
from tracker.intake.words.lists import phrases
from tracker.trade.basis import Basis

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
