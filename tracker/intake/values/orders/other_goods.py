"""Goods that no list of board sells, of which a vendor may tell terms beside those of board: tissue, pulp, corrugated
boxes."""

from functools import lru_cache

from tracker.intake.words.lists import phrases, without_words
from tracker.intake.words.phrases import Found


@lru_cache(maxsize=8192)
def of_other_goods(clause: str) -> bool:
    """'Prices for tissue are delivered', 'Pulp is delivered by rail': such goods begin the clause, and no board is
    joined to them, as in 'corrugated and solid board, EUR/t'."""
    led = next(iter(phrases("other_goods").find(clause)), None)
    if led is None or _rest(clause[: led.start]):
        return False
    behind = clause[led.end :]
    joined = any(match.value in ("and", "or") and not behind[: match.start].strip() for match in _joints(behind))
    return not joined and not behind.lstrip().startswith((",", "/", "&", "-", "+")) and bool(behind.strip(" .:"))


def _joints(behind: str) -> list[Found[str]]:
    return phrases("range").find(behind)


def _rest(ahead: str) -> str:
    """What stands before the goods and does not go without saying there."""
    rest = without_words(ahead, "ahead_of_goods")
    return rest.strip(" -–—•*:'’")
