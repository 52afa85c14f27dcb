"""Order sizes of which a text says one part alone: '10,000 lb to', and on the next line 'under 20,000 lb'."""

from functools import lru_cache

from tracker.intake.values.orders.bracket_pieces import pieces_of
from tracker.intake.values.orders.masses import find_mass_units
from tracker.intake.words.lists import phrases

_TO = frozenset({"to", "up_to", "below"})
_ALONE = frozenset({"up_to", "below"})


@lru_cache(maxsize=8192)
def breaks_off(text: str) -> bool:
    """Whether a size ends with a word that leads to a limit, and none follows: '10,000 lb to', '5 t bis unter'; '5 t
    and over' and '5 t or less' are whole, and so is '5 to' in German tons."""
    said = text.strip(" .,")
    if not any(map(str.isdigit, said)):
        return False
    last = next((match for match in phrases("bracket").find(said) if match.end == len(said)), None)
    # The 'A' of the article '5377-A' is no word by itself.
    joined = last is not None and said[: last.start].endswith(("-", "/", "."))
    if (
        last is None
        or joined
        or phrases("leads_to_limit").whole(said[last.start :]) is None
        or pieces_of(said, ()) is None
    ):
        # 'Bid 2: Cartonera Vallès, S. A' ends with a letter.
        return False
    return bool(find_mass_units(said[: last.start])) or not find_mass_units(said[last.start :])


@lru_cache(maxsize=8192)
def goes_on(text: str, *, only_to: bool = False) -> bool:
    """Whether a text begins with a word or dash that leads from one limit to the next: 'to less than 20,000 lb';
    `only_to`: with one that says 'to' and begins no size of its own, as 'up to 20,000 lb' does."""
    said = text.strip()
    first = next(iter(phrases("bracket").find(said)), None)
    led = first is not None and first.start == 0 and first.value in (_TO - _ALONE if only_to else _TO)
    return said[:1] in ("-", "–") or (led and any(map(str.isdigit, said)))
